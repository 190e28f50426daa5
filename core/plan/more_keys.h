// SPDX-License-Identifier: MIT
// Keys of the plan that came after the first version and seldom stand in one. They are read from and written among the keys that
// the reader keeps without knowing them, so that files and links of the first version carry them, there and back.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "plan/plan.h"

namespace shoalwright {

/// `"private": true` in `source`: the keeper's own well, spring or rain, of which no supplier's report speaks. Anything else than
/// true counts as not said.
bool is_private(const SourceWater& source);
void set_private(SourceWater& source, bool own);

/// `"chloride_mg_l"` in `measured`: chloride of the tank, 0 or more. Empty where it is not given or no such number.
std::optional<double> chloride_mg_l(const Measured& measured);
void set_chloride_mg_l(Measured& measured, std::optional<double> chloride_mg_l);

/// A key of the plan itself, as JSON text; empty where it has none. Set to an empty text it is taken away; `value_json` must be
/// JSON.
std::string more_key(const Plan& plan, std::string_view key);
void set_more_key(Plan& plan, std::string_view key, std::string_view value_json);

}  // namespace shoalwright
