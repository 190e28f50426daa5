// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/bars.h"
#include "draw/buttons.h"
#include "draw/slider.h"
#include "edit/command.h"
#include "platform/platform.h"
#include "rules/limits.h"
#include "units/text.h"
#include "views/edit_wish.h"
#include "views/value_row.h"
#include "views/water_bars.h"

namespace shoalwright {

namespace {

/// One quantity with the words and the way of counting of the keeper.
struct Teller {
  const Pane& pane;
  const BarQuantity& q;
  const Window& window;
  const Window& before;
  float width;  ///< of the bar

  double out(double value) const { return bar_out(pane.look.measures, q, value); }
  std::string unit() const { return bar_unit(pane.look.measures, q, width); }
  std::string figure(double value) const { return bar_figure(pane.look.measures, q, value); }
  std::string with_unit(const std::string& figures) const { return unit().empty() ? figures : figures + " " + unit(); }
  std::string difference(double by) const { return with_unit(bar_difference(pane.look.measures, q, by)); }
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

enum class Mark { tap, aim };

/// A mark of a bar that is drawn along it.
struct Hand {
  Pane& pane;
  const BarQuantity& q;
  const WaterBar& bar;
  ImVec2 at;
  float width;

  void set(Mark mark, double shown) const {
    const Plan& plan = pane.look.plan;
    const double value = bar_in(pane.look.measures, q, shown);
    if (mark == Mark::tap) {
      SourceWater source = plan.source;
      source.*q.source = value;
      pane.out.push_back(edit_wish(pane.look, SetSource{source}));
      return;
    }
    WaterAim aim = plan.water.value_or(WaterAim{});
    aim.*q.aim = value;
    pane.out.push_back(edit_wish(pane.look, SetAim{aim}));
  }

  void drag(const char* name, double value, Mark mark) const {
    Ui& ui = pane.ui;
    const std::string id = std::string(q.id) + name;
    const float x = water_bar_x(at, width, bar, value);
    const Box grip{x - 7, at.y + 13, 14, water_bar_height(bar) - 44};
    const double step = bar_step(pane.look.measures, q);
    const std::string words =
        std::string(q.name) + (mark == Mark::tap ? " of the tap, " : " aimed at, ") + short_text(value, step < 0.1 ? 2 : 1);
    const ItemLook look{.exact = true};
    const Item of = item(ui, id, grip, words, look);
    if (of.ring) draw_ring(ui, grip, look);
    if (of.hovered || of.held) platform::set_cursor(of.held ? platform::Cursor::grabbing : platform::Cursor::grab);
    double to = value;
    if (hand_on(ui, id, of)) {
      if (pane.mine.held_bar != id) {
        pane.mine.held_bar = id;
        pane.mine.held_from = bar.from;
        pane.mine.held_to = bar.to;
      }
      to = std::round(water_bar_value(at, width, bar, ImGui::GetIO().MousePos.x) / step) * step;
    } else {
      if (of.pressed && pane.mine.held_bar != id) pane.out.push_back(ShowSheet{Sheet::water});  // pressed and not drawn along
      if (!of.held && pane.mine.held_bar == id && !ImGui::IsMouseDown(ImGuiMouseButton_Left)) pane.mine.held_bar.clear();
      const ImVec2 arrows = arrow_steps(of);
      const float steps = arrows.x + arrows.y + static_cast<float>(of.focused ? typed_step() : 0);
      if (steps != 0) to = value + static_cast<double>(steps) * step;
    }
    to = std::max(to, q.margin == std::string_view("ph") ? 4.0 : 0.0);
    if (std::abs(to - value) > 1e-6) set(mark, to);
  }
};

void draw_bar(Pane& pane, const BarQuantity& q, ImVec2 at, float width) {
  const Window& window = pane.shown.assessment.water.*q.window;
  const Teller teller{pane, q, window, pane.now.assessment.water.*q.window, width};
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
  const Plan& plan = pane.look.shown;
  const bool aimed = plan.water && (*plan.water).*q.aim;
  const std::optional<double>& tap = plan.source.*q.source;
  if (window.now) (aimed ? bar.aim : bar.today) = teller.out(*window.now);
  if (aimed && tap && !is_temperature(q)) bar.today = teller.out(*tap);  // the tap's warmth says nothing about a tank
  const bool lived_in = !bar.rows.empty();
  const double from = lived_in ? bar.rows.front().tolerated[0] : teller.out(q.from);
  const double to = lived_in ? bar.rows.front().tolerated[1] : teller.out(q.to);
  set_axis(bar, from, to);
  if (pane.mine.held_bar.rfind(std::string(q.id) + "/", 0) == 0) {
    bar.from = pane.mine.held_from;
    bar.to = pane.mine.held_to;
  }
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
  if (pane.look.held) return;
  const Hand hand{pane, q, bar, at, width};
  if (bar.today) hand.drag("/tap", *bar.today, is_temperature(q) ? Mark::aim : Mark::tap);
  if (bar.aim) hand.drag("/aim", *bar.aim, Mark::aim);
}

bool anything_unknown(const Windows& water) {
  return !water.temperature_c.now || !water.ph.now || !water.gh_dgh.now || !water.kh_dkh.now;
}

/// What the diamonds stand for, ending at `right`.
void draw_legend(Pane& pane, float right, float base) {
  const Pen pen = pen_of(pane.ui);
  const Palette& p = *pane.ui.palette;
  if (pane.look.shown.water) {
    const float left = right - text_width(pen, type::small, "aim");
    draw_text_on(pen, type::small, {left, base}, p.ink2, "aim");
    draw_open_diamond(pen, {left - 9, base - 4}, 4.5f, p.raised, p.ink);
    right = left - 26;
  }
  const float left = right - text_width(pen, type::small, "tap");
  draw_text_on(pen, type::small, {left, base}, p.ink2, "tap");
  draw_filled_diamond(pen, {left - 9, base - 4}, 5, p.ink);
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
  draw_legend(pane, pane.x + pane.w - edit_width + 4, top + 16);

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
  if (const std::optional<double>& co2 = pane.shown.assessment.water.co2_mg_l)
    value_row(pane, "water.co2", "CO₂ that pH and KH tell", significant_text(*co2, 2) + " mg/L", Number::co2);
  draw_findings(pane, Section::water);
  end_section(pane);
}

}  // namespace shoalwright
