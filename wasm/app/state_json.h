// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "app/app.h"

namespace shoalwright {

/// What the app holds and where its things stand, for tests that drive it by a real mouse: {"plan": …, "assessment": …, "held":
/// {"species", "count"} or null, "previewing": "", "undo": "", "redo": "", "theme": "light", "rects": {id: [x, y, width,
/// height]}}. Rectangles are those of the last frame, in CSS pixels; what is scrolled out of sight is left out.
std::string state_json(const App& app);

/// What a button of the plan's text form stands for (see app/plan_text.h).
Actions actions_of(App& app, const std::string& action);

}  // namespace shoalwright
