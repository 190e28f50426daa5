// SPDX-License-Identifier: MIT
// What the app may ask of the machine that it runs on, as plain data and plain functions. One whole file per platform implements
// it: browser.cpp (WebGL2 and the page) and headless.cpp (tests, no screen). Pointer, wheel and keys reach Dear ImGui's io
// directly.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace shoalwright::platform {

/// The drawing surface in CSS pixels (Dear ImGui's coordinates) and how many device pixels one of them is.
struct Surface {
  float width = 1;
  float height = 1;
  float pixel_ratio = 1;
};

/// What the device asks for. `dark` is the system's wish; what the keeper chose is a setting.
struct Device {
  bool dark = false;
  bool reduced_motion = false;
  bool more_contrast = false;
  bool forced_colours = false;
  bool coarse_pointer = false;  ///< a finger rather than a mouse
  bool apple_keys = false;      ///< shortcuts with Cmd; Dear ImGui swaps Ctrl and Cmd by itself
  bool hidden = false;          ///< the tab is in the background: nothing needs to move

  bool operator==(const Device&) const = default;
};

/// A plan kept on this device by another tab, or by this tab before it turned to another plan.
struct Draft {
  std::string id;
  std::string text;
  double saved_ms = 0;  ///< since 1970, UTC
};

/// What the platform calls. `start` and `frame` are needed; an empty one of the others is not called. All are called between
/// frames, never inside `frame`; `link` may be called once between `start` and the first frame.
struct Listener {
  /// The ImGui context is there, nothing is drawn yet: add the fonts (`asset`), set the style. At least one font must be added.
  std::function<void()> start;
  /// Lay out and draw one frame, between ImGui::NewFrame and ImGui::Render.
  std::function<void()> frame;
  /// A link ("#p=…") in the address that this tab did not write: at the start, and whenever a link is pasted into the same tab.
  /// At the start this tab then has a new draft, and `draft()` is the plan to come back to; later call `leave_draft` before a
  /// plan takes the place of the keeper's own.
  std::function<void(std::string fragment)> link;
  /// A file that the keeper chose (`open_file`) or dropped onto the window, as text.
  std::function<void(std::string name, std::string text)> file;
  /// Text pasted while the drawing, not a text field, has the keyboard.
  std::function<void(std::string text)> paste;
  /// Something the device could not do, as one sentence for the keeper (storage full, file unreadable, nothing copied).
  std::function<void(std::string sentence)> trouble;
  /// A button of the plan's text form was pressed (see `set_plan_text`).
  std::function<void(std::string action)> action;
  /// `device()` has changed.
  std::function<void()> device_changed;
};

/// Starts drawing and calling. In the browser it does not return (the page goes on calling), so locals of main stay alive.
void run(Listener listener);

/// Asks for `frames` more frames; nothing is drawn that was not asked for. Input asks for three by itself, since Dear ImGui sizes
/// pop-ups a frame late.
void wake(int frames = 3);
/// Asks for one frame in `ms` (a tooltip's delay, a toast's end, the next step of sliced work). The earliest wish wins.
void wake_in(int ms);

Surface surface();
Device device();
/// The day on the keeper's clock, "YYYY-MM-DD".
std::string today();

/// Bytes that were loaded with the program ("inter-regular", "-medium", "-semibold", "-italic"), alive as long as it
/// runs; empty for an unknown name.
std::string_view asset(std::string_view name);

/// The program comes in two files: what a first look needs, and the rest (wasm/rest.txt), which is fetched when something of it
/// is first wanted. Whether the rest is here; where not, it is asked for, and a frame is drawn when it has come. Where it cannot
/// be had `Listener::trouble` says so, and the next question after a while asks again. No function of the rest may be called
/// before.
bool have_rest();

/// The same without asking for it.
bool rest_is_here();

enum class FieldKind { text, search, number };

/// One text field as drawn in this frame. Its text is edited by a real input of the page, laid over `x, y, width, height`: phone
/// keyboards, input methods, dead keys and selection work as everywhere. While `FieldEdit::editing` holds, leave the text
/// undrawn: the page draws it.
struct TextField {
  std::string_view id;     ///< stable and unique, "shelf.search"
  std::string_view label;  ///< read out by screen readers
  std::string_view value;
  std::string_view placeholder;               ///< shown by the page while the input is empty
  float x = 0, y = 0, width = 0, height = 0;  ///< of the text, inside the padding, CSS pixels
  float line_px = 0;                          ///< ImGui::GetFontSize(); Dear ImGui sizes a font by its line height
  unsigned ink = 0xff000000;                  ///< ImU32
  unsigned placeholder_ink = 0xff808080;
  int font_weight = 400;
  int most_bytes = 2000;  ///< longer input is cut at a character
  bool align_right = false;
  FieldKind kind = FieldKind::text;
};

struct FieldEdit {
  bool editing = false;    ///< the page's input lies over this field now
  bool changed = false;    ///< `value` is new in this frame
  bool done = false;       ///< left in this frame by Enter, Tab, a click elsewhere or Escape
  bool cancelled = false;  ///< left by Escape: `value` is what it was when editing began
  int step = 0;            ///< ArrowUp +1, ArrowDown -1 pressed in this frame
  std::string value;       ///< meaningful when changed or done
};

/// Call it every frame that draws the field, right after its ImGui item was submitted: a click or tap on that item opens the
/// field inside the user's own event. `open` opens it from the program (Tab or Enter on the item, a shortcut).
FieldEdit text_field(const TextField& field, bool open);

/// Call it right after each item that Tab shall reach, in reading order, so that Tab can leave the drawing at its two ends.
void tab_stop();
/// Mouse pointers that Dear ImGui does not have. Lasts for this frame; `automatic` follows ImGui::SetMouseCursor.
enum class Cursor { automatic, grab, grabbing, help };
void set_cursor(Cursor cursor);

/// Where this page is, without what follows "#": a link is this and a fragment.
std::string page_address();
/// Puts text on the clipboard. Call it while handling a click or the copy shortcut.
void copy_text(std::string_view text);
/// Lets the keeper choose a .json file; it arrives at `Listener::file`. Call it while handling a click or a key.
void open_file();
/// Offers text to be saved under a file name; the ending decides its type.
void save_file(std::string_view name, std::string_view text);

/// Keeps the plan on this device (written 300 ms after the last call and when the page is left). Each tab keeps its own; none
/// overwrites another's. A device without room says so once through `Listener::trouble`.
void keep_draft(std::string_view text);
/// What to go on with: this tab's draft, or, in a new tab without a link, the newest one that no open tab holds. Empty: none.
std::string draft();
/// All other drafts on this device, newest first.
std::vector<Draft> other_drafts();
/// From here on `keep_draft` writes a new draft; what was kept so far stays among the others (New, Open).
void leave_draft();

/// The address says this plan ("#p=…"), rewritten at most once a second.
void set_link(std::string_view fragment);

/// A setting of this device, empty if never kept. "theme" ("light", "dark" or empty for the system's) also colours the page
/// around the drawing.
std::string setting(std::string_view name);
void keep_setting(std::string_view name, std::string_view value);

/// Read out politely after 500 ms of rest; only the last text of a burst.
void say(std::string_view text);
/// The plan as text for the page, kept in step by calling it whenever the plan or its assessment changes. Lines:
/// "# heading", "## heading", "- item", "| cell | cell" (the first row of a run is the table's head), "! action Label" (a button
/// that reports `action`), anything else a paragraph. Never read as HTML.
void set_plan_text(std::string_view lines);
/// A page on paper, from lines as in `set_plan_text`, through the browser's own print dialogue: black on white, whatever the
/// theme. Call it while handling a click or a key.
void print_page(std::string_view lines);
/// The title of the browser's tab.
void set_title(std::string_view title);

/// The program cannot go on: the page says so with the link of the plan and a way to save it. No frame is drawn after it.
void show_failure(std::string_view sentence);

}  // namespace shoalwright::platform
