// SPDX-License-Identifier: MIT
#include "fill/wishes.h"

#include <algorithm>
#include <cmath>

#include "plan/more_keys.h"
#include "units/json.h"

namespace shoalwright {

namespace {

constexpr std::string_view level_names[] = {"surface", "upper", "middle", "floor"};
constexpr std::string_view colour_names[] = {"red", "orange", "yellow", "green", "blue", "violet", "silver", "black", "white"};

int hex(std::string_view text, std::size_t at) {
  const auto digit = [](char c) {
    return c >= '0' && c <= '9' ? c - '0' : c >= 'a' && c <= 'f' ? c - 'a' + 10 : c >= 'A' && c <= 'F' ? c - 'A' + 10 : 0;
  };
  return 16 * digit(text[at]) + digit(text[at + 1]);
}

/// The family of "#rrggbb".
Colour family_of(std::string_view text) {
  const double r = hex(text, 1), g = hex(text, 3), b = hex(text, 5);
  const double most = std::max({r, g, b}), least = std::min({r, g, b}), chroma = most - least;
  constexpr double dark_to = 70, grey_to = 45, white_from = 215;
  if (most <= dark_to) return Colour::black;
  if (chroma <= grey_to) return least >= white_from ? Colour::white : Colour::silver;
  double hue = most == r ? (g - b) / chroma : most == g ? 2 + (b - r) / chroma : 4 + (r - g) / chroma;
  hue = std::fmod(hue * 60 + 360, 360);
  if (hue < 16 || hue >= 335) return Colour::red;
  if (hue < 40) return most < 160 || chroma < 90 ? Colour::silver : Colour::orange;  // brown is no colour to wish for
  if (hue < 68) return chroma < 90 ? Colour::silver : Colour::yellow;
  if (hue < 165) return Colour::green;
  if (hue < 255) return Colour::blue;
  return Colour::violet;
}

template <std::size_t n>
void read_names(const Json& json, std::string_view key, const std::string_view (&names)[n], std::array<bool, n>& out) {
  const Json* list = find(json, key);
  if (!list) return;
  for (const Json& item : list->items)
    for (std::size_t i = 0; i < n; ++i)
      if (item.kind == Json::Kind::text && item.text == names[i]) out[i] = true;
}

std::vector<std::string> ids(const Json& json, std::string_view key) {
  std::vector<std::string> all;
  if (const Json* list = find(json, key))
    for (const Json& item : list->items)
      if (item.kind == Json::Kind::text) all.push_back(item.text);
  return all;
}

std::string quoted(const std::vector<std::string>& all) {
  std::string text = "[";
  for (const std::string& one : all) text += (text.size() > 1 ? "," : "") + in_quotes(one);
  return text + "]";
}

template <std::size_t n>
std::string quoted(const std::array<bool, n>& on, const std::string_view (&names)[n]) {
  std::vector<std::string> all;
  for (std::size_t i = 0; i < n; ++i)
    if (on[i]) all.emplace_back(names[i]);
  return quoted(all);
}

}  // namespace

std::string_view name_of(Colour colour) { return colour_names[static_cast<std::size_t>(colour)]; }

std::array<bool, colour_count> colours_of(const Species& species) {
  std::array<bool, colour_count> shown{};
  const std::vector<std::string>& all = species.look.colours;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const bool back_or_belly = all.size() > 3 && (i == 0 || i == 2);
    if (!back_or_belly && all[i].size() == 7) shown[static_cast<std::size_t>(family_of(all[i]))] = true;
  }
  return shown;
}

FillWishes wishes_of(const Plan& plan) {
  FillWishes wishes;
  const Result<Json> read = parse_json(more_key(plan, "wishes"));
  if (!read || read->kind != Json::Kind::object) return wishes;
  wishes.must = ids(*read, "must");
  wishes.never = ids(*read, "never");
  read_names(*read, "levels", level_names, wishes.levels);
  read_names(*read, "colours", colour_names, wishes.colours);
  if (const Json* most = find(*read, "most_kinds"); most && most->kind == Json::Kind::number)
    if (most->number >= 1 && most->number <= most_fill_kinds) wishes.most_kinds = static_cast<int>(most->number);
  if (const Json* easy = find(*read, "easy_only")) wishes.easy_only = easy->kind == Json::Kind::boolean && easy->boolean;
  return wishes;
}

void set_wishes(Plan& plan, const FillWishes& wishes) {
  if (wishes == FillWishes()) return set_more_key(plan, "wishes", "");
  set_more_key(plan, "wishes",
               "{\"must\":" + quoted(wishes.must) + ",\"never\":" + quoted(wishes.never) +
                   ",\"levels\":" + quoted(wishes.levels, level_names) + ",\"colours\":" + quoted(wishes.colours, colour_names) +
                   ",\"most_kinds\":" + std::to_string(wishes.most_kinds) +
                   ",\"easy_only\":" + (wishes.easy_only ? "true" : "false") + "}");
}

}  // namespace shoalwright
