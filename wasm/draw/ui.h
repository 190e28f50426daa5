// SPDX-License-Identifier: MIT
// What every widget is handed: colours, letters, where things stand, what the keyboard is on. Dear ImGui gives ids, hit-testing,
// keyboard focus and scrolling; everything visible is our own drawing.
#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "draw/layout.h"
#include "draw/spots.h"
#include "draw/text.h"

namespace shoalwright {

struct Ui {
  const Palette* palette = nullptr;
  const Faces* faces = nullptr;
  float device_scale = 1;
  double now_s = 0;             ///< monotonic seconds, ImGui::GetTime()
  double moved_s = -1;          ///< when the pointer last moved
  bool touch = false;           ///< a finger: hit areas of 44 instead of 24
  bool reduced_motion = false;  ///< every change is instant
  Spots spots;
  /// Id of the item that is to take the keyboard in the next frame that draws it (search at "/", a menu's first entry).
  std::string focus_wanted;
  std::string ring_id, ring_id_before;   ///< the item with the ring in this frame and in the last
  std::string dragged_id;                ///< the row whose drag has been told
  std::string finger_column;             ///< the column that a finger is scrolling
  float column_lack = 0;                 ///< what the last column's content was higher than its view; below 0: lower
  std::vector<Box> items, items_before;  ///< boxes of this frame's items and of the last one's
  float menu_width = 0;                  ///< of the menu being drawn
  double ring_since_s = 0;               ///< since when the ring stands where it stands

  /// Values on their way to a new one, by the hash of an id.
  struct Eased {
    float from = 0, to = 0;
    double since_s = 0;
    int seen_frame = 0;
  };
  std::unordered_map<unsigned, Eased> eased;
};

/// At the start of a frame, after ImGui::NewFrame: forgets the spots of the last one.
void begin_ui(Ui& ui, const Palette& palette, const Faces& faces, float device_scale);

/// Dear ImGui's own look and keys as we need them; once, after ImGui::CreateContext.
void set_imgui_style();

/// The pen for the current window.
Pen pen_of(const Ui& ui);

/// How the keyboard's ring stands around an item.
enum class Ring { outside, inside, none };

struct ItemLook {
  float rounding = 4;
  Ring ring = Ring::outside;
  bool enabled = true;
  bool repeat = false;        ///< `pressed` again and again while held
  bool exact = false;         ///< keep the hit area as small as the box (neighbours touch on all sides)
  bool exact_across = false;  ///< only its width (neighbours at the sides)
  bool pointer_only = false;  ///< not reached by Tab: something else does the same by keyboard
  bool arrows_only = false;   ///< one of many of a list: the arrow keys reach it, Tab only another one of them
  bool allow_over = false;    ///< items submitted later, on top of this one, come first
  bool text_cursor = false;
};

struct Item {
  bool hovered = false;
  bool held = false;
  bool focused = false;  ///< has the keyboard, whether or not the ring shows
  bool ring = false;     ///< has the keyboard and shows it
  bool arrived = false;  ///< the keyboard came to it in this frame
  bool pressed = false;  ///< clicked, tapped, Enter or Space
  bool visible = true;
};

/// One thing that can be used: hit-testing, Tab, arrows, Enter, spot. Draws nothing: draw the thing, then `draw_ring`.
Item item(Ui& ui, std::string_view id, const Box& box, std::string_view label, const ItemLook& look = {});

/// The keyboard's ring: 2 px with a gap of 2 px, or inside the box. Colour 0: the palette's.
void draw_ring(const Ui& ui, const Box& box, const ItemLook& look, ImU32 colour = 0);

/// Only a spot, for what is read or aimed at but not used by Dear ImGui's keyboard (a fish in the tank).
void add_spot(Ui& ui, std::string_view id, const Box& box, std::string_view label, bool enabled = true);

/// Moves towards `target` in `ms`, ease-out, and asks for frames while it moves. At once under reduced motion and when first
/// seen.
float eased(Ui& ui, std::string_view id, float target, float ms = 180);

/// True while a character that steps a number up (+) or down (−, -) was typed in this frame: +1, −1 or 0.
int typed_step();

/// A filled box with a border one device pixel wide on whole device pixels; a colour with alpha 0 leaves its part out.
void draw_panel(const Pen& pen, const Box& box, ImU32 fill, ImU32 border, float rounding = 4, ImDrawFlags corners = 0,
                float thickness = 1);
/// A straight hairline on whole device pixels.
void draw_rule(const Pen& pen, float x1, float y, float x2, ImU32 colour);
void draw_rule_down(const Pen& pen, float x, float y1, float y2, ImU32 colour);

/// A colour between two for the state of a control, eased over 90 ms.
ImU32 eased_colour(Ui& ui, std::string_view id, ImU32 off, ImU32 on, bool is_on);

}  // namespace shoalwright
