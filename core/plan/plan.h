// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalog/species.h"

namespace shoalwright {

// A plan is what the keeper decided: plain data, metric, compared member by member. How it is written is FORMATS section 2.
// `std::optional` empty means "not known, do not assume" (JSON null). A value that the reader filled in because its key was
// absent (plan/defaults.h) is listed in Plan::assumed by JSON Pointer. `other_keys` keeps the keys that this version does not
// know, as the text of a JSON object, empty when there are none.

enum class Shape { rectangular, bow_front, cylinder, half_cylinder, quarter_cylinder, hexagon, pentagon_corner, prism };

struct Point {
  double x_cm = 0, z_cm = 0;
  bool operator==(const Point&) const = default;
};

/// The vessel by its inside measures. Which members count depends on the shape; the others are 0 or empty.
struct Tank {
  Shape shape = Shape::rectangular;
  double length_cm = 0, width_cm = 0;  ///< rectangular, bow_front (width at the side panes)
  double height_cm = 0;                ///< every shape: inside bottom to rim
  double bow_cm = 0;                   ///< bow_front: how far the front bulges beyond the side panes
  double diameter_cm = 0;              ///< cylinder, half_cylinder, quarter_cylinder: inside, of the curved pane
  double side_cm = 0;                  ///< hexagon: one side; pentagon_corner: each back side
  double front_cm = 0;                 ///< pentagon_corner: each short side next to the front pane
  std::vector<Point> outline_cm;       ///< prism: seen from above, in order
  double glass_mm = 0;
  double fill_cm = 0;  ///< inside bottom to the water line
  std::optional<bool> lid;
  std::string other_keys;
  bool operator==(const Tank&) const = default;
};

struct Place {
  std::optional<double> temperature_c;
  std::string region;  ///< ISO 3166 code, empty when not given
  std::string other_keys;
  bool operator==(const Place&) const = default;
};

enum class Disinfectant { none, chlorine, chloramine, unknown };

/// What comes out of the tap.
struct SourceWater {
  std::optional<double> temperature_c, ph, gh_dgh, kh_dkh, nitrate_mg_l;
  Disinfectant disinfectant = Disinfectant::unknown;
  std::string other_keys;
  bool operator==(const SourceWater&) const = default;
};

/// What the tank water is meant to be.
struct WaterAim {
  std::optional<double> temperature_c, ph, gh_dgh, kh_dkh;
  std::string other_keys;
  bool operator==(const WaterAim&) const = default;
};

/// What the tank reads now.
struct Measured {
  std::string date;  ///< ISO 8601 day, empty when not given
  std::optional<double> temperature_c, ph, gh_dgh, kh_dkh, nitrate_mg_l, ammonia_mg_l, nitrite_mg_l;
  std::string other_keys;
  bool operator==(const Measured&) const = default;
};

/// The keeper's own ceilings.
struct Limits {
  std::optional<double> nitrate_mg_l, co2_mg_l;
  std::string other_keys;
  bool operator==(const Limits&) const = default;
};

enum class SubstrateKind { bare, fine_sand, coarse_sand, smooth_gravel, sharp_gravel, planted_soil };

/// A point of a terrain line: what the substrate rises over its slope at x from the left inside glass, below it where negative.
struct LinePoint {
  double x_cm = 0, rise_cm = 0;
  bool operator==(const LinePoint&) const = default;
};

/// A wedge from the front pane to the back pane, both depths 0 when bare, and over it hills and valleys as they are seen from the
/// front: straight between the points of the line, level beyond the first and the last. What goes below the bottom is bare there.
struct Substrate {
  SubstrateKind kind = SubstrateKind::bare;
  double front_cm = 0, back_cm = 0;
  std::vector<LinePoint> line_cm = {};  ///< x rising; empty: the wedge alone
  std::string other_keys;
  bool operator==(const Substrate&) const = default;
};

/// One rock, branch, plant, cave, mop or device. x, z are its centre; empty: put where there is room.
struct Piece {
  std::string kind;
  std::optional<double> x_cm, z_cm;
  double base_cm = 0, length_cm = 0, depth_cm = 0, height_cm = 0, turn_deg = 0;
  bool mirror = false;
  std::string other_keys;
  bool operator==(const Piece&) const = default;
};

/// A species with its count. `species` is an id of the catalogue or of own_species, or an unknown name kept as written.
struct Group {
  std::string species;
  int count = 0;  ///< 0: a line kept for later, no animals
  int have = 0;   ///< how many of them swim already
  std::optional<int> males, females, since_weeks, arrives_week;
  std::string note;
  std::string other_keys;
  bool operator==(const Group&) const = default;
};

enum class SurfaceMotion { still, quiet, gentle, rippled, vigorous };

struct Filter {
  std::string kind;
  std::optional<double> flow_l_h, media_l;
  std::string other_keys;
  bool operator==(const Filter&) const = default;
};

/// Absent as a whole when nothing is known of the gear.
struct Gear {
  bool filter_known = false;     ///< false: nothing is known of the filter
  std::optional<Filter> filter;  ///< empty while known: there is none
  std::optional<double> heater_w;
  std::optional<SurfaceMotion> surface;
  std::string other_keys;
  bool operator==(const Gear&) const = default;
};

enum class Ration { light, normal, heavy };

struct Feeding {
  Ration ration = Ration::normal;
  int fasting_days = 0;  ///< a week, 0 to 6
  std::string other_keys;
  bool operator==(const Feeding&) const = default;
};

enum class Planting { none, light, medium, dense };

struct Upkeep {
  double change_fraction = 0;  ///< 0 to 1 of the net water at each change
  double every_days = 0;       ///< > 0
  std::string other_keys;
  bool operator==(const Upkeep&) const = default;
};

enum class Strictness { lenient, usual, strict };

/// A finding that the keeper has answered with "I know".
struct Seen {
  std::string rule;
  std::vector<std::string> species;
  std::string note;
  std::string other_keys;
  bool operator==(const Seen&) const = default;
};

/// The keeper's value beside ours; `path` is "/species/<id>/<field>/…", `value_json` JSON text.
struct OwnValue {
  std::string path, value_json, note;
  std::string other_keys;
  bool operator==(const OwnValue&) const = default;
};

struct Plan {
  std::string name, notes;
  std::string start;  ///< ISO 8601 day, empty when not given
  Tank tank;
  Place place;
  SourceWater source;
  std::optional<WaterAim> water;  ///< empty: the tank runs on the source water at the stock's best common temperature
  std::optional<Measured> measured;
  Limits limits;
  std::vector<std::string> salts;
  std::optional<double> ca_mg_ratio;
  Substrate substrate;
  std::vector<Piece> pieces;
  std::vector<Group> stock;
  std::optional<Gear> gear;  ///< empty: unknown
  std::optional<Feeding> feeding;
  std::optional<Planting> planting;
  std::optional<Upkeep> upkeep;
  std::optional<double> running_weeks;
  Strictness strictness = Strictness::usual;
  std::vector<std::string> assumed, fixed;  ///< JSON Pointers
  std::vector<Seen> seen;
  std::vector<OwnValue> own_values;
  std::vector<Species> own_species;
  std::string breeding_json, log_json;  ///< text of the JSON arrays, empty when absent; read by the rooms that use them
  std::vector<std::string> sheet;       ///< two free lines of the care sheet
  std::string other_keys;
  bool operator==(const Plan&) const = default;
};

/// Whether the value under a JSON Pointer was guessed by whoever made the plan, itself or a parent of it.
bool is_assumed(const Plan& plan, const std::string& pointer);

/// Whether the value under a JSON Pointer, or a parent of it, may never be changed by a suggestion.
bool is_fixed(const Plan& plan, const std::string& pointer);

}  // namespace shoalwright
