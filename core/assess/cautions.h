// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

#include "rules/facts.h"

namespace shoalwright {

/// The usual cautions of the craft that this plan calls for, short, for screen and paper. They are no findings and never count
/// against a plan; where a code, a licensed trade, a doctor or a vet has a say, they decide. Common practice, no source.
std::vector<std::string> cautions_for(const Facts& facts);

}  // namespace shoalwright
