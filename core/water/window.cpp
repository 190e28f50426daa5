// SPDX-License-Identifier: MIT
#include "water/window.h"

#include <algorithm>

namespace shoalwright {

namespace {

using Stock = std::vector<const Species*>;

Window shared(const Stock& stock, Need Species::WaterNeeds::*quantity) {
  Window window;
  Range tolerated, ideal;
  bool any_ideal = false;
  for (const Species* species : stock) {
    if (!species) continue;
    const Need& need = species->water.*quantity;
    if (need.tolerated) {
      const bool first = window.low_by.empty();
      if (first || need.tolerated->low > tolerated.low) {
        tolerated.low = need.tolerated->low;
        window.low_by = species->id;
      }
      if (first || need.tolerated->high < tolerated.high) {
        tolerated.high = need.tolerated->high;
        window.high_by = species->id;
      }
    }
  }
  // What it thrives in, or where that is not known what it lives in, so that ideal stays inside tolerated.
  bool first = true;
  for (const Species* species : stock) {
    if (!species) continue;
    const Need& need = species->water.*quantity;
    const std::optional<Range>& best = need.ideal ? need.ideal : need.tolerated;
    if (!best) continue;
    any_ideal = any_ideal || need.ideal;
    ideal = first ? *best : Range{std::max(ideal.low, best->low), std::min(ideal.high, best->high)};
    first = false;
  }
  if (!window.low_by.empty() && tolerated.low <= tolerated.high) window.tolerated = tolerated;
  if (any_ideal && ideal.low <= ideal.high) window.ideal = ideal;
  return window;
}

void set_now(Window& window, std::optional<double> now) {
  window.now = now;
  if (now && window.tolerated) window.margin = std::min(*now - window.tolerated->low, window.tolerated->high - *now);
}

std::optional<double> middle(const std::optional<Range>& range) {
  if (!range) return std::nullopt;
  return (range->low + range->high) / 2;
}

}  // namespace

Windows windows_of(const Plan& plan, const Stock& stock) {
  Windows w;
  w.temperature_c = shared(stock, &Species::WaterNeeds::temperature_c);
  w.ph = shared(stock, &Species::WaterNeeds::ph);
  w.gh_dgh = shared(stock, &Species::WaterNeeds::gh_dgh);
  w.kh_dkh = shared(stock, &Species::WaterNeeds::kh_dkh);

  const WaterAim aim = plan.water.value_or(WaterAim{});
  const auto either = [](const std::optional<double>& first, const std::optional<double>& second) {
    return first ? first : second;
  };
  set_now(w.temperature_c, either(aim.temperature_c, either(middle(w.temperature_c.ideal), middle(w.temperature_c.tolerated))));
  set_now(w.ph, either(aim.ph, plan.source.ph));
  set_now(w.gh_dgh, either(aim.gh_dgh, plan.source.gh_dgh));
  set_now(w.kh_dkh, either(aim.kh_dkh, plan.source.kh_dkh));
  return w;
}

}  // namespace shoalwright
