// SPDX-License-Identifier: MIT
#include "app/app.h"
#include "edit/command.h"
#include "platform/platform.h"

namespace shoalwright {

namespace {

bool pressed(ImGuiKeyChord chord) { return ImGui::IsKeyChordPressed(chord); }

void flip(const App& app, bool Preferences::*what, Actions& out) {
  Preferences preferences = app.preferences;
  preferences.*what = !(preferences.*what);
  out.push_back(SetPreferences{preferences});
}

void read_keys_of_held(const App& app, Actions& out) {
  const Held& held = *app.held;
  if (pressed(ImGuiKey_Escape)) out.push_back(PutBack{});
  const int step = typed_step();
  if (step != 0) out.push_back(HoldCount{held.count + step});
  if (!held.by_keyboard) return;
  const double far = ImGui::GetIO().KeyShift ? 5 : 1;
  double across = 0, down = 0;
  const auto repeated = [](ImGuiKey key) { return ImGui::IsKeyPressed(key, true); };
  if (repeated(ImGuiKey_LeftArrow)) across = -far;
  if (repeated(ImGuiKey_RightArrow)) across = far;
  if (repeated(ImGuiKey_UpArrow)) down = -far;
  if (repeated(ImGuiKey_DownArrow)) down = far;
  if (across != 0 || down != 0) out.push_back(HoldOver{held.x_cm + across, held.depth_cm + down});
}

}  // namespace

void read_keys(App& app, Actions& out) {
  const ImGuiIO& io = ImGui::GetIO();
  if (pressed(ImGuiMod_Ctrl | ImGuiMod_Shift | ImGuiKey_Z) || pressed(ImGuiMod_Ctrl | ImGuiKey_Y))
    out.push_back(Redo{});
  else if (pressed(ImGuiMod_Ctrl | ImGuiKey_Z))
    out.push_back(Undo{});
  if (pressed(ImGuiMod_Ctrl | ImGuiKey_S)) out.push_back(SavePlan{});
  if (pressed(ImGuiMod_Ctrl | ImGuiKey_O)) out.push_back(OpenPlan{});
  if (app.held) {
    read_keys_of_held(app, out);
    return;
  }
  const bool covered = app.sheet != Sheet::none || app.notice;
  if (!covered) read_piece_keys(look_at(app), out);
  if (!covered && app.chosen_terrain && platform::have_rest()) read_terrain_keys(look_at(app), out);
  if (io.KeyCtrl || io.KeyAlt || io.KeySuper || ImGui::IsPopupOpen("", ImGuiPopupFlags_AnyPopup)) return;
  if (pressed(ImGuiKey_Slash)) {
    if (app.sheet == Sheet::water) out.push_back(ShowSheet{Sheet::none});  // the shelf is on the tank's page
    out.push_back(FocusItem{"shelf.search"});
  }
  if (pressed(ImGuiKey_C)) {
    Preferences next = app.preferences;
    next.overlay = next.overlay == Overlay::crowding ? Overlay::none : Overlay::crowding;
    out.push_back(SetPreferences{next});
  }
  if (pressed(ImGuiKey_S)) flip(app, &Preferences::swim, out);
  if (pressed(ImGuiKey_L)) flip(app, &Preferences::show_lane, out);
  if (pressed(ImGuiKey_N)) flip(app, &Preferences::show_numbers, out);
  if (app.sheet != Sheet::none && pressed(ImGuiKey_Escape)) out.push_back(ShowSheet{Sheet::none});
}

}  // namespace shoalwright
