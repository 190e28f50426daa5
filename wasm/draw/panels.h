// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "draw/ui.h"

namespace shoalwright {

/// A heading with a quiet remark at the right, on one base line. Returns its height, 20.
float section_header(Ui& ui, const Box& box, std::string_view heading, std::string_view remark = {}, std::string_view after = {});

/// A card: panel ground, hairline border, 6 px corners.
void draw_card(const Pen& pen, const Box& box);

/// A column that scrolls by wheel, finger and keyboard, with a thin bar of its own. Between begin and end, draw at
/// `content.x, content.y` and downwards; `end_column` says how high it all was. Items inside share the window's Tab order. A
/// finger that moves up or down in it scrolls and presses nothing. Spot of the bar: `id/bar`.
struct Column {
  Box content;  ///< x, y move with the scrolling; the bar lies in the right margin, 6 px
  Box view;
  std::string id;
  bool reads = false;
};
/// `reads`: while the keyboard is on something in it, Page Up, Page Down, Home and End scroll it, so that text with nothing to
/// stand on is reached; in a list of rows they go from row to row instead.
Column begin_column(Ui& ui, std::string_view id, const Box& view, ImU32 ground = 0, bool reads = false);
void end_column(Ui& ui, Column& column, float content_height);

/// A row of a list that can be pointed at, stood on, pressed and lifted.
struct ListRow {
  bool lifted = false;  ///< in hand: a dashed slot stays behind
  bool chosen = false;
  bool rule_above = true;
  bool arrows_only = false;  ///< Tab stops at another row of its list
};
struct ListRowAnswer {
  Item item;
  bool enter = false;  ///< Enter, Space or a tap: pick up by keyboard
  bool double_click = false;
  bool drag_started = false;  ///< moved 4 px with the button down
};
/// Draws the ground of the row; the caller draws what stands on it, then `draw_ring` is not needed. Spot: `id`.
ListRowAnswer list_row(Ui& ui, std::string_view id, const Box& box, std::string_view label, const ListRow& row = {});

/// A key of the keyboard as drawn in hints: "Enter". Returns its width, 20 high.
float draw_key_cap(const Pen& pen, ImVec2 at, std::string_view words);

}  // namespace shoalwright
