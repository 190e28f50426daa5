// SPDX-License-Identifier: MIT
#include "rules/arrival_edits.h"

#include "rules/edits.h"

namespace shoalwright {

std::vector<ToCome> to_come(const Facts& facts) {
  std::vector<ToCome> lines;
  for (const Kept& kept : facts.stock)
    for (const int line : kept.lines) {
      const Group& group = facts.plan.stock[static_cast<std::size_t>(line)];
      if (kept.species && group.count > group.have) lines.push_back({&kept, line, group.count - group.have});
    }
  return lines;
}

std::vector<PatchStep> move_arrivals(const Plan& plan, const std::vector<ToCome>& lines, int week) {
  std::vector<PatchStep> steps;
  for (const ToCome& one : lines) {
    const std::string pointer = "/stock/" + std::to_string(one.line) + "/arrives_week";
    const std::vector<PatchStep> step = set_value(plan, pointer, std::to_string(week));
    if (step.empty()) return {};
    steps.insert(steps.end(), step.begin(), step.end());
  }
  return steps;
}

}  // namespace shoalwright
