// SPDX-License-Identifier: MIT
// The other side of headless.cpp: what a test does to the app and what it finds afterwards.
#pragma once

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "imgui.h"
#include "platform/platform.h"

namespace shoalwright::platform::headless {

/// All that the app has asked of the platform since `begin`.
struct Record {
  std::string copied, said, plan_text, title, failure, printed;
  std::string draft;                                       ///< kept last
  std::vector<Draft> left_drafts;                          ///< by leave_draft, newest first
  std::string link;                                        ///< set last
  std::vector<std::pair<std::string, std::string>> saved;  ///< name and text of each saved file
  std::map<std::string, std::string> settings;
  int files_asked_for = 0;
  int frames_owed = 0;
  int wake_in_ms = -1;            ///< the earliest wish since the last frame; negative: none
  std::string open_field;         ///< the text field that is being edited
  std::vector<TextField> fields;  ///< drawn in the last frame; their text views are valid until the next
  int tab_stops = 0;              ///< in the last frame
  Cursor cursor = Cursor::automatic;
};

/// What the device is like. Set before `begin` what the app reads at its start.
struct World {
  Surface surface{1440, 900, 1};
  Device device;
  std::string today = "2026-01-31";
  std::string draft;
  std::string link_at_start;
  std::map<std::string, std::string> assets;
  std::map<std::string, std::string> settings;
};

/// A new world: makes the ImGui context (and destroys the one before) and forgets all records. Then start the app: it calls
/// `run`, which comes back at once.
void begin(World world);
World& world();
const Record& record();
Listener& listener();

/// One frame of 1/60 s. `paint` may make a picture of what was drawn and then has to take care of ImGui's textures.
void frame(const std::function<void(ImDrawData*)>& paint = {});
/// Frames until the app asks for no more, at most `most`. The number drawn.
int frames_until_rest(int most = 300);

void move_to(float x, float y);
void press();
void release();
/// Moves, presses and lets go, with the frames in between.
void click(float x, float y);
/// One key with modifiers ("ImGuiMod_Ctrl | ImGuiKey_Z"), pressed and let go.
void press_key(ImGuiKeyChord chord);

/// What the keeper does in the open field: types (each text replaces the one before), leaves it, leaves it by Escape, presses an
/// arrow.
void type(std::string_view text);
void leave_field();
void cancel_field();
void step_field(int step);

}  // namespace shoalwright::platform::headless
