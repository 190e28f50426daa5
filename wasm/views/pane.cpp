// SPDX-License-Identifier: MIT
#include "views/pane.h"

#include <algorithm>

#include "app/retold.h"
#include "app/rule_words.h"
#include "draw/findings.h"
#include "draw/icons.h"
#include "notebook/say.h"
#include "platform/platform.h"
#include "share/patch.h"

namespace shoalwright {

namespace {

/// What the button of a remedy says, and what else there is to say.
struct RemedyWords {
  std::string label, advice;
};

/// "Keep 6 of them, or another kind in its place": the edit does one half, the other half is advice. Of water the edit is the
/// second.
RemedyWords remedy_words(const Finding& finding) {
  if (finding.edits.empty()) return {"", finding.remedy};
  const std::size_t at = finding.remedy.find(", or ");
  if (at == std::string::npos) return {finding.remedy, ""};
  const std::string first = finding.remedy.substr(0, at), second = finding.remedy.substr(at + 5);
  if (finding.rule.substr(0, 6) == "water-") return {capital(second), first};
  return {first, "Or " + second};
}

void take_up(Pane& pane, const Finding& finding, const std::string& label, bool done) {
  Result<Plan> mended = take_remedy(pane.look.plan, finding.edits);
  if (!mended)
    pane.out.push_back(Tell{mended.error().sentence, ""});
  else if (done)
    pane.out.push_back(EditPlan{std::move(mended.value()), label, ""});
  else
    pane.out.push_back(PreviewPlan{std::move(mended.value()), label});
}

void draw_finding(Pane& pane, const Told& told, const Finding& found, const std::string& id, bool greyed, bool usable) {
  const Measures& measures = pane.look.measures;
  const RemedyWords words = remedy_words(found);
  const About about = about_of(found.rule);
  const std::string heading = retold(measures, found.text, about);
  std::string sentences = retold(measures, found.why, about);
  if (!words.advice.empty()) sentences += " " + retold(measures, words.advice, about) + ".";
  const std::string label = retold(measures, words.label, about);
  const Pen pen = pen_of(pane.ui);
  const std::string on_button = elided(pen, medium(type::small), label, pane.w - 23 - 2 * 10);
  const bool why_open = pane.mine.open_why.count(id) > 0;
  std::string why = evidence_words(found);
  if (why_open && platform::have_rest())
    if (const std::string rule = rule_words(found.rule); !rule.empty()) why = retold(measures, rule, about) + " " + why;
  const bool known = is_known(pane.look.plan, found);
  const bool quiet = found.severity == Severity::watch || found.severity == Severity::note;
  FindingCard card{.severity = found.severity,
                   .numbers = plates_of(told, found.species),
                   .heading = heading,
                   .sentences = sentences,
                   .why = why,
                   .why_open = why_open,
                   .can_know = quiet && usable && found.rule != "empty",
                   .known = known || greyed};
  if (!label.empty() && usable) card.remedies.push_back(on_button);
  if (loud(found.severity) && !greyed) pane.loud.push_back({section_of(found), found.severity, pane.y});
  FindingAnswer answer;
  pane.y += finding(pane.ui, id, pane.at(), pane.w, card, answer);
  if (why_open && platform::rest_is_here()) draw_to_scale(pane, told, found);
  if (answer.why && !pane.mine.open_why.erase(id)) pane.mine.open_why.insert(id);
  if (answer.know) pane.out.push_back(Know{found.rule, found.species, !known});
  if (answer.pressed == 0)
    take_up(pane, found, label, true);
  else if (answer.previewed == 0)
    take_up(pane, found, label, false);
}

}  // namespace

std::vector<std::string> finding_ids(const std::vector<Finding>& findings) {
  std::vector<std::string> ids;
  for (const Finding& finding : findings) {
    std::string id = "finding/" + finding.rule;
    for (const std::string& species : finding.species) id += "/" + species;
    const std::string plain = id;
    for (int n = 2; std::find(ids.begin(), ids.end(), id) != ids.end(); ++n) id = plain + "/" + std::to_string(n);
    ids.push_back(std::move(id));
  }
  return ids;
}

bool begin_section(Pane& pane, Section section, std::string_view heading, std::string_view after, std::string_view remark,
                   float free_right) {
  Ui& ui = pane.ui;
  const Pen pen = pen_of(ui);
  const std::string id = id_of(section);
  const bool folded = pane.mine.folded.count(id) > 0;
  if (section != Section::water) draw_rule(pen, pane.x - 16, pane.y, pane.x + pane.w + 16, ui.palette->line);
  const float top = pane.y;
  pane.y += section == Section::water ? 9 : 12;
  const Box line{pane.x, pane.y, pane.w - free_right, 22};
  const float words = text_width(pen, semibold(type::lead), heading);
  const Box box{line.x - 4, line.y, words + 8, line.h};
  const ItemLook look{.exact_across = true};
  const Item of = item(ui, id, box, std::string(heading) + (folded ? ", folded" : ""), look);
  // The keyboard, or a margin that was pressed, has come here: the whole section is to be seen.
  if (of.arrived) pane.mine.scroll_to = id;
  if (pane.mine.scroll_to == id) {
    ImGui::SetScrollY(std::max(0.0f, ImGui::GetScrollY() + top - (ImGui::GetWindowPos().y)));
    pane.mine.scroll_to.clear();
  }
  if (of.pressed && !pane.mine.folded.erase(id)) pane.mine.folded.insert(id);
  const bool chevron = of.hovered || of.ring || folded;
  section_header(ui, {line.x, line.y + 1, line.w, 20}, heading, folded ? "" : remark, chevron ? "" : after);
  if (chevron) draw_icon(pen, Icon::chevron, {box.right() + 2, line.y + 4}, 14, ui.palette->ink2);
  if (of.ring) draw_ring(ui, box, look);
  pane.y += 26;
  if (folded) pane.y += 4;
  return !folded;
}

void end_section(Pane& pane) { pane.y += 12; }

void draw_note(Pane& pane, std::string_view text) {
  pane.y += draw_wrapped(pen_of(pane.ui), type::small, pane.at(), pane.w, pane.ui.palette->ink2, text) + 4;
}

void draw_findings(Pane& pane, Section section) {
  const bool pointed_at = pane.look.is_previewing() && !pane.look.held;
  const Told& told = pointed_at ? pane.now : pane.shown;
  const std::vector<std::string> ids = finding_ids(told.assessment.findings);
  const std::vector<std::string> after = finding_ids(pane.shown.assessment.findings);
  const auto has = [](const std::vector<std::string>& list, const std::string& id) {
    return std::find(list.begin(), list.end(), id) != list.end();
  };
  for (std::size_t i = 0; i < ids.size(); ++i)
    if (section_of(told.assessment.findings[i]) == section)
      draw_finding(pane, told, told.assessment.findings[i], ids[i], pointed_at && !has(after, ids[i]), !pane.look.held);
  if (!pointed_at) return;
  for (std::size_t i = 0; i < after.size(); ++i)
    if (section_of(pane.shown.assessment.findings[i]) == section && !has(ids, after[i]))
      draw_finding(pane, pane.shown, pane.shown.assessment.findings[i], after[i], false, false);
}

}  // namespace shoalwright
