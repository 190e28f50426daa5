// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "rules/facts.h"

namespace shoalwright {

// Remedies by another rhythm of water changes.

/// "every day", "every 7 days".
std::string say_every(double days);

/// "Change 30 % every 7 days".
std::string say_change(double fraction, double every_days);

/// The plan changed so; empty where one of the two is pinned or neither is new.
std::vector<PatchStep> set_changes(const Plan& plan, double fraction, double every_days);

/// The remedy by larger changes that holds what rises by `rise_per_day` at `limit`, both over what new water brings: at the
/// plan's rhythm while that stays practical, else half the water more often. False, and no remedy, where neither does or the
/// plan's changes are pinned.
bool remedy_by_more_change(const Plan& plan, double rise_per_day, double limit, Finding& finding);

}  // namespace shoalwright
