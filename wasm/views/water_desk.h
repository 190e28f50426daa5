// SPDX-License-Identifier: MIT
// What the parts of the Water page share while they are drawn one below the other.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "app/look.h"
#include "draw/layout.h"
#include "edit/command.h"
#include "views/water_bars.h"
#include "views/water_sheet_view.h"
#include "views/water_work.h"

namespace shoalwright {

struct WaterDesk {
  Ui& ui;
  const Look& look;
  WaterSheetState& mine;
  Actions& out;
  const WaterWork& work;
  float free_right = 0;  ///< what the next heading leaves free at its right

  const RecipeCard& card() const { return work.card; }
  std::string litres(double l) const { return look.measures.volume(l); }
};

/// An edit of the plan as one step; where it makes no plan, its sentence instead.
void wish(WaterDesk& desk, const Command& command);
void wish(WaterDesk& desk, Plan plan, const std::string& name, const std::string& join);
/// Other choices of the page; the recipe follows in the next frame.
void choose(WaterDesk& desk, const WaterChoices& choices);

/// A heading of a part with a remark at the right (the short one where the long has no room), a rule under both.
void part_heading(WaterDesk& desk, Stack& stack, std::string_view words, std::string_view remark = {},
                  std::string_view short_remark = {});
/// Lines of supporting text.
void part_note(WaterDesk& desk, Stack& stack, std::string_view text);

/// "gypsum", "Epsom salt": what a keeper calls it.
std::string short_name(const Salt& salt);
/// Of what is only known roughly: two figures.
std::string rough_volume(const Measures& measures, double l);
/// Plate numbers of kinds, rising: "1 and 3".
std::string plates_words(const WaterWork& work, const std::vector<std::string>& species);
/// Plate number of a kind of the plan; 0: none.
int plate_in(const WaterWork& work, const std::string& species);
/// "2 needs 10 up, 4 needs 6 down" where the kinds share no window of that quantity; empty where they do.
std::string no_window_words(const WaterWork& work, const BarQuantity& q, const Measures& measures);

/// The day of the first change, as units/day.h counts: when the plan starts, but never before today.
int first_day(const WaterDesk& desk);

/// Tap (with whether it is private water), blend, what is aimed at. Spots: `water_sheet.tap.*`, `water_sheet.change`,
/// `water_sheet.ro`, `water_sheet.ro_slider`, `water_sheet.ro_usual`, `water_sheet.towards/*`, `water_sheet.kind`.
void draw_water_inputs(WaterDesk& desk, Stack& stack);
/// Grams of each salt at hand in steps, what water they give, which are at hand, calcium to magnesium. Spots:
/// `water_sheet.grams/<id>`, `water_sheet.outcome`, `water_sheet.to_recipe`, `water_sheet.salt/<id>`, `water_sheet.ratio`.
void draw_salts(WaterDesk& desk, Stack& stack);
/// What the tank runs on, how strictly it is judged, plants, food and place. Spots: `water_sheet.aim*`, `water_sheet.strictness`,
/// `water_sheet.nitrate_limit`, `water_sheet.planting`, `water_sheet.feeding`, `water_sheet.place`.
void draw_water_care(WaterDesk& desk, Stack& stack);
/// How the mix lands: carbonate by general hardness. Spots: `water_sheet.chart`, `water_sheet.mark/tap|mix|aim`.
void draw_mix_chart(WaterDesk& desk, Stack& stack);
/// The bucket and what to do. Spots: `water_sheet.bucket`, `water_sheet.use`, `water_sheet.print`, `water_sheet.back`,
/// `water_sheet.usual_salts`.
void draw_bucket(WaterDesk& desk, Stack& stack);
/// The four bars with tap and mix. Spots: `water_sheet.bar/*`.
void draw_water_you_get(WaterDesk& desk, Stack& stack);
/// Three roads of who has hard water and soft-water kinds. Spots: `water_sheet.road/*`, `water_sheet.fish`.
void draw_roads(WaterDesk& desk, Stack& stack);
/// How the tank comes to the new water, change by change and day by day. Spots: `water_sheet.way`, `water_sheet.day/<n>`.
void draw_way(WaterDesk& desk, Stack& stack);

}  // namespace shoalwright
