// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include <string>

#include "app/builtin_demo.h"
#include "platform/headless.h"
#include "share/plan_json.h"
#include "support/screen.h"

namespace shoalwright {

/// The keyboard goes to a field, types over what it has, and leaves it.
inline void fill(Screen& screen, const std::string& id, const std::string& text) {
  if (screen.app().ui.ring_id == id) {
    screen.key(ImGuiKey_Enter);  // it has the keyboard already
  } else {
    screen.app().ui.focus_wanted = id;
    screen.frames(4);
  }
  ASSERT_EQ(platform::headless::record().open_field, id);
  platform::headless::type(text);
  screen.frames(2);
  platform::headless::leave_field();
  screen.frames(2);
  screen.rest();
}

inline const Plan& plan_of(Screen& screen) { return present(screen.app().history); }

/// The demo in a window of 1440 x 900 after `change`.
template <class Change>
ScreenKind demo_with(Change change) {
  Plan plan = read_plan(builtin_demo_plan()).value();
  change(plan);
  return {.plan_json = plan_json(plan)};
}

}  // namespace shoalwright
