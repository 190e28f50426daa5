// SPDX-License-Identifier: MIT
#pragma once

#include "assess/assessment.h"
#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// All that follows from a plan. Pure: the same plan and catalogue give the same assessment. Any valid plan is answered.
Assessment assess(const Plan& plan, const Catalog& catalog);

}  // namespace shoalwright
