// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string_view>

#include "catalog/species.h"
#include "stocking/swallow.h"

namespace shoalwright {

// What one kind does to another when they meet, by their cards alone: who eats, nips, drives off, crosses. Common practice, no
// source, unless one is named; what a certain plan makes of it is for the rules to say.

/// Where a kind swims, from its shares of depth: four levels, of which at least one is true.
struct SwimLevels {
  bool surface = false, upper = false, middle = false, floor = false;
  bool operator==(const SwimLevels&) const = default;
};
SwimLevels swim_levels(const Species& species);
/// The same in order, surface first, as lists of levels have them.
std::array<bool, 4> levels_in_order(const SwimLevels& levels);

/// Whether there is a third of the depth that both use (`used_layer_share` of stocking/limits.h, and where each is most).
bool share_a_level(const Species& a, const Species& b);

/// The mouth of a kind by its card; empty where that does not say how it eats, and for biters.
std::optional<Swallower> mouth_of(const Species& eater);
/// Depth of its body over its total length.
double depth_share_of(const Species& species);

/// How far the prey is within reach of the eater, both grown (stocking/swallow.h): 1 and more is eaten. 0 where the card does not
/// say how the one eats, for biters, from whom no size is safe, and where the card rather than the mouth decides: shrimps of
/// which it says so, and shells.
double swallowed(const Species& eater, const Species& prey);

/// The same while the prey is as long as when it is sold; 0 where that is not known, and for shrimps and snails.
double swallowed_when_sold(const Species& eater, const Species& prey);

bool is_biter(const Species& species);

/// Hunters by night take what sleeps.
bool hunts_asleep(const Species& eater);

/// A prey whose spines an eater of this class could choke on.
bool may_choke_on(const Species& eater, const Species& prey);

/// What becomes of shrimps, and of snails, beside an eater.
enum class SmallFry { unharmed, picked, young, grown };

/// Of a shrimp or a snail; all else is unharmed. What the card of the eater says of shrimps and snails wins over mouths; who is
/// as long as its eater, or bites, loses only its young, and nothing where it has none in a tank of fresh water. `picked`: by
/// those that search the floor and take what they find.
SmallFry small_fry_beside(const Species& eater, const Species& prey);
/// A shrimp or snail this long beside its eater, as a share of its length, is no meal when grown.
inline constexpr double too_long_to_eat = 1.0;
/// Length of a shrimplet, cm, which is what those take of whom the card does not say that they eat shrimps.
inline constexpr double shrimplet_cm = 0.5;

/// Nips fins, always or in too small a group.
bool nips(const Species& species);

/// Long fins on a kind that is not quick enough to keep them.
bool offers_fins(const Species& species);

/// Smaller, slower or longer in fins than one that is no peaceful neighbour.
bool is_weaker(const Species& other, const Species& beside);

/// One that is listed as crossing with the other, on either card.
bool may_cross(const Species& a, const Species& b);

/// Both of a group that take each other for rivals.
bool look_alike(const Species& a, const Species& b);
/// From this volume inside to the rim on look-alikes keep out of each other's way, L.
inline constexpr double look_alike_least_l = 120;

/// Two kinds that hold ground want so many times the floor of both.
inline constexpr double two_holders_floor = 2;

/// One eats slowly where the other feeds fast.
bool is_outpaced(const Species& slow, const Species& fast);

/// Fights its own kind to the death: a loner that is aggressive to it and whose males are rivals.
bool is_fighter(const Species& species);

/// A fighter with long fins takes those of another fish at its level for a rival's. Look-alikes are told apart from this.
bool takes_for_rival(const Species& fighter, const Species& other);

/// Large grazers that are no peaceful neighbours rasp the slime off tall, slow fish.
bool rasps_flanks(const Species& grazer, const Species& other);
inline constexpr double rasper_least_cm = 15, rasped_least_cm = 8;  ///< grown

/// Bears live young.
bool is_livebearer(const Species& species);

/// Pairs and harems that keep all others away from their eggs and fry: those that hold ground, and no peaceful neighbours.
bool guards_eggs(const Species& species);

}  // namespace shoalwright
