// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

#include "draw/icons.h"
#include "draw/ui.h"

namespace shoalwright {

/// `primary`: the one main action of a view. `secondary`: bordered. `remedy`: does what a finding asks for. `quiet`: no border.
enum class ButtonKind { primary, secondary, remedy, quiet };

struct ButtonLook {
  ButtonKind kind = ButtonKind::secondary;
  bool small = false;  ///< 26 instead of 30 high
  bool enabled = true;
  std::optional<Icon> icon;  ///< before the words
  bool chevron = false;      ///< after the words: opens a menu
  std::string_view tooltip;
};

/// Width that its words need; height by `look`.
float button_width(const Ui& ui, std::string_view words, const ButtonLook& look = {});
float button_height(const ButtonLook& look);

/// True when pressed. An empty `words` with an icon gives a square button, whose `label` names it for readers and tooltip.
Item button(Ui& ui, std::string_view id, ImVec2 at, std::string_view words, const ButtonLook& look = {});
/// In a given box (wider than its words, say).
Item button_in(Ui& ui, std::string_view id, const Box& box, std::string_view words, const ButtonLook& look = {});
/// An icon alone, 34 by 30; `name` is read out and shown as its tooltip with `key` behind it ("Ctrl Z").
Item icon_button(Ui& ui, std::string_view id, ImVec2 at, Icon icon, std::string_view name, std::string_view key = {},
                 bool enabled = true);

/// A tab of the top strip: the box is as high as the strip; a bar below the chosen one.
float tab_width(const Ui& ui, std::string_view words);
bool tab(Ui& ui, std::string_view id, ImVec2 at, float height, std::string_view words, bool chosen);

}  // namespace shoalwright
