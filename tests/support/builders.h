// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "assess/assess.h"
#include "catalog/piece_kind.h"
#include "support/samples.h"

namespace shoalwright {

/// Plans in one line: a_plan().tank(60, 30, 30).tap(7.5, 12, 8).kind("danio-rerio", 8). Starts from an ordinary tank: 80 x 35 x
/// 40 cm inside, filled to 37.5, bare, unplanted, lid on, fed normally, 30 % a week, tap pH 7, GH 8, KH 4, nitrate 10, aim 25
/// degrees C.
class PlanBuilder {
 public:
  PlanBuilder() : plan_(box_plan(80, 35, 40, 37.5)) { tap(7, 8, 4); }

  /// Inside measures; filled to 2.5 cm under the rim.
  PlanBuilder& tank(double length_cm, double width_cm, double height_cm) {
    plan_.tank.length_cm = length_cm;
    plan_.tank.width_cm = width_cm;
    plan_.tank.height_cm = height_cm;
    return fill(height_cm - 2.5);
  }
  PlanBuilder& fill(double fill_cm) {
    plan_.tank.fill_cm = fill_cm;
    return *this;
  }
  PlanBuilder& glass(double glass_mm) {
    plan_.tank.glass_mm = glass_mm;
    return *this;
  }
  PlanBuilder& lid(std::optional<bool> lid) {
    plan_.tank.lid = lid;
    return *this;
  }
  PlanBuilder& tap(std::optional<double> ph, std::optional<double> gh_dgh, std::optional<double> kh_dkh) {
    plan_.source.ph = ph;
    plan_.source.gh_dgh = gh_dgh;
    plan_.source.kh_dkh = kh_dkh;
    return *this;
  }
  PlanBuilder& tap_nitrate(std::optional<double> nitrate_mg_l) {
    plan_.source.nitrate_mg_l = nitrate_mg_l;
    return *this;
  }
  PlanBuilder& aim(std::optional<double> temperature_c) {
    plan_.water = WaterAim{};
    plan_.water->temperature_c = temperature_c;
    return *this;
  }
  PlanBuilder& no_aim() {
    plan_.water.reset();
    return *this;
  }
  PlanBuilder& change(double fraction, double every_days) {
    plan_.upkeep = Upkeep{.change_fraction = fraction, .every_days = every_days, .other_keys = ""};
    return *this;
  }
  PlanBuilder& feed(Ration ration) {
    plan_.feeding->ration = ration;
    return *this;
  }
  PlanBuilder& planted(std::optional<Planting> planting) {
    plan_.planting = planting;
    return *this;
  }
  PlanBuilder& strictness(Strictness strictness) {
    plan_.strictness = strictness;
    return *this;
  }
  PlanBuilder& assumed(std::vector<std::string> pointers) {
    plan_.assumed = std::move(pointers);
    return *this;
  }
  PlanBuilder& fixed(std::vector<std::string> pointers) {
    plan_.fixed = std::move(pointers);
    return *this;
  }
  PlanBuilder& floor(SubstrateKind kind, double front_cm = 3, double back_cm = 5) {
    plan_.substrate = Substrate{.kind = kind, .front_cm = front_cm, .back_cm = back_cm, .other_keys = ""};
    return *this;
  }
  PlanBuilder& running(std::optional<double> weeks) {
    plan_.running_weeks = weeks;
    return *this;
  }
  /// A filter that moves so much; empty: a filter whose flow is not known.
  PlanBuilder& flow(std::optional<double> flow_l_h) {
    Gear gear;
    gear.filter_known = true;
    gear.filter = Filter{.kind = "internal", .flow_l_h = flow_l_h, .media_l = {}, .other_keys = ""};
    plan_.gear = gear;
    return *this;
  }
  /// What is known of the gear besides a filter: how lively the surface is, how strong the heater.
  PlanBuilder& surface(std::optional<SurfaceMotion> surface) {
    gear().surface = surface;
    return *this;
  }
  PlanBuilder& heater(std::optional<double> heater_w) {
    gear().heater_w = heater_w;
    return *this;
  }
  /// A filter with so much in it that moves so much.
  PlanBuilder& filter(std::optional<double> flow_l_h, std::optional<double> media_l) {
    gear().filter_known = true;
    gear().filter = Filter{.kind = "internal", .flow_l_h = flow_l_h, .media_l = media_l, .other_keys = ""};
    return *this;
  }
  PlanBuilder& no_filter() {
    gear().filter_known = true;
    gear().filter.reset();
    return *this;
  }
  /// Air around the tank.
  PlanBuilder& room(std::optional<double> temperature_c) {
    plan_.place.temperature_c = temperature_c;
    return *this;
  }
  PlanBuilder& tap_temperature(std::optional<double> temperature_c) {
    plan_.source.temperature_c = temperature_c;
    return *this;
  }
  PlanBuilder& disinfectant(Disinfectant disinfectant) {
    plan_.source.disinfectant = disinfectant;
    return *this;
  }
  /// What the tank is meant to have besides its temperature.
  PlanBuilder& aim_water(std::optional<double> ph, std::optional<double> gh_dgh, std::optional<double> kh_dkh) {
    plan_.water->ph = ph;
    plan_.water->gh_dgh = gh_dgh;
    plan_.water->kh_dkh = kh_dkh;
    return *this;
  }
  PlanBuilder& measured(const Measured& measured) {
    plan_.measured = measured;
    return *this;
  }
  /// All animals swim already.
  PlanBuilder& swimming() {
    for (Group& group : plan_.stock) group.have = group.count;
    return *this;
  }
  /// A piece of the catalogue at its usual measures, put where there is room.
  PlanBuilder& piece(const std::string& kind, int count = 1) {
    const PieceKind& usual = piece_kind(kind);
    Piece piece;
    piece.kind = kind;
    piece.length_cm = static_cast<double>(usual.length_cm);
    piece.depth_cm = static_cast<double>(usual.depth_cm);
    piece.height_cm = static_cast<double>(usual.height_cm);
    plan_.pieces.insert(plan_.pieces.end(), static_cast<std::size_t>(count), piece);
    return *this;
  }
  /// A made-up species, its card among the keeper's own.
  PlanBuilder& fish(const Species& species, int count) {
    add(plan_, species, count);
    return *this;
  }
  /// A species of the catalogue by any of its names.
  PlanBuilder& kind(const std::string& name, int count, int have = 0) {
    Group group;
    group.species = name;
    group.count = count;
    group.have = have;
    plan_.stock.push_back(group);
    return *this;
  }
  /// The last kind has so many males and females.
  PlanBuilder& sexes(std::optional<int> males, std::optional<int> females) {
    plan_.stock.back().males = males;
    plan_.stock.back().females = females;
    return *this;
  }
  operator Plan() const { return plan_; }
  const Plan& plan() const { return plan_; }

 private:
  Plan plan_;
  Gear& gear() { return plan_.gear ? *plan_.gear : plan_.gear.emplace(); }
};

inline PlanBuilder a_plan() { return {}; }

/// The gravest finding of a rule; null when there is none.
inline const Finding* finding_of(const Assessment& assessment, std::string_view rule) {
  for (const Finding& finding : assessment.findings)
    if (finding.rule == rule) return &finding;
  return nullptr;
}

inline std::optional<Severity> severity_of(const Assessment& assessment, std::string_view rule) {
  const Finding* finding = finding_of(assessment, rule);
  return finding ? std::optional(finding->severity) : std::nullopt;
}

/// Clean: nothing worse than a watch.
inline bool is_clean(const Assessment& assessment) {
  return assessment.findings.empty() || assessment.findings.front().severity >= Severity::watch;
}

/// "harm crowding-mid; note lid", for messages of failed tests.
inline std::string said(const Assessment& assessment) {
  std::string text;
  for (const Finding& finding : assessment.findings) {
    text += (text.empty() ? "" : "; ") + std::string(name_of(finding.severity)) + " " + finding.rule;
    for (const std::string& id : finding.species) text += " " + id;
  }
  return text;
}

}  // namespace shoalwright
