// SPDX-License-Identifier: MIT
#pragma once

#include <set>
#include <string>

#include "app/look.h"
#include "draw/ui.h"
#include "views/meetings_view.h"
#include "views/mend_view.h"

namespace shoalwright {

/// What the assessment column keeps: which sections are folded, which findings show their *Why*.
struct AssessmentState {
  std::set<std::string> folded;       ///< ids of sections
  std::set<std::string> open_why;     ///< ids of findings
  std::string scroll_to;              ///< id of a section that is to come into view
  std::string held_bar;               ///< id of the mark of a water bar that is dragged
  double held_from = 0, held_to = 0;  ///< ends of its axis, which stay meanwhile
  double held_scale = 0;              ///< top of the nitrate scale while its ceiling is dragged, else 0
  MendDesk mend;                      ///< ways to put the plan right
  MeetingsDesk meetings;              ///< who meets whom
  bool foot = false;                  ///< whether the bar at the foot stands
};

/// The column at the right: what the water, the room, the load and the company allow, as it is or with what is held. Spots: the
/// headings `water`, `room`, `load`, `air`, `company`, `water.*`, `room.*`, `load.*`, `air.*`, `finding/*`, `assessment.below`.
void draw_assessment(Ui& ui, const Look& look, const Box& box, AssessmentState& mine, Actions& out);

}  // namespace shoalwright
