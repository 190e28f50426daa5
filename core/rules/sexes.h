// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "stocking/stock.h"

namespace shoalwright {

/// How many of a group are male and female, where both together are all of it.
struct Sexes {
  int males = 0, females = 0;
};

std::optional<Sexes> sexes_of(const Kept& kept);

/// Whether young can come of two groups, or of a group and itself, as far as their sexes are known; unknown ones may be of both.
bool may_breed(const Kept& a, const Kept& b);

}  // namespace shoalwright
