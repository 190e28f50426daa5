// SPDX-License-Identifier: MIT
#include "app/side_desk.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "catalog/builtin.h"
#include "edit/command.h"
#include "share/plan_json.h"

namespace shoalwright {
namespace {

std::string file_text(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream bytes;
  bytes << file.rdbuf();
  return bytes.str();
}

}  // namespace

Plan plan_from(const std::string& name) {
  return read_plan(file_text(std::string(SHOALWRIGHT_TESTS_DIR) + "/plans/" + name + ".json")).value();
}

SideDesk::SideDesk(Plan plan, bool paints, Theme theme, float scale)
    : catalog(builtin_catalog()), paints_(paints), theme_(theme) {
  history = begin_history(std::move(plan));
  platform::headless::World world;
  world.surface.pixel_ratio = scale;
  world.assets["cards"] = builtin_cards();
  platform::headless::begin(std::move(world));
  platform::Listener listener;
  listener.start = [this] {
    set_imgui_style();
    // Inter as Debian's fonts-inter installs it.
    const char* names[4] = {"Regular", "Medium", "SemiBold", "Italic"};
    for (int i = 0; i < 4; ++i) fonts_[i] = file_text(std::string("/usr/share/fonts/opentype/inter/Inter-") + names[i] + ".otf");
    const std::string_view views[4] = {fonts_[0], fonts_[1], fonts_[2], fonts_[3]};
    EXPECT_TRUE(load_faces(*ImGui::GetIO().Fonts, views, faces_)) << "fonts-inter is not installed";
  };
  listener.frame = [this] { draw(); };
  platform::run(std::move(listener));
  show();
  rest();
}

SideDesk::~SideDesk() { ImGui::DestroyContext(); }

void SideDesk::show() {
  const Plan& plan = present(history);
  now = assess(plan, catalog, bodies);
  shown = plan;
  previewing.clear();
  if (held) {
    shown = apply(plan, AddGroup{.species = held->species->id, .count = held->count}, catalog);
    previewing = "If you drop " + std::to_string(held->count) + " here";
  }
  shown_assessment = assess(shown, catalog, shown_bodies);
  const std::string in_hand = held ? held->species->id : "";
  now_margins = margin_table(plan, catalog, now, in_hand);
  shown_margins = margin_table(shown, catalog, shown_assessment, in_hand);
}

void SideDesk::draw() {
  begin_ui(ui, palette(theme_), faces_, platform::surface().pixel_ratio);
  const Look look{.catalog = catalog,
                  .history = history,
                  .plan = present(history),
                  .now = now,
                  .shown = shown,
                  .shown_assessment = shown_assessment,
                  .shown_bodies = shown_bodies,
                  .spread = spread,
                  .now_margins = now_margins,
                  .shown_margins = shown_margins,
                  .previewing = previewing,
                  .held = held,
                  .preferences = preferences,
                  .measures = measures,
                  .pointed_species = pointed,
                  .chosen_pieces = chosen,
                  .chosen_terrain = chosen_terrain,
                  .piece_in_hand = piece_in_hand,
                  .sheet = Sheet::none,
                  .animals = animals};
  Actions wishes;
  ImGui::SetNextWindowPos({0, 0});
  ImGui::SetNextWindowSize({1440, 900});
  ImGui::Begin("planner", nullptr,
               ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings |
                   ImGuiWindowFlags_NoBringToFrontOnFocus | ImGuiWindowFlags_NoBackground);
  draw_panel(pen_of(ui), {0, 0, 1440, 900}, ui.palette->ground, 0, 0);
  if (with_shelf_rail)
    draw_shelf_rail(ui, look, {0, 52, 56, 848}, shelf, wishes);
  else
    draw_shelf(ui, look, shelf_box, shelf, wishes);
  draw_stock(ui, look, stock_box, stock, wishes);
  draw_held(ui, look, shelf_box, held_state, wishes);
  ImGui::End();
  carry_out(wishes);
}

void SideDesk::carry_out(const Actions& wishes) {
  pointed.clear();
  const auto edit = [&](Plan plan, const std::string& name, const std::string& join) {
    remember(history, std::move(plan), name, join, ImGui::GetTime());
    show();
  };
  for (const Action& action : wishes) {
    all.push_back(action);
    if (const auto* wish = std::get_if<EditPlan>(&action)) edit(wish->plan, wish->name, wish->join);
    if (const auto* wish = std::get_if<PointAt>(&action)) pointed = wish->species;
    if (const auto* wish = std::get_if<ChoosePieces>(&action)) chosen = wish->pieces;
    if (const auto* wish = std::get_if<HoldPiece>(&action)) piece_in_hand = wish->kind;
    if (const auto* wish = std::get_if<PickUp>(&action)) {
      bool in_plan = false;
      for (const Group& group : present(history).stock) in_plan = in_plan || group.species == wish->species;
      held = Held{.species = find_species(catalog, wish->species),
                  .count = wish->count,
                  .number = static_cast<int>(present(history).stock.size()) + 1,
                  .by_keyboard = wish->by_keyboard,
                  .in_plan = in_plan};
      show();
    }
    if (const auto* wish = std::get_if<HoldCount>(&action); wish && held && wish->count >= 1) {
      held->count = wish->count;
      show();
    }
    if (std::holds_alternative<Drop>(action) && held) {
      const AddGroup add{.species = held->species->id, .count = held->count};
      held.reset();
      edit(apply(present(history), add, catalog), name_of(add, present(history), catalog), "");
    }
    if (std::holds_alternative<PutBack>(action) && held) {
      held.reset();
      show();
    }
  }
  if (!wishes.empty()) platform::wake(2);
}

void SideDesk::frame() {
  if (!paints_) {
    platform::headless::frame();
    return;
  }
  platform::headless::frame([&](ImDrawData* data) { picture = rasterise(data, 0xff000000, platform::surface().pixel_ratio, 1); });
}

void SideDesk::rest() {
  for (int i = 0; i < 40 && platform::headless::record().frames_owed > 0; ++i) frame();
}

ImVec2 SideDesk::middle(const std::string& id) {
  constexpr std::string_view row = "shelf.row/";
  const Spots::Spot* found = spot(id);
  if (id.starts_with(row) && (found == nullptr || !found->visible)) {
    const Species* kind = find_species(catalog, id.substr(row.size()));
    shelf.search = kind ? kind->name.scientific : "";
    frames(2);
    found = spot(id);
  }
  EXPECT_NE(found, nullptr) << id;
  if (found == nullptr) return {-1, -1};
  EXPECT_TRUE(found->visible) << id;
  return {(found->min.x + found->max.x) / 2, (found->min.y + found->max.y) / 2};
}

void SideDesk::move_to(ImVec2 at) {
  platform::headless::move_to(at.x, at.y);
  frames(2);
}

void SideDesk::press() {
  platform::headless::press();
  frame();
}

void SideDesk::release() {
  platform::headless::release();
  frame();
  rest();
}

void SideDesk::click(const std::string& id) {
  move_to(middle(id));
  press();
  release();
}

void SideDesk::double_click(const std::string& id) {
  move_to(middle(id));
  for (int i = 0; i < 2; ++i) {
    platform::headless::press();
    frame();
    platform::headless::release();
    frame();
  }
  rest();
}

void SideDesk::key(ImGuiKeyChord chord) {
  ImGuiIO& io = ImGui::GetIO();
  const ImGuiKey which = static_cast<ImGuiKey>(chord & ~ImGuiMod_Mask_);
  for (const ImGuiKey modifier : {ImGuiMod_Ctrl, ImGuiMod_Shift}) io.AddKeyEvent(modifier, (chord & modifier) != 0);
  io.AddKeyEvent(which, true);
  platform::wake();
  frame();
  io.AddKeyEvent(which, false);
  for (const ImGuiKey modifier : {ImGuiMod_Ctrl, ImGuiMod_Shift}) io.AddKeyEvent(modifier, false);
  frame();
  rest();
}

void SideDesk::character(char c) {
  ImGui::GetIO().AddInputCharacter(static_cast<unsigned>(c));
  platform::wake();
  frame();
  rest();
}

const EditPlan* SideDesk::last_edit() const {
  for (auto action = all.rbegin(); action != all.rend(); ++action)
    if (const auto* edit = std::get_if<EditPlan>(&*action)) return edit;
  return nullptr;
}

}  // namespace shoalwright
