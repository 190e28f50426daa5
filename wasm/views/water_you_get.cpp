// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/marks.h"
#include "notebook/say.h"
#include "views/water_desk.h"

namespace shoalwright {

namespace {

/// What the bucket has of one quantity.
std::optional<double> mixed(const WaterWork& work, const BarQuantity& q) {
  const MixedWater& reached = work.card.weighed;
  if (is_temperature(q)) return work.card.aim.temperature_c;
  if (q.window == &Windows::gh_dgh) return reached.gh_dgh;
  if (q.window == &Windows::kh_dkh) return reached.kh_dkh;
  if (reached.ph_in_tank) return (reached.ph_in_tank->low + reached.ph_in_tank->high) / 2;
  return std::nullopt;
}

struct Words {
  const WaterDesk& desk;
  const BarQuantity& q;
  float width;  ///< of the bar

  std::string figure(double value) const { return bar_figure(desk.look.measures, q, value); }
  std::string with_unit(const std::string& figures) const {
    const std::string unit = bar_unit(desk.look.measures, q, width);
    return unit.empty() ? figures : figures + " " + unit;
  }
  /// The window beside it has the whole unit.
  std::string brief(const std::string& figures) const {
    const std::string unit = bar_unit(desk.look.measures, q, 0);
    return unit.empty() ? figures : figures + " " + unit;
  }
  std::string by(double difference) const { return bar_difference(desk.look.measures, q, difference); }

  std::string window() const {
    const Window& all = desk.work.windows.*q.window;
    if (all.low_by.empty()) return desk.work.stock.empty() ? "" : "no figures";
    if (!all.tolerated) return "none shared";
    const std::string low = figure(all.tolerated->low), high = figure(all.tolerated->high);
    return with_unit(low == high ? low : low + " to " + high);
  }

  /// "7 °dH: 5 up, 3 down to the edge".
  std::string message(const std::optional<double>& now) const {
    const Window& all = desk.work.windows.*q.window;
    if (!all.tolerated && !all.low_by.empty()) return no_window_words(desk.work, q, desk.look.measures);
    if (!now) return "not known";
    const bool ph = q.window == &Windows::ph;
    const std::optional<Range>& span = desk.card().recipe.reached.ph_in_tank;
    const std::string is = ph && span ? span_of(span->low, span->high, 1, "") : brief(figure(*now));
    if (!all.tolerated) return is;
    const double up = all.tolerated->high - *now, down = *now - all.tolerated->low;
    // Rounding of the sums is no step past an edge.
    if (up < -1e-6)
      return is + ": " + by(-up) + " over for " +
             plates_words(desk.work, edge_set_by(desk.work.stock, q, all.tolerated->high, false));
    if (down < -1e-6)
      return is + ": " + by(-down) + " under for " +
             plates_words(desk.work, edge_set_by(desk.work.stock, q, all.tolerated->low, true));
    return is + ": " + by(std::max(0.0, up)) + " up, " + by(std::max(0.0, down)) + " down";
  }
};

float draw_one(WaterDesk& desk, const BarQuantity& q, ImVec2 at, float width) {
  const Measures& measures = desk.look.measures;
  const Window& all = desk.work.windows.*q.window;
  const Words words{desk, q, width};
  const auto both = [&](const Range& range) {
    return std::pair(bar_out(measures, q, range.low), bar_out(measures, q, range.high));
  };
  WaterBar bar{.name = q.name};
  bar.rows = bar_rows(desk.work.stock, q, measures);
  bar.row_height = bar_row_height(bar.rows.size());
  if (all.tolerated) bar.shared = both(*all.tolerated);
  if (!all.tolerated && !all.low_by.empty()) {
    const Range *low = tolerated_of(desk.work.stock, q, all.low_by), *high = tolerated_of(desk.work.stock, q, all.high_by);
    if (low != nullptr && high != nullptr) bar.gap = std::pair(bar_out(measures, q, high->high), bar_out(measures, q, low->low));
  }
  // The tap's temperature says nothing about a tank.
  const std::optional<double>&tap = desk.work.plan.source.*q.source, now = mixed(desk.work, q);
  if (tap && !is_temperature(q)) bar.today = bar_out(measures, q, *tap);
  if (now) bar.aim = bar_out(measures, q, *now);
  const bool lived_in = !bar.rows.empty();
  set_axis(bar, lived_in ? bar.rows.front().tolerated[0] : bar_out(measures, q, q.from),
           lived_in ? bar.rows.front().tolerated[1] : bar_out(measures, q, q.to));
  const std::string window = words.window(), message = words.message(now);
  bar.window = window;
  bar.message = message;
  return water_bar(desk.ui, "water_sheet.bar/" + std::string(q.margin), at, width, bar);
}

void draw_legend(WaterDesk& desk, Stack& stack) {
  const Pen pen = pen_of(desk.ui);
  const Palette& p = *desk.ui.palette;
  const float y = stack.y() + 8;
  float x = stack.box.x + 6;
  draw_filled_diamond(pen, {x, y}, 5, p.ink);
  x += 11;
  x += draw_text(pen, type::small, {x, y - 8}, p.ink2, "tap") + 18;
  draw_open_diamond(pen, {x, y}, 4.5f, p.raised, p.ink);
  x += 11;
  draw_text(pen, type::small, {x, y - 8}, p.ink2, "this mix, in the tank");
  stack.skip(22);
}

}  // namespace

void draw_water_you_get(WaterDesk& desk, Stack& stack) {
  part_heading(desk, stack, "The water you get", "distance to the edge of the shared window", "distance to the edge");
  stack.skip(2);
  draw_legend(desk, stack);
  const float gap = 20, half = std::floor((stack.box.w - gap) / 2);
  const std::span<const BarQuantity> quantities = bar_quantities();
  for (std::size_t row = 0; row < 2; ++row) {
    const float y = stack.y();
    const float left = draw_one(desk, quantities[2 * row], {stack.box.x, y}, half);
    const float right = draw_one(desk, quantities[2 * row + 1], {stack.box.x + half + gap, y}, half);
    stack.skip(std::max(left, right) + 8);
  }
  if (const std::optional<Range>& ph = desk.card().recipe.reached.ph_in_tank)
    part_note(desk, stack,
              "pH is not aimed at: it follows from KH and CO₂, about " + span_of(ph->low, ph->high, 1, "") +
                  " in the tank. Never add acid.");
}

}  // namespace shoalwright
