// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "advice/shelf.h"
#include "catalog/catalog.h"
#include "stocking/encounter.h"

namespace shoalwright {

/// Which kinds are shown. Chips add up; of the levels any that is on will do, none on means all.
struct ShelfFilter {
  bool has_room = false;               ///< at least one more fits
  bool small = false;                  ///< grows to 5 cm or less
  bool shoals = false;                 ///< lives in a shoal, loose company or a colony
  bool shrimp = false;                 ///< shrimps and snails
  bool in_shop = false;                ///< stands on the keeper's list of what a shop has
  std::array<bool, 4> levels{};        ///< surface, upper, middle, floor
  std::string group;                   ///< of this group of the catalogue; empty: of any
  std::vector<std::string> shop = {};  ///< that list, species ids
  bool operator==(const ShelfFilter&) const = default;
};

/// Names of all filters that are on, as the shelf calls them, in the order shown.
std::vector<std::string> names_of(const ShelfFilter& filter);

/// Whether a kind passes. `answer` null: not worked out yet, which passes `has_room` too, so that nothing is hidden on a guess.
bool passes(const ShelfFilter& filter, const Species& species, const ShelfAnswer* answer);

/// Takes a kind into a list of ids, or out of it where it stands there. The list stays as it was ticked.
void tick(std::vector<std::string>& list, const std::string& species);
bool is_ticked(const std::vector<std::string>& list, std::string_view species);

/// How many kinds of the list have room for one more at least; a kind without an answer counts for none.
int with_room(std::span<const ShelfAnswer* const> answers);

enum class ShelfOrder { closest_first, lacking_first, name, size };

/// One row of the shelf: a kind and what is said of it (null while that is being worked out).
struct ShelfRow {
  const Species* species = nullptr;
  const ShelfAnswer* answer = nullptr;
};

/// Rows put in order: closest fit or what the tank lacks first (rows without an answer last, as they came), by display name, or
/// by adult size and name.
void put_in_order(std::vector<ShelfRow>& rows, ShelfOrder order);

/// All kinds that the shelf has: the keeper's own (which win over the catalogue's of the same id), then the catalogue's by code.
std::vector<const Species*> shelf_kinds(const Plan& plan, const Catalog& catalog);

/// Those of them that the query finds (catalog/search.h), best first; all for an empty query.
std::vector<const Species*> find_on_shelf(const Plan& plan, const Catalog& catalog, std::string_view query);

/// What to search for instead of a query that finds nothing: its longest beginning, of three letters at least, that finds
/// something. Empty when there is none.
std::string closest_search(const Plan& plan, const Catalog& catalog, std::string_view query);

}  // namespace shoalwright
