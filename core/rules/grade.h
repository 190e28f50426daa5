// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <limits>
#include <optional>

#include "notebook/finding.h"
#include "plan/plan.h"

namespace shoalwright {

inline constexpr double never = std::numeric_limits<double>::infinity();

/// The amounts above which each grade begins, ascending; `never` where a rule does not give that grade. At the number itself the
/// milder grade still holds.
struct Steps {
  double note = never, watch = never, strain = never, harm = never;
};

/// One set of steps each for lenient, usual and strict.
using Band = std::array<Steps, 3>;

/// The same in all three views: where sources give one figure.
constexpr Band undivided(Steps steps) { return {steps, steps, steps}; }

constexpr const Steps& in_view(const Band& band, Strictness strictness) { return band[static_cast<std::size_t>(strictness)]; }

/// How grave an amount is; empty when it is at or under the lowest step, or no number.
constexpr std::optional<Severity> grade(double amount, const Steps& steps) {
  if (amount > steps.harm) return Severity::harm;
  if (amount > steps.strain) return Severity::strain;
  if (amount > steps.watch) return Severity::watch;
  if (amount > steps.note) return Severity::note;
  return std::nullopt;
}

/// The graver of two; empty counts as nothing.
constexpr std::optional<Severity> graver(std::optional<Severity> a, std::optional<Severity> b) {
  if (!a || !b) return a ? a : b;
  return *a < *b ? a : b;
}

/// No graver than `ceiling`.
constexpr Severity at_most(Severity severity, Severity ceiling) { return severity < ceiling ? ceiling : severity; }

}  // namespace shoalwright
