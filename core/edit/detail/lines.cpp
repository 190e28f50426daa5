// SPDX-License-Identifier: MIT
#include "edit/detail/lines.h"

#include <algorithm>
#include <cstdint>
#include <string_view>

#include "plan/assumed.h"
#include "plan/check.h"

namespace shoalwright {

namespace {

int capped_sum(int a, int b) { return static_cast<int>(std::min<std::int64_t>(static_cast<std::int64_t>(a) + b, most_count)); }

std::optional<int> sum(std::optional<int> a, std::optional<int> b) {
  return a && b ? std::optional(capped_sum(*a, *b)) : std::nullopt;
}

std::optional<int> longest(std::optional<int> a, std::optional<int> b) { return a && b ? std::max(a, b) : a ? a : b; }

void fold(Group& into, const Group& from) {
  into.males = into.count == 0 ? from.males : from.count == 0 ? into.males : sum(into.males, from.males);
  into.females = into.count == 0 ? from.females : from.count == 0 ? into.females : sum(into.females, from.females);
  into.count = capped_sum(into.count, from.count);
  into.have = std::min(capped_sum(into.have, from.have), into.count);
  into.since_weeks = longest(into.since_weeks, from.since_weeks);
  into.arrives_week = longest(into.arrives_week, from.arrives_week);
  if (!from.note.empty()) into.note += (into.note.empty() ? "" : "\n") + from.note;
  if (into.other_keys.empty()) into.other_keys = from.other_keys;
}

}  // namespace

const Species* species_of(const Plan& plan, const Catalog& catalog, const std::string& name) {
  for (const Species& own : plan.own_species)
    if (own.id == name) return &own;
  return find_species(catalog, std::string_view(name));
}

std::string resolved(const Plan& plan, const Catalog& catalog, const std::string& name) {
  const Species* species = species_of(plan, catalog, name);
  return species != nullptr ? species->id : name;
}

Total total_of(const Plan& plan, const Catalog& catalog, const std::string& name) {
  const std::string key = resolved(plan, catalog, name);
  Total total;
  for (const Group& group : plan.stock) {
    if (resolved(plan, catalog, group.species) != key) continue;
    total.count = capped_sum(total.count, group.count);
    total.have = capped_sum(total.have, group.have);
  }
  return total;
}

std::optional<std::size_t> fold_lines(Plan& plan, const Catalog& catalog, const std::string& name) {
  const std::string key = resolved(plan, catalog, name);
  std::optional<std::size_t> first;
  for (std::size_t i = 0; i < plan.stock.size(); ++i) {
    if (resolved(plan, catalog, plan.stock[i].species) != key) continue;
    if (!first) {
      first = i;
      continue;
    }
    fold(plan.stock[*first], plan.stock[i]);
    plan.stock.erase(plan.stock.begin() + static_cast<std::ptrdiff_t>(i));
    forget_entry(plan, "/stock", i);
    --i;
  }
  return first;
}

}  // namespace shoalwright
