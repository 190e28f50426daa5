// SPDX-License-Identifier: MIT
#include "draw/fields.h"

#include <algorithm>
#include <cmath>

#include "units/text.h"

namespace shoalwright {
namespace {

constexpr float padding = 10, gap = 8, clear_size = 13;

int weight_of(Face face) { return face == Face::semibold ? 600 : face == Face::medium ? 500 : 400; }

}  // namespace

FieldAnswer text_field(Ui& ui, std::string_view id, const Box& box, std::string& text, std::string_view label,
                       const FieldLook& look) {
  const bool clearable = look.clearable && look.enabled && !text.empty();
  // The cross lies outside the field's own item, or pressing it would open the page's input as well.
  const Box hit = clearable ? Box{box.x, box.y, box.w - clear_size - padding - gap / 2, box.h} : box;
  const ItemLook item_look{.enabled = look.enabled, .exact_across = true, .text_cursor = true};
  const std::string said = text.empty() ? std::string(label) : std::string(label) + ": " + text;
  const Item of = item(ui, id, hit, said, item_look);
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const Type t = look.type;
  float left = box.x + (look.bare ? 4.0f : padding), right = box.right() - (look.bare ? 4.0f : padding);
  const Box cross{right - clear_size, box.y + (box.h - clear_size) / 2, clear_size, clear_size};
  if (look.icon) left += 16 + gap;
  if (clearable) right -= clear_size + gap;
  const float unit_w = look.unit.empty() ? 0 : text_width(pen, t, look.unit) + 4;

  platform::TextField field{.id = id, .label = label, .value = text, .placeholder = look.placeholder};
  field.x = left;
  field.y = box.y + (box.h - t.line) / 2;
  field.width = std::max(8.0f, right - unit_w - left);
  field.height = t.line;
  field.line_px = box_height(pen, t);
  field.ink = p.ink;
  field.placeholder_ink = p.ink3;
  field.font_weight = weight_of(t.face);
  field.most_bytes = look.most_bytes;
  field.align_right = look.align == Align::right;
  field.kind = look.kind;
  const bool by_keyboard = look.enabled && of.ring && (of.arrived || of.pressed);
  const platform::FieldEdit edit = look.enabled ? platform::text_field(field, by_keyboard) : platform::FieldEdit{};

  const bool active = edit.editing || of.ring;
  if (!look.bare || of.hovered || active) {
    const float over = eased(ui, id, of.hovered && !edit.editing ? 0.4f : 0.0f, 90);
    draw_panel(pen, box, look.enabled ? mix(p.raised, p.actSoft, over) : 0, look.enabled ? p.edge : p.line, 4);
  }
  if (look.icon) draw_icon(pen, *look.icon, {box.x + padding, box.y + (box.h - 16) / 2}, 16, p.ink3);
  if (!edit.editing) {
    const bool empty = text.empty();
    const std::string shown = elided(pen, t, empty ? look.placeholder : std::string_view(text), field.width);
    const bool flush_right = look.align == Align::right;
    draw_text(pen, t, {flush_right ? left + field.width : left, field.y}, empty || !look.enabled ? p.ink3 : p.ink, shown,
              flush_right ? Align::right : Align::left);
  }
  if (!look.unit.empty()) draw_text(pen, t, {right, field.y}, p.ink2, look.unit, Align::right);

  FieldAnswer answer{.changed = edit.changed,
                     .done = edit.done && !edit.cancelled,
                     .cancelled = edit.cancelled,
                     .editing = edit.editing,
                     .step = edit.step};
  if (edit.changed || edit.done) text = edit.value;
  if (clearable) {
    const Item clear = item(ui, std::string(id) + "/clear", cross, "Clear " + std::string(label), {});
    draw_icon(pen, Icon::clear, cross.min(), clear_size, clear.hovered ? p.ink : p.ink2);
    if (clear.ring) draw_ring(ui, cross, {});
    if (clear.pressed) {
      text.clear();
      answer.changed = true;
      ui.focus_wanted = id;
    }
  }
  if (active) draw_ring(ui, box, {});
  return answer;
}

bool number_field(Ui& ui, std::string_view id, const Box& box, double& value, std::string_view label,
                  const NumberFieldLook& look) {
  const double before = value;
  std::string text = number_text(value, look.decimals);
  const FieldAnswer answer = text_field(
      ui, id, box, text, label,
      {.unit = look.unit, .enabled = look.enabled, .align = Align::right, .kind = platform::FieldKind::number, .most_bytes = 12});
  if (answer.done)
    if (const auto typed = number_from(text)) value = *typed;
  if (answer.step != 0) value += answer.step * look.step;
  if (value != before) value = held(value, look.least, look.most, look.decimals);
  return value != before;
}

double held(double value, double least, double most, int decimals) {
  double scale = 1;
  for (int i = 0; i < std::clamp(decimals, 0, 6); ++i) scale *= 10;
  return std::clamp(std::round(value * scale) / scale, least, most);
}

std::string number_text(double value, int decimals) {
  std::string figures = fixed_text(std::fabs(value), std::clamp(decimals, 0, 6));
  if (value < 0 && figures.find_first_not_of("0.") != std::string::npos) figures = "−" + figures;
  return figures;
}

std::optional<double> number_from(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  double sign = 1;
  for (const std::string_view minus : {std::string_view("−"), std::string_view("-")}) {
    if (text.substr(0, minus.size()) == minus) {
      sign = -1;
      text.remove_prefix(minus.size());
      break;
    }
  }
  double number = 0, place = 0;
  bool figures = false;
  for (const char c : text) {
    if (c >= '0' && c <= '9') {
      figures = true;
      number = place > 0 ? number + (c - '0') * place : number * 10 + (c - '0');
      place /= 10;
    } else if ((c == '.' || c == ',') && place == 0) {
      place = 0.1;
    } else {
      return std::nullopt;
    }
  }
  if (!figures) return std::nullopt;
  return sign * number;
}

}  // namespace shoalwright
