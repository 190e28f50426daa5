// SPDX-License-Identifier: MIT
// What the parts of a kind's page share while they are drawn one below the other.
#pragma once

#include <string_view>

#include "app/card_facts.h"
#include "views/species_page_view.h"

namespace shoalwright {

struct SpeciesDesk {
  Ui& ui;
  const Look& look;
  SpeciesPageState& mine;
  const Species& species;
  Actions& out;
};

/// The heading of a part with a rule above it, and a quiet remark at its right.
void species_heading(SpeciesDesk& desk, Stack& stack, std::string_view words, std::string_view remark = {});
/// Supporting text over the whole width.
void species_note(SpeciesDesk& desk, Stack& stack, std::string_view words);

/// The tank from the front with a grown one in it, and beside it one of the size when sold, all at one scale.
void draw_species_picture(SpeciesDesk& desk, Stack& stack, float most_height);
/// Male and female side by side at one scale, of kinds whose sexes look like two.
void draw_species_sexes(SpeciesDesk& desk, Stack& stack);
/// How many fit, what gives first, what a good group would bring, with the remedies.
void draw_species_fit(SpeciesDesk& desk, Stack& stack);
/// Its ranges over the plan's window and water.
void draw_species_water(SpeciesDesk& desk, Stack& stack);
/// Who suits it and who does not.
void draw_species_company(SpeciesDesk& desk, Stack& stack);
/// The facts of the card, how it breeds, cautions, and the sources that they cite.
void draw_species_facts(SpeciesDesk& desk, Stack& stack);

}  // namespace shoalwright
