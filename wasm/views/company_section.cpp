// SPDX-License-Identifier: MIT
#include "platform/platform.h"
#include "views/pane.h"

namespace shoalwright {

namespace {

std::string counted(std::size_t count, const char* one, const char* many) {
  return (count == 0 ? "no" : std::to_string(count)) + std::string(" ") + (count == 1 ? one : many);
}

/// "4 kinds looked at, 2 findings", "..., 2 to fix", "..., 1 new".
std::string remark(const Pane& pane) {
  if (pane.shown.stock.empty()) return "";
  std::size_t findings = 0, before = 0;
  for (const Finding& finding : pane.shown.assessment.findings) findings += section_of(finding) == Section::company;
  for (const Finding& finding : pane.now.assessment.findings) before += section_of(finding) == Section::company;
  const std::string kinds = counted(pane.shown.stock.size(), "kind", "kinds");
  const int fix = count_of(pane.shown, Section::company, Severity::harm);
  if (fix > 0) return kinds + ", " + std::to_string(fix) + " to fix";
  const std::string found = counted(findings, "finding", "findings");
  if (pane.look.is_previewing() && findings > before)
    return kinds + ", " + found + ", " + std::to_string(findings - before) + " new";
  return kinds + " looked at, " + found;
}

}  // namespace

void draw_company_section(Pane& pane) {
  if (!begin_section(pane, Section::company, "Company", "", remark(pane))) return;
  const float top = pane.y;
  draw_findings(pane, Section::company);
  if (pane.y == top)
    draw_note(pane, pane.shown.stock.empty() ? "Nothing lives here yet."
                                             : "Group sizes, adult sizes and the lid were looked at: nothing to say.");
  if (pane.shown.stock.size() > 1 && platform::rest_is_here()) draw_meetings(pane);
  end_section(pane);
}

}  // namespace shoalwright
