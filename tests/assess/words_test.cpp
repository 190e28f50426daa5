// SPDX-License-Identifier: MIT
// How findings are worded, over every plan and every rule.
#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <functional>
#include <set>
#include <sstream>

#include "plan/more_keys.h"
#include "support/random_stock.h"

namespace shoalwright {
namespace {

const Catalog& catalog() { return the_catalog(); }

/// The app says plate numbers for names: a name counts as one word.
std::string without_names(std::string text, const Plan& plan) {
  std::set<std::string> names;
  for (const Species& species : catalog().species) names.insert(display_name(species));
  for (const Species& species : plan.own_species) names.insert(display_name(species));
  for (const Group& group : plan.stock) names.insert(group.species);
  std::vector<std::string> longest_first(names.begin(), names.end());
  std::stable_sort(longest_first.begin(), longest_first.end(),
                   [](const std::string& a, const std::string& b) { return a.size() > b.size(); });
  for (std::string name : longest_first)
    for (int pass = 0; pass < 2; ++pass) {
      for (std::size_t at; (at = text.find(name)) != std::string::npos;) text.replace(at, name.size(), "1");
      if (!name.empty() && name[0] >= 'a' && name[0] <= 'z') name[0] = static_cast<char>(name[0] - 'a' + 'A');
    }
  return text;
}

int words_in(const std::string& text) {
  std::istringstream stream(text);
  int words = 0;
  for (std::string word; stream >> word;) ++words;
  return words;
}

/// What no plan drawn at random is sure to have: fish that swim already where a kit reads ammonia and nitrite, and an aimed pH
/// that its carbonate hardness does not give; water from a well; arrivals that press a young filter; a brackish kind.
std::vector<NamedPlan> plans_of_rare_trouble() {
  NamedPlan not_ready{"not ready", many_plans().front().plan};
  for (const NamedPlan& one : many_plans())
    if (one.name == "riverbank.json" || one.name == "riverbank") not_ready.plan = one.plan;
  NamedPlan out_of_reach{"out of reach", not_ready.plan};
  not_ready.plan.measured =
      Measured{.date = "", .temperature_c = 25, .ph = 7.8, .ammonia_mg_l = 1, .nitrite_mg_l = 0.5, .other_keys = ""};
  for (Group& group : not_ready.plan.stock) group.have = group.count;
  set_private(not_ready.plan.source, true);
  out_of_reach.plan.water = WaterAim{.temperature_c = 25, .ph = 9, .gh_dgh = 7, .kh_dkh = 3, .other_keys = ""};

  NamedPlan arrivals{"arrivals", not_ready.plan};
  arrivals.plan.running_weeks = 1;
  arrivals.plan.measured.reset();
  for (Group& group : arrivals.plan.stock) group.have = 0, group.arrives_week = 1;
  Species salty = catalog().species.front();
  salty.id = "own--estuary";
  salty.name.common = {{"en", "Estuary fish"}};
  salty.water.salinity = Salinity::brackish;
  arrivals.plan.own_species.push_back(salty);
  arrivals.plan.stock.push_back({.species = salty.id, .count = 4, .note = "", .other_keys = ""});
  arrivals.plan.stock.push_back({.species = "otocinclus-vittatus", .count = 6, .note = "", .other_keys = ""});
  NamedPlan untested{"untested", arrivals.plan};
  untested.plan.stock.front().have = untested.plan.stock.front().count;
  return {not_ready, out_of_reach, arrivals, untested};
}

/// Every finding of every plan in all three views, each text once.
void each_finding(const std::function<void(const NamedPlan&, const Finding&)>& look) {
  static const std::vector<NamedPlan> rare = plans_of_rare_trouble();
  static const auto all = [] {
    std::vector<std::pair<const NamedPlan*, Finding>> found;
    std::set<std::string> heard;
    const auto listen = [&](const NamedPlan& named) {
      for (int view = 0; view < 3; ++view) {
        Plan plan = named.plan;
        plan.strictness = static_cast<Strictness>(view);
        for (Finding& finding : assess_at_once(plan, catalog()).findings)
          if (heard.insert(finding.rule + finding.text + finding.why + finding.remedy).second)
            found.push_back({&named, std::move(finding)});
      }
    };
    for (const NamedPlan& named : many_plans()) listen(named);
    for (const NamedPlan& named : rare) listen(named);
    return found;
  }();
  for (const auto& [named, finding] : all) look(*named, finding);
}

TEST(Words, WhatIsAFactInAtMostSevenWords) {
  each_finding([](const NamedPlan& named, const Finding& finding) {
    const std::string text = without_names(finding.text, named.plan);
    EXPECT_LE(words_in(text), 7) << finding.text;
    EXPECT_GE(words_in(text), 2) << finding.text;
    EXPECT_EQ(text.find('.', text.size() - 1), std::string::npos) << "a heading has no full stop: " << text;
  });
}

TEST(Words, WhyIsWholeSentences) {
  each_finding([](const NamedPlan&, const Finding& finding) {
    ASSERT_FALSE(finding.why.empty()) << finding.rule << " " << finding.text;
    EXPECT_EQ(finding.why.back(), '.') << finding.why;
    EXPECT_FALSE(finding.why[0] >= 'a' && finding.why[0] <= 'z' && finding.why.rfind("pH", 0) != 0) << finding.why;
    EXPECT_LT(finding.why.size(), 320u) << finding.why;
  });
}

TEST(Words, WhyOfALimitNamesBothNumbers) {
  const std::set<std::string> measured = {"crowding-top", "territory", "tank-length", "tank-width", "tank-height", "tank-volume",
                                          "swim-lane",    "nitrate",   "load",        "group-size", "adult-size"};
  each_finding([&](const NamedPlan&, const Finding& finding) {
    if (!measured.count(finding.rule)) return;
    int numbers = 0;
    for (std::size_t i = 0; i < finding.why.size(); ++i)
      numbers += std::isdigit(static_cast<unsigned char>(finding.why[i])) &&
                 (i == 0 || (!std::isdigit(static_cast<unsigned char>(finding.why[i - 1])) && finding.why[i - 1] != '.'));
    if (finding.why.find("one is kept") != std::string::npos) ++numbers;
    EXPECT_GE(numbers, 2) << finding.rule << ": " << finding.why;
  });
}

TEST(Words, AreOurOwnAndPlain) {
  const char* not_used[] = {"!",          "%%",        "  ",
                            "nan",        "inf ",      " safe",
                            "approved",   "optimal",   "stocking level",
                            "score",      "rating",    " risk",
                            "compatible", "parameter", "bioload",
                            "inhabitant", "optimise",  "great",
                            "sorry",      "please",    "improve water quality"};
  each_finding([&](const NamedPlan& named, const Finding& finding) {
    for (const std::string& text : {finding.text, finding.why, finding.remedy}) {
      const std::string plain = without_names(text, named.plan);
      for (const char* word : not_used) EXPECT_EQ(plain.find(word), std::string::npos) << "\"" << word << "\" in: " << text;
    }
  });
}

TEST(Words, NoFigureIsFinerThanAKeeperCanMeasure) {
  each_finding([](const NamedPlan& named, const Finding& finding) {
    if (finding.rule == "ammonia") return;  // kits for it read hundredths
    for (const std::string& text : {finding.text, finding.why, finding.remedy}) {
      const std::string plain = without_names(text, named.plan);
      for (std::size_t i = 1; i + 2 < plain.size(); ++i)
        EXPECT_FALSE(plain[i] == '.' && std::isdigit(static_cast<unsigned char>(plain[i - 1])) &&
                     std::isdigit(static_cast<unsigned char>(plain[i + 1])) &&
                     std::isdigit(static_cast<unsigned char>(plain[i + 2])))
            << "two decimals in: " << text;
    }
  });
}

TEST(Words, ARemedyIsAVerbWithItsAmount) {
  const std::set<std::string> verbs = {"Move", "Keep", "Leave", "Re-home", "Take",  "Set",  "Choose", "Change", "Feed", "Mix",
                                       "Put",  "Fill", "Add",   "Say",     "Enter", "Test", "Aim",    "Warm",   "Cool", "Ask"};
  each_finding([&](const NamedPlan&, const Finding& finding) {
    if (finding.remedy.empty()) {
      EXPECT_TRUE(finding.edits.empty()) << finding.rule;
      return;
    }
    const std::string first = finding.remedy.substr(0, finding.remedy.find(' '));
    EXPECT_TRUE(verbs.count(first)) << finding.remedy;
    EXPECT_NE(finding.remedy.back(), '.') << finding.remedy;
  });
}

TEST(Words, EvidenceNamesItsSourceExactlyWhereItIsPublished) {
  each_finding([](const NamedPlan&, const Finding& finding) {
    EXPECT_EQ(finding.evidence == Evidence::published, !finding.source.empty()) << finding.rule;
  });
}

TEST(Words, RulesAreThoseOfTheFormat) {
  const std::set<std::string> ids = {"water-temperature",
                                     "water-ph",
                                     "water-gh",
                                     "water-kh",
                                     "water-unreachable",
                                     "water-change-shock",
                                     "kh-low",
                                     "softened-water",
                                     "acid",
                                     "tap-disinfectant",
                                     "private-water",
                                     "brackish",
                                     "cycle",
                                     "mature-tank",
                                     "group-size",
                                     "territory",
                                     "sex-ratio",
                                     "male-rivalry",
                                     "look-alike-rivalry",
                                     "temperament",
                                     "predation",
                                     "fin-nipping",
                                     "invertebrate-predation",
                                     "feeding",
                                     "hybrid",
                                     "surplus-young",
                                     "plant-eater",
                                     "legal",
                                     "adult-size",
                                     "unknown-species",
                                     "tank-length",
                                     "tank-width",
                                     "tank-height",
                                     "tank-volume",
                                     "swim-lane",
                                     "crowding-top",
                                     "crowding-mid",
                                     "crowding-bottom",
                                     "substrate",
                                     "cover",
                                     "wood-needed",
                                     "current",
                                     "lid",
                                     "load",
                                     "nitrate",
                                     "ammonia",
                                     "oxygen",
                                     "filter",
                                     "heater",
                                     "empty",
                                     "unknown-input"};
  std::set<std::string> met;
  each_finding([&](const NamedPlan&, const Finding& finding) {
    EXPECT_TRUE(ids.count(finding.rule)) << finding.rule;
    met.insert(finding.rule);
  });
  EXPECT_EQ(met, ids) << "every rule has been heard";
}

TEST(Words, CautionsAreNeverFindingsAndAlwaysThere) {
  for (const NamedPlan& named : many_plans()) {
    const Assessment assessment = assessed(named);
    std::string all;
    for (const std::string& caution : assessment.cautions) all += caution + "\n";
    for (const char* part : {"kg", "Unplug", "electrician", "Never release", "vet", "siphon"})
      EXPECT_NE(all.find(part), std::string::npos) << part << " is missing for " << named.name;
    EXPECT_EQ(all.find("conditioner") != std::string::npos, named.plan.source.disinfectant != Disinfectant::none) << named.name;
    for (const char* rule : {"release", "weight", "electricity", "quarantine"}) EXPECT_FALSE(finding_of(assessment, rule));
  }
}

}  // namespace
}  // namespace shoalwright
