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

/// Opens a sheet or page as a view's wish does.
inline void open(Screen& screen, Sheet sheet) {
  carry_out(screen.app(), {ShowSheet{sheet}});
  screen.frames(4);
  screen.rest();
}

/// Scrolls the column under `over` until the spot can be pressed.
inline void bring(Screen& screen, const std::string& id, ImVec2 over) {
  for (int i = 0; i < 90; ++i) {
    const Spots::Spot* spot = screen.spot(id);
    ASSERT_NE(spot, nullptr) << id;
    if (spot->visible && spot->max.y - spot->min.y >= 24) return;
    screen.wheel(over, spot->max.y > over.y ? -1.0f : 1.0f);
  }
  ADD_FAILURE() << id << " cannot be scrolled to";
}

/// The demo in a window of 1440 x 900 after `change`.
template <class Change>
ScreenKind demo_with(Change change) {
  Plan plan = read_plan(builtin_demo_plan()).value();
  change(plan);
  return {.plan_json = plan_json(plan)};
}

}  // namespace shoalwright
