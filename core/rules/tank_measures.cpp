// SPDX-License-Identifier: MIT
// tank-length, tank-width, tank-height, tank-volume and swim-lane: what one adult asks of the tank, whatever the number.
#include "notebook/say.h"
#include "rules/lane_level.h"
#include "rules/lane_move.h"
#include "rules/larger_tank.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tank_fit.h"
#include "rules/tell.h"
#include "stocking/body.h"
#include "stocking/style.h"

namespace shoalwright {

namespace {

std::string cm(double value) { return amount(value, 1, "cm"); }

std::string adult(const Kept& kept) { return "it grows to " + cm(kept.species->size.adult_tl_cm); }

// What a larger tank gives a kind at least: no worse than a watch.
double bearable_run_cm(const Kept& kept) { return bearable_lane_cm(*kept.species); }

void tell_length(const Facts& facts, const Kept& kept, const Fit& run, const Fit& least, Finding& finding) {
  concern(finding, {&kept});
  const bool by_run = run.severity && (!least.severity || *run.severity < *least.severity);
  if (by_run) {
    finding.text = "Tank too short for " + name_of(kept);
    finding.why = "Empty, the tank gives a run of " + cm(run.have) + "; " + name_of(kept) + " wants " + cm(run.asked) +
                  " at a stretch, since " + adult(kept) + ".";
  } else {
    finding.text = "Tank " + cm(least.asked - least.have) + " short for " + name_of(kept);
    finding.why = "The tank is " + cm(least.have) + " long outside; " + name_of(kept) + " is kept from " + cm(least.asked) +
                  " on, however few.";
    rest_on(finding, facts, kept, "needs.least_length_cm");
  }
  remedy_by_larger_tank(facts, kept, bearable_run_cm(kept), finding);
}

/// The smallest move of one piece that gives back the lane, or as much of it as a better grade wants; else the least that hills
/// have to be lowered.
bool remedy_by_move(const Facts& facts, const Kept& kept, const Fit& fit, Finding& finding) {
  const std::size_t level = main_layer(depth_shares(*kept.species));
  std::vector<double> wanted_cm;
  for (const double run_cm : {lane_quiet_from * fit.asked, lane_note_from * fit.asked, bearable_run_cm(kept)})
    if (run_cm > fit.have) wanted_cm.push_back(run_cm);
  const auto move = least_lane_move(facts, body_size_of(*kept.species), level, wanted_cm);
  if (!move) {
    const auto levelling = least_lane_levelling(facts, body_size_of(*kept.species), level, wanted_cm);
    if (!levelling) return false;
    finding.remedy = "Lower the hills of the substrate by " + cm(levelling->by_cm) + ": lane " + amount(fit.have, 0, "") +
                     " to " + amount(levelling->lane_cm, 0, "cm");
    finding.edits = level_edits(facts.plan, *levelling);
    return true;
  }
  finding.remedy = "Move the " + piece_words(facts.plan, move->piece) + " " + move_words(*move) + ": lane " +
                   amount(fit.have, 0, "") + " to " + amount(move->lane_cm, 0, "cm");
  finding.edits = move_edits(facts, *move);
  return true;
}

void tell_lane(const Facts& facts, const Kept& kept, const Fit& fit, bool search, Finding& finding) {
  const std::size_t level = main_layer(depth_shares(*kept.species));
  const double empty_cm = facts.room.layers[level].empty_lane_cm;
  const bool by_scape = empty_cm > fit.have + 0.05;
  finding.why = capital(name_of(kept)) + " wants " + cm(fit.asked) + " at a stretch; ";
  if (by_scape) {
    const BodySize body = body_size_of(*kept.species);
    std::vector<std::string> names;
    for (const std::size_t piece : pieces_at_ends(facts, facts.bodies.lane(body, level), body))
      names.push_back("the " + piece_words(facts.plan, piece));
    if (ends_at_hill(facts, facts.bodies.lane(body, level), body)) names.emplace_back("a hill of the substrate");
    finding.why += "the scape leaves " + cm(fit.have) + (names.empty() ? "" : ", ended by " + joined(names)) +
                   ". Empty, the tank gives " + cm(empty_cm) + ".";
  } else {
    finding.why += "empty, the tank gives " + cm(fit.have) + ".";
  }
  rest_on(finding, facts, kept, "life.style");
  if (by_scape && !search) return;
  if (!(by_scape && remedy_by_move(facts, kept, fit, finding))) remedy_by_longer_tank(facts, kept, fit.have, finding);
}

}  // namespace

void tank_length(const Facts& facts, Found& out) {
  for (const Kept& kept : facts.stock) {
    if (!kept.species) continue;
    const Fit run = empty_run_fit(facts, *kept.species), least = least_length_fit(facts, *kept.species);
    if (const auto severity = graver(run.severity, least.severity))
      out.add("tank-length", *severity, kept.id, 0, [&](Finding& finding) { tell_length(facts, kept, run, least, finding); });
  }
}

void tank_width(const Facts& facts, Found& out) {
  for (const Kept& kept : facts.stock) {
    if (!kept.species) continue;
    const Fit fit = width_fit(facts, *kept.species);
    if (!fit.severity) continue;
    out.add("tank-width", *fit.severity, kept.id, 0, [&](Finding& finding) {
      concern(finding, {&kept});
      finding.text = "Too narrow to turn for " + name_of(kept);
      finding.why = "Front to back the tank has " + cm(fit.have) + "; " + name_of(kept) + " turns at ease in " + cm(fit.asked) +
                    ", since " + adult(kept) + ".";
      rest_on(finding, facts, kept, "size.adult_tl_cm");
      remedy_by_larger_tank(facts, kept, bearable_run_cm(kept), finding);
    });
  }
}

void tank_height(const Facts& facts, Found& out) {
  for (const Kept& kept : facts.stock) {
    if (!kept.species) continue;
    const Fit fit = height_fit(facts, *kept.species);
    if (!fit.severity) continue;
    out.add("tank-height", *fit.severity, kept.id, 0, [&](Finding& finding) {
      concern(finding, {&kept});
      finding.text = "Water " + cm(fit.asked - fit.have) + " low for " + name_of(kept);
      finding.why = "Over the substrate stand " + cm(fit.have) + " of water; with its fins " + name_of(kept) + " is " +
                    cm(*kept.species->size.height_with_fins_cm) + " tall and wants " + cm(fit.asked) + ".";
      rest_on(finding, facts, kept, "size.height_with_fins_cm");
      remedy_by_larger_tank(facts, kept, bearable_run_cm(kept), finding);
    });
  }
}

void tank_volume(const Facts& facts, Found& out) {
  for (const Kept& kept : facts.stock) {
    if (!kept.species) continue;
    const Fit fit = volume_fit(facts, *kept.species);
    if (!fit.severity) continue;
    out.add("tank-volume", *fit.severity, kept.id, 0, [&](Finding& finding) {
      concern(finding, {&kept});
      finding.text = "Tank " + amount(fit.asked - fit.have, 0, "L") + " small for " + name_of(kept);
      finding.why = "Inside to the rim the tank holds " + amount(fit.have, 0, "L") + "; " + name_of(kept) + " is kept from " +
                    amount(fit.asked, 0, "L") + " on, however few.";
      rest_on(finding, facts, kept, "needs.least_volume_l");
      remedy_by_larger_tank(facts, kept, bearable_run_cm(kept), finding);
    });
  }
}

void swim_lane(const Facts& facts, Found& out) {
  for (const Kept& kept : facts.stock) {
    if (!kept.species || empty_run_fit(facts, *kept.species).severity) continue;
    const Fit fit = lane_fit(facts, *kept.species);
    if (!fit.severity) continue;
    out.add("swim-lane", *fit.severity, kept.id, fit.asked - fit.have, [&](Finding& finding) {
      concern(finding, {&kept});
      finding.text = "Lane " + cm(fit.asked - fit.have) + " short for " + name_of(kept);
      tell_lane(facts, kept, fit, out.searches_remedies(), finding);
    });
  }
}

}  // namespace shoalwright
