// SPDX-License-Identifier: MIT
#include "views/tank_sheet_view.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "app/retold.h"
#include "draw/buttons.h"
#include "draw/chips.h"
#include "draw/geometry.h"
#include "draw/menus.h"
#include "edit/command.h"
#include "plan/check.h"
#include "plan/words.h"
#include "tank/glass.h"
#include "tank/mass.h"
#include "tank/sizes.h"
#include "tank/volume.h"
#include "units/convert.h"
#include "units/text.h"
#include "views/sheet_card.h"

namespace shoalwright {

namespace {

struct Desk {
  Ui& ui;
  const Look& look;
  TankSheetState& mine;
  Actions& out;
};

constexpr Shape all_shapes[] = {Shape::rectangular,      Shape::bow_front, Shape::cylinder,        Shape::half_cylinder,
                                Shape::quarter_cylinder, Shape::hexagon,   Shape::pentagon_corner, Shape::prism};

const char* name_of(Shape shape) {
  switch (shape) {
    case Shape::rectangular: return "Box";
    case Shape::bow_front: return "Bow front";
    case Shape::cylinder: return "Cylinder";
    case Shape::half_cylinder: return "Half round";
    case Shape::quarter_cylinder: return "Quarter round";
    case Shape::hexagon: return "Hexagon";
    case Shape::pentagon_corner: return "Corner";
    case Shape::prism: return "Own outline";
  }
  return "";
}

const char* name_of(SubstrateKind kind) {
  switch (kind) {
    case SubstrateKind::bare: return "None, bare glass";
    case SubstrateKind::fine_sand: return "Fine sand";
    case SubstrateKind::coarse_sand: return "Coarse sand";
    case SubstrateKind::smooth_gravel: return "Smooth gravel";
    case SubstrateKind::sharp_gravel: return "Sharp gravel";
    case SubstrateKind::planted_soil: return "Soil for plants";
  }
  return "";
}

double tidy(double value) { return std::round(value * 1e6) / 1e6; }

/// Outside measures without the dust of adding panes to and taking them from decimal numbers.
Tank tidied_outside(const Tank& inside) {
  Tank tank = outside_of(inside);
  for (double* measure : {&tank.length_cm, &tank.width_cm, &tank.height_cm, &tank.bow_cm, &tank.diameter_cm, &tank.side_cm,
                          &tank.front_cm, &tank.fill_cm})
    *measure = tidy(*measure);
  for (Point& corner : tank.outline_cm) corner = {tidy(corner.x_cm), tidy(corner.z_cm)};
  return tank;
}

/// The plan with another tank, or one sentence.
std::optional<std::string> refused(const Look& look, const Command& command, Plan& plan) {
  plan = apply(look.plan, command, look.catalog);
  const std::optional<Error> error = check_plan(plan);
  if (error) return plain_sentence(*error);
  if (!(volume_of(plan).net_l > 0)) return "These measures leave no water in the tank.";
  return std::nullopt;
}

/// Carries a command out where its plan can be, else says why not.
void wish(Desk& sheet, const Command& command) {
  Plan plan;
  const std::optional<std::string> why = refused(sheet.look, command, plan);
  sheet.mine.sentence = why.value_or("");
  if (why) return;
  sheet.out.push_back(EditPlan{std::move(plan), name_of(command, sheet.look.plan, sheet.look.catalog), join_of(command)});
}

void preview(Desk& sheet, const Tank& inside, const std::string& title) {
  Plan plan;
  if (!refused(sheet.look, SetTank{inside}, plan)) sheet.out.push_back(PreviewPlan{std::move(plan), title});
}

/// The outside measures in the fields become the tank. Where the height changes, the water stays as far under the rim.
void wish_outside(Desk& sheet, Tank outside) {
  const Tank& before = sheet.look.plan.tank;
  sheet.mine.outside = outside;
  Tank inside = inside_of(outside);
  if (outside.fill_cm == before.fill_cm && inside.height_cm != before.height_cm) {
    const double gap = before.height_cm - before.fill_cm;
    inside.fill_cm = std::max(inside.height_cm - gap, inside.height_cm / 2);
  }
  wish(sheet, SetTank{inside});
}

void draw_sizes(Desk& sheet, const Box& box) {
  Ui& ui = sheet.ui;
  const Measures& measures = sheet.look.measures;
  Column column = begin_column(ui, "tank_sheet.sizes", box, ui.palette->raised);
  Stack stack{{column.content.x, column.content.y, column.content.w - 8, 0}};
  for (const bool us : {measures.us, !measures.us}) {
    const Box head = stack.take(26);
    draw_text(pen_of(ui), semibold(type::small), {head.x + 8, head.y + 7}, ui.palette->ink2, us ? "US gallons" : "Centimetres");
    int index = -1;
    for (const UsualSize& size : usual_sizes()) {
      ++index;
      if (size.us != us) continue;
      const Box row = stack.take(30);
      const Tank tank = with_lid_of(tank_of(size), sheet.look.plan.tank);
      const bool chosen = sheet.look.plan.tank.shape == Shape::rectangular &&
                          std::abs(sheet.look.plan.tank.length_cm - tank.length_cm) < 0.05 &&
                          std::abs(sheet.look.plan.tank.width_cm - tank.width_cm) < 0.05 &&
                          std::abs(sheet.look.plan.tank.height_cm - tank.height_cm) < 0.05;
      const std::string measure = measures.size(size.length_cm, size.width_cm, size.height_cm);
      const std::string title = std::string(size.name) + ", " + measure;
      const ListRowAnswer answer = list_row(ui, "tank_sheet.size/" + std::to_string(index), row, title, {.chosen = chosen});
      const Pen pen = pen_of(ui);
      const float y = row.y + 6;
      const float right = row.right() - 8;
      const float used = draw_text(pen, type::small, {right, y + 1}, ui.palette->ink2, measure, Align::right);
      draw_text(pen, chosen ? medium(type::body) : type::body, {row.x + 8, y}, ui.palette->ink,
                elided(pen, type::body, size.name, row.w - used - 24));
      if (chosen && !sheet.mine.scrolled) ImGui::SetScrollY(std::max(0.0f, row.y - column.content.y - box.h / 2));
      if (answer.item.pressed)
        wish(sheet, SetTank{tank});
      else if (answer.item.hovered || answer.item.ring)
        preview(sheet, tank, title);
    }
    stack.skip(6);
  }
  sheet.mine.scrolled = true;
  end_column(ui, column, stack.at);
}

/// The shape seen from above, front at the bottom.
void draw_outline(const Pen& pen, const Box& box, const Tank& tank, ImU32 fill, ImU32 line) {
  Tank bare = tank;
  bare.glass_mm = 0;
  const std::vector<Point> outline = inside_outline(bare, 48);
  const double length = inside_length_cm(bare), width = inside_width_cm(bare);
  if (outline.size() < 3 || !(length > 0) || !(width > 0)) return;
  const float scale = std::min(box.w / static_cast<float>(length), box.h / static_cast<float>(width));
  const float x0 = box.x + (box.w - scale * static_cast<float>(length)) / 2;
  const float y0 = box.bottom() - (box.h - scale * static_cast<float>(width)) / 2;
  std::vector<ImVec2> points;
  std::vector<Vec> corners;
  for (const Point& point : outline) {
    corners.push_back({x0 + scale * static_cast<float>(point.x_cm), y0 - scale * static_cast<float>(point.z_cm)});
    points.push_back({corners.back().x, corners.back().y});
  }
  // Triangles that meet without softened edges, so that no seam shows; the line over them softens the rim.
  const ImDrawListFlags flags = pen.dl->Flags;
  pen.dl->Flags &= ~ImDrawListFlags_AntiAliasedFill;
  const std::vector<std::uint32_t> triangles = triangulate(corners);
  for (std::size_t i = 0; i + 2 < triangles.size(); i += 3)
    pen.dl->AddTriangleFilled(points[triangles[i]], points[triangles[i + 1]], points[triangles[i + 2]], fill);
  pen.dl->Flags = flags;
  pen.dl->AddPolyline(points.data(), static_cast<int>(points.size()), line, ImDrawFlags_Closed, 1.6f);
}

/// A tank that shows what a shape is, for its tile.
Tank sample(Shape shape) {
  Tank tank;
  tank.height_cm = 40;
  if (shape != Shape::prism) {
    tank.length_cm = 90;
    tank.width_cm = 42;
    return reshaped(tank, shape);
  }
  tank.shape = Shape::prism;
  tank.outline_cm = {{0, 0}, {60, 0}, {90, 22}, {90, 50}, {36, 50}, {36, 34}, {0, 34}};
  return tank;
}

float draw_shapes(Desk& sheet, const Box& box) {
  Ui& ui = sheet.ui;
  constexpr float gap = 6, height = 66;
  const int columns = box.w >= 400 ? 4 : 2;
  const float width = std::floor((box.w - gap * static_cast<float>(columns - 1)) / static_cast<float>(columns));
  int i = 0;
  for (const Shape shape : all_shapes) {
    const Box tile{box.x + static_cast<float>(i % columns) * (width + gap),
                   box.y + static_cast<float>(i / columns) * (height + gap), width, height};
    ++i;
    const bool chosen = sheet.look.plan.tank.shape == shape;
    const std::string id = "tank_sheet.shape/" + std::string(word_of(shape));
    const Item of = item(ui, id, tile, std::string(name_of(shape)) + (chosen ? ", chosen" : ""), {.exact = true});
    const Pen pen = pen_of(ui);
    const Palette& p = *ui.palette;
    const float lit = eased(ui, id, chosen ? 1.0f : of.hovered ? 0.5f : 0.0f, 90);
    draw_panel(pen, tile, mix(p.raised, p.actSoft, lit), chosen ? p.act : p.edge, 4);
    draw_outline(pen, {tile.x + 10, tile.y + 8, tile.w - 20, tile.h - 34}, sample(shape), p.band, p.bandEdge);
    draw_text(pen, chosen ? medium(type::small) : type::small, {tile.x + tile.w / 2, tile.bottom() - 20}, p.ink,
              elided(pen, type::small, name_of(shape), tile.w - 8), Align::centre);
    if (of.ring) draw_ring(ui, tile, {});
    if (chosen) continue;
    const Tank other = reshaped(tidied_outside(sheet.look.plan.tank), shape);
    if (of.pressed)
      wish_outside(sheet, other);
    else if (of.hovered || of.ring)
      preview(sheet, inside_of(other), name_of(shape));
  }
  return static_cast<float>((i + columns - 1) / columns) * (height + gap);
}

struct Measure {
  const char *id, *name;
  double Tank::*value;
};

std::vector<Measure> measures_of(Shape shape) {
  switch (shape) {
    case Shape::rectangular:
      return {{"length", "Length", &Tank::length_cm},
              {"width", "Front to back", &Tank::width_cm},
              {"height", "Height", &Tank::height_cm}};
    case Shape::bow_front:
      return {{"length", "Length", &Tank::length_cm},
              {"width", "Front to back, at the sides", &Tank::width_cm},
              {"bow", "Bow of the front", &Tank::bow_cm},
              {"height", "Height", &Tank::height_cm}};
    case Shape::cylinder:
    case Shape::half_cylinder:
    case Shape::quarter_cylinder:
      return {{"diameter", "Diameter of the round pane", &Tank::diameter_cm}, {"height", "Height", &Tank::height_cm}};
    case Shape::hexagon: return {{"side", "One side", &Tank::side_cm}, {"height", "Height", &Tank::height_cm}};
    case Shape::pentagon_corner:
      return {{"side", "Each back side", &Tank::side_cm},
              {"front", "Each short side", &Tank::front_cm},
              {"height", "Height", &Tank::height_cm}};
    case Shape::prism: return {{"height", "Height", &Tank::height_cm}};
  }
  return {};
}

/// A length in the keeper's unit; true when `cm` has changed. Anything can be typed: what cannot be is refused by one sentence.
bool length_field(Desk& sheet, const std::string& id, const Box& box, double& cm, std::string_view label) {
  const Measures& measures = sheet.look.measures;
  double shown = measures.length_out(cm);
  if (!plain_field(sheet.ui, id, box, shown, label, {.unit = measures.length_unit(), .step = measures.us ? 0.5 : 1.0}))
    return false;
  cm = measures.length_in(shown);
  return true;
}

void draw_corners(Desk& sheet, Stack& stack) {
  Ui& ui = sheet.ui;
  Tank outside = sheet.mine.outside;
  bool changed = false;
  const Box head = stack.take(22);
  draw_text(pen_of(ui), type::small, {head.x, head.y + 3}, ui.palette->ink2, "Corners in order: from the left, from the front");
  for (std::size_t i = 0; i < outside.outline_cm.size(); ++i) {
    const Box row = stack.take(32);
    const std::string id = "tank_sheet.corner/" + std::to_string(i), name = "Corner " + std::to_string(i + 1);
    draw_text(pen_of(ui), type::body, {row.x, row.y + 6}, ui.palette->ink, std::to_string(i + 1));
    const float width = (row.w - 28 - 34 - 12) / 2;
    changed |=
        length_field(sheet, id + "/x", {row.x + 28, row.y + 2, width, 28}, outside.outline_cm[i].x_cm, name + " from the left");
    changed |= length_field(sheet, id + "/z", {row.x + 34 + width, row.y + 2, width, 28}, outside.outline_cm[i].z_cm,
                            name + " from the front");
    if (outside.outline_cm.size() > 3 &&
        icon_button(ui, id + "/remove", {row.right() - 34, row.y + 1}, Icon::clear, "Take out corner " + std::to_string(i + 1))
            .pressed) {
      outside.outline_cm.erase(outside.outline_cm.begin() + static_cast<std::ptrdiff_t>(i));
      changed = true;
      break;
    }
  }
  const Box add = stack.take(34);
  if (button(ui, "tank_sheet.corner/add", {add.x + 28, add.y + 4}, "Add a corner", {.small = true, .icon = Icon::plus}).pressed &&
      !outside.outline_cm.empty()) {
    const Point last = outside.outline_cm.back(), first = outside.outline_cm.front();
    outside.outline_cm.push_back({(last.x_cm + first.x_cm) / 2, (last.z_cm + first.z_cm) / 2});
    // Halfway between two corners it lies on their side, which no corner may: it is moved a little to the inside or outside.
    outside.outline_cm.back().x_cm += 1;
    changed = true;
  }
  if (changed) wish_outside(sheet, outside);
}

void draw_measures(Desk& sheet, Stack& stack) {
  Ui& ui = sheet.ui;
  constexpr float row_height = 34, control = 118;
  Tank outside = sheet.mine.outside;
  bool changed = false;
  for (const Measure& measure : measures_of(outside.shape)) {
    const Box at = sheet_row(ui, stack.take(row_height), measure.name, control);
    changed |= length_field(sheet, std::string("tank_sheet.") + measure.id, at, outside.*measure.value, measure.name);
  }
  const Box glass = sheet_row(ui, stack.take(row_height), "Glass thickness", control);
  changed |= plain_field(ui, "tank_sheet.glass", glass, outside.glass_mm, "Glass thickness", {.unit = "mm"});
  const Box fill = sheet_row(ui, stack.take(row_height), "Water line over the inside bottom", control);
  changed |= length_field(sheet, "tank_sheet.fill", fill, outside.fill_cm, "Water line over the inside bottom");
  if (changed) wish_outside(sheet, outside);
  if (outside.shape == Shape::prism) draw_corners(sheet, stack);

  const Box lid_row = stack.take(row_height);
  constexpr std::string_view lids[] = {"Lid", "Open", "Not known"};
  const std::optional<bool>& lid = sheet.look.plan.tank.lid;
  const float lids_w = segments_width(ui, lids);
  draw_text(pen_of(ui), type::body, {lid_row.x, lid_row.y + 8}, ui.palette->ink, "Top");
  const int picked = one_of(ui, "tank_sheet.lid", {lid_row.right() - lids_w, lid_row.y + 4}, lids, !lid ? 2 : *lid ? 0 : 1);
  if (picked >= 0) wish(sheet, SetLid{picked == 2 ? std::nullopt : std::optional(picked == 0)});
}

void draw_substrate(Desk& sheet, Stack& stack) {
  Ui& ui = sheet.ui;
  constexpr float row_height = 34, control = 118;
  Substrate substrate = sheet.look.plan.substrate;
  std::array<std::string_view, Words<SubstrateKind>::all.size()> names;
  for (std::size_t i = 0; i < names.size(); ++i) names[i] = name_of(static_cast<SubstrateKind>(i));
  const Box at = sheet_row(ui, stack.take(row_height), "Substrate", 168);
  const int picked = select(ui, "tank_sheet.substrate", at, names, static_cast<int>(substrate.kind), "Substrate");
  if (picked >= 0) {
    const bool was_bare = substrate.kind == SubstrateKind::bare;
    substrate.kind = static_cast<SubstrateKind>(picked);
    if (substrate.kind == SubstrateKind::bare)
      substrate.front_cm = substrate.back_cm = 0;
    else if (was_bare && substrate.front_cm == 0 && substrate.back_cm == 0)
      substrate.front_cm = 3, substrate.back_cm = 6;
    wish(sheet, SetSubstrate{substrate});
  }
  if (sheet.look.plan.substrate.kind == SubstrateKind::bare) return;
  const Box front = sheet_row(ui, stack.take(row_height), "Depth at the front", control);
  const bool front_changed =
      length_field(sheet, "tank_sheet.front_depth", front, substrate.front_cm, "Substrate depth at the front");
  const Box back = sheet_row(ui, stack.take(row_height), "Depth at the back", control);
  const bool back_changed = length_field(sheet, "tank_sheet.back_depth", back, substrate.back_cm, "Substrate depth at the back");
  if (front_changed || back_changed) wish(sheet, SetSubstrate{substrate});
  const Box row = stack.take(row_height);
  draw_text(pen_of(ui), type::body, {row.x, row.y + 8}, ui.palette->ink, "Terrain line");
  const ButtonLook small{.small = true};
  float right = row.right() - button_width(ui, "Draw it", small);
  if (button(ui, "tank_sheet.line", {right, row.y + 4}, "Draw it", small).pressed) {
    sheet.out.push_back(ShowSheet{});
    sheet.out.push_back(ChooseTerrain{-1});
  }
  if (substrate.line_cm.empty()) return;
  right -= button_width(ui, "Level", small) + 8;
  if (button(ui, "tank_sheet.level", {right, row.y + 4}, "Level", small).pressed) {
    substrate.line_cm.clear();
    wish(sheet, SetSubstrate{substrate});
  }
}

/// What the tank comes to, as it is shown: with the size that is pointed at.
struct Sums {
  std::string litres, mass, caution;
};

Sums sums_of(const Look& look) {
  const Measures& measures = look.measures;
  const Volume& volume = look.shown_assessment.volume;
  const double kpa = footprint_pressure_kpa(volume.filled_mass_kg, volume.footprint_cm2);
  const std::string pressure = measures.us ? known_text(psf_from_kpa(kpa), 5) + " lb/ft²" : short_text(kpa, 1) + " kPa";
  return {.litres = measures.volume(volume.gross_l) + " to the rim, " + measures.volume(volume.net_l) + " of water",
          .mass = "About " + pressure + " under its foot when filled; stand and gear come on top.",
          .caution = retold(measures, floor_caution(volume.filled_mass_kg))};
}

constexpr float sums_left = 110, sums_margin = 12, sums_top = 9, sums_litres = 19, sums_gap = 3;

/// Room for all of it: a caution is not cut short.
float sums_height(const Pen& pen, const Sums& sums, float width) {
  const float w = width - sums_left - sums_margin;
  return std::max(112.0f, sums_top + sums_litres + wrapped_height(pen, type::small, sums.mass, w) + sums_gap +
                              wrapped_height(pen, type::small, sums.caution, w) + sums_top);
}

void draw_sums(Desk& sheet, const Box& box, const Sums& sums) {
  Ui& ui = sheet.ui;
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  draw_panel(pen, box, p.panel, p.line, 6);
  draw_outline(pen, {box.x + 12, box.y + 12, 84, box.h - 24}, tidied_outside(sheet.look.shown.tank), p.band, p.bandEdge);
  const float x = box.x + sums_left, w = box.right() - sums_margin - x;
  float y = box.y + sums_top;
  draw_text(pen, semibold(type::body), {x, y}, p.ink, elided(pen, semibold(type::body), sums.litres, w));
  y += sums_litres;
  y += draw_wrapped(pen, type::small, {x, y}, w, p.ink2, sums.mass) + sums_gap;
  draw_wrapped(pen, type::small, {x, y}, w, p.ink2, sums.caution);
  add_spot(ui, "tank_sheet.sums", box, sums.litres + "; " + sums.mass + ". " + sums.caution);
}

}  // namespace

Tank with_lid_of(Tank tank, const Tank& before) {
  tank.lid = before.lid;
  tank.other_keys = before.other_keys;
  return tank;
}

void draw_tank_sheet(Ui& ui, const Look& look, const Box& box, TankSheetState& mine, Actions& out) {
  if (!mine.begun || !(mine.of == look.plan.tank)) {
    // The keyboard goes along when it is in use.
    if (!mine.begun && !ui.ring_id_before.empty()) ui.focus_wanted = "tank_sheet.close";
    mine.outside = tidied_outside(look.plan.tank);
    mine.of = look.plan.tank;
    mine.begun = true;
    mine.sentence.clear();
  }
  Desk sheet{ui, look, mine, out};
  const SheetCard card = begin_sheet(ui, "tank_sheet", box, {760, 664}, "Tank", out);
  Box body = card.body;
  body.cut_top(10);
  body.cut_bottom(12);
  const Sums sums = sums_of(look);
  const float height = sums_height(pen_of(ui), sums, body.w);
  const bool below = height <= body.h / 2;  // else it scrolls with the rest
  const Box foot = body.cut_bottom(below ? height : 0);
  if (below) body.cut_bottom(10);
  const bool wide = body.w >= 560;
  if (wide) {
    draw_sizes(sheet, body.cut_left(250));
    body.cut_left(18);
  }
  Column column = begin_column(ui, "tank_sheet.own", body, ui.palette->raised);
  Stack stack{{column.content.x, column.content.y, column.content.w - 12, 0}};
  if (!mine.sentence.empty()) {
    draw_sentence(ui, "tank_sheet.sentence", stack.take(sentence_height(pen_of(ui), mine.sentence, stack.box.w), 8),
                  mine.sentence);
  }
  if (!wide) draw_sizes(sheet, stack.take(190, 8));
  stack.skip(draw_shapes(sheet, {stack.box.x, stack.y(), stack.box.w, 0}));
  const Box head = stack.take(24);
  draw_text(pen_of(ui), semibold(type::small), {head.x, head.y + 6}, ui.palette->ink2, "Outside measures");
  draw_measures(sheet, stack);
  draw_substrate(sheet, stack);
  draw_least_tanks(ui, look, stack, mine.least, out);
  if (!below) {
    const float within = sums_height(pen_of(ui), sums, stack.box.w);
    draw_sums(sheet, stack.take(within, 8), sums);
  }
  end_column(ui, column, stack.at + 4);
  if (below) draw_sums(sheet, foot, sums);
  end_sheet();
  bool closes = false;
  for (const Action& action : out)
    if (const ShowSheet* show = std::get_if<ShowSheet>(&action)) closes = show->sheet != Sheet::tank;
  if (closes) mine = {};
}

}  // namespace shoalwright
