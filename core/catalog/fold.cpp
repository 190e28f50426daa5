// SPDX-License-Identifier: MIT
#include "catalog/fold.h"

namespace shoalwright {

namespace {

/// U+00C0 to U+00FF without accents; the two signs among the letters count as gaps.
constexpr std::string_view plain_latin_1 =
    "aaaaaaaceeeeiiii"
    "dnooooo ouuuuyts"
    "aaaaaaaceeeeiiii"
    "dnooooo ouuuuyty";

bool is_dropped(char c) { return c == '\'' || c == '.'; }

}  // namespace

std::string folded(std::string_view text) {
  std::string plain;
  bool gap = false;
  const auto add = [&](char c) {
    if (gap && !plain.empty()) plain += ' ';
    gap = false;
    plain += c;
  };
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    const auto byte = static_cast<unsigned char>(c);
    if (c >= 'A' && c <= 'Z') {
      add(static_cast<char>(c - 'A' + 'a'));
    } else if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
      add(c);
    } else if (byte == 0xC3 && i + 1 < text.size() && (static_cast<unsigned char>(text[i + 1]) & 0xC0) == 0x80) {
      const char letter = plain_latin_1[static_cast<unsigned char>(text[++i]) & 0x3F];
      if (letter == ' ') {
        gap = true;
      } else {
        add(letter);
      }
    } else if (text.substr(i, 3) == "\u2019") {
      i += 2;  // the typographic apostrophe
    } else if (byte >= 0x80) {
      add(c);
    } else if (!is_dropped(c)) {
      gap = true;
    }
  }
  return plain;
}

}  // namespace shoalwright
