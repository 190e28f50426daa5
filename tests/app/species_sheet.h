// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "catalog/species.h"
#include "draw/palette.h"
#include "support/raster.h"

namespace shoalwright {

/// One cell of a contact sheet.
struct SheetAnimal {
  std::string name, number;
  Species::Look look;
};

/// Animals in rows with their names and numbers: each drawn as large as its cell allows, beside it its outline as a shelf row
/// shows it, 36 pixels long.
Picture species_sheet(const std::vector<SheetAnimal>& animals, const std::string& title, Theme theme, int columns = 6);

}  // namespace shoalwright
