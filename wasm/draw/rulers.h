// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "draw/marks.h"
#include "draw/ui.h"

namespace shoalwright {

/// Wanted against there is: a thick bar, an upright, the spare between as a dimension arrow or, when short, hatching.
struct Ruler {
  double wanted = 0;
  double there_is = 0;
  double most = 1;                   ///< what the right end means; same unit
  std::optional<double> wanted_now;  ///< as it is without the fish in hand: a dashed upright
  bool quiet = false;                ///< over, but neither Fix nor Strain: hatched in ink
  ImU32 bar = 0;                     ///< colour of the bar; 0: supporting ink
};
/// 19 px high; `id` only names its eased ends.
void draw_ruler(Ui& ui, std::string_view id, ImVec2 at, float width, const Ruler& ruler);

/// One line of text over its ruler, 35 px: "Lane by 1: longest swim 45 of 52 cm ... 7 cm spare".
struct RulerRow {
  std::string_view name;          ///< "Lane"
  std::string_view detail;        ///< "by 1: longest swim 45 of 52 cm"
  std::string_view spare;         ///< "7 cm spare"
  std::optional<Severity> grade;  ///< a diamond before `spare`
  Ruler ruler;
};
float ruler_row(Ui& ui, std::string_view id, ImVec2 at, float width, const RulerRow& row);

/// A value well under its limit: "Free ammonia ... far under", a thin track, "limit 0.02 mg/L". 42 px high.
struct LimitBar {
  std::string_view name, said, limit;
  double value = 0;
  double limit_value = 1;
};
float limit_bar(Ui& ui, std::string_view id, ImVec2 at, float width, const LimitBar& bar);

/// The rule of group sizes in a card: ticks, least as a tall tick, good as a thick line from its first size on, the size as a
/// handle that can be dragged or stepped by keys. Returns the size chosen in this frame, or `size`. 44 px high.
struct GroupRule {
  int size = 1;
  int least = 1;
  int good = 1;
  int most = 20;                ///< right end
  std::string_view good_words;  ///< "good from 8"; empty: made from `good`
};
int group_rule(Ui& ui, std::string_view id, ImVec2 at, float width, const GroupRule& rule, std::string_view label);

}  // namespace shoalwright
