// SPDX-License-Identifier: MIT
#include "share/assessment_json.h"

#include "share/patch.h"

namespace shoalwright {

namespace {

void range(JsonOut& out, std::string_view key, const std::optional<Range>& range) {
  out.key(key);
  if (range)
    out.begin_list().value(range->low).value(range->high).end_list();
  else
    out.null();
}

void window(JsonOut& out, std::string_view key, const Window& window) {
  out.key(key).begin_object();
  range(out, "tolerated", window.tolerated);
  range(out, "ideal", window.ideal);
  out.member("now", window.now).member("margin", window.margin);
  out.member_or_null("low_by", window.low_by).member_or_null("high_by", window.high_by).end_object();
}

void write(JsonOut& out, const Volume& volume) {
  out.key("volume").begin_object().member("gross_l", volume.gross_l).member("net_l", volume.net_l);
  out.member("substrate_l", volume.substrate_l).member("pieces_l", volume.pieces_l);
  out.member("footprint_cm2", volume.footprint_cm2).member("surface_cm2", volume.surface_cm2);
  out.member("filled_mass_kg", volume.filled_mass_kg).end_object();
}

void write(JsonOut& out, const Windows& water) {
  out.key("water").begin_object();
  window(out, "temperature_c", water.temperature_c);
  window(out, "ph", water.ph);
  window(out, "gh_dgh", water.gh_dgh);
  window(out, "kh_dkh", water.kh_dkh);
  out.member("reachable", water.reachable).member("co2_mg_l", water.co2_mg_l).end_object();
}

void write(JsonOut& out, const Room& room) {
  out.key("room").begin_object().member("open_l", room.open_l).member("floor_cm2", room.floor_cm2);
  out.member("floor_crowding", room.floor_crowding).key("layers").begin_list();
  for (const Layer& layer : room.layers) {
    out.begin_object().member("name", layer.name).member("from_cm", layer.from_cm).member("to_cm", layer.to_cm);
    out.member("open_l", layer.open_l).member("lane_cm", layer.lane_cm).member("crowding", layer.crowding).end_object();
  }
  out.end_list().key("groups").begin_list();
  for (const GroupRoom& group : room.groups) {
    out.begin_object().member("species", group.species).member("open_l", group.open_l).member("lane_cm", group.lane_cm);
    out.member("lane_needed_cm", group.lane_needed_cm).member("crowding", group.crowding);
    out.member("largest_count", group.largest_count).member_or_null("stopped_by", group.stopped_by).end_object();
  }
  out.end_list().end_object();
}

void write(JsonOut& out, const Load& load) {
  out.key("load").begin_object().member("feed_g_d", load.feed_g_d).member("tan_mg_d", load.tan_mg_d);
  out.member("nitrate_peak_mg_l", load.nitrate_peak_mg_l).member("nitrate_trough_mg_l", load.nitrate_trough_mg_l);
  out.member("change_needed_fraction", load.change_needed_fraction).member("kh_drift_dkh_week", load.kh_drift_dkh_week);
  out.member("media_needed_l", load.media_needed_l).member("ammonia_nh3_mg_l", load.ammonia_nh3_mg_l).end_object();
}

void write(JsonOut& out, const Air& air) {
  out.key("air").begin_object().member("saturation_mg_l", air.saturation_mg_l).member("dawn_mg_l", air.dawn_mg_l);
  out.member("dawn_low_mg_l", air.dawn_low_mg_l).member("limit_mg_l", air.limit_mg_l);
  out.member("demand_mg_h", air.demand_mg_h).end_object();
}

void write(JsonOut& out, const Heat& heat) {
  out.key("heat").begin_object().member("loss_w", heat.loss_w).member("heater_needed_w", heat.heater_needed_w);
  out.member("evaporation_l_d", heat.evaporation_l_d).end_object();
}

void write(JsonOut& out, const Finding& finding) {
  out.begin_object()
      .member("rule", finding.rule)
      .member("severity", name_of(finding.severity))
      .member("species", finding.species);
  out.member("text", finding.text).member("why", finding.why).member("remedy", finding.remedy);
  out.key("edits").json(steps_json(finding.edits)).member("evidence", name_of(finding.evidence));
  out.member("source", finding.source).end_object();
}

}  // namespace

void write(JsonOut& out, const Tightest& tightest) {
  out.begin_object().member("margin", tightest.margin).member("value", tightest.value).member("unit", tightest.unit);
  out.member("animals", tightest.animals).member("set_by", tightest.set_by).end_object();
}

std::string assessment_json(const Assessment& assessment) {
  JsonOut out;
  out.begin_object();
  write(out, assessment.volume);
  write(out, assessment.water);
  write(out, assessment.room);
  write(out, assessment.load);
  write(out, assessment.air);
  write(out, assessment.heat);
  out.key("findings").begin_list();
  for (const Finding& finding : assessment.findings) write(out, finding);
  out.end_list().key("tightest").begin_list();
  for (const Tightest& tightest : assessment.tightest) write(out, tightest);
  out.end_list().member("cautions", assessment.cautions).end_object();
  return out.text();
}

}  // namespace shoalwright
