// SPDX-License-Identifier: MIT
#include "draw/findings.h"

#include <algorithm>
#include <string>

#include "platform/platform.h"

namespace shoalwright {
namespace {

constexpr float indent = 23;  ///< diamond of 14 and a gap of 9

struct Parts {
  float heading_x = 0;  ///< from the left of the words
  float heading_h = 0;
  float sentences_h = 0;
  float buttons_h = 0;
  float why_h = 0;
  bool heading_below = false;
};

ButtonLook look_of(size_t i) { return {.kind = i == 0 ? ButtonKind::remedy : ButtonKind::quiet, .small = true}; }

const char* know_words(const FindingCard& card) { return card.known ? "Remind me" : "I know"; }

Flow flow_at(float x, float y, float width, const FindingCard& card) {
  // A quiet button that comes first stands with its words, not its air, at the edge of the text.
  const float shift = card.remedies.empty() ? -10.0f : 0.0f;
  return {.x = x + shift, .y = y, .width = width - shift};
}

Parts measure(const Ui& ui, float width, const FindingCard& card) {
  const Pen pen{nullptr, ui.palette, ui.faces, ui.device_scale};
  const float room = width - indent;
  Parts m;
  m.heading_x =
      text_width(pen, semibold(type::body), grade_word(card.severity)) + static_cast<float>(card.numbers.size()) * 22 + 8;
  m.heading_below = m.heading_x + text_width(pen, medium(type::body), card.heading) > room;
  m.heading_h = m.heading_below ? wrapped_height(pen, medium(type::body), card.heading, room) : 0;
  m.sentences_h = wrapped_height(pen, type::small, card.sentences, room);
  Flow flow = flow_at(0, 0, room, card);
  for (size_t i = 0; i < card.remedies.size(); ++i) flow.take(button_width(ui, card.remedies[i], look_of(i)));
  if (!card.why.empty()) flow.take(button_width(ui, "Why", look_of(1)));
  if (card.can_know) flow.take(button_width(ui, know_words(card), look_of(1)));
  m.buttons_h = flow.height();
  m.why_h = card.why_open && !card.why.empty() ? wrapped_height(pen, type::small, card.why, room - 10) + 8 : 0;
  return m;
}

float height_of(const Parts& m) { return 9 + 18 + m.heading_h + 1 + m.sentences_h + 5 + m.buttons_h + m.why_h + 8; }

}  // namespace

float finding_height(const Ui& ui, float width, const FindingCard& card) { return height_of(measure(ui, width, card)); }

float finding(Ui& ui, std::string_view id, ImVec2 at, float width, const FindingCard& card, FindingAnswer& answer) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const Parts m = measure(ui, width, card);
  const std::string name(id);
  const float x = at.x + indent, room = width - indent;
  float y = at.y + 9;
  draw_rule(pen, at.x, at.y, at.x + width, p.line);
  draw_grade(pen, card.severity, {at.x + 7, y + 9});
  const ImU32 head_ink = card.known ? p.ink3 : p.ink;
  float plate_x =
      x + draw_text(pen, semibold(type::body), {x, y}, loud(card.severity) ? p.call : head_ink, grade_word(card.severity)) + 6;
  for (const int number : card.numbers) {
    draw_plate(pen, number, {snapped(pen, plate_x) + 8, y + 9});
    plate_x += 22;
  }
  if (m.heading_below) {
    y += 18;
    draw_wrapped(pen, medium(type::body), {x, y}, room, head_ink, card.heading);
    y += m.heading_h;
  } else {
    draw_text(pen, medium(type::body), {x + m.heading_x, y}, head_ink, card.heading);
    y += 18;
  }
  draw_wrapped(pen, type::small, {x, y + 1}, room, card.known ? p.ink3 : p.ink2, card.sentences);
  y += 1 + m.sentences_h + 5;
  add_spot(ui, id, {at.x, at.y, width, height_of(m)}, std::string(grade_word(card.severity)) + ": " + std::string(card.heading));

  Flow flow = flow_at(x, y, room, card);
  for (size_t i = 0; i < card.remedies.size(); ++i) {
    const Box box = flow.take(button_width(ui, card.remedies[i], look_of(i)));
    const Item of = button_in(ui, name + "/remedy/" + std::to_string(i), box, card.remedies[i], look_of(i));
    if (of.pressed) answer.pressed = static_cast<int>(i);
    if (of.hovered || of.ring) answer.previewed = static_cast<int>(i);
  }
  if (!card.why.empty()) {
    const Box box = flow.take(button_width(ui, "Why", look_of(1)));
    const Item of = button_in(ui, name + "/why", box, "Why", look_of(1));
    if (of.hovered) platform::set_cursor(platform::Cursor::help);
    if (of.pressed) answer.why = true;
  }
  if (card.can_know) {
    const Box box = flow.take(button_width(ui, know_words(card), look_of(1)));
    if (button_in(ui, name + "/know", box, know_words(card), look_of(1)).pressed) answer.know = true;
  }
  y += m.buttons_h;
  if (m.why_h > 0) {
    pen.dl->AddRectFilled({x, y + 6}, {x + 2, y + m.why_h}, p.bandEdge);
    draw_wrapped(pen, type::small, {x + 10, y + 6}, room - 10, p.ink2, card.why);
  }
  return height_of(m);
}

}  // namespace shoalwright
