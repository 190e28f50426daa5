// SPDX-License-Identifier: MIT
// The platform without a screen, for tests of the app: a mouse, a keyboard and a text field that a test moves, and a record of
// what the app asked for.
#include "platform/headless.h"

#include <algorithm>

#include "imgui_internal.h"

namespace shoalwright::platform {
namespace {

struct State {
  headless::World world;
  headless::Record record;
  Listener listener;
  FieldEdit news;  // for the open field, or for `news_for` when it has just been left
  std::string news_for;
  std::string before;  // the open field's text when editing began
  std::string typed;
};

State& state() {
  static State the_state;
  return the_state;
}

void tell_field(bool changed, bool done, bool cancelled) {
  State& s = state();
  s.news_for = s.record.open_field;
  s.news.changed = s.news.changed || changed;
  s.news.done = done;
  s.news.cancelled = cancelled;
  s.news.value = s.typed;
  if (done) s.record.open_field.clear();
  wake();
}

void take_textures() {
  for (ImTextureData* texture : ImGui::GetPlatformIO().Textures) {
    if (texture->Status == ImTextureStatus_WantCreate || texture->Status == ImTextureStatus_WantUpdates) {
      texture->SetTexID(1);
      texture->SetStatus(ImTextureStatus_OK);
    } else if (texture->Status == ImTextureStatus_WantDestroy) {
      texture->SetTexID(ImTextureID_Invalid);
      texture->SetStatus(ImTextureStatus_Destroyed);
    }
  }
}

}  // namespace

void run(Listener listener) {
  State& s = state();
  s.listener = std::move(listener);
  s.listener.start();
  if (!s.world.link_at_start.empty() && s.listener.link) s.listener.link(s.world.link_at_start);
  wake();
}

void wake(int frames) { state().record.frames_owed = std::max(state().record.frames_owed, frames); }

void wake_in(int ms) {
  int& due_ms = state().record.wake_in_ms;
  due_ms = due_ms < 0 ? ms : std::min(due_ms, ms);
}

Surface surface() { return state().world.surface; }
Device device() { return state().world.device; }
std::string page_address() { return "http://localhost/"; }
std::string today() { return state().world.today; }

std::string_view asset(std::string_view name) {
  const auto& assets = state().world.assets;
  const auto found = assets.find(std::string(name));
  return found == assets.end() ? std::string_view() : std::string_view(found->second);
}

FieldEdit text_field(const TextField& field, bool open) {
  State& s = state();
  s.record.fields.push_back(field);
  if (open && s.record.open_field != field.id) {
    s.record.open_field = field.id;
    s.before = s.typed = field.value;
  }
  FieldEdit edit;
  if (s.news_for == field.id) {
    edit = s.news;
    s.news = {};
    s.news_for.clear();
  }
  edit.editing = s.record.open_field == field.id;
  return edit;
}

void tab_stop() { ++state().record.tab_stops; }
void set_cursor(Cursor cursor) { state().record.cursor = cursor; }
void copy_text(std::string_view text) { state().record.copied = text; }
void open_file() { ++state().record.files_asked_for; }
void save_file(std::string_view name, std::string_view text) { state().record.saved.emplace_back(name, text); }
void keep_draft(std::string_view text) { state().record.draft = text; }
std::string draft() { return state().world.draft; }
std::vector<Draft> other_drafts() { return state().record.left_drafts; }

void leave_draft() {
  headless::Record& record = state().record;
  if (record.draft.empty()) return;
  const std::string id = "left-" + std::to_string(record.left_drafts.size());
  record.left_drafts.insert(record.left_drafts.begin(), Draft{id, std::move(record.draft), double(record.left_drafts.size())});
  record.draft.clear();
}

void set_link(std::string_view fragment) { state().record.link = fragment; }

std::string setting(std::string_view name) {
  const auto& settings = state().record.settings;
  const auto found = settings.find(std::string(name));
  return found == settings.end() ? std::string() : found->second;
}

void keep_setting(std::string_view name, std::string_view value) { state().record.settings[std::string(name)] = value; }
bool have_rest() { return true; }
bool rest_is_here() { return true; }
void print_page(std::string_view lines) { state().record.printed = lines; }

void say(std::string_view text) { state().record.said = text; }
void set_plan_text(std::string_view lines) { state().record.plan_text = lines; }
void set_title(std::string_view title) { state().record.title = title; }
void show_failure(std::string_view sentence) { state().record.failure = sentence; }

namespace headless {

void begin(World world) {
  if (ImGui::GetCurrentContext() != nullptr) ImGui::DestroyContext();
  state() = State{};
  state().world = std::move(world);
  state().record.settings = state().world.settings;
  ImGui::CreateContext();
  ImGuiIO& io = ImGui::GetIO();
  io.IniFilename = nullptr;
  io.ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
  io.BackendFlags |=
      ImGuiBackendFlags_RendererHasTextures | ImGuiBackendFlags_RendererHasVtxOffset | ImGuiBackendFlags_HasMouseCursors;
}

World& world() { return state().world; }
const Record& record() { return state().record; }
Listener& listener() { return state().listener; }

void frame(const std::function<void(ImDrawData*)>& paint) {
  State& s = state();
  const Surface& surface = s.world.surface;
  ImGuiIO& io = ImGui::GetIO();
  io.DisplaySize = {surface.width, surface.height};
  io.DisplayFramebufferScale = {surface.pixel_ratio, surface.pixel_ratio};
  io.DeltaTime = 1.0f / 60;
  if (s.record.frames_owed > 0) --s.record.frames_owed;
  s.record.wake_in_ms = -1;
  s.record.fields.clear();
  s.record.tab_stops = 0;
  s.record.cursor = Cursor::automatic;
  ImGui::NewFrame();
  if (s.record.failure.empty()) s.listener.frame();
  ImGui::Render();
  if (paint)
    paint(ImGui::GetDrawData());
  else
    take_textures();
}

int frames_until_rest(int most) {
  int drawn = 0;
  for (; drawn < most && state().record.frames_owed > 0; ++drawn) frame();
  return drawn;
}

void move_to(float x, float y) {
  ImGui::GetIO().AddMousePosEvent(x, y);
  wake();
}

void press() {
  ImGui::GetIO().AddMouseButtonEvent(0, true);
  wake();
}

void release() {
  ImGui::GetIO().AddMouseButtonEvent(0, false);
  wake();
}

void click(float x, float y) {
  move_to(x, y);
  frame();
  press();
  frame();
  release();
  frame();
  frames_until_rest();
}

void press_key(ImGuiKeyChord chord) {
  ImGuiIO& io = ImGui::GetIO();
  const ImGuiKey key = ImGuiKey(chord & ~ImGuiMod_Mask_);
  for (const ImGuiKey modifier : {ImGuiMod_Ctrl, ImGuiMod_Shift, ImGuiMod_Alt, ImGuiMod_Super})
    io.AddKeyEvent(modifier, (chord & modifier) != 0);
  io.AddKeyEvent(key, true);
  wake();
  frame();
  io.AddKeyEvent(key, false);
  for (const ImGuiKey modifier : {ImGuiMod_Ctrl, ImGuiMod_Shift, ImGuiMod_Alt, ImGuiMod_Super}) io.AddKeyEvent(modifier, false);
  frames_until_rest();
}

void type(std::string_view text) {
  state().typed = text;
  tell_field(true, false, false);
}

void leave_field() { tell_field(false, true, false); }

void cancel_field() {
  state().typed = state().before;
  tell_field(true, true, true);
}

void step_field(int step) {
  state().news.step = step;
  tell_field(false, false, false);
}

}  // namespace headless
}  // namespace shoalwright::platform
