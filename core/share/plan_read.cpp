// SPDX-License-Identifier: MIT
#include <algorithm>

#include "plan/check.h"
#include "plan/defaults.h"
#include "share/detail/own_species.h"
#include "share/detail/section.h"
#include "share/plan_json.h"

namespace shoalwright {

namespace {

/// What was absent, by JSON Pointer.
using Absent = std::vector<std::string>;

/// A pair of numbers as a point of whatever kind; `expected` says what was meant.
template <class PointOf>
void read_point(Reading& reading, const Json& json, const std::string& place, const char* expected,
                std::vector<PointOf>& points) {
  const bool pair = json.kind == Json::Kind::list && json.items.size() == 2 && json.items[0].kind == Json::Kind::number &&
                    json.items[1].kind == Json::Kind::number;
  if (pair)
    points.push_back(PointOf{json.items[0].number, json.items[1].number});
  else
    reading.fail(place, expected, &json);
}

void read_measures(Section& in, Tank& tank) {
  const auto measure = [&](std::string_view key, double& value) {
    if (!in.number(key, value)) in.missing(key, "a number above 0");
  };
  switch (tank.shape) {
    case Shape::rectangular:
      measure("length_cm", tank.length_cm);
      measure("width_cm", tank.width_cm);
      break;
    case Shape::bow_front:
      measure("length_cm", tank.length_cm);
      measure("width_cm", tank.width_cm);
      measure("bow_cm", tank.bow_cm);
      break;
    case Shape::cylinder:
    case Shape::half_cylinder:
    case Shape::quarter_cylinder: measure("diameter_cm", tank.diameter_cm); break;
    case Shape::hexagon: measure("side_cm", tank.side_cm); break;
    case Shape::pentagon_corner:
      measure("side_cm", tank.side_cm);
      measure("front_cm", tank.front_cm);
      break;
    case Shape::prism:
      if (const std::vector<Json>* points = in.list("outline_cm"))
        for (std::size_t i = 0; i < points->size(); ++i)
          read_point(in.reading(), (*points)[i], in.at("outline_cm") + '/' + std::to_string(i), "a pair of numbers [x, z]",
                     tank.outline_cm);
      else
        in.missing("outline_cm", "a list of corners [x, z]");
      break;
  }
  measure("height_cm", tank.height_cm);
}

Tank read_tank(Reading& reading, const Json& json, Absent& absent) {
  Section in(reading, json, "/tank");
  Tank tank;
  in.choice("shape", tank.shape);
  read_measures(in, tank);
  if (!in.number("glass_mm", tank.glass_mm)) {
    tank.glass_mm = default_glass_mm(tank.height_cm);
    absent.push_back("/tank/glass_mm");
  }
  if (!in.number("fill_cm", tank.fill_cm)) {
    tank.fill_cm = default_fill_cm(tank.height_cm);
    absent.push_back("/tank/fill_cm");
  }
  if (!in.flag("lid", tank.lid)) {
    tank.lid = default_lid;
    absent.push_back("/tank/lid");
  }
  tank.other_keys = in.rest();
  return tank;
}

Place read_place(Reading& reading, const Json* json, Absent& absent) {
  Place place;
  bool given = json != nullptr && json->kind == Json::Kind::null;
  if (json != nullptr && !given) {
    Section in(reading, *json, "/place");
    given = in.number("temperature_c", place.temperature_c);
    in.text("region", place.region);
    place.other_keys = in.rest();
  }
  if (!given) {
    place.temperature_c = default_place_temperature_c;
    absent.push_back("/place/temperature_c");
  }
  return place;
}

SourceWater read_source(Reading& reading, const Json& json) {
  Section in(reading, json, "/source");
  SourceWater source;
  in.number("temperature_c", source.temperature_c);
  in.number("ph", source.ph);
  in.number("gh_dgh", source.gh_dgh);
  in.number("kh_dkh", source.kh_dkh);
  in.number("nitrate_mg_l", source.nitrate_mg_l);
  std::optional<Disinfectant> disinfectant;
  in.choice("disinfectant", disinfectant);
  source.disinfectant = disinfectant.value_or(Disinfectant::unknown);
  source.other_keys = in.rest();
  return source;
}

WaterAim read_water(Reading& reading, const Json& json) {
  Section in(reading, json, "/water");
  WaterAim water;
  in.number("temperature_c", water.temperature_c);
  in.number("ph", water.ph);
  in.number("gh_dgh", water.gh_dgh);
  in.number("kh_dkh", water.kh_dkh);
  water.other_keys = in.rest();
  return water;
}

Measured read_measured(Reading& reading, const Json& json) {
  Section in(reading, json, "/measured");
  Measured measured;
  in.text("date", measured.date);
  in.number("temperature_c", measured.temperature_c);
  in.number("ph", measured.ph);
  in.number("gh_dgh", measured.gh_dgh);
  in.number("kh_dkh", measured.kh_dkh);
  in.number("nitrate_mg_l", measured.nitrate_mg_l);
  in.number("ammonia_mg_l", measured.ammonia_mg_l);
  in.number("nitrite_mg_l", measured.nitrite_mg_l);
  measured.other_keys = in.rest();
  return measured;
}

Limits read_limits(Reading& reading, const Json& json) {
  Section in(reading, json, "/limits");
  Limits limits;
  in.number("nitrate_mg_l", limits.nitrate_mg_l);
  in.number("co2_mg_l", limits.co2_mg_l);
  limits.other_keys = in.rest();
  return limits;
}

Substrate read_substrate(Reading& reading, const Json& json) {
  Section in(reading, json, "/substrate");
  Substrate substrate{.kind = default_substrate};
  const bool kind = in.choice("kind", substrate.kind);
  const bool front = in.number("front_cm", substrate.front_cm), back = in.number("back_cm", substrate.back_cm);
  const std::vector<Json>* line = in.list("line_cm");
  if (line != nullptr)
    for (std::size_t i = 0; i < line->size() && !reading.error; ++i)
      read_point(reading, (*line)[i], in.at("line_cm") + '/' + std::to_string(i), "a pair of numbers [x, rise]",
                 substrate.line_cm);
  if (!kind && (front || back || !substrate.line_cm.empty())) in.missing("kind", "the kind of the substrate");
  substrate.other_keys = in.rest();
  return substrate;
}

Piece read_piece(Reading& reading, const Json& json, const std::string& place, Absent& absent) {
  Section in(reading, json, place);
  Piece piece;
  if (!in.text("kind", piece.kind)) in.missing("kind", "the kind of the piece");
  in.number("x_cm", piece.x_cm);
  in.number("z_cm", piece.z_cm);
  in.number("base_cm", piece.base_cm);
  const auto measure = [&](std::string_view key, double& value) {
    if (in.number(key, value)) return;
    value = default_piece_cm;
    absent.push_back(in.at(key));
  };
  measure("length_cm", piece.length_cm);
  measure("depth_cm", piece.depth_cm);
  measure("height_cm", piece.height_cm);
  in.number("turn_deg", piece.turn_deg);
  in.flag("mirror", piece.mirror);
  piece.other_keys = in.rest();
  return piece;
}

Group read_group(Reading& reading, const Json& json, const std::string& place) {
  Section in(reading, json, place);
  Group group;
  if (!in.text("species", group.species)) in.missing("species", "the name of a species");
  if (!in.whole("count", group.count, 0, most_count))
    in.missing("count", "a whole number from 0 to " + std::to_string(most_count));
  in.whole("have", group.have, 0, most_count);
  in.whole("males", group.males, 0, most_count);
  in.whole("females", group.females, 0, most_count);
  in.whole("since_weeks", group.since_weeks, 0, most_weeks);
  in.whole("arrives_week", group.arrives_week, 0, most_weeks);
  in.text("note", group.note);
  group.other_keys = in.rest();
  return group;
}

Gear read_gear(Reading& reading, const Json& json) {
  Section in(reading, json, "/gear");
  Gear gear;
  if (const Json* filter_json = in.member("filter")) {
    gear.filter_known = true;
    if (filter_json->kind != Json::Kind::null) {
      Section filter_in(reading, *filter_json, "/gear/filter");
      Filter filter;
      filter_in.text("kind", filter.kind);
      filter_in.number("flow_l_h", filter.flow_l_h);
      filter_in.number("media_l", filter.media_l);
      filter.other_keys = filter_in.rest();
      gear.filter = filter;
    }
  }
  in.number("heater_w", gear.heater_w);
  in.choice("surface", gear.surface);
  gear.other_keys = in.rest();
  return gear;
}

Feeding read_feeding(Reading& reading, const Json& json, Absent& absent) {
  Section in(reading, json, "/feeding");
  Feeding feeding{.ration = default_ration, .fasting_days = default_fasting_days};
  if (!in.choice("ration", feeding.ration)) absent.push_back("/feeding/ration");
  if (!in.whole("fasting_days", feeding.fasting_days, 0, 6)) absent.push_back("/feeding/fasting_days");
  feeding.other_keys = in.rest();
  return feeding;
}

Upkeep read_upkeep(Reading& reading, const Json& json, Absent& absent) {
  Section in(reading, json, "/upkeep");
  Upkeep upkeep{.change_fraction = default_change_fraction, .every_days = default_every_days};
  if (!in.number("change_fraction", upkeep.change_fraction)) absent.push_back("/upkeep/change_fraction");
  if (!in.number("every_days", upkeep.every_days)) absent.push_back("/upkeep/every_days");
  upkeep.other_keys = in.rest();
  return upkeep;
}

Seen read_seen(Reading& reading, const Json& json, const std::string& place) {
  Section in(reading, json, place);
  Seen seen;
  if (!in.text("rule", seen.rule)) in.missing("rule", "the id of a rule");
  in.texts("species", seen.species);
  in.text("note", seen.note);
  seen.other_keys = in.rest();
  return seen;
}

OwnValue read_own_value(Reading& reading, const Json& json, const std::string& place) {
  Section in(reading, json, place);
  OwnValue value;
  if (!in.text("path", value.path)) in.missing("path", "the path of a value of a species");
  if (const Json* own = in.member("value"))
    value.value_json = dump(*own);
  else
    in.missing("value", "a value");
  in.text("note", value.note);
  value.other_keys = in.rest();
  return value;
}

/// The text of a list that other rooms read; empty when there is nothing in it.
std::string list_text(Section& in, std::string_view key) {
  const std::vector<Json>* items = in.list(key);
  if (items == nullptr || items->empty()) return "";
  return dump(Json{.kind = Json::Kind::list, .items = *items});
}

/// Calls `read` with each item of a list and its place; a list beyond `most` is the error.
template <class Read>
void each(Section& in, std::string_view key, int most, const Read& read) {
  const std::vector<Json>* items = in.list(key);
  if (items == nullptr) return;
  if (!(items->size() <= static_cast<std::size_t>(most))) {
    const Json count{.kind = Json::Kind::number, .text = std::to_string(items->size())};
    in.reading().fail(in.at(key), "at most " + std::to_string(most) + " entries", &count);
    return;
  }
  for (std::size_t i = 0; i < items->size() && !in.reading().error; ++i) read((*items)[i], in.at(key) + '/' + std::to_string(i));
}

/// A section that may be absent: empty too when it is null, which means the same there.
template <class T, class Read>
void maybe(Section& in, std::string_view key, std::optional<T>& value, const Read& read) {
  const Json* json = in.member(key);
  if (json != nullptr && json->kind != Json::Kind::null) value = read(*json);
}

/// A section with a default: absent takes it and is remembered, null is "not known".
template <class T, class Read>
void or_default(Section& in, std::string_view key, std::optional<T>& value, const T& otherwise, Absent& absent,
                const Read& read) {
  const Json* json = in.member(key);
  if (json == nullptr) {
    value = otherwise;
    absent.push_back(in.at(key));
  } else if (json->kind != Json::Kind::null) {
    value = read(*json);
  }
}

void read_format(Section& in) {
  const Json* format = in.member("format");
  if (format == nullptr || format->kind != Json::Kind::text || format->text != "shoalwright-plan")
    in.reading().fail("/format", "\"shoalwright-plan\"", format);
  const Json* version = in.member("version");
  if (version != nullptr && version->kind == Json::Kind::number && version->number > 1)
    in.reading().fail("/version", "version 1, since newer plans need a newer Shoalwright,", version);
  else if (version == nullptr || version->kind != Json::Kind::number || version->number != 1)
    in.reading().fail("/version", "version 1", version);
}

void read_scape_and_stock(Section& in, Plan& plan, Absent& absent) {
  Reading& reading = in.reading();
  const Json* substrate = in.member("substrate");
  if (substrate != nullptr && substrate->kind != Json::Kind::null)
    plan.substrate = read_substrate(reading, *substrate);
  else
    absent.push_back("/substrate");
  each(in, "pieces", most_pieces,
       [&](const Json& json, const std::string& place) { plan.pieces.push_back(read_piece(reading, json, place, absent)); });
  each(in, "stock", most_groups,
       [&](const Json& json, const std::string& place) { plan.stock.push_back(read_group(reading, json, place)); });
}

void read_waters(Section& in, Plan& plan) {
  Reading& reading = in.reading();
  const Json* source = in.member("source");
  if (source != nullptr && source->kind != Json::Kind::null) plan.source = read_source(reading, *source);
  maybe(in, "water", plan.water, [&](const Json& json) { return read_water(reading, json); });
  maybe(in, "measured", plan.measured, [&](const Json& json) { return read_measured(reading, json); });
  const Json* limits = in.member("limits");
  if (limits != nullptr && limits->kind != Json::Kind::null) plan.limits = read_limits(reading, *limits);
  in.texts("salts", plan.salts);
  if (!in.number("ca_mg_ratio", plan.ca_mg_ratio)) plan.ca_mg_ratio = default_ca_mg_ratio;
}

void read_work(Section& in, Plan& plan, Absent& absent) {
  Reading& reading = in.reading();
  maybe(in, "gear", plan.gear, [&](const Json& json) { return read_gear(reading, json); });
  or_default(in, "feeding", plan.feeding, Feeding{.ration = default_ration, .fasting_days = default_fasting_days}, absent,
             [&](const Json& json) { return read_feeding(reading, json, absent); });
  if (!in.choice("planting", plan.planting)) {
    plan.planting = default_planting;
    absent.push_back("/planting");
  }
  or_default(in, "upkeep", plan.upkeep, Upkeep{.change_fraction = default_change_fraction, .every_days = default_every_days},
             absent, [&](const Json& json) { return read_upkeep(reading, json, absent); });
  if (!in.number("running_weeks", plan.running_weeks)) {
    plan.running_weeks = default_running_weeks;
    absent.push_back("/running_weeks");
  }
  in.choice("strictness", plan.strictness);
}

void read_notebook(Section& in, Plan& plan) {
  Reading& reading = in.reading();
  in.texts("assumed", plan.assumed);
  in.texts("fixed", plan.fixed);
  each(in, "seen", most_entries,
       [&](const Json& json, const std::string& place) { plan.seen.push_back(read_seen(reading, json, place)); });
  each(in, "own_values", most_entries,
       [&](const Json& json, const std::string& place) { plan.own_values.push_back(read_own_value(reading, json, place)); });
  each(in, "own_species", most_entries, [&](const Json& json, const std::string& place) {
    Result<Species> species = read_own_species(json, place);
    if (species)
      plan.own_species.push_back(std::move(species.value()));
    else if (!reading.error)
      reading.error = species.error();
  });
  plan.breeding_json = list_text(in, "breeding");
  plan.log_json = list_text(in, "log");
  in.texts("sheet", plan.sheet);
}

void sort_once(std::vector<std::string>& pointers) {
  std::sort(pointers.begin(), pointers.end());
  pointers.erase(std::unique(pointers.begin(), pointers.end()), pointers.end());
}

}  // namespace

Result<Plan> read_plan(std::string_view json_text) {
  const Result<Json> json = parse_json(json_text);
  if (!json) return json.error();
  Reading reading;
  Section in(reading, *json, "");
  Plan plan;
  Absent absent;
  read_format(in);
  in.text("name", plan.name);
  in.text("notes", plan.notes);
  in.text("start", plan.start);
  if (const Json* tank = in.member("tank"))
    plan.tank = read_tank(reading, *tank, absent);
  else
    in.missing("tank", "the tank");
  plan.place = read_place(reading, in.member("place"), absent);
  read_waters(in, plan);
  read_scape_and_stock(in, plan, absent);
  read_work(in, plan, absent);
  read_notebook(in, plan);
  plan.other_keys = in.rest();
  if (reading.error) return *reading.error;
  // Two sets, whatever order they were written in.
  plan.assumed.insert(plan.assumed.end(), absent.begin(), absent.end());
  sort_once(plan.assumed);
  sort_once(plan.fixed);
  if (std::optional<Error> error = check_plan(plan)) return *error;
  return plan;
}

}  // namespace shoalwright
