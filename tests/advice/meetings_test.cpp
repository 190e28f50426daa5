// SPDX-License-Identifier: MIT
#include "advice/meetings.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "assess/assess.h"
#include "support/builders.h"
#include "support/plan_files.h"
#include "support/quarrels.h"

namespace shoalwright {
namespace {

Meetings meetings_in(const Plan& plan) {
  BodyRooms bodies;
  return meetings_of(plan, the_catalog(), bodies);
}

std::vector<NamedPlan> plans() {
  std::vector<NamedPlan> all = all_plans();
  for (NamedPlan& named : quarrels()) all.push_back(std::move(named));
  return all;
}

bool has(const std::vector<std::string>& ids, const std::string& id) {
  return std::find(ids.begin(), ids.end(), id) != ids.end();
}

bool is_about_two(const Finding& finding) {
  constexpr std::string_view rules[] = {"temperament", "predation", "fin-nipping",        "invertebrate-predation",
                                        "feeding",     "hybrid",    "look-alike-rivalry", "territory"};
  return std::find(std::begin(rules), std::end(rules), finding.rule) != std::end(rules) && finding.species.size() >= 2;
}

TEST(Meetings, LookAtEachPairOnce) {
  for (const NamedPlan& named : plans()) {
    const Meetings all = meetings_in(named.plan);
    const std::size_t n = all.groups.size();
    EXPECT_EQ(all.pairs, n * (n - (n > 0)) / 2) << named.name;
    for (std::size_t i = 0; i < all.meetings.size(); ++i) {
      EXPECT_LT(all.meetings[i].a, all.meetings[i].b);
      EXPECT_LT(all.meetings[i].b, n);
      EXPECT_FALSE(all.meetings[i].findings.empty());
      for (std::size_t j = 0; j < i; ++j)
        EXPECT_FALSE(all.meetings[i].a == all.meetings[j].a && all.meetings[i].b == all.meetings[j].b) << named.name;
    }
  }
}

TEST(Meetings, SayWhatTheAssessmentSays) {
  int seen = 0;
  for (const NamedPlan& named : plans()) {
    const Assessment assessment = assess(named.plan, the_catalog());
    const Meetings all = meetings_in(named.plan);
    for (const Meeting& meeting : all.meetings) {
      const std::string &a = all.groups[meeting.a].species, &b = all.groups[meeting.b].species;
      for (const Finding& said : meeting.findings) {
        ++seen;
        EXPECT_TRUE(std::any_of(assessment.findings.begin(), assessment.findings.end(),
                                [&](const Finding& one) {
                                  return one.rule == said.rule && one.severity == said.severity && has(one.species, a) &&
                                         has(one.species, b);
                                }))
            << named.name << ": " << said.text;
      }
    }
    // Nothing of the assessment is left out: whoever stands in a finding about two kinds meets another of it.
    for (const Finding& finding : assessment.findings) {
      if (!is_about_two(finding)) continue;
      for (const std::string& id : finding.species)
        EXPECT_TRUE(std::any_of(all.meetings.begin(), all.meetings.end(),
                                [&](const Meeting& meeting) {
                                  const std::string &a = all.groups[meeting.a].species, &b = all.groups[meeting.b].species;
                                  return (a == id ? has(finding.species, b) : b == id && has(finding.species, a)) &&
                                         std::any_of(meeting.findings.begin(), meeting.findings.end(),
                                                     [&](const Finding& said) { return said.rule == finding.rule; });
                                }))
            << named.name << ": " << id << " in " << finding.text;
    }
  }
  EXPECT_GT(seen, 30) << "the plans do not quarrel enough";
}

TEST(Meetings, StandWhereTheKindSwims) {
  const Meetings all = meetings_in(a_plan()
                                       .kind("carnegiella-strigata", 6)
                                       .kind("pangio-semicincta", 6)
                                       .kind("no-such-fish", 2)
                                       .kind("paracheirodon-innesi", 10));
  ASSERT_EQ(all.groups.size(), 3u) << "what is not known meets nobody";
  EXPECT_TRUE(all.groups[0].levels[0]);
  EXPECT_FALSE(all.groups[0].levels[3]);
  EXPECT_TRUE(all.groups[1].levels[3]);
  EXPECT_TRUE(all.groups[2].levels[2]);
  EXPECT_EQ(all.groups[2].count, 10);
  EXPECT_TRUE(all.meetings.empty());
}

TEST(Meetings, WorstComeFirstAndTheOrderOfLinesDoesNotMatter) {
  Plan plan = a_plan()
                  .tank(118, 48, 58)
                  .kind("puntigrus-tetrazona", 8)
                  .kind("pterophyllum-scalare", 4)
                  .kind("paracheirodon-innesi", 12)
                  .kind("neocaridina-davidi", 12);
  const Meetings one = meetings_in(plan);
  EXPECT_GE(one.meetings.size(), 3u);
  for (std::size_t i = 1; i < one.meetings.size(); ++i)
    EXPECT_LE(one.meetings[i - 1].findings.front().severity, one.meetings[i].findings.front().severity);
  std::reverse(plan.stock.begin(), plan.stock.end());
  const Meetings other = meetings_in(plan);
  EXPECT_EQ(one.meetings.size(), other.meetings.size());
}

}  // namespace
}  // namespace shoalwright
