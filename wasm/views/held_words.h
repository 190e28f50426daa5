// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/look.h"
#include "draw/marks.h"

namespace shoalwright {

/// One thing that dropping what is in hand would bring: with a grade where it is a finding or a change worth a note, else with
/// the mark of a margin.
struct Consequence {
  std::optional<Severity> grade;
  Fit mark = Fit::spare;  ///< where there is no grade
  std::string words;
};

/// The most important first, at most `most`: new Fix and Strain, new Watch, room left in animals, lane, temperature window,
/// nitrate, new notes. `look.held` must be set.
std::vector<Consequence> consequences(const Look& look, std::size_t most = 4);

/// How many of the kind in hand there would be in all.
int held_total(const Look& look);

}  // namespace shoalwright
