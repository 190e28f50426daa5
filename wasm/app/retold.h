// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "app/measures.h"

namespace shoalwright {

/// What a sentence is about, where its numbers alone do not say: whether its mg/L are nitrate, and which hardness a number is of
/// that stands by itself.
struct About {
  bool nitrate = false;
  Hardness hardness = Hardness::gh;
};
/// Of a finding's rule.
About about_of(std::string_view rule);

/// A sentence of the core, which speaks metric, with its lengths, areas, volumes, temperatures and masses in the keeper's units:
/// "Lane 12 cm short" becomes "Lane 4.7 in short", "24 to 27 °C" becomes "75 to 81 °F", "2 °C over" (a difference) becomes "3.6
/// °F over". Hardness is what is followed by "°dH" or stands behind GH or KH: "KH 3.2" becomes "KH 57 mg/L CaCO₃". Other mg/L
/// than nitrate, mm and all words stay. The same text where the keeper counts as the core does.
std::string retold(const Measures& measures, std::string_view metric, const About& about = {});

}  // namespace shoalwright
