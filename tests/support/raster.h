// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "imgui.h"

namespace shoalwright {

/// Pixels, four bytes each (red, green, blue, alpha), row by row from the top.
struct Picture {
  int width = 0, height = 0;
  std::vector<std::uint8_t> rgba;
  ImU32 at(int x, int y) const;
};

/// Draws what Dear ImGui has collected, without a screen: triangles with a colour a corner, textures sampled linearly, clip
/// rectangles, `samples` x `samples` points a pixel (1 to 4). `pixels_per_unit` is the device scale. Textures that ImGui asks for
/// are made and kept alive as a backend does (set io.BackendFlags |= ImGuiBackendFlags_RendererHasTextures before the first
/// frame).
Picture rasterise(ImDrawData* data, ImU32 paper, float pixels_per_unit = 1, int samples = 2);

/// One draw list alone, for drawings made without a window; white texture only.
Picture rasterise(const ImDrawList& list, int width, int height, ImU32 paper, float pixels_per_unit = 1, int samples = 2);

/// Writes a PNG file (8 bits, colour with alpha). False when it could not.
bool write_png(const Picture& picture, const std::string& path);

}  // namespace shoalwright
