// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "app/look.h"
#include "views/species_page_view.h"

namespace shoalwright {

/// A kind on one page, as lines of platform::print_page: what it needs, what it would bring here, company, the card with its
/// evidence, cautions. `today` as units/day.h counts.
std::string species_paper(const Look& look, const Species& species, const SpeciesPageState::Worked& worked, int today);

}  // namespace shoalwright
