// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "plan/plan.h"

namespace shoalwright {

/// One remembered state: the plan, and the name of the edit that led to it ("Add 8 cherry barbs").
struct HistoryStep {
  std::string name;
  std::string join;  ///< edits with the same non-empty key within a second become one step; those of one drag however long it
                     ///< takes: "drag …"
  double at_s = 0;   ///< when, on any monotonic clock that the caller chooses
  Plan plan;
};

/// Whole earlier plans, so that there is no inverse operation to get wrong. At most 200 steps are kept.
struct History {
  std::vector<HistoryStep> steps;  ///< steps[0] is where it began
  std::size_t at = 0;              ///< index of the present
};

History begin_history(Plan plan);
const Plan& present(const History& history);
/// Drops what could be redone, then remembers `plan`. A plan equal to the present adds nothing.
void remember(History& history, Plan plan, std::string name, std::string join, double at_s);
/// The name of what would be undone or redone; empty when there is nothing.
std::string undo_name(const History& history);
std::string redo_name(const History& history);
bool undo(History& history);
bool redo(History& history);

}  // namespace shoalwright
