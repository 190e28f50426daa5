// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "advice/shelf_list.h"

namespace shoalwright {

/// What the shelf has worked out so far. A new plan is worked through in slices between frames; until a kind has its new answer
/// the old one stands.
struct ShelfWork {
  std::unique_ptr<ShelfSearch> search;                   ///< of the plan that is being worked through
  std::vector<const Species*> kinds;                     ///< all kinds of that plan's shelf
  std::size_t next = 0;                                  ///< the first of them without a new answer
  std::unordered_map<std::string, ShelfAnswer> answers;  ///< by species id
  int revision = 0;                                      ///< counts up when a plan begins and when it is done
  bool done() const { return search != nullptr && next >= kinds.size(); }
};

/// Begins anew where `plan` is another than before; answers nothing yet. `known`: what bodies find in this plan or one like it.
void begin_work(ShelfWork& work, const Plan& plan, const Catalog& catalog, const BodyRooms& known = {});

/// Goes on for about `budget_ms` (one kind at least), beginning anew where `plan` is another than before. True when all is done.
bool work_on(ShelfWork& work, const Plan& plan, const Catalog& catalog, double budget_ms = 4, const BodyRooms& known = {});

/// The answer of a kind, null while there is none.
const ShelfAnswer* answer_of(const ShelfWork& work, const std::string& species);

/// The rows of the shelf, kept until what they depend on changes.
struct ShelfRows {
  struct Asked {
    std::string query;
    ShelfFilter filter;
    ShelfOrder order = ShelfOrder::closest_first;
    int revision = -1;
    bool operator==(const Asked&) const = default;
  };
  Asked asked;
  std::vector<const Species*> kinds;  ///< in order; live as long as the work's search
};
void list_rows(ShelfRows& rows, const ShelfWork& work, const Catalog& catalog, const std::string& query,
               const ShelfFilter& filter, ShelfOrder order);

}  // namespace shoalwright
