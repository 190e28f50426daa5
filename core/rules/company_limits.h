// SPDX-License-Identifier: MIT
#pragma once

#include "rules/limits.h"
#include "stocking/encounter.h"
#include "stocking/swallow.h"

namespace shoalwright {

// Thresholds of the rules about who goes with whom; those that depend on two cards alone are stocking/encounter.h and
// stocking/swallow.h. All common practice, no source, unless one is named there. The three views of a divided rule are lenient,
// usual, strict.

namespace limits {

/// Swallow index of a prey beside a hunter, who lives on fish.
inline constexpr Band eaten_by_hunter =
    undivided({never, from(swallow_watch_from), from(swallow_risk_from), from(swallow_eaten_from)});
/// Beside any other mouth practice is divided, from "raised together they live together" to "never".
inline constexpr Band eaten_by_others{{{never, from(swallow_watch_from), never, never},
                                       {never, from(swallow_watch_from), from(swallow_risk_from), never},
                                       {never, from(swallow_watch_from), from(swallow_risk_from), from(swallow_eaten_from)}}};
/// Who hunts by night finds those that sleep then: at risk from where others are only watched.
inline constexpr Band eaten_asleep_by_hunter = undivided({never, never, from(swallow_watch_from), from(swallow_eaten_from)});
inline constexpr Band eaten_asleep_by_others{{{never, from(swallow_watch_from), never, never},
                                              {never, never, from(swallow_watch_from), never},
                                              {never, never, from(swallow_watch_from), from(swallow_eaten_from)}}};
/// Prey with locking spines: hunters try it and choke; others leave it alone when it is grown, as a rule.
inline constexpr double choke_from = 0.6;
inline constexpr Band choked_on_by_hunter =
    undivided({never, from(choke_from), from(swallow_risk_from), from(swallow_eaten_from)});
inline constexpr Band choked_on_by_others{{{from(choke_from), from(swallow_eaten_from), never, never},
                                           {from(choke_from), never, from(swallow_eaten_from), never},
                                           {never, from(choke_from), from(swallow_eaten_from), never}}};
/// From a biter no size is safe: as bad as what just fits a mouth that is no hunter's.
inline constexpr double biter_index = swallow_eaten_from;

/// A nipper that is calmed by its own kind is calm in so many, or in a good group where that is more. Numbers lessen nipping and
/// do not cure it: lenient keepers trust them, strict ones never put long fins beside a nipper.
inline constexpr int nip_calm_group = 8;

/// Fish that drive off all others hurt peaceful ones that are not longer than this many times their own length.
inline constexpr double bullied_times = 1.5;
/// Two such fish of like size, neither more than so many times the other, hold out against each other.
inline constexpr double like_size_times = 1.5;

/// In less water than this a pair with eggs or fry leaves the others nowhere to go, L inside to the rim.
inline constexpr double guarding_least_l = 100;
/// How far a volume is short of the least, as a share of it: within what a tape measure errs a note.
inline constexpr Steps volume_short{0, never, error_volume_share, never};

/// Males of a rival kind up to one fewer than this want a territory each; so many and more spread their fights.
inline constexpr int rivals_spread = 6;
/// Ground of one male of a kind that shares the floor or uses none, body lengths squared.
inline constexpr double rival_ground_bl2 = 25;
/// Ground wanted over ground there is, for rivals and for two kinds of holders: within what a tape measure errs a note.
inline constexpr Steps ground_over{1, never, 1 + 2 * error_length_share, never};

/// Females that a male of live-bearing fish wants, unless its card asks for fewer.
inline constexpr int females_for_a_male = 2;

/// Fish that dig uproot plants from this length on, cm.
inline constexpr double digger_least_cm = 7;

/// A male fighter beside other long fins: some ignore them, so practice is divided.
inline constexpr Severity fighter_beside_fins[3] = {Severity::watch, Severity::strain, Severity::strain};

/// Females of a fighting kind together: it can go well for months, so practice is divided.
inline constexpr Severity female_fighters[3] = {Severity::watch, Severity::strain, Severity::harm};

}  // namespace limits

}  // namespace shoalwright
