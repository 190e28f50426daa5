// SPDX-License-Identifier: MIT
#include "views/water_bars.h"

#include <algorithm>
#include <cmath>

namespace shoalwright {

namespace {

const BarQuantity quantities[] = {
    {"water.temperature", "Temperature", "temperature_c", "water-temperature", "°C", &Windows::temperature_c,
     &Species::WaterNeeds::temperature_c, &WaterAim::temperature_c, &SourceWater::temperature_c, 18, 30},
    {"water.ph", "pH", "ph", "water-ph", "", &Windows::ph, &Species::WaterNeeds::ph, &WaterAim::ph, &SourceWater::ph, 5, 9},
    {"water.gh", "GH", "gh_dgh", "water-gh", "°dH", &Windows::gh_dgh, &Species::WaterNeeds::gh_dgh, &WaterAim::gh_dgh,
     &SourceWater::gh_dgh, 0, 20},
    {"water.kh", "KH", "kh_dkh", "water-kh", "°dH", &Windows::kh_dkh, &Species::WaterNeeds::kh_dkh, &WaterAim::kh_dkh,
     &SourceWater::kh_dkh, 0, 15},
};

}  // namespace

std::span<const BarQuantity> bar_quantities() { return quantities; }

bool is_temperature(const BarQuantity& q) { return q.window == &Windows::temperature_c; }

double bar_out(const Measures& measures, const BarQuantity& q, double value) {
  return is_temperature(q) ? measures.temperature_out(value) : value;
}

std::string bar_unit(const Measures& measures, const BarQuantity& q) {
  return is_temperature(q) ? measures.temperature_unit() : q.unit;
}

std::vector<WaterBarRow> bar_rows(const std::vector<Kept>& stock, const BarQuantity& q, const Measures& measures) {
  std::vector<WaterBarRow> rows;
  int number = 0;
  for (const Kept& kept : stock) {
    ++number;
    if (kept.species == nullptr) continue;
    const Need& need = kept.species->water.*q.need;
    if (!need.tolerated) continue;
    const Range ideal = need.ideal.value_or(*need.tolerated);
    rows.push_back({number,
                    {bar_out(measures, q, need.tolerated->low), bar_out(measures, q, need.tolerated->high)},
                    {bar_out(measures, q, ideal.low), bar_out(measures, q, ideal.high)}});
  }
  return rows;
}

float bar_row_height(std::size_t rows) { return rows > 8 ? 9 : 11; }

const Range* tolerated_of(const std::vector<Kept>& stock, const BarQuantity& q, const std::string& id) {
  for (const Kept& kept : stock)
    if (kept.id == id && kept.species != nullptr && (kept.species->water.*q.need).tolerated)
      return &*(kept.species->water.*q.need).tolerated;
  return nullptr;
}

std::vector<std::string> edge_set_by(const std::vector<Kept>& stock, const BarQuantity& q, double edge, bool low) {
  std::vector<std::string> species;
  for (const Kept& kept : stock) {
    if (kept.species == nullptr) continue;
    const std::optional<Range>& range = (kept.species->water.*q.need).tolerated;
    if (range && (low ? range->low : range->high) == edge) species.push_back(kept.id);
  }
  return species;
}

void set_axis(WaterBar& bar, double from, double to) {
  const auto hold = [&](double low, double high) {
    from = std::min(from, low);
    to = std::max(to, high);
  };
  for (const WaterBarRow& row : bar.rows) hold(row.tolerated[0], row.tolerated[1]);
  for (const auto& shared : {bar.shared, bar.shared_now})
    if (shared) hold(shared->first, shared->second);
  for (const std::optional<double>& mark : {bar.today, bar.aim})
    if (mark) hold(*mark, *mark);
  const double pad = std::max(0.2, (to - from) * 0.07);
  bar.from = from - pad;
  bar.to = to + pad;
  constexpr double steps[] = {0.5, 1, 2, 5, 10, 20, 50};
  double step = steps[0];
  for (const double one : steps) {
    step = one;
    if ((bar.to - bar.from) / one * (one < 1 ? 26 : 19) <= 110) break;
  }
  bar.tick_decimals = step < 1 ? 1 : 0;
  for (double tick = std::ceil(bar.from / step) * step; tick <= bar.to; tick += step) bar.ticks.push_back(tick);
}

}  // namespace shoalwright
