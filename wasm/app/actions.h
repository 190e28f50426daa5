// SPDX-License-Identifier: MIT
// What views hand back: plain wishes, collected during the frame and carried out after it (app/carry_out.cpp). A view never
// changes a plan.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "advice/years.h"
#include "app/preferences.h"
#include "plan/plan.h"

namespace shoalwright {

/// One undoable step: the plan as it is to be, the name of the step ("Add 8 cherry barbs"), and a key by which steps that follow
/// within a second become one ("count danio-rerio").
struct EditPlan {
  Plan plan;
  std::string name, join;
};

/// Shown in this frame as if it had been done: a remedy pointed at, a size in the tank chooser.
struct PreviewPlan {
  Plan plan;
  std::string title;  ///< "With a lid"
};

/// A kind is taken from the shelf (or a group from the tank, to be moved or put back).
struct PickUp {
  std::string species;
  int count = 1;
  bool by_keyboard = false;
};
/// How many are in hand now.
struct HoldCount {
  int count = 1;
};
/// Where in the tank it is held, cm from the left inside glass and below the water line; empty: not over the tank.
struct HoldOver {
  std::optional<double> x_cm, depth_cm;
};
struct Drop {};
struct PutBack {};

struct Undo {};
struct Redo {};
struct NewPlan {};
struct OpenPlan {};
struct SavePlan {};
struct ShareLink {};
struct OpenDemo {};
/// Marks a finding as known, or takes that back.
struct Know {
  std::string rule;
  std::vector<std::string> species;
  bool known = true;
};
struct SetPreferences {
  Preferences preferences;
};
enum class Sheet { none, tank, water, readings, species, own_species, label, fill };
struct ShowSheet {
  Sheet sheet = Sheet::none;
};
/// All about one kind; `back`: it is the page that the open one was opened from.
struct ShowSpecies {
  std::string species;
  bool back = false;
};
/// What is sold under a word of the trade.
struct ShowLabel {
  std::string word;
};
/// A kind of the keeper's own is written: begun anew (`species` empty), over the values of a kind, or as a copy that stands
/// beside it.
struct WriteSpecies {
  std::string species;
  bool copy = false;
};
/// Outline of the group with this species in every view; empty: none.
struct PointAt {
  std::string species;
};
/// The shelf judges by the tap as it comes, or again by the water that the plan aims at.
struct JudgeShelf {
  bool by_tap = true;
};
/// A page on paper (app/paper.h).
struct PrintPage {
  std::string lines;
};
/// Somebody looks who is where.
struct AskWhoIsWhere {};
/// The tank is shown and judged as its stock is at another age.
struct ShowAge {
  Age age = Age::grown;
  /// What makes a plan of that age: at_age(), named by the view since both are in the second file.
  Plan (*at_age)(const Plan& plan, const Catalog& catalog, Age age) = nullptr;
};
/// A short note at the foot of the window.
struct Tell {
  std::string text, action;  ///< action "" or "Undo"
};
/// Pieces that are worked on, by their places in the plan; none: no longer.
struct ChoosePieces {
  std::vector<std::size_t> pieces;
};
/// The substrate is worked on, and which point of its terrain line (-1: none); empty: no longer.
struct ChooseTerrain {
  std::optional<int> point;
};
/// A kind of piece dragged off the shelf, until it is over the tank; empty: no longer.
struct HoldPiece {
  std::string kind;
};
/// The keyboard goes to the item of that id.
struct FocusItem {
  std::string id;
};

using Action =
    std::variant<EditPlan, PreviewPlan, PickUp, HoldCount, HoldOver, Drop, PutBack, Undo, Redo, NewPlan, OpenPlan, SavePlan,
                 ShareLink, OpenDemo, Know, SetPreferences, ShowSheet, ShowSpecies, ShowLabel, WriteSpecies, PointAt,
                 ChoosePieces, ChooseTerrain, HoldPiece, AskWhoIsWhere, Tell, FocusItem, JudgeShelf, PrintPage, ShowAge>;
using Actions = std::vector<Action>;

}  // namespace shoalwright
