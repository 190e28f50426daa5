// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>
#include <vector>

#include "notebook/finding.h"
#include "plan/plan.h"
#include "units/result.h"

namespace shoalwright {

/// The plan after a JSON Patch (RFC 6902) on its canonical form, read again and checked like any plan.
Result<Plan> apply_patch(const Plan& plan, const std::vector<PatchStep>& steps);

/// The same when the keeper takes up a remedy: what it sets is decided from then on and no longer assumed.
Result<Plan> take_remedy(const Plan& plan, const std::vector<PatchStep>& steps);

/// The steps of a JSON Patch: a list of add, remove, replace, move, copy and test. `from` of move and copy stands in `value_json`
/// of their step as a JSON text.
Result<std::vector<PatchStep>> read_patch(std::string_view json_text);

/// The steps as the text of a JSON Patch.
std::string steps_json(const std::vector<PatchStep>& steps);

/// The value under a JSON Pointer (RFC 6901) of a JSON document, in canonical order of keys; empty where there is none.
std::string json_at(std::string_view document, std::string_view pointer);

/// Any JSON document after a patch, in canonical order of keys (RFC 6902 section 3: all steps or none).
Result<std::string> patch_json(std::string_view document, const std::vector<PatchStep>& steps);

}  // namespace shoalwright
