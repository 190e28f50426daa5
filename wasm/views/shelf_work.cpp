// SPDX-License-Identifier: MIT
#include "views/shelf_work.h"

#include <algorithm>
#include <chrono>

#include "catalog/fold.h"

namespace shoalwright {

void begin_work(ShelfWork& work, const Plan& plan, const Catalog& catalog, const BodyRooms& known) {
  if (work.search && work.search->plan() == plan) return;
  work.search = std::make_unique<ShelfSearch>(plan, catalog, known);
  work.kinds = shelf_kinds(work.search->plan(), catalog);
  work.next = 0;
  ++work.revision;
}

bool work_on(ShelfWork& work, const Plan& plan, const Catalog& catalog, double budget_ms, const BodyRooms& known) {
  using Clock = std::chrono::steady_clock;
  begin_work(work, plan, catalog, known);
  if (work.done()) return true;
  const Clock::time_point begin = Clock::now();
  do {
    const Species& kind = *work.kinds[work.next++];
    work.answers[kind.id] = work.search->answer(kind);
  } while (!work.done() && std::chrono::duration<double, std::milli>(Clock::now() - begin).count() < budget_ms);
  if (work.done()) ++work.revision;
  return work.done();
}

const ShelfAnswer* answer_of(const ShelfWork& work, const std::string& species) {
  const auto found = work.answers.find(species);
  return found == work.answers.end() ? nullptr : &found->second;
}

void list_rows(ShelfRows& rows, const ShelfWork& work, const Catalog& catalog, const std::string& query,
               const ShelfFilter& filter, ShelfOrder order) {
  const ShelfRows::Asked asked{query, filter, order, work.revision};
  if (rows.asked == asked) return;
  rows.asked = asked;
  std::vector<ShelfRow> found;
  for (const Species* kind : find_on_shelf(work.search->plan(), catalog, query)) {
    const ShelfAnswer* answer = answer_of(work, kind->id);
    if (passes(filter, *kind, answer)) found.push_back({kind, answer});
  }
  put_in_order(found, order);
  // Whose whole name was typed comes first, whatever the order.
  const std::string whole = folded(query);
  const auto named = std::find_if(found.begin(), found.end(), [&](const ShelfRow& row) {
    return folded(row.species->name.scientific) == whole || folded(display_name(*row.species)) == whole;
  });
  if (named != found.end()) std::rotate(found.begin(), named, named + 1);
  rows.kinds.clear();
  for (const ShelfRow& row : found) rows.kinds.push_back(row.species);
}

}  // namespace shoalwright
