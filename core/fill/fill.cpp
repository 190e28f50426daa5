// SPDX-License-Identifier: MIT
#include "fill/fill.h"

#include <algorithm>
#include <optional>
#include <set>
#include <string_view>

#include "advice/shelf.h"
#include "advice/shelf_list.h"
#include "fill/offers.h"
#include "search/search.h"

namespace shoalwright {

namespace {

constexpr std::size_t most_lists = 3;
constexpr int differ_by = 2;
/// Work of the search and lists judged before the best so far has to do: some seconds each.
constexpr std::int64_t most_work = 400'000'000, work_a_step = 50'000;
constexpr int most_judged = 20'000;

/// Rules that more animals of a kind can silence.
bool mended_by_more(std::string_view rule) {
  constexpr std::string_view rules[] = {"group-size",  "sex-ratio",     "male-rivalry", "fin-nipping",
                                        "temperament", "surplus-young", "cover",        "look-alike-rivalry"};
  return std::find(std::begin(rules), std::end(rules), rule) != std::end(rules);
}

/// Kinds of which a list has one at most.
bool crowd_out(const FillOffer& a, const FillOffer& b) { return (a.show && b.show) || nearly_doubles(*a.species, *b.species); }

using Groups = std::vector<GroupChosen>;  ///< positions in the offers

/// A part that fails: no list has all of its groups at these counts or more; of an `exact` one only at just these counts.
struct Cut {
  Groups part;
  bool exact = false;
  bool hits(const Groups& list) const {
    return std::all_of(part.begin(), part.end(), [&](const GroupChosen& one) {
      return std::any_of(list.begin(), list.end(), [&](const GroupChosen& other) {
        return other.species == one.species && (exact ? other.count == one.count : other.count >= one.count);
      });
    });
  }
};

struct Bound {
  int species, least, most;
};

/// A problem that is narrower than the first by some bounds.
struct Branch {
  std::vector<Bound> bounds;
  double at_most = 0;
  std::optional<Groups> best;  ///< its best list, once it was searched
};

}  // namespace

struct FillState {
  FillPlan fill;
  LargestSearch largest;
  std::vector<const Species*> kinds;
  std::size_t next_kind = 0;
  std::vector<FillOffer> offers;
  StockProblem problem;
  std::vector<std::size_t> limited;  ///< what each of its capacities is of
  std::vector<Cut> cuts;
  std::set<std::pair<int, int>> pairs_judged;
  std::vector<Branch> open;
  std::optional<Search> search;  ///< of the last open branch
  struct Place {
    double score = -1;
    Groups groups;
  };
  std::vector<Place> places;
  Place best;  ///< fits, for the place that is being filled
  std::int64_t work = 0;
  int judged = 0;
  bool ended = false, in_order = true, begun = false;
  std::string why_none;

  FillState(const Plan& plan, const Catalog& catalog, BodyRooms known)
      : fill(fill_plan(plan, catalog, std::move(known))),
        largest(plan, catalog, fill.now.stock, fill.now.volume, fill.now.room, fill.bodies),
        kinds(shelf_kinds(plan, catalog)) {}

  void look_at_kind(const Species& species);
  void begin();
  void begin_place();
  void start_search();
  void judge(Branch branch);
  void branch_on(const Branch& from, const Cut& cut);
  bool learn_limit(const Groups& part);
  void end_place();
  bool fits(const Groups& groups);
  std::vector<Grade> raised(const Groups& groups);
  double score_of(const Groups& groups) const;
  bool may_stand(const Groups& groups) const;
  void keep(const Groups& groups);
  std::optional<Cut> why_not(const Groups& list);
  Cut lowered(Groups part);
};

void FillState::look_at_kind(const Species& species) {
  const FillWishes& wishes = fill.wishes;
  const auto has = [&](const std::vector<std::string>& list) { return is_ticked(list, species.id); };
  const bool here =
      std::any_of(fill.now.stock.begin(), fill.now.stock.end(), [&](const Kept& kept) { return kept.id == species.id; });
  if (here || has(wishes.never)) return;
  if (!has(wishes.must)) {
    if (wishes.easy_only && species.water.hardiness == "delicate") return;
    const bool doubles = std::any_of(fill.now.stock.begin(), fill.now.stock.end(),
                                     [&](const Kept& kept) { return kept.species && nearly_doubles(*kept.species, species); });
    if (doubles) return;
  }
  if (std::optional<FillOffer> offer = offer_of(fill, largest, species))
    offers.push_back(std::move(*offer));
  else if (has(wishes.must))
    why_none = display_name(species) + " does not fit beside what there is.";
}

void FillState::begin() {
  begun = true;
  const std::vector<std::pair<std::size_t, double>> capacities = capacities_of(fill, offers);
  for (const auto& [shared, most] : capacities) {
    limited.push_back(shared);
    problem.capacities.push_back(most);
  }
  for (const FillOffer& offer : offers) {
    Offer one{.least = offer.least,
              .most = offer.most,
              .present = offer.for_kind / 10.0,
              .each = offer.for_each / 10.0,
              .needs = {},
              .water = {},
              .must = offer.must};
    for (const auto& [shared, most] : capacities) one.needs.push_back(offer.takes_at_least[shared]);
    problem.species.push_back(std::move(one));
  }
  for (std::size_t i = 0; i < offers.size(); ++i)
    for (std::size_t j = i + 1; j < offers.size(); ++j)
      if (!(offers[i].must && offers[j].must) && crowd_out(offers[i], offers[j]))
        problem.conflicts.emplace_back(static_cast<int>(i), static_cast<int>(j));
  const auto musts = std::count_if(offers.begin(), offers.end(), [](const FillOffer& one) { return one.must; });
  problem.most_species = std::max(fill.wishes.most_kinds, static_cast<int>(musts));
  if (offers.empty() && why_none.empty()) why_none = "No kind of the shelf fits beside what there is.";
  if (why_none.empty())
    begin_place();
  else
    ended = true;
}

void FillState::begin_place() {
  best = {};
  open.clear();
  open.push_back({.bounds = {}, .at_most = 1e9, .best = {}});
}

void FillState::start_search() {
  StockProblem narrowed = problem;
  for (const Bound& bound : open.back().bounds) {
    Offer& offer = narrowed.species[static_cast<std::size_t>(bound.species)];
    offer.least = std::max(offer.least, bound.least);
    offer.most = std::min(offer.most, bound.most);
  }
  StocksAsked asked;
  asked.differ = differ_by;
  for (const Place& place : places) {
    asked.unlike.emplace_back();
    for (const GroupChosen& one : place.groups) asked.unlike.back().push_back(one.species);
  }
  search = begin_search(narrowed, asked);
}

double FillState::score_of(const Groups& groups) const {
  int tenths = 0;
  for (const GroupChosen& one : groups) {
    const FillOffer& offer = offers[static_cast<std::size_t>(one.species)];
    tenths += offer.for_kind + one.count * offer.for_each;
  }
  return tenths / 10.0;
}

std::vector<Grade> FillState::raised(const Groups& groups) {
  ++judged;
  std::vector<std::pair<const Species*, int>> added;
  for (const GroupChosen& one : groups) added.emplace_back(offers[static_cast<std::size_t>(one.species)].species, one.count);
  return raised_by(fill, added);
}

bool FillState::fits(const Groups& groups) { return raised(groups).empty(); }

/// Whether a list may stand in the place that is being filled.
bool FillState::may_stand(const Groups& groups) const {
  for (std::size_t i = 0; i < offers.size(); ++i)
    if (offers[i].must &&
        std::none_of(groups.begin(), groups.end(), [&](const GroupChosen& one) { return one.species == static_cast<int>(i); }))
      return false;
  return std::all_of(places.begin(), places.end(), [&](const Place& place) {
    const auto lacks = std::count_if(groups.begin(), groups.end(), [&](const GroupChosen& one) {
      return std::none_of(place.groups.begin(), place.groups.end(),
                          [&](const GroupChosen& other) { return other.species == one.species; });
    });
    return lacks >= differ_by;
  });
}

void FillState::keep(const Groups& groups) {
  const double score = score_of(groups);
  if (score > best.score && may_stand(groups)) best = {score, groups};
}

/// The same failing part with every count as low as it still fails, the others as they are by then.
Cut FillState::lowered(Groups part) {
  for (const Grade& one : raised(part))
    if (mended_by_more(one.rule)) return {.part = std::move(part), .exact = true};
  for (GroupChosen& one : part) {
    int low = offers[static_cast<std::size_t>(one.species)].least - 1, high = one.count;  // at high it fails
    while (high - low > 1) {
      one.count = low + (high - low) / 2;
      const std::vector<Grade> grades = raised(part);
      const bool mendable =
          std::any_of(grades.begin(), grades.end(), [](const Grade& grade) { return mended_by_more(grade.rule); });
      (!grades.empty() && !mendable ? high : low) = one.count;
    }
    one.count = high;
  }
  return {.part = std::move(part)};
}

/// Why a list does not fit: the smallest part of it that fails by itself. Empty where it fits.
std::optional<Cut> FillState::why_not(const Groups& list) {
  for (const Cut& cut : cuts)
    if (cut.hits(list)) return cut;
  if (fits(list)) return std::nullopt;
  const std::size_t all = (std::size_t{1} << list.size()) - 1;
  for (std::size_t size = 1; size < list.size(); ++size)
    for (std::size_t of = 1; of < all; ++of) {
      Groups part;
      for (std::size_t i = 0; i < list.size(); ++i)
        if (of >> i & 1) part.push_back(list[i]);
      if (part.size() != size || fits(part)) continue;
      return cuts.emplace_back(lowered(std::move(part)));
    }
  return cuts.emplace_back(lowered(list));
}

void FillState::branch_on(const Branch& from, const Cut& cut) {
  for (std::size_t i = 0; i < cut.part.size(); ++i) {
    const GroupChosen& one = cut.part[i];
    const auto add = [&](int least, int most) {
      Branch narrower{.bounds = from.bounds, .at_most = from.at_most, .best = {}};
      narrower.bounds.push_back({one.species, least, most});
      open.push_back(std::move(narrower));
    };
    add(1, one.count - 1);
    if (cut.exact) add(one.count + 1, most_animals);
  }
}

void FillState::judge(Branch branch) {
  const Groups& list = *branch.best;
  const std::optional<Cut> cut = why_not(list);
  if (!cut) {
    keep(list);
    return end_place();
  }
  // Something to show meanwhile: the list without what spoils it.
  Groups less = list;
  std::optional<Cut> still = cut;
  while (still && !less.empty()) {
    const int out = still->part.back().species;
    std::erase_if(less, [&](const GroupChosen& one) { return one.species == out; });
    still = less.empty() ? std::nullopt : why_not(less);
  }
  if (!less.empty()) keep(less);

  if (learn_limit(cut->part)) {
    branch.best.reset();
    open.push_back(std::move(branch));
    return;
  }
  const bool pair_at_least =
      !cut->exact && cut->part.size() == 2 && std::all_of(cut->part.begin(), cut->part.end(), [&](const GroupChosen& one) {
        return one.count == offers[static_cast<std::size_t>(one.species)].least;
      });
  if (pair_at_least) {
    problem.conflicts.emplace_back(cut->part[0].species, cut->part[1].species);
    branch.best.reset();
    open.push_back(std::move(branch));
  } else {
    branch_on(branch, *cut);
  }
}

/// Where a failing part passes a limit that is the same for all kinds, every list that takes as much passes it too.
bool FillState::learn_limit(const Groups& part) {
  for (const Grade& one : raised(part)) {
    const std::optional<std::size_t> shared = same_for_all(one.rule);
    if (!shared) continue;
    double taken = 0;
    for (const GroupChosen& group : part) taken += group.count * offers[static_cast<std::size_t>(group.species)].takes[*shared];
    constexpr double less = 1 - 1e-7;  // a list that takes just as much fails
    const auto at = std::find(limited.begin(), limited.end(), *shared);
    if (at != limited.end()) {
      double& most = problem.capacities[static_cast<std::size_t>(at - limited.begin())];
      if (taken * less >= most) continue;
      most = taken * less;
      return true;
    }
    limited.push_back(*shared);
    problem.capacities.push_back(taken * less);
    for (std::size_t i = 0; i < offers.size(); ++i) problem.species[i].needs.push_back(offers[i].takes_at_least[*shared]);
    return true;
  }
  return false;
}

void FillState::end_place() {
  if (best.score >= 0) {
    places.push_back(best);
    if (places.size() == most_lists) ended = true;
  } else {
    ended = true;  // nothing more differs enough
    if (places.empty()) why_none = "What is wished for does not go together here.";
  }
  if (!ended) begin_place();
}

FillSearch::FillSearch(const Plan& plan, const Catalog& catalog, BodyRooms known)
    : state_(std::make_unique<FillState>(plan, catalog, std::move(known))) {}
FillSearch::FillSearch(FillSearch&&) noexcept = default;
FillSearch& FillSearch::operator=(FillSearch&&) noexcept = default;
FillSearch::~FillSearch() = default;

bool FillSearch::step() {
  FillState& s = *state_;
  if (s.ended) return true;
  if (s.next_kind < s.kinds.size()) {
    s.look_at_kind(*s.kinds[s.next_kind++]);
  } else if (!s.begun) {
    s.begin();
  } else if (s.search) {
    if (!go_on(*s.search, work_a_step)) {
      s.work += work_a_step;
    } else {
      const StocksFound found = found_so_far(*s.search);
      s.work += found.work % work_a_step;
      s.search.reset();
      if (found.stocks.empty() || found.stocks.front().groups.empty()) {
        s.open.pop_back();  // nothing in it
      } else {
        s.open.back().best = found.stocks.front().groups;
        s.open.back().at_most = s.score_of(*s.open.back().best);
      }
    }
  } else {
    const auto next =
        std::max_element(s.open.begin(), s.open.end(), [](const Branch& a, const Branch& b) { return a.at_most < b.at_most; });
    if (next == s.open.end() || next->at_most <= s.best.score) {
      s.end_place();
    } else {
      std::swap(*next, s.open.back());
      if (s.open.back().best) {
        Branch branch = std::move(s.open.back());
        s.open.pop_back();
        s.judge(std::move(branch));
      } else {
        s.start_search();
      }
    }
  }
  if (!s.ended && (s.work >= most_work || s.judged >= most_judged)) {
    s.ended = true;
    s.in_order = false;
  }
  return s.ended;
}

Filled FillSearch::found() const {
  const FillState& s = *state_;
  Filled filled{.stocks = {}, .proven = s.ended && s.in_order, .why_none = s.why_none};
  const auto add = [&](const FillState::Place& place) {
    FilledStock list{.score = place.score, .fresh = {}};
    for (const GroupChosen& one : place.groups)
      list.fresh.emplace_back(s.offers[static_cast<std::size_t>(one.species)].species->id, one.count);
    filled.stocks.push_back(std::move(list));
  };
  for (const FillState::Place& place : s.places) add(place);
  if (s.places.size() < most_lists && s.best.score >= 0 && !(s.ended && s.in_order)) add(s.best);
  return filled;
}

Filled fill(const Plan& plan, const Catalog& catalog) {
  FillSearch search(plan, catalog);
  while (!search.step()) {
  }
  return search.found();
}

Plan with_stock(Plan plan, const FilledStock& list) {
  for (const auto& [species, count] : list.fresh) {
    Group group;
    group.species = species;
    group.count = count;
    plan.stock.push_back(std::move(group));
  }
  return plan;
}

}  // namespace shoalwright
