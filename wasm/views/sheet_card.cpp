// SPDX-License-Identifier: MIT
#include "views/sheet_card.h"

#include <algorithm>

#include "draw/buttons.h"
#include "draw/fields.h"

namespace shoalwright {

namespace {

/// What a value is called on the sheets, by the last key of its place.
std::string_view field_name(std::string_view place) {
  struct Row {
    std::string_view key, name;
  };
  constexpr Row rows[] = {{"length_cm", "Length"},
                          {"width_cm", "Width"},
                          {"height_cm", "Height"},
                          {"bow_cm", "Bow"},
                          {"diameter_cm", "Diameter"},
                          {"side_cm", "Side"},
                          {"outline_cm", "Corners"},
                          {"glass_mm", "Glass"},
                          {"fill_cm", "Water line"},
                          {"temperature_c", "Temperature"},
                          {"ph", "pH"},
                          {"gh_dgh", "GH"},
                          {"kh_dkh", "KH"},
                          {"nitrate_mg_l", "Nitrate"},
                          {"nitrite_mg_l", "Nitrite"},
                          {"ammonia_mg_l", "Ammonia"},
                          {"back_cm", "Depth at the back"},
                          {"line_cm", "Terrain line"}};
  if (place == "/tank/front_cm") return "Short side";
  if (place == "/substrate/front_cm") return "Depth at the front";
  for (const Row& row : rows)
    if (place.find(row.key) != std::string_view::npos) return row.name;
  return {};
}

std::string trimmed(double value, int decimals) {
  std::string text = number_text(value, decimals);
  if (text.find('.') == std::string::npos) return text;
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text;
}

/// Between the side columns where the window has them.
Box middle_of(const Box& area) {
  if (area.w < 1200) return area;
  const bool large = area.w >= 1700;
  const float left = large ? 320 : 296, right = large ? 400 : 364;
  return {area.x + left, area.y, area.w - left - right, area.h};
}

}  // namespace

float sentence_height(const Pen& pen, std::string_view sentence, float width) {
  return wrapped_height(pen, type::small, sentence, width - 16) + 12;
}

void draw_sentence(Ui& ui, std::string_view id, const Box& box, std::string_view sentence) {
  const Pen pen = pen_of(ui);
  draw_panel(pen, box, ui.palette->callSoft, 0, 4);
  draw_wrapped(pen, type::small, {box.x + 8, box.y + 6}, box.w - 16, ui.palette->ink, sentence);
  add_spot(ui, id, box, sentence);
}

SheetCard begin_sheet(Ui& ui, std::string_view id, const Box& window, ImVec2 most, std::string_view heading, Actions& out) {
  const Box area = middle_of(window);
  constexpr float margin = 8, ring = 3, pad = 16, head = 44;
  const float w = std::min(most.x, area.w - 2 * margin), h = std::min(most.y, area.h - 2 * margin);
  const Box card{std::floor(area.x + (area.w - w) / 2), std::floor(area.y + std::max(margin, (area.h - h) / 3)), w, h};
  ImGui::SetCursorScreenPos({card.x - ring, card.y - ring});
  ImGui::BeginChild(std::string(id).c_str(), {card.w + 2 * ring, card.h + 2 * ring}, ImGuiChildFlags_NavFlattened,
                    ImGuiWindowFlags_NoScrollbar | ImGuiWindowFlags_NoScrollWithMouse);
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  draw_panel(pen, card.inset(-ring), with_alpha(p.ink, 0.12f), 0, 9);
  draw_panel(pen, card, p.raised, p.edge, 6);
  draw_text(pen, type::head, {card.x + pad, card.y + 12}, p.ink, heading);
  if (icon_button(ui, std::string(id) + ".close", {card.right() - 34 - 8, card.y + 8}, Icon::close, "Close", "Esc").pressed)
    out.push_back(ShowSheet{Sheet::none});
  draw_rule(pen, card.x + 1, card.y + head, card.right() - 1, p.line);
  add_spot(ui, id, card, heading);
  return {.body = {card.x + pad, card.y + head + 1, card.w - 2 * pad, card.h - head - 2}};
}

void end_sheet() { ImGui::EndChild(); }

Box sheet_row(Ui& ui, const Box& row, std::string_view name, float width) {
  const Pen pen = pen_of(ui);
  const float w = std::min(width, row.w * 0.62f);
  draw_text(pen, type::body, {row.x, row.y + (row.h - 18) / 2}, ui.palette->ink, elided(pen, type::body, name, row.w - w - 8));
  return {row.right() - w, row.y + (row.h - 28) / 2, w, 28};
}

bool optional_field(Ui& ui, std::string_view id, const Box& box, std::optional<double>& value, std::string_view label,
                    std::string_view unit, int decimals, std::string_view placeholder, double step) {
  std::string text = value ? trimmed(*value, decimals) : "";
  const std::string before = text;
  const FieldAnswer answer = text_field(ui, id, box, text, label,
                                        {.placeholder = placeholder,
                                         .unit = value ? unit : std::string_view(),
                                         .clearable = true,
                                         .kind = platform::FieldKind::number,
                                         .most_bytes = 12});
  if (answer.step != 0 && value) {
    *value = std::max(0.0, *value + step * answer.step);
    return true;
  }
  const bool cleared = answer.changed && !answer.editing && text.empty();
  if (!(answer.done || cleared) || text == before) return false;
  if (text.empty()) {
    value.reset();
    return true;
  }
  const std::optional<double> typed = number_from(text);
  if (!typed) return false;
  value = typed;
  return true;
}

bool hardness_field(Ui& ui, std::string_view id, const Box& box, std::optional<double>& degrees, Hardness of,
                    const Measures& measures, std::string_view placeholder) {
  std::optional<double> shown;
  if (degrees) shown = measures.hardness_out(*degrees, of);
  if (!optional_field(ui, id, box, shown, measures.hardness_name(of), measures.short_hardness_unit(of),
                      measures.hardness_decimals(), placeholder, measures.hardness_step()))
    return false;
  degrees = shown ? std::optional(measures.hardness_back(*shown, of)) : std::nullopt;
  return true;
}

bool nitrate_field(Ui& ui, std::string_view id, const Box& box, std::optional<double>& no3_mg_l, std::string_view label,
                   const Measures& measures, std::string_view placeholder) {
  std::optional<double> shown;
  if (no3_mg_l) shown = measures.nitrate_out(*no3_mg_l);
  if (!optional_field(ui, id, box, shown, label, measures.nitrate_unit(), measures.nitrate_as_n ? 1 : 0, placeholder))
    return false;
  no3_mg_l = shown ? std::optional(measures.nitrate_in(*shown)) : std::nullopt;
  return true;
}

bool plain_field(Ui& ui, std::string_view id, const Box& box, double& value, std::string_view label, const PlainNumber& look) {
  std::string text = trimmed(value, look.decimals);
  const std::string before = text;
  const FieldAnswer answer =
      text_field(ui, id, box, text, label,
                 {.unit = look.unit, .align = Align::right, .kind = platform::FieldKind::number, .most_bytes = 12});
  if (answer.step != 0) {
    value += answer.step * look.step;
    return true;
  }
  if (!answer.done || text == before) return false;
  const std::optional<double> typed = number_from(text);
  if (!typed) return false;
  value = *typed;
  return true;
}

std::string plain_sentence(const Error& error) {
  std::string sentence = error.sentence;
  for (std::size_t at = sentence.find(" at /"); at != std::string::npos; at = sentence.find(" at /")) {
    std::size_t end = at + 4;
    while (end < sentence.size() && sentence[end] != ' ' && sentence[end] != ',' &&
           !(sentence[end] == '.' && (end + 1 == sentence.size() || sentence[end + 1] == ' ')))
      ++end;
    sentence.erase(at, end - at);
  }
  const std::string_view name = field_name(error.place);
  if (name.empty() || sentence.empty()) return sentence;
  if (sentence[0] >= 'A' && sentence[0] <= 'Z') sentence[0] = static_cast<char>(sentence[0] - 'A' + 'a');
  return std::string(name) + ": " + sentence;
}

}  // namespace shoalwright
