// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "catalog/species.h"

namespace shoalwright {

/// A word that the trade writes on the tanks of several kinds.
struct Label {
  std::string word;                    ///< as a card writes it, else as it was asked for
  std::vector<const Species*> kinds;   ///< two to `most_kinds`, who bears the word first; live as long as the kinds asked
  std::vector<std::string> card_less;  ///< scientific names of more that are sold under it and have no card
  static constexpr std::size_t most_kinds = 5;
};

/// What is sold under a word: all that bear it as a common, scientific, old or misapplied name, in one or many, with what their
/// cards say is sold under the same label; and those whose common name ends with it ("oto", "bumblebee catfish"), as long as all
/// are no more than five. Empty for a word that leads to one kind or none, and for the name of a whole family of them: the shelf
/// lists those. Case, accents and hyphens do not count.
std::optional<Label> label_of(std::span<const Species* const> kinds, std::string_view word);

/// What kinds may differ in, in the order told.
enum class LabelTrait { length, marks, fins, form, depth, temperature, ph, gh, salt, tank, group, temper, shrimp, plants };

/// Those in which they do differ by enough to be seen, or to matter in a tank: lengths by a seventh, temperatures by 2 °C, pH by
/// 0.5, GH by 3 °dH at an end, least tanks by a fifth. Common practice, no source. A value that one of them lacks tells nothing.
std::vector<LabelTrait> traits_apart(std::span<const Species* const> kinds);

}  // namespace shoalwright
