// SPDX-License-Identifier: MIT
// What the sections of the assessment column share while they are drawn one below the other.
#pragma once

#include <string_view>
#include <vector>

#include "app/say.h"
#include "draw/panels.h"
#include "views/assessment_view.h"

namespace shoalwright {

struct Pane {
  Ui& ui;
  const Look& look;
  Told shown, now;
  AssessmentState& mine;
  Actions& out;
  float x = 0, y = 0, w = 0;  ///< where the next thing stands
  float view_height = 0;      ///< of the column's window

  /// A Fix or Strain and where its card begins, for the bar at the foot.
  struct Loud {
    Section section = Section::company;
    Severity severity = Severity::harm;
    float y = 0;
  };
  std::vector<Loud> loud;

  ImVec2 at() const { return {x, y}; }
};

/// Rule, heading (pressed it folds the section) and remark. False when it is folded: draw nothing more of it. `free_right` pixels
/// at the right of the heading are left to the caller.
bool begin_section(Pane& pane, Section section, std::string_view heading, std::string_view after, std::string_view remark,
                   float free_right = 0);
void end_section(Pane& pane);

/// Lines of supporting text.
void draw_note(Pane& pane, std::string_view text);

/// The findings of a section as cards with their remedies. While a remedy is only pointed at, the cards stay those of the plan as
/// it is, so that the button stays under the pointer; what it would end is greyed, what it would bring is added.
void draw_findings(Pane& pane, Section section);

/// How much is wrong, and the ways to put it right. Spots: `mend.verdict`, `mend`, `mend/<n>`, `mend/<n>/do`. Call it once the
/// second file is there.
[[gnu::noinline]] void draw_mend(Pane& pane);

/// The two that a finding is about drawn to one scale, below its card; nothing where their bodies are not what it is about. Spot:
/// `to_scale/<species>/<species>`. Call it once the second file is there.
[[gnu::noinline]] void draw_to_scale(Pane& pane, const Told& told, const Finding& finding);

/// Who meets whom, below the findings about company. Spots: `meetings`, `meetings.lanes`, `meetings/<n>`, `meetings/<n>/arc`.
/// Call it once the second file is there.
[[gnu::noinline]] void draw_meetings(Pane& pane);

void draw_water_section(Pane& pane);
void draw_room_section(Pane& pane);
void draw_load_section(Pane& pane);
void draw_air_section(Pane& pane);
void draw_company_section(Pane& pane);

/// "finding/<rule>/<species...>" for each, those that would be equal numbered from 2.
std::vector<std::string> finding_ids(const std::vector<Finding>& findings);

}  // namespace shoalwright
