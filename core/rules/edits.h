// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "rules/facts.h"

namespace shoalwright {

// Remedies as JSON Patches of the canonical plan. All of them leave alone what Plan::fixed pins, and come back empty where that
// leaves nothing to do.

/// Gives a group this many animals in all (0 or more). Lines are filled and emptied from the last one on, wished for before
/// swimming; `have` follows where fewer are left, and sexes that no longer add up become unknown. A line without animals goes,
/// and the pointers of Plan::fixed and Plan::assumed move with the lines after it.
std::vector<PatchStep> set_count(const Plan& plan, const Kept& kept, int count);

/// So many of each sex, in all as many as that; lines change as by set_count(). Empty where a line of the group is pinned.
std::vector<PatchStep> set_sexes(const Plan& plan, const Kept& kept, int males, int females);

/// "Choose 2 males and 4 females of guppies", "Keep males only of guppies" where some swim already, "Re-home 2 guppies, keep 1
/// male and 3 females".
std::string say_sexes(const Kept& kept, int males, int females);

/// Whether set_count() can change the group to that count.
bool can_set_count(const Plan& plan, const Kept& kept, int count);

/// "Keep 8 harlequin rasboras", "Leave out harlequin rasboras", "Re-home 2 harlequin rasboras, keep 4": taking out an animal that
/// swims already is always called re-home.
std::string say_count(const Kept& kept, int count);

/// Makes that count the remedy, in words and as a patch; leaves the finding without one where the group is pinned.
void remedy_by_count(const Plan& plan, const Kept& kept, int count, Finding& finding);

/// Several groups taken out at once. Empty where one of them is pinned.
std::vector<PatchStep> leave_out(const Plan& plan, const std::vector<const Kept*>& groups);

/// "Leave out rams and zebra danios", "Re-home the 4 rams, leave out zebra danios".
std::string say_leave_out(const std::vector<const Kept*>& groups);

/// One value of the canonical plan replaced.
std::vector<PatchStep> set_value(const Plan& plan, const std::string& pointer, std::string value_json);

/// The tank meant to have this water: sets it in /water, or makes /water from what the tank has now. `quantity`: "temperature_c",
/// "ph", "gh_dgh" or "kh_dkh".
std::vector<PatchStep> aim_water(const Facts& facts, const std::string& quantity, double value);

/// "28 × 10 × 15 cm".
std::string say_measures(const Piece& piece);

/// So many pieces like this one put in. Empty where the pieces are pinned or the plan holds no more of them.
std::vector<PatchStep> add_pieces(const Plan& plan, const Piece& piece, int count = 1);

/// A terrain line as JSON text.
std::string line_json(const std::vector<LinePoint>& line);

/// A number as JSON text, at most four decimals.
std::string json_number(double value);

}  // namespace shoalwright
