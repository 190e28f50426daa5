// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string_view>

namespace shoalwright {

// Permanent numbers of words in links of version 1: the position in the list. Never reordered, nothing taken out. The
// lists but one may grow at their end, up to 64 words (an older program then says that the link is newer); the pointers may not,
// since their number is part of the layout. A word that is not here travels as text.

inline constexpr auto link_piece_kinds = std::to_array<std::string_view>({
    "block",         "branch",      "branch-bank", "branch-low",    "root",           "stone",
    "stones",        "slate",       "pebbles",     "cave",          "half-shell",     "pipe",
    "pot",           "stem-plants", "stem-plant",  "rosette-plant", "carpet-plants",  "floating-plants",
    "fern",          "moss",        "moss-ball",   "bulb-plant",    "lily",           "mop",
    "leaf-litter",   "bridge",      "stump",       "wall",          "heater",         "filter",
    "sponge-filter", "intake",      "outlet",      "airstone",      "thermometer",    "breeding-box",
    "feeding-ring",  "divider",     "rock",        "driftwood",     "stone-slab",     "thicket",
    "moss-wall",     "cork",        "lime-stone",  "shells",        "hang-on-filter",
});

inline constexpr auto link_salts = std::to_array<std::string_view>({
    "calcium-sulphate-dihydrate",
    "magnesium-sulphate-heptahydrate",
    "sodium-bicarbonate",
    "potassium-bicarbonate",
    "calcium-chloride-dihydrate",
    "calcium-chloride",
    "magnesium-chloride-hexahydrate",
    "calcium-carbonate",
    "sodium-chloride",
    "calcium-sulphate",
    "magnesium-sulphate",
    "magnesium-carbonate",
    "potassium-sulphate",
});

inline constexpr auto link_filter_kinds = std::to_array<std::string_view>({
    "internal",
    "external",
    "sponge",
    "hang-on",
    "under-gravel",
    "sump",
    "corner",
    "canister",
    "mat",
});

inline constexpr auto link_rules = std::to_array<std::string_view>({
    "water-temperature",
    "water-ph",
    "water-gh",
    "water-kh",
    "water-unreachable",
    "water-change-shock",
    "kh-low",
    "softened-water",
    "acid",
    "tap-disinfectant",
    "brackish",
    "group-size",
    "sex-ratio",
    "male-rivalry",
    "look-alike-rivalry",
    "territory",
    "temperament",
    "predation",
    "fin-nipping",
    "invertebrate-predation",
    "feeding",
    "hybrid",
    "surplus-young",
    "adult-size",
    "plant-eater",
    "legal",
    "unknown-species",
    "tank-length",
    "tank-width",
    "tank-height",
    "tank-volume",
    "swim-lane",
    "crowding-top",
    "crowding-mid",
    "crowding-bottom",
    "substrate",
    "cover",
    "wood-needed",
    "lid",
    "current",
    "load",
    "nitrate",
    "ammonia",
    "oxygen",
    "filter",
    "cycle",
    "mature-tank",
    "heater",
    "weight",
    "quarantine",
    "release",
    "electricity",
    "empty",
    "unknown-input",
});

/// Pointers that plans list as assumed or fixed, in byte order.
inline constexpr auto link_pointers = std::to_array<std::string_view>({
    "/ca_mg_ratio",
    "/feeding",
    "/feeding/fasting_days",
    "/feeding/ration",
    "/gear",
    "/gear/filter",
    "/gear/filter/flow_l_h",
    "/gear/filter/media_l",
    "/gear/heater_w",
    "/gear/surface",
    "/limits",
    "/limits/nitrate_mg_l",
    "/place",
    "/place/region",
    "/place/temperature_c",
    "/planting",
    "/running_weeks",
    "/source",
    "/source/disinfectant",
    "/source/gh_dgh",
    "/source/kh_dkh",
    "/source/nitrate_mg_l",
    "/source/ph",
    "/source/temperature_c",
    "/stock",
    "/substrate",
    "/tank",
    "/tank/fill_cm",
    "/tank/glass_mm",
    "/tank/height_cm",
    "/tank/length_cm",
    "/tank/lid",
    "/tank/width_cm",
    "/upkeep",
    "/upkeep/change_fraction",
    "/upkeep/every_days",
    "/water",
    "/water/gh_dgh",
    "/water/kh_dkh",
    "/water/ph",
    "/water/temperature_c",
});

/// What follows the number of an entry in pointers into /pieces and /stock.
inline constexpr auto link_entry_keys = std::to_array<std::string_view>({
    "",
    "/count",
    "/species",
    "/have",
    "/males",
    "/females",
    "/length_cm",
    "/depth_cm",
    "/height_cm",
    "/x_cm",
    "/z_cm",
    "/base_cm",
    "/turn_deg",
    "/kind",
    "/arrives_week",
    "/since_weeks",
});

static_assert(link_entry_keys.size() <= 64 && link_piece_kinds.size() <= 64 && link_salts.size() <= 64 &&
              link_filter_kinds.size() <= 64 && link_rules.size() <= 64);

}  // namespace shoalwright
