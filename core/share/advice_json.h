// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "advice/suggest.h"
#include "advice/tank_for.h"

namespace shoalwright {

// Answers of the helper (FORMATS section 6).

/// `[{"species":id,"count":n,"fit":"fits|close|no","first":{…},"findings":[rule]}]`, best first. `first` is null where no margin
/// is known.
std::string suggestions_json(const std::vector<Suggestion>& suggestions);

/// `{"tanks":[{"length_cm":…,"width_cm":…,"height_cm":…,"volume_l":…,"set_by":{"length":rule,"width":rule,"height":rule}}]}`,
/// outside measures; with `name` of a usual size or null, and `why_none`, null where there are tanks.
std::string least_tanks_json(const TanksFor& found);

}  // namespace shoalwright
