// SPDX-License-Identifier: MIT
#include "draw/chips.h"

#include <cmath>
#include <string>

#include "draw/icons.h"

namespace shoalwright {
namespace {

constexpr float height = 26, gap = 5, switch_w = 24;

Pen bare_pen(const Ui& ui) { return {nullptr, ui.palette, ui.faces, ui.device_scale}; }
float words_width(const Ui& ui, std::string_view words) {
  return std::ceil(text_width(bare_pen(ui), medium(type::small), words));
}

void draw_ground(Ui& ui, const Pen& pen, std::string_view id, const Box& box, bool on, bool over, ImDrawFlags corners = 0) {
  const Palette& p = *ui.palette;
  const float lit = eased(ui, id, on ? 1.0f : over ? 0.45f : 0.0f, 90);
  draw_panel(pen, box, scale_alpha(p.actSoft, lit), on ? p.act : p.edge, 4, corners);
}

}  // namespace

float chip_width(const Ui& ui, std::string_view words, const ChipLook& look) {
  return (look.tight ? 16.0f : 20.0f) + words_width(ui, words) + (look.mark ? 14 + gap : 0) + (look.chevron ? 12 + gap : 0);
}

bool chip(Ui& ui, std::string_view id, ImVec2 at, std::string_view words, bool on, const ChipLook& look) {
  const Box box{at.x, at.y, chip_width(ui, words, look), height};
  const ItemLook item_look;
  const Item of = item(ui, id, box, words, item_look);
  const Pen pen = pen_of(ui);
  draw_ground(ui, pen, id, box, on, of.hovered);
  const ImU32 ink = on ? ui.palette->ink : ui.palette->ink2;
  float x = snapped(pen, box.x + (look.tight ? 8.0f : 10.0f));
  if (look.mark) {
    draw_fit(pen, *look.mark, {x, box.y + 6});
    x += 14 + gap;
  }
  x += words_width(ui, words);
  draw_text(pen, medium(type::small), {x - words_width(ui, words), box.y + 5}, ink, words);
  if (look.chevron) draw_icon(pen, Icon::chevron, {x + gap, box.y + 7}, 12, ink);
  if (of.ring) draw_ring(ui, box, item_look);
  return of.pressed;
}

float switch_width(const Ui& ui, std::string_view words) { return 20 + switch_w + gap + words_width(ui, words); }

bool switch_chip(Ui& ui, std::string_view id, ImVec2 at, std::string_view words, bool on) {
  const Box box{at.x, at.y, switch_width(ui, words), height};
  const ItemLook item_look;
  const Item of = item(ui, id, box, words, item_look);
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  draw_ground(ui, pen, id, box, on, of.hovered);
  const float slid = eased(ui, std::string(id) + "/knob", on ? 1.0f : 0.0f, 90);
  const Box track{snapped(pen, box.x + 10), snapped(pen, box.y + 6), switch_w, 14};
  draw_panel(pen, track, on ? p.act : 0, on ? p.act : p.edge, 7, 0, 1.4f);
  pen.dl->AddCircleFilled({track.x + 7 + 10 * slid, track.y + 7}, 4, on ? p.onAct : p.edge);
  draw_text(pen, medium(type::small), {track.right() + gap, box.y + 5}, on ? p.ink : p.ink2, words);
  if (of.ring) draw_ring(ui, box, item_look);
  return of.pressed;
}

float segments_width(const Ui& ui, std::span<const std::string_view> words) {
  float w = 1;
  for (const std::string_view& word : words) w += 19 + words_width(ui, word);
  return w;
}

int segments(Ui& ui, std::string_view id, ImVec2 at, std::span<const std::string_view> words, std::span<const bool> on,
             float width) {
  const Pen pen = pen_of(ui);
  const size_t count = words.size();
  int pressed = -1;
  int ringed = -1;
  std::vector<Box> boxes;
  std::vector<Item> items;
  float x = at.x;
  for (size_t i = 0; i < count; ++i) {
    // Neighbours share a border, so each box reaches one pixel into the next.
    const float right = width > 0 ? at.x + (width - 1) * static_cast<float>(i + 1) / static_cast<float>(count)
                                  : x + 19 + words_width(ui, words[i]);
    const Box box{snapped(pen, x), at.y, snapped(pen, right) + 1 - snapped(pen, x), height};
    boxes.push_back(box);
    Box hit = box;
    if (i + 1 < count) hit.w -= 1;
    items.push_back(item(ui, std::string(id) + "/" + std::to_string(i), hit, words[i], {.exact_across = true}));
    if (items.back().pressed) pressed = static_cast<int>(i);
    if (items.back().ring) ringed = static_cast<int>(i);
    x = right;
  }
  for (const bool lit : {false, true}) {
    for (size_t i = 0; i < count; ++i) {
      if (on[i] != lit) continue;
      const ImDrawFlags corners = count == 1       ? ImDrawFlags_RoundCornersAll
                                  : i == 0         ? ImDrawFlags_RoundCornersLeft
                                  : i + 1 == count ? ImDrawFlags_RoundCornersRight
                                                   : ImDrawFlags_RoundCornersNone;
      draw_ground(ui, pen, std::string(id) + "/" + std::to_string(i), boxes[i], lit, items[i].hovered, corners);
      draw_text(pen, medium(type::small), {boxes[i].x + boxes[i].w / 2, boxes[i].y + 5}, lit ? ui.palette->ink : ui.palette->ink2,
                words[i], Align::centre);
    }
  }
  if (ringed >= 0) draw_ring(ui, boxes[static_cast<size_t>(ringed)], {});
  return pressed;
}

int one_of(Ui& ui, std::string_view id, ImVec2 at, std::span<const std::string_view> words, int chosen, float width) {
  constexpr size_t most = 12;
  bool on[most] = {};
  const size_t count = std::min(most, words.size());
  if (chosen >= 0 && static_cast<size_t>(chosen) < count) on[chosen] = true;
  return segments(ui, id, at, words.first(count), {on, count}, width);
}

}  // namespace shoalwright
