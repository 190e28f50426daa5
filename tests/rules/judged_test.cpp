// SPDX-License-Identifier: MIT
// Stock lists that every adviser has been asked about, and what an experienced keeper says of them: common practice, no source.
// Each row of judged.csv is `sound` (clean in the usual view) or names what must be found, by `;`, each by one of several rules
// (`/`): as a strain or worse, as a watch or worse (`?`), or at all (`~`). Tanks by their outside measures, stocks as
// `species count [males females]`.
#include <gtest/gtest.h>

#include <sstream>

#include "support/builders.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

struct Row {
  std::string what, tank, tap, aim, stock, expected;
};

std::vector<std::string> split(const std::string& text, char by) {
  std::vector<std::string> parts;
  std::istringstream in(text);
  for (std::string part; std::getline(in, part, by);) parts.push_back(part);
  return parts;
}

std::vector<Row> rows() {
  std::vector<Row> all;
  for (const std::string& line : split(test_file("rules/judged.csv"), '\n')) {
    const std::vector<std::string> f = split(line, ',');
    if (f.size() == 6 && f[0] != "what") all.push_back({f[0], f[1], f[2], f[3], f[4], f[5]});
  }
  return all;
}

/// The tank as it is kept by somebody who knows how: planted, run in, a filter to match (a strong one for loaches of fast
/// streams), half of the water changed each week.
Plan kept(const Row& row) {
  const std::vector<std::string> size = split(row.tank, 'x'), tap = split(row.tap, ' ');
  const double length = std::stod(size[0]), width = std::stod(size[1]), height = std::stod(size[2]);
  PlanBuilder plan = a_plan();
  plan.tank(length - 1.6, width - 1.6, height - 0.8).glass(8);
  plan.tap(std::stod(tap[0]), std::stod(tap[1]), std::stod(tap[2])).aim(std::stod(row.aim)).disinfectant(Disinfectant::none);
  const double gross_l = length * width * height / 1000;
  const bool of_streams = row.stock.find("sewellia") != std::string::npos;
  plan.filter((of_streams ? 10 : 3) * gross_l, std::max(1.0, gross_l / 40)).surface(SurfaceMotion::rippled).change(0.5, 7);
  plan.floor(SubstrateKind::fine_sand).planted(Planting::medium).running(30).piece("root").piece("cave").piece("fern");
  for (const std::string& group : split(row.stock, ';')) {
    std::istringstream in(group);
    std::string species;
    int count = 0, males = 0, females = 0;
    in >> species >> count;
    plan.kind(species, count);
    if (in >> males >> females) plan.sexes(males, females);
  }
  return plan;
}

bool found(const Assessment& assessment, std::string rule) {
  Severity least = Severity::strain;
  if (rule.back() == '?') least = Severity::watch;
  if (rule.back() == '~') least = Severity::note;
  if (least != Severity::strain) rule.pop_back();
  return severity_of(assessment, rule).value_or(Severity::note) <= least && finding_of(assessment, rule);
}

TEST(JudgedLists, AreJudgedAsAnExperiencedKeeperDoes) {
  const std::vector<Row> all = rows();
  ASSERT_GE(all.size(), 120u);
  std::size_t sound = 0;
  for (const Row& row : all) {
    const Assessment assessment = assess(kept(row), the_catalog());
    EXPECT_FALSE(finding_of(assessment, "unknown-species")) << row.what;
    if (row.expected == "sound") {
      ++sound;
      EXPECT_TRUE(is_clean(assessment)) << row.what << ": " << said(assessment);
      continue;
    }
    for (const std::string& wanted : split(row.expected, ';')) {
      const std::vector<std::string> rules = split(wanted, '/');
      EXPECT_TRUE(std::any_of(rules.begin(), rules.end(), [&](const std::string& rule) { return found(assessment, rule); }))
          << row.what << " lacks " << wanted << ": " << said(assessment);
    }
  }
  EXPECT_GE(sound, 40u);
}

}  // namespace
}  // namespace shoalwright
