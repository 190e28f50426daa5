// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <vector>

#include "assess/reckoned.h"

namespace shoalwright {

/// A group of the stock where it swims: surface, upper, middle, floor.
struct MeetingGroup {
  std::string species;  ///< id
  int count = 0;
  std::array<bool, 4> levels{};
};

/// Two groups of which there is something to say, and what: worst first, never empty. Remedies that need a search are left out.
struct Meeting {
  std::size_t a = 0, b = 0;  ///< positions in the groups, a before b
  std::vector<Finding> findings;
};

/// Who meets whom in a plan.
struct Meetings {
  std::vector<MeetingGroup> groups;  ///< in the order of the plan's lines; kinds that are not known are left out
  std::size_t pairs = 0;             ///< looked at: each group with each other
  std::vector<Meeting> meetings;     ///< worst first, then in the order of the groups
};

/// Every pair of the plan's groups is judged in the plan's tank by the rules about two kinds, as if the other groups were not
/// there; who contends for ground is judged with all of them, since they share one floor. What is found here is found in the
/// assessment too, folded there by who does it to whom. `bodies` are brought up to the plan.
Meetings meetings_of(const Plan& plan, const Catalog& catalog, BodyRooms& bodies);

}  // namespace shoalwright
