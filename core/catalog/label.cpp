// SPDX-License-Identifier: MIT
#include "catalog/label.h"

#include <algorithm>
#include <cmath>

#include "catalog/fold.h"
#include "catalog/plural.h"

namespace shoalwright {

namespace {

constexpr std::size_t least_letters = 3;
constexpr double length_apart = 1.0 / 7, tank_apart = 0.2, temperature_apart_c = 2, ph_apart = 0.5, gh_apart_dgh = 3;

bool ends_with_word(const std::string& name, const std::string& word) {
  return name.size() > word.size() + 1 && name.ends_with(word) && name[name.size() - word.size() - 1] == ' ';
}

/// What a name is asked for by: itself, or the word for many of them.
struct Asked {
  std::string word;

  bool is(const std::string& name) const { return folded(name) == word; }
  bool is_common(const std::string& name) const { return is(name) || folded(name_for(name, 2)) == word; }
  bool ends(const std::string& name) const {
    return ends_with_word(folded(name), word) || ends_with_word(folded(name_for(name, 2)), word);
  }
};

/// The name by which a kind bears the word; null when it does not.
const std::string* name_borne(const Species& species, const Asked& asked) {
  const Species::Name& name = species.name;
  for (const CommonName& common : name.common)
    if (asked.is_common(common.text)) return &common.text;
  if (asked.is(name.scientific)) return &name.scientific;
  for (const std::vector<std::string>* list : {&name.synonyms, &name.misapplied, &species.aliases})
    for (const std::string& one : *list)
      if (asked.is(one)) return &one;
  return nullptr;
}

/// The kind that science calls so, or once did.
const Species* called(std::span<const Species* const> kinds, const std::string& scientific) {
  const std::string wanted = folded(scientific);
  const auto is_wanted = [&](const std::string& name) { return folded(name) == wanted; };
  for (const Species* kind : kinds)
    if (is_wanted(kind->name.scientific)) return kind;
  for (const Species* kind : kinds)
    if (std::any_of(kind->name.synonyms.begin(), kind->name.synonyms.end(), is_wanted)) return kind;
  return nullptr;
}

template <class Value>
void add_once(std::vector<Value>& list, const Value& value) {
  if (std::find(list.begin(), list.end(), value) == list.end()) list.push_back(value);
}

void add_same_label(std::span<const Species* const> kinds, const std::vector<const Species*>& bearers, Label& label) {
  for (const Species* bearer : bearers)
    for (const std::string& other : bearer->name.sold_as) {
      if (const Species* kind = called(kinds, other))
        add_once(label.kinds, kind);
      else
        add_once(label.card_less, other);
    }
}

bool has_tail(const Species& species, const Asked& asked) {
  return std::any_of(species.name.common.begin(), species.name.common.end(),
                     [&](const CommonName& name) { return asked.ends(name.text); });
}

template <class Of>
bool differ(std::span<const Species* const> kinds, Of of) {
  return std::any_of(kinds.begin(), kinds.end(), [&](const Species* kind) { return of(*kind) != of(*kinds.front()); });
}

/// Words of which an empty one is not known.
template <class Of>
bool words_differ(std::span<const Species* const> kinds, Of of) {
  return differ(kinds, of) && std::none_of(kinds.begin(), kinds.end(), [&](const Species* kind) { return of(*kind).empty(); });
}

bool lengths_differ(std::span<const Species* const> kinds, const std::vector<double>& values, double by) {
  if (values.size() != kinds.size()) return false;
  const auto [low, high] = std::minmax_element(values.begin(), values.end());
  return *high > *low * (1 + by);
}

bool ranges_differ(std::span<const Species* const> kinds, Need Species::WaterNeeds::*need, double by) {
  double least[2] = {1e9, 1e9}, most[2] = {-1e9, -1e9};
  for (const Species* kind : kinds) {
    const std::optional<Range>& lives = (kind->water.*need).tolerated;
    if (!lives) return false;
    const double ends[2] = {lives->low, lives->high};
    for (std::size_t i = 0; i < 2; ++i) {
      least[i] = std::min(least[i], ends[i]);
      most[i] = std::max(most[i], ends[i]);
    }
  }
  return most[0] - least[0] >= by || most[1] - least[1] >= by;
}

std::size_t main_third(const Species& species) {
  const std::array<double, 3>& depth = species.life.depth;
  return static_cast<std::size_t>(std::max_element(depth.begin(), depth.end()) - depth.begin());
}

bool trait_differs(std::span<const Species* const> kinds, LabelTrait trait) {
  std::vector<double> values;
  switch (trait) {
    case LabelTrait::length:
      for (const Species* kind : kinds) values.push_back(kind->size.adult_tl_cm);
      return lengths_differ(kinds, values, length_apart);
    case LabelTrait::marks: return differ(kinds, [](const Species& s) { return s.look.marks; });
    case LabelTrait::fins: return words_differ(kinds, [](const Species& s) { return s.look.fins; });
    case LabelTrait::form: return words_differ(kinds, [](const Species& s) { return s.look.form; });
    case LabelTrait::depth: return differ(kinds, main_third);
    case LabelTrait::temperature: return ranges_differ(kinds, &Species::WaterNeeds::temperature_c, temperature_apart_c);
    case LabelTrait::ph: return ranges_differ(kinds, &Species::WaterNeeds::ph, ph_apart);
    case LabelTrait::gh: return ranges_differ(kinds, &Species::WaterNeeds::gh_dgh, gh_apart_dgh);
    case LabelTrait::salt: return differ(kinds, [](const Species& s) { return s.water.salinity; });
    case LabelTrait::tank:
      for (const Species* kind : kinds)
        if (kind->needs.least_length_cm) values.push_back(*kind->needs.least_length_cm);
      return lengths_differ(kinds, values, tank_apart);
    case LabelTrait::group:
      return differ(kinds, [](const Species& s) { return std::pair(s.life.group.kind, s.life.group.least); });
    case LabelTrait::temper: return differ(kinds, [](const Species& s) { return s.temper.to_others; });
    case LabelTrait::shrimp: return words_differ(kinds, [](const Species& s) { return s.mouth.eats_shrimp; });
    case LabelTrait::plants: return words_differ(kinds, [](const Species& s) { return s.mouth.eats_plants; });
  }
  return false;
}

}  // namespace

std::optional<Label> label_of(std::span<const Species* const> kinds, std::string_view word) {
  const Asked asked{folded(word)};
  if (asked.word.size() < least_letters) return std::nullopt;
  Label label{.word = std::string(word)};
  for (const Species* kind : kinds) {
    const std::string* name = name_borne(*kind, asked);
    if (!name) continue;
    if (label.kinds.empty()) label.word = *name;
    label.kinds.push_back(kind);
  }
  std::vector<const Species*> tails;
  for (const Species* kind : kinds)
    if (has_tail(*kind, asked)) tails.push_back(kind);
  if (label.kinds.empty()) {
    if (tails.size() > Label::most_kinds) return std::nullopt;
    label.kinds = tails;
    add_same_label(kinds, tails, label);
  } else {
    add_same_label(kinds, std::vector(label.kinds), label);
    std::vector<const Species*> all = label.kinds;
    for (const Species* tail : tails) add_once(all, tail);
    if (all.size() <= Label::most_kinds) label.kinds = all;
  }
  if (label.kinds.size() < 2) return std::nullopt;
  if (label.kinds.size() > Label::most_kinds) label.kinds.resize(Label::most_kinds);
  return label;
}

std::vector<LabelTrait> traits_apart(std::span<const Species* const> kinds) {
  std::vector<LabelTrait> traits;
  if (kinds.size() < 2) return traits;
  for (int trait = 0; trait <= static_cast<int>(LabelTrait::plants); ++trait)
    if (trait_differs(kinds, static_cast<LabelTrait>(trait))) traits.push_back(static_cast<LabelTrait>(trait));
  return traits;
}

}  // namespace shoalwright
