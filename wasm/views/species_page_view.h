// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "advice/company.h"
#include "advice/shelf.h"
#include "app/look.h"
#include "catalog/rest_of_card.h"
#include "draw/ui.h"

namespace shoalwright {

struct SpeciesPageState {
  std::string species;                         ///< whose page it is
  std::vector<std::string> before;             ///< pages that led here, the last one first to go back to
  std::string opened_from;                     ///< where the keyboard was
  bool begun = false;                          ///< false: it opens with this frame
  std::size_t good_shown = 0, poor_shown = 0;  ///< rows of the two lists of company; 0: as many as at first

  /// Worked out for one kind in one plan, and kept until either is another.
  struct Worked {
    bool done = false;
    std::string species;
    Plan plan;
    ShelfAnswer answer;
    int dropped = 1;               ///< how many are dropped in for `raised`
    std::vector<Finding> raised;   ///< what they would bring
    std::optional<Finding> stops;  ///< what the one past the largest group would bring, where that is known
    Company company;               ///< of the kinds of `plan` and the catalogue
    RestOfCard rest;
  } worked;
};

/// All about one kind in a card over `box`: to scale in this tank, what it would need here, its water beside the plan's, company,
/// the facts of its card with their evidence, breeding, cautions. Spots: `species.*`; `species.good/<species>` and
/// `species.poor/<species>` open that kind's page.
[[gnu::noinline]] void draw_species_page(Ui& ui, const Look& look, const Box& box, SpeciesPageState& mine, Actions& out);

}  // namespace shoalwright
