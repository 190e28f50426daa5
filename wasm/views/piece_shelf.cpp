// SPDX-License-Identifier: MIT
#include "views/piece_shelf.h"

#include <algorithm>
#include <cmath>

#include "catalog/piece_kind.h"
#include "draw/panels.h"
#include "edit/command.h"
#include "platform/platform.h"
#include "tank/placed_piece.h"
#include "units/text.h"
#include "views/stock_words.h"

namespace shoalwright {

namespace {

constexpr float margin = 12, row_height = 58;

bool belongs(ShelfPart part, PieceShelf shelf) {
  switch (shelf) {
    case PieceShelf::wood:
    case PieceShelf::stone:
    case PieceShelf::caves: return part == ShelfPart::wood_stone;
    case PieceShelf::plants: return part == ShelfPart::plants;
    case PieceShelf::devices: return part == ShelfPart::gear;
  }
  return false;
}

/// What a keeper should know of a kind, in a few words.
std::string remark(const PieceKind& kind, const Measures& measures) {
  std::string words;
  const auto add = [&](const std::string& more) { words += (words.empty() ? "" : "; ") + more; };
  if (kind.hides > 0) add(kind.hides == 1 ? "one hiding place" : std::to_string(kind.hides) + " hiding places");
  if (kind.lime) add("raises GH and KH");
  if (!kind.solid() && kind.gap_cm >= 1)
    add("lets bodies up to " + short_text(measures.length_out(static_cast<double>(kind.gap_cm)), 1) + " " +
        measures.length_unit() + " through");
  if (!kind.solid() && kind.gap_cm < 1) add("too dense to swim through");
  if (words.empty() && kind.material == Material::wood) add("wood to rest under and to rasp");
  if (kind.density_kg_l > 0) {
    const PlacedPiece usual{.kind = &kind, .length_cm = kind.length_cm, .depth_cm = kind.depth_cm, .height_cm = kind.height_cm};
    const double kg = piece_mass_kg(usual);
    add("about " + (kg < 1 && !measures.us ? short_text(kg, 1) + " kg" : measures.mass(kg)) +
        (words.empty() ? ", on the bottom pane" : ""));
  }
  return words;
}

/// Put in where there is room, and chosen.
void put_in(const Look& look, const PieceKind& kind, Actions& out) {
  const PutPiece put{usual_piece(look.plan, kind.id)};
  const std::string name = name_of(put, look.plan, look.catalog);
  out.push_back(EditPlan{apply(look.plan, put, look.catalog), name, ""});
  out.push_back(ChoosePieces{{look.plan.pieces.size()}});
  out.push_back(Tell{name + ". Arrow keys move it, Page keys raise it, R turns it", "Undo"});
}

void draw_picture(const Pen& pen, const PiecePicture& picture, const Box& box) {
  const float wide = picture.box.x1 - picture.box.x0, tall = picture.box.y1 - picture.box.y0;
  // Larger ones larger, but all within the box.
  const float scale = std::min({box.w / wide, box.h / tall, 2.6f});
  draw_piece_picture(pen.dl, picture, {box.x + (box.w - wide * scale) / 2, box.y + (box.h + tall * scale) / 2}, scale);
}

bool one_row(Ui& ui, const Look& look, const Box& box, const PieceKind& kind, const PiecePicture& picture, bool first,
             Actions& out) {
  const std::string name(kind.name);
  const ListRowAnswer row =
      list_row(ui, "shelf.piece/" + std::string(kind.id), box, name + ", " + remark(kind, look.measures), {.rule_above = !first});
  if (!row.item.visible) return false;
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  draw_picture(pen, picture, {box.x + margin, box.y + 6, 50, box.h - 12});
  const float left = snapped(pen, box.x + 72), right = box.right() - margin;
  const auto figure = [&](float cm) { return short_text(look.measures.length_out(static_cast<double>(cm)), 0); };
  const std::string size = figure(kind.length_cm) + " × " + figure(kind.depth_cm) + " × " +
                           look.measures.length(std::round(static_cast<double>(kind.height_cm)));
  draw_text(pen, medium(type::body), {left, box.y + 5}, p.ink, elided(pen, medium(type::body), name, right - left));
  draw_text(pen, type::axis, {left, box.y + 23}, p.ink3, size);
  draw_text(pen, type::small, {left, box.y + 38}, p.ink2, elided(pen, type::small, remark(kind, look.measures), right - left));
  if (row.item.ring) draw_ring(ui, box, {.rounding = 2, .ring = Ring::inside});
  if (row.item.hovered) platform::set_cursor(platform::Cursor::grab);
  if (row.drag_started)
    out.push_back(HoldPiece{std::string(kind.id)});
  else if (row.enter || row.double_click)
    put_in(look, kind, out);
  return row.drag_started || row.enter || row.double_click;
}

}  // namespace

bool draw_piece_rows(Ui& ui, const Look& look, const Box& box, ShelfPart part, PieceShelfState& mine, Actions& out) {
  const Theme theme = ui.palette == &palette(Theme::dark) ? Theme::dark : Theme::light;
  if (!mine.built || mine.theme != theme) {
    mine.built = true;
    mine.theme = theme;
    mine.pictures.clear();
    for (const PieceKind& kind : piece_kinds()) mine.pictures.push_back(piece_picture(kind, theme));
  }
  Column column = begin_column(ui, "shelf pieces", box, ui.palette->panel);
  Stack stack{column.content};
  bool first = true, taken = false;
  const std::span<const PieceKind> kinds = piece_kinds();
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    if (!belongs(part, kinds[i].shelf)) continue;
    taken |= one_row(ui, look, stack.take(row_height), kinds[i], mine.pictures[i], first, out);
    first = false;
  }
  end_column(ui, column, stack.at);
  return taken;
}

}  // namespace shoalwright
