// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/geometry.h"
#include "draw/slider.h"
#include "views/mix_chart.h"

namespace shoalwright {

namespace {

/// The ends that can be dragged, and what each drag comes to.
struct Hands {
  WaterDesk& desk;
  const MixPlot& plot;
  const MixMarks& marks;

  ImVec2 arrows{0, 0};  ///< what the keyboard asked of the mark seen last

  /// Where the pointer has brought a mark; empty while it does not hold it.
  std::optional<HardnessPoint> moved(const std::string& id, const HardnessPoint& from, const std::string& label) {
    WaterSheetState& mine = desk.mine;
    const ImVec2 at = plot.at(from);
    const ItemLook look{.rounding = 9, .allow_over = true};
    const Box box{at.x - 9, at.y - 9, 18, 18};
    const Item of = item(desk.ui, id, box, label, look);
    if (of.ring) draw_ring(desk.ui, box, look);
    if (of.hovered || of.held) pen_of(desk.ui).dl->AddCircle(at, 11, desk.ui.palette->act, 0, 1.6f);
    const ImVec2 mouse = ImGui::GetIO().MousePos;
    if (hand_on(desk.ui, id, of)) {
      if (mine.in_hand != id) {
        const ImVec2 began = ImGui::GetIO().MouseClickedPos[ImGuiMouseButton_Left];
        mine.in_hand = id;
        mine.grip = {at.x - began.x, at.y - began.y};
      }
      arrows = {0, 0};
      return plot.under({mouse.x + mine.grip.x, mouse.y + mine.grip.y});
    }
    arrows = arrow_steps(of);
    return std::nullopt;
  }

  /// A mark that the arrow keys have moved in the plane; empty where they have not.
  std::optional<HardnessPoint> stepped(const HardnessPoint& from, double step) const {
    if (arrows.x == 0 && arrows.y == 0) return std::nullopt;
    const Measures& m = desk.look.measures;
    const auto next = [&](double degrees, float by, double most, Hardness of) {
      return std::clamp(m.hardness_back(m.hardness_out(degrees, of) + static_cast<double>(by) * step, of), 0.0, most);
    };
    return rounded(
        {next(from.gh_dgh, arrows.y, plot.most_gh, Hardness::gh), next(from.kh_dkh, arrows.x, plot.most_kh, Hardness::kh)}, step);
  }

  /// To round figures as the keeper counts.
  HardnessPoint rounded(const HardnessPoint& at, double step) const {
    const Measures& m = desk.look.measures;
    const auto round = [&](double degrees, Hardness of) {
      return m.hardness_back(std::round(m.hardness_out(degrees, of) / step) * step, of);
    };
    return {round(at.gh_dgh, Hardness::gh), round(at.kh_dkh, Hardness::kh)};
  }

  void tap() {
    const double step = desk.look.measures.hardness_step() / 2;  // drop tests tell whole degrees
    WaterChoices choices = desk.mine.choices;
    if (const auto to = moved("water_sheet.mark/tap", *marks.tap, "Tap, " + point_words(desk.look.measures, *marks.tap))) {
      choices.tap = rounded(*to, step);
      choose(desk, choices);
    } else if (const auto next = stepped(*marks.tap, step)) {
      edit_tap(*next);
    } else if (choices.tap && !ImGui::IsMouseDown(ImGuiMouseButton_Left)) {  // let go
      edit_tap(*choices.tap);
      choices.tap.reset();
      choose(desk, choices);
    }
  }

  void edit_tap(const HardnessPoint& at) {
    SourceWater source = desk.look.plan.source;
    source.gh_dgh = at.gh_dgh;
    source.kh_dkh = at.kh_dkh;
    wish(desk, SetSource{source});
  }

  void mix() {
    const RecipeCard& card = desk.card();
    const ImVec2 a = plot.at({0, 0}), b = plot.at(*marks.tap);
    const Vec line{b.x - a.x, b.y - a.y};
    if (length(line) < 20 || !(card.for_l > 0)) return;
    const double all = desk.look.measures.volume_out(card.for_l), step = all < 20 ? 0.5 : 1;
    double ro = desk.look.measures.volume_out(*card.ro_l);
    const std::string label = "Mix, " + desk.litres(*card.ro_l) + " RO, " + desk.litres(*card.tap_l) + " tap";
    if (const auto to = moved("water_sheet.mark/mix", *marks.mix, label)) {
      const ImVec2 px = plot.at(*to);
      const float along = ((px.x - a.x) * line.x + (px.y - a.y) * line.y) / (line.x * line.x + line.y * line.y);
      ro = (1 - std::clamp(along, 0.0f, 1.0f)) * all;
    } else if (arrows.x + arrows.y != 0) {
      ro -= (arrows.x + arrows.y) * step;  // up and to the right there is more tap water
    } else {
      return;
    }
    WaterChoices choices = desk.mine.choices;
    choices.ro_fraction = std::clamp(std::round(ro / step) * step / all, 0.0, 1.0);
    choose(desk, choices);
  }

  void aim() {
    const double step = desk.look.measures.hardness_step() / 10;
    auto to = moved("water_sheet.mark/aim", *marks.aim, "Aim, " + point_words(desk.look.measures, *marks.aim));
    if (to) to = rounded(*to, step);
    if (!to) to = stepped(*marks.aim, step);
    if (!to) return;
    WaterChoices choices = desk.mine.choices;
    choices.aim_at = *to;
    choices.ro_fraction.reset();
    choices.grams.clear();
    choose(desk, choices);
  }
};

}  // namespace

void draw_mix_hands(WaterDesk& desk, const MixPlot& plot, const MixMarks& marks) {
  Hands hands{desk, plot, marks};
  hands.tap();
  hands.mix();
  hands.aim();
  if (!ImGui::IsMouseDown(ImGuiMouseButton_Left)) desk.mine.in_hand.clear();
}

}  // namespace shoalwright
