// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include "catalog/read.h"
#include "support/card_files.h"

namespace shoalwright {

/// The built-in catalogue, read once from its files with every check; empty, with a failed expectation, when it cannot be read.
inline const Catalog& built_in() {
  static const Catalog catalog = [] {
    const Result<Catalog> read = read_catalog(card_texts());
    EXPECT_TRUE(read) << read.error().place << ": " << read.error().sentence;
    return read ? *read : Catalog{};
  }();
  return catalog;
}

/// A complete entry that fills every field of the schema; no real animal, so that no test depends on its husbandry.
inline constexpr const char* full_entry_text = R"({
  "id": "exemplum-plenum", "aliases": ["exemplum-vetus"], "code": 900, "kind": "fish", "group": "others",
  "name": {
    "scientific": "Exemplum plenum", "status": "settled", "synonyms": ["Paradigma plenum"], "misapplied": ["Paradigma vacuum"],
    "common": [{ "text": "full example", "lang": "en" }], "sold_as": ["Exemplum aliud"], "family": "Exemplidae"
  },
  "size": {
    "adult_tl_cm": 6, "adult_male_cm": 5, "adult_female_cm": 6, "sold_cm": 3, "published_max_cm": 7, "published_max_type": "TL",
    "height_with_fins_cm": 5, "body": "fusiform", "body_depth_share": 0.3, "spines": true, "length_weight": [0.011, 3.04]
  },
  "water": {
    "temperature_c": { "tolerated": [20, 28], "ideal": [22, 26], "published": [22, 26] },
    "ph": { "tolerated": [6, 8], "ideal": [6.5, 7.5], "published": [6, 7] },
    "gh_dgh": { "tolerated": [2, 18], "ideal": [4, 12] }, "kh_dkh": { "tolerated": [1, 12], "ideal": [2, 8] },
    "salinity": "fresh", "oxygen_least_mg_l": 5, "hardiness": "usual"
  },
  "life": {
    "style": "calm_mid", "depth": { "surface": 0.2, "mid": 0.5, "bottom": 0.3 },
    "group": { "kind": "shoal", "least": 6, "good": 10, "all_male_ok": true, "added": "any" },
    "sexes": { "ratio": "1m:2f", "told_apart": "adult" }, "active": "day", "current": "gentle", "cover": "some", "jumps": "rarely",
    "air_breather": false, "longevity_y": [3, 5]
  },
  "temper": {
    "to_own_kind": "peaceful", "to_others": "peaceful", "look_alike_group": "examples", "rival_males": false, "nips_fins": "no",
    "fins": "short", "feeding_pace": "usual", "breeds_with": ["exemplum-aliud"]
  },
  "mouth": {
    "eater": "micropredator", "gape_share": 0.07, "eats_shrimp": "young", "eats_snails": false, "eats_plants": "no", "digs": false
  },
  "needs": {
    "substrate": "any", "wood": false, "caves": 0, "open_floor": false, "mature_weeks": 0, "least_length_cm": 60, "least_volume_l": 50
  },
  "diet": { "kind": "omnivore", "foods": ["flake", "small-frozen"], "feeds_at": "mid" },
  "breeding": {
    "mode": "egg-scatterer", "water": { "temperature_c": [25, 27], "ph": [6, 7], "gh_dgh": [1, 4] },
    "hatch": { "hours": [24, 30], "at_c": 26, "zero_c": 8 }, "gestation_days": [20, 30], "free_swimming_days": [3, 5],
    "first_food": "infusoria", "brood": [50, 100], "note": "An example."
  },
  "legal": [{ "region": "EU", "effect": "check", "instrument": "An example", "as_of": "2026-11", "note": "" }],
  "look": {
    "form": "rasbora", "colours": ["#aa0000", "#00aa00", "#0000aa", "#111111"], "marks": ["wedge"], "fins": "plain",
    "male": { "colours": ["#aa0000", "#00aa00", "#0000aa"] }, "female": { "colours": ["#aa0000", "#00aa00", "#0000aa"] }
  },
  "note": "An example.",
  "evidence": {
    "size.published_max_cm": { "class": "published", "source": "example-2000", "where": "table 1", "note": "An example." },
    "life": { "class": "common-practice" }, "*": { "class": "from-memory" }
  }
})";

}  // namespace shoalwright
