// SPDX-License-Identifier: MIT
#include "rules/edits.h"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "catalog/piece_kind.h"
#include "catalog/plural.h"
#include "notebook/say.h"
#include "plan/check.h"
#include "rules/tell.h"
#include "tank/volume.h"
#include "units/json.h"
#include "units/text.h"

namespace shoalwright {

namespace {

std::string called(const Kept& kept, int count) { return kept.species ? name_for(*kept.species, count) : kept.id; }

std::string stock_pointer(int line, const char* key = nullptr) {
  std::string pointer = "/stock/" + std::to_string(line);
  if (key) pointer.append("/").append(key);
  return pointer;
}

std::string json_text(const std::string& text) {
  std::string json;
  append_quoted(json, text);
  return json;
}

// A pointer into the stock after some lines were taken out: the lines after them move up. Empty where the line itself is gone.
std::string moved_up(const std::string& pointer, const std::vector<int>& removed) {
  constexpr std::string_view stock = "/stock/";
  if (pointer.compare(0, stock.size(), stock) != 0) return pointer;
  const std::size_t end = std::min(pointer.find('/', stock.size()), pointer.size());
  if (end == stock.size()) return pointer;
  int line = 0;
  for (std::size_t i = stock.size(); i < end; ++i) {
    if (pointer[i] < '0' || pointer[i] > '9' || line > most_groups) return pointer;  // points at no line
    line = 10 * line + (pointer[i] - '0');
  }
  if (std::find(removed.begin(), removed.end(), line) != removed.end()) return "";
  const auto before = std::count_if(removed.begin(), removed.end(), [&](int other) { return other < line; });
  return stock_pointer(line - static_cast<int>(before)) + pointer.substr(end);
}

// What is pinned or assumed stays so when lines go.
void move_pointers(const char* list, const std::vector<std::string>& pointers, const std::vector<int>& removed,
                   std::vector<PatchStep>& steps) {
  std::string json = "[";
  bool changed = false;
  for (const std::string& pointer : pointers) {
    const std::string moved = moved_up(pointer, removed);
    changed = changed || moved != pointer;
    if (moved.empty() && !pointer.empty()) continue;
    json += (json.size() > 1 ? "," : "") + json_text(moved);
  }
  if (changed) steps.push_back({"replace", list, json + "]"});
}

void close_ranks(const Plan& plan, const std::vector<int>& removed, std::vector<PatchStep>& steps) {
  if (removed.empty()) return;
  move_pointers("/fixed", plan.fixed, removed, steps);
  move_pointers("/assumed", plan.assumed, removed, steps);
}

// Whether anything inside a line is pinned.
bool line_is_pinned(const Plan& plan, int line) {
  const std::string pointer = stock_pointer(line), inside = pointer + "/";
  return is_fixed(plan, pointer) || std::any_of(plan.fixed.begin(), plan.fixed.end(), [&](const std::string& fixed) {
           return fixed.compare(0, inside.size(), inside) == 0;
         });
}

void set_line_count(const Plan& plan, int line, int count, std::vector<PatchStep>& steps) {
  const Group& group = plan.stock[static_cast<std::size_t>(line)];
  steps.push_back({"replace", stock_pointer(line, "count"), std::to_string(count)});
  if (group.have > count) steps.push_back({"replace", stock_pointer(line, "have"), std::to_string(count)});
}

void set_line(const Plan& plan, int line, int count, std::vector<PatchStep>& steps) {
  const Group& group = plan.stock[static_cast<std::size_t>(line)];
  set_line_count(plan, line, count, steps);
  if (group.males.value_or(0) + group.females.value_or(0) <= count) return;
  if (group.males) steps.push_back({"replace", stock_pointer(line, "males"), "null"});
  if (group.females) steps.push_back({"replace", stock_pointer(line, "females"), "null"});
}

struct Line {
  int index, before, now, have;
};

/// The lines that may be changed, last first, with what they hold when the group has that count. Empty where that cannot be.
std::vector<Line> lines_with(const Plan& plan, const Kept& kept, int count) {
  std::vector<Line> lines;
  for (auto line = kept.lines.rbegin(); line != kept.lines.rend(); ++line) {
    const Group& group = plan.stock[static_cast<std::size_t>(*line)];
    if (!line_is_pinned(plan, *line)) lines.push_back({*line, group.count, group.count, group.have});
  }
  int change = count - kept.count;
  if (lines.empty()) return {};
  if (change > 0) {
    lines.front().now += change;
    change = 0;
  }
  // What is only wished for goes before what swims already.
  for (const bool re_home : {false, true})
    for (Line& line : lines) {
      const int take = std::min(-change, line.now - (re_home ? 0 : std::min(line.have, line.now)));
      line.now -= take;
      change += take;
    }
  if (change != 0) return {};
  return lines;
}

}  // namespace

std::vector<PatchStep> set_count(const Plan& plan, const Kept& kept, int count) {
  std::vector<PatchStep> steps;
  std::vector<int> removed;
  for (const Line& line : lines_with(plan, kept, count)) {
    if (line.now == line.before) continue;
    if (line.now > 0) {
      set_line(plan, line.index, line.now, steps);
      continue;
    }
    steps.push_back({"remove", stock_pointer(line.index), ""});
    removed.push_back(line.index);
  }
  close_ranks(plan, removed, steps);
  return steps;
}

std::vector<PatchStep> set_sexes(const Plan& plan, const Kept& kept, int males, int females) {
  const std::vector<Line> lines = lines_with(plan, kept, males + females);
  if (lines.size() < kept.lines.size()) return {};  // what is pinned may not be given another sex
  std::vector<PatchStep> steps;
  std::vector<int> removed;
  int males_left = males;
  for (const Line& line : lines) {
    if (line.now == 0) {
      steps.push_back({"remove", stock_pointer(line.index), ""});
      removed.push_back(line.index);
      continue;
    }
    if (line.now != line.before) set_line_count(plan, line.index, line.now, steps);
    const int of_them = std::min(males_left, line.now);
    males_left -= of_them;
    steps.push_back({"add", stock_pointer(line.index, "males"), std::to_string(of_them)});
    steps.push_back({"add", stock_pointer(line.index, "females"), std::to_string(line.now - of_them)});
  }
  close_ranks(plan, removed, steps);
  return steps;
}

std::string say_sexes(const Kept& kept, int males, int females) {
  const auto sexed = [](int count, const char* one, const char* several) {
    return std::to_string(count) + " " + (count == 1 ? one : several);
  };
  std::string text = males > 0 ? sexed(males, "male", "males") : sexed(females, "female", "females");
  if (males > 0 && females > 0)
    text += " and " + sexed(females, "female", "females");
  else if (males + females > 1)
    text = males > 0 ? "males only" : "females only";
  const int home = std::max(kept.have - males - females, 0);
  if (home > 0) return "Re-home " + std::to_string(home) + " " + called(kept, home) + ", keep " + text;
  return (kept.have > 0 ? "Keep " : "Choose ") + text + " of " + called(kept, 2);
}

bool can_set_count(const Plan& plan, const Kept& kept, int count) { return !set_count(plan, kept, count).empty(); }

std::string say_count(const Kept& kept, int count) {
  const int home = std::max(kept.have - count, 0);
  if (count == 0) return say_leave_out({&kept});
  if (home > 0) return "Re-home " + std::to_string(home) + " " + called(kept, home) + ", keep " + std::to_string(count);
  return "Keep " + std::to_string(count) + " " + called(kept, count);
}

std::vector<PatchStep> leave_out(const Plan& plan, const std::vector<const Kept*>& groups) {
  std::vector<int> removed;
  for (const Kept* kept : groups) removed.insert(removed.end(), kept->lines.begin(), kept->lines.end());
  if (std::any_of(removed.begin(), removed.end(), [&](int line) { return line_is_pinned(plan, line); })) return {};
  std::sort(removed.rbegin(), removed.rend());
  std::vector<PatchStep> steps;
  for (const int line : removed) steps.push_back({"remove", stock_pointer(line), ""});
  close_ranks(plan, removed, steps);
  return steps;
}

std::string say_leave_out(const std::vector<const Kept*>& groups) {
  std::vector<std::string> homes, wishes;
  for (const Kept* kept : groups) {
    if (kept->have > 0)
      homes.push_back((kept->have == 1 ? "" : std::to_string(kept->have) + " ") + called(*kept, kept->have));
    else
      wishes.push_back(called(*kept, kept->count));
  }
  if (homes.empty()) return "Leave out " + joined(wishes);
  return "Re-home the " + joined(homes) + (wishes.empty() ? "" : ", leave out " + joined(wishes));
}

void remedy_by_count(const Plan& plan, const Kept& kept, int count, Finding& finding) {
  finding.edits = set_count(plan, kept, count);
  if (!finding.edits.empty()) finding.remedy = say_count(kept, count);
}

std::string json_number(double value) { return short_text(value, 4); }

std::string line_json(const std::vector<LinePoint>& line) {
  const auto not_beyond = [](double x_cm) { return std::floor(x_cm * 1e4) / 1e4; };  // the last point stands at the glass
  std::string json = "[";
  for (const LinePoint& point : line)
    json += (json.size() > 1 ? ",[" : "[") + json_number(not_beyond(point.x_cm)) + "," + json_number(point.rise_cm) + "]";
  return json + "]";
}

std::vector<PatchStep> set_value(const Plan& plan, const std::string& pointer, std::string value_json) {
  if (is_fixed(plan, pointer)) return {};
  return {{"replace", pointer, std::move(value_json)}};
}

std::string say_measures(const Piece& piece) {
  return short_text(piece.length_cm, 1) + " × " + short_text(piece.depth_cm, 1) + " × " + amount(piece.height_cm, 1, "cm");
}

std::vector<PatchStep> add_pieces(const Plan& plan, const Piece& piece, int count) {
  if (is_fixed(plan, "/pieces") || plan.pieces.size() + static_cast<std::size_t>(count) > most_pieces) return {};
  const std::string json = "{\"kind\":\"" + piece.kind + "\",\"length_cm\":" + json_number(piece.length_cm) +
                           ",\"depth_cm\":" + json_number(piece.depth_cm) + ",\"height_cm\":" + json_number(piece.height_cm) +
                           "}";
  return std::vector<PatchStep>(static_cast<std::size_t>(count), PatchStep{"add", "/pieces/-", json});
}

std::vector<PatchStep> aim_water(const Facts& facts, const std::string& quantity, double value) {
  const Plan& plan = facts.plan;
  if (is_fixed(plan, "/water/" + quantity)) return {};
  if (plan.water) return {{"replace", "/water/" + quantity, json_number(value)}};
  const struct {
    const char* name;
    const std::optional<double>& now;
  } all[] = {{"temperature_c", facts.water.temperature_c.now},
             {"ph", facts.water.ph.now},
             {"gh_dgh", facts.water.gh_dgh.now},
             {"kh_dkh", facts.water.kh_dkh.now}};
  std::string json = "{";
  for (const auto& one : all) {
    if (json.size() > 1) json += ",";
    json.append("\"").append(one.name).append("\":");
    if (quantity == one.name)
      json += json_number(value);
    else
      json += one.now ? json_number(*one.now) : "null";
  }
  return {{"replace", "/water", json + "}"}};
}

}  // namespace shoalwright
