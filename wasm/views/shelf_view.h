// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "app/look.h"
#include "draw/ui.h"
#include "views/piece_shelf.h"
#include "views/shelf_work.h"

namespace shoalwright {

/// What the shelf keeps: what is asked of it, and its answers.
struct ShelfState {
  std::string search;
  ShelfFilter filter;
  ShelfOrder order = ShelfOrder::closest_first;
  ShelfWork work;
  ShelfRows rows;
  ShelfPart part = ShelfPart::animals;
  PieceShelfState pieces;
  int page = 0;               ///< so many rows at once, in a page that scrolls as a whole; 0: all, in a list that scrolls
  bool by_tap = false;        ///< each kind is judged in the tap water as it comes, whatever the plan aims at
  bool ticking = false;       ///< rows are ticked for what a shop has, not picked up
  Box group_at;               ///< the button of the menu of groups
  bool groups_asked = false;  ///< it was pressed and the menu is yet to open
  struct LabelFound {
    std::string query;
    std::size_t kinds = 0;  ///< of the shelf
    int sold = 0;           ///< under that word; 0: it is no label
  } label;
  bool open = false;  ///< slid over the tank where it is folded to a rail
};

/// All kinds that there are, each with its room beside the plan as it is. Spots: `shelf.search`,
/// `shelf.filter/has-room|small|shoals|shrimp|shop`, `shelf.group`, `shelf.level/0..3`, `shelf.order`, `shelf.row/<species>`, and
/// where nothing is found `shelf.closest`, `shelf.clear`, `shelf.own`; `shelf.next` where there are more than a page;
/// `shelf.by_tap`, `shelf.by_plan` while it judges by the tap; `shelf.part/0..3` for animals, wood and stone, plants, gear. One
/// row is a stop of the Tab key, the arrow keys go from row to row.
void draw_shelf(Ui& ui, const Look& look, const Box& box, ShelfState& mine, Actions& out);

/// The shelf folded to a strip with a button that opens it. Spot: `shelf.open`.
void draw_shelf_rail(Ui& ui, const Look& look, const Box& box, ShelfState& mine, Actions& out);

}  // namespace shoalwright
