// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "rules/facts.h"
#include "stocking/least_tank.h"

namespace shoalwright {

// How the measures of the tank suit one adult of a kind, whatever the number. All lengths in cm, inside unless said otherwise.

/// One measure: what there is, what is asked, how grave the lack is (empty: none).
struct Fit {
  double have = 0, asked = 0;
  std::optional<Severity> severity;
};

/// Longest clear run in the layer where the kind spends most of its time, against its lane. Only a strain or
/// less: the tank itself is judged by empty_run().
Fit lane_fit(const Facts& facts, const Species& species);

/// The run of the empty tank where it is so short that the tank itself is the fault: under 0.6 of the lane. Never where the tank
/// has the least length of the species card, which is what keepers of the kind go by: there a short run stays a strain of
/// lane_fit().
Fit empty_run_fit(const Facts& facts, const Species& species);

/// Outside length, as tanks are sold, against the least of the species card. 0 asked: no figure.
Fit least_length_fit(const Facts& facts, const Species& species);

/// Front to back against room to turn.
Fit width_fit(const Facts& facts, const Species& species);

/// Water over the substrate at its mean height against the height of a tall fish with its fins.
Fit height_fit(const Facts& facts, const Species& species);

/// Volume inside to the rim, in L, against the least of the species card. 0 asked: no figure.
Fit volume_fit(const Facts& facts, const Species& species);

}  // namespace shoalwright
