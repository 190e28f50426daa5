// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace shoalwright {

/// The least and the most that a number in an entry may be; both may be reached.
struct Bounds {
  double low, high;
};

/// "4 to 12"
std::string bounds_text(const Bounds& bounds);

/// Lower-case letters and digits joined by single hyphens; one double hyphen may set off a form that keeps differently.
bool is_id(std::string_view text);

/// True when `text` follows `shape`: 0 any digit, 1 a digit but 0, A a capital, h a hexadecimal digit in lower case, else itself.
bool follows(std::string_view text, std::string_view shape);

/// A year, a month or a day, as 2026, 2026-11 or 2026-11-20; whether that day exists is not asked.
bool is_date(std::string_view text);

/// "a, b, c"
template <class List>
std::string listed(const List& list) {
  std::string text;
  for (const auto& word : list) text += (text.empty() ? "" : ", ") + std::string(word);
  return text;
}

}  // namespace shoalwright
