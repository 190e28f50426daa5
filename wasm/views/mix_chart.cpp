// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <vector>

#include "draw/fields.h"
#include "draw/geometry.h"
#include "draw/marks.h"
#include "units/text.h"
#include "views/mix_chart.h"

namespace shoalwright {

namespace {

constexpr double range_without_end_dh = 1e3;  // of a kind that says nothing about one of the two

std::string figure(double value) { return short_text(value, 1); }

/// A round step so that no more than six fit.
double step_for(double most) {
  constexpr double steps[] = {0.2, 0.5, 1, 2, 4, 5, 10, 20, 50, 100, 200};
  for (const double step : steps)
    if (most / step <= 6) return step;
  return 500;
}

MixMarks marks_of(const WaterWork& work) {
  MixMarks marks;
  const SourceWater& tap = work.plan.source;
  const Recipe& recipe = work.card.recipe;
  if (!(tap.gh_dgh && tap.kh_dkh && recipe.ro_fraction)) return marks;
  marks.tap = {*tap.gh_dgh, *tap.kh_dkh};
  const double share = 1 - *recipe.ro_fraction;
  marks.mix = {share * *tap.gh_dgh, share * *tap.kh_dkh};
  marks.reached = {work.card.weighed.gh_dgh.value_or(marks.mix->gh_dgh), work.card.weighed.kh_dkh.value_or(marks.mix->kh_dkh)};
  // Where nothing is aimed at, what is reached is what was wanted.
  marks.aim = {work.card.aim.gh_dgh.aim.value_or(marks.reached->gh_dgh),
               work.card.aim.kh_dkh.aim.value_or(marks.reached->kh_dkh)};
  return marks;
}

/// Ends of the axes: everything that counts with some air, of the kinds' ranges as much as has room beside it.
void set_ends(WaterSheetState& mine, const WaterWork& work, const MixMarks& marks) {
  const auto end = [&](double least, const Window& window, Need Species::WaterNeeds::*need, double HardnessPoint::*axis) {
    double base = least;
    for (const std::optional<HardnessPoint>& mark : {marks.tap, marks.aim, marks.reached})
      if (mark) base = std::max(base, (*mark).*axis);
    if (window.tolerated) base = std::max(base, window.tolerated->high);
    double widest = 0;
    for (const Kept& kept : work.stock)
      if (kept.species != nullptr && (kept.species->water.*need).tolerated)
        widest = std::max(widest, (kept.species->water.*need).tolerated->high);
    const double most = std::clamp(widest * 1.04, base * 1.15, base * 1.6), step = step_for(most);
    return std::ceil(most / step - 1e-9) * step;
  };
  mine.most_gh = end(8, work.windows.gh_dgh, &Species::WaterNeeds::gh_dgh, &HardnessPoint::gh_dgh);
  mine.most_kh = end(5, work.windows.kh_dkh, &Species::WaterNeeds::kh_dkh, &HardnessPoint::kh_dkh);
}

void draw_grid(const Pen& pen, const MixPlot& plot, const Measures& m) {
  const Palette& p = *pen.palette;
  draw_panel(pen, plot.box, p.sunk, 0, 0);
  const double most_gh = m.hardness_out(plot.most_gh, Hardness::gh), most_kh = m.hardness_out(plot.most_kh, Hardness::kh);
  const double gh_step = step_for(most_gh), kh_step = step_for(most_kh);
  for (double gh = 0; gh <= most_gh + 1e-9; gh += gh_step) {
    const float y = plot.at({m.hardness_back(gh, Hardness::gh), 0}).y;
    draw_rule(pen, plot.box.x, y, plot.box.right(), p.line);
    draw_text_on(pen, type::axis, {plot.box.x - 6, y + 4}, p.ink2, figure(gh), Align::right);
  }
  for (double kh = 0; kh <= most_kh + 1e-9; kh += kh_step) {
    const float x = plot.at({0, m.hardness_back(kh, Hardness::kh)}).x;
    draw_rule_down(pen, x, plot.box.y, plot.box.bottom(), p.line);
    draw_text_on(pen, type::axis, {x, plot.box.bottom() + 14}, p.ink2, figure(kh), Align::centre);
  }
  draw_text_on(pen, type::small, {plot.box.x - 22, plot.box.y - 7}, p.ink, "GH, " + std::string(m.hardness_unit(Hardness::gh)));
  draw_text_on(pen, type::small, {plot.box.right(), plot.box.bottom() + 30}, p.ink,
               "KH, " + std::string(m.hardness_unit(Hardness::kh)), Align::right);
}

/// The corner of a range in pixels, moved in by a little for each kind, so that equal edges lie side by side.
struct KindBox {
  ImVec2 from, to;
  int number = 1;
};

std::vector<KindBox> kind_boxes(const WaterWork& work, const MixPlot& plot) {
  std::vector<KindBox> boxes;
  int number = 0;
  for (const Kept& kept : work.stock) {
    ++number;
    if (kept.species == nullptr) continue;
    const std::optional<Range>&gh = kept.species->water.gh_dgh.tolerated, &kh = kept.species->water.kh_dkh.tolerated;
    if (!gh && !kh) continue;
    const Range all{0, range_without_end_dh}, up = gh.value_or(all), across = kh.value_or(all);
    ImVec2 from = plot.at({up.high, across.low}), to = plot.at({up.low, across.high});
    const float in = 1.6f * static_cast<float>((number - 1) % 6);
    if (to.x - from.x > 4 * in + 4 && to.y - from.y > 4 * in + 4) from.x += in, from.y += in, to.x -= in, to.y -= in;
    boxes.push_back({from, to, number});
  }
  return boxes;
}

void draw_kinds(const Pen& pen, const std::vector<KindBox>& boxes, const MixPlot& plot) {
  pen.dl->PushClipRect({plot.box.x - 1, plot.box.y - 1}, {plot.box.right() + 1, plot.box.bottom() + 1}, true);
  for (const KindBox& box : boxes) {
    // Not beyond the picture, or thousands of dashes would be drawn out of sight.
    const ImVec2 from{std::max(box.from.x, plot.box.x - 4), std::max(box.from.y, plot.box.y - 4)};
    const ImVec2 to{std::min(box.to.x, plot.box.right() + 4), std::min(box.to.y, plot.box.bottom() + 4)};
    if (to.x > from.x && to.y > from.y)
      dashed_rect(pen.dl, from, to, key_dash(box.number), key_colour(*pen.palette, box.number), 1.6f);
  }
  pen.dl->PopClipRect();
}

/// Numbers on the edges: each on one that is in the picture, clear of those before.
void draw_numbers(const Pen& pen, const std::vector<KindBox>& boxes, const MixPlot& plot, std::vector<Box>& taken) {
  constexpr float r = 8;
  for (const KindBox& box : boxes) {
    const float x0 = std::max(box.from.x, plot.box.x), x1 = std::min(box.to.x, plot.box.right());
    const float y0 = std::max(box.from.y, plot.box.y), y1 = std::min(box.to.y, plot.box.bottom());
    std::vector<ImVec2> places;
    for (const float share : {0.9f, 0.75f, 0.6f, 0.45f, 0.3f, 0.15f}) {
      if (box.from.y >= plot.box.y) places.push_back({x0 + (x1 - x0) * share, box.from.y});
      if (box.to.x <= plot.box.right()) places.push_back({box.to.x, y0 + (y1 - y0) * (1 - share)});
      if (box.to.y <= plot.box.bottom() - 4) places.push_back({x0 + (x1 - x0) * share, box.to.y});
      if (box.from.x >= plot.box.x + 4) places.push_back({box.from.x, y0 + (y1 - y0) * (1 - share)});
    }
    if (places.empty()) places.push_back({x1 - 12, y0 + 12 + 20 * static_cast<float>(box.number)});
    ImVec2 at = places.front();
    for (const ImVec2& place : places) {
      const Box disc{place.x - r - 1, place.y - r - 1, 2 * r + 2, 2 * r + 2};
      const bool hit = std::any_of(taken.begin(), taken.end(), [&](const Box& other) {
        return disc.x < other.right() && disc.right() > other.x && disc.y < other.bottom() && disc.bottom() > other.y;
      });
      if (hit) continue;
      at = place;
      break;
    }
    draw_plate(pen, box.number, at, r);
    taken.push_back({at.x - r - 1, at.y - r - 1, 2 * r + 2, 2 * r + 2});
  }
}

/// A tip beside a point where it covers nothing: right, left, above, below, then further away.
void draw_tip_beside(const Pen& pen, ImVec2 point, std::string_view text, ImU32 border, const Box& within,
                     std::vector<Box>& taken) {
  const float w = std::ceil(text_width(pen, medium(type::small), text)) + 14;
  constexpr float h = 20, near = 13;
  Box best{point.x + near, point.y - h / 2, w, h};
  const auto covers = [&](const Box& tip) {
    float area = 0;
    for (const Box& other : taken) {
      const float across = std::min(tip.right(), other.right()) - std::max(tip.x, other.x);
      const float down = std::min(tip.bottom(), other.bottom()) - std::max(tip.y, other.y);
      if (across > 0 && down > 0) area += across * down;
    }
    return area;
  };
  float least = -1;
  for (const float far : {0.0f, 16.0f, 34.0f, 56.0f})
    for (const ImVec2& place :
         {ImVec2{point.x + near, point.y - h / 2 - far}, ImVec2{point.x + near, point.y - h / 2 + far},
          ImVec2{point.x - near - w, point.y - h / 2 - far}, ImVec2{point.x - near - w, point.y - h / 2 + far},
          ImVec2{point.x - w / 2, point.y - near - h - far}, ImVec2{point.x - w / 2, point.y + near + far}}) {
      const Box tip{std::clamp(place.x, within.x, std::max(within.x, within.right() - w)),
                    std::clamp(place.y, within.y, std::max(within.y, within.bottom() - h)), w, h};
      const float area = covers(tip);
      if (least >= 0 && area >= least) continue;
      least = area;
      best = tip;
    }
  taken.push_back(draw_tip(pen, best.min(), text, border, pen.palette->ink));
}

void draw_shared(const Pen& pen, const WaterWork& work, const MixPlot& plot) {
  const std::optional<Range>&gh = work.windows.gh_dgh.tolerated, &kh = work.windows.kh_dkh.tolerated;
  if (!gh || !kh) return;
  const ImVec2 from = plot.at({std::min(gh->high, plot.most_gh), kh->low}),
               to = plot.at({gh->low, std::min(kh->high, plot.most_kh)});
  pen.dl->AddRectFilled(from, to, pen.palette->band);
  pen.dl->AddRect(from, to, pen.palette->bandEdge, 0, 0, 2.2f);
}

void name_shared(const Pen& pen, const WaterWork& work, const MixPlot& plot, std::vector<Box>& taken) {
  const std::optional<Range>&gh = work.windows.gh_dgh.tolerated, &kh = work.windows.kh_dkh.tolerated;
  if (!gh || !kh) return;
  const ImVec2 from = plot.at({std::min(gh->high, plot.most_gh), kh->low}),
               to = plot.at({gh->low, std::min(kh->high, plot.most_kh)});
  const std::string words = work.stock.size() == 1 ? "suits it" : "suits all";
  const Type t = semibold(type::small);
  const float w = text_width(pen, t, words);
  if (!(to.x - from.x > w + 24 && to.y - from.y > 30)) {
    draw_tip_beside(pen, {(from.x + to.x) / 2, (from.y + to.y) / 2}, words, pen.palette->bandEdge, plot.box, taken);
    return;
  }
  const ImVec2 at{from.x + 14, from.y + 10};
  draw_text(pen, t, at, pen.palette->ink, words);
  taken.push_back({at.x - 2, at.y - 2, w + 4, 20});
}

/// From pure reverse-osmosis water to pure tap, a stroke at each tenth.
void draw_line(const Pen& pen, const MixPlot& plot, const HardnessPoint& tap) {
  const ImVec2 a = plot.at({0, 0}), b = plot.at(tap);
  pen.dl->AddLine(a, b, pen.palette->ink, 1.4f);
  const Vec along = unit({b.x - a.x, b.y - a.y});
  for (int i = 1; i < 10; ++i) {
    const ImVec2 at{a.x + (b.x - a.x) * static_cast<float>(i) / 10, a.y + (b.y - a.y) * static_cast<float>(i) / 10};
    pen.dl->AddLine({at.x - along.y * 4, at.y + along.x * 4}, {at.x + along.y * 4, at.y - along.x * 4}, pen.palette->ink, 1.2f);
  }
  pen.dl->AddRectFilled({a.x - 5, a.y - 5}, {a.x + 5, a.y + 5}, pen.palette->raised);
  pen.dl->AddRect({a.x - 5, a.y - 5}, {a.x + 5, a.y + 5}, pen.palette->ink, 0, 0, 1.6f);
}

/// What the minerals do: an arrow from the mix to what is reached. It ends short of the mark there.
void draw_minerals(const Pen& pen, ImVec2 a, ImVec2 b) {
  const float far = length({b.x - a.x, b.y - a.y});
  if (far < 12) return;
  const Vec along = unit({b.x - a.x, b.y - a.y});
  const ImU32 ink = pen.palette->act;
  const ImVec2 from{a.x + along.x * 6, a.y + along.y * 6}, tip{b.x - along.x * 7, b.y - along.y * 7};
  pen.dl->AddLine(from, {tip.x - along.x * 4, tip.y - along.y * 4}, ink, 3);
  pen.dl->AddTriangleFilled(tip, {tip.x - along.x * 7 - along.y * 5, tip.y - along.y * 7 + along.x * 5},
                            {tip.x - along.x * 7 + along.y * 5, tip.y - along.y * 7 - along.x * 5}, ink);
}

std::string minerals_words(const MixMarks& marks, const Measures& m) {
  std::string words;
  const double gh = marks.reached->gh_dgh - marks.mix->gh_dgh, kh = marks.reached->kh_dkh - marks.mix->kh_dkh;
  if (gh > 0.04) words += "GH +" + m.hardness_figure(gh, Hardness::gh);
  if (kh > 0.04) words += (words.empty() ? "KH +" : ", KH +") + m.hardness_figure(kh, Hardness::kh);
  return words.empty() ? "" : "salts " + words;
}

/// Which kinds share no GH or no KH; empty where some water suits all.
std::string no_window(const WaterDesk& desk) {
  std::string words;
  for (const BarQuantity& q : bar_quantities().subspan(2))
    if (const std::string apart = no_window_words(desk.work, q, desk.look.measures); !apart.empty())
      words += (words.empty() ? "" : " ") + ("No shared " + std::string(q.name) + ": " + apart + ".");
  return words;
}

std::string summary(const WaterDesk& desk, const MixMarks& marks) {
  const RecipeCard& card = desk.card();
  if (!marks.tap) return "Hardness of the mix: the tap's GH and KH are not both known";
  return "How the mix lands: tap " + point_words(desk.look.measures, *marks.tap) + "; " + desk.litres(*card.ro_l) + " RO and " +
         desk.litres(*card.tap_l) + " tap give " + point_words(desk.look.measures, *marks.reached) + "; aim " +
         point_words(desk.look.measures, *marks.aim);
}

}  // namespace

std::string point_words(const Measures& m, const HardnessPoint& at) {
  return "GH " + m.hardness_figure(at.gh_dgh, Hardness::gh) + ", KH " + m.hardness_figure(at.kh_dkh, Hardness::kh);
}

void draw_mix_chart(WaterDesk& desk, Stack& stack) {
  Ui& ui = desk.ui;
  const WaterWork& work = desk.work;
  WaterSheetState& mine = desk.mine;
  const MixMarks marks = marks_of(work);
  const std::string tenth = desk.litres(work.card.for_l / 10);
  part_heading(desk, stack, "How the mix lands",
               marks.tap ? "one tick along the line is " + tenth + " of tap in " + desk.litres(work.card.for_l) : "",
               marks.tap ? "a tick: " + tenth + " tap" : "");
  const std::string apart = no_window(desk);
  if (!apart.empty()) part_note(desk, stack, apart);
  if (mine.in_hand.empty()) set_ends(mine, work, marks);
  const float side = std::clamp(stack.box.w * 0.80f, 240.0f, 470.0f);
  const Box whole = stack.take(side, 8);
  const MixPlot plot{{whole.x + 30, whole.y + 26, whole.w - 46, whole.h - 26 - 36}, mine.most_gh, mine.most_kh};
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  draw_grid(pen, plot, desk.look.measures);
  draw_shared(pen, work, plot);
  const std::vector<KindBox> boxes = kind_boxes(work, plot);
  draw_kinds(pen, boxes, plot);
  std::vector<Box> taken;
  const auto take = [&](ImVec2 at) { taken.push_back({at.x - 10, at.y - 10, 20, 20}); };
  name_shared(pen, work, plot, taken);
  add_spot(ui, "water_sheet.chart", whole, summary(desk, marks) + (apart.empty() ? "" : ". " + apart));
  if (!marks.tap) {
    draw_numbers(pen, boxes, plot, taken);
    part_note(desk, stack, "Where the tap lies is not known: enter its GH and KH.");
    mine.in_hand.clear();
    return;
  }
  const ImVec2 tap = plot.at(*marks.tap), mix = plot.at(*marks.mix), reached = plot.at(*marks.reached), aim = plot.at(*marks.aim);
  for (const ImVec2& at : {plot.at({0, 0}), tap, mix, aim}) take(at);
  draw_numbers(pen, boxes, plot, taken);
  draw_line(pen, plot, *marks.tap);
  draw_minerals(pen, mix, reached);
  const bool missed = length({aim.x - reached.x, aim.y - reached.y}) > 8;
  if (missed) {
    // The aim is not met: from what is reached a broken line leads on.
    const ImVec2 rest[] = {reached, aim};
    dashed_line(pen.dl, rest, dash_aim(), p.ink2, 1.2f);
    pen.dl->AddCircleFilled(reached, 3.5f, p.act);
    take(reached);
  }
  draw_filled_diamond(pen, tap, 8, p.ink);
  pen.dl->AddCircleFilled(mix, 6, p.raised);
  pen.dl->AddCircle(mix, 6, p.ink, 0, 2);
  draw_open_diamond(pen, aim, 8, p.raised, p.ink, 1.8f);

  draw_mix_hands(desk, plot, marks);

  const Box within{whole.x, whole.y + 18, whole.w, whole.h - 40};
  const RecipeCard& card = work.card;
  draw_tip_beside(pen, mix, desk.litres(*card.ro_l) + " RO, " + desk.litres(*card.tap_l) + " tap", p.edge, within, taken);
  draw_tip_beside(pen, aim, "aim " + point_words(desk.look.measures, *marks.aim), p.edge, within, taken);
  if (missed) draw_tip_beside(pen, reached, "comes to " + point_words(desk.look.measures, *marks.reached), p.edge, within, taken);
  draw_tip_beside(pen, tap, "tap " + point_words(desk.look.measures, *marks.tap), p.edge, within, taken);
  const std::string salts = minerals_words(marks, desk.look.measures);
  if (!salts.empty() && length({reached.x - mix.x, reached.y - mix.y}) >= 12)
    draw_tip_beside(pen, {(mix.x + reached.x) / 2, (mix.y + reached.y) / 2}, salts, p.act, within, taken);
  draw_tip_beside(pen, plot.at({0, 0}), "RO", p.edge, within, taken);
}

}  // namespace shoalwright
