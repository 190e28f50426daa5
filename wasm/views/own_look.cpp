// SPDX-License-Identifier: MIT
#include "views/own_look.h"

#include <algorithm>
#include <cmath>

#include "catalog/card_edit.h"
#include "draw/fields.h"
#include "notebook/say.h"
#include "views/sheet_card.h"

namespace shoalwright {

namespace {

constexpr OwnField form_field{"look.form", "Form", Ask::word}, fins_field{"look.fins", "Fins", Ask::word},
    colours_field{"look.colours", "Colours", Ask::words}, marks_field{"look.marks", "Marks", Ask::words};

/// Paints of animals, from dark to light in columns of one hue.
constexpr const char* paints[] = {"#16181c", "#3a2a20", "#5a1f16", "#7a3c10", "#6b5a14", "#2f4a24", "#1d4a52", "#24365e",
                                  "#5c6066", "#7a5a40", "#a8382a", "#c9701e", "#b79a2a", "#5f8a3c", "#2f8490", "#3d63b0",
                                  "#c9ccc8", "#b98f68", "#e0685a", "#ee9f4a", "#e8cf5a", "#a6c47a", "#6fc0c4", "#8aa8e0",
                                  "#f4f3ee", "#e6cfb4", "#f3b4a8", "#f7cf9a", "#f5e9a8", "#d6e4b8", "#bfe3e2", "#c6d3f2"};

Species::Look look_of(const Json& card) {
  return {.form = card_text(card, "look.form"),
          .fins = card_text(card, "look.fins"),
          .colours = card_texts(card, "look.colours"),
          .marks = card_texts(card, "look.marks")};
}

void draw_picture(OwnForm& form, const Box& box) {
  const Pen pen = pen_of(form.ui);
  const Palette& p = *form.ui.palette;
  const Animal& animal = form.look.animals.get("own draft", look_of(form.card));
  pen.dl->AddRectFilledMultiColor(box.min(), box.max(), p.waterTop, p.waterTop, p.waterBot, p.waterBot);
  draw_panel(pen, box, 0, p.line, 0);
  const Reach reach = reach_of(animal);
  const float length = std::min({(box.w - 40) / std::max(reach.left + reach.right, 0.1f),
                                 (box.h - 20) / std::max(reach.above + reach.below, 0.1f), 260.0f});
  draw_animal(
      pen.dl, animal,
      {box.x + box.w / 2 + (reach.left - reach.right) / 2 * length, box.y + box.h / 2 + (reach.above - reach.below) / 2 * length},
      length, -1, 0);
  const std::string name = card_name(form.card);
  add_spot(form.ui, "own.picture", box, "Picture of " + (name.empty() ? "it" : name));
}

const char* colour_name(std::size_t index, std::size_t count) {
  constexpr const char* three[] = {"flank", "marks", "fins"};
  constexpr const char* four[] = {"back", "flank", "belly", "marks, fins"};
  return count <= 3 ? three[std::min<std::size_t>(index, 2)] : four[std::min<std::size_t>(index, 3)];
}

void draw_colours(OwnForm& form, Stack& stack, int& chosen) {
  std::vector<std::string> colours = card_texts(form.card, "look.colours");
  const Pen pen = pen_of(form.ui);
  const Palette& p = *form.ui.palette;
  chosen = std::clamp(chosen, 0, std::max(0, static_cast<int>(colours.size()) - 1));
  const float width = std::floor((stack.box.w - 6 * static_cast<float>(colours.size() - 1)) /
                                 static_cast<float>(std::max<std::size_t>(colours.size(), 1)));
  const Box line = stack.take(44);
  for (std::size_t i = 0; i < colours.size(); ++i) {
    const Box box{line.x + static_cast<float>(i) * (width + 6), line.y, width, 24};
    const ItemLook look{.rounding = 4, .exact = true};
    const std::string name = colour_name(i, colours.size());
    const Item of = item(form.ui, "own.colour/" + std::to_string(i), box, "Colour of " + name + ", " + colours[i], look);
    const bool on = static_cast<int>(i) == chosen;
    draw_panel(pen, box, colour_from_text(colours[i].c_str(), p.sunk), on ? p.ink : p.edge, 4, 0, on ? 2.0f : 1.0f);
    draw_text(pen, on ? medium(type::small) : type::small, {box.x + box.w / 2, box.bottom() + 2}, on ? p.ink : p.ink2, name,
              Align::centre);
    if (of.ring) draw_ring(form.ui, box, look);
    if (of.pressed) chosen = static_cast<int>(i);
  }
  if (colours.empty()) return;
  const std::size_t index = static_cast<std::size_t>(chosen);
  const auto paint = [&](const std::string& colour) {
    colours[index] = colour;
    set_card_texts(form.card, "look.colours", colours);
  };
  constexpr int columns = 8;
  const float gap = 4, size = std::floor((stack.box.w - gap * (columns - 1)) / columns);
  for (std::size_t i = 0; i < std::size(paints); ++i) {
    const float x = stack.box.x + static_cast<float>(i % columns) * (size + gap),
                y = stack.y() + static_cast<float>(i / columns) * 26;
    const Box box{x, y, size, 22};
    const ItemLook look{.rounding = 3, .exact = true};
    const bool on = colours[index] == paints[i];
    const Item of = item(form.ui, "own.paint/" + std::to_string(i), box, std::string("Paint ") + paints[i], look);
    draw_panel(pen, box, colour_from_text(paints[i], p.sunk), on || of.hovered ? p.ink : p.line, 3, 0, on ? 2.0f : 1.0f);
    if (of.ring) draw_ring(form.ui, box, look);
    if (of.pressed) paint(paints[i]);
  }
  stack.skip(26 * static_cast<float>(std::size(paints) / columns) + 4);
  std::string hex = colours[index];
  const Box row = sheet_row(form.ui, stack.take(34), std::string("Colour of ") + colour_name(index, colours.size()), 110);
  const FieldAnswer answer = text_field(form.ui, "own.hex", row, hex, "Colour, like #d98a55", {.most_bytes = 7});
  if (answer.done && hex != colours[index]) {
    std::transform(hex.begin(), hex.end(), hex.begin(),
                   [](char c) { return c >= 'A' && c <= 'F' ? static_cast<char>(c - 'A' + 'a') : c; });
    paint(hex);
  }
}

}  // namespace

void draw_own_look(OwnForm& form, Stack& stack, int& colour) {
  own_heading(form, stack, "Look");
  draw_picture(form, stack.take(132));
  stack.skip(8);
  for (const OwnField* field : {&form_field, &fins_field}) {
    draw_own_word(form, sheet_row(form.ui, stack.take(34), field->name, 168), *field);
    draw_own_error(form, stack, *field);
  }
  stack.skip(6);
  draw_colours(form, stack, colour);
  draw_own_error(form, stack, colours_field);
  draw_own_chips(form, stack, marks_field);
  draw_own_error(form, stack, marks_field);
}

}  // namespace shoalwright
