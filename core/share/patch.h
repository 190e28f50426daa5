// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "notebook/finding.h"
#include "plan/plan.h"
#include "units/result.h"

namespace shoalwright {

/// The plan after a JSON Patch (RFC 6902) on its canonical form, read again and checked like any plan.
Result<Plan> apply_patch(const Plan& plan, const std::vector<PatchStep>& steps);

}  // namespace shoalwright
