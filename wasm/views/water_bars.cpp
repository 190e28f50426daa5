// SPDX-License-Identifier: MIT
#include "views/water_bars.h"

#include <algorithm>
#include <cmath>

#include "units/convert.h"
#include "units/text.h"

namespace shoalwright {

namespace {

const BarQuantity quantities[] = {
    {"water.temperature", "Temperature", "temperature_c", "water-temperature", &Windows::temperature_c,
     &Species::WaterNeeds::temperature_c, &WaterAim::temperature_c, &SourceWater::temperature_c, 18, 30},
    {"water.ph", "pH", "ph", "water-ph", &Windows::ph, &Species::WaterNeeds::ph, &WaterAim::ph, &SourceWater::ph, 5, 9},
    {"water.gh", "GH", "gh_dgh", "water-gh", &Windows::gh_dgh, &Species::WaterNeeds::gh_dgh, &WaterAim::gh_dgh,
     &SourceWater::gh_dgh, 0, 20},
    {"water.kh", "KH", "kh_dkh", "water-kh", &Windows::kh_dkh, &Species::WaterNeeds::kh_dkh, &WaterAim::kh_dkh,
     &SourceWater::kh_dkh, 0, 15},
};

}  // namespace

std::span<const BarQuantity> bar_quantities() { return quantities; }

bool is_temperature(const BarQuantity& q) { return q.window == &Windows::temperature_c; }

std::optional<Hardness> hardness_of(const BarQuantity& q) {
  if (q.window == &Windows::gh_dgh) return Hardness::gh;
  if (q.window == &Windows::kh_dkh) return Hardness::kh;
  return std::nullopt;
}

double bar_out(const Measures& measures, const BarQuantity& q, double value) {
  if (const std::optional<Hardness> hardness = hardness_of(q)) return measures.hardness_out(value, *hardness);
  return is_temperature(q) ? measures.temperature_out(value) : value;
}

double bar_in(const Measures& measures, const BarQuantity& q, double shown) {
  if (const std::optional<Hardness> hardness = hardness_of(q)) return measures.hardness_back(shown, *hardness);
  return is_temperature(q) ? measures.temperature_in(shown) : shown;
}

std::string bar_figure(const Measures& measures, const BarQuantity& q, double value) {
  const int decimals = hardness_of(q) ? measures.hardness_decimals() : is_temperature(q) && measures.us ? 0 : 1;
  return short_text(bar_out(measures, q, value), decimals);
}

std::string bar_difference(const Measures& measures, const BarQuantity& q, double by) {
  if (is_temperature(q)) return short_text(measures.us ? f_difference_from_c(by) : by, 1);
  return bar_figure(measures, q, by);
}

double bar_step(const Measures& measures, const BarQuantity& q) {
  if (hardness_of(q)) return measures.hardness_step() / 2;
  return is_temperature(q) ? (measures.us ? 1 : 0.5) : 0.1;
}

std::string bar_unit(const Measures& measures, const BarQuantity& q, float width) {
  constexpr float roomy = 150;
  if (const std::optional<Hardness> hardness = hardness_of(q))
    return width < roomy ? measures.short_hardness_unit(*hardness) : measures.hardness_unit(*hardness);
  return is_temperature(q) ? measures.temperature_unit() : "";
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
  constexpr double steps[] = {0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500};
  double step = steps[0];
  for (const double one : steps) {
    step = one;
    if ((bar.to - bar.from) / one * (one < 1 || one >= 50 ? 26 : 19) <= 110) break;
  }
  bar.tick_decimals = step < 1 ? 1 : 0;
  for (double tick = std::ceil(bar.from / step) * step; tick <= bar.to; tick += step) bar.ticks.push_back(tick);
}

}  // namespace shoalwright
