// SPDX-License-Identifier: MIT
#include "fill/fill.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "advice/shelf.h"
#include "assess/assess.h"
#include "fill/fill_plan_json.h"
#include "fill/offers.h"
#include "share/plan_json.h"
#include "support/builders.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

const Catalog& whole() { return the_catalog(); }

/// A shelf of these kinds alone.
Catalog shelf_of(const std::vector<std::string>& ids) {
  Catalog few;
  few.whole = true;
  for (const std::string& id : ids) few.species.push_back(*find_species(whole(), id));
  return few;
}

using List = std::vector<std::pair<std::string, int>>;

/// What is new in a plan with a list, judged by the whole assessment.
bool raises(const Plan& plan, const Catalog& catalog, const List& list) {
  BodyRooms bodies;
  const std::vector<Grade> before = grades_of(plan, catalog, bodies);
  const std::vector<Grade> after = grades_of(with_stock(plan, {.score = 0, .fresh = list}), catalog, bodies);
  return std::any_of(after.begin(), after.end(), [&](const Grade& one) { return !known_before(one, before); });
}

bool lacks_two(const List& list, const List& other) {
  return std::count_if(list.begin(), list.end(), [&](const auto& one) {
           return std::none_of(other.begin(), other.end(), [&](const auto& two) { return one.first == two.first; });
         }) >= 2;
}

/// The best lists by trying all of them.
std::vector<FilledStock> by_trying_all(const Plan& plan, const Catalog& catalog) {
  FillPlan fill = fill_plan(plan, catalog, {});
  LargestSearch largest(plan, catalog, fill.now.stock, fill.now.volume, fill.now.room, fill.bodies);
  std::vector<FillOffer> offers;
  for (const Species& species : catalog.species) {
    const bool here = std::any_of(fill.now.stock.begin(), fill.now.stock.end(), [&](const Kept& kept) {
      return kept.id == species.id || nearly_doubles(*kept.species, species);
    });
    if (here) continue;
    if (const std::optional<FillOffer> offer = offer_of(fill, largest, species)) offers.push_back(*offer);
  }
  std::vector<FilledStock> all;
  const auto try_all = [&](const auto& self, std::size_t from, const FilledStock& list,
                           std::vector<const Species*> kinds) -> void {
    if (!list.fresh.empty() && !raises(plan, catalog, list.fresh)) all.push_back(list);
    if (static_cast<int>(kinds.size()) == fill.wishes.most_kinds) return;
    for (std::size_t i = from; i < offers.size(); ++i) {
      const FillOffer& offer = offers[i];
      if (std::any_of(kinds.begin(), kinds.end(), [&](const Species* kind) {
            return nearly_doubles(*kind, *offer.species) || (is_show_fish(*kind) && is_show_fish(*offer.species));
          }))
        continue;
      std::vector<const Species*> more = kinds;
      more.push_back(offer.species);
      for (int count = offer.least; count <= offer.most; ++count) {
        FilledStock next = list;
        next.score += (offer.for_kind + count * offer.for_each) / 10.0;
        next.fresh.emplace_back(offer.species->id, count);
        self(self, i + 1, next, more);
      }
    }
  };
  try_all(try_all, 0, {}, {});
  std::vector<FilledStock> best;
  while (best.size() < 3) {
    const FilledStock* next = nullptr;
    for (const FilledStock& one : all)
      if ((!next || one.score > next->score + 1e-9) &&
          std::all_of(best.begin(), best.end(), [&](const FilledStock& other) { return lacks_two(one.fresh, other.fresh); }))
        next = &one;
    if (!next) break;
    best.push_back(*next);
  }
  return best;
}

Plan wishing(Plan plan, const FillWishes& wishes) {
  set_wishes(plan, wishes);
  return plan;
}

struct Case {
  const char* name;
  Plan plan;
  std::vector<std::string> kinds;
};

std::vector<Case> cases() {
  FillWishes three;
  three.most_kinds = 3;
  const std::vector<std::string> small = {"danio-rerio", "puntius-titteya", "trichogaster-chuna", "pangio-semicincta",
                                          "carnegiella-strigata"};
  const std::vector<std::string> quarrels = {"puntigrus-tetrazona", "betta-splendens", "trichogaster-chuna", "neocaridina-davidi",
                                             "pterophyllum-scalare"};
  const std::vector<std::string> floor = {"corydoras-sterbai", "pangio-semicincta", "apistogramma-cacatuoides",
                                          "mikrogeophagus-ramirezi", "otocinclus-vittatus"};
  const std::vector<std::string> breath = {"betta-splendens", "neocaridina-davidi", "planorbella-duryi", "vittina-natalensis",
                                           "physella-acuta"};
  return {
      {"room to spare", wishing(a_plan().tank(118, 48, 48).planted(Planting::medium).plan(), three), small},
      {"a full tank", wishing(a_plan().tank(78, 28, 30).planted(Planting::light).plan(), three), small},
      {"beside a shoal",
       wishing(a_plan().tank(98, 38, 40).planted(Planting::light).kind("trigonostigma-heteromorpha", 10).plan(), three), small},
      {"nipping and eating", wishing(a_plan().tank(118, 48, 58).planted(Planting::medium).plan(), three), quarrels},
      {"one floor", wishing(a_plan().tank(78, 33, 38).planted(Planting::medium).plan(), three), floor},
      {"few changes, much nitrate in the tap",
       wishing(a_plan().tank(78, 33, 38).planted(Planting::light).tap_nitrate(25).change(0.2, 10).plan(), three), small},
      {"a small tank, little air", wishing(a_plan().tank(29, 29, 29).planted(Planting::light).plan(), three), breath},
  };
}

TEST(Fill, FindsTheListsThatTryingAllFinds) {
  std::size_t bound = 0;
  for (const Case& one : cases()) {
    const Catalog catalog = shelf_of([&] {
      std::vector<std::string> ids = one.kinds;
      for (const Group& group : one.plan.stock) ids.push_back(group.species);
      return ids;
    }());
    const std::vector<FilledStock> all = by_trying_all(one.plan, catalog);
    const Filled found = fill(one.plan, catalog);
    EXPECT_TRUE(found.proven) << one.name;
    ASSERT_EQ(found.stocks.size(), all.size()) << one.name << " " << found.why_none;
    for (std::size_t i = 0; i < all.size(); ++i) {
      EXPECT_NEAR(found.stocks[i].score, all[i].score, 1e-9) << one.name << " place " << i;
      EXPECT_FALSE(raises(one.plan, catalog, found.stocks[i].fresh)) << one.name;
    }
    // Whether anything but the number of kinds and their good sizes limits it.
    FillPlan free = fill_plan(one.plan, catalog, {});
    LargestSearch largest(one.plan, catalog, free.now.stock, free.now.volume, free.now.room, free.bodies);
    std::vector<int> most;
    for (const Species& species : catalog.species)
      if (const auto offer = offer_of(free, largest, species)) most.push_back(offer->for_kind + offer->most * offer->for_each);
    std::sort(most.rbegin(), most.rend());
    int sum = 0;
    for (std::size_t i = 0; i < 3 && i < most.size(); ++i) sum += most[i];
    bound += !found.stocks.empty() && sum > static_cast<int>(found.stocks.front().score * 10 + 0.5);
  }
  EXPECT_GE(bound, 3u) << "the cases do not press hard enough";
}

TEST(Fill, OverTheWholeCatalogueEveryListIsSoundAndProven) {
  for (const NamedPlan& named : all_plans()) {
    if (named.name != "riverbank.json" && named.name != "cool-unheated.json" && named.name != "fighter-cube.json") continue;
    const Filled found = fill(named.plan, whole());
    EXPECT_TRUE(found.proven) << named.name;
    EXPECT_EQ(found.stocks.size(), 3u) << named.name;
    for (std::size_t i = 0; i < found.stocks.size(); ++i) {
      EXPECT_FALSE(raises(named.plan, whole(), found.stocks[i].fresh)) << named.name;
      EXPECT_LE(found.stocks[i].fresh.size(), 4u);
      for (std::size_t j = 0; j < i; ++j) {
        EXPECT_LE(found.stocks[i].score, found.stocks[j].score);
        EXPECT_TRUE(lacks_two(found.stocks[i].fresh, found.stocks[j].fresh));
      }
    }
  }
}

TEST(Fill, KeepsToWishes) {
  const Plan plan = a_plan().tank(98, 38, 40).planted(Planting::medium).plan();
  const auto has = [](const FilledStock& list, const std::string& id) {
    return std::any_of(list.fresh.begin(), list.fresh.end(), [&](const auto& one) { return one.first == id; });
  };
  FillWishes wishes;
  wishes.must = {"trichogaster-chuna"};
  wishes.most_kinds = 2;
  Filled found = fill(wishing(plan, wishes), whole());
  ASSERT_FALSE(found.stocks.empty());
  for (const FilledStock& list : found.stocks) {
    EXPECT_TRUE(has(list, "trichogaster-chuna"));
    EXPECT_LE(list.fresh.size(), 2u);
  }

  wishes = {};
  const Filled free = fill(plan, whole());
  for (const auto& [id, count] : free.stocks.front().fresh) wishes.never.push_back(id);
  found = fill(wishing(plan, wishes), whole());
  for (const FilledStock& list : found.stocks)
    for (const std::string& id : wishes.never) EXPECT_FALSE(has(list, id));
  EXPECT_LE(found.stocks.front().score, free.stocks.front().score);

  wishes = {};
  wishes.easy_only = true;
  for (const FilledStock& list : fill(wishing(plan, wishes), whole()).stocks)
    for (const auto& [id, count] : list.fresh) EXPECT_NE(find_species(whole(), id)->water.hardiness, "delicate") << id;

  wishes = {};
  wishes.levels[3] = true;
  wishes.colours[static_cast<std::size_t>(Colour::red)] = true;
  const Filled red = fill(wishing(plan, wishes), whole());
  ASSERT_FALSE(red.stocks.empty());
  for (const auto& [id, count] : red.stocks.front().fresh)
    EXPECT_TRUE(colours_of(*find_species(whole(), id))[static_cast<std::size_t>(Colour::red)] ||
                find_species(whole(), id)->life.depth[2] > 0.3)
        << id;

  wishes = {};
  wishes.must = {"osphronemus-goramy"};
  const Filled none = fill(wishing(plan, wishes), whole());
  EXPECT_TRUE(none.stocks.empty());
  EXPECT_NE(none.why_none, "");
}

TEST(Fill, ATankWithoutAShowFishGetsOneAndNoneGetsTwo) {
  const auto shows = [](const FilledStock& list) {
    return std::count_if(list.fresh.begin(), list.fresh.end(),
                         [](const auto& one) { return is_show_fish(*find_species(whole(), one.first)); });
  };
  const PlanBuilder tank = a_plan().tank(98, 38, 44).planted(Planting::medium).kind("trigonostigma-heteromorpha", 10);
  for (const FilledStock& list : fill(tank, whole()).stocks) EXPECT_EQ(shows(list), 1);
  for (const FilledStock& list : fill(PlanBuilder(tank).kind("trichopodus-leerii", 3).plan(), whole()).stocks)
    EXPECT_LE(shows(list), 1);
  FillWishes both;
  both.must = {"trichogaster-chuna", "apistogramma-cacatuoides"};
  for (const FilledStock& list : fill(wishing(tank, both), whole()).stocks) EXPECT_EQ(shows(list), 2) << "both were wished for";
}

TEST(Fill, StoppedEarlyItHasAListThatFitsAndClaimsNothing) {
  const Plan plan = a_plan().tank(78, 33, 38).planted(Planting::light).plan();
  FillSearch search(plan, whole());
  Filled early;
  while (!search.step()) {
    early = search.found();
    EXPECT_FALSE(early.proven);
    if (!early.stocks.empty()) break;
  }
  ASSERT_FALSE(early.stocks.empty());
  EXPECT_FALSE(raises(plan, whole(), early.stocks.front().fresh));
  while (!search.step()) {
  }
  EXPECT_EQ(filled_json(plan, whole(), search.found(), 0), filled_json(plan, whole(), fill(plan, whole()), 0));
}

TEST(Fill, TheOrderOfLinesDoesNotShow) {
  Plan plan = a_plan().tank(98, 38, 40).planted(Planting::medium).kind("danio-rerio", 8).kind("pangio-semicincta", 6).plan();
  const Filled one = fill(plan, whole());
  std::swap(plan.stock[0], plan.stock[1]);
  const Filled other = fill(plan, whole());
  ASSERT_EQ(one.stocks.size(), other.stocks.size());
  for (std::size_t i = 0; i < one.stocks.size(); ++i) EXPECT_EQ(one.stocks[i].fresh, other.stocks[i].fresh);
}

TEST(FillWishes, TravelInThePlanAndBadOnesCountAsNotSaid) {
  FillWishes wishes;
  wishes.must = {"danio-rerio"};
  wishes.never = {"betta-splendens", "a \"b\""};
  wishes.levels = {true, false, false, true};
  wishes.colours[static_cast<std::size_t>(Colour::blue)] = true;
  wishes.most_kinds = 6;
  wishes.easy_only = true;
  const Plan plan = wishing(a_plan().plan(), wishes);
  const Result<Plan> back = read_plan(plan_json(plan));
  ASSERT_TRUE(back);
  EXPECT_EQ(wishes_of(*back), wishes);
  EXPECT_EQ(wishing(plan, {}), a_plan().plan());

  const auto read = [](const std::string& text) {
    Plan bad = a_plan().plan();
    bad.other_keys = "{\"wishes\":" + text + "}";
    return wishes_of(bad);
  };
  for (const char* text : {"7", "[]", "{}", R"({"must":7,"levels":["deep"],"most_kinds":0,"easy_only":"yes"})",
                           R"({"most_kinds":99,"colours":[1,"plaid"]})"})
    EXPECT_EQ(read(text), FillWishes()) << text;
}

TEST(FillWishes, ColoursAreTheFamiliesOfTheFlankTheMarksAndTheAccent) {
  Species species;
  const auto shows = [&](std::vector<std::string> colours) {
    species.look.colours = std::move(colours);
    std::set<std::string> names;
    for (std::size_t i = 0; i < colour_count; ++i)
      if (colours_of(species)[i]) names.insert(std::string(name_of(static_cast<Colour>(i))));
    return names;
  };
  using Names = std::set<std::string>;
  EXPECT_EQ(shows({"#d02020"}), Names{"red"});
  EXPECT_EQ(shows({"#f08a20"}), Names{"orange"});
  EXPECT_EQ(shows({"#f0d020"}), Names{"yellow"});
  EXPECT_EQ(shows({"#30a040"}), Names{"green"});
  EXPECT_EQ(shows({"#2060d0"}), Names{"blue"});
  EXPECT_EQ(shows({"#8030c0"}), Names{"violet"});
  EXPECT_EQ(shows({"#b8bcc0"}), Names{"silver"});
  EXPECT_EQ(shows({"#101012"}), Names{"black"});
  EXPECT_EQ(shows({"#fafafa"}), Names{"white"});
  EXPECT_EQ(shows({"#d02020", "#2060d0", "#d02020", "#101012"}), (Names{"black", "blue"})) << "back and belly do not count";
  EXPECT_EQ(shows({"nonsense", ""}), Names{});
}

}  // namespace
}  // namespace shoalwright
