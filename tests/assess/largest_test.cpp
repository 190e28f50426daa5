// SPDX-License-Identifier: MIT
#include "assess/largest.h"

#include <gtest/gtest.h>

#include <set>
#include <tuple>

#include "rules/facts.h"
#include "stocking/layers.h"
#include "support/random_stock.h"

namespace shoalwright {
namespace {

const Catalog& catalog() { return the_catalog(); }

using Grades = std::set<std::pair<std::string, Severity>>;

/// Harms and strains by rule.
Grades grave(const Plan& plan) {
  Grades grades;
  for (const Finding& finding : assess_at_once(plan, catalog()).findings)
    if (finding.severity <= Severity::strain) grades.insert({finding.rule, finding.severity});
  return grades;
}

Plan with_count(Plan plan, const std::string& id, int count) {
  std::vector<Group> stock;
  for (const Group& group : plan.stock) {
    const Species* species = find_species(catalog(), group.species);
    if (!species || species->id != id) stock.push_back(group);
  }
  plan.stock = stock;
  Group group;
  group.species = id;
  group.count = count;
  plan.stock.push_back(group);
  return plan;
}

bool raises(const Grades& after, const Grades& before) {
  for (const auto& [rule, severity] : after) {
    bool known = false;
    for (const auto& [known_rule, known_severity] : before) known = known || (known_rule == rule && known_severity <= severity);
    if (!known) return true;
  }
  return false;
}

TEST(LargestCount, IsTheLastThatRaisesNothingAndTheNextIsStoppedByWhatItNames) {
  int looked_at = 0, stopped_at_once = 0;
  for (std::uint64_t seed = 1; seed <= 60; seed += plans_step) {
    Plan plan = random_stock(seed);
    plan.stock.resize(std::min<std::size_t>(plan.stock.size(), 2));
    for (std::size_t k = seed % 7; k < catalog().species.size(); k += 7) {
      const Species& species = catalog().species[k];
      const Largest largest = largest_count(plan, catalog(), species);
      ASSERT_TRUE(largest.count);
      const Plan without = with_count(plan, species.id, 0);
      const Grades before = grave(without);
      const int least = std::max(species.life.group.least, 1);
      if (*largest.count == 0) {
        ++stopped_at_once;
        ASSERT_FALSE(largest.stopped_by.empty());
        EXPECT_TRUE(finding_of(assess_at_once(with_count(plan, species.id, least), catalog()), largest.stopped_by.front()))
            << species.id << " seed " << seed;
        continue;
      }
      ++looked_at;
      if (before.empty()) {
        EXPECT_FALSE(raises(grave(with_count(plan, species.id, *largest.count)), before)) << species.id << " seed " << seed;
        if (!largest.stopped_by.empty()) {
          EXPECT_TRUE(raises(grave(with_count(plan, species.id, *largest.count + 1)), before))
              << species.id << " " << *largest.count << " seed " << seed;
        }
      }
      ASSERT_FALSE(largest.stopped_by.empty());
      const Assessment next = assess_at_once(with_count(plan, species.id, *largest.count + 1), catalog());
      for (const std::string& rule : largest.stopped_by)
        EXPECT_TRUE(finding_of(next, rule)) << species.id << " " << rule << " seed " << seed;
    }
  }
  EXPECT_GE(looked_at, 50 / plans_step);
  EXPECT_GE(stopped_at_once, 60 / plans_step);
}

// Whoever assesses again and again keeps what bodies find.
TEST(KeptBodies, GiveWhatFreshOnesGiveFromAnyPlanToAnyOther) {
  const std::vector<NamedPlan>& plans = many_plans();
  BodyRooms kept;
  for (std::size_t i = 0; i < plans.size(); ++i) {
    const NamedPlan& named = plans[(7 * i + 3) % plans.size()];
    BodyRooms fresh;
    EXPECT_TRUE(assess(named.plan, catalog(), kept, Remedies::at_once) == assess(named.plan, catalog(), fresh, Remedies::at_once))
        << named.name;
  }
}

/// Harms and strains of the rules that the table calls of_kinds_only, in its order.
using Judged = std::tuple<std::string, std::string, Severity, double>;
std::vector<Judged> judged_by_kinds(const Plan& plan, BodyRooms& bodies) {
  const std::vector<Kept> stock = resolve_stock(plan, catalog());
  std::vector<const Species*> species;
  for (const Kept& kept : stock) species.push_back(kept.species);
  const Volume volume = volume_of(plan);
  update(bodies, plan);
  const Windows water = windows_of(plan, species);
  const Room room = room_of(plan, stock, volume, bodies);
  const Load load = load_of(plan, stock, volume, water);
  const Air air = air_of(plan, stock, volume, water.temperature_c.now);
  Found found(Found::Keep::grades);
  for (const RuleRow& row : all_rules())
    if (row.of_kinds_only) row.rule({plan, catalog(), stock, volume, water, room, bodies, load, air}, found);
  std::vector<Judged> judged;
  for (const Raised& one : found.raised()) judged.emplace_back(one.rule, one.subject, one.severity, one.amount);
  return judged;
}

// The search asks these rules once for all counts.
TEST(LargestCount, RulesThatAreSaidToLookAtKindsAloneDo) {
  BodyRooms bodies;
  int found = 0;
  for (const NamedPlan& named : many_plans()) {
    Plan more = named.plan;
    for (std::size_t i = 0; i < more.stock.size(); ++i)
      if (more.stock[i].count > 0) more.stock[i].count = 1 + static_cast<int>(7 * i % 30);
    for (Group& group : more.stock) group.males = group.females = {};
    Plan plain = named.plan;
    for (Group& group : plain.stock) group.males = group.females = {};
    const std::vector<Judged> before = judged_by_kinds(plain, bodies);
    EXPECT_EQ(before, judged_by_kinds(more, bodies)) << named.name;
    found += static_cast<int>(before.size());
  }
  EXPECT_GT(found, 20 / plans_step);
}

TEST(LargestCount, IsWhatTheRoomOfAGroupSays) {
  for (const NamedPlan& named : all_plans()) {
    const Assessment assessment = assess(named.plan, catalog());
    for (const GroupRoom& group : assessment.room.groups) {
      const Species* species = find_species(catalog(), group.species);
      if (!species || !named.plan.own_species.empty()) continue;
      const Largest largest = largest_count(named.plan, catalog(), *species);
      EXPECT_EQ(group.largest_count, largest.count) << named.name << " " << group.species;
      EXPECT_EQ(group.stopped_by, largest.stopped_by.empty() ? "" : largest.stopped_by.front())
          << named.name << " " << group.species;
    }
  }
}

TEST(LargestCount, NeverShrinksInALargerTank) {
  for (const char* id :
       {"danio-rerio", "hoplisoma-sterbai", "mikrogeophagus-ramirezi", "pterophyllum-scalare", "neocaridina-davidi"}) {
    int last = 0;
    for (const double length_cm : {40.0, 60.0, 80.0, 100.0, 120.0, 160.0, 200.0}) {
      const Plan plan = a_plan().tank(length_cm, length_cm * 0.4, length_cm * 0.4).no_aim();
      const Largest largest = largest_count(plan, catalog(), *find_species(catalog(), id));
      EXPECT_GE(*largest.count, last) << id << " in " << length_cm;
      last = *largest.count;
    }
    EXPECT_GT(last, 1) << id;
  }
}

TEST(LargestCount, IsNotPromisedWhereASumIsNotKnown) {
  EXPECT_FALSE(largest_count(a_plan().kind("brown thing", 1), catalog(), *find_species(catalog(), "danio-rerio")).count);
  EXPECT_FALSE(largest_count(a_plan().planted({}), catalog(), *find_species(catalog(), "danio-rerio")).count);
}

}  // namespace
}  // namespace shoalwright
