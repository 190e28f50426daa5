// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "rules/facts.h"
#include "stocking/floor.h"

namespace shoalwright {

// What each group adds to a sum, so that an excess can name who makes it and say by how many fewer it ends.

/// One group's part of a sum. Known species only.
struct Part {
  const Kept* kept = nullptr;
  double amount = 0;
};

/// Parts of the crowding of a layer (0 surface, 1 mid, 2 bottom); they add up to it.
std::vector<Part> layer_parts(const Facts& facts, std::size_t layer);

/// Floor that each group takes, cm2.
std::vector<Part> floor_parts(const Facts& facts);

/// Dry food at 25 degrees C that each group is given, g a day: its part of the load at any one temperature and ration.
std::vector<Part> feed_parts(const Facts& facts);

/// Oxygen that each group uses in the night with the bacteria that live on its food, mg/h: its part of the demand less what
/// plants use. Empty where the demand is not known.
std::vector<Part> breath_parts(const Facts& facts, double temperature_c);

/// The largest parts that make up limits::named_share of the sum, back in stock order. Parts of 0 are dropped.
std::vector<const Kept*> main_parts(std::vector<Part> parts);

/// What is left of a part when its group is taken to another count.
using LeftWith = double (*)(const Kept& kept, int count, double part);
double in_proportion(const Kept& kept, int count, double part);
double on_the_floor(const Kept& kept, int count, double part);

/// The remedy by fewer animals that takes the sum of the parts down to `share` of itself (0 to 1): the largest part whose group
/// can be lowered and still be a group; failing that the largest that can be left out. Nothing where neither is possible.
void remedy_by_fewer(const Facts& facts, std::vector<Part> parts, double share, LeftWith left_with, Finding& finding);

}  // namespace shoalwright
