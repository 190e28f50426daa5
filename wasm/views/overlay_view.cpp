// SPDX-License-Identifier: MIT
#include "views/overlay_view.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "draw/marks.h"
#include "platform/platform.h"
#include "stocking/cover.h"
#include "tank/volume.h"
#include "units/convert.h"
#include "units/text.h"

namespace shoalwright {

namespace {

constexpr std::string_view words[] = {"No shading", "Crowding", "Clearance", "Cover"};
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
    case Overlay::none: break;
  }
  return "drawn to scale";
}

void draw_overlay(const Pen& pen, const Look& look, const OverlayStage& stage, OverlayState& mine) {
  const Overlay overlay = look.preferences.overlay;
  if (overlay == Overlay::none || look.spread.version == 0) return;
  if (mine.version != look.spread.version || mine.overlay != overlay || mine.us != look.preferences.us_units) {
    mine.cache = ready(field_of(look, stage.above, overlay), look_of(overlay, look.preferences.us_units));
    mine.version = look.spread.version;
    mine.overlay = overlay;
    mine.us = look.preferences.us_units;
  }
  draw_field(pen.dl, mine.cache, place_of(stage), stage.water, colour_of(*pen.palette, overlay));
}

void draw_overlay_words(const Pen& pen, const Look& look, const OverlayStage& stage, const OverlayState& mine) {
  const Overlay overlay = look.preferences.overlay;
  if (overlay == Overlay::none) return;
  for (const ContourLabel& label : mine.cache.labels) {
    static constexpr const char* shares[] = {"¼ taken", "½ taken", "¾ taken", "full"};
    const std::string text =
        overlay == Overlay::crowding
            ? shares[label.step]
            : look.measures.length(static_cast<double>(mine.cache.look.steps[static_cast<std::size_t>(label.step)])) +
                  (overlay == Overlay::clearance ? " clear" : " to cover");
    const ImVec2 at = place_of(stage).at(label.at);
    const ImU32 colour = colour_of(*pen.palette, overlay);
    draw_tip(pen, {at.x, at.y - 9}, text, colour, colour, Align::centre);
  }
}

void draw_spot_words(Ui& ui, const Look& look, const OverlayStage& stage, PointerRest& rest) {
  const ImVec2 pointer = ImGui::GetIO().MousePos;
  if (pointer.x != rest.at.x || pointer.y != rest.at.y) rest = {pointer, ui.now_s};
  const SpreadSeen& seen = seen_of(look, stage.above);
  if (look.spread.version == 0 || seen.spots.empty() || !stage.water.has(pointer.x, pointer.y)) return;
  if (look.preferences.overlay == Overlay::none && ui.now_s < rest.since_s + rest_s) {
    platform::wake_in(static_cast<int>((rest.since_s + rest_s - ui.now_s) * 1000) + 10);
    return;
  }
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
