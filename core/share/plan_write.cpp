// SPDX-License-Identifier: MIT
#include "plan/words.h"
#include "share/json_out.h"
#include "share/plan_json.h"

namespace shoalwright {

namespace {

template <class Choice>
void choice(JsonOut& out, std::string_view key, const std::optional<Choice>& value) {
  out.key(key);
  if (value)
    out.value(word_of(*value));
  else
    out.null();
}

void write(JsonOut& out, const Tank& tank) {
  out.begin_object().member("shape", word_of(tank.shape));
  switch (tank.shape) {
    case Shape::rectangular: out.member("length_cm", tank.length_cm).member("width_cm", tank.width_cm); break;
    case Shape::bow_front:
      out.member("length_cm", tank.length_cm).member("width_cm", tank.width_cm).member("bow_cm", tank.bow_cm);
      break;
    case Shape::cylinder:
    case Shape::half_cylinder:
    case Shape::quarter_cylinder: out.member("diameter_cm", tank.diameter_cm); break;
    case Shape::hexagon: out.member("side_cm", tank.side_cm); break;
    case Shape::pentagon_corner: out.member("side_cm", tank.side_cm).member("front_cm", tank.front_cm); break;
    case Shape::prism:
      out.key("outline_cm").begin_list();
      for (const Point& point : tank.outline_cm) out.begin_list().value(point.x_cm).value(point.z_cm).end_list();
      out.end_list();
      break;
  }
  out.member("height_cm", tank.height_cm)
      .member("glass_mm", tank.glass_mm)
      .member("fill_cm", tank.fill_cm)
      .member("lid", tank.lid);
  out.others(tank.other_keys).end_object();
}

void write(JsonOut& out, const Place& place) {
  out.begin_object().member("temperature_c", place.temperature_c).member_or_null("region", place.region);
  out.others(place.other_keys).end_object();
}

void write(JsonOut& out, const SourceWater& water) {
  out.begin_object().member("temperature_c", water.temperature_c).member("ph", water.ph).member("gh_dgh", water.gh_dgh);
  out.member("kh_dkh", water.kh_dkh)
      .member("nitrate_mg_l", water.nitrate_mg_l)
      .member("disinfectant", word_of(water.disinfectant));
  out.others(water.other_keys).end_object();
}

void write(JsonOut& out, const WaterAim& water) {
  out.begin_object().member("temperature_c", water.temperature_c).member("ph", water.ph).member("gh_dgh", water.gh_dgh);
  out.member("kh_dkh", water.kh_dkh).others(water.other_keys).end_object();
}

void write(JsonOut& out, const Measured& water) {
  out.begin_object().member_or_null("date", water.date).member("temperature_c", water.temperature_c).member("ph", water.ph);
  out.member("gh_dgh", water.gh_dgh).member("kh_dkh", water.kh_dkh).member("nitrate_mg_l", water.nitrate_mg_l);
  out.member("ammonia_mg_l", water.ammonia_mg_l).member("nitrite_mg_l", water.nitrite_mg_l);
  out.others(water.other_keys).end_object();
}

void write(JsonOut& out, const Limits& limits) {
  out.begin_object().member("nitrate_mg_l", limits.nitrate_mg_l).member("co2_mg_l", limits.co2_mg_l);
  out.others(limits.other_keys).end_object();
}

void write(JsonOut& out, const Substrate& substrate) {
  out.begin_object().member("kind", word_of(substrate.kind)).member("front_cm", substrate.front_cm);
  out.member("back_cm", substrate.back_cm);
  if (!substrate.line_cm.empty()) {  // a slope alone is written as it always was
    out.key("line_cm").begin_list();
    for (const LinePoint& point : substrate.line_cm) out.begin_list().value(point.x_cm).value(point.rise_cm).end_list();
    out.end_list();
  }
  out.others(substrate.other_keys).end_object();
}

void write(JsonOut& out, const Piece& piece) {
  out.begin_object().member("kind", piece.kind).member("x_cm", piece.x_cm).member("z_cm", piece.z_cm);
  out.member("base_cm", piece.base_cm).member("length_cm", piece.length_cm).member("depth_cm", piece.depth_cm);
  out.member("height_cm", piece.height_cm).member("turn_deg", piece.turn_deg).member("mirror", piece.mirror);
  out.others(piece.other_keys).end_object();
}

void write(JsonOut& out, const Group& group) {
  out.begin_object().member("species", group.species).member("count", group.count).member("have", group.have);
  out.member("males", group.males).member("females", group.females).member("since_weeks", group.since_weeks);
  out.member("arrives_week", group.arrives_week).member("note", group.note);
  out.others(group.other_keys).end_object();
}

void write(JsonOut& out, const Filter& filter) {
  out.begin_object().member("kind", filter.kind).member("flow_l_h", filter.flow_l_h).member("media_l", filter.media_l);
  out.others(filter.other_keys).end_object();
}

void write(JsonOut& out, const Gear& gear) {
  out.begin_object();
  if (gear.filter) {
    out.key("filter");
    write(out, *gear.filter);
  } else if (gear.filter_known) {
    out.key("filter").null();  // there is none; absent would be: not known
  }
  out.member("heater_w", gear.heater_w);
  choice(out, "surface", gear.surface);
  out.others(gear.other_keys).end_object();
}

void write(JsonOut& out, const Feeding& feeding) {
  out.begin_object().member("ration", word_of(feeding.ration)).member("fasting_days", feeding.fasting_days);
  out.others(feeding.other_keys).end_object();
}

void write(JsonOut& out, const Upkeep& upkeep) {
  out.begin_object().member("change_fraction", upkeep.change_fraction).member("every_days", upkeep.every_days);
  out.others(upkeep.other_keys).end_object();
}

void write(JsonOut& out, const Seen& seen) {
  out.begin_object().member("rule", seen.rule).member("species", seen.species).member("note", seen.note);
  out.others(seen.other_keys).end_object();
}

void write(JsonOut& out, const OwnValue& value) {
  out.begin_object().member("path", value.path).key("value").json(value.value_json).member("note", value.note);
  out.others(value.other_keys).end_object();
}

void write(JsonOut& out, const Species& species) { out.json(species.whole_json); }

template <class Part>
void part(JsonOut& out, std::string_view key, const Part& value) {
  out.key(key);
  write(out, value);
}

template <class Part>
void part(JsonOut& out, std::string_view key, const std::optional<Part>& value) {
  out.key(key);
  if (value)
    write(out, *value);
  else
    out.null();
}

template <class Part>
void part(JsonOut& out, std::string_view key, const std::vector<Part>& values) {
  out.key(key).begin_list();
  for (const Part& value : values) write(out, value);
  out.end_list();
}

std::string_view list_or_empty(const std::string& json) { return json.empty() ? std::string_view("[]") : json; }

}  // namespace

std::string plan_json(const Plan& plan) {
  JsonOut out;
  out.begin_object().member("format", "shoalwright-plan").member("version", 1);
  out.member("name", plan.name).member("notes", plan.notes).member_or_null("start", plan.start);
  part(out, "tank", plan.tank);
  part(out, "place", plan.place);
  part(out, "source", plan.source);
  part(out, "water", plan.water);
  part(out, "measured", plan.measured);
  part(out, "limits", plan.limits);
  out.member("salts", plan.salts).member("ca_mg_ratio", plan.ca_mg_ratio);
  part(out, "substrate", plan.substrate);
  part(out, "pieces", plan.pieces);
  part(out, "stock", plan.stock);
  part(out, "gear", plan.gear);
  part(out, "feeding", plan.feeding);
  choice(out, "planting", plan.planting);
  part(out, "upkeep", plan.upkeep);
  out.member("running_weeks", plan.running_weeks).member("strictness", word_of(plan.strictness));
  out.member("assumed", plan.assumed).member("fixed", plan.fixed);
  part(out, "seen", plan.seen);
  part(out, "own_values", plan.own_values);
  part(out, "own_species", plan.own_species);
  out.key("breeding").json(list_or_empty(plan.breeding_json)).key("log").json(list_or_empty(plan.log_json));
  out.member("sheet", plan.sheet).others(plan.other_keys).end_object();
  return out.text();
}

}  // namespace shoalwright
