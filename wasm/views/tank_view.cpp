// SPDX-License-Identifier: MIT
#include "views/tank_view.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "draw/chips.h"
#include "draw/marks.h"
#include "draw/menus.h"
#include "draw/panels.h"
#include "edit/command.h"
#include "platform/platform.h"
#include "units/text.h"
#include "views/depth_profile_view.h"
#include "views/shoals.h"
#include "views/tank_picture.h"

namespace shoalwright {

namespace {

constexpr float tool_height = 44, scale_width = 34, profile_width = 148, lamp_room = 58, base_room = 18;

/// The tank as it stands on the screen in this frame.
struct Stage {
  const Scene& scene;
  FrontView view;
  Box glass;  ///< outer
  Box water;

  ImVec2 at(double x_cm, double depth_cm) const { return front_point(view, scene, x_cm, scene.fill_cm - depth_cm); }
};

Stage stage_of(const Scene& scene, const Box& box, const Zoom& zoom) {
  const Vec size = front_size_cm(scene);
  float px = std::max(0.5f, std::min(box.w / std::max(size.x, 1.0f), (box.h - lamp_room - base_room) / std::max(size.y, 1.0f)));
  ImVec2 corner{std::floor(box.x + (box.w - px * size.x) / 2), std::floor(box.bottom() - base_room - px * size.y)};
  apply_zoom(zoom, box, corner, px);
  Stage stage{scene, {corner, px}, {corner.x, corner.y, px * size.x, px * size.y}, {}};
  const double length_cm = size.x - 2 * scene.glass_mm / 10;
  const ImVec2 top = stage.at(0, 0), bottom = stage.at(length_cm, scene.fill_cm);
  stage.water = {top.x, top.y, bottom.x - top.x, bottom.y - top.y};
  return stage;
}

void draw_tools(Ui& ui, const Look& look, const Box& box, Actions& out) {
  const Pen pen = pen_of(ui);
  Row row{.box = box.inset(16, 0), .gap = 10};
  const Preferences& now = look.preferences;
  struct Switch {
    const char *id, *words, *short_words;
    bool Preferences::*on;
  };
  static constexpr Switch switches[] = {{"tool.lane", "Swimming lane", "Lane", &Preferences::show_lane},
                                        {"tool.swim", "Swim", "Swim", &Preferences::swim},
                                        {"tool.numbers", "Numbers", "Numbers", &Preferences::show_numbers}};
  constexpr float select_width = 112;
  const float y = box.y + (box.h - 26) / 2;
  // On a phone in fewer words, and without what is wanted least.
  bool in_short = false;
  std::size_t count = std::size(switches);
  const auto width_of = [&](const Switch& s) { return switch_width(ui, in_short ? s.short_words : s.words) + 10; };
  float right = box.right() - 16, used = 0;
  const auto measure = [&] {
    used = select_width + 10;
    for (std::size_t i = 0; i < count; ++i) used += width_of(switches[i]);
    return used + 16 <= box.w;
  };
  in_short = !measure();
  while (!measure() && count > 0) --count;
  right -= select_width;
  if (const int picked = select(ui, "tool.overlay", {right, y, select_width, 26}, overlay_words(), static_cast<int>(now.overlay),
                                "Shade the tank");
      picked >= 0) {
    Preferences next = now;
    next.overlay = static_cast<Overlay>(picked);
    out.push_back(SetPreferences{next});
  }
  right -= 10;
  for (std::size_t i = count; i-- > 0;) {
    const Switch& s = switches[i];
    right -= width_of(s) - 10;
    if (switch_chip(ui, s.id, {right, y}, in_short ? s.short_words : s.words, now.*(s.on))) {
      Preferences next = now;
      next.*(s.on) = !(now.*(s.on));
      out.push_back(SetPreferences{next});
    }
    right -= 10;
  }
  if (box.w < used + 100) return;
  const float width = draw_text(pen, semibold(type::lead), {row.box.x, box.y + 12}, pen.palette->ink, "Front");
  draw_text(pen, type::small, {row.box.x + width + 8, box.y + 15}, pen.palette->ink2,
            elided(pen, type::small, overlay_legend(look), box.w - used - width - 40));
}

/// The shoal under the pointer: the one with an animal nearest to it.
const Shoal* shoal_at(const Stage& stage, const std::vector<Shoal>& shoals, ImVec2 pointer) {
  const Shoal* found = nullptr;
  float nearest = 1;
  for (const Shoal& shoal : shoals)
    for (const DrawnAnimal& animal : shoal.animals) {
      const ImVec2 at = stage.at(animal.x_cm, animal.depth_cm);
      const float reach = std::max(12.0f, float(animal.length_cm) * stage.view.px_per_cm * 0.55f);
      const float near = std::hypot(pointer.x - at.x, (pointer.y - at.y) * 1.6f) / reach;
      if (near < nearest) {
        nearest = near;
        found = &shoal;
      }
    }
  return found;
}

void draw_shoal(ImDrawList* list, const Look& look, const Stage& stage, const Shoal& shoal, const Tint& tint) {
  if (!shoal.card) return;
  const Animal& animal = look.animals.get(shoal.species, shoal.card->look);
  for (const DrawnAnimal& one : shoal.animals)
    draw_animal(list, animal, stage.at(one.x_cm, one.depth_cm), float(one.length_cm) * stage.view.px_per_cm, one.facing, one.tilt,
                tint);
}

Box around(const Stage& stage, const Shoal& shoal) {
  ImVec2 low{1e9f, 1e9f}, high{-1e9f, -1e9f};
  for (const DrawnAnimal& one : shoal.animals) {
    const ImVec2 at = stage.at(one.x_cm, one.depth_cm);
    const float half = float(one.length_cm) * stage.view.px_per_cm / 2;
    low = {std::min(low.x, at.x - half), std::min(low.y, at.y - half * 0.5f)};
    high = {std::max(high.x, at.x + half), std::max(high.y, at.y + half * 0.5f)};
  }
  return {low.x, low.y, high.x - low.x, high.y - low.y};
}

/// The animal a plate stands over: the one nearest to the middle of its shoal.
ImVec2 plate_place(const Stage& stage, const Shoal& shoal, bool swims) {
  ImVec2 middle = around(stage, shoal).centre();
  if (swims) {  // nearest is now this and now that one: the middle of them all does not jump
    middle = {0, 0};
    for (const DrawnAnimal& one : shoal.animals) {
      const ImVec2 at = stage.at(one.x_cm, one.depth_cm);
      middle.x += at.x / float(shoal.animals.size());
      middle.y += at.y / float(shoal.animals.size());
    }
    return middle;
  }
  ImVec2 best = middle;
  float nearest = 1e9f, half = 0;
  for (const DrawnAnimal& one : shoal.animals) {
    const ImVec2 at = stage.at(one.x_cm, one.depth_cm);
    const float far = std::hypot(at.x - middle.x, at.y - middle.y);
    if (far >= nearest) continue;
    nearest = far;
    best = at;
    half = float(one.length_cm) * stage.view.px_per_cm / 2;
  }
  return {best.x, std::max(stage.water.y + 10, best.y - std::max(12.0f, half * 0.55f + 8))};
}

constexpr float plate_radius = 9;

struct Plate {
  int number;
  ImVec2 at;
};

std::vector<Plate> plates_of(const Stage& stage, const std::vector<Shoal>& shoals, bool swims) {
  std::vector<Plate> plates;
  for (std::size_t i = 0; i < shoals.size(); ++i)
    if (!shoals[i].animals.empty()) plates.push_back({int(i) + 1, plate_place(stage, shoals[i], swims)});
  return plates;
}

/// Where the letter of each piece stands, clear of plates and of each other; far away where it has no place.
std::vector<ImVec2> letters_of(const Stage& stage, const std::vector<Plate>& plates) {
  std::vector<ImVec2> taken, letters;
  for (const Plate& plate : plates) taken.push_back(plate.at);
  for (const Piece& piece : stage.scene.pieces) {
    if (!piece.x_cm) {
      letters.emplace_back(-1e6f, -1e6f);
      continue;
    }
    const Extent extent = front_extent(stage.scene, piece);
    // Above low pieces, inside tall ones.
    const float high = extent.y1 - extent.y0 > 8 ? extent.y0 + (extent.y1 - extent.y0) * 0.62f : extent.y0 + 1.5f;
    const ImVec2 at = front_point(stage.view, stage.scene, (extent.x0 + extent.x1) / 2, high);
    letters.push_back(free_place(taken, at, 18));
  }
  return letters;
}

void draw_numbers(const Pen& pen, const std::vector<Plate>& plates, const std::vector<ImVec2>& letters) {
  for (std::size_t i = 0; i < letters.size(); ++i) draw_letter(pen, piece_letter(int(i)), letters[i]);
  for (const Plate& plate : plates) draw_plate(pen, plate.number, plate.at, plate_radius);
}

/// Where along a line the middle of its words stands clear of plates and letters: in the middle of the line if it can be. Empty
/// where they stand everywhere.
std::optional<float> place_of_words(const Pen& pen, float from, float to, float y, std::string_view words,
                                    const std::vector<ImVec2>& marks) {
  const float half = text_width(pen, medium(type::small), words) / 2 + 8, high = 11 + plate_radius;
  for (const float share : {0.5f, 0.4f, 0.6f, 0.3f, 0.7f, 0.2f, 0.8f}) {
    const float x = std::clamp(from + (to - from) * share, from + half, std::max(from + half, to - half));
    if (std::none_of(marks.begin(), marks.end(), [&](const ImVec2& mark) {
          return std::abs(mark.x - x) < half + plate_radius && std::abs(mark.y - y) < high;
        }))
      return x;
  }
  return std::nullopt;
}

/// The lane that most matters where it is: of the group that wants the most of it, else of the middle.
void draw_lane(const Pen& pen, const Look& look, const Stage& stage, std::vector<ImVec2>& marks) {
  const Room& room = look.shown_assessment.room;
  const GroupRoom* tight = tightest_lane(room);
  const Lane& lane = shown_lane(room);
  if (!(lane.cm > 0) || lane.path.size() < 2) return;
  double low_cm = lane.path[0].x_cm, high_cm = low_cm;
  for (const Point& p : lane.path) {
    low_cm = std::min(low_cm, p.x_cm);
    high_cm = std::max(high_cm, p.x_cm);
  }
  const double depth_cm = stage.scene.fill_cm - lane.height_cm;
  const ImVec2 a = stage.at(low_cm, depth_cm), b = stage.at(high_cm, depth_cm);
  pen.dl->AddLine(a, b, with_alpha(pen.palette->raised, 0.75f), 5);
  draw_dimension(pen, a, b, pen.palette->ink, 2);
  const std::string run = look.measures.length(lane.cm) + (lane.circuit ? ", half the way round" : " run");
  std::string words = run + ", " + look.measures.length(std::round(depth_cm)) + " down";
  bool is_short = false;
  if (tight && tight->lane_cm < tight->lane_needed_cm) {
    is_short = true;
    words = look.measures.length(lane.cm) + ", " + std::to_string(plate_of(look, tight->species)) + " wants " +
            look.measures.length(tight->lane_needed_cm);
  }
  std::optional<float> x = place_of_words(pen, a.x, b.x, a.y, words, marks);
  if (!x && !is_short) {  // fewer words may find a place
    words = run;
    x = place_of_words(pen, a.x, b.x, a.y, words, marks);
  }
  const ImVec2 middle{x.value_or((a.x + b.x) / 2), a.y};
  draw_tip(pen, {middle.x, middle.y - 10}, words, is_short ? pen.palette->call : pen.palette->edge,
           is_short ? pen.palette->call : pen.palette->ink, Align::centre);
  take_for_words(pen, words, middle, marks);
}

void dashed_level(const Pen& pen, const Stage& stage, double depth_cm) {
  const float y = stage.at(0, depth_cm).y;
  const ImVec2 line[] = {{stage.water.x, y}, {stage.water.right(), y}};
  dashed_line(pen.dl, line, dash_edge_drop(), pen.palette->ghost, 1.5f);
}

/// The kind in hand: its levels, an ellipse round its shoal, the animals paler, a thread to the card over the shelf.
void draw_held_shoal(const Pen& pen, const Look& look, const Stage& stage, const std::vector<Shoal>& others) {
  const Held& held = *look.held;
  const SwimBand band = swim_band(look.shown, *held.species);
  dashed_level(pen, stage, band.from_cm);
  dashed_level(pen, stage, band.to_cm);
  const std::string words = "swims " + fixed_text(look.measures.length_out(band.from_cm), 0) + " to " +
                            fixed_text(look.measures.length_out(band.to_cm), 0) + " " + look.measures.length_unit() + " down";
  draw_tip(pen, {stage.water.right() - 6, stage.at(0, band.from_cm).y + 6}, words, pen.palette->ghost, pen.palette->ink,
           Align::right);
  const Shoal shoal = place_held(look.shown, *held.species, held.count, held.x_cm, others);
  const Animal& animal = look.animals.get(shoal.species, held.species->look);
  for (const DrawnAnimal& one : shoal.animals) {
    const ImU32 water = water_colour(*pen.palette, TimeOfDay::day, float(one.depth_cm / std::max(1.0, stage.scene.fill_cm)));
    draw_ghost(pen.dl, animal, stage.at(one.x_cm, one.depth_cm), float(one.length_cm) * stage.view.px_per_cm, one.facing,
               one.tilt, water);
  }
  if (shoal.animals.empty()) return;
  const Box box = around(stage, shoal);
  const ImVec2 radius{box.w * 0.55f + 6, box.h * 0.6f + 8};
  dashed_ellipse(pen.dl, box.centre(), radius, dash_ghost_outline(), pen.palette->ghost, 1.5f);
  const ImVec2 end{box.centre().x - radius.x, box.centre().y};
  pen.dl->AddCircleFilled(end, 3, pen.palette->ghost);
  pen.dl->AddLine({stage.glass.x - scale_width - 16, end.y}, end, pen.palette->ghost, 1);
}

/// Pointer and keyboard while a kind is in hand.
void follow_hand(const Look& look, const Stage& stage, Actions& out) {
  if (look.held->by_keyboard) return;
  const ImVec2 pointer = ImGui::GetIO().MousePos;
  const bool over = stage.glass.has(pointer.x, pointer.y);
  if (over) {
    const Vec place = front_place(stage.view, stage.scene, pointer);
    const double x_cm = double(place.x), depth_cm = stage.scene.fill_cm - double(place.y);
    if (!look.held->over_tank || x_cm != look.held->x_cm || depth_cm != look.held->depth_cm)
      out.push_back(HoldOver{x_cm, depth_cm});
  } else if (look.held->over_tank) {
    out.push_back(HoldOver{});
  }
  platform::set_cursor(platform::Cursor::grabbing);
  const float wheel = ImGui::GetIO().MouseWheel;
  if (wheel != 0) out.push_back(HoldCount{look.held->count + (wheel > 0 ? 1 : -1)});
  if (ImGui::IsMouseReleased(ImGuiMouseButton_Left)) {
    if (over)
      out.push_back(Drop{});
    else
      out.push_back(PutBack{});
  }
}

/// Whether the pointer is on the substrate as it is seen from the front.
bool over_substrate(const Stage& stage, ImVec2 pointer) {
  const Vec at = front_place(stage.view, stage.scene, pointer);
  return stage.scene.substrate != SubstrateKind::bare && at.x >= 0 && stage.water.has(pointer.x, pointer.y) &&
         double(at.y) <= crest_cm(stage.scene, double(at.x));
}

/// What the pointer is over while nothing is dragged.
enum class Over { nothing, something, open_water };

/// Pointing at a shoal, and dragging it out of the tank.
Over follow_pointer(Ui& ui, const Look& look, const Stage& stage, const Box& area, const std::vector<Shoal>& shoals,
                    TankState& mine, Actions& out) {
  const ImVec2 pointer = ImGui::GetIO().MousePos;
  const Box seen = mine.zoom.times > 1 ? area : stage.glass;
  const Item tank = item(ui, "tank.front", seen, "The tank from the front", {.ring = Ring::inside, .allow_over = true});
  const PieceStage pieces{stage.scene, false, stage.view, {}, stage.glass};
  if (look.chosen_terrain && platform::have_rest() && mine.lifted.empty() && !mine.pieces.drag && look.piece_in_hand.empty() &&
      follow_terrain(ui, look, pieces, seen, tank.hovered, mine.terrain, out))
    return tank.hovered && !mine.terrain.drag ? Over::something : Over::nothing;
  const Shoal* under = tank.hovered ? shoal_at(stage, shoals, pointer) : nullptr;
  const bool piece_first = !under || mine.pieces.drag || over_handle(look, pieces, pointer, ui.touch);
  if (mine.lifted.empty() && piece_first && follow_piece_pointer(ui, look, pieces, tank.hovered, mine.pieces, out))
    return tank.hovered && !mine.pieces.drag ? Over::something : Over::nothing;
  if (under) {
    out.push_back(PointAt{under->species});
    platform::set_cursor(platform::Cursor::grab);
    if (ImGui::IsMouseClicked(ImGuiMouseButton_Left)) mine.lifted = under->species;
  }
  if (mine.lifted.empty()) {
    if (!tank.hovered || under) return tank.hovered ? Over::something : Over::nothing;
    const bool on_substrate = over_substrate(stage, pointer);
    if (on_substrate) platform::set_cursor(platform::Cursor::grab);
    if (ImGui::IsMouseClicked(ImGuiMouseButton_Left) && (on_substrate || look.chosen_terrain))
      out.push_back(ChooseTerrain{on_substrate ? std::optional(-1) : std::nullopt});
    return on_substrate ? Over::something : Over::open_water;
  }
  out.push_back(PointAt{mine.lifted});
  if (ImGui::IsMouseDragging(ImGuiMouseButton_Left, 4)) platform::set_cursor(platform::Cursor::grabbing);
  if (!ImGui::IsMouseReleased(ImGuiMouseButton_Left)) return Over::nothing;
  if (ImGui::IsMousePosValid(&pointer) && !stage.glass.inset(-24).has(pointer.x, pointer.y)) {
    const TakeOut take{mine.lifted};
    const std::string name = name_of(take, look.plan, look.catalog);
    out.push_back(EditPlan{apply(look.plan, take, look.catalog), name, ""});
    out.push_back(Tell{name, "Undo"});
  }
  mine.lifted.clear();
  return Over::nothing;
}

}  // namespace

const GroupRoom* tightest_lane(const Room& room) {
  const GroupRoom* tight = nullptr;
  for (const GroupRoom& group : room.groups)
    if (group.lane_needed_cm > 0 && (!tight || group.lane_needed_cm - group.lane_cm > tight->lane_needed_cm - tight->lane_cm))
      tight = &group;
  return tight;
}

const Lane& shown_lane(const Room& room) {
  const GroupRoom* tight = tightest_lane(room);
  return tight ? tight->lane : room.layers[1].lane;
}

void draw_tank_front(Ui& ui, const Look& look, const Box& box, TankState& mine, Actions& out) {
  const Pen pen = pen_of(ui);
  Box rest = box;
  draw_tools(ui, look, rest.cut_top(tool_height), out);

  const std::vector<Kept> stock = resolve_stock(look.shown, look.catalog);
  update_pictures(look, stock, pen.palette == &palette(Theme::dark) ? Theme::dark : Theme::light, mine);
  const bool with_profile = box.w > 520;
  const Box profile_box = with_profile ? rest.cut_right(profile_width) : Box{};
  rest.cut_left(scale_width + 4);
  rest.cut_right(with_profile ? 4.0f : 12.0f);
  const Stage stage = stage_of(mine.scene.built_for, rest, mine.zoom);
  const Box area = rest;

  // The animals that stay where they are; what is in hand is drawn over them.
  const Plan& kept = look.held ? look.plan : look.shown;
  if (!same_places(mine.placed, kept) || (mine.swim.on && !look.preferences.swim)) {
    mine.placed = kept;
    mine.shoals = place_shoals(kept, look.held ? resolve_stock(kept, look.catalog) : stock);
  }
  swim(ui, look, kept, mine.swim, mine.shoals);
  const std::vector<Shoal>& shoals = mine.shoals;
  pen.dl->PushClipRect({box.x, area.y}, {area.right(), area.bottom()}, true);
  ImGui::PushFont(ui.faces->font[int(Face::regular)], type::axis.size);
  // The scale stays beside what is seen of the tank.
  const FrontView scale{{std::max(stage.view.corner.x, area.x), stage.view.corner.y}, stage.view.px_per_cm};
  draw_depth_scale(pen.dl, mine.scene, scale, look.preferences.us_units, type::axis.size);
  ImGui::PopFont();
  pen.dl->PopClipRect();
  const bool is_near = mine.zoom.times > 1;
  pen.dl->PushClipRect(is_near ? area.min() : box.min(), is_near ? area.max() : box.max(), true);
  draw_front_stand(pen.dl, mine.scene, stage.view);
  draw_front_back(pen.dl, mine.scene, stage.view);
  for (const Shoal& shoal : shoals) {
    Tint tint;
    if (!look.pointed_species.empty() && look.pointed_species != shoal.species) tint.alpha = 0.5f;
    draw_shoal(pen.dl, look, stage, shoal, tint);
  }
  draw_front_roots(pen.dl, mine.scene, stage.view);
  const OverlayStage overlay{false, stage.at(0, 0), stage.view.px_per_cm, stage.water};
  if (look.spread.version > 0) draw_overlay(pen, look, overlay, mine.overlay);
  draw_front_glass(pen.dl, mine.scene, stage.view);
  const std::vector<Plate> plates = look.preferences.show_numbers ? plates_of(stage, shoals, mine.swim.on) : std::vector<Plate>();
  const std::vector<ImVec2> letters = look.preferences.show_numbers ? letters_of(stage, plates) : std::vector<ImVec2>();
  std::vector<ImVec2> marks = letters;
  for (const Plate& plate : plates) marks.push_back(plate.at);
  if (look.preferences.show_lane) draw_lane(pen, look, stage, marks);
  if (look.held) draw_held_shoal(pen, look, stage, shoals);
  if (look.spread.version > 0) draw_overlay_words(pen, look, overlay, mine.overlay, marks);
  draw_chosen(pen, look, {stage.scene, false, stage.view, {}, stage.glass});
  if (look.preferences.show_numbers) draw_numbers(pen, plates, letters);
  pen.dl->PopClipRect();

  if (shoals.empty() && !look.held) {
    // High up: the clear run stands at half depth.
    draw_tip(pen, {stage.water.centre().x, stage.water.y + stage.water.h * 0.2f},
             "No fish yet. Drag one in from the shelf; the water will follow it.", pen.palette->edge, pen.palette->ink,
             Align::centre);
  }
  Over over = Over::nothing;
  if (look.held) {
    add_spot(ui, "tank.front", stage.glass, "The tank from the front");
    follow_hand(look, stage, out);
  } else {
    over = follow_pointer(ui, look, stage, area, shoals, mine, out);
  }
  add_piece_spots(ui, {stage.scene, false, stage.view, {}, stage.glass});
  for (const Shoal& shoal : shoals)
    if (!shoal.animals.empty())
      add_spot(ui, "tank.fish/" + shoal.species, around(stage, shoal), name_of_species(look, shoal.species));
  if (over != Over::nothing && !mine.zoom.pans) follow_spot(ui, look, overlay, mine.rest, out);
  if (with_profile) {
    draw_profile(ui, look, profile_box, stage.water.y, stage.view.px_per_cm, mine.profile);
  }
  follow_zoom(ui, mine.zoom, "tank", area, over != Over::nothing, over == Over::open_water,
              look.sheet == Sheet::none && !look.held);
}

}  // namespace shoalwright
