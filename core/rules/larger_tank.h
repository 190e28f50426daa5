// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "rules/facts.h"
#include "tank/sizes.h"

namespace shoalwright {

/// Puts the smallest usual tank into the finding that is nowhere smaller than the present one and suits one adult of the kind in
/// every measure, so that all findings about a kind ask for one and the same tank: its least length and volume, room to turn,
/// height for its fins, and a run of `run_cm`. Where no usual tank will do, or the tank is pinned, the remedy is to leave the
/// kind out.
void remedy_by_larger_tank(const Facts& facts, const Kept& kept, double run_cm, Finding& finding);

/// Whether a usual size is nowhere smaller than a tank by its outside measures.
bool nowhere_smaller(const UsualSize& size, const Tank& outside);

/// "Take a tank of 90 x 45 x 45 cm".
std::string say_take(const UsualSize& size);

/// The plan's tank exchanged for a rectangular one by its inside measures. Empty where a measure of the tank is pinned.
std::vector<PatchStep> exchange_tank(const Plan& plan, const Tank& tank);

/// The same for a run that is short: the whole lane, or as much of it as usual tanks give beyond `have_cm`.
void remedy_by_longer_tank(const Facts& facts, const Kept& kept, double have_cm, Finding& finding);

}  // namespace shoalwright
