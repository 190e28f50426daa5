// SPDX-License-Identifier: MIT
#include "advice/first_help.h"

#include <algorithm>
#include <cmath>

#include "advice/recipe_card.h"
#include "notebook/say.h"
#include "plan/more_keys.h"
#include "stocking/load.h"
#include "stocking/stock.h"
#include "tank/volume.h"
#include "units/convert.h"
#include "water/ammonia.h"
#include "water/blend.h"
#include "water/getting_there.h"

namespace shoalwright {

namespace {

/// The plan with those animals alone that are there.
Plan with_swimmers(const Plan& plan) {
  Plan there = plan;
  for (Group& group : there.stock) {
    group.count = group.have;
    group.males = group.females = std::nullopt;
  }
  return there;
}

bool anybody_swims(const Plan& plan) {
  return std::any_of(plan.stock.begin(), plan.stock.end(), [](const Group& group) { return group.have > 0; });
}

/// The water on a day. Where the carbonate of tank and tap is known pH follows from the mix, else it stays.
struct Day {
  double temperature_c = 25;
  std::optional<double> ph, tan_mg_l, nitrite_mg_l;
  std::optional<Conserved> carbonate;

  std::optional<double> nh3_mg_l() const {
    if (!ph || !tan_mg_l) return std::nullopt;
    return nh3_from_n(nh3_n_from_tan_mg_l(*tan_mg_l, temperature_c, *ph));
  }
};

struct Question {
  double net_l = 0, step_l = 1, nitrite_limit = 0, rise_mg_l_d = 0;
  std::optional<Conserved> tap;
};

/// How far the worse of the two is from its limit, 1: at it.
double worst(const Day& day, const Question& q) {
  return std::max(day.nh3_mg_l().value_or(0) / help_nh3_mg_l, day.nitrite_mg_l.value_or(0) / q.nitrite_limit);
}

Day after_change(const Day& day, const Question& q, double litres) {
  const double share = litres / q.net_l;
  Day after = day;
  if (day.tan_mg_l) after.tan_mg_l = mixed(share, 0, *day.tan_mg_l);
  if (day.nitrite_mg_l) after.nitrite_mg_l = mixed(share, 0, *day.nitrite_mg_l);
  if (day.carbonate && q.tap) {
    after.carbonate = mixed(share, *q.tap, *day.carbonate);
    after.ph = ph_closed(*after.carbonate, day.temperature_c);
  }
  return after;
}

/// The least number of whole litres that brings both under their limits; where none up to half the water does, those that come
/// nearest; 0 where every change would make it worse.
double litres_for(const Day& day, const Question& q) {
  const int most = static_cast<int>(std::floor(help_most_at_once * q.net_l / q.step_l + 1e-9));
  const int least = std::min(most, static_cast<int>(std::ceil(help_least_at_once * q.net_l / q.step_l)));
  double best = worst(day, q);
  int chosen = 0;
  for (int n = least; n <= most; ++n) {
    const double now = worst(after_change(day, q, n * q.step_l), q);
    if (now < best) {
      best = now;
      chosen = n;
    }
    if (now <= 1) return n * q.step_l;
  }
  return chosen * q.step_l;
}

bool jumps(double before_dh, double after_dh) {
  return std::abs(after_dh - before_dh) > std::max(change_most_share * before_dh, change_always_dh);
}

bool hardness_jumps(const Day& before, const Day& after) {
  return before.carbonate && after.carbonate &&
         (jumps(before.carbonate->gh_dgh, after.carbonate->gh_dgh) || jumps(before.carbonate->kh_dkh, after.carbonate->kh_dkh));
}

void plan_changes(FirstHelp& help, Day day, const Question& q) {
  for (int n = 0; n <= help_days; ++n) {
    if (n > 0 && day.tan_mg_l) *day.tan_mg_l += q.rise_mg_l_d;
    if (!(worst(day, q) > 1)) continue;
    const double litres = litres_for(day, q);
    if (!(litres > 0)) {
      help.tap_frees_ammonia = true;
      return;
    }
    const Day after = after_change(day, q, litres);
    if (n == 0) {
      help.tap_frees_ammonia = after.nh3_mg_l().value_or(0) > day.nh3_mg_l().value_or(0);
      help.hardness_jumps = hardness_jumps(day, after);
    }
    help.changes.push_back({n, litres, day.nh3_mg_l(), after.nh3_mg_l(), day.nitrite_mg_l, after.nitrite_mg_l});
    day = after;
    if (!help.ammonia_rise_mg_l_d && !(worst(day, q) > 1)) return;  // what comes after is for the tests to say
  }
}

std::string milligrams(double mg_l) { return amount(mg_l, mg_l < 0.1 ? 3 : 2, "mg/L"); }
std::string litres_text(double l) { return amount(l, l < 10 ? 1 : 0, "L"); }

void say_readings(const FirstHelp& help, std::vector<std::string>& says) {
  if (help.nh3_mg_l)
    says.push_back("Free ammonia is " + milligrams(*help.nh3_mg_l) + "; the limit is " + milligrams(help.nh3_limit_mg_l) + ".");
  if (help.nitrite_mg_l)
    says.push_back("Nitrite is " + milligrams(*help.nitrite_mg_l) + "; the limit is " + milligrams(help.nitrite_limit_mg_l) +
                   ".");
}

std::string days_of(const std::vector<HelpChange>& changes) {
  std::vector<std::string> parts;
  for (std::size_t i = 1; i < changes.size() && i <= 3; ++i)
    parts.push_back("day " + std::to_string(changes[i].day) + " (" + litres_text(changes[i].litres) + ")");
  return joined(parts);
}

void say_steps(const Plan& plan, const FirstHelp& help, std::vector<std::string>& says) {
  if (!help.changes.empty()) {
    const char* what = to_condition(plan.source.disinfectant);
    const double l = help.changes.front().litres;
    says.push_back("Change " + litres_text(l) + " today, as warm as the tank.");
    says.push_back("Stir a conditioner that treats " + std::string(what ? what : "chloramine") + " into all " + litres_text(l) +
                   " first. Some kits still show ammonia after it.");
  }
  if (help.hardness_jumps) says.push_back("Tap and tank differ in hardness: let it in slowly, over some hours.");
  if (help.tap_frees_ammonia)
    says.push_back(std::string("The tap has a higher pH than the tank and frees ammonia. ") +
                   (help.changes.empty() ? "Change no water with it today." : "Test again an hour later."));
  says.push_back("Ripple the surface: point the filter outlet up or add an air stone.");
  says.push_back("Feed once in two days, and little.");
  says.push_back(
      "Put ripe filter media from a healthy tank into the filter, if you can get some. Rinse media in tank water only.");
  says.push_back("Do not raise the pH: the higher it is, the more ammonia is free.");
  if (help.changes.size() > 1) says.push_back("Likely next changes: " + days_of(help.changes) + ". The tests decide.");
  says.push_back("Test ammonia and nitrite every day until both read none on " + std::to_string(help_clean_days) + " days.");
  says.push_back("Buy no animal until then.");
}

void say_tests(const FirstHelp& help, std::vector<std::string>& says) {
  if (!help.tests_first.empty()) says.push_back("Test " + joined(help.tests_first) + " first, today.");
}

}  // namespace

FirstHelp first_help(const Plan& plan, const Catalog& catalog) {
  FirstHelp help;
  if (plan.measured)
    if (const std::optional<double> chloride = chloride_mg_l(*plan.measured); chloride && *chloride >= help_chloride_mg_l)
      help.nitrite_limit_mg_l = help_nitrite_mg_l;
  if (!anybody_swims(plan)) return help;
  const Plan there = with_swimmers(plan);
  const Windows windows = windows_of(there, catalog);
  const Volume volume = volume_of(plan);
  const Measured measured = plan.measured.value_or(Measured{});

  Day day;
  day.temperature_c = measured.temperature_c.value_or(windows.temperature_c.now.value_or(day.temperature_c));
  day.ph = measured.ph ? measured.ph : plan.source.ph;
  day.tan_mg_l = measured.ammonia_mg_l;
  day.nitrite_mg_l = measured.nitrite_mg_l;
  if (measured.ph && measured.kh_dkh)
    day.carbonate = conserved_at_ph({day.temperature_c, *measured.kh_dkh, measured.gh_dgh}, *measured.ph);
  if (!measured.ammonia_mg_l) help.tests_first.push_back("ammonia");
  if (!measured.nitrite_mg_l) help.tests_first.push_back("nitrite");
  if (!measured.ph) help.tests_first.push_back("pH");

  Question q{.net_l = volume.net_l, .step_l = volume.net_l < 20 ? 0.1 : 1, .nitrite_limit = help.nitrite_limit_mg_l};
  if (plan.source.ph && plan.source.kh_dkh)
    q.tap = conserved_at_ph({plan.source.temperature_c.value_or(day.temperature_c), *plan.source.kh_dkh, plan.source.gh_dgh},
                            *plan.source.ph);
  const Load load = load_of(there, resolve_stock(there, catalog), volume, windows);
  if (load.tan_mg_d && volume.net_l > 0) help.ammonia_rise_mg_l_d = *load.tan_mg_d / volume.net_l;
  q.rise_mg_l_d = help.ammonia_rise_mg_l_d.value_or(0);

  help.nh3_mg_l = day.nh3_mg_l();
  help.nitrite_mg_l = day.nitrite_mg_l;
  const bool past_limit = worst(day, q) > 1, known = day.tan_mg_l && day.nitrite_mg_l && (measured.ph || *day.tan_mg_l == 0);
  help.state = past_limit ? HelpState::act : known ? HelpState::within_limits : HelpState::not_measured;
  if (past_limit && volume.net_l > 0) plan_changes(help, day, q);

  say_readings(help, help.says);
  switch (help.state) {
    case HelpState::nobody_swims: break;
    case HelpState::not_measured: say_tests(help, help.says); break;
    case HelpState::within_limits:
      if (*day.tan_mg_l > 0 || *day.nitrite_mg_l > 0)
        help.says.push_back("Test ammonia and nitrite every day until both read none on " + std::to_string(help_clean_days) +
                            " days. Buy no animal until then.");
      break;
    case HelpState::act:
      say_steps(plan, help, help.says);
      say_tests(help, help.says);
      break;
  }
  return help;
}

}  // namespace shoalwright
