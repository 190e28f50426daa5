// SPDX-License-Identifier: MIT
// Pieces under the hand: choosing, dragging and pulling them in either view of the tank, and the same by keys and buttons.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/look.h"
#include "draw/scene/scene.h"
#include "draw/ui.h"

namespace shoalwright {

/// What the hand has hold of.
enum class Grip { move, left_end, right_end, front_side, back_side, top, turn };

struct PieceEdit {
  struct Drag {
    Grip grip = Grip::move;
    bool above = false;         ///< in the view from above
    ImVec2 from;                ///< where the pointer took hold
    std::vector<Piece> pieces;  ///< the chosen ones as they were then
    bool moved = false;
    std::string join;
    std::string name;  ///< of the step where it is not a move: "Put in stone"
  };
  std::optional<Drag> drag;
  enum class Hold { none, chosen, put };
  Hold hold_next = Hold::none;  ///< of what was chosen or put in just now, in the next frame
  bool hold_above = false;
  ImVec2 hold_from;
  std::string hold_name;
  int drags = 0;
};

/// One view of the tank on the screen, from pixels to cm and back.
struct PieceStage {
  const Scene& scene;
  bool above = false;
  FrontView front;
  PlanView plan;
  Box glass;

  ImVec2 at(double x_cm, double other_cm) const;  ///< other: height in the front view, z from above
  Vec place(ImVec2 at) const;
  float px_per_cm() const { return above ? plan.px_per_cm : front.px_per_cm; }
};

/// The piece under the pointer, the nearest to the eye first; empty: none.
std::optional<std::size_t> piece_at(const PieceStage& stage, ImVec2 pointer);

/// Whether a handle of the chosen piece is under the pointer.
bool over_handle(const Look& look, const PieceStage& stage, ImVec2 pointer, bool touch);

/// A spot for each piece: `tank.piece/<index>`, from above `above.piece/<index>`.
void add_piece_spots(Ui& ui, const PieceStage& stage);

/// Outlines, handles and names of the chosen pieces.
void draw_chosen(const Pen& pen, const Look& look, const PieceStage& stage);

/// The pointer over one view. True where it has hold of a piece or could take one, so that nothing else takes the press.
bool follow_piece_pointer(Ui& ui, const Look& look, const PieceStage& stage, bool hovered, PieceEdit& mine, Actions& out);

/// Keys for the chosen pieces: arrows, Page keys, R, M, D, Delete, Escape.
void read_piece_keys(const Look& look, Actions& out);

/// Name, measures and buttons of what is chosen, one row. Spots: `piece.turn`, `piece.mirror`, `piece.raise`, `piece.lower`,
/// `piece.again`, `piece.lock`, `piece.out`.
[[gnu::noinline]] void draw_piece_bar(Ui& ui, const Look& look, const Box& box, Actions& out);

}  // namespace shoalwright
