// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "app/look.h"

namespace shoalwright {

/// The plan as plain lines for platform::set_plan_text: title, stock as a table, margins, findings, cautions, and what can be
/// done from there. Tells the plan as it is, not what is held.
std::string plan_text(const Look& look);

/// What a keeper has written, kept on its line and out of a table's cells.
std::string on_one_line(std::string text);

}  // namespace shoalwright
