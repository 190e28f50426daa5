// SPDX-License-Identifier: MIT
#include "water/cycle.h"

#include <algorithm>

#include "water/ammonia.h"
#include "water/blend.h"
#include "water/carbonate.h"
#include "water/growth.h"
#include "water/held.h"
#include "water/nitrogen.h"

namespace shoalwright {

namespace {

constexpr int steps_a_day = 100;
/// The part of what is there that one step may turn over at most: Runge and Kutta's method then stays above 0 and near the truth.
constexpr double turned_over_in_a_step = 0.5;
constexpr Range whole{0, 1}, equivalents{0, 2};

bool is_water(const CycleWater& w) {
  return is_within(w.tan_mg_l, cycle_nitrogen_mg_l) && is_within(w.nitrite_n_mg_l, cycle_nitrogen_mg_l) &&
         is_within(w.nitrate_n_mg_l, cycle_nitrogen_mg_l) && is_within(w.kh_dkh, carbonate_kh_dkh);
}

CycleWater held_water(const CycleWater& w) {
  return {.tan_mg_l = held_within(w.tan_mg_l, cycle_nitrogen_mg_l),
          .nitrite_n_mg_l = held_within(w.nitrite_n_mg_l, cycle_nitrogen_mg_l),
          .nitrate_n_mg_l = held_within(w.nitrate_n_mg_l, cycle_nitrogen_mg_l),
          .kh_dkh = held_within(w.kh_dkh, carbonate_kh_dkh)};
}

Bacteria held_bacteria(const Bacteria& b) {
  return {.ammonia_oxidisers_mg_l = held_within(b.ammonia_oxidisers_mg_l, cycle_bacteria_mg_l),
          .nitrite_oxidisers_mg_l = held_within(b.nitrite_oxidisers_mg_l, cycle_bacteria_mg_l)};
}

/// What goes on all day.
struct Course {
  Growth growth;
  double load_mg_l_d = 0, equivalents_per_mole = 0;
};

/// Change a day of all that a state holds. Ammonia brings alkalinity as it comes and takes more on its way to nitrite; nitrite
/// takes none. kh_drop_dkh() has the degrees for either.
CycleState slope(const Course& c, const CycleState& s) {
  const Bacteria& b = s.bacteria;
  const double ammonia_growth = ammonia_oxidisers_growth_d(c.growth, s.water.tan_mg_l) * b.ammonia_oxidisers_mg_l;
  const double nitrite_growth =
      nitrite_oxidisers_growth_d(c.growth, s.water.nitrite_n_mg_l, s.water.tan_mg_l) * b.nitrite_oxidisers_mg_l;
  const double to_nitrite = ammonia_growth / ammonia_oxidisers_per_n, to_nitrate = nitrite_growth / nitrite_oxidisers_per_n;
  return {.water = {.tan_mg_l = c.load_mg_l_d - to_nitrite,
                    .nitrite_n_mg_l = to_nitrite - to_nitrate,
                    .nitrate_n_mg_l = to_nitrate,
                    .kh_dkh = kh_drop_dkh(c.load_mg_l_d, c.equivalents_per_mole) - kh_drop_dkh(to_nitrite, 2)},
          .bacteria = {.ammonia_oxidisers_mg_l = ammonia_growth - bacteria_die_d * b.ammonia_oxidisers_mg_l,
                       .nitrite_oxidisers_mg_l = nitrite_growth - bacteria_die_d * b.nitrite_oxidisers_mg_l}};
}

CycleState along(const CycleState& s, const CycleState& slope_d, double days) {
  const auto moved = [days](double from, double a_day) { return from + days * a_day; };
  const CycleWater &w = s.water, &dw = slope_d.water;
  const Bacteria &b = s.bacteria, &db = slope_d.bacteria;
  return {.water = {.tan_mg_l = moved(w.tan_mg_l, dw.tan_mg_l),
                    .nitrite_n_mg_l = moved(w.nitrite_n_mg_l, dw.nitrite_n_mg_l),
                    .nitrate_n_mg_l = moved(w.nitrate_n_mg_l, dw.nitrate_n_mg_l),
                    .kh_dkh = moved(w.kh_dkh, dw.kh_dkh)},
          .bacteria = {.ammonia_oxidisers_mg_l = moved(b.ammonia_oxidisers_mg_l, db.ammonia_oxidisers_mg_l),
                       .nitrite_oxidisers_mg_l = moved(b.nitrite_oxidisers_mg_l, db.nitrite_oxidisers_mg_l)}};
}

/// One step of the classical method of fourth order (Runge and Kutta; from memory).
CycleState stepped(const Course& c, const CycleState& s, double days) {
  const CycleState first = slope(c, s), second = slope(c, along(s, first, days / 2));
  const CycleState third = slope(c, along(s, second, days / 2)), fourth = slope(c, along(s, third, days));
  return along(along(along(along(s, first, days / 6), second, days / 3), third, days / 3), fourth, days / 6);
}

/// The greatest share of ammonia or nitrite that these bacteria can turn over a day.
double turnover_d(const Growth& growth, const Bacteria& b) {
  return std::max(growth.ammonia_fastest_d / growth.ammonia_half_mg_l * b.ammonia_oxidisers_mg_l / ammonia_oxidisers_per_n,
                  growth.nitrite_fastest_d / nitrite_half_mg_l * b.nitrite_oxidisers_mg_l / nitrite_oxidisers_per_n);
}

CycleWater changed(const CycleWater& water, const CycleWater& fresh, double fraction) {
  return {.tan_mg_l = mixed(fraction, fresh.tan_mg_l, water.tan_mg_l),
          .nitrite_n_mg_l = mixed(fraction, fresh.nitrite_n_mg_l, water.nitrite_n_mg_l),
          .nitrate_n_mg_l = mixed(fraction, fresh.nitrate_n_mg_l, water.nitrate_n_mg_l),
          .kh_dkh = mixed(fraction, fresh.kh_dkh, water.kh_dkh)};
}

void note_highest(CycleRun& run, const CycleWater& water) {
  run.highest_tan_mg_l = std::max(run.highest_tan_mg_l, water.tan_mg_l);
  run.highest_nitrite_n_mg_l = std::max(run.highest_nitrite_n_mg_l, water.nitrite_n_mg_l);
}

}  // namespace

Bacteria seeded(double share_of_media, double carried_mg_l_d) {
  const double settled_on = held_within(share_of_media, whole) * held_within(carried_mg_l_d, cycle_load_mg_l_d) / bacteria_die_d;
  return {.ammonia_oxidisers_mg_l = settled_on * ammonia_oxidisers_per_n,
          .nitrite_oxidisers_mg_l = settled_on * nitrite_oxidisers_per_n};
}

bool cycle_valid(const Cycle& cycle) {
  const Bacteria& b = cycle.start.bacteria;
  return is_within(cycle.temperature_c, cycle_temperature_c) && is_within(cycle.oxygen_mg_l, growth_oxygen_mg_l) &&
         is_within(cycle.ph, ammonia_ph) && is_within(cycle.load_mg_l_d, cycle_load_mg_l_d) &&
         is_within(cycle.equivalents_per_mole, equivalents) && is_water(cycle.start.water) && is_water(cycle.fresh) &&
         is_within(b.ammonia_oxidisers_mg_l, cycle_bacteria_mg_l) && is_within(b.nitrite_oxidisers_mg_l, cycle_bacteria_mg_l) &&
         (!cycle.dosing || is_within(cycle.dosing->up_to_mg_l, cycle_nitrogen_mg_l)) &&
         std::all_of(cycle.changes.begin(), cycle.changes.end(),
                     [](const CycleChange& change) { return is_within(change.fraction, whole); });
}

std::optional<CycleRun> run_cycle(const Cycle& cycle, int days) {
  if (!is_within(cycle.temperature_c, cycle_temperature_c) || days < 0 || days > cycle_most_days) return std::nullopt;
  const Course course{.growth = growth_in(cycle.temperature_c, cycle.oxygen_mg_l, cycle.ph),
                      .load_mg_l_d = held_within(cycle.load_mg_l_d, cycle_load_mg_l_d),
                      .equivalents_per_mole = held_within(cycle.equivalents_per_mole, equivalents)};
  const CycleWater fresh = held_water(cycle.fresh);
  CycleState now{.water = held_water(cycle.start.water), .bacteria = held_bacteria(cycle.start.bacteria)};
  CycleRun run{.day_ends = {now}};
  note_highest(run, now.water);
  bool dosed = true;  // a day ago; what the water starts with counts
  for (int day = 1; day <= days; ++day) {
    for (int step = 0; step < steps_a_day; ++step) {
      const int parts = 1 + static_cast<int>(turnover_d(course.growth, now.bacteria) / (steps_a_day * turned_over_in_a_step));
      for (int part = 0; part < parts; ++part) {
        now = stepped(course, now, 1.0 / steps_a_day / parts);
        note_highest(run, now.water);
      }
    }
    for (const CycleChange& change : cycle.changes)
      if (change.day == day) now.water = changed(now.water, fresh, change.fraction);
    note_highest(run, now.water);
    run.day_ends.push_back(now);
    if (!cycle.dosing) continue;
    const bool clear = now.water.tan_mg_l < cycle_ready_below_mg_l && now.water.nitrite_n_mg_l < cycle_ready_below_mg_l;
    if (dosed && clear && !run.ready_day) run.ready_day = day;
    const double up_to = held_within(cycle.dosing->up_to_mg_l, cycle_nitrogen_mg_l);
    dosed = now.water.tan_mg_l < cycle.dosing->below_mg_l && now.water.tan_mg_l < up_to;
    if (dosed) {
      now.water.kh_dkh += kh_drop_dkh(up_to - now.water.tan_mg_l, course.equivalents_per_mole);
      now.water.tan_mg_l = up_to;
      note_highest(run, now.water);
    }
  }
  return run;
}

}  // namespace shoalwright
