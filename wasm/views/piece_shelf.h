// SPDX-License-Identifier: MIT
// Kinds of pieces on the shelf: drag one into either view of the tank, or press Enter to put it where there is room.
#pragma once

#include <span>
#include <vector>

#include "app/look.h"
#include "draw/scene/scene.h"
#include "draw/ui.h"

namespace shoalwright {

/// What of the shelf is shown.
enum class ShelfPart { animals, wood_stone, plants, gear };
inline constexpr std::size_t shelf_parts = 4;

struct PieceShelfState {
  bool built = false;
  Theme theme = Theme::light;
  std::vector<PiecePicture> pictures;  ///< one a kind, in their order
};

/// Rows of the kinds of one part. True when one was taken off the shelf. Spots: `shelf.piece/<kind>`.
bool draw_piece_rows(Ui& ui, const Look& look, const Box& box, ShelfPart part, PieceShelfState& mine, Actions& out);

}  // namespace shoalwright
