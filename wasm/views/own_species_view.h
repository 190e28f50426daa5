// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "app/look.h"
#include "draw/ui.h"
#include "units/json.h"
#include "units/result.h"

namespace shoalwright {

struct OwnSpeciesState {
  std::string species;      ///< whose values are written; empty: a kind begun anew
  bool copy = false;        ///< as a kind of its own beside `species`, else over its values
  std::string opened_from;  ///< where the keyboard was
  bool begun = false;       ///< false: it opens with this frame

  /// What is being written. It stays while the sheet is closed, until it is saved or another one is begun.
  struct Draft {
    bool there = false;
    std::string species;
    bool copy = false;
    Json card;
    bool tried = false;   ///< saving was tried: what is missing is said too
    std::string checked;  ///< the card that `errors` are of
    std::vector<Error> errors;
    std::string sentence;  ///< why it was not saved
  } draft;
  int colour = 1;  ///< which of the colours is being chosen
};

/// A kind of the keeper's own, or own values for a kind of the catalogue, in a card over `box`: every field that a keeper can
/// know, with a live picture, checked as the reader of cards checks. Spots: `own.*`, fields by their path:
/// `own.size.adult_tl_cm`, what is wrong with one `own.error/size.adult_tl_cm`.
[[gnu::noinline]] void draw_own_species(Ui& ui, const Look& look, const Box& box, OwnSpeciesState& mine, Actions& out);

}  // namespace shoalwright
