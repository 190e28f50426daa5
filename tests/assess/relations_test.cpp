// SPDX-License-Identifier: MIT
// What must hold whatever the constants are, over every plan of tests/plans and many random ones.
#include <gtest/gtest.h>

#include <set>

#include "support/random_stock.h"
#include "tank/sizes.h"
#include "units/convert.h"

namespace shoalwright {
namespace {

const Catalog& catalog() { return the_catalog(); }

bool begins_with(const std::string& text, const char* start) { return text.rfind(start, 0) == 0; }

std::optional<Severity> worst_of(const Assessment& assessment, const std::string& rule) {
  const Finding* finding = finding_of(assessment, rule);  // gravest first
  return finding ? std::optional(finding->severity) : std::nullopt;
}

bool graver_than(std::optional<Severity> a, std::optional<Severity> b) { return a && (!b || *a < *b); }

Plan scaled(Plan plan, double by) {
  Tank& tank = plan.tank;
  for (double* measure : {&tank.length_cm, &tank.width_cm, &tank.height_cm, &tank.bow_cm, &tank.diameter_cm, &tank.side_cm,
                          &tank.front_cm, &tank.fill_cm})
    *measure *= by;
  for (Point& point : tank.outline_cm) {
    point.x_cm *= by;
    point.z_cm *= by;
  }
  return plan;
}

TEST(OrderOfLines, NeverShowsInTheFindings) {
  for (const NamedPlan& named : many_plans()) {
    Plan shuffled = named.plan;
    std::reverse(shuffled.stock.begin(), shuffled.stock.end());
    if (shuffled.stock.size() > 2) std::swap(shuffled.stock[0], shuffled.stock[1]);
    // What is pinned or guessed by the place of a line would be another line's now.
    shuffled.fixed.clear();
    shuffled.assumed.clear();
    Plan straight = named.plan;
    straight.fixed.clear();
    straight.assumed.clear();
    EXPECT_EQ(told(assess_at_once(straight, catalog())), told(assess_at_once(shuffled, catalog()))) << named.name;
  }
}

TEST(Synonyms, GiveTheSameFindings) {
  for (const NamedPlan& named : many_plans()) {
    Plan renamed = named.plan;
    bool changed = false;
    for (Group& group : renamed.stock)
      for (const Species& species : catalog().species)
        if (species.id == group.species && !species.name.synonyms.empty()) {
          group.species = species.name.synonyms.back();
          changed = true;
        }
    if (!changed) continue;
    EXPECT_EQ(assess_at_once(named.plan, catalog()), assess_at_once(renamed, catalog())) << named.name;
  }
}

/// As an app in US units would hand the plan back: each measure typed in inches, degrees F or ppm, then metric.
Plan typed_in_us_units(Plan plan) {
  const auto length = [](double& cm) { cm = cm_from_in(in_from_cm(cm)); };
  const auto temperature = [](std::optional<double>& c) {
    if (c) c = c_from_f(f_from_c(*c));
  };
  const auto hardness = [](std::optional<double>& degrees) {
    if (degrees) degrees = degrees_from_mg_l_caco3(mg_l_caco3_from_degrees(*degrees));
  };
  Tank& tank = plan.tank;
  for (double* measure : {&tank.length_cm, &tank.width_cm, &tank.height_cm, &tank.bow_cm, &tank.diameter_cm, &tank.side_cm,
                          &tank.front_cm, &tank.fill_cm, &plan.substrate.front_cm, &plan.substrate.back_cm})
    length(*measure);
  tank.glass_mm = 10 * cm_from_in(in_from_cm(tank.glass_mm / 10));
  for (Point& point : tank.outline_cm) {
    length(point.x_cm);
    length(point.z_cm);
  }
  temperature(plan.source.temperature_c);
  hardness(plan.source.gh_dgh);
  hardness(plan.source.kh_dkh);
  if (plan.water) {
    temperature(plan.water->temperature_c);
    hardness(plan.water->gh_dgh);
    hardness(plan.water->kh_dkh);
  }
  return plan;
}

TEST(UsUnits, GiveTheSameFindings) {
  int changed = 0;
  for (const NamedPlan& named : many_plans()) {
    const Plan typed = typed_in_us_units(named.plan);
    changed += !(typed == named.plan);
    const Assessment metric = assess_at_once(named.plan, catalog()), us = assess_at_once(typed, catalog());
    EXPECT_TRUE(told(us) == told(metric)) << named.name << ": " << said(metric) << "; then " << said(us);
  }
  EXPECT_GT(changed, 100 / plans_step) << "there and back is seldom the same double";
}

// A tank that has just what a kind asks for has it whatever the measuring tape reads in.
TEST(UsUnits, OfAUsualTankGiveTheSameFindings) {
  for (const UsualSize& size : usual_sizes())
    for (const Species& species : catalog().species) {
      Plan plan = a_plan().kind(species.id, std::max(species.life.group.least, 1));
      plan.tank = tank_of(size);
      const Assessment metric = assess_at_once(plan, catalog()), us = assess_at_once(typed_in_us_units(plan), catalog());
      EXPECT_TRUE(told(us) == told(metric)) << size.name << " " << species.id << ": " << said(metric) << "; then " << said(us);
    }
}

TEST(SplitShoal, IsJudgedAsOne) {
  for (const NamedPlan& named : many_plans()) {
    if (named.plan.stock.empty() || !named.plan.fixed.empty()) continue;
    Plan split = named.plan;
    Group& first = split.stock.front();
    if (first.count < 2 || first.males || first.females) continue;
    Group second = first;
    second.count = first.count / 2;
    second.have = first.have / 2;
    first.count -= second.count;
    first.have -= second.have;
    split.stock.push_back(second);
    const Assessment whole = assess_at_once(named.plan, catalog()), halves = assess_at_once(split, catalog());
    EXPECT_EQ(told(whole), told(halves)) << named.name;
    EXPECT_EQ(whole.tightest, halves.tightest) << named.name;
    EXPECT_EQ(whole.room, halves.room) << named.name;
  }
}

TEST(MoreChange, NeverRaisesNitrateWhileTheTapIsUnderTheTank) {
  int looked_at = 0;
  for (const NamedPlan& named : many_plans()) {
    if (!named.plan.upkeep) continue;
    Plan more = named.plan;
    more.upkeep->change_fraction = std::min(1.0, more.upkeep->change_fraction + 0.1);
    const Load before = assess_at_once(named.plan, catalog()).load, after = assess_at_once(more, catalog()).load;
    if (!before.nitrate_peak_mg_l || !(*named.plan.source.nitrate_mg_l <= *before.nitrate_peak_mg_l)) continue;
    ++looked_at;
    EXPECT_LE(*after.nitrate_peak_mg_l, *before.nitrate_peak_mg_l) << named.name;
    EXPECT_LE(*after.nitrate_trough_mg_l, *before.nitrate_trough_mg_l) << named.name;
    EXPECT_GE(*after.nitrate_trough_mg_l, *named.plan.source.nitrate_mg_l - 1e-9)
        << "nitrate never falls under the tap's: " << named.name;
  }
  EXPECT_GT(looked_at, 100 / plans_step);
}

TEST(BiggerTank, BringsNoNewFindingOfRoomOrLoad) {
  for (NamedPlan named : many_plans()) {
    named.plan.substrate.line_cm.clear();
    named.plan.pieces.clear();  // more water over the same pieces brings bodies where they could not be
    const Assessment before = assess_at_once(named.plan, catalog()), after = assess_at_once(scaled(named.plan, 1.2), catalog());
    if (!(before.room.open_l > 0)) continue;  // nothing to swim in before
    for (const Finding& finding : after.findings) {
      const std::string& rule = finding.rule;
      if (!begins_with(rule, "crowding-") && !begins_with(rule, "tank-") && rule != "load" && rule != "swim-lane" &&
          rule != "territory")
        continue;
      if (rule == "swim-lane" && worst_of(before, "tank-length")) continue;  // the same lack, no longer the tank's own fault
      EXPECT_FALSE(graver_than(finding.severity, worst_of(before, rule)))
          << named.name << ": " << rule << "; before " << said(before);
    }
  }
}

TEST(OneFishMore, NeverLessensLoadOrCrowding) {
  for (const NamedPlan& named : many_plans()) {
    const Assessment before = assess_at_once(named.plan, catalog());
    for (std::size_t i = 0; i < named.plan.stock.size() && i < 4; ++i) {
      Plan more = named.plan;
      ++more.stock[i].count;
      const Assessment after = assess_at_once(more, catalog());
      const auto not_less = [&](std::optional<double> now, std::optional<double> was, const char* what) {
        if (!now || !was) return;
        EXPECT_GE(*now, *was - 1e-9) << what << ", " << named.name;
      };
      not_less(after.load.feed_g_d, before.load.feed_g_d, "feed");
      not_less(after.load.tan_mg_d, before.load.tan_mg_d, "ammonia");
      not_less(after.load.nitrate_peak_mg_l, before.load.nitrate_peak_mg_l, "nitrate");
      if (!more.stock[i].males && !more.stock[i].females)
        not_less(after.room.floor_crowding, before.room.floor_crowding, "floor");
      for (std::size_t layer = 0; layer < 3; ++layer)
        not_less(after.room.layers[layer].crowding, before.room.layers[layer].crowding, "crowding");
      if (before.findings.size() == after.findings.size()) continue;
      for (const Finding& finding : before.findings) {
        if (finding.rule != "load" && !begins_with(finding.rule, "crowding-")) continue;
        EXPECT_FALSE(graver_than(finding.severity, worst_of(after, finding.rule))) << named.name << " " << finding.rule;
      }
    }
  }
}

/// Says what one kind does to another, the doers first.
bool is_about_pairs(const Finding& finding) {
  static const std::set<std::string> rules = {"predation",   "fin-nipping",        "invertebrate-predation",
                                              "temperament", "look-alike-rivalry", "hybrid"};
  return finding.species.size() > 1 && rules.count(finding.rule) > 0;
}

TEST(RemovedCulprit, TakesItsPairFindingsAlongAndBringsNothingNewAboutTheVictim) {
  int pairs = 0;
  for (const NamedPlan& named : many_plans()) {
    const Assessment before = assess_at_once(named.plan, catalog());
    std::set<std::pair<std::string, std::string>> known;  // rule, species
    for (const Finding& finding : before.findings)
      for (const std::string& id : finding.species) known.insert({finding.rule, id});
    for (const Finding& pair : before.findings) {
      if (!begins_with(pair.text, "No shared ") && !is_about_pairs(pair)) continue;
      const std::string culprit = pair.species.front(), victim = pair.species.back();
      Plan without = named.plan;
      without.stock.clear();
      for (const Group& group : named.plan.stock) {
        const Species* species = find_species(catalog(), group.species);
        if (!species || species->id != culprit) without.stock.push_back(group);
      }
      if (without.stock.size() == named.plan.stock.size()) continue;
      ++pairs;
      const Assessment after = assess_at_once(without, catalog());
      for (const Finding& finding : after.findings) {
        EXPECT_FALSE(finding.rule == pair.rule && finding.species == pair.species && finding.text == pair.text) << named.name;
        if (std::find(finding.species.begin(), finding.species.end(), victim) == finding.species.end()) continue;
        if (finding.severity == Severity::note) continue;
        // Crowding names who takes most: with the largest gone the next ones are named.
        // So it is with who is named beside whom.
        if ((begins_with(finding.rule, "crowding-") || finding.rule == "territory" || is_about_pairs(finding)) &&
            !graver_than(finding.severity, worst_of(before, finding.rule)))
          continue;
        // A shared window moves when a kind goes, and arrivals are staged anew.
        if ((begins_with(finding.rule, "water-") || finding.rule == "cycle") && is_about_pairs(pair)) continue;
        // Of windows that do not meet the two worst are named: with one of them gone the next one is.
        if (begins_with(finding.rule, "water-") && known.count({finding.rule, culprit})) continue;
        if (finding.rule == "oxygen" && !before.air.dawn_mg_l) continue;  // without a shared temperature it was not judged
        EXPECT_TRUE(known.count({finding.rule, victim}))
            << named.name << ": " << finding.rule << " about " << victim << "; before " << said(before);
      }
    }
  }
  EXPECT_GT(pairs, plans_step > 1 ? 10 : 100);
}

TEST(LidOn, ClearsLidAndNothingElse) {
  int open = 0;
  for (const NamedPlan& named : many_plans()) {
    if (!named.plan.tank.lid || *named.plan.tank.lid) continue;
    ++open;
    Plan covered = named.plan;
    covered.tank.lid = true;
    Assessment before = assess_at_once(named.plan, catalog()), after = assess_at_once(covered, catalog());
    EXPECT_FALSE(finding_of(after, "lid")) << named.name;
    // Under a lid a little less air comes in and less warmth goes out.
    const auto rest = [](const Assessment& assessment) {
      std::vector<Told> findings = told(assessment);
      std::erase_if(findings, [](const Told& one) { return one.rule == "lid" || one.rule == "oxygen" || one.rule == "heater"; });
      return findings;
    };
    EXPECT_EQ(rest(before), rest(after)) << named.name;
    EXPECT_EQ(before.room.layers, after.room.layers);
    EXPECT_EQ(before.load, after.load);
    for (Assessment* one : {&before, &after})
      std::erase_if(one->tightest, [](const Tightest& entry) { return entry.margin == "dawn_mg_l"; });
    EXPECT_EQ(before.tightest, after.tightest);
  }
  EXPECT_GT(open, 40 / plans_step);
}

TEST(TallIsNotLong, RaisingTheTankNeverGivesALongerRun) {
  for (NamedPlan named : many_plans()) {
    named.plan.substrate.line_cm.clear();
    named.plan.pieces.clear();  // higher levels pass over what stood in their way
    Plan tall = named.plan;
    tall.tank.height_cm *= 1.5;
    tall.tank.fill_cm *= 1.5;
    const Assessment before = assess_at_once(named.plan, catalog()), after = assess_at_once(tall, catalog());
    if (!(before.room.open_l > 0)) continue;  // nothing to swim in before
    for (const char* rule : {"swim-lane", "tank-length", "tank-width"}) {
      EXPECT_EQ(worst_of(before, rule), worst_of(after, rule)) << named.name << " " << rule;
    }
  }
}

TEST(AmbientNitrate, ClearsWithASourceThatHasNone) {
  Plan plan = a_plan().tap_nitrate(48).change(0.4, 7).kind("danio-rerio", 8);
  EXPECT_TRUE(finding_of(assess_at_once(plan, catalog()), "nitrate"));
  plan.source.nitrate_mg_l = 5;
  EXPECT_FALSE(finding_of(assess_at_once(plan, catalog()), "nitrate"));
}

TEST(HotWater, NeverMendsItselfByAnotherDegree) {
  for (const NamedPlan& named : many_plans()) {
    std::optional<Severity> last;
    double far = 0;
    for (int temperature_c = 28; temperature_c <= 34; ++temperature_c) {
      Plan hot = named.plan;
      if (!hot.water) hot.water = WaterAim{};
      hot.water->temperature_c = temperature_c;
      const Assessment now = assess_at_once(hot, catalog());
      if (!now.water.temperature_c.tolerated || temperature_c < now.water.temperature_c.tolerated->high) continue;
      const std::optional<Severity> severity = worst_of(now, "water-temperature");
      EXPECT_FALSE(graver_than(last, severity)) << named.name << " at " << temperature_c;
      if (last && now.water.temperature_c.margin) {
        EXPECT_LT(*now.water.temperature_c.margin, far) << named.name;
      }
      far = now.water.temperature_c.margin.value_or(0);
      last = severity;
    }
  }
}

TEST(HotWater, NeverLeavesMoreAirBehind) {
  int judged = 0;
  for (const NamedPlan& named : many_plans()) {
    std::optional<Severity> last;
    double before = 100;
    for (int temperature_c = 28; temperature_c <= 32; ++temperature_c) {
      Plan hot = named.plan;
      if (!hot.water) hot.water = WaterAim{};
      hot.water->temperature_c = temperature_c;
      const Assessment now = assess_at_once(hot, catalog());
      const std::optional<Severity> severity = worst_of(now, "oxygen");
      const double dawn = now.air.dawn_mg_l.value_or(0);
      // Where plants use nearly all, whose use does not grow with warmth here, livelier gas may make up for it from 31 degrees
      // on.
      if (dawn <= before) {
        EXPECT_FALSE(graver_than(last, severity)) << named.name << " at " << temperature_c;
      }
      before = dawn;
      last = severity;
    }
    judged += last.has_value();
  }
  EXPECT_GT(judged, 20 / plans_step);
}

TEST(DoubledRation, DoublesAmmoniaAndWhatNitrateClimbsOverTheTap) {
  int looked_at = 0;
  for (const NamedPlan& named : many_plans()) {
    if (!named.plan.feeding) continue;
    Plan once = named.plan, twice = named.plan;
    once.feeding->ration = Ration::normal;
    twice.feeding->ration = Ration::heavy;  // twice the food
    const Load a = assess_at_once(once, catalog()).load, b = assess_at_once(twice, catalog()).load;
    if (!a.tan_mg_d) continue;
    EXPECT_NEAR(*b.tan_mg_d, 2 * *a.tan_mg_d, 1e-9 * *b.tan_mg_d) << named.name;
    if (!a.nitrate_peak_mg_l) continue;
    ++looked_at;
    const double source = *named.plan.source.nitrate_mg_l, once_over = *a.nitrate_peak_mg_l - source;
    EXPECT_NEAR(*b.nitrate_peak_mg_l - source, 2 * once_over, 1e-9 * (1 + once_over)) << named.name;
  }
  EXPECT_GT(looked_at, 100 / plans_step);
}

TEST(ThirdSpecies, NeverWidensTheSharedWindow) {
  for (const NamedPlan& named : many_plans()) {
    Plan more = named.plan;
    Group third;
    third.species = catalog().species[more.stock.size() % catalog().species.size()].id;
    third.count = 1;
    more.stock.push_back(third);
    const Windows before = assess_at_once(named.plan, catalog()).water, after = assess_at_once(more, catalog()).water;
    for (const auto window : {&Windows::temperature_c, &Windows::ph, &Windows::gh_dgh, &Windows::kh_dkh}) {
      const Window &was = before.*window, &is = after.*window;
      if (was.low_by.empty()) continue;  // nobody bound it
      EXPECT_FALSE(is.tolerated && !was.tolerated) << named.name;
      if (!is.tolerated || !was.tolerated) continue;
      EXPECT_GE(is.tolerated->low, was.tolerated->low) << named.name;
      EXPECT_LE(is.tolerated->high, was.tolerated->high) << named.name;
    }
  }
}

TEST(Strictness, NeverJudgesMilderWhereItIsStricter) {
  for (const NamedPlan& named : many_plans()) {
    Assessment views[3];
    for (int i = 0; i < 3; ++i) {
      Plan plan = named.plan;
      plan.strictness = static_cast<Strictness>(i);
      views[i] = assess_at_once(plan, catalog());
    }
    for (int i = 0; i < 2; ++i)
      for (const Finding& finding : views[i].findings)
        EXPECT_FALSE(graver_than(finding.severity, worst_of(views[i + 1], finding.rule)))
            << named.name << ": " << finding.rule << " in view " << i << "; then " << said(views[i + 1]);
  }
}

TEST(Strictness, ChangesOnlyWhereSourcesDiffer) {
  // Where sources give one figure the three views are equal.
  const std::set<std::string> divided = {"group-size",  "crowding-top", "crowding-mid", "crowding-bottom", "territory",
                                         "tank-length", "tank-volume",  "adult-size",   "water-gh",        "nitrate",
                                         "substrate",   "cover",        "predation",    "fin-nipping",     "temperament"};
  std::set<std::string> same_everywhere;
  for (const NamedPlan& named : many_plans()) {
    std::vector<std::pair<std::string, Severity>> views[3];
    for (int i = 0; i < 3; ++i) {
      Plan plan = named.plan;
      plan.strictness = static_cast<Strictness>(i);
      for (const Finding& finding : assess_at_once(plan, catalog()).findings)
        if (!divided.count(finding.rule)) views[i].push_back({finding.rule, finding.severity});
    }
    EXPECT_EQ(views[0], views[1]) << named.name;
    EXPECT_EQ(views[1], views[2]) << named.name;
    for (const auto& one : views[1]) same_everywhere.insert(one.first);
  }
  EXPECT_GE(same_everywhere.size(), 9u);
}

TEST(AssumedValues, NeverMakeAHarmOfWhatRestsOnThem) {
  for (const NamedPlan& named : many_plans()) {
    Plan guessed = named.plan;
    guessed.assumed = {"/feeding", "/measured", "/planting", "/source", "/stock", "/substrate", "/tank", "/upkeep", "/water"};
    const Assessment unsure = assess_at_once(guessed, catalog());
    for (const Finding& finding : unsure.findings) {
      if (begins_with(finding.text, "No shared ")) continue;  // two cards that do not meet rest on no value of the plan
      EXPECT_NE(finding.severity, Severity::harm) << named.name << ": " << finding.rule << " " << finding.text;
    }
  }
}

TEST(AssumedValues, NeverMakeAnythingGraver) {
  for (const NamedPlan& named : many_plans()) {
    Plan known = named.plan, guessed = named.plan;
    known.assumed.clear();
    guessed.assumed = {"/feeding", "/measured", "/planting", "/source", "/stock", "/substrate", "/tank", "/upkeep", "/water"};
    const Assessment sure = assess_at_once(known, catalog()), unsure = assess_at_once(guessed, catalog());
    // An edge of the water is left out where it is no graver than that two kinds do not meet.
    ASSERT_GE(sure.findings.size(), unsure.findings.size()) << named.name;
    EXPECT_EQ(sure.room.layers, unsure.room.layers);
    EXPECT_EQ(sure.tightest, unsure.tightest);
    for (const Finding& finding : unsure.findings)
      EXPECT_FALSE(graver_than(finding.severity, worst_of(sure, finding.rule))) << named.name << " " << finding.rule;
  }
}

TEST(Seen, ChangesNothingInWhatIsFound) {
  for (const NamedPlan& named : many_plans()) {
    const Assessment before = assess_at_once(named.plan, catalog());
    Plan seen = named.plan;
    for (const Finding& finding : before.findings) {
      Seen one;
      one.rule = finding.rule;
      one.species = finding.species;
      seen.seen.push_back(one);
    }
    EXPECT_EQ(before, assess_at_once(seen, catalog())) << named.name;
  }
}

TEST(Assess, GivesTheSameEachTime) {
  for (const NamedPlan& named : many_plans())
    EXPECT_EQ(assess_at_once(named.plan, catalog()), assess_at_once(named.plan, catalog())) << named.name;
}

TEST(Assess, OrdersFindingsBySeverityRuleSpecies) {
  for (const NamedPlan& named : many_plans()) {
    const Assessment assessment = assess_at_once(named.plan, catalog());
    for (std::size_t i = 1; i < assessment.findings.size(); ++i) {
      const Finding &a = assessment.findings[i - 1], &b = assessment.findings[i];
      EXPECT_TRUE(std::tie(a.severity, a.rule, a.species) <= std::tie(b.severity, b.rule, b.species)) << named.name;
    }
  }
}

TEST(UnknownSpecies, KeepsEverySumBack) {
  for (const NamedPlan& named : many_plans()) {
    Plan plan = named.plan;
    Group group;
    group.species = "brown thing from the bag";
    group.count = 3;
    plan.stock.push_back(group);
    const Assessment assessment = assess_at_once(plan, catalog());
    ASSERT_TRUE(finding_of(assessment, "unknown-species")) << named.name;
    for (const Layer& layer : assessment.room.layers) EXPECT_FALSE(layer.crowding) << named.name;
    EXPECT_FALSE(assessment.room.floor_crowding || assessment.load.feed_g_d || assessment.load.nitrate_peak_mg_l) << named.name;
    for (const GroupRoom& one : assessment.room.groups) EXPECT_FALSE(one.largest_count) << named.name;
    for (const Tightest& one : assessment.tightest)
      EXPECT_TRUE(one.margin != "crowding_l_cm" && one.margin != "floor_cm2" && one.margin != "nitrate_mg_l") << named.name;
  }
}

}  // namespace
}  // namespace shoalwright
