// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <vector>

#include "app/retold.h"
#include "draw/geometry.h"
#include "notebook/say.h"
#include "platform/platform.h"
#include "units/day.h"
#include "units/text.h"
#include "views/water_desk.h"
#include "water/weighing.h"

namespace shoalwright {

namespace {

struct Plot {
  Box box;
  double most = 10, changes = 1;

  float x(double change) const { return box.x + static_cast<float>(change / changes) * box.w; }
  float y(double degrees) const { return box.bottom() - static_cast<float>(std::clamp(degrees / most, 0.0, 1.0)) * box.h; }
};

/// GH or KH of the tank on its way, as the keeper counts them.
struct Line {
  std::optional<double> TankWater::*what;
  Hardness hardness;
  const Measures& measures;

  std::optional<double> of(const TankWater& water) const {
    if (!(water.*what)) return std::nullopt;
    return measures.hardness_out(*(water.*what), hardness);
  }
};

/// Each change is a step down or up, then the water stays until the next.
std::vector<ImVec2> stairs(const Plot& plot, const GettingThere& way, const Line& line) {
  std::vector<ImVec2> points;
  double now = line.of(way.now).value_or(0);
  points.push_back({plot.x(0), plot.y(now)});
  for (std::size_t i = 0; i < way.steps.size(); ++i) {
    now = line.of(way.steps[i].after).value_or(now);
    points.push_back({plot.x(static_cast<double>(i)), plot.y(now)});
    points.push_back({plot.x(static_cast<double>(i) + 1), plot.y(now)});
  }
  return points;
}

/// The edge of the window that the tank has to cross or is nearest to at the end of its way.
std::optional<double> edge_towards(const Window& window, double from, double to) {
  if (!window.tolerated) return std::nullopt;
  if (from > window.tolerated->high) return window.tolerated->high;
  if (from < window.tolerated->low) return window.tolerated->low;
  return to <= from ? window.tolerated->low : window.tolerated->high;
}

/// Words of the chart, each where it crosses no line and no other words, else where it crosses fewest.
struct Labels {
  const Pen& pen;
  Box within;
  std::vector<Box> taken;
  std::vector<std::pair<ImVec2, ImVec2>> lines;  ///< all level or upright

  void add_line(const std::vector<ImVec2>& points) {
    for (std::size_t i = 1; i < points.size(); ++i) lines.push_back({points[i - 1], points[i]});
  }
  int crossed(const Box& box) const {
    int count = 0;
    constexpr float air = 4;
    for (const auto& [a, b] : lines)
      count += std::min(a.x, b.x) < box.right() + air && std::max(a.x, b.x) > box.x - air && std::min(a.y, b.y) < box.bottom() &&
               std::max(a.y, b.y) > box.y;
    for (const Box& other : taken)
      count += 3 * (box.x < other.right() + 10 && box.right() > other.x - 10 && box.y < other.bottom() && box.bottom() > other.y);
    return count;
  }
  void put(Type t, ImU32 colour, const std::string& words, const std::vector<ImVec2>& places) {
    const float w = text_width(pen, t, words);
    Box best;
    int least = -1;
    for (const ImVec2& place : places) {
      const Box box{std::clamp(place.x, within.x, std::max(within.x, within.right() - w)),
                    std::clamp(place.y, within.y, within.bottom() - t.line), w, t.line};
      const int count = crossed(box);
      if (least >= 0 && count >= least) continue;
      least = count;
      best = box;
    }
    if (least > 0) draw_panel(pen, best.inset(-2, 0), pen.palette->panel, 0, 2);
    draw_text(pen, t, best.min(), colour, words);
    taken.push_back(best);
  }
};

/// Beside its line: above and below it, from the right to the left.
std::vector<ImVec2> along_edge(const Plot& plot, float y) {
  std::vector<ImVec2> places;
  for (const float share : {1.0f, 0.5f, 0.25f, 0.0f})
    for (const float off : {-15.0f, 2.0f}) places.push_back({plot.box.x + plot.box.w * share, y + off});
  return places;
}

std::vector<ImVec2> along_stairs(const std::vector<ImVec2>& stairs) {
  std::vector<ImVec2> places;
  for (std::size_t i = 1; i + 1 < stairs.size(); i += 2)
    for (const float off : {3.0f, -18.0f}) places.push_back({stairs[i].x + 8, stairs[i].y + off});
  return places;
}

void draw_edge_line(const Pen& pen, const Plot& plot, double edge, bool dashed) {
  const ImVec2 line[] = {{plot.box.x, plot.y(edge)}, {plot.box.right(), plot.y(edge)}};
  if (dashed)
    dashed_line(pen.dl, line, dash_aim(), pen.palette->bandEdge, 1.5f);
  else
    pen.dl->AddLine(line[0], line[1], pen.palette->bandEdge, 1.5f);
}

double round_top(double highest) {
  constexpr double steps[] = {0.5, 1, 2, 4, 5, 10, 20, 50, 100, 200, 500};
  for (const double step : steps)
    if (highest * 1.1 / step <= 4) return step;
  return 1000;
}

void draw_chart(WaterDesk& desk, Stack& stack) {
  const GettingThere& way = desk.card().way;
  const Pen pen = pen_of(desk.ui);
  const Palette& p = *desk.ui.palette;
  const Box whole = stack.take(186, 8);
  const Measures& measures = desk.look.measures;
  const Line of_gh{&TankWater::gh_dgh, Hardness::gh, measures}, of_kh{&TankWater::kh_dkh, Hardness::kh, measures};
  double highest =
      std::max({of_gh.of(way.now).value_or(0), of_kh.of(way.now).value_or(0), measures.hardness_out(4, Hardness::gh)});
  for (const ChangeStep& step : way.steps)
    highest = std::max({highest, of_gh.of(step.after).value_or(0), of_kh.of(step.after).value_or(0)});
  const double tick = round_top(highest);
  const Plot plot{{whole.x + 26, whole.y + 14, whole.w - 30, whole.h - 34},
                  tick * std::ceil(highest * 1.08 / tick),
                  static_cast<double>(std::max<std::size_t>(1, way.steps.size()))};
  const std::string gh_unit = measures.hardness_unit(Hardness::gh), kh_unit = measures.hardness_unit(Hardness::kh);
  draw_text_on(pen, type::axis, {whole.x, whole.y + 4}, p.ink2,
               gh_unit == kh_unit ? gh_unit : "GH " + gh_unit + ", KH " + kh_unit);
  for (double at = 0; at <= plot.most + 1e-9; at += tick) {
    draw_rule(pen, plot.box.x, plot.y(at), plot.box.right(), p.line);
    draw_text_on(pen, type::axis, {plot.box.x - 6, plot.y(at) + 4}, p.ink2, short_text(at, tick < 1 ? 1 : 0), Align::right);
  }
  const bool weekly = desk.card().every_days == 7;
  const int every = std::max(1, static_cast<int>(std::ceil(plot.changes * 40 / plot.box.w)));
  for (int i = 0; i <= static_cast<int>(plot.changes); i += every) {
    const std::string words = i == 0   ? "now"
                              : weekly ? "wk " + std::to_string(i)
                                       : "day " + short_text(i * desk.card().every_days, 0);
    const Align align = i == 0 ? Align::left : i == static_cast<int>(plot.changes) ? Align::right : Align::centre;
    draw_text_on(pen, type::axis, {plot.x(i), plot.box.bottom() + 15}, p.ink2, words, align);
  }
  const TankWater& last = way.steps.back().after;
  const std::vector<ImVec2> gh = stairs(plot, way, of_gh), kh = stairs(plot, way, of_kh);
  Labels labels{pen, {plot.box.x + 2, plot.box.y - 12, plot.box.w - 2, plot.box.h + 12}, {}, {}};
  labels.add_line(gh);
  labels.add_line(kh);
  const auto edge_of = [&](const BarQuantity& q, const Line& line) {
    const std::optional<double> edge =
        edge_towards(desk.work.windows.*q.window, (way.now.*line.what).value_or(0), (last.*line.what).value_or(0));
    return edge && measures.hardness_out(*edge, line.hardness) <= plot.most ? edge : std::nullopt;
  };
  const BarQuantity &gh_bar = bar_quantities()[2], &kh_bar = bar_quantities()[3];
  const std::optional<double> gh_edge = edge_of(gh_bar, of_gh), kh_edge = edge_of(kh_bar, of_kh);
  const double gh_edge_at = measures.hardness_out(gh_edge.value_or(0), Hardness::gh),
               kh_edge_at = measures.hardness_out(kh_edge.value_or(0), Hardness::kh);
  if (gh_edge) draw_edge_line(pen, plot, gh_edge_at, false);
  if (kh_edge) draw_edge_line(pen, plot, kh_edge_at, true);
  pen.dl->AddPolyline(gh.data(), static_cast<int>(gh.size()), p.ink, 0, 2);
  constexpr float dashes[] = {6, 3};
  dashed_line(pen.dl, kh, dashes, p.ink, 2);
  const auto edge_line = [&](double at) { labels.add_line({{plot.box.x, plot.y(at)}, {plot.box.right(), plot.y(at)}}); };
  if (gh_edge) edge_line(gh_edge_at);
  if (kh_edge) edge_line(kh_edge_at);
  labels.put(semibold(type::small), p.ink, "GH, tank", along_stairs(gh));
  labels.put(semibold(type::small), p.ink, "KH, tank", along_stairs(kh));
  const auto name_edge = [&](const BarQuantity& q, const std::optional<double>& edge) {
    if (!edge) return;
    const Window& window = desk.work.windows.*q.window;
    const bool low = window.tolerated && *edge == window.tolerated->low;
    const std::string by = plates_words(desk.work, edge_set_by(desk.work.stock, q, *edge, low));
    const std::string words =
        std::string(q.name) + " edge " + bar_figure(measures, q, *edge) + (by.empty() ? "" : ", set by " + by);
    labels.put(type::axis, p.ink2, words, along_edge(plot, plot.y(bar_out(measures, q, *edge))));
  };
  name_edge(gh_bar, gh_edge);
  name_edge(kh_bar, kh_edge);
}

/// Whether GH or KH lies in the window when the last change is done; what is not known counts as inside.
bool ends_inside(const Window& window, const std::optional<double>& last) {
  return !window.tolerated || !last || (*last >= window.tolerated->low - 0.05 && *last <= window.tolerated->high + 0.05);
}

std::string inside_words(const char* name, const std::optional<int>& after, const Window& window,
                         const std::optional<double>& last) {
  if (!window.tolerated) return "";
  if (!after) return std::string(name) + " does not come inside on this way";
  if (!ends_inside(window, last)) return std::string(name) + " leaves the window on this way";
  if (*after == 0) return std::string(name) + " is inside already";
  return std::string(name) + " is inside after " + std::to_string(*after) + (*after == 1 ? " change" : " changes");
}

std::string way_words(const WaterDesk& desk) {
  const GettingThere& way = desk.card().way;
  const Windows& windows = desk.work.windows;
  if (way.changes == 0) return "The tank has this water already.";
  if (way.steps.empty()) return "How the tank gets there is not known: GH and KH of the tap or the tank are missing.";
  std::string words;
  const TankWater& last = way.steps.back().after;
  const std::string gh = inside_words("GH", way.gh_inside_after, windows.gh_dgh, last.gh_dgh),
                    kh = inside_words("KH", way.kh_inside_after, windows.kh_dkh, last.kh_dkh);
  if (!gh.empty()) words += gh + (kh.empty() ? ". " : "; ");
  if (!kh.empty()) words += kh + ". ";
  words += way.changes ? std::to_string(*way.changes) + (*way.changes == 1 ? " change" : " changes") + " to the aim. "
                       : "Such changes alone do not reach the aim. ";
  words += "Largest step: GH " + short_text(way.most_gh_dgh, 1) + ", KH " + short_text(way.most_kh_dkh, 1) + " °dH, pH " +
           short_text(way.most_ph, 1) + " in one change.";
  return retold(desk.look.measures, words);
}

/// What each change brings, by its day. Beyond so many the rhythm says it.
void draw_days(WaterDesk& desk, Stack& stack) {
  constexpr std::size_t most = 8;
  const RecipeCard& card = desk.card();
  const std::vector<ChangeStep>& steps = card.way.steps;
  if (steps.empty() || card.way.changes == 0) return;
  const Measures& m = desk.look.measures;
  const Pen pen = pen_of(desk.ui);
  const Palette& p = *desk.ui.palette;
  const int first = first_day(desk);
  const auto day_of = [&](std::size_t i) {
    return first + static_cast<int>(std::round(static_cast<double>(i) * card.every_days));
  };
  for (std::size_t i = 0; i < std::min(steps.size(), most); ++i) {
    const Box line = stack.take(20);
    const double litres = card.fraction > 0 ? card.for_l * steps[i].fraction / card.fraction : card.for_l;
    const std::string day = said_day(day_of(i)), change = "change " + desk.litres(litres);
    std::string then;
    if (steps[i].after.gh_dgh && steps[i].after.kh_dkh)
      then = "GH " + m.hardness_figure(*steps[i].after.gh_dgh, Hardness::gh) + ", KH " +
             m.hardness_figure(*steps[i].after.kh_dkh, Hardness::kh);
    draw_text(pen, medium(type::small), {line.x, line.y + 2}, p.ink, day);
    draw_text(pen, type::small, {line.x + 86, line.y + 2}, p.ink, change);
    draw_text(pen, type::small, {line.right(), line.y + 2}, p.ink2, then, Align::right);
    add_spot(desk.ui, "water_sheet.day/" + std::to_string(i), line, day + ": " + change + ", then " + then);
  }
  if (steps.size() > most)
    part_note(desk, stack,
              "and so on, the last of " + std::to_string(steps.size()) + " on " + said_day(day_of(steps.size() - 1), true) + ".");
  stack.skip(6);
}

/// The buckets of the way where they are not all the one that is shown: litres and grams of each.
std::vector<std::string> bucket_lines(const WaterDesk& desk) {
  const RecipeCard& card = desk.card();
  std::vector<std::string> lines;
  if (card.way.buckets.size() < 2) return lines;
  int first = 1;
  for (const Bucket& bucket : card.way.buckets) {
    const int last = first + bucket.changes - 1;
    double fraction = card.fraction;
    for (int i = first - 1; i < last && i < static_cast<int>(card.way.steps.size()); ++i)
      fraction = std::min(fraction, card.way.steps[static_cast<std::size_t>(i)].fraction);
    const double litres = card.fraction > 0 ? card.for_l * fraction / card.fraction : card.for_l;
    const double ro = bucket.recipe.ro_fraction.value_or(0) * litres;
    std::string line = bucket.changes == 1 ? "Change " + std::to_string(first) + ": "
                                           : "Changes " + std::to_string(first) + " to " + std::to_string(last) + ": ";
    line += (ro > 0.05 ? desk.litres(ro) + " RO, " : std::string()) + desk.litres(litres - ro) + " tap";
    const std::vector<double> grams = weighed_g(bucket.recipe.salts, litres);
    for (std::size_t i = 0; i < grams.size(); ++i)
      if (grams[i] > 0) line += ", " + amount(grams[i], 3, "g") + " " + short_name(*bucket.recipe.salts[i].salt);
    lines.push_back(line + ".");
    first = last + 1;
  }
  return lines;
}

}  // namespace

int first_day(const WaterDesk& desk) {
  const int today = day_number(platform::today()).value_or(0);
  return std::max(today, day_number(desk.look.plan.start).value_or(today));
}

void draw_way(WaterDesk& desk, Stack& stack) {
  const RecipeCard& card = desk.card();
  const std::optional<Measured>& measured = desk.look.plan.measured;
  const bool tested = measured && (measured->gh_dgh || measured->kh_dkh);
  part_heading(desk, stack, "Getting there", tested ? "from what the tank reads" : "from a tank filled from the tap");
  stack.skip(4);
  const float top = stack.y();
  if (!card.way.steps.empty()) draw_chart(desk, stack);
  const std::string words = way_words(desk);
  part_note(desk, stack, words);
  add_spot(desk.ui, "water_sheet.way", {stack.box.x, top, stack.box.w, stack.y() - top}, "Getting there: " + words);
  draw_days(desk, stack);
  for (const std::string& line : bucket_lines(desk)) part_note(desk, stack, line);
  const TapSwing& swing = card.recipe.swing;
  if (swing.gh_dgh && swing.kh_dkh)
    part_note(desk, stack,
              retold(desk.look.measures, "With a tap " + percent(tap_swing_share) + " off the same bucket has GH " +
                                             span_of(swing.gh_dgh->low, swing.gh_dgh->high, 1, "") + " and KH " +
                                             span_of(swing.kh_dkh->low, swing.kh_dkh->high, 1, "°dH") + "."));
  if (card.ro_l_week && *card.ro_l_week > 0) {
    const Measures& measures = desk.look.measures;
    const auto week = [&](double per_litre) { return measures.volume_out(*card.ro_l_week * per_litre); };
    part_note(desk, stack,
              "RO water: " + desk.litres(*card.ro_l_week) + " a week, " + rough_volume(desk.look.measures, *card.ro_l_year) +
                  " a year. Making it sends about " +
                  span_of(week(ro_reject_l_per_l.low), week(ro_reject_l_per_l.high), 0, measures.volume_unit()) +
                  " a week to the drain.");
  }
  stack.skip(10);
}

}  // namespace shoalwright
