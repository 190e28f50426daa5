// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"
#include "share/detail/link_coder.h"

namespace shoalwright {

/// Takes every member of a plan through the coder in the order of a link's version. `with_log`: the log too. Version 1 knows no
/// terrain line; version 2 is version 1 with a line of at least one point after the depths of the substrate.
void code_plan(LinkCoder& coder, Plan& plan, bool with_log, int version);

}  // namespace shoalwright
