// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

/// How far one change of water may move the tank at once: for the way to another water, for first help and for the rule
/// water-change-shock. pH: EU Directive 2006/44/EC, annex I, note (a), an artificial change. Hardness: a share of what the tank
/// has, common practice, no source. Temperature, degrees C: public-aquarium practice, no source.
inline constexpr double change_most_ph = 0.5, change_most_share = 0.30, change_most_temperature_c = 2;

/// A step in hardness that no kit shows is always allowed, degrees. Common practice, no source.
inline constexpr double change_always_dh = 0.5;

}  // namespace shoalwright
