// SPDX-License-Identifier: MIT
#include "water/change.h"

#include <cmath>

#include "units/power.h"

namespace shoalwright {

namespace {

bool has_rhythm(const SawTooth& c) { return c.rise_per_day >= 0 && c.every_days > 0; }
bool is_change(double fraction) { return fraction > 0 && fraction <= 1; }

}  // namespace

std::optional<double> settled_peak(const SawTooth& changes) {
  if (!(has_rhythm(changes) && is_change(changes.fraction))) return std::nullopt;
  return changes.source + changes.rise_per_day * changes.every_days / changes.fraction;
}

std::optional<double> settled_trough(const SawTooth& changes) {
  const std::optional<double> peak = settled_peak(changes);
  if (!peak) return std::nullopt;
  return *peak - changes.rise_per_day * changes.every_days;
}

std::optional<double> peak_before_change(const SawTooth& changes, double start, int n) {
  const std::optional<double> peak = settled_peak(changes);
  if (!peak || !(n >= 1)) return std::nullopt;
  const double first = start + changes.rise_per_day * changes.every_days;
  return *peak + (first - *peak) * raised(1 - changes.fraction, n - 1);
}

std::optional<int> changes_to_settle(double fraction) {
  if (!is_change(fraction)) return std::nullopt;
  if (fraction == 1) return 1;
  const double n = std::ceil(std::log1p(0.05 - 1) / std::log1p(-fraction));
  if (!(n < 1e9)) return std::nullopt;
  return static_cast<int>(n);
}

std::optional<double> fraction_for_peak(const SawTooth& changes, double limit) {
  if (!(has_rhythm(changes) && limit > changes.source)) return std::nullopt;
  return changes.rise_per_day * changes.every_days / (limit - changes.source);
}

std::optional<double> interval_for_peak(const SawTooth& changes, double limit) {
  if (!(changes.rise_per_day > 0 && is_change(changes.fraction) && limit > changes.source)) return std::nullopt;
  return changes.fraction * (limit - changes.source) / changes.rise_per_day;
}

double after_changes(double start, double source, const std::vector<double>& fractions) {
  double left = start - source;
  for (const double fraction : fractions) left *= 1 - fraction;
  return source + left;
}

std::optional<double> settled_peak_with_loss(const SawTooth& changes, double loss_per_day) {
  if (!(loss_per_day > 0)) return settled_peak(changes);
  if (!(has_rhythm(changes) && changes.fraction >= 0 && changes.fraction <= 1)) return std::nullopt;
  const double kept = natural_power(-loss_per_day * changes.every_days);
  const double made = changes.rise_per_day / loss_per_day * -std::expm1(-loss_per_day * changes.every_days);
  return (changes.fraction * changes.source * kept + made) / (1 - (1 - changes.fraction) * kept);
}

}  // namespace shoalwright
