// SPDX-License-Identifier: MIT
#pragma once

#include <cstdlib>
#include <fstream>
#include <functional>
#include <sstream>
#include <string>

#include "draw/text.h"
#include "support/raster.h"

namespace shoalwright {

/// A sheet of paper for drawings that need no window: draws with Dear ImGui's own list and letters, comes out as pixels.
class Easel {
 public:
  Easel(int width, int height, ImU32 paper) : width_(width), height_(height), paper_(paper) {
    before_ = ImGui::GetCurrentContext();
    mine_ = ImGui::CreateContext();
    ImGui::SetCurrentContext(mine_);
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.BackendFlags |= ImGuiBackendFlags_RendererHasTextures | ImGuiBackendFlags_RendererHasVtxOffset;
    io.DisplaySize = {static_cast<float>(width), static_cast<float>(height)};
    // Inter as Debian's fonts-inter installs it.
    const char* names[4] = {"Regular", "Medium", "SemiBold", "Italic"};
    for (int i = 0; i < 4; ++i) {
      std::ifstream file(std::string("/usr/share/fonts/opentype/inter/Inter-") + names[i] + ".otf", std::ios::binary);
      std::ostringstream bytes;
      bytes << file.rdbuf();
      bytes_[i] = bytes.str();
    }
    const std::string_view views[4] = {bytes_[0], bytes_[1], bytes_[2], bytes_[3]};
    load_faces(*io.Fonts, views, faces_);
  }
  ~Easel() {
    ImGui::DestroyContext(mine_);
    ImGui::SetCurrentContext(before_);
  }
  Easel(const Easel&) = delete;
  Easel& operator=(const Easel&) = delete;

  /// Draws once and develops it. The letters' texture is made in the first of two frames.
  Picture paint(const std::function<void(ImDrawList*)>& draw, float scale = 1, int samples = 2) {
    ImGui::SetCurrentContext(mine_);
    Picture out;
    for (int frame = 0; frame < 2; ++frame) {
      ImGuiIO& io = ImGui::GetIO();
      io.DeltaTime = 0.05f;
      io.DisplayFramebufferScale = {scale, scale};
      ImGui::NewFrame();
      ImDrawList* list = ImGui::GetBackgroundDrawList();
      list->_FringeScale = 1 / scale;  // as the app does: edges one device pixel wide
      const int before = list->VtxBuffer.Size;
      draw(list);
      vertices_ = list->VtxBuffer.Size - before;
      ImGui::Render();
      out = rasterise(ImGui::GetDrawData(), paper_, scale, frame == 0 ? 1 : samples);
    }
    return out;
  }
  int vertices() const { return vertices_; }  ///< of the last drawing
  const Faces& faces() const { return faces_; }

 private:
  ImGuiContext *before_ = nullptr, *mine_ = nullptr;
  int width_, height_;
  ImU32 paper_;
  int vertices_ = 0;
  std::string bytes_[4];
  Faces faces_;
};

/// Writes a picture into the folder that the environment names in SHOTS; does nothing where it names none.
inline void keep_shot(const Picture& picture, const std::string& name) {
  const char* folder = std::getenv("SHOTS");
  if (folder != nullptr && *folder != '\0') write_png(picture, std::string(folder) + "/" + name + ".png");
}

}  // namespace shoalwright
