// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "notebook/finding.h"
#include "units/range.h"

namespace shoalwright {

enum class Body { eel, elongated, fusiform, short_deep, unknown };
enum class Style {
  darting_surface,
  surface_hover,
  calm_mid,
  active_mid,
  small_livebearer,
  bottom_shoal,
  territorial_bottom,
  centrepiece,
  grazer,
  invertebrate
};
enum class GroupKind { solitary, pair, harem, loose, shoal, colony };
enum class Jumps { rarely, when_chased, readily };
enum class Toward { peaceful, semi, aggressive };
enum class Salinity { fresh, fresh_to_brackish, brackish };

/// One water quantity of a species: what it lives in, and inside it what it thrives in. A missing range is unknown, not "any".
struct Need {
  std::optional<Range> tolerated, ideal;
  bool operator==(const Need&) const = default;
};

struct CommonName {
  std::string text, lang;
  bool operator==(const CommonName&) const = default;
};

/// Where one value comes from; `path` is the field path in the species file, "*" for the rest.
struct EvidenceEntry {
  std::string path;
  Evidence evidence = Evidence::from_memory;
  std::string source, where;
  bool operator==(const EvidenceEntry&) const = default;
};

/// One card of the catalogue. Lengths are total lengths of kept adults in cm (shrimps rostrum to tail, snails shell, frogs snout
/// to vent). Optional members are unknown when empty.
struct Species {
  std::string id;
  std::vector<std::string> aliases;
  int code = 0;  ///< permanent number for links; 0 for a keeper's own species
  std::string kind, group;

  struct Name {
    std::string scientific, status, family;
    std::vector<std::string> synonyms, misapplied, sold_as;
    std::vector<CommonName> common;
    bool operator==(const Name&) const = default;
  } name;

  struct Size {
    double adult_tl_cm = 0;
    std::optional<double> adult_male_cm, adult_female_cm, sold_cm, published_max_cm, height_with_fins_cm;
    std::string published_max_type;
    Body body = Body::unknown;
    std::optional<double> body_depth_share;
    std::optional<std::array<double, 2>> length_weight;  ///< a, b of W = a L^b, g and cm TL
    bool spines = false;                                 ///< of the fins, which lock upright and stick in a throat
    bool operator==(const Size&) const = default;
  } size;

  struct WaterNeeds {
    Need temperature_c, ph, gh_dgh, kh_dkh;
    Salinity salinity = Salinity::fresh;
    std::optional<double> oxygen_least_mg_l;
    std::string hardiness;
    bool operator==(const WaterNeeds&) const = default;
  } water;

  struct Life {
    Style style = Style::calm_mid;
    std::array<double, 3> depth{};  ///< share of its time in surface, mid, bottom; sums to 1
    struct Group {
      GroupKind kind = GroupKind::shoal;
      int least = 1, good = 1;
      bool all_male_ok = false;
      std::string added;
      bool operator==(const Group&) const = default;
    } group;
    std::string sex_ratio, told_apart, active, current, cover;
    std::optional<Jumps> jumps;
    bool air_breather = false;
    std::optional<Range> longevity_y;
    bool operator==(const Life&) const = default;
  } life;

  struct Temper {
    Toward to_own_kind = Toward::peaceful, to_others = Toward::peaceful;
    std::string look_alike_group, nips_fins, fins, feeding_pace;
    bool rival_males = false;
    std::vector<std::string> breeds_with;
    bool operator==(const Temper&) const = default;
  } temper;

  struct Mouth {
    std::string eater, eats_shrimp, eats_plants;
    std::optional<double> gape_share;
    bool eats_snails = false, digs = false;
    bool operator==(const Mouth&) const = default;
  } mouth;

  struct Needs {
    std::string substrate;
    bool wood = false, open_floor = false;
    int caves = 0, mature_weeks = 0;
    std::optional<double> least_length_cm, least_volume_l;
    bool operator==(const Needs&) const = default;
  } needs;

  struct Diet {
    std::string kind, feeds_at;
    std::vector<std::string> foods;
    bool operator==(const Diet&) const = default;
  } diet;

  std::string breeding_mode;  ///< a word of the closed list; empty: not known

  struct Look {
    std::string form, fins;
    std::vector<std::string> colours, marks;
    bool operator==(const Look&) const = default;
  } look;

  /// A list that names the kind.
  struct Law {
    std::string region, effect, instrument, as_of, note;
    bool operator==(const Law&) const = default;
  };
  std::vector<Law> laws;

  std::string note;
  std::string whole_json;  ///< a keeper's own entry as it was read, so that fields this program does not use are kept; else empty
  std::vector<EvidenceEntry> evidence;
  bool operator==(const Species&) const = default;
};

/// The evidence of one field: the longest matching path wins, "*" is the rest.
const EvidenceEntry* evidence_for(const Species& species, const std::string& path);

/// The first common name, or the scientific one where there is none.
const std::string& display_name(const Species& species);

}  // namespace shoalwright
