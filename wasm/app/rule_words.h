// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "notebook/finding.h"

namespace shoalwright {

/// How a rule judges, in one or two metric sentences with its own thresholds, for *Why*. Empty for a rule that is not known here.
[[gnu::noinline]] std::string rule_words(std::string_view rule);

/// "Published: Saxby and others 2010. The effect of group size ...", "Common practice, no source", "From memory ...", "Your own
/// value".
std::string evidence_words(const Finding& finding);

/// Author, year and title of a source by its key in catalog/sources.json; empty when there is none.
std::string_view citation(std::string_view key);

}  // namespace shoalwright
