// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "catalog/catalog.h"
#include "plan/plan.h"
#include "scape/body_room.h"

namespace shoalwright {

/// A set of repairs that puts a plan right.
struct Mend {
  double cost = 0;                ///< of mend/change.h, above 0; it only orders, and is never shown
  std::vector<std::string> says;  ///< what is done, a sentence without its full stop each
  std::vector<PatchStep> edits;   ///< all of it as one patch of the canonical plan
  std::vector<std::string> left;  ///< rules of the strains that stay
  Plan after;                     ///< the plan with all of it
};

struct Mends {
  std::vector<Mend>
      mends;             ///< at most three, those that leave the least first, then the least costly; none when nothing is to mend
  std::string why_none;  ///< one sentence where a harm stays whatever is done; else empty
  bool searched_out = false;  ///< the search ended by itself: nothing less costly is left that its repairs can reach
};

struct MendState;

/// Looks for the least costly sets of repairs (mend/repairs.h) that clear every harm and every strain which something can be done
/// about; where not every such strain goes, every harm. Up to three that differ: of two, each does something that the other
/// leaves alone. The plan's pins hold. An assumed value may be changed like any other.
///
/// Method: best first over plans (A*; Hart, Nilsson & Raphael 1968, "A formal basis for the heuristic determination of minimum
/// cost paths", IEEE Transactions on Systems Science and Cybernetics 4:100-107; from memory). From each plan only those repairs
/// lead on which lessen the one finding that fewest repairs lessen, since every mended plan has taken one of them. What is still
/// to come is held to cost at least the sum over the findings of the cheapest share of a repair that lessens it, the cost of a
/// repair being shared among all that it lessens.
class MendSearch {
 public:
  /// The catalogue must outlive the search. `known`: what bodies find in this plan or one like it.
  MendSearch(const Plan& plan, const Catalog& catalog, BodyRooms known = {});
  MendSearch(MendSearch&&) noexcept;
  MendSearch& operator=(MendSearch&&) noexcept;
  ~MendSearch();

  /// Judges one more plan; true when the search has ended. The answer does not depend on how it is cut into steps.
  bool step();
  /// The best so far.
  Mends found() const;

 private:
  std::unique_ptr<MendState> state_;
};

/// The search to its end.
Mends mend(const Plan& plan, const Catalog& catalog);

}  // namespace shoalwright
