// SPDX-License-Identifier: MIT
#include <emscripten/emscripten.h>

#include "app/app.h"
#include "app/state_json.h"
#include "platform/platform.h"

using namespace shoalwright;

namespace {

App app;

}  // namespace

/// For the browser tests (tests/browser/harness.mjs).
extern "C" EMSCRIPTEN_KEEPALIVE const char* state_json() {
  static std::string text;
  text = shoalwright::state_json(app);
  return text.c_str();
}

int main() {
  platform::Listener listener;
  listener.start = [] {
    const std::string_view fonts[4] = {platform::asset("inter-regular"), platform::asset("inter-medium"),
                                       platform::asset("inter-semibold"), platform::asset("inter-italic")};
    set_imgui_style();
    if (!load_faces(*ImGui::GetIO().Fonts, fonts, app.faces)) {
      platform::show_failure("The letters of the planner could not be read.");
      return;
    }
    begin(app);
  };
  listener.frame = [] { draw_frame(app); };
  listener.link = [](const std::string& fragment) { open_link(app, fragment); };
  listener.file = [](const std::string& name, const std::string& text) { open_file(app, name, text); };
  listener.paste = [](const std::string& text) {
    if (text.find("#p=") != std::string::npos) open_link(app, text);
  };
  listener.trouble = [](const std::string& sentence) {
    show_toast(app.ui, app.toast, sentence, "");
    platform::say(sentence);
    platform::wake();
  };
  listener.action = [](const std::string& action) { carry_out(app, actions_of(app, action)); };
  listener.device_changed = [] { platform::wake(); };
  platform::run(listener);
}
