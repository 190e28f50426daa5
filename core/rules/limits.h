// SPDX-License-Identifier: MIT
#pragma once

#include "rules/grade.h"
#include "stocking/limits.h"
#include "water/gentle_change.h"

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
/// Fish of cool water, those that thrive at no more than this, bear more for days only: past it they ail in the long run. Common
/// practice, no source.
inline constexpr double cool_water_most_c = 24;
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

/// A pH that is aimed at and cannot be had at the aimed KH: by no more than a kit reads wrong is nothing. Common practice, no
/// source. Water stained by wood and peat may lie lower than carbonate tells, so that this is never graver than a watch, and
/// windows that do not join never more than a strain.
inline constexpr Steps unreachable_aim_ph{never, error_ph, never, never};
inline constexpr Steps unreachable_windows_ph{0, error_ph, 0.5, never};
/// Under this KH no kit tells what pH to expect: an aimed pH is not judged. Common practice, no source.
inline constexpr double unreachable_least_kh_dkh = 1;
/// CO2 of a tank without added CO2, mg/L (2 to 5). Common practice, no source.
inline constexpr double usual_co2_mg_l = 3;
/// From this KH on acid is eaten up by carbonate, and pH jumps when that is used up. Common practice, no source.
inline constexpr double acid_least_kh_dkh = 4;
inline constexpr Steps acid_ph{never, error_ph, 0.5, never};

// One change of water at once (water/gentle_change.h, with the sources). pH: past it by no more than a kit reads wrong is a
// watch. GH and KH: a share of what it was, and more than a kit reads wrong.
inline constexpr Steps change_ph{never, change_most_ph, change_most_ph + error_ph, never};
inline constexpr Steps change_hardness_share{never, change_most_share, never, never};
inline constexpr double change_temperature_c = change_most_temperature_c;

/// KH left before a change, dKH, and how far under the first it lies. Common practice, no source.
inline constexpr double kh_left_least_dkh = 1.5;
inline constexpr Steps kh_left_short{never, 0, kh_left_least_dkh - 0.5, never};
/// A kind whose best KH reaches under this lives in water that hardly holds its pH. Common practice, no source.
inline constexpr double soft_kind_kh_dkh = 1;

/// Hardly any GH beside much KH: a softener puts sodium in the place of calcium. Common practice, no source.
inline constexpr double softened_most_gh_dgh = 2, softened_least_kh_dkh = 5;

// Un-ionised ammonia as NH3, mg/L. 0.02: limit of a trade association (2008, from memory), 0.019: CCME; gills are harmed from
// 0.05 on (a university extension sheet, seen in a reproduction). 0.005 is common practice, no source.
inline constexpr double ammonia_nh3_allowed_mg_l = 0.02;
inline constexpr Steps ammonia_nh3_mg_l{never, 0.005, ammonia_nh3_allowed_mg_l, 0.05};
/// All ammonia in a settled tank, mg/L of nitrogen, whatever the pH. Common practice, no source.
inline constexpr double ammonia_tan_mg_l = 0.25;
/// Nitrite, mg/L as NO2: a trade association's limit is 0.2 (2008, from memory), guidance for laboratory zebrafish 0.1.
inline constexpr Steps nitrite_mg_l{never, 0.1, 0.2, 1};
/// Chloride, mg/L, under which nitrite is worse: it goes in by the gill's chloride pump (Tomasso, Simco & Davis 1979, Journal of
/// the Fisheries Research Board of Canada 36: 1141-1144). The limit of 10 is a provincial guideline's (from memory); that all
/// steps are halved under it, common practice, no source.
inline constexpr double nitrite_little_chloride_mg_l = 10;
constexpr Steps nitrite_steps_mg_l(bool little_chloride) {
  const double part = little_chloride ? 0.5 : 1;
  return {nitrite_mg_l.note, nitrite_mg_l.watch * part, nitrite_mg_l.strain * part, nitrite_mg_l.harm * part};
}

/// Weeks by which the first animals come before a new filter carries them (stocking/arrivals.h). Common practice, no source.
inline constexpr Steps arrival_weeks_early{never, 0, 2, never};

// Oxygen before dawn, mg/L, and how far under the first it lies. Common practice, no source; the frame is that of US EPA 1986 for
// adult fish of warm water, 4.0 as the mean of the daily minima of a week and 3.0 at any time (from memory). Harm only where fish
// that use little leave it under the last too.
inline constexpr double oxygen_ease_mg_l = 6, oxygen_least_mg_l = 3;
inline constexpr Steps oxygen_short{0, 1, 2, never};
/// A stock that asks for no more than this breathes air: one step milder. Common practice, no source.
inline constexpr double oxygen_air_breathers_mg_l = 4;
/// Where a remedy by fewer animals leaves it. Common practice, no source.
inline constexpr double oxygen_goal_mg_l = 5, oxygen_heat_goal_mg_l = 4;
/// The hottest day expected, over the plan's temperature. Common practice, no source.
inline constexpr double heat_wave_c = 3;
/// Above this at the plan's temperature no heat wave of that height brings anything to say.
inline constexpr double oxygen_heat_looked_at_mg_l = 8;

/// Media needed over media there are; what is needed is reckoned half clogged and for a tank whose glass and plants do nothing,
/// so that the steps are wide. Common practice, no source.
inline constexpr Steps filter_media{1.25, 2, 4, never};
/// Volumes that a filter should move in an hour. Common practice, no source.
inline constexpr double filter_turnover = 2;
inline constexpr Steps filter_turnover_short{0, 1, never, never};
/// What a new filter moves in a remedy, volumes an hour. Common practice, no source.
inline constexpr double filter_new_turnover = 3;
/// Load index that a dense stand of plants, and that glass and gravel alone, carry without a filter. Common practice, no source.
inline constexpr double filter_plants_carry = load_quiet_to, filter_glass_carries = 0.05;

/// A single heater stronger than this cooks a tank when it sticks, W (tank/heat.h). Common practice, no source.
inline constexpr double heater_single_most_w = 200;

}  // namespace limits

}  // namespace shoalwright
