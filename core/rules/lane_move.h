// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "rules/facts.h"

namespace shoalwright {

/// One piece moved along or across the tank, and the lane that this leaves.
struct LaneMove {
  std::size_t piece = 0;  ///< index in the plan
  double dx_cm = 0, dz_cm = 0;
  double lane_cm = 0;
};

/// The smallest move of one piece, in whole centimetres along one axis and with its middle within the tank, that gives a body a
/// lane of at least the first of `wanted_cm` (falling) that any such move gives. Of equally small ones the piece that ends the
/// lane first, back before front before left before right; at most eight pieces are looked at. Pieces that the plan pins stay.
/// Moves farther on are taken to be no worse until the first that is enough. Empty where no such move helps.
std::optional<LaneMove> least_lane_move(const Facts& facts, const BodySize& body, std::size_t level,
                                        const std::vector<double>& wanted_cm);

/// The pieces at the two ends of a lane: what stops it. Indices in the plan, rising.
std::vector<std::size_t> pieces_at_ends(const Facts& facts, const Lane& lane, const BodySize& body);

/// What a piece is called in a sentence: "low branch"; where there are several of its kind "left stone", "rear stone", "second
/// stone from the left".
std::string piece_words(const Plan& plan, std::size_t piece);

/// "6 cm back".
std::string move_words(const LaneMove& move);

/// The move as a patch of the canonical plan.
std::vector<PatchStep> move_edits(const Facts& facts, const LaneMove& move);

}  // namespace shoalwright
