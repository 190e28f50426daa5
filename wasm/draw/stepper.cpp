// SPDX-License-Identifier: MIT
#include "draw/stepper.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "draw/fields.h"

namespace shoalwright {
namespace {

constexpr float end_w = 26;

/// The frame with its − and +; returns the step asked for by pointer.
int ends(Ui& ui, std::string_view id, const Box& box, std::string_view label, bool less, bool more) {
  const std::string name(id), what(label);
  const Box left{box.x, box.y, end_w + 1, box.h}, right{box.right() - end_w - 1, box.y, end_w + 1, box.h};
  const ItemLook look{.repeat = true, .exact_across = true, .pointer_only = true};
  ItemLook left_look = look, right_look = look;
  left_look.enabled = less;
  right_look.enabled = more;
  const Item l = item(ui, name + "/less", left, what + ", less", left_look);
  const Item r = item(ui, name + "/more", right, what + ", more", right_look);
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  draw_panel(pen, box, p.raised, p.edge, 4);
  const float lit_left = eased(ui, name + "/less", less && l.hovered ? 0.6f : 0, 90),
              lit_right = eased(ui, name + "/more", more && r.hovered ? 0.6f : 0, 90);
  if (lit_left > 0)
    draw_panel(pen, {left.x + 1, left.y + 1, end_w, left.h - 2}, scale_alpha(p.actSoft, lit_left), 0, 3,
               ImDrawFlags_RoundCornersLeft);
  if (lit_right > 0)
    draw_panel(pen, {right.x, right.y + 1, end_w, right.h - 2}, scale_alpha(p.actSoft, lit_right), 0, 3,
               ImDrawFlags_RoundCornersRight);
  draw_rule_down(pen, left.right(), box.y + 1, box.bottom() - 1, p.line);
  draw_rule_down(pen, right.x - 1, box.y + 1, box.bottom() - 1, p.line);
  const Type sign{Face::regular, 15, 20};
  const float y = box.y + box.h / 2 - 10;
  draw_text(pen, sign, {left.x + 1 + end_w / 2, y}, less ? p.ink : p.ink3, "−", Align::centre);
  draw_text(pen, sign, {right.x + end_w / 2, y}, more ? p.ink : p.ink3, "+", Align::centre);
  if (l.pressed) return -1;
  if (r.pressed) return 1;
  return 0;
}

float full_width(float value_width) { return value_width + 2 * end_w + 2; }

}  // namespace

float stepper_width(const StepperLook& look) { return full_width(look.value_width); }

int stepper(Ui& ui, std::string_view id, ImVec2 at, std::string_view value, std::string_view label, const StepperLook& look) {
  const Box box{at.x, at.y, stepper_width(look), look.height};
  int step = ends(ui, id, box, label, look.less, look.more);
  const Box middle{box.x + end_w + 1, box.y, look.value_width, box.h};
  const Item of = item(ui, id, middle, std::string(label) + ", " + std::string(value), {.exact_across = true});
  const Pen pen = pen_of(ui);
  draw_text(pen, semibold(type::body), {middle.x + middle.w / 2, middle.y + middle.h / 2 - 9}, ui.palette->ink, value,
            Align::centre);
  if (of.ring) draw_ring(ui, box, {});
  if (of.focused && step == 0) step = typed_step();
  if ((step < 0 && !look.less) || (step > 0 && !look.more)) return 0;
  return step;
}

float number_width(const NumberLook& look) { return full_width(look.value_width); }

bool number_stepper(Ui& ui, std::string_view id, ImVec2 at, double& value, std::string_view label, const NumberLook& look) {
  const Box box{at.x, at.y, number_width(look), look.height};
  const double before = value;
  int step = ends(ui, id, box, label, look.enabled && value > look.least, look.enabled && value < look.most);
  const Box middle{box.x + end_w + 1, box.y, look.value_width, box.h};
  const ItemLook item_look{.enabled = look.enabled, .exact_across = true, .text_cursor = true};
  const std::string text = number_text(value, look.decimals);
  const Item of = item(ui, id, middle, std::string(label) + ", " + text + " " + std::string(look.unit), item_look);
  const Pen pen = pen_of(ui);
  const Type t = semibold(look.height < 28 ? type::small : type::body);
  const float unit_w = look.unit.empty() ? 0 : text_width(pen, t, look.unit) + text_width(pen, t, " ");
  const float y = middle.y + middle.h / 2 - t.line / 2;
  platform::TextField field{.id = id, .label = label, .value = text, .kind = platform::FieldKind::number};
  field.x = middle.x + 3;
  field.y = y;
  field.width = std::max(8.0f, middle.w - 6 - unit_w);
  field.height = t.line;
  field.line_px = box_height(pen, t);
  field.ink = ui.palette->ink;
  field.placeholder_ink = ui.palette->ink3;
  field.font_weight = 600;
  field.most_bytes = 12;
  field.align_right = true;
  const platform::FieldEdit edit = look.enabled ? platform::text_field(field, of.pressed) : platform::FieldEdit{};
  const ImU32 ink = look.enabled ? ui.palette->ink : ui.palette->ink3;
  if (edit.editing) {
    if (!look.unit.empty()) draw_text(pen, t, {middle.right() - 3, y}, ink, look.unit, Align::right);
  } else {
    draw_text(pen, t, {middle.x + middle.w / 2, y}, ink, look.unit.empty() ? text : text + " " + std::string(look.unit),
              Align::centre);
  }
  if (of.ring || edit.editing) draw_ring(ui, box, {});
  if (of.focused && step == 0 && !edit.editing) step = typed_step();
  if (edit.step != 0) step = edit.step;
  if (edit.done && !edit.cancelled)
    if (const auto typed = number_from(edit.value)) value = *typed;
  if (step != 0) value += step * look.step;
  if (value != before) value = held(value, look.least, look.most, look.decimals);
  return value != before;
}

}  // namespace shoalwright
