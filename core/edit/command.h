// SPDX-License-Identifier: MIT
// Every edit of a plan that has a name of its own, as plain data. Edits found by the rules come as patches (share/patch.h).
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// `count` more of a species; joins the first line of that species, or begins one at the end.
struct AddGroup {
  std::string species;
  int count = 1;
};
/// How many of a species in all, at least 1; further lines of the same species are folded into the first. Where fewer are left
/// than there were males and females, nobody knows which, so that both become unknown.
struct SetCount {
  std::string species;
  int count = 1;
};
struct TakeOut {
  std::string species;
};
/// How many swim already; held within 0 and the count.
struct SetHave {
  std::string species;
  int have = 0;
};
struct SetSexes {
  std::string species;
  std::optional<int> males, females;
};
/// The week in which a species arrives; empty: not said.
struct SetArrival {
  std::string species;
  std::optional<int> week;
};
struct SetGroupNote {
  std::string species, note;
};
/// A piece at the end of the list.
struct PutPiece {
  Piece piece;
};
/// A piece moved, turned, resized or exchanged; nothing happens where there is no such piece.
struct ChangePiece {
  std::size_t index = 0;
  Piece piece;
};
struct TakePiece {
  std::size_t index = 0;
};
/// A piece that no suggestion and no hand moves, or no longer.
struct PinPiece {
  std::size_t index = 0;
  bool pinned = true;
};
/// A terrain line that would not fit into it is squeezed to the same shares of the length.
struct SetTank {
  Tank tank;
};
/// On a bare bottom no terrain line is left.
struct SetSubstrate {
  Substrate substrate;
};
struct SetLid {
  std::optional<bool> lid;
};
struct SetSource {
  SourceWater source;
};
/// Empty: the tank runs on the source water.
struct SetAim {
  std::optional<WaterAim> water;
};
/// What the tank reads now; empty: nothing was measured.
struct SetMeasured {
  std::optional<Measured> measured;
};
struct SetLimits {
  Limits limits;
};
struct SetGear {
  std::optional<Gear> gear;
};
struct SetRunning {
  std::optional<double> weeks;
};
struct SetUpkeep {
  std::optional<Upkeep> upkeep;
};
struct SetFeeding {
  std::optional<Feeding> feeding;
};
struct SetPlanting {
  std::optional<Planting> planting;
};
struct SetPlace {
  Place place;
};
struct SetStrictness {
  Strictness strictness = Strictness::usual;
};
struct Rename {
  std::string name;
};
struct SetNotes {
  std::string notes;
};
/// "I know", or no longer.
struct SetSeen {
  std::string rule;
  std::vector<std::string> species;
  bool known = true;
};

/// A keeper's own card: put in the place of the one of its id, or behind the others. One with the id of a kind of the catalogue
/// overrides it.
struct SetOwnSpecies {
  Species species;
};
/// Taken out again. A kind of the catalogue counts by its own card from then on; of a kind that nobody else knows the group goes
/// too.
struct DropOwnSpecies {
  std::string id;
};

using Command = std::variant<AddGroup, SetCount, TakeOut, SetHave, SetSexes, SetArrival, SetGroupNote, PutPiece, ChangePiece,
                             TakePiece, PinPiece, SetTank, SetSubstrate, SetLid, SetSource, SetAim, SetMeasured, SetLimits,
                             SetGear, SetRunning, SetUpkeep, SetFeeding, SetPlanting, SetPlace, SetStrictness, Rename, SetNotes,
                             SetSeen, SetOwnSpecies, DropOwnSpecies>;

/// The plan after the edit. What the edit sets is no longer `assumed`. Values are not checked here: check_plan (plan/check.h)
/// says whether the result is a plan.
Plan apply(Plan plan, const Command& command, const Catalog& catalog);

/// "Add 8 cherry barbs", "2 more corydoras", "Take out 6 threadfin rainbowfish". `before` is the plan that it is applied to.
std::string name_of(const Command& command, const Plan& before, const Catalog& catalog);

/// Key by which quick repetitions become one step of undo; empty for edits that stand alone.
std::string join_of(const Command& command);

}  // namespace shoalwright
