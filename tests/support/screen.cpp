// SPDX-License-Identifier: MIT
#include "support/screen.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <fstream>
#include <sstream>

#include "catalog/builtin.h"
#include "platform/headless.h"

namespace shoalwright {
namespace {

// Inter as Debian's fonts-inter installs it; the page's own fonts are subsets of these files.
std::string font(const char* face) {
  std::ifstream file(std::string("/usr/share/fonts/opentype/inter/Inter-") + face + ".otf", std::ios::binary);
  std::ostringstream bytes;
  bytes << file.rdbuf();
  return bytes.str();
}

}  // namespace

Screen::Screen(const ScreenKind& kind) : app_(std::make_unique<App>()), kind_(kind) {
  platform::headless::World world;
  world.surface = {kind.width, kind.height, kind.scale};
  world.device.dark = kind.theme == Theme::dark;
  world.device.coarse_pointer = kind.touch;
  world.device.reduced_motion = kind.reduced_motion;
  world.draft = kind.plan_json;
  for (const auto& [asset, face] :
       {std::pair{"regular", "Regular"}, {"medium", "Medium"}, {"semibold", "SemiBold"}, {"italic", "Italic"}})
    world.assets[std::string("inter-") + asset] = font(face);
  world.assets["cards"] = builtin_cards();
  platform::headless::begin(std::move(world));

  App& app = *app_;
  platform::Listener listener;
  listener.start = [&app] {
    const std::string_view fonts[4] = {platform::asset("inter-regular"), platform::asset("inter-medium"),
                                       platform::asset("inter-semibold"), platform::asset("inter-italic")};
    set_imgui_style();
    EXPECT_TRUE(load_faces(*ImGui::GetIO().Fonts, fonts, app.faces)) << "fonts-inter is not installed";
    begin(app);
  };
  listener.frame = [&app] { draw_frame(app); };
  listener.link = [&app](const std::string& fragment) { open_link(app, fragment); };
  listener.file = [&app](const std::string& name, const std::string& text) { open_file(app, name, text); };
  platform::run(std::move(listener));
  rest();
}

Screen::~Screen() {
  platform::headless::listener() = {};
  ImGui::DestroyContext();
}

void Screen::frame(bool paint, Picture* out, int samples) {
  // Without a picture the textures stay wanted, so that the next one finds all of their pixels.
  if (paint)
    platform::headless::frame([&](ImDrawData* data) { *out = rasterise(data, 0xff000000, kind_.scale, samples); });
  else
    platform::headless::frame([](ImDrawData*) {});
}

void Screen::frames(int count) {
  for (int i = 0; i < count; ++i) frame(false);
}

bool Screen::rest() {
  for (int i = 0; i < 600 && platform::headless::record().frames_owed > 0; ++i) frame(false);
  return platform::headless::record().frames_owed == 0;
}

void Screen::seconds(double s) { frames(static_cast<int>(std::ceil(s * 60))); }

void Screen::point(const std::string& id) {
  const Spots::Spot* at = spot(id);
  ASSERT_TRUE(at && at->visible) << id;
  platform::headless::move_to((at->min.x + at->max.x) / 2, (at->min.y + at->max.y) / 2);
  frames(3);
}

void Screen::click(const std::string& id) {
  const Spots::Spot* at = spot(id);
  ASSERT_TRUE(at && at->visible) << id;
  point(id);
  platform::headless::press();
  frames(2);
  platform::headless::release();
  rest();
}

void Screen::drag(const std::string& id, ImVec2 to) {
  const Spots::Spot* at = spot(id);
  ASSERT_TRUE(at && at->visible) << id;
  const ImVec2 from{(at->min.x + at->max.x) / 2, (at->min.y + at->max.y) / 2};
  platform::headless::move_to(from.x, from.y);
  frames(2);
  platform::headless::press();
  frames(2);
  constexpr int steps = 8;
  for (int i = 1; i <= steps; ++i) {
    const float t = static_cast<float>(i) / steps;
    platform::headless::move_to(from.x + (to.x - from.x) * t, from.y + (to.y - from.y) * t);
    frames(2);
  }
  rest();
}

void Screen::let_go() {
  platform::headless::release();
  frames(2);
  rest();
}

void Screen::key(ImGuiKeyChord chord) {
  ImGuiIO& io = ImGui::GetIO();
  const ImGuiKey key = static_cast<ImGuiKey>(chord & ~ImGuiMod_Mask_);
  const ImGuiKey modifiers[] = {ImGuiMod_Ctrl, ImGuiMod_Shift, ImGuiMod_Alt, ImGuiMod_Super};
  for (const ImGuiKey modifier : modifiers)
    if (chord & modifier) io.AddKeyEvent(modifier, true);
  io.AddKeyEvent(key, true);
  frames(2);
  io.AddKeyEvent(key, false);
  for (const ImGuiKey modifier : modifiers)
    if (chord & modifier) io.AddKeyEvent(modifier, false);
  frames(2);
  rest();
}

void Screen::type(const std::string& text) {
  ImGui::GetIO().AddInputCharactersUTF8(text.c_str());
  frames(2);
  rest();
}

void Screen::wheel(ImVec2 at, float turns) {
  platform::headless::move_to(at.x, at.y);
  frames(2);
  for (float left = std::fabs(turns); left > 0; left -= 1) {
    ImGui::GetIO().AddMouseWheelEvent(0, turns > 0 ? std::min(1.0f, left) : -std::min(1.0f, left));
    frames(2);
  }
  rest();
}

Picture Screen::picture(int samples) {
  Picture taken;
  frame(true, &taken, samples);
  return taken;
}

void Screen::shoot(const std::string& name) {
  const char* directory = std::getenv("SHOTS");
  if (!directory || !*directory) return;
  EXPECT_TRUE(write_png(picture(), std::string(directory) + "/" + name + ".png")) << name;
}

}  // namespace shoalwright
