// SPDX-License-Identifier: MIT
#include "plan/assumed.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

namespace shoalwright {

namespace {

bool is_at_or_under(const std::string& pointer, const std::string& parent) {
  return pointer == parent ||
         (pointer.size() > parent.size() && pointer.compare(0, parent.size(), parent) == 0 && pointer[parent.size()] == '/');
}

/// What a part of the plan is made of, where one value of it can be decided by itself.
constexpr auto parts = std::to_array<std::string_view>({
    "/tank/shape",          "/tank/length_cm",    "/tank/width_cm",        "/tank/bow_cm",
    "/tank/diameter_cm",    "/tank/side_cm",      "/tank/front_cm",        "/tank/outline_cm",
    "/tank/height_cm",      "/tank/glass_mm",     "/tank/fill_cm",         "/tank/lid",
    "/place/temperature_c", "/place/region",      "/source/temperature_c", "/source/ph",
    "/source/gh_dgh",       "/source/kh_dkh",     "/source/nitrate_mg_l",  "/source/disinfectant",
    "/water/temperature_c", "/water/ph",          "/water/gh_dgh",         "/water/kh_dkh",
    "/limits/nitrate_mg_l", "/limits/co2_mg_l",   "/substrate/kind",       "/substrate/front_cm",
    "/substrate/back_cm",   "/substrate/line_cm", "/gear/filter",          "/gear/heater_w",
    "/gear/surface",        "/feeding/ration",    "/feeding/fasting_days", "/upkeep/change_fraction",
    "/upkeep/every_days",
});

/// Whether the plan has this part: what its shape of tank does not have was not assumed either.
bool is_there(const Plan& plan, std::string_view part) {
  const Tank& tank = plan.tank;
  if (part == "/substrate/line_cm") return !plan.substrate.line_cm.empty();
  if (part == "/tank/length_cm") return tank.length_cm != 0;
  if (part == "/tank/width_cm") return tank.width_cm != 0;
  if (part == "/tank/bow_cm") return tank.bow_cm != 0;
  if (part == "/tank/diameter_cm") return tank.diameter_cm != 0;
  if (part == "/tank/side_cm") return tank.side_cm != 0;
  if (part == "/tank/front_cm") return tank.front_cm != 0;
  return part != "/tank/outline_cm" || !tank.outline_cm.empty();
}

void insert(std::vector<std::string>& set, const std::string& pointer) {
  const auto at = std::lower_bound(set.begin(), set.end(), pointer);
  if (at == set.end() || *at != pointer) set.insert(at, pointer);
}

struct EntryPointer {
  std::size_t index = 0;
  std::string rest;
};

/// "/stock/3/count" of "/stock" is 3 and "/count".
std::optional<EntryPointer> entry_of(const std::string& pointer, const std::string& list) {
  if (!(pointer.size() > list.size() + 1 && is_at_or_under(pointer, list))) return std::nullopt;
  EntryPointer entry;
  std::size_t at = list.size() + 1;
  for (; at < pointer.size() && pointer[at] != '/'; ++at) {
    if (!(pointer[at] >= '0' && pointer[at] <= '9') || entry.index > 1'000'000) return std::nullopt;
    entry.index = entry.index * 10 + static_cast<std::size_t>(pointer[at] - '0');
  }
  entry.rest = pointer.substr(at);
  return entry;
}

void shift(std::vector<std::string>& pointers, const std::string& list, std::size_t index, bool gone) {
  std::vector<std::string> out;
  for (const std::string& pointer : pointers) {
    const std::optional<EntryPointer> entry = entry_of(pointer, list);
    if (!entry || entry->index < index) {
      out.push_back(pointer);
    } else if (!gone || entry->index > index) {
      out.push_back(list + '/' + std::to_string(gone ? entry->index - 1 : entry->index + 1) + entry->rest);
    }
  }
  std::sort(out.begin(), out.end());
  pointers = std::move(out);
}

}  // namespace

void decide(Plan& plan, const std::string& pointer) {
  std::vector<std::string> kept, split;
  for (const std::string& assumed : plan.assumed) {
    if (is_at_or_under(assumed, pointer)) continue;
    if (!is_at_or_under(pointer, assumed)) {
      kept.push_back(assumed);
      continue;
    }
    const std::size_t before = split.size();
    for (const std::string_view part : parts) {
      const std::string other(part);
      const bool apart = !is_at_or_under(other, pointer) && !is_at_or_under(pointer, other);
      if (is_at_or_under(other, assumed) && apart && is_there(plan, part)) split.push_back(other);
    }
    if (split.size() == before) kept.push_back(assumed);  // a list: one decided entry says nothing about the others
  }
  plan.assumed = std::move(kept);
  for (const std::string& other : split) insert(plan.assumed, other);
}

void assume(Plan& plan, const std::string& pointer) { insert(plan.assumed, pointer); }

void forget_entry(Plan& plan, const std::string& list, std::size_t index) {
  shift(plan.assumed, list, index, true);
  shift(plan.fixed, list, index, true);
}

void make_room_for_entry(Plan& plan, const std::string& list, std::size_t index) {
  shift(plan.assumed, list, index, false);
  shift(plan.fixed, list, index, false);
}

}  // namespace shoalwright
