// SPDX-License-Identifier: MIT
#pragma once

#include "rules/facts.h"

namespace shoalwright {

/// Whether so many of a kind that lives here in all could be borne: neither the tank itself nor its room speaks against them. For
/// remedies that put more in.
bool bears(const Facts& facts, const Kept& kept, int count);

}  // namespace shoalwright
