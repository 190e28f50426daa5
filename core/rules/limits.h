// SPDX-License-Identifier: MIT
#pragma once

#include "rules/grade.h"
#include "stocking/limits.h"

namespace shoalwright {

/// A step that includes its own number, for amounts rounded as rounded() does.
constexpr double from(double amount) { return amount - 5e-7; }

// Every threshold of every rule: what it is for, its unit, where it comes from. Raising a step makes that grade come later.
// "Common practice" has no source that could be cited; the three views of a divided rule are lenient, usual, strict.

namespace limits {

// What home tests and a tape measure read wrong: past an edge by no more than this is a note. Common practice, no source.
inline constexpr double error_temperature_c = 0.5;
inline constexpr double error_ph = 0.3;
inline constexpr double error_gh_dgh = 1;
inline constexpr double error_kh_dkh = 1;
inline constexpr double error_nitrate_share = 0.10;
inline constexpr double error_length_share = 0.02;
inline constexpr double error_volume_share = 0.06;  ///< three lengths

// Water past a tolerated edge, in the quantity's own unit, and by how much two windows miss each other. Common practice, no
// source; the frame of pH 6.5 to 9 for fresh water is that of the Canadian water quality guidelines (CCME).
inline constexpr Steps temperature_steps_c{0, error_temperature_c, 1, from(3)};
inline constexpr Steps ph_steps{0, error_ph, 0.5, from(1)};
inline constexpr Steps gh_steps_dgh{0, error_gh_dgh, 3, from(6)};
/// Above the high edge practice is divided: lenient keepers take soft-water kinds bred in captivity to GH 15, strict ones
/// under 6.
inline constexpr Band gh_over_steps_dgh{{{0, 3, 5, from(6)}, gh_steps_dgh, {0, error_gh_dgh, 2, from(6)}}};
inline constexpr Steps kh_steps_dkh{0, error_kh_dkh, never, never};  ///< KH follows GH and pH: alone it never passes watch
inline constexpr Steps kh_hard_water_steps_dkh{0, error_kh_dkh, error_kh_dkh, never};  ///< hard-water kinds at their low edge
inline constexpr double gh_watch_edge_share =
    0.25;  ///< where this share of the edge is more than the watch reaches, it reaches that far
/// Kinds that need hard water: snails, and what lives in no water under this GH (mollies, rift-lake cichlids). Common practice.
inline constexpr double hard_water_low_dgh = 8;
inline constexpr double hard_water_harm_dgh = 4;  ///< such kinds are harmed below this GH
/// An overlap of two pH windows narrower than this is a note: little room for pH.
inline constexpr double ph_narrow = 0.3;

// Crowding of a layer or of the floor: demanded over open. Common practice, no source; divided, since six small tetras in 38 L
// (0.93) are taken by some and refused by others. The usual view is stocking/limits.h.
inline constexpr Band crowding{{{1.00, 1.25, 1.50, 2.50},
                                {crowding_quiet_to, crowding_note_to, crowding_watch_to, crowding_strain_to},
                                {0.75, 0.90, 1.10, 1.75}}};
/// Territories crowd each other only past the working minimum: no note for holders.
inline constexpr Band territory{
    {{never, 1.25, 1.50, 2.50}, {never, crowding_note_to, crowding_watch_to, crowding_strain_to}, {never, 0.90, 1.10, 1.75}}};
/// A group is named in a crowding finding while the largest contributors up to it make up this share of what is demanded.
inline constexpr double named_share = 0.8;

/// Lenient keepers accept a tank a size under the least of the species card: down to this share of it a watch only. Common
/// practice, no source. The other figures of runs, widths, heights and least tanks are stocking/limits.h.
inline constexpr double least_lenient_watch_share = 0.80;

/// Lenient keepers start a shoal with this many fewer than the least of the card (5 where 6 is usual): a watch only. Common
/// practice.
inline constexpr int lenient_group_short = 1;

/// Sold smaller than this share of its adult length, a fish hides what it will need. Common practice, no source.
inline constexpr double sold_small_share = 0.4;

/// A bare floor is right for a tank that is being run in or looked over: up to so many weeks nothing is said. Common practice.
inline constexpr double bare_quiet_weeks = 8;
/// Depth of sand that a remedy puts in, cm: front, back; never more than this share of the water. Common practice.
inline constexpr double sand_front_cm = 3, sand_back_cm = 5, sand_most_share = 0.15;

/// Shelter that a kind wants, as a share of the floor seen from above (stocking/cover.h). Common practice, no source: a tank
/// planted with the word "light" has "some", one with the word "medium" has "much", so that a sensible tank is quiet.
inline constexpr double cover_some = 0.10, cover_much = 0.25;
/// From so much shelter on there is water behind leaves that hardly moves. Common practice, no source.
inline constexpr double calm_zone_cover = cover_much;
/// A remedy adds this many pieces at most, each up to so many times as long and deep as a usual one: more is no one remedy.
inline constexpr int cover_most_pieces = 3;
inline constexpr double cover_most_times = 2;

/// Flow over the net water, volumes an hour, that still-water kinds stand and that kinds of streams want. Common practice, no
/// source; the same in all views. Past it by no more than the water is measured wrong is a note.
inline constexpr double current_still_most = 5, current_strong_least = 8;
inline constexpr Steps current_over{current_still_most, never, current_still_most*(1 + error_volume_share), never};
/// Of what is short of the least.
inline constexpr Steps current_short{0, never, current_strong_least* error_volume_share, never};

/// The load index, the same in all views (stocking/limits.h).
inline constexpr Steps load{never, load_quiet_to, load_watch_to, load_strain_to};

// Nitrate before a change, mg/L as NO3. The limit itself is plan/defaults.h or the keeper's own. Long-term harm to sensitive fish
// and invertebrates from 44 mg/L on: Camargo, Alonso & Salamanca 2005, Chemosphere 58:1255-1267.
inline constexpr double nitrate_strain_mg_l[3] = {75, 50, 40};
inline constexpr double nitrate_strain_sensitive_mg_l =
    40;  ///< with shrimps and soft-water specialists; lenient: as the usual line
inline constexpr double nitrate_harm_mg_l = 100;
inline constexpr double soft_water_high_dgh = 10;  ///< living up to this GH at most makes a soft-water specialist
/// A change goes up in steps of this share, and past the largest practical one the rhythm is shortened instead. Common practice.
inline constexpr double change_step = 0.05, change_largest = 0.5;
/// Weekly change that makes a stock the cause of its nitrate; under it the change is too small.
inline constexpr double nitrate_stock_cause = 0.5;

}  // namespace limits

}  // namespace shoalwright
