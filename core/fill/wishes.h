// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "catalog/species.h"
#include "plan/plan.h"

namespace shoalwright {

/// Families of colours that a keeper may wish for.
enum class Colour { red, orange, yellow, green, blue, violet, silver, black, white };
inline constexpr int colour_count = 9;
/// "red" and so on.
std::string_view name_of(Colour colour);

/// Which of them an animal shows, by the colours of its picture: the flank, the marks and the accents; the back and the belly are
/// grey or pale on nearly all. Bounds in hue, chroma and lightness are common practice, no source.
std::array<bool, colour_count> colours_of(const Species& species);

/// What a keeper wishes a tank to be filled with.
struct FillWishes {
  std::vector<std::string> must, never;      ///< ids of species
  std::array<bool, 4> levels{};              ///< surface, upper, middle, floor: kinds that swim there count for more
  std::array<bool, colour_count> colours{};  ///< kinds that show one of them count for more
  int most_kinds = 4;                        ///< new ones, 1 to `most_fill_kinds`
  bool easy_only = false;                    ///< no delicate kinds
  bool operator==(const FillWishes&) const = default;
};
inline constexpr int most_fill_kinds = 8;

/// Kept in the plan under `wishes`: `{"must":[id],"never":[id],"levels":["surface"],"colours":["red"],"most_kinds":4,
/// "easy_only":false}`, all optional, among the keys that came after the first version (plan/more_keys.h says how). What is of a
/// wrong type or out of range counts as not said.
FillWishes wishes_of(const Plan& plan);
void set_wishes(Plan& plan, const FillWishes& wishes);

}  // namespace shoalwright
