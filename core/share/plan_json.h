// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "plan/plan.h"
#include "units/result.h"

namespace shoalwright {

/// Reads a plan (FORMATS section 2). Absent keys get their defaults and are listed in `assumed` where they enter a verdict;
/// unknown keys are kept; a wrong type or an impossible number is an error that names the key's JSON Pointer and what was
/// expected.
Result<Plan> read_plan(std::string_view json_text);

/// The canonical form: defaults written out, keys in fixed order, shortest exact numbers; equal plans have equal text.
std::string plan_json(const Plan& plan);

}  // namespace shoalwright
