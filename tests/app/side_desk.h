// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <string>

#include "app/look.h"
#include "platform/headless.h"
#include "support/raster.h"
#include "views/held_view.h"
#include "views/shelf_view.h"
#include "views/stock_view.h"

namespace shoalwright {

/// The shelf, the card in hand and the stock list at the places of the 1440 x 900 window, with a mouse and a keyboard that press
/// and type on them, and their wishes carried out as plainly as can be.
class SideDesk {
 public:
  explicit SideDesk(Plan plan, bool paints = false, Theme theme = Theme::light, float scale = 1);
  ~SideDesk();
  SideDesk(const SideDesk&) = delete;
  SideDesk& operator=(const SideDesk&) = delete;

  void frame();
  void frames(int count) {
    for (int i = 0; i < count; ++i) frame();
  }
  /// Frames until nothing more is asked for.
  void rest();

  const Spots::Spot* spot(const std::string& id) const { return ui.spots.find(id); }
  ImVec2 middle(const std::string& id) const;
  void move_to(ImVec2 at);
  void press();
  void release();
  void click(const std::string& id);
  void double_click(const std::string& id);
  void key(ImGuiKeyChord chord);
  /// A character as the keyboard sends it.
  void character(char c);

  /// The number of wishes of that kind since the desk was made.
  template <class Wish>
  int wished() const {
    int count = 0;
    for (const Action& action : all)
      if (std::holds_alternative<Wish>(action)) ++count;
    return count;
  }
  const EditPlan* last_edit() const;

  Catalog catalog;
  History history;
  Plan shown;
  Assessment now, shown_assessment;
  BodyRooms bodies, shown_bodies;
  MarginTable now_margins, shown_margins;
  SpreadNow spread;
  std::string previewing, pointed, piece_in_hand;
  std::vector<std::size_t> chosen;
  std::optional<int> chosen_terrain;
  std::optional<Held> held;
  Preferences preferences;
  Measures measures;
  AnimalStore animals;
  Ui ui;
  ShelfState shelf;
  HeldState held_state;
  StockState stock;
  Actions all;
  Picture picture;  ///< of the last frame, when it paints
  Box shelf_box{0, 52, 296, 848}, stock_box{720, 554, 356, 310};
  bool with_shelf_rail = false;

 private:
  void draw();
  void carry_out(const Actions& wishes);
  void show();

  bool paints_;
  Theme theme_;
  std::string fonts_[4];
  Faces faces_;
};

/// A plan of tests/plans.
Plan plan_from(const std::string& name);

}  // namespace shoalwright
