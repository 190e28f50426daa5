// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "assess/largest.h"
#include "assess/reckoned.h"
#include "catalog/catalog.h"
#include "notebook/finding.h"
#include "plan/plan.h"

namespace shoalwright {

// What the shelf says of each kind beside the plan as it is: animals first, then what would give first.

/// `spare`: the good group fits. `just`: fewer than the good group fit, or the least group and not one more. `over`: dropping it
/// would be a harm or a strain. `unknown`: a value that is not known withholds the answer.
enum class ShelfFit { unknown, spare, just, over };

/// What stops a kind, with its number apart, so that it can be said in any unit.
struct ShelfLimit {
  enum class Measure { none, lane, tank_length, tank_width, water_height, tank_volume, temperature, ph, gh, kh, count };
  std::string rule;  ///< FORMATS section 4
  Severity severity = Severity::strain;
  Measure measure = Measure::none;
  double amount = 0;      ///< short or over, above 0: cm, L, °C, pH, °dH; of `count`: how many do fit, 0 or more
  bool too_high = true;   ///< water: the tank has more than the kind bears; else less
  std::vector<int> with;  ///< plate numbers (place in the merged stock, from 1) of the other groups concerned
  std::string text;       ///< heading of the finding, metric
  bool operator==(const ShelfLimit&) const = default;
};

struct ShelfAnswer {
  std::string species;
  ShelfFit fit = ShelfFit::unknown;
  int in_plan = 0;
  int least = 1, good = 1;              ///< group sizes of the card
  std::optional<int> largest;           ///< the most in all that raise no harm and no strain; empty: not known
  std::optional<int> room_for;          ///< how many more, below 0 when too many are in the plan; empty: not known
  std::optional<ShelfLimit> first;      ///< what would give first: of an `over` kind only
  std::vector<std::string> stopped_by;  ///< rules that the next one, of an `over` kind the least group, raises; gravest first
  std::optional<double> then_at_most_c,
      then_at_least_c;          ///< with it the shared temperature ends here, where it went further before
  bool keep_lid_on = false;     ///< it jumps readily and the tank has a lid
  bool waits_for_kind = false;  ///< `unknown` because of an unknown species in the plan, else because of the planting
  double closeness = 0;         ///< larger fits better; below -0.95 for every `over` kind, above for the others
  double fills = 0;             ///< 0 to 1: how much of where it swims is empty
  std::string much_like;        ///< the first kind of the plan that it nearly doubles; empty: none
  bool loud() const { return fit == ShelfFit::over; }
  /// By what the tank lacks: kinds that fit before those that do not, those that use empty levels and double nothing first.
  double usefulness() const;
  bool operator==(const ShelfAnswer&) const = default;
};

/// Answers kind after kind over one plan, so that a caller can stop between two. Keeps its own copy of the plan; the catalogue
/// must outlive it.
class ShelfSearch {
 public:
  ShelfSearch(const Plan& plan, const Catalog& catalog, BodyRooms known = {});
  ShelfSearch(const ShelfSearch&) = delete;
  ShelfSearch& operator=(const ShelfSearch&) = delete;

  const Plan& plan() const { return plan_; }
  ShelfAnswer answer(const Species& species);

  /// What the rules look at with so many of a kind in all, none for 0, beside the others; and what they find then.
  Reckoned reckoned(const Species& species, int count);
  std::vector<Finding> findings(const Reckoned& all);
  BodyRooms& bodies() { return bodies_; }

 private:
  std::vector<Kept> stock_with(const Species& species, int count) const;
  void find_limit(const Species& species, const Largest& largest, ShelfAnswer& answer);
  double worst_margin(const Species& species, const ShelfAnswer& answer);

  const Plan plan_;
  const Catalog& catalog_;
  std::vector<Kept> stock_;  ///< in plan order, as plates count
  Volume volume_;
  BodyRooms bodies_;
  Room room_;
  LargestSearch largest_;
};

/// One answer alone.
ShelfAnswer shelf_answer(const Plan& plan, const Catalog& catalog, const Species& species);

/// "Room for 9", "Just 8, no more", "8 fit, 10 are better", "In the plan: 10, room for 2 more", "Lane 53 cm short", "GH 4 too
/// hard". Metric, or in °F, inches and US gallons.
std::string shelf_words(const ShelfAnswer& answer);

/// Two kinds that fill one and the same place: of one genus, or of a group that looks alike, and of one life style. Common
/// practice, no source.
bool nearly_doubles(const Species& one, const Species& other);

/// How many are picked up at once: the good group; of a kind in the plan what its good group lacks, else one more. 1 or more.
int usual_addition(const Species& species, int in_plan);

}  // namespace shoalwright
