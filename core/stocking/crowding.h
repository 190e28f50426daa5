// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "catalog/species.h"
#include "plan/plan.h"

namespace shoalwright {

// Room wanted over room open. Packing is never what limits a tank (a moving school takes about one cubed body length a fish:
// Pitcher, T.J. & Partridge, B.L. 1979. Fish school density and volume. Marine Biology 54: 383-394); what lacks is room for a
// relaxed shoal. Personal volumes start from 27 cubed lengths, neighbours three lengths apart, inside the four within which a
// fish counts as in the group (Pitcher, Magurran & Allen 1983, as quoted by Miller & Gerlai 2011). Constants: common practice, no
// source.

/// The length that room is reckoned with, cm: half the length for eel shapes, which weigh and reach far less than their length
/// says.
double room_length_cm(Body body, double length_cm);

/// Room that one animal wants to itself, L. Grows as the 1.8th power of length; room length held within 1 to 40 cm.
double personal_volume_l(double room_bl3, Body body, double length_cm);

/// What one group asks of the water.
struct Demand {
  double count = 0;
  double personal_l = 0;
  std::array<double, 3> depth{};         ///< share of its time in surface, mid, bottom
  bool plants_are_room = false;          ///< small fish and invertebrates live among plants
  std::array<double, 3> reach{1, 1, 1};  ///< share of each layer's water that it can get to
};

/// Water of each layer, and the part of it that plants fill.
struct LayerWater {
  std::array<double, 3> water_l{}, plant_share{};
};

/// What of a layer is open to a group, L.
double open_l(const Demand& demand, const LayerWater& water, std::size_t layer);

/// Crowding of the three layers: wanted over open. Empty where a layer has no room but is wanted, 0 where nothing wants it.
std::array<std::optional<double>, 3> layer_crowding(const std::vector<Demand>& stock, const LayerWater& water);

/// The part of a layer that stays open to fish which plants keep out, from the part that plants fill.
double open_share(double plant_share);

/// Plants by word, as a share of the water. Common practice, no source.
double plant_share(Planting planting);

/// Floor that one shoaler, or one territory, takes, cm2. Shoalers by room length to the 1.8th power, holders by length squared.
double floor_need_cm2(Style style, Body body, double length_cm);

/// How many territories (for holders) or animals (for others) a group counts as on the floor. Sexes not given: pairs for pair
/// kinds, two thirds females for harems and colonies. A female beyond one a male counts 0.4: two thirds of his length, inside his
/// ground.
double floor_count(bool holds_floor, GroupKind kind, int count, std::optional<int> males, std::optional<int> females);

/// "roomy", "comfortable", "full", "crowded", "overcrowded".
const char* crowding_word(double crowding);

}  // namespace shoalwright
