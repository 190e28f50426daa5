// SPDX-License-Identifier: MIT
// The page has no Dear ImGui tables, columns or tab bars and keeps no settings of windows. In place of imgui_tables.cpp (about 7
// KB of the download) stand the functions of it that the rest of Dear ImGui calls; without a table or columns none of them has
// anything to do.
#include "imgui.h"
#include "imgui_internal.h"

namespace ImGui {
void EndNoTabBar();
}
extern "C" int nothing_scanned(const char*, const char*, ...);

void ImGui::EndColumns() {}
void ImGui::EndTable() {}
void ImGui::PopColumnsBackground() {}
void ImGui::PushColumnsBackground() {}
void ImGui::TableEndCell(ImGuiTable*) {}
void ImGui::TableEndRow(ImGuiTable*) {}
void ImGui::TableGcCompactSettings() {}
void ImGui::TableGcCompactTransientBuffers(ImGuiTable*) {}
void ImGui::TableGcCompactTransientBuffers(ImGuiTableTempData*) {}
void ImGui::TablePopBackgroundChannel() {}
void ImGui::TablePopColumnChannel() {}
void ImGui::TablePushBackgroundChannel() {}
void ImGui::TablePushColumnChannel(int) {}
void ImGui::TableSettingsAddSettingsHandler() {}

// What imgui.cpp calls instead of EndTabBar and sscanf (CMakeLists.txt): the first would bring the layout of tab bars along, the
// second the reading of formatted numbers.
void ImGui::EndNoTabBar() {}
extern "C" int nothing_scanned(const char*, const char*, ...) { return 0; }
