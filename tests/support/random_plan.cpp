// SPDX-License-Identifier: MIT
#include "support/random_plan.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "plan/check.h"
#include "plan/words.h"
#include "share/plan_json.h"
#include "support/dice.h"

namespace shoalwright {

namespace {

constexpr auto names = std::to_array<const char*>({"Reading-room riverbank", "Zoë's bank", "Балтийская", "水草の棚", "tank 🐟🐟",
                                                   "\"quoted\" \\ </script>", "two\nlines\tand a tab", "e\u0301"});
constexpr auto sentences = std::to_array<const char*>({
    "Seen by readers all day, cared for twice a week.",
    "Wood on the left, plants on the right.",
    "Ask Ib before feeding.",
    "The lamp is on from ten to eight.",
    "Two of them came from the school tank.",
    "Watch the level in August.",
    "Größere Hälfte abends wechseln.",
    "The shelf carries 120 kg.",
    "Tap smells of chlorine after rain.",
});
constexpr auto others = std::to_array<const char*>({
    "{\"colour\":\"tea\"}",
    "{\"iron_mg_l\":0.04,\"sure\":true}",
    "{\"a/b~c\":[1,2.50,-3e-7,null],\"z\":{\"y\":[[]]}}",
    "{\"names\":[\"Ada\",\"№ 4\",\"\\u0001\"]}",
});
constexpr auto kinds =
    std::to_array<const char*>({"block", "branch-bank", "root", "stone", "stones", "pebbles", "cave", "pot", "stem-plants",
                                "carpet-plants", "rosette-plant", "fern", "moss", "floating-plants", "leaf-litter"});
constexpr auto filters = std::to_array<const char*>({"internal", "external", "sponge", "hang-on", "sump"});
constexpr auto guessed = std::to_array<const char*>({"/source/nitrate_mg_l", "/gear", "/running_weeks", "/tank/glass_mm",
                                                     "/upkeep", "/place/temperature_c", "/pieces/0/length_cm", "/odd~1key"});
constexpr auto pinned = std::to_array<const char*>({"/tank", "/source", "/stock/0", "/water/ph"});
constexpr auto rules = std::to_array<const char*>({"lid", "group-size", "current", "surplus-young", "a-rule-of-tomorrow"});

constexpr const char* own_card =
    R"({"id":"own--pond-snail","name":{"common":[{"text":"pond snail","lang":"en"}]},"size":{"adult_tl_cm":1.8},"life":{)"
    R"("style":"invertebrate","depth":{"surface":0.2,"mid":0.3,"bottom":0.5},"group":{"kind":"loose","least":1}},"eggs":"clear"})";

Species own_species() {
  const Result<Plan> plan = read_plan(
      R"({"format":"shoalwright-plan","version":1,"tank":{"shape":"cylinder","diameter_cm":30,"height_cm":30},"own_species":[)" +
      std::string(own_card) + "]}");
  return plan.value().own_species.front();
}

struct Maker {
  Dice dice;
  Dice hills;  ///< of their own, so that all else is as it was before there were any
  const Catalog& catalog;
  PlanTaste taste;

  /// A measure as keepers write it: whole, half, or to `per_unit` parts; rarely between.
  double measure(double low, double high, int per_unit = 10) {
    const double value = dice.real(low, high);
    if (taste.odd && dice.percent(4)) return value;
    const int parts = dice.percent(45) ? 1 : dice.percent(30) ? 2 : per_unit;
    return std::clamp(std::round(value * parts) / parts, low, high);
  }
  double place(double low, double high) {
    return taste.odd ? measure(low, high) : std::clamp(std::round(dice.real(low, high) * 2) / 2, low, high);
  }
  std::optional<double> maybe(double low, double high, int per_unit = 10) {
    return dice.percent(75) ? std::optional(measure(low, high, per_unit)) : std::nullopt;
  }
  std::optional<int> maybe_whole(int share, int low, int high) {
    return dice.percent(share) ? std::optional(dice.whole(low, high)) : std::nullopt;
  }
  template <class Choice>
  Choice choice() {
    return static_cast<Choice>(dice.below(static_cast<int>(Words<Choice>::all.size())));
  }
  std::string other() { return taste.odd && dice.percent(5) ? dice.pick(others) : ""; }
  std::string some_text(int share, std::size_t most) {
    if (!taste.notes || !dice.percent(share)) return "";
    std::string text = dice.pick(sentences);
    while (dice.percent(60)) text += std::string(" ") + dice.pick(sentences);
    return text.size() <= most ? text : std::string("Ask before feeding.");
  }
  std::string day() {
    const int month = dice.whole(1, 12), date = dice.whole(1, 28);
    const auto two = [](int n) { return (n < 10 ? "0" : "") + std::to_string(n); };
    return std::to_string(dice.percent(95) ? dice.whole(2024, 2029) : dice.whole(1583, 9999)) + '-' + two(month) + '-' +
           two(date);
  }
  std::string species() {
    if (taste.odd && dice.percent(6)) return "Brown thing from bag " + std::to_string(dice.below(9));
    return dice.pick(catalog.species).id;
  }

  Tank tank() {
    Tank tank;
    tank.shape = dice.percent(50) ? Shape::rectangular : choice<Shape>();
    tank.height_cm = measure(20, 70);
    switch (tank.shape) {
      case Shape::rectangular:
      case Shape::bow_front:
        tank.length_cm = measure(28, 180);
        tank.width_cm = measure(18, 70);
        if (tank.shape == Shape::bow_front) tank.bow_cm = measure(1, tank.length_cm / 2);
        break;
      case Shape::cylinder:
      case Shape::half_cylinder:
      case Shape::quarter_cylinder: tank.diameter_cm = measure(25, 150); break;
      case Shape::hexagon: tank.side_cm = measure(15, 50); break;
      case Shape::pentagon_corner:
        tank.side_cm = measure(40, 90);
        tank.front_cm = measure(10, tank.side_cm - 5);
        break;
      case Shape::prism: {
        const double x = measure(60, 160), z = measure(40, 70), notch_x = measure(10, 50), notch_z = measure(10, 30);
        tank.outline_cm = {{0, 0}, {x, 0}, {x, z - notch_z}, {x - notch_x, z - notch_z}, {x - notch_x, z}, {0, z}};
        break;
      }
    }
    tank.glass_mm = dice.percent(70) ? dice.whole(4, 12) : measure(3, 15);
    tank.fill_cm = dice.percent(50) ? tank.height_cm - 2.5 : measure(10, tank.height_cm);
    if (dice.percent(85)) tank.lid = dice.percent(60);
    tank.other_keys = other();
    return tank;
  }

  Piece piece(const Tank& tank) {
    Piece piece;
    piece.kind = taste.odd && dice.percent(5) ? "sunken teapot" : dice.pick(kinds);
    if (dice.percent(90)) {
      piece.x_cm = place(0, std::max({tank.length_cm, tank.diameter_cm, tank.side_cm, 40.0}));
      piece.z_cm = place(0, std::max({tank.width_cm, tank.diameter_cm / 2, tank.side_cm, 30.0}));
    }
    if (dice.percent(20)) piece.base_cm = place(-2, tank.height_cm);
    piece.length_cm = place(3, 60);
    piece.depth_cm = place(3, 30);
    piece.height_cm = place(1, 50);
    if (dice.percent(60)) piece.turn_deg = !taste.odd || dice.percent(50) ? 5 * dice.whole(-36, 36) : dice.whole(-180, 360);
    piece.mirror = dice.percent(20);
    piece.other_keys = other();
    return piece;
  }

  Group group() {
    Group group;
    group.species = species();
    group.count = dice.percent(2) ? 0 : dice.whole(1, dice.percent(95) ? 20 : 3000);
    group.have = dice.percent(40) ? group.count : dice.percent(60) ? 0 : dice.whole(0, group.count);
    if (dice.percent(30)) group.males = dice.whole(0, group.count);
    if (dice.percent(70) && group.males) group.females = group.count - *group.males;
    group.since_weeks = maybe_whole(30, 0, 150);
    group.arrives_week = maybe_whole(20, 0, 30);
    group.note = some_text(8, 80);
    group.other_keys = other();
    return group;
  }

  void waters(Plan& plan) {
    SourceWater& source = plan.source;
    source.temperature_c = maybe(5, 20);
    source.ph = maybe(5.5, 8.5, 100);
    source.gh_dgh = maybe(0, 30);
    source.kh_dkh = maybe(0, 20);
    source.nitrate_mg_l = maybe(0, 50);
    source.disinfectant = choice<Disinfectant>();
    source.other_keys = other();
    if (dice.percent(70)) {
      plan.water =
          WaterAim{.temperature_c = maybe(16, 30), .ph = maybe(5, 8.5, 100), .gh_dgh = maybe(0, 25), .kh_dkh = maybe(0, 15)};
      plan.water->other_keys = other();
    }
    if (dice.percent(40)) {
      Measured& now = plan.measured.emplace();
      if (dice.percent(80)) now.date = day();
      now.temperature_c = maybe(16, 30);
      now.ph = maybe(5, 8.5, 100);
      now.gh_dgh = maybe(0, 25);
      now.kh_dkh = maybe(0, 15);
      now.nitrate_mg_l = maybe(0, 80);
      now.ammonia_mg_l = dice.percent(70) ? std::optional(0.0) : maybe(0, 4, 100);
      now.nitrite_mg_l = dice.percent(70) ? std::optional(0.0) : maybe(0, 4, 100);
      now.other_keys = other();
    }
    if (dice.percent(15)) plan.limits.nitrate_mg_l = measure(10, 60);
    if (dice.percent(10)) plan.limits.co2_mg_l = measure(10, 30);
    plan.limits.other_keys = other();
    if (dice.percent(40)) plan.salts = {"calcium-sulphate-dihydrate", "magnesium-sulphate-heptahydrate", "sodium-bicarbonate"};
    if (taste.odd && dice.percent(10)) plan.salts.push_back("salt of my own");
    plan.ca_mg_ratio = dice.percent(90) ? std::optional(3.0) : maybe(1, 5);
  }

  void work(Plan& plan) {
    if (dice.percent(70)) {
      Gear& gear = plan.gear.emplace();
      gear.filter_known = dice.percent(90);
      if (gear.filter_known && dice.percent(85)) {
        Filter& filter = gear.filter.emplace();
        filter.kind = dice.pick(filters);
        filter.flow_l_h = dice.percent(80) ? std::optional<double>(50 * dice.whole(2, 30)) : maybe(80, 1500);
        filter.media_l = maybe(0.2, 8);
        filter.other_keys = other();
      }
      if (dice.percent(80)) gear.heater_w = dice.percent(85) ? 25 * dice.whole(0, 12) : measure(0, 300);
      if (dice.percent(70)) gear.surface = choice<SurfaceMotion>();
      gear.other_keys = other();
    }
    if (dice.percent(90))
      plan.feeding = Feeding{.ration = choice<Ration>(), .fasting_days = dice.whole(0, 2), .other_keys = other()};
    if (dice.percent(90)) plan.planting = choice<Planting>();
    if (dice.percent(90)) {
      const double share = dice.percent(80) ? 0.05 * dice.whole(2, 12) : measure(0, 1, 100);
      plan.upkeep =
          Upkeep{.change_fraction = share, .every_days = dice.percent(75) ? 7.0 : dice.whole(1, 30), .other_keys = other()};
    }
    if (dice.percent(90)) plan.running_weeks = dice.percent(40) ? 0 : dice.whole(0, 300);
    plan.strictness = dice.percent(85) ? Strictness::usual : choice<Strictness>();
  }

  template <class List>
  std::vector<std::string> some_of(const List& list, int share) {
    std::vector<std::string> out;
    for (const char* entry : list)
      if (dice.percent(share)) out.emplace_back(entry);
    std::sort(out.begin(), out.end());
    return out;
  }

  void notebook(Plan& plan) {
    plan.assumed = some_of(guessed, 12);
    plan.fixed = some_of(pinned, 12);
    while (dice.percent(20))
      plan.seen.push_back(
          Seen{.rule = dice.pick(rules), .species = {species()}, .note = some_text(30, 80), .other_keys = other()});
    if (taste.notes && dice.percent(20)) plan.sheet = {"Feed at the right side", ""};
    if (!taste.odd) return;
    while (dice.percent(10))
      plan.own_values.push_back(OwnValue{.path = "/species/" + dice.pick(catalog.species).id + "/life/group/least",
                                         .value_json = dice.percent(50) ? "8" : "[6.8,8.4]",
                                         .note = some_text(50, 80),
                                         .other_keys = other()});
    if (dice.percent(8)) plan.own_species.push_back(own_species());
    if (dice.percent(8)) plan.breeding_json = "[{\"day0\":\"" + day() + "\",\"species\":\"danio-rerio\",\"tank\":{}}]";
    plan.other_keys = other();
  }

  /// Hills and valleys from pane to pane, the right one included at times.
  void terrain(Plan& plan) {
    std::vector<LinePoint>& line = plan.substrate.line_cm;
    const double length_cm = line_length_cm(plan.tank), highest_cm = std::min(12.0, plan.tank.height_cm / 2);
    const auto tenths = [&](double low, double high) { return std::round(hills.real(low, high) * 10) / 10; };
    const auto rise_cm = [&] {
      return taste.odd && hills.percent(4) ? hills.real(-highest_cm, highest_cm) : tenths(-highest_cm, highest_cm);
    };
    for (double x_cm = tenths(0, length_cm / 4); x_cm < length_cm && line.size() < static_cast<std::size_t>(most_line_points);
         x_cm = std::round((x_cm + tenths(1, length_cm / 3)) * 10) / 10)
      line.push_back({x_cm, rise_cm()});
    if (hills.percent(30) && line.size() < static_cast<std::size_t>(most_line_points)) line.push_back({length_cm, rise_cm()});
  }

  Plan plan() {
    Plan plan;
    if (taste.notes) {
      plan.name = dice.percent(80) ? dice.pick(names) : "";
      plan.notes = some_text(80, 200);
    }
    if (dice.percent(60)) plan.start = day();
    plan.tank = tank();
    plan.place.temperature_c = dice.percent(70) ? std::optional(20.0) : maybe(12, 28);
    if (dice.percent(40)) plan.place.region = dice.percent(90) ? "AT" : "AT-9";
    plan.place.other_keys = other();
    waters(plan);
    plan.substrate.kind = choice<SubstrateKind>();
    if (plan.substrate.kind != SubstrateKind::bare) {
      plan.substrate.front_cm = measure(0, 6);
      plan.substrate.back_cm = measure(0, 12);
      if (hills.percent(25)) terrain(plan);
    }
    plan.substrate.other_keys = other();
    for (int left = dice.percent(50) ? dice.below(8) : dice.below(25); left > 0; --left) plan.pieces.push_back(piece(plan.tank));
    for (int left = dice.below(13); left > 0; --left) plan.stock.push_back(group());
    work(plan);
    notebook(plan);
    if (taste.log && dice.percent(70)) {
      plan.log_json =
          "[{\"date\":\"" + day() + "\",\"lost\":[{\"count\":1,\"species\":\"danio-rerio\"}],\"nitrate_mg_l\":18,\"note\":\"\"}]";
    }
    return plan;
  }
};

}  // namespace

Plan random_plan(std::uint64_t seed, const Catalog& catalog, PlanTaste taste) {
  return Maker{.dice = Dice(seed), .hills = Dice(seed + 7919), .catalog = catalog, .taste = taste}.plan();
}

}  // namespace shoalwright
