// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "rules/grade.h"
#include "rules/shares.h"

namespace shoalwright {

// Findings about the floor: of those that share it and of those that hold ground of their own.

enum class Holders { no, yes };

/// What each group of that kind takes of the floor; none that takes nothing.
std::vector<Part> parts_of(const Facts& facts, Holders holders);

/// The crowding down to which a remedy goes: no more than a note is said there.
double goal_of(const Steps& steps);

/// Words and remedy of a floor that is full. Room::floor_crowding must be known.
void tell_floor(const Facts& facts, Holders holders, Severity severity, Finding& finding);

}  // namespace shoalwright
