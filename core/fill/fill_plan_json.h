// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "fill/fill.h"

namespace shoalwright {

/// FORMATS section 6: `{"stocks":[{"score":x,"stock":[{"species":id,"count":n}]}],"proven":true,"seconds":x}`; `stock` is the
/// whole of it, what is in the plan first. With `why_none`, null where something can be added.
std::string filled_json(const Plan& plan, const Catalog& catalog, const Filled& filled, double seconds);

}  // namespace shoalwright
