// SPDX-License-Identifier: MIT
// The whole planner without a screen: it starts as the page starts it, a test moves its mouse and keyboard and looks at pictures.
#pragma once

#include <memory>
#include <string>

#include "app/app.h"
#include "support/raster.h"

namespace shoalwright {

struct ScreenKind {
  float width = 1440, height = 900;  ///< CSS pixels
  float scale = 1;                   ///< device pixels in one of them
  Theme theme = Theme::light;
  bool touch = false;
  bool reduced_motion = true;  ///< pictures are then the same whenever they are taken
  std::string plan_json;       ///< the plan kept on the device; empty: the demo opens
};

/// One at a time: it owns the Dear ImGui context and the platform's records while it lives.
class Screen {
 public:
  explicit Screen(const ScreenKind& kind);
  ~Screen();
  Screen(const Screen&) = delete;
  Screen& operator=(const Screen&) = delete;

  App& app() { return *app_; }
  const Spots& spots() const { return app_->ui.spots; }
  /// The spot of that id in the last frame; null when there is none.
  const Spots::Spot* spot(const std::string& id) const { return app_->ui.spots.find(id); }

  void frames(int count);
  /// Frames until the app asks for none, at most ten seconds of them. False when it did not come to rest.
  bool rest();
  void seconds(double s);

  /// Each fails the test and does nothing when there is no such spot to be seen.
  void point(const std::string& id);
  void click(const std::string& id);
  /// Presses on one spot, moves to a place in the window in a few steps; `let_go` ends it.
  void drag(const std::string& id, ImVec2 to);
  void let_go();
  void key(ImGuiKeyChord chord);
  void type(const std::string& text);
  /// Turns the wheel at a place in the window, once a frame.
  void wheel(ImVec2 at, float turns);

  /// What is on the screen now, `samples` x `samples` points a pixel. One frame is drawn for it.
  Picture picture(int samples = 1);
  /// The same as a PNG file `name` in the directory that the environment names as SHOTS; without it nothing happens.
  void shoot(const std::string& name);

 private:
  std::unique_ptr<App> app_;
  ScreenKind kind_;
  void frame(bool paint, Picture* out = nullptr, int samples = 1);
};

}  // namespace shoalwright
