// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "mend/mend.h"

namespace shoalwright {

/// FORMATS section 6: `{"mends":[{"cost":x,"edits":[patch],"says":[text],"left":[rule]}],"why_none":null}`.
std::string mends_json(const Mends& mends);

}  // namespace shoalwright
