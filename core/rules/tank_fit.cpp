// SPDX-License-Identifier: MIT
#include "rules/tank_fit.h"

#include <algorithm>

#include "rules/limits.h"
#include "rules/tell.h"
#include "stocking/body.h"
#include "stocking/style.h"

namespace shoalwright {

namespace {

// Short of the first edge by no more than a tape measure errs.
bool within_error(double have, double asked, double error_share) { return have >= rounded(asked * (1 - error_share)); }

double run_cm(const Facts& facts, const Species& species) {
  return facts.bodies.lane(body_size_of(species), main_layer(depth_shares(species))).cm;
}

double empty_run_cm(const Facts& facts, const Species& species) {
  return facts.room.layers[main_layer(depth_shares(species))].empty_lane_cm;
}

// Rounded, so that a tank that has just what is asked has it whichever unit its measures were typed in.
Fit fit_of(double have, double asked) { return {rounded(have), rounded(asked), std::nullopt}; }

// Of a kind whose shape is not known: eel shapes want shorter runs, and what is too short for every shape is too short for it.
bool may_be_eel(const Species& species) { return species.size.body == Body::unknown; }

// Without any open water there is no run to judge, in whatever tank: crowding-mid says so.
bool is_dry(const Facts& facts) { return !(facts.room.open_l > 0); }

// Least length and least volume weigh alike.
std::optional<Severity> least_severity(double have, double asked, double error_share, Strictness strictness) {
  if (have >= asked) return std::nullopt;
  if (within_error(have, asked, error_share)) return Severity::note;
  if (have < rounded(least_tank_harm_below * asked)) return Severity::harm;
  if (strictness == Strictness::lenient && have >= rounded(limits::least_lenient_watch_share * asked)) return Severity::watch;
  return Severity::strain;
}

}  // namespace

Fit lane_fit(const Facts& facts, const Species& species) {
  Fit fit = fit_of(run_cm(facts, species), lane_needed_cm(species));
  if (!(fit.asked > 0) || fit.have >= lane_quiet_from * fit.asked || is_dry(facts)) return fit;
  const bool known = !may_be_eel(species) || fit.have < rounded(eel_lane_bl * lane_watch_from * species.size.adult_tl_cm);
  if (fit.have >= rounded(lane_note_from * fit.asked))
    fit.severity = Severity::note;
  else
    fit.severity = fit.have >= rounded(bearable_lane_cm(species)) ? Severity::watch : Severity::strain;
  if (!known) fit.severity = at_most(*fit.severity, Severity::watch);
  return fit;
}

Fit empty_run_fit(const Facts& facts, const Species& species) {
  Fit fit = fit_of(empty_run_cm(facts, species), lane_needed_cm(species));
  const Fit card = least_length_fit(facts, species);
  if (is_dry(facts) || (card.asked > 0 && card.have >= card.asked)) return fit;
  const double asked = may_be_eel(species) ? std::min(fit.asked, eel_lane_bl * species.size.adult_tl_cm) : fit.asked;
  if (fit.asked > 0 && fit.have < rounded(lane_harm_below * asked))
    fit.severity = unless_floor_assumed(facts.plan, Severity::harm);
  return fit;
}

Fit least_length_fit(const Facts& facts, const Species& species) {
  const LeastTank least = least_tank_of(species);
  if (!least.length_cm) return {};
  Fit fit = fit_of(inside_length_cm(facts.plan.tank) + 2 * facts.plan.tank.glass_mm / 10, *least.length_cm);
  fit.severity = least_severity(fit.have, fit.asked, limits::error_length_share, facts.plan.strictness);
  if (fit.severity) fit.severity = unless_floor_assumed(facts.plan, *fit.severity);
  return fit;
}

Fit width_fit(const Facts& facts, const Species& species) {
  const LeastTank least = least_tank_of(species);
  Fit fit = fit_of(inside_width_cm(facts.plan.tank), least.width_cm);
  if (!(fit.asked > 0) || fit.have >= fit.asked) return fit;
  if (within_error(fit.have, fit.asked, limits::error_length_share))
    fit.severity = Severity::note;
  else
    fit.severity = fit.have >= rounded(least.width_least_cm) ? Severity::watch : unless_floor_assumed(facts.plan, Severity::harm);
  return fit;
}

Fit height_fit(const Facts& facts, const Species& species) {
  const LeastTank least = least_tank_of(species);
  if (!least.height_cm) return {};
  Fit fit = fit_of(std::max(facts.plan.tank.fill_cm - mean_substrate_cm(facts.plan), 0.0), *least.height_cm);
  if (fit.have >= fit.asked) return fit;
  if (within_error(fit.have, fit.asked, limits::error_length_share))
    fit.severity = Severity::note;
  else
    fit.severity = fit.have >= rounded(*least.height_least_cm) ? Severity::watch : Severity::strain;
  return fit;
}

Fit volume_fit(const Facts& facts, const Species& species) {
  const LeastTank least = least_tank_of(species);
  if (!least.volume_l) return {};
  Fit fit = fit_of(facts.volume.gross_l, *least.volume_l);
  fit.severity = least_severity(fit.have, fit.asked, limits::error_volume_share, facts.plan.strictness);
  if (fit.severity) fit.severity = unless_tank_assumed(facts.plan, *fit.severity);
  return fit;
}

}  // namespace shoalwright
