// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string_view>

#include "draw/buttons.h"

namespace shoalwright {

/// Chooses one of several: a field with a chevron and a list that drops down. Returns the index chosen in this frame, −1 for
/// none. Spots: `id`, and while open `id/0`, `id/1` ...
int select(Ui& ui, std::string_view id, const Box& box, std::span<const std::string_view> words, int chosen,
           std::string_view label, bool enabled = true);

/// A list that hangs from a button. `open_menu` when the button is pressed; then each frame `if (begin_menu(...)) { ...;
/// end_menu(ui); }`. Escape and a click elsewhere close it; the keyboard goes back to the button.
void open_menu(Ui& ui, std::string_view id);
/// `height` is about what it will need: where that is not left below the button, it hangs on the roomier side.
bool begin_menu(Ui& ui, std::string_view id, const Box& button, float width, float height = 200);
void end_menu(Ui& ui);
struct MenuRow {
  bool ticked = false;
  std::string_view key;  ///< "Ctrl Z", at the right
  bool enabled = true;
  bool stays = false;  ///< the menu stays open (settings)
};
/// True when chosen.
bool menu_row(Ui& ui, std::string_view id, std::string_view words, const MenuRow& row = {});
void menu_heading(Ui& ui, std::string_view words);
void menu_line(Ui& ui);

/// A line of words with a stepper at its right; what was stepped, as `stepper` gives it.
int menu_stepper(Ui& ui, std::string_view id, std::string_view words, std::string_view value, bool less, bool more);

}  // namespace shoalwright
