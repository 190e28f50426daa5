// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

// Every threshold and model constant of this room. All are common practice without a source unless one is named.

/// Crowding up to which the words roomy, comfortable, full, crowded hold; overcrowded above. Display only.
inline constexpr double roomy_to = 0.50, comfortable_to = 0.85, full_to = 1.10, crowded_to = 1.50;
/// Crowding of a layer or the floor up to which nothing, a note, a watch, a strain is said; a harm above. Lower figures ask for
/// emptier tanks.
inline constexpr double crowding_quiet_to = 0.85, crowding_note_to = 1.10, crowding_watch_to = 1.25, crowding_strain_to = 2.0;

/// Power by which room and floor grow with length: trade least tanks grow as about length^1.5 a fish from 4 to 30 cm.
inline constexpr double room_length_power = 1.8;
/// The length that the constants of table `style_facts` were set at, cm.
inline constexpr double reference_length_cm = 4.5;
/// Room length is held within these, cm: the model knows nothing beyond.
inline constexpr double room_length_least_cm = 1, room_length_most_cm = 40;
/// Part of an eel shape's length that counts as room length: an 11 cm kuhli kind weighs what a 5.1 cm fusiform fish does.
inline constexpr double eel_length_share = 0.5;
/// Lane of an eel shape, true body lengths.
inline constexpr double eel_lane_bl = 4;
/// Ground of a female beyond one a male, in his: she has about two thirds of his length.
inline constexpr double extra_female_ground = 0.4;
/// Share of females where the sexes of a harem or colony are not given.
inline constexpr double assumed_female_share = 2.0 / 3.0;

/// Part of the water that plants fill, by the word of the plan.
inline constexpr double plants_light = 0.05, plants_medium = 0.10, plants_dense = 0.20;
/// Part of that which is lost to fish longer than `among_plants_cm`; smaller ones and invertebrates swim in it.
inline constexpr double plants_closed_share = 0.70;
inline constexpr double among_plants_cm = 2.5;
/// Part of the floor that plants beyond the drawn pieces shelter, by the word of the plan.
inline constexpr double shelter_light = 0.10, shelter_medium = 0.25, shelter_dense = 0.45;
/// Part of the inner floor that can be used where nothing is drawn.
inline constexpr double usable_floor_share = 0.90;
/// A group uses a layer where at least this share of it is; its main layer in any case.
inline constexpr double used_layer_share = 0.2;
/// Spread of a group around the middle of a layer, as a share of the depth. Display only.
inline constexpr double depth_spread = 0.12;

/// Spots that the spread of animals is told for, cm.
inline constexpr double spot_cm = 2.5;
/// Kinds of pieces that give at least this much shelter draw shy animals to them.
inline constexpr float sheltering_from = 0.3f;
/// Right at cover there are so many more of those that want some, or much of it; evenly less up to the distance, cm.
inline constexpr float some_to_cover = 0.6f, much_to_cover = 1.5f, cover_felt_cm = 15;

/// Run over the lane of the life style: from the first on nothing, then a note, then a watch, a strain below.
inline constexpr double lane_quiet_from = 1.0, lane_note_from = 0.8, lane_watch_from = 0.65;
/// Part of the length of a card's least tank that its scape should leave as a run, where that is less than the lane's strain.
inline constexpr double lane_of_least_tank = 0.8;
/// The empty tank's own run below this part of the lane is a harm.
inline constexpr double lane_harm_below = 0.6;
/// Front to back in room lengths: from the first on nothing, then a watch; a harm below the second. Least turning radii are far
/// smaller, 0.18 and 0.11 lengths in trout and bass (Webb, P.W. 1983. Journal of Experimental Biology 102: 115-122); it is the
/// turn at ease.
inline constexpr double width_quiet_from = 2.0, width_harm_below = 1.5;
/// A fish is tall when its height with fins is at least this part of its length.
inline constexpr double tall_from = 0.8;
/// Water over the substrate in heights with fins: from the first on nothing, then a watch; a strain below the second.
inline constexpr double height_quiet_from = 2.0, height_strain_below = 1.6;
/// A tank below this part of the catalogue's least length or volume is a harm, not a strain.
inline constexpr double least_tank_harm_below = 0.7;

/// Load index up to which nothing, a watch, a strain is said; a harm above. Half a tank a week is as much as most people keep up.
inline constexpr double load_quiet_to = 0.3, load_watch_to = 0.5, load_strain_to = 1.0;
/// Nitrate over the tap that the load index is reckoned for, mg/L as NO3: a trade association's limit of 2008 (from memory).
inline constexpr double load_nitrate_mg_l = 50;

/// Crude protein of dry food as fed; flake and small granules run from 0.42 to 0.55.
inline constexpr double dry_food_protein_share = 0.45;
/// Adult ration at 1 g, % a day, its power of mass, and what it is held within.
inline constexpr double ration_at_1_g_pct = 2, ration_mass_power = -0.25, ration_least_pct = 0.3, ration_most_pct = 3;
/// Appetite at 25 degrees C is 1; doubled by each 10 degrees and held within these.
inline constexpr double appetite_least = 0.5, appetite_most = 1.5;
/// Words of the plan over the normal ration.
inline constexpr double ration_light = 0.77, ration_heavy = 2;

/// Without changes nitrate never settles: it is judged by what so many days come to. Common practice.
inline constexpr double unchanged_days = 365;

}  // namespace shoalwright
