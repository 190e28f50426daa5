// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "plan/plan.h"
#include "units/result.h"

namespace shoalwright {

// What a plan can hold (FORMATS section 2, "Limits"): beyond it one sentence.

inline constexpr int most_groups = 1000;
inline constexpr int most_pieces = 10000;
inline constexpr int most_count = 100000;            ///< animals of one group
inline constexpr int most_weeks = 5200;              ///< a century: since_weeks, arrives_week
inline constexpr int most_outline_points = 200;      ///< corners of a prism
inline constexpr int most_line_points = 24;          ///< of the substrate's terrain line
inline constexpr int most_entries = 10000;           ///< of each other list
inline constexpr int most_pointers = 40000;          ///< assumed and fixed, each: three measures of every piece may be assumed
inline constexpr std::size_t most_text = 64 * 1024;  ///< bytes of all texts of a plan together

/// The first limit that a plan breaks or the first number that cannot be, with its JSON Pointer and what was expected. Empty when
/// the plan is valid. Poor husbandry is no error: any valid plan can be assessed.
std::optional<Error> check_plan(const Plan& plan);

/// The same for the vessel alone.
std::optional<Error> check_tank(const Tank& tank);

/// How far a terrain line may go, cm: the inside length of a tank whose measures can be (as inside_length_cm, which rooms below
/// `tank` do not have).
double line_length_cm(const Tank& tank);

}  // namespace shoalwright
