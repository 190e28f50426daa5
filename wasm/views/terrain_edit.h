// SPDX-License-Identifier: MIT
// The substrate under the hand: hills and valleys drawn in the front view as a terrain line with a handle at each point.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/look.h"
#include "draw/ui.h"
#include "views/piece_edit.h"

namespace shoalwright {

struct TerrainEdit {
  struct Drag {
    int point = 0;
    ImVec2 from;                  ///< where the pointer took hold
    std::vector<LinePoint> line;  ///< as it is left when the drag is taken from the hand
    std::vector<LinePoint> held;  ///< with the point that is dragged, where it was
    bool moved = false;
    std::string join;
  };
  std::optional<Drag> drag;
  int drags = 0;
};

/// The terrain line over the substrate that is worked on, its handles, and the pointer over them, as far as `area` shows the
/// tank. True where it has hold of a point or could take one, so that nothing else takes the press. Spots: `tank.line`,
/// `tank.line/<point>`.
[[gnu::noinline]] bool follow_terrain(Ui& ui, const Look& look, const PieceStage& stage, const Box& area, bool hovered,
                                      TerrainEdit& mine, Actions& out);

/// Keys for it: arrows move the chosen point, Delete takes it out, M mirrors the line, Escape ends.
[[gnu::noinline]] void read_terrain_keys(const Look& look, Actions& out);

/// What is chosen and its buttons, one row. Spots: `line.add`, `line.out`, `line.mirror`, `line.level`, `line.done`.
[[gnu::noinline]] void draw_terrain_bar(Ui& ui, const Look& look, const Box& box, Actions& out);

}  // namespace shoalwright
