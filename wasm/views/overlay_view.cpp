// SPDX-License-Identifier: MIT
#include "views/overlay_view.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "draw/geometry.h"
#include "draw/marks.h"
#include "platform/platform.h"
#include "stocking/cover.h"
#include "tank/volume.h"
#include "units/convert.h"
#include "units/text.h"

namespace shoalwright {

namespace {

constexpr std::string_view words[] = {"No shading", "Crowding", "Clearance", "Cover", "Territory"};
constexpr double rest_s = 0.5;

const SpreadSeen& seen_of(const Look& look, bool above) { return above ? look.spread.above : look.spread.front; }

float value_of(const SpotSeen& spot, Overlay overlay) {
  if (spot.crowding < 0) return NAN;
  return overlay == Overlay::crowding ? spot.crowding : overlay == Overlay::clearance ? spot.clear_cm : spot.cover_cm;
}

/// Steps of the contours in cm, round figures of the keeper's unit.
FieldLook look_of(Overlay overlay, bool us) {
  const auto cm = [us](float inches, float metric) {
    return us ? static_cast<float>(cm_from_in(static_cast<double>(inches))) : metric;
  };
  switch (overlay) {
    case Overlay::crowding: return {{0.25f, 0.5f, 0.75f, 1}, false, true};
    case Overlay::clearance: return {{cm(1, 2), cm(2, 5), cm(4, 10), cm(6, 15)}};
    default: return {{cm(1, 3), cm(2, 6), cm(4, 10), cm(8, 20)}, true};
  }
}

ImU32 colour_of(const Palette& colours, Overlay overlay) {
  return overlay == Overlay::crowding ? colours.crowd : overlay == Overlay::clearance ? colours.bandEdge : colours.act;
}

/// Nodes at the corners of spots, each the mean of the spots around it.
Field field_of(const Look& look, bool above, Overlay overlay) {
  const SpreadSeen& seen = seen_of(look, above);
  const Spread& spread = look.spread.spread;
  Field field{.columns = seen.columns + 1, .rows = seen.rows + 1};
  field.x0_cm = static_cast<float>(spread.left_cm);
  field.x1_cm = field.x0_cm + static_cast<float>(seen.columns * spread.step_x_cm);
  const double deep_cm = inside_width_cm(look.shown.tank);
  field.y0_cm = above ? static_cast<float>(deep_cm - spread.front_cm - seen.rows * spread.step_z_cm) : 0;
  field.y1_cm = field.y0_cm + static_cast<float>(seen.rows * (above ? spread.step_z_cm : spread.step_y_cm));
  for (int row = 0; row <= seen.rows; ++row)
    for (int column = 0; column <= seen.columns; ++column) {
      float sum = 0;
      int count = 0;
      for (int r = std::max(row - 1, 0); r < std::min(row + 1, seen.rows); ++r)
        for (int c = std::max(column - 1, 0); c < std::min(column + 1, seen.columns); ++c) {
          const float value = value_of(seen.spots[static_cast<std::size_t>(r * seen.columns + c)], overlay);
          if (std::isnan(value)) continue;
          sum += value;
          ++count;
        }
      field.nodes.push_back(count > 0 ? sum / static_cast<float>(count) : NAN);
    }
  return field;
}

/// Ground as it lies: round from above, a flat ring on the substrate from the front; lines of sight between the middles, dashed
/// where something stands in them.
void draw_territories(const Pen& pen, const Look& look, const OverlayStage& stage) {
  const Territories& all = look.spread.territories;
  const double deep_cm = inside_width_cm(look.shown.tank);
  const auto at = [&](const Territory& home) {
    const double down_cm =
        stage.above ? deep_cm - home.z_cm : look.shown.tank.fill_cm - substrate_height_cm(look.shown, home.x_cm, home.z_cm);
    return ImVec2{stage.corner.x + static_cast<float>(home.x_cm) * stage.px_per_cm,
                  stage.corner.y + static_cast<float>(down_cm) * stage.px_per_cm};
  };
  pen.dl->PushClipRect(stage.water.min(), stage.water.max(), true);
  for (const Territory& home : all.homes) {
    const ImU32 colour = key_colour(*pen.palette, plate_of(look, home.species));
    const float radius = static_cast<float>(home.across_cm) / 2 * stage.px_per_cm;
    const ImVec2 size{radius, stage.above ? radius : radius * 0.16f};
    pen.dl->AddEllipseFilled(at(home), size, with_alpha(colour, 0.22f));
    dashed_ellipse(pen.dl, at(home), size, dash_as_it_is(), colour, 1.8f);
  }
  for (const SightLine& line : all.lines) {
    const ImVec2 way[] = {at(all.homes[line.a]), at(all.homes[line.b])};
    if (line.broken)
      dashed_line(pen.dl, way, dash_edge_drop(), pen.palette->ink2, 1);
    else
      pen.dl->AddLine(way[0], way[1], pen.palette->ink, 1.6f);
  }
  std::vector<ImVec2> taken;
  for (const Territory& home : all.homes) draw_plate(pen, plate_of(look, home.species), free_place(taken, at(home), 18));
  pen.dl->PopClipRect();
}

FieldPlace place_of(const OverlayStage& stage) { return {stage.corner, stage.px_per_cm, stage.px_per_cm}; }

}  // namespace

std::span<const std::string_view> overlay_words() { return words; }

std::string overlay_legend(const Look& look) {
  switch (look.preferences.overlay) {
    case Overlay::crowding: return "litres wanted of each litre open";
    case Overlay::clearance: return "to the nearest glass or piece";
    case Overlay::cover: {
      const Cover cover = cover_of(look.shown);
      return "shelter for " + fixed_text(std::round(cover.share.value_or(cover.pieces_share) * 100), 0) + " % of the floor, " +
             std::to_string(cover.hides) + (cover.hides == 1 ? " hide" : " hides");
    }
    case Overlay::territory: {
      const Territories& all = look.spread.territories;
      if (all.homes.empty()) return "no one here holds ground";
      std::string text = all.homes.size() == 1 ? "one holds ground" : std::to_string(all.homes.size()) + " hold ground";
      const auto broken = std::count_if(all.lines.begin(), all.lines.end(), [](const SightLine& line) { return line.broken; });
      if (!all.lines.empty()) text += ", sight broken " + std::to_string(broken) + " of " + std::to_string(all.lines.size());
      return text;
    }
    case Overlay::none: break;
  }
  return "drawn to scale";
}

void draw_overlay(const Pen& pen, const Look& look, const OverlayStage& stage, OverlayState& mine) {
  const Overlay overlay = look.preferences.overlay;
  if (overlay == Overlay::none || look.spread.version == 0) return;
  if (overlay == Overlay::territory) {
    draw_territories(pen, look, stage);
    return;
  }
  if (mine.version != look.spread.version || mine.overlay != overlay || mine.us != look.preferences.us_units) {
    mine.cache = ready(field_of(look, stage.above, overlay), look_of(overlay, look.preferences.us_units));
    mine.version = look.spread.version;
    mine.overlay = overlay;
    mine.us = look.preferences.us_units;
  }
  draw_field(pen.dl, mine.cache, place_of(stage), stage.water, colour_of(*pen.palette, overlay));
}

void draw_overlay_words(const Pen& pen, const Look& look, const OverlayStage& stage, const OverlayState& mine,
                        std::vector<ImVec2> marks) {
  const Overlay overlay = look.preferences.overlay;
  if (overlay == Overlay::none || overlay == Overlay::territory) return;
  for (int step = 0; step < 4; ++step) {
    static constexpr const char* shares[] = {"¼ taken", "½ taken", "¾ taken", "full"};
    const std::string text =
        overlay == Overlay::crowding
            ? shares[step]
            : look.measures.length(static_cast<double>(mine.cache.look.steps[static_cast<std::size_t>(step)])) +
                  (overlay == Overlay::clearance ? " clear" : " to cover");
    const auto at =
        place_of_words(mine.cache, step, place_of(stage), {text_width(pen, medium(type::small), text) / 2 + 18, 20}, marks);
    const ImU32 colour = colour_of(*pen.palette, overlay);
    if (at) draw_tip(pen, {at->x, at->y - 9}, text, colour, colour, Align::centre);
  }
}

void follow_spot(Ui& ui, const Look& look, const OverlayStage& stage, PointerRest& rest, Actions& out) {
  const ImVec2 pointer = ImGui::GetIO().MousePos;
  if (pointer.x != rest.at.x || pointer.y != rest.at.y) rest = {pointer, ui.now_s};
  if (!stage.water.has(pointer.x, pointer.y)) return;
  if (look.preferences.overlay == Overlay::none && ui.now_s < rest.since_s + rest_s) {
    platform::wake_in(static_cast<int>((rest.since_s + rest_s - ui.now_s) * 1000) + 10);
    return;
  }
  // Asked once: an answer may be long in coming, and each wish draws a frame.
  if (!look.spread.wanted) out.push_back(AskWhoIsWhere{});
  if (look.spread.version > 0) draw_spot_words(ui, look, stage, pointer);
}

void draw_spot_words(Ui& ui, const Look& look, const OverlayStage& stage, ImVec2 pointer) {
  const SpreadSeen& seen = seen_of(look, stage.above);
  if (seen.spots.empty()) return;
  const Spread& spread = look.spread.spread;
  const double x_cm = static_cast<double>((pointer.x - stage.corner.x) / stage.px_per_cm),
               y_cm = static_cast<double>((pointer.y - stage.corner.y) / stage.px_per_cm);
  const double deep_cm = inside_width_cm(look.shown.tank), z_cm = deep_cm - y_cm;
  const int column = std::clamp(static_cast<int>((x_cm - spread.left_cm) / spread.step_x_cm), 0, seen.columns - 1);
  const int row =
      stage.above ? std::clamp(seen.rows - 1 - static_cast<int>((z_cm - spread.front_cm) / spread.step_z_cm), 0, seen.rows - 1)
                  : std::clamp(static_cast<int>(y_cm / spread.step_y_cm), 0, seen.rows - 1);
  const SpotSeen& spot = seen.spots[static_cast<std::size_t>(row * seen.columns + column)];
  if (spot.crowding < 0) return;

  const Measures& m = look.measures;
  const auto whole = [&](double cm) { return fixed_text(m.length_out(cm), 0); };
  std::array<std::string, 3> lines;
  lines[0] = whole(x_cm) + " " + m.length_unit() + " from the left, " +
             (stage.above ? whole(z_cm) + " from the front" : whole(y_cm) + " down");
  // Whoever makes up a fifth of those who are there.
  const std::vector<double> fish = stage.above ? fish_below(spread, column, row) : fish_behind(spread, column, row);
  double all = 0;
  for (const double count : fish) all += count;
  std::string who;
  for (std::size_t g = 0; g < fish.size(); ++g)
    if (all > 0 && fish[g] >= all / 5)
      who += (who.empty() ? "by " : " and ") + std::to_string(plate_of(look, spread.groups[g].species));
  lines[1] = who.empty() ? "no one wants it" : fixed_text(static_cast<double>(spot.crowding), 1) + " of 1 L wanted " + who;
  lines[2] = whole(static_cast<double>(spot.clear_cm)) + " " + m.length_unit() + " clear";
  if (spot.cover_cm < no_cover_cm)
    lines[2] += ", cover " + whole(static_cast<double>(spot.cover_cm)) + " " + m.length_unit() + " off";

  Pen pen = pen_of(ui);
  pen.dl = ImGui::GetForegroundDrawList();
  float wide = 0;
  for (const std::string& line : lines) wide = std::max(wide, text_width(pen, type::small, line));
  const ImVec2 screen = ImGui::GetIO().DisplaySize;
  const Box box{std::min(pointer.x + 16, screen.x - wide - 24), std::min(pointer.y + 18, screen.y - 66), wide + 16, 58};
  draw_panel(pen, box, pen.palette->raised, pen.palette->edge, 4);
  for (std::size_t i = 0; i < lines.size(); ++i)
    draw_text(pen, type::small, {box.x + 8, box.y + 4 + static_cast<float>(i) * 17},
              i == 0 ? pen.palette->ink2 : pen.palette->ink, lines[i]);
}

}  // namespace shoalwright
