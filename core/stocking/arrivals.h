// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "plan/plan.h"

namespace shoalwright {

// When animals may come. A week of the plan is a week of the tank's life: `arrives_week` counts from the day on which it started.

/// Weeks that a new filter takes until it carries animals; most take three to six. Common practice, no source.
inline constexpr double settling_weeks = 4;

/// Weeks from one arrival to the test that lets the next one in. Common practice, no source.
inline constexpr double weeks_to_gate = 2;

/// Of all the food of the planned stock: how much of it the arrivals of one stage may add, while nothing is known of what the
/// filter clears. Common practice, no source.
inline constexpr double stage_share = 0.25;

/// Food a day, g, for which animals may have come in once stage 1, 2, ... of the arrivals has settled, while nothing is known of
/// what the filter clears: a quarter more of `all_g_d` with each stage. 0 before the first.
double arrival_feed_g_d(double all_g_d, int stage);

/// How long the tank has been lived in: as the plan says of its filter, and no shorter than animals swim in it. Empty: not known.
std::optional<double> weeks_lived_in(const Plan& plan);

/// How long it will have been when that line of the stock comes: its week, and no earlier than now. Without a week: now. Empty:
/// not known.
std::optional<double> weeks_at_arrival(const Plan& plan, const Group& line);

}  // namespace shoalwright
