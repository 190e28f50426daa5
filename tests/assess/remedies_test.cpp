// SPDX-License-Identifier: MIT
// Every remedy, carried out and judged again: the finding is gone or lessened, what was pinned is as it was.
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <set>

#include "assess/margin.h"
#include "plan/check.h"
#include "share/patch.h"
#include "stocking/cover.h"
#include "stocking/load.h"
#include "support/random_stock.h"

namespace shoalwright {
namespace {

const Catalog& catalog() { return the_catalog(); }

bool shares_species(const Finding& a, const Finding& b) {
  if (a.species.empty() || b.species.empty()) return true;
  return std::any_of(a.species.begin(), a.species.end(),
                     [&](const std::string& id) { return std::find(b.species.begin(), b.species.end(), id) != b.species.end(); });
}

/// The quantity that a rule judges, larger is worse, where a plan has one for all.
std::optional<double> amount_of(const Finding& finding, const Plan& plan, const Assessment& assessment) {
  const Room& room = assessment.room;
  const std::string& rule = finding.rule;
  if (rule == "crowding-top") return room.layers[0].crowding;
  if (rule == "crowding-mid") return room.layers[1].crowding;
  if (rule == "crowding-bottom")
    return finding.text.rfind("Bottom", 0) == 0 ? room.layers[2].crowding.value_or(0) : room.floor_crowding.value_or(0);
  if (rule == "territory") return room.floor_crowding;
  if (rule == "load") return nitrate_rise_mg_l_d(assessment.load, assessment.volume);
  if (rule == "nitrate") return assessment.load.nitrate_peak_mg_l;
  if (rule == "kh-low") return assessment.load.kh_drift_dkh_week ? -*assessment.load.kh_drift_dkh_week : 0;
  if (rule == "oxygen" && assessment.air.dawn_mg_l) {
    // More used than comes in: the less is used the nearer it is.
    const Air& air = assessment.air;
    return *air.dawn_mg_l > 0 ? *air.saturation_mg_l - *air.dawn_mg_l : 1000 + *air.demand_mg_h;
  }
  if (rule == "invertebrate-predation" && finding.text.rfind("Young of", 0) == 0) return -cover_of(plan).pieces_share;
  if (rule == "cover") return finding.text.rfind("Too few hides", 0) == 0 ? -cover_of(plan).hides : -cover_of(plan).pieces_share;
  return std::nullopt;
}

/// A rule of water says three things: how far past an edge, that windows do not meet, that nothing is best for all. Cover says
/// two: that hides are short, and shelter; a cycle that it is not done, and that arrivals press it; a filter that its media are
/// few, and that it moves little.
int matter_of(const Finding& finding) {
  if (finding.text.rfind("No shared ", 0) == 0) return 1;
  if (finding.text.find(" is best for all") != std::string::npos || finding.text.rfind("Only ", 0) == 0) return 2;
  if (finding.text.rfind("Arrivals follow", 0) == 0) return 4;
  if (finding.text.rfind("Filter moves only", 0) == 0) return 5;
  return finding.text.rfind("Too few hides", 0) == 0 ? 3 : 0;
}

/// Rules that speak of several kinds together: what is said of other kinds is another matter.
bool speaks_of_company(const Finding& finding) {
  static const std::set<std::string> rules = {"predation",          "fin-nipping", "invertebrate-predation", "temperament",
                                              "look-alike-rivalry", "hybrid",      "surplus-young",          "plant-eater"};
  return rules.count(finding.rule) > 0;
}

bool names_all_of(const Finding& a, const Finding& b) {
  return std::all_of(b.species.begin(), b.species.end(),
                     [&](const std::string& id) { return std::find(a.species.begin(), a.species.end(), id) != a.species.end(); });
}

/// Gone, or milder, or about fewer kinds, or less of what is judged.
bool clears_or_lessens(const Finding& finding, const Plan& plan, const Assessment& before, const Plan& mended,
                       const Assessment& after) {
  for (const Finding& still : after.findings) {
    if (still.rule != finding.rule || matter_of(still) != matter_of(finding) || !shares_species(still, finding)) continue;
    if (speaks_of_company(finding) && !names_all_of(still, finding)) continue;
    if (still.severity > finding.severity) continue;
    if (still.severity == finding.severity && still.species.size() < finding.species.size()) continue;
    const std::optional<double> was = amount_of(finding, plan, before), is = amount_of(finding, mended, after);
    if (still.severity <= finding.severity && was && is && *is < *was) continue;
    return false;
  }
  return true;
}

TEST(Remedy, CarriedOutClearsOrLessensItsFinding) {
  std::map<std::string, int> tried;
  for (const NamedPlan& named : many_plans()) {
    const Assessment before = assessed(named);
    for (const Finding& finding : before.findings) {
      if (finding.edits.empty()) continue;
      const Result<Plan> mended = apply_patch(named.plan, finding.edits);
      ASSERT_TRUE(mended) << named.name << " " << finding.rule << ": " << mended.error().sentence;
      const Assessment after = assess_at_once(*mended, catalog());
      EXPECT_TRUE(clears_or_lessens(finding, named.plan, before, *mended, after))
          << named.name << ": " << name_of(finding.severity) << " " << finding.rule << " (" << finding.text << ") by "
          << finding.remedy << "; then " << said(after);
      ++tried[finding.rule];
    }
  }
  for (const char* rule : {"water-temperature",
                           "water-ph",
                           "water-gh",
                           "water-kh",
                           "group-size",
                           "adult-size",
                           "tank-length",
                           "tank-width",
                           "tank-height",
                           "tank-volume",
                           "swim-lane",
                           "crowding-top",
                           "crowding-mid",
                           "crowding-bottom",
                           "territory",
                           "load",
                           "nitrate",
                           "lid",
                           "substrate",
                           "cover",
                           "wood-needed",
                           "current",
                           "kh-low",
                           "oxygen",
                           "filter",
                           "heater",
                           "acid",
                           "water-unreachable",
                           "predation",
                           "fin-nipping",
                           "invertebrate-predation",
                           "temperament",
                           "look-alike-rivalry",
                           "hybrid",
                           "surplus-young",
                           "plant-eater",
                           "sex-ratio",
                           "male-rivalry",
                           "legal"})
    EXPECT_GT(tried[rule], plans_step > 1 ? -1 : 0) << rule << " was never mended";
}

TEST(Remedy, TakenUpIsAPlanThatCanBeSaved) {
  for (const NamedPlan& named : many_plans())
    for (const Finding& finding : assessed(named).findings) {
      if (finding.edits.empty()) continue;
      const Result<Plan> mended = take_remedy(named.plan, finding.edits);
      ASSERT_TRUE(mended) << named.name << " " << finding.rule;
      EXPECT_FALSE(check_plan(*mended)) << named.name << " " << finding.rule;
    }
}

TEST(Remedy, LeavesAloneWhatIsPinned) {
  for (const NamedPlan& named : many_plans()) {
    Plan pinned = named.plan;
    pinned.fixed = {"/tank", "/water", "/upkeep", "/feeding", "/substrate", "/pieces", "/gear"};
    for (std::size_t i = 0; i < pinned.stock.size(); ++i) pinned.fixed.push_back("/stock/" + std::to_string(i));
    for (const Finding& finding : assess_at_once(pinned, catalog()).findings) {
      EXPECT_TRUE(finding.edits.empty()) << named.name << " " << finding.rule << ": " << finding.remedy;
    }
  }
}

TEST(Remedy, ThatTakesALineOutTakesPointersAlongWhateverTheyAreCalled) {
  const std::string odd = "/tab\t line\n quote\" slash\\ bell\a";
  Plan plan = a_plan().kind("carassius-auratus", 1).kind("danio-rerio", 8).assumed({odd, "/stock/1/count"});
  const Finding* finding = nullptr;
  const Assessment assessment = assess(plan, catalog());
  for (const Finding& one : assessment.findings)
    if (one.rule == "adult-size") finding = &one;
  ASSERT_TRUE(finding);
  const Result<Plan> mended = apply_patch(plan, finding->edits);
  ASSERT_TRUE(mended) << mended.error().sentence;
  EXPECT_EQ(mended->assumed, (std::vector<std::string>{"/stock/0/count", odd}));
}

TEST(Remedy, ThatTakesOutWhatSwimsSaysReHome) {
  int re_homed = 0;
  for (const NamedPlan& named : many_plans()) {
    Plan swimming = named.plan;
    for (Group& group : swimming.stock) group.have = group.count;
    const auto swims = [](const Plan& plan) {
      int all = 0;
      for (const Group& group : plan.stock) all += group.have;
      return all;
    };
    for (const Finding& finding : assess_at_once(swimming, catalog()).findings) {
      if (finding.edits.empty()) continue;
      const Result<Plan> mended = apply_patch(swimming, finding.edits);
      ASSERT_TRUE(mended);
      const bool fewer = swims(*mended) < swims(swimming);
      re_homed += fewer;
      EXPECT_EQ(fewer, finding.remedy.rfind("Re-home", 0) == 0) << named.name << ": " << finding.remedy;
    }
  }
  EXPECT_GT(re_homed, 50 / plans_step);
}

TEST(Remedy, ForOneKindAsksForOneTank) {
  int more_than_one = 0;
  for (const NamedPlan& named : many_plans()) {
    std::map<std::string, std::set<std::string>> tanks;  // by kind
    std::map<std::string, int> findings;
    for (const Finding& finding : assessed(named).findings) {
      if (finding.remedy.rfind("Take a tank of ", 0) != 0 || finding.rule == "swim-lane") continue;
      tanks[finding.species.front()].insert(finding.remedy);
      more_than_one += ++findings[finding.species.front()] == 2;
    }
    for (const auto& [kind, remedies] : tanks) EXPECT_EQ(remedies.size(), 1u) << named.name << " " << kind;
  }
  EXPECT_GT(more_than_one, 10 / plans_step);
}

TEST(Remedy, OfATankLeavesNoTankFindingOfTheKind) {
  for (const NamedPlan& named : many_plans())
    for (const Finding& finding : assessed(named).findings) {
      // Hills from pane to pane are in the way in every tank.
      if (finding.remedy.rfind("Take a tank of ", 0) != 0 || !named.plan.substrate.line_cm.empty()) continue;
      const Result<Plan> mended = apply_patch(named.plan, finding.edits);
      ASSERT_TRUE(mended) << mended.error().sentence;
      Plan cleared = *mended;  // what stands in it may be in the way in any tank
      cleared.pieces.clear();
      for (const Finding& left : assess_at_once(cleared, catalog()).findings)
        if (left.rule.rfind("tank-", 0) == 0 || left.rule == "swim-lane" || left.rule == "adult-size") {
          EXPECT_TRUE(left.species != finding.species || left.severity >= Severity::watch)
              << named.name << ": " << finding.remedy << " leaves " << left.rule << " " << left.text;
        }
    }
}

}  // namespace
}  // namespace shoalwright
