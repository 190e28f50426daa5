// SPDX-License-Identifier: MIT
#include "edit/history.h"

#include <utility>

namespace shoalwright {

namespace {

constexpr std::size_t most_steps = 200;
constexpr double join_within_s = 1;

}  // namespace

History begin_history(Plan plan) {
  History history;
  history.steps.push_back(HistoryStep{.name = "", .join = "", .at_s = 0, .plan = std::move(plan)});
  return history;
}

const Plan& present(const History& history) { return history.steps[history.at].plan; }

void remember(History& history, Plan plan, std::string name, std::string join, double at_s) {
  if (plan == present(history)) return;
  history.steps.resize(history.at + 1);
  HistoryStep& last = history.steps.back();
  if (history.at > 0 && !join.empty() && join == last.join &&
      (at_s - last.at_s <= join_within_s || join.compare(0, 5, "drag ") == 0)) {
    last = HistoryStep{.name = std::move(name), .join = std::move(join), .at_s = at_s, .plan = std::move(plan)};
    if (!(last.plan == history.steps[history.at - 1].plan)) return;
    history.steps.pop_back();  // dragged away and back: nothing to undo
    --history.at;
    return;
  }
  history.steps.push_back(HistoryStep{.name = std::move(name), .join = std::move(join), .at_s = at_s, .plan = std::move(plan)});
  if (history.steps.size() > most_steps + 1) history.steps.erase(history.steps.begin());
  history.at = history.steps.size() - 1;
}

std::string undo_name(const History& history) { return history.at > 0 ? history.steps[history.at].name : ""; }

std::string redo_name(const History& history) {
  return history.at + 1 < history.steps.size() ? history.steps[history.at + 1].name : "";
}

bool undo(History& history) {
  if (history.at == 0) return false;
  --history.at;
  return true;
}

bool redo(History& history) {
  if (history.at + 1 >= history.steps.size()) return false;
  ++history.at;
  return true;
}

}  // namespace shoalwright
