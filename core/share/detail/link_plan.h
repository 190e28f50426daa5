// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"
#include "share/detail/link_coder.h"

namespace shoalwright {

/// Takes every member of a plan through the coder in the order of link version 1. `with_log`: the log too.
void code_plan_v1(LinkCoder& coder, Plan& plan, bool with_log);

}  // namespace shoalwright
