// SPDX-License-Identifier: MIT
#include "catalog/piece_kind.h"
#include "catalog/plural.h"
#include "edit/command.h"
#include "edit/detail/lines.h"
#include "plan/words.h"

namespace shoalwright {

namespace {

std::string words_of(std::string text) {
  for (char& c : text)
    if (c == '-') c = ' ';
  return text;
}

struct NameOf {
  const Plan& before;
  const Catalog& catalog;

  std::string name(const std::string& species, int count) const {
    const Species* known = species_of(before, catalog, species);
    return known != nullptr ? name_for(*known, count) : species;
  }
  std::string some(int count, const std::string& species) const { return std::to_string(count) + ' ' + name(species, count); }
  std::string piece(std::size_t index) const {
    return index < before.pieces.size() ? called(before.pieces[index].kind) : "piece";
  }

  std::string operator()(const AddGroup& edit) const {
    const bool more = total_of(before, catalog, edit.species).count > 0;
    return "Add " +
           (more ? std::to_string(edit.count) + " more " + name(edit.species, edit.count) : some(edit.count, edit.species));
  }
  std::string operator()(const SetCount& edit) const {
    const Total now = total_of(before, catalog, edit.species);
    const int change = edit.count - now.count;
    if (change == 0) return "Count of " + name(edit.species, 2);
    if (change > 0) return std::to_string(change) + " more " + name(edit.species, change);
    if (edit.count < now.have) return "Re-home " + some(now.have - edit.count, edit.species);
    return std::to_string(-change) + " fewer " + name(edit.species, -change);
  }
  std::string operator()(const TakeOut& edit) const {
    const Total now = total_of(before, catalog, edit.species);
    return now.have > 0 ? "Re-home " + some(now.have, edit.species) : "Take out " + some(now.count, edit.species);
  }
  std::string operator()(const SetHave& edit) const {
    if (edit.have <= 0) return "No " + name(edit.species, 2) + " here yet";
    return some(edit.have, edit.species) + (edit.have == 1 ? " swims" : " swim") + " here";
  }
  std::string operator()(const SetSexes& edit) const { return "Sexes of " + name(edit.species, 2); }
  std::string operator()(const SetArrival& edit) const {
    return edit.week ? name(edit.species, 2) + " arrive in week " + std::to_string(*edit.week)
                     : "Arrival of " + name(edit.species, 2);
  }
  std::string operator()(const SetGroupNote& edit) const { return "Note on " + name(edit.species, 2); }
  std::string operator()(const PutPiece& edit) const { return "Put in " + called(edit.piece.kind); }
  std::string operator()(const ChangePiece& edit) const {
    if (!(edit.index < before.pieces.size())) return "Change piece";
    Piece moved = before.pieces[edit.index];
    moved.x_cm = edit.piece.x_cm;
    moved.z_cm = edit.piece.z_cm;
    if (moved == edit.piece) return "Move " + piece(edit.index);
    moved.turn_deg = edit.piece.turn_deg;
    moved.mirror = edit.piece.mirror;
    return (moved == edit.piece ? "Turn " : "Change ") + piece(edit.index);
  }
  std::string operator()(const TakePiece& edit) const { return "Take out " + piece(edit.index); }
  std::string operator()(const PinPiece& edit) const { return (edit.pinned ? "Lock " : "Unlock ") + piece(edit.index); }
  std::string operator()(const SetTank&) const { return "Change the tank"; }
  std::string operator()(const SetSubstrate& edit) const {
    if (edit.substrate.kind != before.substrate.kind) return "Substrate: " + words_of(std::string(word_of(edit.substrate.kind)));
    if (edit.substrate.line_cm == before.substrate.line_cm) return "Substrate depth";
    return edit.substrate.line_cm.empty() ? "Level the substrate" : "Terrain line";
  }
  std::string operator()(const SetLid& edit) const {
    return !edit.lid ? "Lid not known" : *edit.lid ? "Add a lid" : "Take the lid off";
  }
  std::string operator()(const SetSource&) const { return "Change the tap water"; }
  std::string operator()(const SetAim& edit) const { return edit.water ? "Change the water aimed at" : "Use the tap water"; }
  std::string operator()(const SetMeasured&) const { return "Enter readings"; }
  std::string operator()(const SetLimits&) const { return "Change the ceilings"; }
  std::string operator()(const SetGear&) const { return "Change the gear"; }
  std::string operator()(const SetRunning&) const { return "Weeks that the filter has run"; }
  std::string operator()(const SetUpkeep&) const { return "Change the upkeep"; }
  std::string operator()(const SetFeeding&) const { return "Change the feeding"; }
  std::string operator()(const SetPlanting& edit) const {
    return "Planting: " + (edit.planting ? std::string(word_of(*edit.planting)) : "not known");
  }
  std::string operator()(const SetPlace&) const { return "Change the place"; }
  std::string operator()(const SetStrictness& edit) const { return "View: " + std::string(word_of(edit.strictness)); }
  std::string operator()(const Rename& edit) const { return edit.name.empty() ? "Take the name off" : "Name it " + edit.name; }
  std::string operator()(const SetNotes&) const { return "Write notes"; }
  std::string operator()(const SetSeen& edit) const {
    return (edit.known ? "I know: " : "No longer known: ") + words_of(edit.rule);
  }
  std::string operator()(const SetOwnSpecies& edit) const {
    const std::string name = display_name(edit.species);
    if (find_species(catalog, std::string_view(edit.species.id)) != nullptr) return "Own values for " + name_for(edit.species, 2);
    for (const Species& one : before.own_species)
      if (one.id == edit.species.id) return "Change " + name;
    return "Own kind: " + name;
  }
  std::string operator()(const DropOwnSpecies& edit) const {
    if (find_species(catalog, std::string_view(edit.id)) != nullptr) return "Catalogue’s values for " + name(edit.id, 2);
    const int count = total_of(before, catalog, edit.id).count;
    return "Remove " + name(edit.id, 1) + (count > 0 ? " and its " + std::to_string(count) : "");
  }
};

/// A species may be named in several ways; one name is enough for a key.
struct JoinOf {
  std::string operator()(const AddGroup&) const { return ""; }
  std::string operator()(const SetCount& edit) const { return "count " + edit.species; }
  std::string operator()(const TakeOut&) const { return ""; }
  std::string operator()(const SetHave& edit) const { return "have " + edit.species; }
  std::string operator()(const SetSexes& edit) const { return "sexes " + edit.species; }
  std::string operator()(const SetArrival& edit) const { return "arrival " + edit.species; }
  std::string operator()(const SetGroupNote& edit) const { return "note " + edit.species; }
  std::string operator()(const PutPiece&) const { return ""; }
  std::string operator()(const ChangePiece& edit) const { return "piece " + std::to_string(edit.index); }
  std::string operator()(const TakePiece&) const { return ""; }
  std::string operator()(const PinPiece&) const { return ""; }
  std::string operator()(const SetTank&) const { return "tank"; }
  std::string operator()(const SetSubstrate&) const { return "substrate"; }
  std::string operator()(const SetLid&) const { return ""; }
  std::string operator()(const SetSource&) const { return "source"; }
  std::string operator()(const SetAim&) const { return "aim"; }
  std::string operator()(const SetMeasured&) const { return "measured"; }
  std::string operator()(const SetLimits&) const { return "limits"; }
  std::string operator()(const SetGear&) const { return "gear"; }
  std::string operator()(const SetRunning&) const { return "running"; }
  std::string operator()(const SetUpkeep&) const { return "upkeep"; }
  std::string operator()(const SetFeeding&) const { return "feeding"; }
  std::string operator()(const SetPlanting&) const { return "planting"; }
  std::string operator()(const SetPlace&) const { return "place"; }
  std::string operator()(const SetStrictness&) const { return ""; }
  std::string operator()(const Rename&) const { return "name"; }
  std::string operator()(const SetNotes&) const { return "notes"; }
  std::string operator()(const SetSeen&) const { return ""; }
  std::string operator()(const SetOwnSpecies&) const { return ""; }
  std::string operator()(const DropOwnSpecies&) const { return ""; }
};

}  // namespace

std::string name_of(const Command& command, const Plan& before, const Catalog& catalog) {
  return std::visit(NameOf{before, catalog}, command);
}

std::string join_of(const Command& command) { return std::visit(JoinOf{}, command); }

}  // namespace shoalwright
