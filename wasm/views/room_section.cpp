// SPDX-License-Identifier: MIT
#include "assess/margin.h"
#include "draw/rulers.h"
#include "units/convert.h"
#include "units/text.h"
#include "views/pane.h"

namespace shoalwright {

namespace {

/// Figures of a margin in the keeper's unit, and that unit.
struct Scale {
  double factor = 1;
  int decimals = 0;
  const char* unit = "";
  std::string figure(double value) const { return short_text(value * factor, decimals); }
};

Scale scale_of(const Measures& measures, std::string_view margin) {
  if (margin == "lane_cm") return {measures.length_out(1), 0, measures.length_unit()};
  if (margin == "crowding_l_cm") return measures.us ? Scale{us_gal_from_l(1) * cm_per_in, 2, "gal/in"} : Scale{1, 1, "L/cm"};
  return measures.us ? Scale{in_from_cm(in_from_cm(1)), 0, "in²"} : Scale{1, 0, "cm²"};
}

void draw_margin(Pane& pane, const char* id, const char* name, std::string_view margin) {
  const Tightest* entry = nullptr;
  for (const Tightest& one : pane.shown.assessment.tightest)
    if (one.margin == margin) entry = &one;
  const MarginFacts* facts = find_margin(pane.shown.margins, margin);
  if (entry == nullptr || !facts) return;
  const MarginWords words = margin_words(pane.shown, *entry);
  const Scale scale = scale_of(pane.look.measures, margin);
  const Pen pen = pen_of(pane.ui);
  const std::string head = *name != '\0' ? name : words.name;
  std::string detail = "by " + plates_text(words.plates) + ": " + (margin == "lane_cm" ? "wants " : "") +
                       scale.figure(facts->wanted) + " of " + scale.figure(facts->there_is) + " " + scale.unit;
  std::string spare = words.number + " " + words.words;
  const auto fits = [&] {
    const float used = text_width(pen, medium(type::small), head) + text_width(pen, type::small, detail) +
                       text_width(pen, semibold(type::small), spare) + (words.grade ? 18.0f : 0.0f) + 14;
    return used <= pane.w;
  };
  if (!fits()) spare = words.number + " " + words.short_words;
  RulerRow row{.name = head, .detail = detail, .spare = spare, .grade = words.grade};
  row.ruler = {.wanted = facts->wanted, .there_is = facts->there_is, .most = std::max(facts->wanted, facts->there_is) * 1.15};
  row.ruler.quiet = !words.grade || !loud(*words.grade);
  if (words.plates.size() == 1) row.ruler.bar = key_colour(*pane.ui.palette, words.plates.front());
  if (pane.look.is_previewing()) {
    const MarginFacts* before = find_margin(pane.now.margins, margin);
    if (before && std::abs(before->wanted - facts->wanted) > 1e-9) row.ruler.wanted_now = before->wanted;
  }
  pane.y += ruler_row(pane.ui, id, pane.at(), pane.w, row) + 2;
}

}  // namespace

void draw_room_section(Pane& pane) {
  const Measures& measures = pane.look.measures;
  const Assessment& assessment = pane.shown.assessment;
  const std::string remark =
      measures.volume(assessment.volume.net_l) + " net, " + measures.volume(assessment.room.open_l) + " open to swim";
  if (!begin_section(pane, Section::room, "Room", "", remark)) return;
  draw_margin(pane, "room.lane", "Lane", "lane_cm");
  draw_margin(pane, "room.depth", "", "crowding_l_cm");
  draw_margin(pane, "room.floor", "Floor", "floor_cm2");
  if (pane.shown.stock.empty())
    draw_note(pane, "Longest clear run " + measures.length(assessment.room.layers[1].lane_cm) + ". Nothing lives here yet.");
  else if (!assessment.room.layers[1].crowding)
    draw_note(pane, "Crowding is not judged: something that it needs is not known.");
  draw_findings(pane, Section::room);
  end_section(pane);
}

}  // namespace shoalwright
