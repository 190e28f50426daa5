// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "plan/plan.h"

namespace shoalwright {

// The words of FORMATS section 2 for each choice, in the order of the enum.

template <class Choice>
struct Words;

template <>
struct Words<Shape> {
  static constexpr std::array<std::string_view, 8> all = {"rectangular",      "bow-front", "cylinder",        "half-cylinder",
                                                          "quarter-cylinder", "hexagon",   "pentagon-corner", "prism"};
};
template <>
struct Words<Disinfectant> {
  static constexpr std::array<std::string_view, 4> all = {"none", "chlorine", "chloramine", "unknown"};
};
template <>
struct Words<SubstrateKind> {
  static constexpr std::array<std::string_view, 6> all = {"bare",          "fine-sand",    "coarse-sand",
                                                          "smooth-gravel", "sharp-gravel", "planted-soil"};
};
template <>
struct Words<SurfaceMotion> {
  static constexpr std::array<std::string_view, 5> all = {"still", "quiet", "gentle", "rippled", "vigorous"};
};
template <>
struct Words<Ration> {
  static constexpr std::array<std::string_view, 3> all = {"light", "normal", "heavy"};
};
template <>
struct Words<Planting> {
  static constexpr std::array<std::string_view, 4> all = {"none", "light", "medium", "dense"};
};
template <>
struct Words<Strictness> {
  static constexpr std::array<std::string_view, 3> all = {"lenient", "usual", "strict"};
};

/// The word of a choice: word_of(Shape::bow_front) is "bow-front".
template <class Choice>
constexpr std::string_view word_of(Choice choice) {
  return Words<Choice>::all[static_cast<std::size_t>(choice)];
}

/// The choice of a word; empty when there is no such word.
template <class Choice>
constexpr std::optional<Choice> choice_of(std::string_view word) {
  for (std::size_t i = 0; i < Words<Choice>::all.size(); ++i)
    if (Words<Choice>::all[i] == word) return static_cast<Choice>(i);
  return std::nullopt;
}

}  // namespace shoalwright
