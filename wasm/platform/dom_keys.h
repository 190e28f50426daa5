// SPDX-License-Identifier: MIT
// From the keys of a DOM keyboard event to Dear ImGui's. Apart from browser.cpp so that it can be tried without a browser.
#pragma once

#include <cstring>

#include "imgui.h"

namespace shoalwright::platform {

/// `code` names the place of a key ("KeyZ"), `key` what it means on the keeper's layout ("z"). Letters, digits and the signs that
/// are shortcuts go by meaning (undo is where Z is printed), all others by place. ImGuiKey_None for keys the app has no use for.
inline ImGuiKey key_of(const char* code, const char* key) {
  struct Row {
    const char* name;
    ImGuiKey key;
  };
  static constexpr Row signs[] = {{"+", ImGuiKey_KeypadAdd}, {"-", ImGuiKey_KeypadSubtract}, {"/", ImGuiKey_Slash},
                                  {"?", ImGuiKey_Slash},     {",", ImGuiKey_Comma},          {".", ImGuiKey_Period},
                                  {"=", ImGuiKey_Equal},     {"*", ImGuiKey_KeypadMultiply}};
  static constexpr Row places[] = {{"Tab", ImGuiKey_Tab},
                                   {"ArrowLeft", ImGuiKey_LeftArrow},
                                   {"ArrowRight", ImGuiKey_RightArrow},
                                   {"ArrowUp", ImGuiKey_UpArrow},
                                   {"ArrowDown", ImGuiKey_DownArrow},
                                   {"PageUp", ImGuiKey_PageUp},
                                   {"PageDown", ImGuiKey_PageDown},
                                   {"Home", ImGuiKey_Home},
                                   {"End", ImGuiKey_End},
                                   {"Insert", ImGuiKey_Insert},
                                   {"Delete", ImGuiKey_Delete},
                                   {"Backspace", ImGuiKey_Backspace},
                                   {"Space", ImGuiKey_Space},
                                   {"Enter", ImGuiKey_Enter},
                                   {"NumpadEnter", ImGuiKey_KeypadEnter},
                                   {"Escape", ImGuiKey_Escape},
                                   {"ControlLeft", ImGuiKey_LeftCtrl},
                                   {"ControlRight", ImGuiKey_RightCtrl},
                                   {"ShiftLeft", ImGuiKey_LeftShift},
                                   {"ShiftRight", ImGuiKey_RightShift},
                                   {"AltLeft", ImGuiKey_LeftAlt},
                                   {"AltRight", ImGuiKey_RightAlt},
                                   {"MetaLeft", ImGuiKey_LeftSuper},
                                   {"MetaRight", ImGuiKey_RightSuper},
                                   {"ContextMenu", ImGuiKey_Menu}};
  if (key[0] != '\0' && key[1] == '\0') {
    const char k = key[0];
    if (k >= 'a' && k <= 'z') return ImGuiKey(ImGuiKey_A + (k - 'a'));
    if (k >= 'A' && k <= 'Z') return ImGuiKey(ImGuiKey_A + (k - 'A'));
    if (k >= '0' && k <= '9') return ImGuiKey(ImGuiKey_0 + (k - '0'));
    for (const Row& row : signs)
      if (row.name[0] == k) return row.key;
  }
  // `key` too: keyboards without places (phones, remote desktops) send an empty `code`.
  for (const Row& row : places)
    if (std::strcmp(row.name, code) == 0 || std::strcmp(row.name, key) == 0) return row.key;
  if (code[0] == 'F' && code[1] >= '1' && code[1] <= '9') {
    const int n = code[2] == '\0' ? code[1] - '0' : (code[1] - '0') * 10 + (code[2] - '0');
    if (n <= 12) return ImGuiKey(ImGuiKey_F1 + n - 1);
  }
  return ImGuiKey_None;
}

/// Whether the page must keep the browser from acting on a key that was pressed in the drawing. With Ctrl or Cmd only what the
/// planner itself answers: undo, redo, save, open. All other shortcuts of the browser go on working, also those that move, find,
/// zoom and reload.
inline bool key_is_ours(ImGuiKey key, bool command, bool alt) {
  if (command) return key == ImGuiKey_Z || key == ImGuiKey_Y || key == ImGuiKey_S || key == ImGuiKey_O;
  if (alt) return false;
  return key == ImGuiKey_Tab || key == ImGuiKey_Space || key == ImGuiKey_Backspace || key == ImGuiKey_Slash ||
         (key >= ImGuiKey_LeftArrow && key <= ImGuiKey_End);
}

}  // namespace shoalwright::platform
