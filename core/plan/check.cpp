// SPDX-License-Identifier: MIT
#include "plan/check.h"

#include <set>

#include "plan/detail/checker.h"

namespace shoalwright {

namespace {

// What cannot be, in the units of the members. Wide: a bad tank is a finding, only an impossible one an error.
constexpr double coldest_water_c = 0, hottest_water_c = 50;
constexpr double coldest_room_c = -30, hottest_room_c = 60;
constexpr double most_ph = 14;
constexpr double most_hardness_d = 200;        // dGH and dKH
constexpr double most_dissolved_mg_l = 10000;  // nitrate, ammonia, nitrite, CO2
constexpr double most_cm = 2000;
constexpr double rounding = 1e-12;  // a point at the right pane may be off by what its length is rounded to
constexpr double most_flow_l_h = 1e6, most_media_l = 1e4, most_heater_w = 1e5;
constexpr double most_every_days = 3650;
constexpr double most_ca_mg_ratio = 1000;

std::string at(const std::string& list, std::size_t index) { return list + "/" + std::to_string(index); }

void check_waters(Checker& c, const Plan& plan) {
  const auto temperature = [&](std::optional<double> value, const char* place) {
    c.within(value, coldest_water_c, hottest_water_c, place);
  };
  const auto dissolved = [&](std::optional<double> value, const char* place) { c.within(value, 0, most_dissolved_mg_l, place); };
  const SourceWater& source = plan.source;
  temperature(source.temperature_c, "/source/temperature_c");
  c.within(source.ph, 0, most_ph, "/source/ph");
  c.within(source.gh_dgh, 0, most_hardness_d, "/source/gh_dgh");
  c.within(source.kh_dkh, 0, most_hardness_d, "/source/kh_dkh");
  dissolved(source.nitrate_mg_l, "/source/nitrate_mg_l");
  c.text(source.other_keys, "/source");
  if (plan.water) {
    temperature(plan.water->temperature_c, "/water/temperature_c");
    c.within(plan.water->ph, 0, most_ph, "/water/ph");
    c.within(plan.water->gh_dgh, 0, most_hardness_d, "/water/gh_dgh");
    c.within(plan.water->kh_dkh, 0, most_hardness_d, "/water/kh_dkh");
    c.text(plan.water->other_keys, "/water");
  }
  if (plan.measured) {
    c.day(plan.measured->date, "/measured/date");
    temperature(plan.measured->temperature_c, "/measured/temperature_c");
    c.within(plan.measured->ph, 0, most_ph, "/measured/ph");
    c.within(plan.measured->gh_dgh, 0, most_hardness_d, "/measured/gh_dgh");
    c.within(plan.measured->kh_dkh, 0, most_hardness_d, "/measured/kh_dkh");
    dissolved(plan.measured->nitrate_mg_l, "/measured/nitrate_mg_l");
    dissolved(plan.measured->ammonia_mg_l, "/measured/ammonia_mg_l");
    dissolved(plan.measured->nitrite_mg_l, "/measured/nitrite_mg_l");
    c.text(plan.measured->other_keys, "/measured");
  }
  dissolved(plan.limits.nitrate_mg_l, "/limits/nitrate_mg_l");
  dissolved(plan.limits.co2_mg_l, "/limits/co2_mg_l");
  c.text(plan.limits.other_keys, "/limits");
  if (plan.ca_mg_ratio) c.above_zero(*plan.ca_mg_ratio, most_ca_mg_ratio, "/ca_mg_ratio");
}

void check_line(Checker& c, const Plan& plan) {
  const std::vector<LinePoint>& line = plan.substrate.line_cm;
  const std::string place = "/substrate/line_cm";
  if (line.empty()) return;
  if (plan.substrate.kind == SubstrateKind::bare)
    c.fail(place, "Expected no terrain line at " + place + ", where the bottom is bare.");
  c.length(line.size(), most_line_points, place);
  const double length_cm = line_length_cm(plan.tank), tallest_cm = plan.tank.height_cm;
  for (std::size_t i = 0; i < line.size() && !c.error; ++i) {
    c.within(line[i].x_cm, 0, length_cm * (1 + rounding), at(place, i) + "/0");
    c.within(line[i].rise_cm, -tallest_cm, tallest_cm, at(place, i) + "/1");
    if (i > 0 && !(line[i - 1].x_cm < line[i].x_cm))
      c.fail(at(place, i) + "/0", "Expected points from left to right at " + place +
                                      ", found one that is not right of the one before it at " + at(place, i) + "/0.");
  }
}

void check_scape(Checker& c, const Plan& plan) {
  const Substrate& substrate = plan.substrate;
  const double deepest_cm = substrate.kind == SubstrateKind::bare ? 0 : plan.tank.height_cm;
  c.within(substrate.front_cm, 0, deepest_cm, "/substrate/front_cm");
  c.within(substrate.back_cm, 0, deepest_cm, "/substrate/back_cm");
  check_line(c, plan);
  c.text(substrate.other_keys, "/substrate");
  c.length(plan.pieces.size(), most_pieces, "/pieces");
  for (std::size_t i = 0; i < plan.pieces.size() && !c.error; ++i) {
    const Piece& piece = plan.pieces[i];
    const std::string place = at("/pieces", i);
    if (piece.kind.empty()) c.fail(place + "/kind", "Expected the kind of the piece at " + place + "/kind.");
    c.word(piece.kind, place + "/kind");
    c.within(piece.x_cm, -most_cm, most_cm, place + "/x_cm");
    c.within(piece.z_cm, -most_cm, most_cm, place + "/z_cm");
    c.within(piece.base_cm, -most_cm, most_cm, place + "/base_cm");
    c.above_zero(piece.length_cm, most_cm, place + "/length_cm");
    c.above_zero(piece.depth_cm, most_cm, place + "/depth_cm");
    c.above_zero(piece.height_cm, most_cm, place + "/height_cm");
    c.within(piece.turn_deg, -360, 360, place + "/turn_deg");
    c.text(piece.other_keys, place);
  }
}

void check_group(Checker& c, const Group& group, const std::string& place) {
  if (group.species.empty()) c.fail(place + "/species", "Expected the name of a species at " + place + "/species.");
  c.word(group.species, place + "/species");
  c.whole(group.count, 0, most_count, place + "/count");
  c.whole(group.have, 0, group.count, place + "/have");
  c.whole(group.males, 0, group.count, place + "/males");
  c.whole(group.females, 0, group.count - (group.males ? *group.males : 0), place + "/females");
  c.whole(group.since_weeks, 0, most_weeks, place + "/since_weeks");
  c.whole(group.arrives_week, 0, most_weeks, place + "/arrives_week");
  c.text(group.note, place + "/note");
  c.text(group.other_keys, place);
}

void check_work(Checker& c, const Plan& plan) {
  if (plan.gear) {
    const Gear& gear = *plan.gear;
    if (gear.filter) {
      if (!gear.filter_known) c.fail("/gear/filter", "Expected a known filter at /gear/filter.");
      c.text(gear.filter->kind, "/gear/filter/kind");
      c.within(gear.filter->flow_l_h, 0, most_flow_l_h, "/gear/filter/flow_l_h");
      c.within(gear.filter->media_l, 0, most_media_l, "/gear/filter/media_l");
      c.text(gear.filter->other_keys, "/gear/filter");
    }
    c.within(gear.heater_w, 0, most_heater_w, "/gear/heater_w");
    c.text(gear.other_keys, "/gear");
  }
  if (plan.feeding) {
    c.whole(plan.feeding->fasting_days, 0, 6, "/feeding/fasting_days");
    c.text(plan.feeding->other_keys, "/feeding");
  }
  if (plan.upkeep) {
    c.within(plan.upkeep->change_fraction, 0, 1, "/upkeep/change_fraction");
    c.above_zero(plan.upkeep->every_days, most_every_days, "/upkeep/every_days");
    c.text(plan.upkeep->other_keys, "/upkeep");
  }
  c.within(plan.running_weeks, 0, most_weeks, "/running_weeks");
}

void check_texts(Checker& c, const std::vector<std::string>& texts, const std::string& place) {
  c.length(texts.size(), most_entries, place);
  for (std::size_t i = 0; i < texts.size() && !c.error; ++i) c.text(texts[i], at(place, i));
}

void check_pointers(Checker& c, const std::vector<std::string>& pointers, const std::string& place) {
  c.length(pointers.size(), most_pointers, place);
  for (std::size_t i = 0; i < pointers.size() && !c.error; ++i) {
    c.word(pointers[i], at(place, i));
    if (!pointers[i].empty() && pointers[i][0] != '/')
      c.fail(at(place, i), "Expected a JSON Pointer such as /source/ph at " + at(place, i) + ".");
  }
}

void check_notebook(Checker& c, const Plan& plan) {
  check_pointers(c, plan.assumed, "/assumed");
  check_pointers(c, plan.fixed, "/fixed");
  c.length(plan.seen.size(), most_entries, "/seen");
  for (std::size_t i = 0; i < plan.seen.size() && !c.error; ++i) {
    const Seen& seen = plan.seen[i];
    if (seen.rule.empty()) c.fail(at("/seen", i) + "/rule", "Expected the id of a rule at " + at("/seen", i) + "/rule.");
    c.word(seen.rule, at("/seen", i) + "/rule");
    c.length(seen.species.size(), most_groups, at("/seen", i) + "/species");
    check_texts(c, seen.species, at("/seen", i) + "/species");
    c.text(seen.note, at("/seen", i) + "/note");
    c.text(seen.other_keys, at("/seen", i));
  }
  c.length(plan.own_values.size(), most_entries, "/own_values");
  for (std::size_t i = 0; i < plan.own_values.size() && !c.error; ++i) {
    const OwnValue& value = plan.own_values[i];
    const std::string place = at("/own_values", i);
    if (value.path.rfind("/species/", 0) != 0)
      c.fail(place + "/path", "Expected a path such as /species/danio-rerio/life/group/least at " + place + "/path.");
    c.text(value.path, place + "/path");
    c.text(value.value_json, place + "/value");
    c.text(value.note, place + "/note");
    c.text(value.other_keys, place);
  }
  std::set<std::string> ids;
  for (std::size_t i = 0; i < plan.own_species.size() && !c.error; ++i) {
    c.text(plan.own_species[i].whole_json, at("/own_species", i));
    if (!ids.insert(plan.own_species[i].id).second)
      c.fail(at("/own_species", i) + "/id",
             "Expected each species once, found its id again at " + at("/own_species", i) + "/id.");
  }
}

}  // namespace

std::optional<Error> check_plan(const Plan& plan) {
  Checker c;
  c.text(plan.name, "/name");
  c.text(plan.notes, "/notes");
  c.day(plan.start, "/start");
  check_tank(c, plan.tank);
  c.within(plan.place.temperature_c, coldest_room_c, hottest_room_c, "/place/temperature_c");
  c.text(plan.place.region, "/place/region");
  c.text(plan.place.other_keys, "/place");
  check_waters(c, plan);
  check_texts(c, plan.salts, "/salts");
  check_scape(c, plan);
  c.length(plan.stock.size(), most_groups, "/stock");
  for (std::size_t i = 0; i < plan.stock.size() && !c.error; ++i) check_group(c, plan.stock[i], at("/stock", i));
  check_work(c, plan);
  check_notebook(c, plan);
  c.text(plan.breeding_json, "/breeding");
  c.text(plan.log_json, "/log");
  check_texts(c, plan.sheet, "/sheet");
  c.text(plan.other_keys, "");
  if (!(c.text_bytes <= most_text))
    c.fail("", "Expected at most 64 KiB of text in the whole plan, found " + std::to_string(c.text_bytes / 1024 + 1) + " KiB.");
  return c.error;
}

}  // namespace shoalwright
