// SPDX-License-Identifier: MIT
// The platform in a browser: WebGL2 through emscripten/html5.h, DOM events through browser.js,
// and the page's services (web/page.js) by name. Text and bytes are all that crosses.
#include <emscripten/emscripten.h>
#include <emscripten/html5.h>

#include <cfloat>
#include <cmath>
#include <cstdlib>
#include <map>

#include "imgui.h"
#include "imgui_internal.h"
#include "platform/dom_keys.h"
#include "platform/gl_drawing.h"
#include "platform/platform.h"

extern "C" {  // browser.js
void browser_listen();
void browser_forget_gl();
void browser_cursor(const char* css);
void browser_timer(double ms);
void browser_drawn();
void browser_tell(const char* service, const char* a, const char* b);
void browser_ask(const char* service, const char* a);
int browser_asset_size(const char* name);
void browser_asset_copy(const char* name, char* to);
void browser_field_open(const char* id, const char* label, const char* value, const char* placeholder, int kind, int most);
void browser_field_place(float x, float y, float width, float height, float line_px, unsigned ink, unsigned placeholder_ink,
                         int weight, int align_right);
void browser_field_close();
}

namespace shoalwright::platform {
namespace {

/// A text field as the last frame drew it: where a click opens it.
struct FieldItem {
  std::string id, label, value, placeholder;
  ImRect rect;
  ImGuiWindow* window = nullptr;
  FieldKind kind = FieldKind::text;
  int most_bytes = 0;
};

struct FieldNews {
  FieldEdit edit;
  int frames_left = 2;  // a field that is not drawn any more never hears of it
};

struct State {
  Listener listener;
  Surface surface_now;
  Device device_now;
  int width_px = 1, height_px = 1;
  bool has_gl = false, context_lost = false, ready = false, failed = false;

  int owed = 0;
  bool asked = false;
  double last_frame_ms = 0, timer_due_ms = 0;
  bool rest = false;       // the second file of the program is here
  double ask_rest_ms = 0;  // not asked for again before

  std::string in;                             // text on its way in from the page
  std::map<std::string, std::string> assets;  // as handed over by the page, kept as long as the program runs

  std::vector<FieldItem> fields, fields_before;
  std::map<std::string, FieldNews> news;
  int buttons = 0;  // held on the pointer, as in the DOM
  std::string open_field, pressed_field;
  bool open_field_drawn = false;
  bool clear_keys = false;  // the page's input took the keyboard: the key-ups of what is held go there
  std::vector<ImGuiID> stops, stops_before;
  int enter_from = 0;  // the drawing got the keyboard by Tab: 1 from before it, -1 from behind it
  bool leave = false;  // the drawing lost the keyboard to the page around it
  Cursor cursor = Cursor::automatic;

  bool in_clipboard_event = false;
  std::string copied;
};

State& state() {
  static State the_state;
  return the_state;
}

std::string ask(const char* service, std::string_view a = {}) {
  browser_ask(service, std::string(a).c_str());
  return state().in;
}

void tell(const char* service, std::string_view a = {}, std::string_view b = {}) {
  browser_tell(service, std::string(a).c_str(), std::string(b).c_str());
}

// No longer than `most` bytes, cut between characters.
std::string cut(std::string text, int most) {
  if (int(text.size()) <= most) return text;
  size_t end = size_t(most);
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xc0) == 0x80) --end;
  text.resize(end);
  return text;
}

const char* css_cursor() {
  switch (state().cursor) {
    case Cursor::grab: return "grab";
    case Cursor::grabbing: return "grabbing";
    case Cursor::help: return "help";
    case Cursor::automatic: break;
  }
  static const char* const css[] = {"default",     "text",    "move", "ns-resize", "ew-resize",  "nesw-resize",
                                    "nwse-resize", "pointer", "wait", "progress",  "not-allowed"};
  static_assert(IM_ARRAYSIZE(css) == ImGuiMouseCursor_COUNT);
  const int cursor = ImGui::GetMouseCursor();
  return cursor >= 0 ? css[cursor] : "none";
}

// Opens the field's input on the page. Called inside the user's own event where there is one: phones open their keyboard only
// there.
void open(const FieldItem& item) {
  State& s = state();
  browser_field_open(item.id.c_str(), item.label.c_str(), item.value.c_str(), item.placeholder.c_str(), int(item.kind),
                     item.most_bytes);
  s.open_field = item.id;  // after it: opening ends the editing of the field before
  s.open_field_drawn = true;
  s.clear_keys = true;
}

const FieldItem* field_at(ImVec2 point) {
  ImGuiWindow* on_top = nullptr;
  ImGui::FindHoveredWindowEx(point, false, &on_top, nullptr);
  for (const FieldItem& item : state().fields)
    if (item.window == on_top && item.rect.Contains(point)) return &item;
  return nullptr;
}

void draw(double now_ms) {
  State& s = state();
  if (s.context_lost || s.failed) return;
  ImGuiIO& io = ImGui::GetIO();
  io.DisplaySize = ImVec2(s.surface_now.width, s.surface_now.height);
  io.DisplayFramebufferScale = ImVec2(float(s.width_px) / s.surface_now.width, float(s.height_px) / s.surface_now.height);
  const double passed_s = (now_ms - s.last_frame_ms) / 1000;
  io.DeltaTime = passed_s > 0.0001 ? float(std::fmin(passed_s, 0.1)) : 0.0001f;  // a long rest is not a long frame
  s.last_frame_ms = now_ms;

  s.fields_before.swap(s.fields);
  s.fields.clear();
  s.stops_before.swap(s.stops);
  s.stops.clear();
  s.cursor = Cursor::automatic;
  s.open_field_drawn = false;
  ImGui::NewFrame();
  if (s.leave) ImGui::FocusWindow(nullptr);  // so that the next Tab into the drawing starts at an end again
  s.leave = false;
  s.listener.frame();
  s.enter_from = 0;
  if (s.clear_keys) io.ClearInputKeys();
  s.clear_keys = false;
  ImGui::Render();

  if (!s.open_field.empty() && !s.open_field_drawn) {
    s.open_field.clear();
    browser_field_close();
  }
  for (auto it = s.news.begin(); it != s.news.end();) it = --it->second.frames_left < 0 ? s.news.erase(it) : std::next(it);
  if (s.has_gl) {
    const ImVec4 ground = ImGui::GetStyleColorVec4(ImGuiCol_WindowBg);
    draw_by_gl(*ImGui::GetDrawData(), s.width_px, s.height_px, ground);
  } else {  // the app still runs for the text form; letters are laid out, never painted
    for (ImTextureData* texture : ImGui::GetPlatformIO().Textures) {
      const bool unwanted = texture->Status == ImTextureStatus_WantDestroy;
      texture->SetTexID(unwanted ? ImTextureID_Invalid : ImTextureID(1));
      texture->SetStatus(unwanted ? ImTextureStatus_Destroyed : ImTextureStatus_OK);
    }
  }
  browser_cursor(css_cursor());
  browser_drawn();
  if (!s.ready) {
    s.ready = true;
    tell(s.has_gl ? "ready" : "without_drawing");
  }
}

EM_BOOL on_animation_frame(double now_ms, void*) {
  State& s = state();
  --s.owed;
  draw(now_ms);
  s.asked = false;  // only now: asking in the midst of a frame lets the browser's own work in between
  if (s.owed > 0) wake(s.owed);
  return EM_FALSE;
}

bool make_context() {
  EmscriptenWebGLContextAttributes attributes;
  emscripten_webgl_init_context_attributes(&attributes);
  attributes.majorVersion = 2;
  attributes.alpha = false;
  attributes.depth = false;
  attributes.stencil = false;
  attributes.antialias = false;                  // Dear ImGui smooths its own edges
  attributes.enableExtensionsByDefault = false;  // none is used, and asking for each takes time
  const EMSCRIPTEN_WEBGL_CONTEXT_HANDLE context = emscripten_webgl_create_context("#drawing", &attributes);
  return context > 0 && emscripten_webgl_make_context_current(context) == EMSCRIPTEN_RESULT_SUCCESS;
}

enum Modifier { ctrl = 1, shift = 2, alt = 4, super = 8 };

void add_modifiers(int modifiers) {
  ImGuiIO& io = ImGui::GetIO();
  io.AddKeyEvent(ImGuiMod_Ctrl, (modifiers & ctrl) != 0);
  io.AddKeyEvent(ImGuiMod_Shift, (modifiers & shift) != 0);
  io.AddKeyEvent(ImGuiMod_Alt, (modifiers & alt) != 0);
  io.AddKeyEvent(ImGuiMod_Super, (modifiers & super) != 0);
}

}  // namespace

void run(Listener listener) {
  State& s = state();
  s.listener = std::move(listener);
  s.has_gl = make_context();
  ImGui::CreateContext();
  ImGuiIO& io = ImGui::GetIO();
  io.IniFilename = nullptr;
  io.BackendPlatformName = "shoalwright browser";
  io.ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
  io.BackendFlags |= ImGuiBackendFlags_HasMouseCursors;
  if (s.has_gl)
    begin_gl_drawing();
  else
    io.BackendFlags |= ImGuiBackendFlags_RendererHasTextures | ImGuiBackendFlags_RendererHasVtxOffset;
  browser_listen();                                    // sends size and device before it returns
  io.ConfigMacOSXBehaviors = s.device_now.apple_keys;  // Dear ImGui decides it when compiled, which WASM cannot know
  s.rest = !ask("rest_here").empty();
  s.listener.start();
  const std::string link = ask("link_at_start");
  if (!link.empty() && s.listener.link) s.listener.link(link);
  draw(emscripten_get_now());  // at once: the screen's next turn may be a frame away
  wake();
  emscripten_exit_with_live_runtime();
}

void wake(int frames) {
  State& s = state();
  if (frames > s.owed) s.owed = frames;
  if (s.asked || s.owed <= 0) return;
  s.asked = true;
  emscripten_request_animation_frame(on_animation_frame, nullptr);
}

void wake_in(int ms) {
  State& s = state();
  const double due_ms = emscripten_get_now() + ms;
  if (s.timer_due_ms != 0 && s.timer_due_ms <= due_ms) return;
  s.timer_due_ms = due_ms;
  browser_timer(ms);
}

Surface surface() { return state().surface_now; }
Device device() { return state().device_now; }
std::string today() { return ask("today"); }
std::string page_address() { return ask("address"); }

std::string_view asset(std::string_view name) {
  auto& assets = state().assets;
  const std::string key(name);
  const auto found = assets.find(key);
  if (found != assets.end()) return found->second;
  const int size = browser_asset_size(key.c_str());
  if (size <= 0) return {};
  std::string& bytes = assets[key];
  bytes.resize(size_t(size));
  browser_asset_copy(key.c_str(), bytes.data());
  return bytes;
}

FieldEdit text_field(const TextField& field, bool open_now) {
  State& s = state();
  const ImGuiContext& g = *ImGui::GetCurrentContext();
  FieldItem item{std::string(field.id),
                 std::string(field.label),
                 std::string(field.value),
                 std::string(field.placeholder),
                 g.LastItemData.Rect,
                 g.CurrentWindow,
                 field.kind,
                 field.most_bytes};
  item.rect.ClipWith(g.CurrentWindow->ClipRect);
  const bool enabled = (g.LastItemData.ItemFlags & ImGuiItemFlags_Disabled) == 0;
  if (enabled && open_now && s.open_field != item.id) open(item);
  FieldEdit edit;
  const auto news = s.news.find(item.id);
  if (news != s.news.end()) {
    edit = std::move(news->second.edit);
    s.news.erase(news);
    edit.value = cut(std::move(edit.value), field.most_bytes);
  }
  // A field scrolled out of its panel is left rather than shown over the neighbour.
  edit.editing = s.open_field == item.id && enabled && item.rect.Contains(ImVec2(field.x, field.y + field.height / 2));
  if (edit.editing) {
    s.open_field_drawn = true;
    browser_field_place(field.x, field.y, field.width, field.height, field.line_px, field.ink, field.placeholder_ink,
                        field.font_weight, field.align_right ? 1 : 0);
  }
  if (enabled) s.fields.push_back(std::move(item));
  return edit;
}

void tab_stop() {
  State& s = state();
  const ImGuiID id = ImGui::GetItemID();
  const bool from_before = s.enter_from > 0 && s.stops.empty();
  const bool from_behind = s.enter_from < 0 && !s.stops_before.empty() && s.stops_before.back() == id;
  if (from_before || from_behind) {
    ImGui::FocusItem();
    ImGui::SetNavCursorVisible(true);  // or the next Tab would only make it visible and stay
  }
  s.stops.push_back(id);
}

void set_cursor(Cursor cursor) { state().cursor = cursor; }

void copy_text(std::string_view text) {
  if (state().in_clipboard_event)
    state().copied = text;
  else
    tell("copy", text);
}

void open_file() { tell("open_file"); }
void save_file(std::string_view name, std::string_view text) { tell("save_file", name, text); }
void keep_draft(std::string_view text) { tell("keep_draft", text); }
std::string draft() { return ask("draft"); }
void leave_draft() { tell("leave_draft"); }

std::vector<Draft> other_drafts() {
  // Records end with a record separator, their three parts with unit separators (ASCII 30 and 31), which JSON text never holds
  // bare.
  const std::string all = ask("other_drafts");
  std::vector<Draft> drafts;
  size_t at = 0;
  while (at < all.size()) {
    const size_t id_end = all.find('\x1f', at), ms_end = all.find('\x1f', id_end + 1), end = all.find('\x1e', ms_end + 1);
    if (id_end == std::string::npos || ms_end == std::string::npos || end == std::string::npos) break;
    drafts.push_back(
        {all.substr(at, id_end - at), all.substr(ms_end + 1, end - ms_end - 1), std::strtod(all.c_str() + id_end + 1, nullptr)});
    at = end + 1;
  }
  return drafts;
}

void set_link(std::string_view fragment) { tell("set_link", fragment); }
std::string setting(std::string_view name) { return ask("setting", name); }
void keep_setting(std::string_view name, std::string_view value) { tell("keep_setting", name, value); }
bool have_rest() {
  State& s = state();
  const double now_ms = emscripten_get_now();
  if (!s.rest && now_ms >= s.ask_rest_ms) {
    s.ask_rest_ms = now_ms + 5000;
    tell("fetch_rest", "");
  }
  return s.rest;
}

bool rest_is_here() { return state().rest; }

void say(std::string_view text) { tell("say", text); }
void set_plan_text(std::string_view lines) { tell("set_plan_text", lines); }
void print_page(std::string_view lines) { tell("print_page", lines); }
void set_title(std::string_view title) { tell("set_title", title); }
void show_failure(std::string_view sentence) {
  state().failed = true;
  tell("show_failure", sentence);
}

}  // namespace shoalwright::platform

// What browser.js calls. Text comes in through the room that `page_room` makes.
extern "C" {

using namespace shoalwright::platform;

EMSCRIPTEN_KEEPALIVE char* page_room(int bytes) {
  std::string& in = state().in;
  in.assign(size_t(bytes), '\0');
  return in.data();
}

EMSCRIPTEN_KEEPALIVE void page_size(float width, float height, int width_px, int height_px) {
  State& s = state();
  s.surface_now = {std::fmax(width, 1.0f), std::fmax(height, 1.0f), float(width_px) / std::fmax(width, 1.0f)};
  s.width_px = width_px;
  s.height_px = height_px;
  wake();
}

EMSCRIPTEN_KEEPALIVE void page_device(int bits) {
  State& s = state();
  const Device before = s.device_now;
  s.device_now = {(bits & 1) != 0,  (bits & 2) != 0,  (bits & 4) != 0, (bits & 8) != 0,
                  (bits & 16) != 0, (bits & 32) != 0, (bits & 64) != 0};
  if (before == s.device_now) return;
  if (s.ready && s.listener.device_changed) s.listener.device_changed();
  wake();
}

EMSCRIPTEN_KEEPALIVE void page_wake(int frames) {
  state().timer_due_ms = 0;
  wake(frames);
}

EMSCRIPTEN_KEEPALIVE void page_context(int back) {
  State& s = state();
  s.context_lost = back == 0;
  if (!back) return;
  browser_forget_gl();
  begin_gl_drawing();
  wake();
}

// kind 0: moved or pressed, 1: gone (left, cancelled). `buttons` as in the DOM: 1 left, 2 right, 4 middle.
EMSCRIPTEN_KEEPALIVE void page_pointer(int kind, int touch, float x, float y, int buttons, int modifiers) {
  State& s = state();
  ImGuiIO& io = ImGui::GetIO();
  const ImVec2 at(x, y);
  const bool pressed = (buttons & 1) && !(s.buttons & 1), released = !(buttons & 1) && (s.buttons & 1);
  add_modifiers(modifiers);
  io.AddMouseSourceEvent(touch ? ImGuiMouseSource_TouchScreen : ImGuiMouseSource_Mouse);
  if (kind == 1)
    io.AddMousePosEvent(-FLT_MAX, -FLT_MAX);  // first, so that what is held is let go over nothing
  else
    io.AddMousePosEvent(x, y);
  // What lies under a pointer is known a frame after it came there: a finger, or a quick hand, presses in the same instant.
  if (pressed && (io.MousePos.x != x || io.MousePos.y != y)) draw(emscripten_get_now());
  for (int button = 0; button < 3; ++button)
    if (((buttons ^ s.buttons) >> button) & 1) io.AddMouseButtonEvent(button, (buttons >> button) & 1);
  s.buttons = buttons;
  if (touch && released) io.AddMousePosEvent(-FLT_MAX, -FLT_MAX);  // nothing hovers under a lifted finger
  wake();
  if (!pressed && !released) return;
  const FieldItem* field = kind == 0 ? field_at(at) : nullptr;
  if (pressed) {
    s.pressed_field = field ? field->id : "";
    return;
  }
  if (field && field->id == s.pressed_field) open(*field);
  draw(emscripten_get_now());  // now: copying and choosing a file are allowed only inside the user's own event
}

EMSCRIPTEN_KEEPALIVE void page_wheel(float x, float y, int modifiers) {
  add_modifiers(modifiers);
  ImGui::GetIO().AddMouseWheelEvent(x, y);
  wake();
}

// The room holds code '\n' key. 1: the browser must not act on it too.
EMSCRIPTEN_KEEPALIVE int page_key(int down, int modifiers) {
  State& s = state();
  const size_t split = s.in.find('\n');
  if (split == std::string::npos) return 0;
  const ImGuiKey key = key_of(s.in.substr(0, split).c_str(), s.in.c_str() + split + 1);
  ImGuiIO& io = ImGui::GetIO();
  add_modifiers(modifiers);
  wake();
  const char* typed = s.in.c_str() + split + 1;
  const bool is_text = typed[0] != '\0' && (typed[1] == '\0' || static_cast<unsigned char>(typed[0]) >= 0x80);
  if (down && is_text && !(modifiers & (ctrl | super))) io.AddInputCharactersUTF8(typed);
  if (key == ImGuiKey_None) return 0;
  const ImGuiContext& g = *ImGui::GetCurrentContext();
  if (key == ImGuiKey_Tab && down) {
    if (modifiers & ~shift) return 0;
    const bool back = (modifiers & shift) != 0;
    const bool at_end = s.stops.empty() || g.NavId == (back ? s.stops.front() : s.stops.back());
    if (at_end && g.OpenPopupStack.empty()) return 0;  // out of the drawing; a pop-up keeps Tab until Escape
  }
  io.AddKeyEvent(key, down != 0);
  if (s.device_now.apple_keys && !down && (key == ImGuiKey_LeftSuper || key == ImGuiKey_RightSuper))
    io.ClearInputKeys();  // the key-ups under Cmd never come
  return key_is_ours(key, (modifiers & (ctrl | super)) != 0, (modifiers & alt) != 0) ? 1 : 0;
}

// on: the drawing has the keyboard; from: by Tab from before (1) or behind it (-1), or else (0).
EMSCRIPTEN_KEEPALIVE void page_focus(int on, int from) {
  ImGui::GetIO().AddFocusEvent(on != 0);
  if (on)
    state().enter_from = from;
  else
    state().leave = true;
  wake();
}

// The browser's own copy ('C') and cut ('X'), from key or menu: the frame that answers is run inside the event. What was copied
// is left in the room; 0: nothing was.
EMSCRIPTEN_KEEPALIVE int page_copy(int letter) {
  State& s = state();
  ImGuiIO& io = ImGui::GetIO();
  const ImGuiKey modifier = io.ConfigMacOSXBehaviors ? ImGuiMod_Super : ImGuiMod_Ctrl;
  const ImGuiKey key = ImGuiKey(ImGuiKey_A + letter - 'A');
  s.copied.clear();
  s.in_clipboard_event = true;
  io.AddKeyEvent(modifier, true);
  io.AddKeyEvent(key, true);
  for (int frame = 0; frame < 3 && s.copied.empty(); ++frame)
    draw(emscripten_get_now());  // Dear ImGui spreads events over frames
  io.AddKeyEvent(key, false);
  io.AddKeyEvent(modifier, false);
  s.in_clipboard_event = false;
  wake();
  s.in = s.copied;
  return s.in.empty() ? 0 : 1;
}

EMSCRIPTEN_KEEPALIVE const char* page_text() { return state().in.c_str(); }

// News of the open field; the room holds its text. what 0: changed, 1: done, 2: cancelled, 3: arrow up, 4: arrow down.
EMSCRIPTEN_KEEPALIVE void page_field(int what) {
  State& s = state();
  if (s.open_field.empty()) return;
  FieldNews& news = s.news[s.open_field];
  news.frames_left = 2;
  if (what == 0 || what == 2) news.edit.changed = true;
  news.edit.done = what == 1 || what == 2;
  news.edit.cancelled = what == 2;
  if (what >= 3) news.edit.step = what == 3 ? 1 : -1;
  news.edit.value = s.in;
  if (news.edit.done) s.open_field.clear();
  wake();
}

// The page has something to say, in the room. A file comes as its name, '\n', its text.
EMSCRIPTEN_KEEPALIVE void page_event(int what) {
  const Listener& listener = state().listener;
  const std::string text = state().in;
  wake();
  switch (what) {
    case 0:
      if (listener.link) listener.link(text);
      return;
    case 1:
      if (listener.file) listener.file(text.substr(0, text.find('\n')), text.substr(text.find('\n') + 1));
      return;
    case 2:
      if (listener.paste) listener.paste(text);
      return;
    case 3:
      if (listener.trouble) listener.trouble(text);
      return;
    case 4:
      if (listener.action) listener.action(text);
      return;
    case 5: state().rest = true; return;
  }
}

}  // extern "C"
