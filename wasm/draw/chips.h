// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "draw/marks.h"
#include "draw/ui.h"

namespace shoalwright {

/// A small on-off button of 26 px, with a shelf mark before its words if wanted.
struct ChipLook {
  std::optional<Fit> mark;
  bool chevron = false;  ///< opens a menu
  bool tight = false;    ///< 7 instead of 9 of air at the sides
};
float chip_width(const Ui& ui, std::string_view words, const ChipLook& look = {});
/// True when pressed; the caller turns `on` round.
bool chip(Ui& ui, std::string_view id, ImVec2 at, std::string_view words, bool on, const ChipLook& look = {});

/// A chip with a drawn switch (Crowding, Swimming lane).
float switch_width(const Ui& ui, std::string_view words);
bool switch_chip(Ui& ui, std::string_view id, ImVec2 at, std::string_view words, bool on);

/// Chips grown together. `one_of`: returns the index pressed, −1 for none. `width` 0 lets each be as wide as its words, else all
/// are equally wide. Ids are `id/0`, `id/1` ...
float segments_width(const Ui& ui, std::span<const std::string_view> words);
int segments(Ui& ui, std::string_view id, ImVec2 at, std::span<const std::string_view> words, std::span<const bool> on,
             float width = 0);
int one_of(Ui& ui, std::string_view id, ImVec2 at, std::span<const std::string_view> words, int chosen, float width = 0);

}  // namespace shoalwright
