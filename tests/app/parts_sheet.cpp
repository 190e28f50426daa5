// SPDX-License-Identifier: MIT
#include "app/parts_sheet.h"

#include <array>
#include <cmath>

#include "draw/fish/animal.h"
#include "draw/geometry.h"

namespace shoalwright {
namespace {

/// Rule, heading; returns where the content begins.
float section(Ui& ui, std::string_view heading, float x, float y, float width) {
  draw_rule(pen_of(ui), x, y, x + width, ui.palette->line);
  section_header(ui, {x, y + 11, width, 20}, heading);
  return y + 41;
}

void caption(Ui& ui, float x, float y, std::string_view words) {
  draw_text(pen_of(ui), type::axis, {x, y}, ui.palette->ink2, words);
}

void buttons_part(Ui& ui, PartsSheet& sheet) {
  const float y = section(ui, "Buttons", 24, 64, 690);
  const Palette& p = *ui.palette;
  const Pen pen = pen_of(ui);
  float x = 24;
  const auto place = [&](std::string_view id, std::string_view words, const ButtonLook& look, std::string_view state,
                         int forced) {
    const float w = button_width(ui, words, look);
    const Box box{x, y, w, 30};
    const Item of = button_in(ui, id, box, words, look);
    if (forced == 2) draw_ring(ui, box, {});
    caption(ui, x, y + 35, state);
    x += std::max(w, std::ceil(text_width(pen, type::axis, state))) + 14;
    return of.pressed;
  };
  if (place("share", "Share", {.kind = ButtonKind::primary, .icon = Icon::share}, "rest", 0)) ++sheet.shares;
  place("share2", "Share", {.kind = ButtonKind::primary}, "keyboard", 2);
  place("print0", "Print", {.enabled = false}, "not yet", 0);
  place("print", "Print", {.tooltip = "Print the care sheet"}, "rest", 0);
  place("widen", "Widen cover by 6 cm", {.kind = ButtonKind::remedy}, "remedy", 0);
  place("quiet", "Swap 3", {.kind = ButtonKind::quiet}, "quiet", 0);
  const float icons_x = x;
  icon_button(ui, "undo", {icons_x, y}, Icon::undo, "Undo: 2 more corydoras", "Ctrl Z");
  icon_button(ui, "redo", {icons_x + 34, y}, Icon::redo, "Redo", "Ctrl Y", false);
  icon_button(ui, "theme", {icons_x + 68, y}, Icon::moon, "Dark");
  caption(ui, icons_x + 8, y + 35, "icons");

  const float y2 = y + 63;
  x = 24;
  if (chip(ui, "shoals", {x, y2}, "Shoals", sheet.chip_on)) sheet.chip_on = !sheet.chip_on;
  caption(ui, x, y2 + 31, sheet.chip_on ? "on" : "off");
  x += chip_width(ui, "Shoals") + 14;
  chip(ui, "shoals_on", {x, y2}, "Shoals", true);
  caption(ui, x, y2 + 31, "on");
  x += chip_width(ui, "Shoals") + 14;
  chip(ui, "has_room", {x, y2}, "Has room", false, {.mark = Fit::spare, .tight = true});
  caption(ui, x, y2 + 31, "with mark");
  x += chip_width(ui, "Has room", {.mark = Fit::spare, .tight = true}) + 14;
  sheet.group += stepper(ui, "group", {x, y2}, std::to_string(sheet.group), "Group size", {.less = sheet.group > 6});
  caption(ui, x, y2 + 33, "group size");
  x += stepper_width() + 14;
  stepper(ui, "least", {x, y2}, "6", "Group size", {.less = false});
  caption(ui, x, y2 + 33, "at the least");
  x += stepper_width() + 14;
  stepper(ui, "keyed", {x, y2}, "8", "Group size");
  draw_ring(ui, {x, y2, stepper_width(), 28}, {});
  caption(ui, x, y2 + 33, "keyboard");
  x += stepper_width() + 14;
  text_field(
      ui, "search", {x, y2, 150, 32}, sheet.search, "Search",
      {.placeholder = "Name, family or river", .icon = Icon::search, .clearable = true, .kind = platform::FieldKind::search});
  caption(ui, x, y2 + 37, "search, filled");
  (void)p;
}

void marks_part(Ui& ui) {
  const float y = section(ui, "Marks, never colour alone", 738, 64, 678);
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  struct Sign {
    const char* name;
    const char* says;
  };
  constexpr std::array<Sign, 8> signs{{{"Spare", "open gap"},
                                       {"Just", "gap closed"},
                                       {"Over", "hatched, past it"},
                                       {"Number, letter", "fish, piece"},
                                       {"Fix", "filled, with !"},
                                       {"Strain", "filled"},
                                       {"Watch", "half"},
                                       {"Note", "open"}}};
  const float cell = (678 - 3 * 16) / 4.0f + 16;
  for (size_t i = 0; i < signs.size(); ++i) {
    const float x = 738 + cell * static_cast<float>(i % 4), top = y + 42 * static_cast<float>(i / 4);
    float text_x = x + 22;
    if (i < 3) draw_fit(pen, static_cast<Fit>(i), {x, top + 1});
    if (i == 3) {
      draw_plate(pen, 3, {snapped(pen, x) + 8, top + 9});
      draw_letter(pen, "b", {snapped(pen, x) + 27, top + 9});
      text_x = x + 43;
    }
    if (i > 3) draw_grade(pen, static_cast<Severity>(i - 4), {x + 7, top + 8});
    draw_text(pen, medium(type::small), {text_x, top}, p.ink, signs[i].name);
    draw_text(pen, type::axis, {text_x, top + 16}, p.ink2, signs[i].says);
  }
  const Levels ladders[] = {
      {.surface = true}, {.upper = true}, {.middle = true}, {.floor = true}, {.middle = true, .floor = true}};
  const char* names[] = {"Surface", "Upper", "Middle", "Floor", "Two levels"};
  float x = 738;
  for (int i = 0; i < 5; ++i) {
    draw_levels(pen, ladders[i], {x, y + 88});
    x += 21 + draw_text(pen, type::small, {x + 21, y + 89}, p.ink, names[i]) + 18;
  }
  draw_emblem(pen, {x + 20, y + 82});
}

void rulers_part(Ui& ui) {
  const float y = section(ui, "Spare and short, one house mark", 24, 262, 330);
  const ImU32 s1 = ui.palette->s1, s5 = ui.palette->s5;
  ruler_row(ui, "ruler/spare", {24, y}, 320,
            {.name = "Spare", .spare = "7 cm spare", .ruler = {.wanted = 45, .there_is = 52, .most = 60, .bar = s1}});
  ruler_row(ui, "ruler/just", {24, y + 41}, 320,
            {.name = "Just",
             .spare = "0 cm spare",
             .ruler = {.wanted = 51.4, .there_is = 52, .most = 60, .wanted_now = 45, .bar = s1}});
  ruler_row(ui, "ruler/short", {24, y + 82}, 320,
            {.name = "Short",
             .spare = "32 cm short",
             .grade = Severity::strain,
             .ruler = {.wanted = 84, .there_is = 52, .most = 90, .bar = s5}});
  limit_bar(ui, "limit/ammonia", {24, y + 128}, 150,
            {.name = "Free ammonia", .said = "far under", .limit = "limit 0.02 mg/L", .value = 0.002, .limit_value = 0.02});
  limit_bar(ui, "limit/over", {194, y + 128}, 150,
            {.name = "Nitrite", .said = "over", .limit = "limit 0.1 mg/L", .value = 0.13, .limit_value = 0.1});
}

WaterBar gh_bar() {
  WaterBar bar{.name = "GH", .window = "4 to 12 °dH", .from = 0, .to = 20, .ticks = {5, 10, 15}, .shared = std::pair(4.0, 12.0)};
  bar.rows = {{1, {1, 12}, {2, 8}}, {2, {2, 15}, {4, 12}}, {3, {4, 15}, {5, 12}}, {4, {4, 15}, {5, 12}}};
  return bar;
}

void water_part(Ui& ui) {
  const float y = section(ui, "Water bar", 384, 262, 348);
  WaterBar over = gh_bar();
  over.today = 13;
  over.aim = 7;
  over.message = "1 °dH over for 1";
  over.grade = Severity::watch;
  water_bar(ui, "water/over", {384, y}, 156, over);
  WaterBar inside = gh_bar();
  inside.today = 7;
  inside.message = "3 down, 5 up to the edge";
  inside.shared_now = std::pair(4.0, 15.0);
  water_bar(ui, "water/inside", {566, y}, 156, inside);
  draw_wrapped(pen_of(ui), type::small, {384, y + 108}, 348, ui.palette->ink2,
               "Thin line: lives in. Thick: thrives in. Band: suits all. Filled diamond: today. Open diamond: aim.");
}

void findings_part(Ui& ui, PartsSheet& sheet) {
  float y = section(ui, "A finding", 762, 262, 654);
  FindingAnswer answer;
  const FindingCard fix{
      .severity = Severity::harm,
      .numbers = {5, 3},
      .heading = "Fin nipping",
      .sentences = "Tiger barbs nip trailing fins. 6 threadfins carry filaments to 4 cm; no size of group stops it.",
      .remedies = {"Show calmer barbs", "Swap 3"},
      .why = "Common practice, no source: barbs of this kind bite long fins in any group.",
      .why_open = sheet.why_open};
  y += finding(ui, "finding/nips", {762, y}, 654, fix, answer);
  if (answer.why) sheet.why_open = !sheet.why_open;
  if (answer.pressed == 0) ++sheet.remedies;
  sheet.previewed = answer.previewed >= 0 ? std::string(fix.remedies[static_cast<size_t>(answer.previewed)]) : std::string();
  FindingAnswer other;
  finding(ui, "finding/lane", {762, y}, 654,
          {.severity = Severity::strain,
           .numbers = {5},
           .heading = "Lane 32 cm short",
           .sentences = "5 wants 84 cm at a stretch; branch b leaves 52.",
           .remedies = {"Turn branch b by 20°"},
           .why = "The lane is the longest straight swim at one depth."},
          other);
}

void rows_part(Ui& ui, PartsSheet& sheet) {
  const float y = section(ui, "Shelf rows", 24, 500, 296);
  const Palette& p = *ui.palette;
  const Pen pen = pen_of(ui);
  struct Line {
    const char *id, *name, *latin, *size, *says;
    AnimalLook look;
    float length_px;
    Fit fit;
    Levels levels;
  };
  const Line lines[] = {{"cherry",
                         "Cherry barb",
                         "Rohanella titteya",
                         "5 cm",
                         "Room for 13, then 26 °C at most",
                         {.form = Form::barb, .marks = {Mark::lateral_stripe}},
                         32,
                         Fit::spare,
                         {.middle = true}},
                        {"tiger",
                         "Tiger barb",
                         "Puntigrus tetrazona",
                         "7 cm",
                         "Nips the fins of 3 and 4",
                         {.form = Form::barb, .marks = {Mark::tiger_bars}},
                         36,
                         Fit::over,
                         {.middle = true}},
                        {"pygmy",
                         "Pygmy corydoras",
                         "Gastrodermus pygmaeus",
                         "3 cm",
                         "Just 8, no more",
                         {.form = Form::corydoras, .marks = {Mark::dots}},
                         27,
                         Fit::just,
                         {.middle = true, .floor = true}},
                        {"ember",
                         "Ember tetra",
                         "Hyphessobrycon amandae",
                         "2 cm",
                         "Room for 9",
                         {.form = Form::slim_tetra},
                         22,
                         Fit::spare,
                         {.middle = true}}};
  draw_card(pen, {24, y, 296, 234});
  Column column = begin_column(ui, "rows", {25, y + 1, 294, 232});
  for (int i = 0; i < 4; ++i) {
    const Line& line = lines[i];
    const Box box{column.content.x, column.content.y + 58 * static_cast<float>(i), 294, 58};
    const ListRowAnswer answer =
        list_row(ui, std::string("row/") + line.id, box, line.name, {.lifted = i == 3, .chosen = i == 1, .rule_above = i > 0});
    if (answer.drag_started) ++sheet.lifted;
    if (answer.enter) ++sheet.entered;
    if (i == 2) draw_ring(ui, box, {.rounding = 2, .ring = Ring::inside});
    const Pen on = pen_of(ui);
    const float x = box.x + 70;
    draw_silhouette(on.dl, Animal{line.look, {}, {}, {}}, {box.x + 36, box.y + 29}, line.length_px, i == 3 ? p.edge : p.ink2,
                    p.panel);
    draw_text(on, medium(type::body), {x, box.y + 6}, p.ink, line.name);
    draw_text(on, italic(type::axis), {x, box.y + 24}, p.ink3, line.latin);
    draw_fit(on, line.fit, {x, box.y + 40});
    draw_text(on, type::small, {x + 19, box.y + 39}, line.fit == Fit::over ? p.call : p.ink2, line.says);
    draw_levels(on, line.levels, {box.right() - 26, box.y + 9});
    draw_text(on, type::small, {box.right() - 32, box.y + 10}, p.ink, line.size, Align::right);
  }
  end_column(ui, column, 58 * 4);
  caption(ui, 24, y + 240, "rest, chosen, keyboard, lifted");
}

void cards_part(Ui& ui, PartsSheet& sheet) {
  const float y = section(ui, "Fields, menus, rules", 344, 500, 720);
  const Palette& p = *ui.palette;
  Pen pen = pen_of(ui);
  draw_card(pen, {344, y, 353, 128});
  draw_text(pen, semibold(type::body), {360, y + 17}, p.ink, "No fish yet");
  draw_wrapped(pen, type::small, {360, y + 38}, 320, p.ink2,
               "Drag one in from the shelf. Start with the fish you care for most; the water will follow it.");
  button(ui, "empty/tap", {360, y + 82}, "Show fish for this tap", {.kind = ButtonKind::remedy, .small = true});
  draw_card(pen, {711, y, 353, 128});
  draw_text(pen, semibold(type::body), {727, y + 17}, p.ink, "Group size");
  sheet.rule_size =
      group_rule(ui, "rule", {723, y + 44}, 238, {.size = sheet.rule_size, .least = 6, .good = 8, .most = 14}, "Group size");
  draw_plate(pen, 5, {1040, y + 26});
  draw_plates(pen, std::array{1, 2, 3, 4, 6, 12}, {727, y + 106});
  draw_tip(pen, {1048, y + 96}, "Open lane 52 cm, 19 cm down", p.edge, p.ink, Align::right);

  const float y2 = y + 142;
  draw_card(pen, {344, y2, 353, 142});
  const std::string_view shelves[] = {"Fish", "Wood, stone", "Plants"};
  if (const int i = one_of(ui, "shelf", {360, y2 + 12}, shelves, sheet.shelf); i >= 0) sheet.shelf = i;
  const std::string_view levels[] = {"Surface", "Upper", "Middle", "Floor"};
  const bool on[] = {false, true, false, false};
  segments(ui, "levels", {360, y2 + 46}, levels, on, 320);
  if (switch_chip(ui, "crowding", {360, y2 + 80}, "Crowding", sheet.crowding)) sheet.crowding = !sheet.crowding;
  if (switch_chip(ui, "lane", {368 + switch_width(ui, "Crowding"), y2 + 80}, "Swimming lane", sheet.lane))
    sheet.lane = !sheet.lane;
  if (tab(ui, "tab/tank", {552, y2 + 96}, 46, "Tank", true)) ++sheet.shares;
  tab(ui, "tab/water", {604, y2 + 96}, 46, "Water", false);
  draw_card(pen, {711, y2, 353, 142});
  number_stepper(ui, "change", {727, y2 + 12}, sheet.change_l, "Change each week", {.unit = "L", .most = 132, .step = 5});
  number_field(ui, "tap_gh", {867, y2 + 11, 90, 30}, sheet.tap_gh, "GH of the tap", {.unit = "°dH", .most = 40});
  const std::string_view kinds[] = {"Day", "Evening", "Off"};
  if (const int i = select(ui, "light", {727, y2 + 54, 110, 30}, kinds, sheet.light, "Light"); i >= 0) sheet.light = i;
  text_field(ui, "name", {846, y2 + 54, 200, 30}, sheet.name, "Name of the plan", {.bare = true, .type = semibold(type::lead)});
  button(ui, "quiet2", {727, y2 + 98}, "°C, cm, L", {.kind = ButtonKind::quiet, .chevron = true});
}

void notes_part(Ui& ui, PartsSheet& sheet) {
  const float y = section(ui, "Short notes", 1088, 500, 328);
  if (toast_in(ui, "note/1", {1088, y, 328, 44}, "Removed 6 threadfin rainbowfish", "Undo")) ++sheet.undone;
  toast_in(ui, "note/2", {1088, y + 54, 328, 44}, "Tank now 60 × 30 × 30; 2 pieces moved in", "Undo");
  SawToothChart saw{.weeks = 8,
                    .most = 40,
                    .ceiling = 30,
                    .ceiling_words = "ceiling 30",
                    .source = 4.4,
                    .ticks = {0, 20, 40},
                    .spare = "about 9 spare"};
  double level = 9;
  for (int day = 0; day <= 56; ++day) {
    saw.line.push_back({day / 7.0, level});
    if (day > 0 && day % 7 == 0) {
      saw.peak = level;
      saw.peak_week = 7;
      level = level * 0.7 + 4.4 * 0.3;
      saw.line.push_back({day / 7.0, level});
    }
    level += 0.72;
  }
  draw_saw_tooth(ui, {1088, y + 116, 176, 82}, saw);
  Column column = begin_column(ui, "long", {1288, y + 112, 128, 110}, ui.palette->panel);
  for (int i = 0; i < 9; ++i)
    draw_text(pen_of(ui), type::small, {column.content.x + 10, column.content.y + 6 + 22 * static_cast<float>(i)},
              ui.palette->ink, "One line of nine");
  const Item last = button(ui, "long/last", {column.content.x + 10, column.content.y + 206}, "Last", {.small = true});
  if (last.pressed) show_toast(ui, sheet.toast, "Link copied, 412 characters", "Show");
  end_column(ui, column, 240);
}

void keys_part(Ui& ui) {
  float x = 24;
  const float y = section(ui, "Key in hand", 24, 824, 1392);
  const std::pair<const char*, const char*> keys[] = {{"Tab", "shelf, tank, margins, assessment"},
                                                      {"Enter", "pick up, put down"},
                                                      {"Arrows", "1 cm; Shift 5 cm"},
                                                      {"+ −", "group size"},
                                                      {"Delete", "take out"},
                                                      {"Esc", "put back"},
                                                      {"/", "search"},
                                                      {"C L N", "crowding, lane, numbers"},
                                                      {"Ctrl Z", "undo"}};
  const Pen pen = pen_of(ui);
  for (const auto& [key, does] : keys) {
    x += draw_key_cap(pen, {x, y}, key) + 7;
    x += draw_text(pen, type::small, {x, y + 2}, ui.palette->ink2, does) + 22;
  }
}

}  // namespace

void draw_parts_sheet(Ui& ui, PartsSheet& sheet) {
  const ImVec2 size = ImGui::GetIO().DisplaySize;
  ImGui::SetNextWindowPos({0, 0});
  ImGui::SetNextWindowSize(size);
  ImGui::Begin("sheet", nullptr,
               ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings |
                   ImGuiWindowFlags_NoBringToFrontOnFocus | ImGuiWindowFlags_NoScrollWithMouse);
  const Pen pen = pen_of(ui);
  pen.dl->AddRectFilled({0, 0}, size, ui.palette->ground);
  draw_text(pen, type::title, {24, 20}, ui.palette->ink, "Parts and states");
  buttons_part(ui, sheet);
  marks_part(ui);
  rulers_part(ui);
  water_part(ui);
  findings_part(ui, sheet);
  rows_part(ui, sheet);
  cards_part(ui, sheet);
  notes_part(ui, sheet);
  keys_part(ui);
  if (draw_toast(ui, sheet.toast, {720, 880})) ++sheet.undone;
  ImGui::End();
}

}  // namespace shoalwright
