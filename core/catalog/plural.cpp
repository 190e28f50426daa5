// SPDX-License-Identifier: MIT
#include "catalog/plural.h"

#include <array>
#include <string_view>

namespace shoalwright {

namespace {

bool ends_with(std::string_view text, std::string_view end) {
  return text.size() >= end.size() && text.substr(text.size() - end.size()) == end;
}

bool is_lower(char c) { return c >= 'a' && c <= 'z'; }
bool is_vowel(char c) { return std::string_view("aeiou").find(c) != std::string_view::npos; }

}  // namespace

std::string name_for(const std::string& name, int count) {
  constexpr auto same = std::to_array<std::string_view>({"fish", "shrimp", "mbuna", "s", "z", "koi"});
  if (count == 1 || name.size() < 2 || !is_lower(name.back())) return name;
  for (const std::string_view end : same)
    if (ends_with(name, end)) return name;
  if (name.back() == 'y' && !is_vowel(name[name.size() - 2])) return name.substr(0, name.size() - 1) + "ies";
  return name + (ends_with(name, "ch") || ends_with(name, "sh") || ends_with(name, "x") ? "es" : "s");
}

std::string name_for(const Species& species, int count) {
  return species.name.common.empty() ? display_name(species) : name_for(display_name(species), count);
}

}  // namespace shoalwright
