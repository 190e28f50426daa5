// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "draw/buttons.h"
#include "draw/marks.h"

namespace shoalwright {

/// What a finding shows. Texts are in the reader's units already.
struct FindingCard {
  Severity severity = Severity::note;
  std::vector<int> numbers;  ///< plates of those concerned
  std::string_view heading;
  std::string_view sentences;
  std::vector<std::string_view> remedies;  ///< the first bordered in the colour of actions, the others quiet
  std::string_view why;                    ///< unfolds: rule, figures, source; empty: no *Why*
  bool why_open = false;
  bool can_know = false;  ///< offers "I know", or to take it back where `known`
  bool known = false;     ///< "I know": greyed
};

struct FindingAnswer {
  int pressed = -1;    ///< index of the remedy pressed
  int previewed = -1;  ///< index of the remedy pointed at or focused, to be shown as a held fish is
  bool why = false;    ///< *Why* was pressed
  bool know = false;   ///< "I know" was pressed
};

float finding_height(const Ui& ui, float width, const FindingCard& card);
/// Draws it from `at` (a rule above it) and returns its height. Spots: `id/remedy/0` ..., `id/why`, `id/know`.
float finding(Ui& ui, std::string_view id, ImVec2 at, float width, const FindingCard& card, FindingAnswer& answer);

}  // namespace shoalwright
