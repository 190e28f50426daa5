// SPDX-License-Identifier: MIT
#include "app/state_json.h"

#include <cmath>

#include "edit/command.h"
#include "share/assessment_json.h"
#include "share/plan_json.h"
#include "units/json.h"
#include "units/shortest.h"

namespace shoalwright {

namespace {

std::string rect_json(const Spots::Spot& spot) {
  const auto pixels = [](float value) { return shortest(std::round(double(value) * 100) / 100); };
  return '[' + pixels(spot.min.x) + ',' + pixels(spot.min.y) + ',' + pixels(spot.max.x - spot.min.x) + ',' +
         pixels(spot.max.y - spot.min.y) + ']';
}

}  // namespace

std::string state_json(const App& app) {
  std::string text = "{\"plan\":" + plan_json(present(app.history)) + ",\"assessment\":" + assessment_json(app.now);
  text += ",\"shown\":" + assessment_json(app.shown_assessment);
  text += ",\"held\":";
  if (app.held)
    text += "{\"species\":" + in_quotes(app.held->species->id) + ",\"count\":" + std::to_string(app.held->count) + "}";
  else
    text += "null";
  text += ",\"previewing\":" + in_quotes(app.previewing) + ",\"undo\":" + in_quotes(undo_name(app.history)) +
          ",\"redo\":" + in_quotes(redo_name(app.history));
  text += ",\"notice\":" + in_quotes(app.notice ? app.notice->sentence : "");
  text += std::string(",\"theme\":") + (app.ui.palette == &palette(Theme::dark) ? "\"dark\"" : "\"light\"") + ",\"rects\":{";
  std::string comma;
  std::string seen;
  for (const Spots::Spot& spot : app.ui.spots.list) {
    const std::string name = in_quotes(spot.id);
    if (!spot.visible || seen.find(name + ";") != std::string::npos) continue;
    seen += name + ";";
    text += comma + name + ":" + rect_json(spot);
    comma = ",";
  }
  return text + "}}";
}

Actions actions_of(App& app, const std::string& action) {
  const auto with = [&](const char* word) -> std::string {
    const std::string begin = std::string(word) + ":";
    return action.compare(0, begin.size(), begin) == 0 ? action.substr(begin.size()) : "";
  };
  const Plan& plan = present(app.history);
  const auto edit = [&](const Command& command) -> Actions {
    return {EditPlan{apply(plan, command, app.catalog), name_of(command, plan, app.catalog), join_of(command)}};
  };
  if (action == "undo") return {Undo{}};
  if (action == "redo") return {Redo{}};
  if (action == "share") return {ShareLink{}};
  const std::string more = with("more"), fewer = with("fewer"), out = with("take-out");
  for (const Kept& kept : resolve_stock(plan, app.catalog)) {
    if (kept.id == more) return edit(SetCount{kept.id, kept.count + 1});
    if (kept.id == fewer && kept.count > 1) return edit(SetCount{kept.id, kept.count - 1});
    if (kept.id == out) return edit(TakeOut{kept.id});
  }
  return {};
}

}  // namespace shoalwright
