// SPDX-License-Identifier: MIT
#include "draw/rulers.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "draw/geometry.h"

namespace shoalwright {
namespace {

/// Pixels for a share of the width; 0 for what is no number.
float part(double value, double most, float width) {
  const double share = value / most;
  return share > 0 ? static_cast<float>(std::min(1.0, share)) * width : 0.0f;
}

}  // namespace

void draw_ruler(Ui& ui, std::string_view id, ImVec2 at, float width, const Ruler& r) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const std::string name(id);
  const float x = snapped(pen, at.x), y = snapped(pen, at.y + 9);
  const float wanted = eased(ui, name + "/wanted", part(r.wanted, r.most, width));
  const float open = eased(ui, name + "/open", part(r.there_is, r.most, width));
  const bool over = r.wanted > r.there_is;
  const ImU32 bar = r.bar ? r.bar : p.ink2, past = r.quiet ? p.ink : p.call;
  pen.dl->AddRectFilled({x, y - 5}, {x + width, y + 5}, p.sunk, 1);
  pen.dl->AddRectFilled({x, y - 5}, {x + open, y + 5}, p.band, 1);
  pen.dl->AddRectFilled({x, y - 2.5f}, {x + std::min(wanted, open), y + 2.5f}, bar);
  if (over) draw_hatching(pen, {x + open, y - 5, wanted - open, 10}, past);
  pen.dl->AddRectFilled({snapped(pen, x + open) - 1, y - 8}, {snapped(pen, x + open) + 1, y + 8}, p.bandEdge);
  draw_dimension(pen, {x + std::min(wanted, open), y}, {x + std::max(wanted, open), y}, over ? past : p.ink, 1.3f);
  if (r.wanted_now) {
    const float was = x + part(*r.wanted_now, r.most, width);
    const ImVec2 line[] = {{was, y - 7}, {was, y + 7}};
    dashed_line(pen.dl, line, dash_aim(), p.ink, 1.3f);
  }
}

float ruler_row(Ui& ui, std::string_view id, ImVec2 at, float width, const RulerRow& row) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const bool called = row.ruler.wanted > row.ruler.there_is && row.grade && loud(*row.grade);
  float right = at.x + width;
  right -= draw_text(pen, semibold(type::small), {right, at.y}, called ? p.call : p.ink, row.spare, Align::right);
  if (row.grade) {
    draw_grade(pen, *row.grade, {right - 12, at.y + 8}, 12);
    right -= 18;
  }
  const float x = at.x + draw_text(pen, medium(type::small), at, p.ink, row.name) + 4;
  draw_text(pen, type::small, {x, at.y}, p.ink2, elided(pen, type::small, row.detail, right - x - 8));
  draw_ruler(ui, id, {at.x, at.y + 16}, width, row.ruler);
  add_spot(ui, id, {at.x, at.y, width, 35},
           std::string(row.name) + " " + std::string(row.detail) + ": " + std::string(row.spare));
  return 37;
}

float limit_bar(Ui& ui, std::string_view id, ImVec2 at, float width, const LimitBar& bar) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  constexpr double limit_at = 0.7;
  const bool over = bar.value > bar.limit_value;
  const float x = snapped(pen, at.x), y = snapped(pen, at.y + 16), limit = snapped(pen, x + width * static_cast<float>(limit_at));
  draw_text(pen, medium(type::small), at, p.ink, bar.name);
  draw_text(pen, type::small, {at.x + width, at.y}, over ? p.call : p.ink, bar.said, Align::right);
  pen.dl->AddRectFilled({x, y + 4}, {x + width, y + 9}, p.sunk);
  pen.dl->AddRectFilled({x, y + 4}, {limit, y + 9}, p.band);
  pen.dl->AddRectFilled({limit - 1, y + 1}, {limit + 1, y + 12}, p.bandEdge);
  const float marker = eased(ui, id, part(bar.value, bar.limit_value / limit_at, width - 3)) + x;
  if (over) draw_hatching(pen, {limit + 1, y + 3, marker - limit - 1, 7}, p.call);
  pen.dl->AddRectFilled({marker, y}, {marker + 3, y + 12}, over ? p.call : p.ink);
  draw_text(pen, type::axis, {at.x, at.y + 28}, p.ink2, bar.limit);
  add_spot(ui, id, {at.x, at.y, width, 42}, std::string(bar.name) + ": " + std::string(bar.said) + ", " + std::string(bar.limit));
  return 42;
}

int group_rule(Ui& ui, std::string_view id, ImVec2 at, float width, const GroupRule& rule, std::string_view label) {
  const int most = std::max({rule.most, 2, rule.good, rule.least});
  const Box box{at.x, at.y, width, 24};
  const Item of = item(ui, id, box, std::string(label) + ", " + std::to_string(rule.size), {});
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const auto x_of = [&](float n) { return at.x + 8 + (n - 1) / static_cast<float>(most - 1) * (width - 16); };
  const float y = snapped(pen, at.y + 12);
  int size = rule.size;
  if (of.held && ImGui::IsMouseDown(ImGuiMouseButton_Left)) {
    const float share = (ImGui::GetIO().MousePos.x - at.x - 8) / (width - 16);
    size = std::clamp(1 + static_cast<int>(std::lround(share * static_cast<float>(most - 1))), 1, most);
  } else if (of.focused) {
    size = std::max(1, rule.size + typed_step());
  }
  pen.dl->AddLine({x_of(1), y}, {x_of(static_cast<float>(most)), y}, p.edge, 1.2f);
  // More than about one tick in 5 px would run together.
  const int every = std::max(1, static_cast<int>(std::ceil(5.0f * static_cast<float>(most - 1) / (width - 16))));
  for (int i = 1; i <= most; ++i) {
    const bool named = i == rule.least || i == rule.good;
    if (!named && (i - 1) % every != 0) continue;
    const float x = snapped(pen, x_of(static_cast<float>(i))), w = named ? 2.0f : 1.0f;
    pen.dl->AddRectFilled({x - w / 2, y - (named ? 7.0f : 3.0f)}, {x + w / 2, y + (named ? 7.0f : 3.0f)}, named ? p.ink : p.edge);
  }
  pen.dl->AddRectFilled({x_of(static_cast<float>(rule.good)), y - 2}, {x_of(static_cast<float>(most)), y + 2}, p.bandEdge);
  const ImVec2 knob{x_of(eased(ui, id, static_cast<float>(std::min(size, most)), 90)), y};
  pen.dl->AddCircleFilled(knob, 8.5f, p.raised);
  pen.dl->AddCircleFilled(knob, 6.5f, p.act);
  if (of.ring) {
    pen.dl->PathArcTo(knob, 11.5f, 0, 6.2831853f, 32);
    pen.dl->PathStroke(p.focus, ImDrawFlags_Closed, 2);
  }
  const std::string least = "least " + std::to_string(rule.least);
  const std::string good = rule.good_words.empty() ? "good from " + std::to_string(rule.good) : std::string(rule.good_words);
  if (rule.least == rule.good) {
    draw_text(pen, type::axis, {x_of(static_cast<float>(rule.good)), at.y + 22}, p.ink2, good,
              rule.good > most / 2 ? Align::right : Align::left);
    return size;
  }
  // The two stand apart where there is room: least ends at its tick's right, good begins at its own.
  const float good_w = text_width(pen, type::axis, good), least_w = text_width(pen, type::axis, least);
  const float good_x = std::min(x_of(static_cast<float>(rule.good)) + 4, at.x + width - good_w);
  const float least_right = std::min(x_of(static_cast<float>(rule.least)) + least_w / 2, good_x - 8);
  draw_text(pen, type::axis, {std::max(at.x + least_w, least_right), at.y + 22}, p.ink2, least, Align::right);
  draw_text(pen, type::axis, {good_x, at.y + 22}, p.ink2, good);
  return size;
}

}  // namespace shoalwright
