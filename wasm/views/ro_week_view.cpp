// SPDX-License-Identifier: MIT
#include "views/ro_week_view.h"

#include "advice/recipe_card.h"
#include "advice/ro_week.h"
#include "notebook/say.h"
#include "units/text.h"
#include "views/sheet_card.h"

namespace shoalwright {

void draw_ro_week(Pane& pane) {
  const Assessment& assessment = pane.shown.assessment;
  std::optional<double> ratio = pane.look.preferences.ro_drain_l_per_l;
  const std::optional<RoWeek> week = ro_week(pane.look.shown, assessment.water, assessment.volume.net_l, ratio);
  if (!week) return;
  const Measures& measures = pane.look.measures;
  const std::string low = short_text(measures.volume_out(week->drain_l.low), 0),
                    high = short_text(measures.volume_out(week->drain_l.high), 0);
  const std::string words = "RO water: " + measures.volume(week->ro_l) + " a week; making it sends " +
                            (low == high ? "" : low + " to ") + high + " " + measures.volume_unit() + " to the drain" +
                            (ratio ? "." : " (common practice, no source).");
  const float top = pane.y;
  draw_note(pane, words);
  add_spot(pane.ui, "load.ro", {pane.x, top, pane.w, pane.y - top}, words);
  const std::string usual = span_of(ro_reject_l_per_l.low, ro_reject_l_per_l.high, 0, "");
  const Pen pen = pen_of(pane.ui);
  constexpr float width = 96;
  draw_text(pen, type::small, {pane.x, pane.y + 6}, pane.ui.palette->ink2,
            elided(pen, type::small, "Your filter: to the drain for 1 of RO", pane.w - width - 8));
  if (optional_field(pane.ui, "load.ro_drain", {pane.x + pane.w - width, pane.y, width, 28}, ratio,
                     "Litres to the drain for each litre of RO water", "", 1, usual, 0.5) &&
      (!ratio || (*ratio >= 0 && *ratio <= 20))) {
    Preferences preferences = pane.look.preferences;
    preferences.ro_drain_l_per_l = ratio;
    pane.out.push_back(SetPreferences{preferences});
  }
  pane.y += 34;
}

}  // namespace shoalwright
