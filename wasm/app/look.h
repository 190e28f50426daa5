// SPDX-License-Identifier: MIT
// What every view may look at: const references, valid for one frame.
#pragma once

#include <optional>
#include <string>

#include "app/actions.h"
#include "app/measures.h"
#include "app/preferences.h"
#include "app/spread_now.h"
#include "assess/assess.h"
#include "assess/margin.h"
#include "catalog/catalog.h"
#include "draw/fish/animal.h"
#include "draw/ui.h"
#include "edit/history.h"

namespace shoalwright {

/// A kind in hand.
struct Held {
  const Species* species = nullptr;
  int count = 1;
  int number = 1;            ///< its plate, the group's own or the next free one
  bool by_keyboard = false;  ///< arrows move it, Enter drops it; else the pointer does
  bool over_tank = false;
  double x_cm = 0, depth_cm = 0;
  bool in_plan = false;  ///< the plan has a group of it already: dropping adds to it
};

struct Look {
  const Catalog& catalog;
  const History& history;
  const Plan& plan;       ///< as it is
  const Assessment& now;  ///< of `plan`
  const Plan& shown;      ///< with what is held or previewed; the same as `plan` when nothing is
  const Assessment& shown_assessment;
  const BodyRooms& shown_bodies;     ///< what bodies find in `shown`
  const SpreadNow& spread;           ///< who is where in it
  const MarginTable& now_margins;    ///< what stands behind the margins of `now`, counted in the kind in hand where it takes part
  const MarginTable& shown_margins;  ///< of `shown_assessment`
  const std::string& previewing;     ///< title of the preview ("If you drop 8 here"), empty when nothing is shown but the plan
  const std::optional<Held>& held;
  const Preferences& preferences;
  const Measures& measures;  ///< numbers in the keeper's units
  const std::string& pointed_species;
  const std::vector<std::size_t>& chosen_pieces;  ///< rising, of `plan`
  const std::optional<int>& chosen_terrain;       ///< the substrate is worked on: a point of its terrain line, -1 none
  const std::string& piece_in_hand;               ///< a kind dragged off the shelf, not yet over the tank
  Sheet sheet;
  Age age = Age::grown;  ///< what is shown is the stock at
  AnimalStore& animals;

  bool is_previewing() const { return !previewing.empty(); }
};

/// Plate number of a species in `shown`: its place in the merged stock, from 1; 0 when it is not there.
int plate_of(const Look& look, const std::string& species);
/// The card of a species, the keeper's own first. Null when unknown.
const Species* species_of(const Look& look, const std::string& species);
/// What a species is called: its display name, or the text as written when unknown.
std::string name_of_species(const Look& look, const std::string& species);

}  // namespace shoalwright
