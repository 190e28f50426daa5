// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string_view>
#include <utility>

#include "catalog/species.h"

namespace shoalwright {

// The closed lists of the species files, the same as in catalog/schema/species.json (a test compares the two).

template <class E, std::size_t N>
using Words = std::array<std::pair<std::string_view, E>, N>;

inline constexpr Words<Body, 5> body_words{{{"eel", Body::eel},
                                            {"elongated", Body::elongated},
                                            {"fusiform", Body::fusiform},
                                            {"short_deep", Body::short_deep},
                                            {"unknown", Body::unknown}}};
inline constexpr Words<Style, 10> style_words{{{"darting_surface", Style::darting_surface},
                                               {"surface_hover", Style::surface_hover},
                                               {"calm_mid", Style::calm_mid},
                                               {"active_mid", Style::active_mid},
                                               {"small_livebearer", Style::small_livebearer},
                                               {"bottom_shoal", Style::bottom_shoal},
                                               {"territorial_bottom", Style::territorial_bottom},
                                               {"centrepiece", Style::centrepiece},
                                               {"grazer", Style::grazer},
                                               {"invertebrate", Style::invertebrate}}};
inline constexpr Words<GroupKind, 6> group_kind_words{{{"solitary", GroupKind::solitary},
                                                       {"pair", GroupKind::pair},
                                                       {"harem", GroupKind::harem},
                                                       {"loose", GroupKind::loose},
                                                       {"shoal", GroupKind::shoal},
                                                       {"colony", GroupKind::colony}}};
inline constexpr Words<Jumps, 3> jumps_words{
    {{"rarely", Jumps::rarely}, {"when-chased", Jumps::when_chased}, {"readily", Jumps::readily}}};
inline constexpr Words<Toward, 3> toward_words{
    {{"peaceful", Toward::peaceful}, {"semi", Toward::semi}, {"aggressive", Toward::aggressive}}};
inline constexpr Words<Salinity, 3> salinity_words{
    {{"fresh", Salinity::fresh}, {"fresh-to-brackish", Salinity::fresh_to_brackish}, {"brackish", Salinity::brackish}}};
inline constexpr Words<Evidence, 4> evidence_words{{{"published", Evidence::published},
                                                    {"common-practice", Evidence::common_practice},
                                                    {"from-memory", Evidence::from_memory},
                                                    {"keeper", Evidence::keeper}}};

inline constexpr std::array<std::string_view, 4> kind_list{"fish", "shrimp", "snail", "frog"};
/// `others` is where a keeper's own entry begins, and what entries of earlier times say; no card of the catalogue does.
inline constexpr std::array<std::string_view, 24> group_list{
    "tetras",  "rasboras",  "danios",   "barbs",       "livebearers", "goldfish", "corydoras", "suckermouths",
    "loaches", "labyrinth", "cichlids", "rainbowfish", "killifish",   "puffers",  "gobies",    "catfish",
    "sharks",  "oddballs",  "brackish", "cool-water",  "shrimps",     "snails",   "frogs",     "others"};
inline constexpr std::array<std::string_view, 4> status_list{"settled", "recent-change", "identity-uncertain", "trade-form"};
inline constexpr std::array<std::string_view, 8> length_type_list{
    "SL", "TL", "FL", "SVL", "shell height", "shell width", "rostrum to tail", "not given"};
inline constexpr std::array<std::string_view, 3> hardiness_list{"hardy", "usual", "delicate"};
inline constexpr std::array<std::string_view, 3> added_list{"any", "last", "together"};
inline constexpr std::array<std::string_view, 4> told_apart_list{"easy", "adult", "hard", "never"};
inline constexpr std::array<std::string_view, 4> active_list{"day", "dusk", "night", "any"};
inline constexpr std::array<std::string_view, 3> current_list{"still", "gentle", "strong"};
inline constexpr std::array<std::string_view, 3> cover_list{"none", "some", "much"};
inline constexpr std::array<std::string_view, 3> nips_list{"no", "when-few", "yes"};
inline constexpr std::array<std::string_view, 2> fin_length_list{"short", "long"};
inline constexpr std::array<std::string_view, 3> pace_list{"slow", "usual", "fast"};
inline constexpr std::array<std::string_view, 7> eater_list{"hunter", "opportunist", "micropredator", "small-mouth",
                                                            "picker", "grazer",      "biter"};
inline constexpr std::array<std::string_view, 3> eats_shrimp_list{"no", "young", "adults"};
inline constexpr std::array<std::string_view, 3> eats_plants_list{"no", "soft", "most"};
inline constexpr std::array<std::string_view, 3> substrate_list{"any", "fine", "sand"};
inline constexpr std::array<std::string_view, 4> diet_list{"omnivore", "carnivore", "herbivore", "aufwuchs"};
inline constexpr std::array<std::string_view, 14> food_list{
    "flake",  "granule", "micro-pellet", "sinking-pellet", "algae-wafer", "vegetable", "small-frozen",
    "frozen", "gel",     "small-live",   "live",           "snails",      "biofilm",   "leaf-litter"};
inline constexpr std::array<std::string_view, 4> feeds_at_list{"surface", "mid", "bottom", "any"};
inline constexpr std::array<std::string_view, 16> breeding_mode_list{
    "egg-scatterer", "leaf-depositor", "substrate-depositor", "wall-depositor",    "cave-spawner", "bubble-nester",
    "mouthbrooder",  "livebearer",     "annual-killifish",    "mop-spawner",       "berried",      "salt-larvae",
    "egg-capsules",  "floating-eggs",  "not-in-tanks",        "clutch-above-water"};
inline constexpr std::array<std::string_view, 8> first_food_list{"infusoria",    "powder", "rotifers", "microworm",
                                                                 "brine-shrimp", "algae",  "biofilm",  "none"};
inline constexpr std::array<std::string_view, 3> legal_effect_list{"banned", "restricted", "check"};
inline constexpr std::array<std::string_view, 96> form_list{"slim-tetra",
                                                            "deep-tetra",
                                                            "hatchet",
                                                            "rasbora",
                                                            "danio",
                                                            "barb",
                                                            "goldfish-fancy",
                                                            "goldfish-long",
                                                            "livebearer",
                                                            "molly",
                                                            "corydoras",
                                                            "sucker",
                                                            "pleco",
                                                            "eel-loach",
                                                            "deep-loach",
                                                            "labyrinth",
                                                            "fighter",
                                                            "dwarf-cichlid",
                                                            "angelfish",
                                                            "mbuna",
                                                            "rainbow-thread",
                                                            "killi",
                                                            "puffer",
                                                            "goby",
                                                            "shrimp",
                                                            "snail",
                                                            "frog",
                                                            "rainbowfish",
                                                            "blue-eye",
                                                            "ricefish",
                                                            "four-eyes",
                                                            "halfbeak",
                                                            "gar",
                                                            "pipefish",
                                                            "whisker-catfish",
                                                            "squeaker",
                                                            "shovelnose",
                                                            "shark-catfish",
                                                            "glass-catfish",
                                                            "banjo-catfish",
                                                            "talking-catfish",
                                                            "eel-catfish",
                                                            "electric-catfish",
                                                            "hoplo",
                                                            "whiptail",
                                                            "twig-catfish",
                                                            "knifefish",
                                                            "featherback",
                                                            "elephantnose",
                                                            "bichir",
                                                            "ropefish",
                                                            "lungfish",
                                                            "spiny-eel",
                                                            "sturgeon",
                                                            "arowana",
                                                            "butterflyfish",
                                                            "archerfish",
                                                            "moonfish",
                                                            "sunfish",
                                                            "leaffish",
                                                            "bush-fish",
                                                            "paradise-fish",
                                                            "wild-betta",
                                                            "snakehead",
                                                            "mudskipper",
                                                            "dragon-goby",
                                                            "large-cichlid",
                                                            "hump-cichlid",
                                                            "parrot-cichlid",
                                                            "discus",
                                                            "eartheater",
                                                            "hap",
                                                            "slim-cichlid",
                                                            "sardine-cichlid",
                                                            "shell-dweller",
                                                            "shark-minnow",
                                                            "torpedo-barb",
                                                            "algae-eater",
                                                            "hillstream",
                                                            "pacu",
                                                            "headstander",
                                                            "prochilodus",
                                                            "pencilfish",
                                                            "stingray",
                                                            "long-arm-shrimp",
                                                            "fan-shrimp",
                                                            "crayfish",
                                                            "crab",
                                                            "cone-snail",
                                                            "ramshorn",
                                                            "apple-snail",
                                                            "nerite",
                                                            "horned-nerite",
                                                            "limpet",
                                                            "mid-tetra",
                                                            "bristlenose"};
inline constexpr std::array<std::string_view, 56> mark_list{
    "none",        "lateral-stripe", "half-stripe-red", "wedge",        "bars",          "tiger-bars",    "bands",
    "dots",        "spots",          "reticulate",      "eye-band",     "tail-spot",     "dorsal-spot",   "dark-band",
    "fin-edges",   "shell-stripes",  "honeycomb",       "glow-stripe",  "front-stripe",  "double-stripe", "stripes",
    "back-stripe", "hockey-stripe",  "slant-stripe",    "oblique-bars", "saddles",       "blotches",      "patches",
    "maze",        "marbling",       "spangles",        "ocelli",       "tail-eye",      "shoulder-spot", "mid-spot",
    "heart-spot",  "cheek-stripe",   "head-patch",      "throat",       "belly-patch",   "rear-half",     "collar",
    "tail-colour", "tail-edge",      "tail-tips",       "flag-tail",    "coloured-fins", "clear-fins",    "dark-edges",
    "pale-edges",  "pale-tips",      "fin-dots",        "dark-dorsal",  "bright-eye",    "no-eye",        "glass"};
inline constexpr std::array<std::string_view, 8> fin_shape_list{"plain", "long", "lyre", "threads",
                                                                "veil",  "fan",  "sail", "sword"};

}  // namespace shoalwright
