// SPDX-License-Identifier: MIT
// What stays on the device: preferences, and names of files.
#pragma once

#include <string>

#include "app/preferences.h"
#include "plan/plan.h"

namespace shoalwright {

Preferences kept_preferences();
void keep_preferences(const Preferences& preferences);

/// A file name for a plan: its name in small letters, digits and hyphens, ".json" at the end.
std::string file_name_of(const Plan& plan);

}  // namespace shoalwright
