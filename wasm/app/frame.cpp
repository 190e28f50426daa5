// SPDX-License-Identifier: MIT
// What happens in a frame, on one page: where each view stands, in the order of the Tab key; then their wishes are carried out.
#include <cmath>

#include "app/app.h"
#include "draw/panels.h"
#include "platform/platform.h"

namespace shoalwright {

namespace {

Theme theme_of(const App& app) {
  switch (app.preferences.theme) {
    case ThemeChoice::light: return Theme::light;
    case ThemeChoice::dark: return Theme::dark;
    case ThemeChoice::system: break;
  }
  return platform::device().dark ? Theme::dark : Theme::light;
}

constexpr float top_height = 52, first_height = 70, hint_height = 36;

void draw_hint(Ui& ui, const Look& look, const Box& box, Actions& out) {
  const Pen pen = pen_of(ui);
  draw_panel(pen, box, pen.palette->panel, 0, 0);
  draw_rule(pen, box.x, box.y, box.right(), pen.palette->line);
  Box words_box = box.inset(16, 0);
  if (platform::rest_is_here()) words_box.w -= draw_years(ui, look, words_box, out) + 16;
  const float y = box.y + (box.h - type::small.line) / 2;
  const std::string words =
      look.held && look.held->by_keyboard
          ? "Arrow keys move 1 cm, Shift 5 cm. + and − change the number. Enter places, Esc puts back."
          : "Drag a row into the tank, or press Enter on it. Ctrl Z takes a step back. Kept on this device.";
  draw_text(pen, type::small, {words_box.x, y}, pen.palette->ink2, elided(pen, type::small, words, words_box.w));
}

/// Of pieces or of the substrate.
void draw_chosen_bar(App& app, const Look& look, const Box& box, Actions& out) {
  if (look.chosen_terrain)
    draw_terrain_bar(app.ui, look, box, out);
  else
    draw_piece_bar(app.ui, look, box, out);
}

/// The tank in the middle: front view with its tools, margins, view from above beside the stock.
void draw_centre(App& app, const Look& look, Box box, Actions& out) {
  const Box hint = box.cut_bottom(hint_height);
  const float upper =
      box.h - first_height > 2 * 300 ? std::max(300.0f, (box.h - first_height) * 0.545f) : (box.h - first_height) * 0.58f;
  const Box front = box.cut_top(upper);
  const Box first = box.cut_top(first_height);
  draw_tank_front(app.ui, look, front, app.views.tank, out);
  draw_gives_first(app.ui, look, first, app.views.gives_first, out);
  Box above = box.cut_left(std::floor(std::min(box.w * 0.56f, std::max(box.w - 340, 120.0f))));
  draw_tank_above(app.ui, look, above, app.views.tank, out);
  draw_stock(app.ui, look, box, app.views.stock, out);
  if (look.chosen_pieces.empty() && !look.chosen_terrain)
    draw_hint(app.ui, look, hint, out);
  else if (platform::have_rest())
    draw_chosen_bar(app, look, hint, out);
}

/// Desktop: shelf, tank, assessment side by side; between 900 and 1200 px the shelf folds to a rail.
void draw_wide(App& app, const Look& look, Box box, Actions& out) {
  app.views.shelf.page = 0;
  const bool large = box.w >= 1700;
  const bool folded = box.w < 1200;
  const Box assessment = box.cut_right(large ? 400.0f : folded ? 320.0f : 364.0f);
  const Box shelf = folded ? Box{box.x, box.y, 56, box.h} : Box{box.x, box.y, large ? 320.0f : 296.0f, box.h};
  box.cut_left(shelf.w);
  if (folded)
    draw_shelf_rail(app.ui, look, shelf, app.views.shelf, out);
  else
    draw_shelf(app.ui, look, shelf, app.views.shelf, out);
  draw_centre(app, look, box, out);
  draw_assessment(app.ui, look, assessment, app.views.assessment, out);
  if (folded && app.views.shelf.open && !look.held)
    draw_shelf(app.ui, look, {shelf.right(), box.y, 296, box.h}, app.views.shelf, out);
  if (look.held && platform::have_rest())
    draw_held(app.ui, look, {shelf.x, shelf.y, folded ? 296.0f : shelf.w, shelf.h}, app.views.held, out);
}

/// Makes the panel that was just drawn as high as the column in it wants, from the next frame on.
void follow_content(const Ui& ui, float& height) {
  if (std::fabs(ui.column_lack) < 0.5f) return;
  height += ui.column_lack;
  platform::wake(1);
}

/// Narrow windows: the tank on top, everything else one below the other in a column that scrolls.
void draw_narrow(App& app, const Look& look, Box box, Actions& out) {
  const Box tank = box.cut_top(std::min(box.h * 0.42f, std::max(240.0f, box.w * 0.62f + 44)));
  draw_tank_front(app.ui, look, tank, app.views.tank, out);
  if ((!look.chosen_pieces.empty() || look.chosen_terrain) && platform::have_rest())
    draw_chosen_bar(app, look, box.cut_top(hint_height), out);
  Column column = begin_column(app.ui, "narrow", box, app.ui.palette->ground);
  Stack stack{{column.content.x, column.content.y, column.content.w, 0}};
  if (platform::rest_is_here()) draw_years(app.ui, look, stack.take(44).inset(12, 0), out);
  draw_gives_first(app.ui, look, stack.take(box.w < 600 ? 168.0f : first_height), app.views.gives_first, out);
  NarrowHeights& heights = app.views.narrow;
  draw_stock(app.ui, look, stack.take(heights.stock), app.views.stock, out);
  follow_content(app.ui, heights.stock);
  app.views.shelf.page = std::max(app.views.shelf.page, 8);
  draw_shelf(app.ui, look, stack.take(heights.shelf), app.views.shelf, out);
  follow_content(app.ui, heights.shelf);
  draw_assessment(app.ui, look, stack.take(heights.assessment), app.views.assessment, out);
  follow_content(app.ui, heights.assessment);
  end_column(app.ui, column, stack.at);
  if (look.held && platform::have_rest())
    draw_held(app.ui, look, {box.x, box.y, std::min(box.w, 320.0f), box.h}, app.views.held, out);
}

void draw_views(App& app, const Look& look, const Box& window, Actions& out) {
  Box box = window;
  draw_top(app.ui, look, box.cut_top(top_height), app.views.top, out);
  // The water is a page of its own; what is in hand is dropped on the tank's.
  if (app.sheet == Sheet::water && !look.held && platform::have_rest()) {
    draw_water_sheet(app.ui, look, box, app.views.water_sheet, out);
    return;
  }
  if (window.w >= 900)
    draw_wide(app, look, box, out);
  else
    draw_narrow(app, look, box, out);
  if (app.sheet == Sheet::none || !platform::have_rest()) return;
  switch (app.sheet) {
    case Sheet::none:
    case Sheet::water: break;
    case Sheet::tank: draw_tank_sheet(app.ui, look, box, app.views.tank_sheet, out); break;
    case Sheet::species: draw_species_page(app.ui, look, box, app.views.species_page, out); break;
    case Sheet::own_species: draw_own_species(app.ui, look, box, app.views.own_species, out); break;
    case Sheet::fill: draw_fill(app.ui, look, box, app.views.fill, out); break;
    case Sheet::label: draw_label(app.ui, look, box, app.views.label, out); break;
    case Sheet::readings: draw_readings_sheet(app.ui, look, box, app.views.readings_sheet, out); break;
  }
}

}  // namespace

void draw_frame(App& app) {
  if (ImGui::GetFrameCount() > 1) {  // not before the first frame: it is waited for
    take_catalogue(app);
    follow_link(app);
    search_remedies(app);
    follow_spread(app);
    if (!ImGui::IsMouseDown(ImGuiMouseButton_Left)) tell_page(app);  // not in the midst of a drag
  }
  const platform::Surface surface = platform::surface();
  app.ui.touch = platform::device().coarse_pointer;
  app.ui.reduced_motion = platform::device().reduced_motion;
  begin_ui(app.ui, palette(theme_of(app)), app.faces, surface.pixel_ratio);

  Actions wishes;
  read_keys(app, wishes);
  const Box window{0, 0, surface.width, surface.height};
  ImGui::SetNextWindowPos({0, 0});
  ImGui::SetNextWindowSize({surface.width, surface.height});
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, ImVec2(0, 0));
  ImGui::Begin("planner", nullptr,
               ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings |
                   ImGuiWindowFlags_NoBringToFrontOnFocus | ImGuiWindowFlags_NoScrollWithMouse | ImGuiWindowFlags_NoBackground);
  const Pen pen = pen_of(app.ui);
  draw_panel(pen, window, pen.palette->ground, 0, 0);
  const Look look = look_at(app);
  draw_views(app, look, window, wishes);
  bool toast_pressed = draw_toast(app.ui, app.toast, {window.w / 2, window.h - 48});
  const bool answered = app.notice && draw_notice(app.ui, window, app.notice->heading, app.notice->sentence);
  ImGui::End();
  ImGui::PopStyleVar();

  if (answered) app.notice.reset();
  if (!ImGui::IsMouseDown(ImGuiMouseButton_Left)) app.piece_in_hand.clear();
  if (toast_pressed) wishes.push_back(Undo{});
  carry_out(app, wishes);
}

}  // namespace shoalwright
