// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

namespace shoalwright {

// Water changes: a conserved solute rises by `rise_per_day` and every `every_days` a `fraction` of the water is replaced by water
// at `source`. Peak: just before a change; trough: just after. All amounts in one unit (mg/L, degrees). Mass balance; elementary.
// Empty where no settled state or no answer exists: fraction outside 0 to 1, no interval, negative rise.

struct SawTooth {
  double rise_per_day = 0;
  double every_days = 0;
  double fraction = 0;
  double source = 0;
};

/// Peak and trough once changes and rise have come to balance.
std::optional<double> settled_peak(const SawTooth& changes);
std::optional<double> settled_trough(const SawTooth& changes);

/// The value just before change `n` (1, 2, ...), from `start` right after a change.
std::optional<double> peak_before_change(const SawTooth& changes, double start, int n);

/// How many changes until 95 % of the way to the settled state is done.
std::optional<int> changes_to_settle(double fraction);

/// Smallest fraction at that rhythm that holds the settled peak at `limit`; may be above 1, which no change can do. Empty where
/// the source alone reaches the limit. `changes.fraction` is not looked at.
std::optional<double> fraction_for_peak(const SawTooth& changes, double limit);

/// Longest interval in days at that fraction that holds the settled peak at `limit`. `changes.every_days` is not looked at.
std::optional<double> interval_for_peak(const SawTooth& changes, double limit);

/// What is left after several changes with nothing made between them.
double after_changes(double start, double source, const std::vector<double>& fractions);

/// The settled peak when a share `loss_per_day` of the solute also vanishes each day (plants, denitrification), first order.
std::optional<double> settled_peak_with_loss(const SawTooth& changes, double loss_per_day);

}  // namespace shoalwright
