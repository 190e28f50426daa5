// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/look.h"
#include "draw/ui.h"
#include "views/assessment_view.h"

namespace shoalwright {

struct WaterWork;

/// A point of the plane of hardness.
struct HardnessPoint {
  double gh_dgh = 0, kh_dkh = 0;
  bool operator==(const HardnessPoint&) const = default;
};

/// Which water is mixed for. `own`: what the plan aims at; where it has no aim, the middle counts.
enum class Towards { own, middle, least_ro, one_kind };

/// Grams of a salt in the bucket by the keeper's own hand.
struct HandGrams {
  std::string salt;
  double grams = 0;
  bool operator==(const HandGrams&) const = default;
};

/// What the keeper has chosen on the page and no plan holds.
struct WaterChoices {
  Towards towards = Towards::own;
  std::string kind;                     ///< of `one_kind`
  std::optional<HardnessPoint> aim_at;  ///< where the aim was dragged to; goes before `towards`
  std::optional<double> ro_fraction;    ///< 0 to 1, set by hand; empty: as the recipe has it
  std::vector<HandGrams> grams;         ///< of all salts that are weighed by hand; empty: as the recipe has them
  std::optional<HardnessPoint> tap;     ///< while the tap's mark is dragged
  bool operator==(const WaterChoices&) const = default;
};

struct WaterSheetState {
  bool begun = false;    ///< false: it opens with this frame
  std::string sentence;  ///< why the last number changed nothing; empty when it did
  WaterChoices choices;
  std::shared_ptr<const WaterWork> work;  ///< the recipe of plan and choices, until one of them changes
  std::string in_hand;                    ///< spot of the chart's mark that is dragged
  ImVec2 grip{0, 0};                      ///< from the pointer to the middle of that mark
  double most_gh = 0, most_kh = 0;        ///< ends of the chart's axes, which stand still while a mark is dragged
  AssessmentState findings;               ///< which findings show their *Why*
};

/// The Water page over `box`: tap, blend, aim and care; how the mix lands and how the bucket is filled; what water comes of it
/// and how the tank gets there. Spots: `water_sheet.*`, `finding/*`.
[[gnu::noinline]] void draw_water_sheet(Ui& ui, const Look& look, const Box& box, WaterSheetState& mine, Actions& out);

}  // namespace shoalwright
