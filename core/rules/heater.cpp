// SPDX-License-Identifier: MIT
// heater: none or too weak for the room, or one so strong that it cooks the tank when it sticks.
#include "tank/heat.h"

#include <algorithm>
#include <cmath>

#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

struct Warmth {
  double heater_w = 0, room_c = 0, aim_c = 0;
  double loss_w = 0;    ///< at the aim
  double needed_w = 0;  ///< as heaters are sold, all together, with a reserve
  double settles_c = 0;
  bool held() const { return !(heater_w < loss_w); }
};

// Where the heater, on all the time, makes up for what is lost: loss grows with the water's temperature.
double settles_c(const Facts& facts, double heater_w, double aim_c) {
  double low = *unheated_c(facts.plan, facts.volume), high = aim_c;
  if (!(low < high)) return high;
  for (int halving = 0; halving < 20; ++halving) {
    const double middle = (low + high) / 2;
    (*heat_of(facts.plan, facts.volume, middle).loss_w > heater_w ? high : low) = middle;
  }
  return low;
}

std::optional<Warmth> warmth_of(const Facts& facts) {
  const std::optional<double>& aim = facts.water.temperature_c.now;
  if (facts.stock.empty() || !facts.plan.gear || !facts.plan.gear->heater_w || !aim) return std::nullopt;
  const Heat heat = heat_of(facts.plan, facts.volume, aim);
  if (!heat.loss_w || !heat.heater_needed_w) return std::nullopt;
  Warmth warmth{.heater_w = *facts.plan.gear->heater_w,
                .room_c = *facts.plan.place.temperature_c,
                .aim_c = *aim,
                .loss_w = *heat.loss_w,
                .needed_w = *heat.heater_needed_w,
                .settles_c = *aim};
  // In a room as warm as the aim no heater is asked for, though evaporation keeps open water a little cooler.
  if (warmth.needed_w > 0 && !warmth.held()) warmth.settles_c = settles_c(facts, warmth.heater_w, *aim);
  return warmth;
}

std::optional<Severity> cold_for(const Kept& kept, const Warmth& warmth) {
  const std::optional<Range> lives = kept.species ? kept.species->water.temperature_c.tolerated : std::nullopt;
  if (!lives || !(warmth.settles_c < warmth.aim_c)) return std::nullopt;
  return grade(rounded(lives->low - warmth.settles_c), limits::temperature_steps_c);
}

std::string degrees(double celsius) { return amount(celsius, 1, "°C"); }
std::string watts(double power_w) { return amount(power_w, 0, "W"); }

void mend(const Facts& facts, const Warmth& warmth, Finding& finding) {
  const Heaters heaters = heaters_for(heater_power_w(warmth.loss_w, 0));
  finding.remedy = heaters.count == 1 ? "Take a heater of " + watts(heaters.each_w)
                                      : "Take " + std::to_string(heaters.count) + " heaters of " + watts(heaters.each_w);
  finding.edits = set_value(facts.plan, "/gear/heater_w", json_number(heaters.all_w()));
}

// Who keeps a tank unheated where all kinds live at what it settles at wants another aim, not a heater.
bool mend_by_aim(const Facts& facts, const Warmth& warmth, Finding& finding) {
  const double aim_c = std::floor(warmth.settles_c * 10) / 10;
  const std::optional<Range>& shared = facts.water.temperature_c.tolerated;
  if (warmth.heater_w > 0 || (shared && aim_c < shared->low)) return false;
  finding.edits = aim_water(facts, "temperature_c", aim_c);
  finding.remedy = "Set the temperature to " + degrees(aim_c);
  return !finding.edits.empty();
}

std::string in_this_room(const Warmth& warmth) {
  return "In a room of " + degrees(warmth.room_c) + " holding " + degrees(warmth.aim_c) + " takes " + watts(warmth.loss_w);
}

void tell_cold(const Facts& facts, const Warmth& warmth, const std::vector<const Kept*>& cold, Finding& finding) {
  concern(finding, cold);
  const std::string settles = degrees(warmth.settles_c);
  finding.text = warmth.heater_w > 0 ? "Heater holds only " + settles : "Unheated, water settles at " + settles;
  finding.why =
      in_this_room(warmth) + (warmth.heater_w > 0 ? ", the heater gives " + watts(warmth.heater_w) : ", and there is no heater");
  if (!cold.empty()) {
    const Kept* warmest = cold.front();
    for (const Kept* kept : cold)
      if (kept->species->water.temperature_c.tolerated->low > warmest->species->water.temperature_c.tolerated->low)
        warmest = kept;
    finding.why += ". " + capital(name_of(*warmest)) + " lives from " +
                   degrees(warmest->species->water.temperature_c.tolerated->low) + " up.";
    rest_on(finding, facts, *warmest, "water.temperature_c.tolerated");
  } else {
    finding.why += ". All kinds live at " + settles + " too.";
    if (mend_by_aim(facts, warmth, finding)) return;
  }
  mend(facts, warmth, finding);
}

void too_cold(const Facts& facts, const Warmth& warmth, Found& out) {
  std::vector<const Kept*> cold;
  std::optional<Severity> worst;
  for (const Kept& kept : facts.stock) {
    std::optional<Severity> one = cold_for(kept, warmth);
    if (!one) continue;
    one = unless_assumed(facts.plan, unless_tank_assumed(facts.plan, *one),
                         {"/place/temperature_c", "/gear/heater_w", "/tank/lid", "/tank/fill_cm", "/tank/glass_mm"});
    worst = graver(worst, one);
    cold.push_back(&kept);
    if (!out.keeps_findings())
      out.add("heater", *one, kept.id, kept.species->water.temperature_c.tolerated->low - warmth.settles_c, [](Finding&) {});
  }
  if (!out.keeps_findings()) return;
  if (worst || rounded(warmth.aim_c - warmth.settles_c) > limits::error_temperature_c)
    out.add("heater", worst.value_or(Severity::note), "", 0, [&](Finding& finding) { tell_cold(facts, warmth, cold, finding); });
}

// It holds the aim, but not on the coldest night of the room.
void no_reserve(const Facts& facts, const Warmth& warmth, Found& out) {
  out.add("heater", Severity::note, "", 0, [&](Finding& finding) {
    finding.text = "No reserve in the heater";
    finding.why = in_this_room(warmth) + "; half as much again makes up for cold nights and cold new water, the heater gives " +
                  watts(warmth.heater_w) + ".";
    mend(facts, warmth, finding);
  });
}

void too_strong(const Facts& facts, const Warmth& warmth, Found& out) {
  out.add("heater", Severity::note, "", 0, [&](Finding& finding) {
    finding.text = watts(warmth.heater_w) + " is much in one heater";
    finding.why = (warmth.needed_w > 0 ? "Here " + watts(warmth.needed_w) + " are enough" : "Here none is needed") +
                  ". One of more than " + watts(limits::heater_single_most_w) +
                  " that sticks cooks a tank; of two weaker ones each is too weak for that, and one that fails leaves the other.";
    if (!(warmth.needed_w > 0)) {
      finding.remedy = "Take two weaker heaters";
      return;
    }
    mend(facts, warmth, finding);
  });
}

}  // namespace

void heater(const Facts& facts, Found& out) {
  const std::optional<Warmth> warmth = warmth_of(facts);
  if (!warmth) return;
  if (warmth->settles_c < warmth->aim_c) {
    too_cold(facts, *warmth, out);
    return;
  }
  if (!out.keeps_findings()) return;  // the rest are notes
  if (warmth->heater_w < heater_power_w(warmth->loss_w, 0) && warmth->needed_w > 0) no_reserve(facts, *warmth, out);
  if (warmth->heater_w > limits::heater_single_most_w && warmth->heater_w > warmth->needed_w) too_strong(facts, *warmth, out);
}

}  // namespace shoalwright
