// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "support/dice.h"

namespace shoalwright {

/// A few changes to a text: bytes flipped, cut, doubled, moved; numbers blown up; brackets and keys thrown in.
inline std::string mutated(std::string text, Dice& dice) {
  static const std::string scraps[] = {"{",
                                       "}",
                                       "[",
                                       "]",
                                       ",",
                                       ":",
                                       "\"",
                                       "null",
                                       "-",
                                       "1e308",
                                       "-1e308",
                                       "4294967295",
                                       "NaN",
                                       "\\ud800",
                                       "\xff",
                                       "\xed\xa0\x80",
                                       "\"count\":",
                                       "\"tank\":{",
                                       std::string(1, '\0'),
                                       "[[[[[[[[",
                                       "\"\":",
                                       "0.1",
                                       "true"};
  for (int left = dice.whole(1, 6); left > 0; --left) {
    if (text.empty()) return dice.pick(scraps);
    const auto at = static_cast<std::size_t>(dice.below(static_cast<int>(text.size())));
    const auto length = static_cast<std::size_t>(dice.whole(1, 40));
    switch (dice.below(6)) {
      case 0: text[at] = static_cast<char>(text[at] ^ (1 << dice.below(8))); break;
      case 1: text.erase(at, length); break;
      case 2: text.insert(at, text, at / 2, length); break;
      case 3: text.insert(at, dice.pick(scraps)); break;
      case 4: text.replace(at, 1, dice.pick(scraps)); break;
      case 5: text[at] = static_cast<char>(dice.below(256)); break;
    }
  }
  return text;
}

}  // namespace shoalwright
