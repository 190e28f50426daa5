// SPDX-License-Identifier: MIT
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "rules/facts.h"
#include "rules/grade.h"

namespace shoalwright {

// What many rules say and weigh alike.

/// Nothing that rests on an assumed value is harm: a strain instead where one of the pointers was guessed.
Severity unless_assumed(const Plan& plan, Severity severity, std::initializer_list<const char*> pointers);

/// The same for what rests on the measures of the vessel: all of them, or only those of its floor.
Severity unless_tank_assumed(const Plan& plan, Severity severity);
Severity unless_floor_assumed(const Plan& plan, Severity severity);

/// The name that stands in a sentence.
const std::string& name_of(const Kept& kept);

/// "neon tetra, ember tetra and 2 others" down to the names alone: at most `most` names.
std::string names_of(const std::vector<const Kept*>& groups, std::size_t most = 3);

/// The name of the only group, or "3 kinds".
std::string name_or_number_of(const std::vector<const Kept*>& groups);

/// Puts the ids of the groups into the finding.
void concern(Finding& finding, const std::vector<const Kept*>& groups);

/// Evidence and source of the value of a species card that a finding rests on. A card of the keeper's own is the keeper's word.
void rest_on(Finding& finding, const Facts& facts, const Kept& kept, const std::string& field);

/// The same of several cards, at least one: no surer than the least sure of them.
void rest_on(Finding& finding, const Facts& facts, const std::vector<const Kept*>& groups, const std::string& field);

/// Rounded to a millionth, so that 28.3 - 28 is not past 0.3.
double rounded(double amount);

/// Whether the plan aims at a value of "temperature_c", "ph", "gh_dgh" or "kh_dkh"; otherwise the tank has the source's.
bool has_aim(const Plan& plan, std::string_view quantity);

/// Whether that value, aim or source, was guessed.
bool water_is_assumed(const Plan& plan, const char* quantity);

}  // namespace shoalwright
