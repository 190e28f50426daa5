// SPDX-License-Identifier: MIT
#include "catalog/detail/shapes.h"

#include "units/text.h"

namespace shoalwright {

namespace {

bool is_lower_or_digit(char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'); }

}  // namespace

std::string bounds_text(const Bounds& b) { return short_text(b.low, 2) + " to " + short_text(b.high, 2); }

bool is_id(std::string_view text) {
  bool double_seen = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (is_lower_or_digit(text[i])) continue;
    if (text[i] != '-' || i == 0) return false;
    if (i + 1 < text.size() && text[i + 1] == '-') {
      if (double_seen) return false;
      double_seen = true;
      ++i;
    }
    if (i + 1 >= text.size() || !is_lower_or_digit(text[i + 1])) return false;
  }
  return !text.empty();
}

bool follows(std::string_view text, std::string_view shape) {
  if (text.size() != shape.size()) return false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    const bool digit = c >= '0' && c <= '9';
    bool fits = c == shape[i];
    if (shape[i] == '0') fits = digit;
    if (shape[i] == '1') fits = digit && c != '0';
    if (shape[i] == 'A') fits = c >= 'A' && c <= 'Z';
    if (shape[i] == 'h') fits = digit || (c >= 'a' && c <= 'f');
    if (!fits) return false;
  }
  return true;
}

bool is_date(std::string_view text) { return follows(text, "0000") || follows(text, "0000-00") || follows(text, "0000-00-00"); }

}  // namespace shoalwright
