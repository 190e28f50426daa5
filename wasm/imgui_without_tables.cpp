// SPDX-License-Identifier: MIT
// The page has no Dear ImGui tables or columns. In place of imgui_tables.cpp (about 7 KB of the download) stand the functions of
// it that the rest of Dear ImGui calls; without a table or columns none of them has anything to do.
#include "imgui.h"
#include "imgui_internal.h"

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
