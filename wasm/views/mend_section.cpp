// SPDX-License-Identifier: MIT
// Above all sections while something is to fix or a strain: how many, and the ways to put it right.
#include <algorithm>

#include "app/retold.h"
#include "draw/buttons.h"
#include "draw/panels.h"
#include "notebook/say.h"
#include "platform/platform.h"
#include "views/pane.h"

namespace shoalwright {

namespace {

std::string counted(std::size_t count, const char* one, const char* many) {
  return std::to_string(count) + " " + (count == 1 ? one : many);
}

/// "1 to fix, 2 strains".
std::string verdict(const Assessment& assessment) {
  const auto count = [&](Severity severity) {
    return static_cast<std::size_t>(std::count_if(assessment.findings.begin(), assessment.findings.end(),
                                                  [&](const Finding& one) { return one.severity == severity; }));
  };
  const std::size_t fix = count(Severity::harm), strains = count(Severity::strain);
  std::string words;
  if (fix > 0) words = std::to_string(fix) + " to fix";
  if (strains > 0) words += (words.empty() ? "" : ", ") + counted(strains, "strain", "strains");
  return words;
}

/// One way: what is done, line by line, and the button that does it.
void draw_way(Pane& pane, const Mend& mend, std::size_t nth) {
  Ui& ui = pane.ui;
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  const std::string id = "mend/" + std::to_string(nth);
  const float w = pane.w - 20;
  std::vector<std::string> lines;
  for (const std::string& text : mend.says) lines.push_back(retold(pane.look.measures, text));
  if (!mend.left.empty()) lines.push_back("A strain stays: " + std::to_string(mend.left.size()) + " below");
  float height = 10;
  for (const std::string& line : lines) height += wrapped_height(pen, type::body, line, w - 14) + 3;
  const std::string word = lines.size() == 1   ? "Do this"
                           : lines.size() == 2 ? "Do both"
                                               : "Do all " + std::to_string(mend.says.size());
  const Box card{pane.x, pane.y, pane.w, height + 36};
  draw_card(pen, card);
  float y = card.y + 8;
  std::string all;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const bool stays = i >= mend.says.size();
    if (!stays) pen.dl->AddCircleFilled({snapped(pen, card.x + 14), snapped(pen, y + 10)}, 2.2f, p.ink2);
    y += draw_wrapped(pen, type::body, {card.x + 24, y}, w - 14, stays ? p.ink2 : p.ink, lines[i]) + 3;
    all += (all.empty() ? "" : ". ") + lines[i];
  }
  add_spot(ui, id, card, all);
  const ButtonLook look{.kind = nth == 0 ? ButtonKind::remedy : ButtonKind::quiet, .small = true};
  const Item of = button(ui, id + "/do", {card.x + 12, card.bottom() - 34}, word, look);
  const std::string title = mend.says.size() == 1 ? all : "With way " + std::to_string(nth + 1);
  if (of.pressed) {
    pane.out.push_back(EditPlan{mend.after, mend.says.size() == 1 ? mend.says.front() : "Put right: " + joined(mend.says), ""});
    pane.out.push_back(Tell{"Put right", "Undo"});
    pane.mine.mend.open = false;
  } else if (of.hovered || of.ring) {
    pane.out.push_back(PreviewPlan{mend.after, title});
  }
  pane.y = card.bottom() + 8;
}

}  // namespace

void draw_mend(Pane& pane) {
  MendDesk& desk = pane.mine.mend;
  const std::string words = verdict(pane.now.assessment);
  if (words.empty() || pane.look.held) {
    if (words.empty()) desk = {};
    return;
  }
  Ui& ui = pane.ui;
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  pane.y += 8;
  const ButtonLook look{.kind = desk.open ? ButtonKind::quiet : ButtonKind::remedy, .small = true};
  const std::string_view word = desk.open ? "Close" : "Put it right";
  const float width = button_width(ui, word, look);
  draw_text(pen, semibold(type::lead), {pane.x, pane.y + 4}, p.call,
            elided(pen, semibold(type::lead), words, pane.w - width - 8));
  add_spot(ui, "mend.verdict", {pane.x, pane.y, pane.w - width - 8, 26}, words);
  if (button(ui, "mend", {pane.x + pane.w - width, pane.y}, word, look).pressed) {
    desk.open = !desk.open;
    platform::wake(2);
  }
  pane.y += 34;
  if (desk.open) {
    if (go_on(desk.work, ui, pane.look)) desk.found = desk.work.search->found();
    for (std::size_t i = 0; i < desk.found.mends.size(); ++i) draw_way(pane, desk.found.mends[i], i);
    if (!desk.work.done)
      draw_note(pane, desk.found.mends.empty() ? "Looking for the least that helps…" : "Looking for another way…");
    else if (!desk.found.why_none.empty())
      draw_note(pane, retold(pane.look.measures, desk.found.why_none));
    else if (desk.found.mends.empty())
      draw_note(pane, "Nothing that may be changed lessens what is below.");
  }
  pane.y += 2;
  draw_rule(pen, pane.x - 16, pane.y, pane.x + pane.w + 16, p.line);
}

}  // namespace shoalwright
