// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

namespace shoalwright {

/// A name as it is compared: lower case, Latin letters without their accents, one space for any run of spaces, hyphens and other
/// marks, nothing for apostrophes and full stops. "Ancistrus cf. cirrhosus", "ancistrus-cf-cirrhosus" and " ANCISTRUS CF
/// CIRRHOSUS" are one. Letters beyond U+00FF stay as they are.
std::string folded(std::string_view text);

}  // namespace shoalwright
