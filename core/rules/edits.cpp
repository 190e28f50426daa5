// SPDX-License-Identifier: MIT
#include "rules/edits.h"

#include <algorithm>

#include "units/text.h"

namespace shoalwright {

namespace {

std::string stock_pointer(int line, const char* key = nullptr) {
  std::string pointer = "/stock/" + std::to_string(line);
  if (key) pointer.append("/").append(key);
  return pointer;
}

// Taking a line out moves the lines after it, and with them what is pinned or assumed there: then the line stays with count 0.
bool lines_are_pointed_at(const Plan& plan) {
  const auto in_stock = [](const std::string& pointer) { return pointer.compare(0, 7, "/stock/") == 0; };
  return std::any_of(plan.fixed.begin(), plan.fixed.end(), in_stock) || std::any_of(plan.assumed.begin(), plan.assumed.end(), in_stock);
}

void set_line(const Plan& plan, int line, int count, std::vector<PatchStep>& steps) {
  const Group& group = plan.stock[static_cast<std::size_t>(line)];
  steps.push_back({"replace", stock_pointer(line, "count"), std::to_string(count)});
  if (group.have > count) steps.push_back({"replace", stock_pointer(line, "have"), std::to_string(count)});
  const int sexed = group.males.value_or(0) + group.females.value_or(0);
  if (sexed == 0 || sexed == count) return;
  if (group.males) steps.push_back({"remove", stock_pointer(line, "males"), ""});
  if (group.females) steps.push_back({"remove", stock_pointer(line, "females"), ""});
}

}  // namespace

std::vector<PatchStep> set_count(const Plan& plan, const Kept& kept, int count) {
  std::vector<PatchStep> steps;
  int change = count - kept.count;
  const bool may_remove = !lines_are_pointed_at(plan);
  for (auto line = kept.lines.rbegin(); line != kept.lines.rend() && change != 0; ++line) {
    const Group& group = plan.stock[static_cast<std::size_t>(*line)];
    if (is_fixed(plan, stock_pointer(*line, "count")) || is_fixed(plan, stock_pointer(*line, "have"))) continue;
    const int now = std::max(group.count + change, 0);
    change -= now - group.count;
    if (now == 0 && may_remove && !is_fixed(plan, stock_pointer(*line)))
      steps.push_back({"remove", stock_pointer(*line), ""});
    else
      set_line(plan, *line, now, steps);
  }
  if (change != 0) steps.clear();
  return steps;
}

bool can_set_count(const Plan& plan, const Kept& kept, int count) { return !set_count(plan, kept, count).empty(); }

std::string say_count(const Kept& kept, int count) {
  const std::string name = kept.species ? display_name(*kept.species) : kept.id;
  const int home = std::max(kept.have - count, 0);
  if (home > 0 && count == 0) return "Re-home the " + std::to_string(home) + " " + name;
  if (home > 0) return "Re-home " + std::to_string(home) + " " + name + ", keep " + std::to_string(count);
  if (count == 0) return "Leave out " + name;
  return "Keep " + std::to_string(count) + " " + name;
}

std::string json_number(double value) { return short_text(value, 4); }

std::vector<PatchStep> set_value(const Plan& plan, const std::string& pointer, std::string value_json) {
  if (is_fixed(plan, pointer)) return {};
  return {{"replace", pointer, std::move(value_json)}};
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
