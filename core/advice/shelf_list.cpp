// SPDX-License-Identifier: MIT
#include "advice/shelf_list.h"

#include <algorithm>

#include "catalog/fold.h"
#include "catalog/search.h"
#include "stocking/style.h"
#include "units/order.h"

namespace shoalwright {

namespace {

// Common practice, no source.
constexpr double small_to_cm = 5;

bool is_small(const Species& species) { return species.size.adult_tl_cm > 0 && species.size.adult_tl_cm <= small_to_cm; }

bool has_company(const Species& species) {
  switch (species.life.group.kind) {
    case GroupKind::shoal:
    case GroupKind::loose:
    case GroupKind::colony: return true;
    case GroupKind::solitary:
    case GroupKind::pair:
    case GroupKind::harem: return false;
  }
  return false;
}

/// Who fits before who does not, fish and frogs before what cleans up after them, then by how much is spare.
bool fits_closer(const ShelfRow& a, const ShelfRow& b) {
  const auto rank = [](const ShelfRow& row) {
    const bool cleans = row.species->kind == "shrimp" || row.species->kind == "snail";
    return 2 * (row.answer->fit != ShelfFit::over) + !cleans;
  };
  return rank(a) != rank(b) ? rank(a) > rank(b) : a.answer->closeness > b.answer->closeness;
}

}  // namespace

std::vector<std::string> names_of(const ShelfFilter& filter) {
  std::vector<std::string> names;
  if (filter.has_room) names.push_back("Has room");
  if (filter.small) names.push_back("Small");
  if (filter.shoals) names.push_back("Shoals");
  if (filter.shrimp) names.push_back("Shrimp");
  if (filter.in_shop) names.push_back("My shop");
  if (!filter.group.empty()) names.push_back(filter.group);
  constexpr std::array<const char*, 4> levels = {"Surface", "Upper", "Middle", "Floor"};
  for (std::size_t i = 0; i < levels.size(); ++i)
    if (filter.levels[i]) names.push_back(levels[i]);
  return names;
}

bool passes(const ShelfFilter& filter, const Species& species, const ShelfAnswer* answer) {
  if (filter.has_room && answer && !(answer->room_for.value_or(0) > 0)) return false;
  if (filter.small && !is_small(species)) return false;
  if (filter.shoals && !has_company(species)) return false;
  if (filter.shrimp && species.kind != "shrimp" && species.kind != "snail") return false;
  if (filter.in_shop && !is_ticked(filter.shop, species.id)) return false;
  if (!filter.group.empty() && species.group != filter.group) return false;
  const std::array<bool, 4>& wanted = filter.levels;
  if (!wanted[0] && !wanted[1] && !wanted[2] && !wanted[3]) return true;
  const std::array<bool, 4> levels = levels_in_order(swim_levels(species));
  for (std::size_t i = 0; i < levels.size(); ++i)
    if (wanted[i] && levels[i]) return true;
  return false;
}

bool is_ticked(const std::vector<std::string>& list, std::string_view species) {
  return std::find(list.begin(), list.end(), species) != list.end();
}

void tick(std::vector<std::string>& list, const std::string& species) {
  if (std::erase(list, species) == 0) list.push_back(species);
}

int with_room(std::span<const ShelfAnswer* const> answers) {
  return static_cast<int>(std::count_if(answers.begin(), answers.end(),
                                        [](const ShelfAnswer* answer) { return answer && answer->room_for.value_or(0) > 0; }));
}

void put_in_order(std::vector<ShelfRow>& rows, ShelfOrder order) {
  if (order == ShelfOrder::closest_first || order == ShelfOrder::lacking_first) {
    sort_stable(rows, [&](const ShelfRow& a, const ShelfRow& b) {
      if (!a.answer || !b.answer) return a.answer && !b.answer;
      return order == ShelfOrder::closest_first ? fits_closer(a, b) : a.answer->usefulness() > b.answer->usefulness();
    });
    return;
  }
  struct Named {
    std::string name;
    ShelfRow row;
  };
  std::vector<Named> named;
  for (const ShelfRow& row : rows) named.push_back({folded(display_name(*row.species)), row});
  sort_stable(named, [&](const Named& a, const Named& b) {
    const double a_cm = a.row.species->size.adult_tl_cm, b_cm = b.row.species->size.adult_tl_cm;
    return order == ShelfOrder::size && a_cm != b_cm ? a_cm < b_cm : a.name < b.name;
  });
  for (std::size_t i = 0; i < rows.size(); ++i) rows[i] = named[i].row;
}

std::vector<const Species*> shelf_kinds(const Plan& plan, const Catalog& catalog) {
  std::vector<const Species*> kinds;
  for (const Species& own : plan.own_species) kinds.push_back(&own);
  for (const Species& one : catalog.species) {
    const bool overridden =
        std::any_of(plan.own_species.begin(), plan.own_species.end(), [&](const Species& own) { return own.id == one.id; });
    if (!overridden) kinds.push_back(&one);
  }
  return kinds;
}

std::vector<const Species*> find_on_shelf(const Plan& plan, const Catalog& catalog, std::string_view query) {
  std::vector<const Species*> kinds = shelf_kinds(plan, catalog);
  if (folded(query).empty()) return kinds;
  std::vector<const Species*> found;
  for (const SearchHit& hit : search(kinds, query)) found.push_back(hit.species);
  return found;
}

std::string closest_search(const Plan& plan, const Catalog& catalog, std::string_view query) {
  constexpr std::size_t least_letters = 3;
  const std::string whole = folded(query);
  const std::vector<const Species*> shelf = shelf_kinds(plan, catalog);
  for (std::size_t length = whole.size(); length-- > least_letters;) {
    std::string shorter = whole.substr(0, length);
    if (shorter.back() == ' ') continue;
    // What is found only by overlooking a letter is not written as it is offered.
    const std::vector<SearchHit> hits = search(shelf, shorter);
    if (std::any_of(hits.begin(), hits.end(), [](const SearchHit& hit) { return !hit.forgiven; })) return shorter;
  }
  return "";
}

}  // namespace shoalwright
