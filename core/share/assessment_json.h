// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "assess/assessment.h"
#include "share/json_out.h"

namespace shoalwright {

/// FORMATS section 3. A value that does not exist is null, never 0 or NaN.
std::string assessment_json(const Assessment& assessment);

/// One margin of it as an object.
void write(JsonOut& out, const Tightest& tightest);

}  // namespace shoalwright
