// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/bars.h"
#include "draw/buttons.h"
#include "rules/limits.h"
#include "units/convert.h"
#include "units/text.h"
#include "views/pane.h"
#include "views/water_bars.h"

namespace shoalwright {

namespace {

/// One quantity with the words and the way of counting of the keeper.
struct Teller {
  const Pane& pane;
  const BarQuantity& q;
  const Window& window;
  const Window& before;

  double out(double value) const { return bar_out(pane.look.measures, q, value); }
  std::string unit() const { return bar_unit(pane.look.measures, q); }
  std::string figure(double value) const { return short_text(out(value), is_temperature(q) && pane.look.measures.us ? 0 : 1); }
  std::string with_unit(const std::string& figures) const { return unit().empty() ? figures : figures + " " + unit(); }
  std::string difference(double by) const {
    return with_unit(short_text(is_temperature(q) && pane.look.measures.us ? f_difference_from_c(by) : by, 1));
  }
  std::string plates(const std::vector<std::string>& species) const { return plates_text(plates_of(pane.shown, species)); }

  const Finding* finding() const {
    for (const Finding& one : pane.shown.assessment.findings)
      if (one.rule == q.rule) return &one;
    return nullptr;
  }

  /// Kinds whose own range ends there.
  std::vector<std::string> set_by(double edge, bool low) const { return edge_set_by(pane.shown.stock, q, edge, low); }

  const Range* range_of(const std::string& id) const { return tolerated_of(pane.shown.stock, q, id); }

  std::string window_words() const {
    if (pane.shown.stock.empty()) return "";
    if (window.low_by.empty()) return "no figures";
    if (!window.tolerated) return "none shared";
    const std::string low = figure(window.tolerated->low), high = figure(window.tolerated->high);
    return with_unit(low == high ? low : low + " to " + high);
  }

  std::string gap_words() const {
    const Range *low = range_of(window.low_by), *high = range_of(window.high_by);
    if (low == nullptr || high == nullptr) return "";
    return plates({window.low_by}) + " needs " + figure(low->low) + " up, " + plates({window.high_by}) + " needs " +
           figure(high->high) + " down";
  }

  /// What the kind in hand changes, empty when it changes nothing.
  std::string change_words() const {
    if (!pane.look.held || window.tolerated == before.tolerated || !window.tolerated) return "";
    if (!before.tolerated || before.tolerated->high != window.tolerated->high)
      return with_unit(figure(window.tolerated->high)) + " at most, set by " + plates(set_by(window.tolerated->high, false));
    return with_unit(figure(window.tolerated->low)) + " up, set by " + plates(set_by(window.tolerated->low, true));
  }

  std::string message(std::optional<Severity>& grade, float room) const {
    if (pane.shown.stock.empty() || window.low_by.empty()) return window.now ? "" : "not known";
    const Finding* worst = finding();
    if (!window.tolerated) {
      if (worst != nullptr) grade = worst->severity;
      return gap_words();
    }
    if (!window.now || !window.margin) return "not known: no verdict";
    if (*window.margin < 0) {
      if (worst != nullptr) grade = worst->severity;
      const bool over = *window.now > window.tolerated->high;
      const std::string by = difference(-*window.margin) + (over ? " over" : " under");
      if (grade == Severity::note && q.margin == std::string_view("ph"))
        return by + ", kits read " + short_text(limits::error_ph, 1);
      return by + " for " +
             plates(worst != nullptr ? worst->species : set_by(over ? window.tolerated->high : window.tolerated->low, !over));
    }
    if (std::string changed = change_words(); !changed.empty()) return changed;
    if (pane.look.held) return "as before";
    const bool aimed = pane.look.shown.water && (*pane.look.shown.water).*q.aim;
    if (is_temperature(q) && !aimed) return "no aim; " + with_unit(figure(*window.now)) + " suits best";
    const bool by_low = *window.now - window.tolerated->low <= window.tolerated->high - *window.now;
    const std::string spare = difference(*window.margin) + " in hand";
    const std::string by = ", set by " + plates(set_by(by_low ? window.tolerated->low : window.tolerated->high, by_low));
    const std::optional<double>& tap = pane.look.shown.source.*q.source;
    const std::string source = !is_temperature(q) && tap && tap != window.now ? "; tap " + figure(*tap) : "";
    const Pen pen = pen_of(pane.ui);
    for (const std::string& words : {spare + by + source, spare + source, spare + by})
      if (text_width(pen, type::small, words) <= room) return words;
    return spare;
  }
};

void draw_bar(Pane& pane, const BarQuantity& q, ImVec2 at, float width) {
  const Window& window = pane.shown.assessment.water.*q.window;
  const Teller teller{pane, q, window, pane.now.assessment.water.*q.window};
  const auto both = [&](const Range& range) { return std::pair(teller.out(range.low), teller.out(range.high)); };
  WaterBar bar{.name = q.name};
  bar.rows = bar_rows(pane.shown.stock, q, pane.look.measures);
  bar.row_height = bar_row_height(bar.rows.size());
  if (window.tolerated) bar.shared = both(*window.tolerated);
  if (pane.look.is_previewing() && teller.before.tolerated) bar.shared_now = both(*teller.before.tolerated);
  if (!window.tolerated && !window.low_by.empty()) {
    const Range *low = teller.range_of(window.low_by), *high = teller.range_of(window.high_by);
    if (low != nullptr && high != nullptr) bar.gap = std::pair(teller.out(high->high), teller.out(low->low));
  }
  if (window.now) bar.today = teller.out(*window.now);
  const bool lived_in = !bar.rows.empty();
  const double from = lived_in ? bar.rows.front().tolerated[0] : teller.out(q.from);
  const double to = lived_in ? bar.rows.front().tolerated[1] : teller.out(q.to);
  set_axis(bar, from, to);
  const std::string words = teller.window_words(), message = teller.message(bar.grade, width);
  bar.window = words;
  bar.message = message;

  const Box box{at.x - 4, at.y - 2, width + 8, water_bar_height(bar) + 2};
  const ItemLook look{.exact = true, .allow_over = true};
  const Item of = item(pane.ui, q.id, box, std::string(q.name) + " " + words + ". " + message + ". Opens the water", look);
  const float lit = eased(pane.ui, q.id, of.hovered ? 1.0f : 0.0f, 90);
  if (lit > 0) draw_panel(pen_of(pane.ui), box, scale_alpha(pane.ui.palette->actSoft, lit * 0.6f), 0, 4);
  water_bar(pane.ui, std::string(q.id) + "/bar", at, width, bar);
  if (of.ring) draw_ring(pane.ui, box, look);
  if (of.pressed) pane.out.push_back(ShowSheet{Sheet::water});
}

bool anything_unknown(const Windows& water) {
  return !water.temperature_c.now || !water.ph.now || !water.gh_dgh.now || !water.kh_dkh.now;
}

/// What the filled diamond stands for.
const char* legend(const Plan& plan) {
  if (!plan.water) return "tap";
  const WaterAim& aim = *plan.water;
  return aim.ph && aim.gh_dgh && aim.kh_dkh                        ? "aim"
         : aim.ph || aim.gh_dgh || aim.kh_dkh || aim.temperature_c ? "aim, else tap"
                                                                   : "tap";
}

}  // namespace

void draw_water_section(Pane& pane) {
  Ui& ui = pane.ui;
  const ButtonLook edit_look{.kind = ButtonKind::quiet, .small = true};
  const float edit_width = button_width(ui, "Edit", edit_look);
  const float top = pane.y + 9;
  const bool open = begin_section(pane, Section::water, "Water", "", "", edit_width + 8);
  if (button(ui, "water.edit", {pane.x + pane.w - edit_width + 9, top - 2}, "Edit", edit_look).pressed)
    pane.out.push_back(ShowSheet{Sheet::water});
  if (!open) return;
  const Pen pen = pen_of(ui);
  const float legend_right = pane.x + pane.w - edit_width + 4;
  const float legend_left = legend_right - text_width(pen, type::small, legend(pane.look.shown));
  draw_text_on(pen, type::small, {legend_left, top + 16}, ui.palette->ink2, legend(pane.look.shown));
  draw_filled_diamond(pen, {legend_left - 9, top + 12}, 5, ui.palette->ink);

  const float gap = 20, half = std::floor((pane.w - gap) / 2);
  const std::span<const BarQuantity> quantities = bar_quantities();
  for (std::size_t row = 0; row < 2; ++row) {
    const float y = pane.y;
    draw_bar(pane, quantities[2 * row], {pane.x, y}, half);
    draw_bar(pane, quantities[2 * row + 1], {pane.x + half + gap, y}, half);
    const std::size_t rows = std::max<std::size_t>(1, pane.shown.stock.size());
    pane.y = y + 24 + static_cast<float>(rows) * bar_row_height(rows) + 1 + 33 + (row == 0 ? 6 : 2);
  }
  if (anything_unknown(pane.shown.assessment.water)) {
    draw_note(pane, "What is not known gets no verdict.");
    if (button(ui, "water.enter", {pane.x, pane.y + 2}, "Enter what your tap has", {.kind = ButtonKind::remedy, .small = true})
            .pressed)
      pane.out.push_back(ShowSheet{Sheet::water});
    pane.y += 34;
  }
  draw_findings(pane, Section::water);
  end_section(pane);
}

}  // namespace shoalwright
