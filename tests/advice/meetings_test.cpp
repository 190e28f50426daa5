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

/// Of feeding those are named who come late; whose young alone are taken is left unsaid where somebody takes the grown ones.
bool says_as_much(const Finding& one, const Finding& said, const std::string& a, const std::string& b) {
  if (one.rule != said.rule) return false;
  if (said.rule == "feeding") return one.severity == said.severity && has(one.species, said.species.front());
  if (said.rule == "invertebrate-predation" && one.severity < said.severity) return has(one.species, a) || has(one.species, b);
  return one.severity == said.severity && has(one.species, a) && has(one.species, b);
}

TEST(Meetings, SayWhatTheAssessmentSays) {
  int seen = 0;
  for (const NamedPlan& named : plans()) {
    const std::vector<Finding> findings = assess(named.plan, the_catalog()).findings;
    const Meetings all = meetings_in(named.plan);
    const auto said_of = [&](const Finding& said, const std::string& a, const std::string& b) {
      return std::any_of(findings.begin(), findings.end(), [&](const Finding& one) { return says_as_much(one, said, a, b); });
    };
    for (const Meeting& meeting : all.meetings)
      for (const Finding& said : meeting.findings) {
        ++seen;
        EXPECT_TRUE(said_of(said, all.groups[meeting.a].species, all.groups[meeting.b].species))
            << named.name << ": " << said.text;
      }
    // Nothing of the assessment is left out: whoever stands in a finding about two kinds meets another of it.
    const auto meets = [&](const std::string& id, const Finding& finding) {
      return std::any_of(all.meetings.begin(), all.meetings.end(), [&](const Meeting& meeting) {
        const std::string &a = all.groups[meeting.a].species, &b = all.groups[meeting.b].species;
        if (a != id && b != id) return false;
        return std::any_of(meeting.findings.begin(), meeting.findings.end(),
                           [&](const Finding& said) { return says_as_much(finding, said, a, b); });
      });
    };
    for (const Finding& finding : findings) {
      if (!is_about_two(finding)) continue;
      for (const std::string& id : finding.species)
        EXPECT_TRUE(meets(id, finding)) << named.name << ": " << id << " in " << finding.text;
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
