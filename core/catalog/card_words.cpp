// SPDX-License-Identifier: MIT
#include "catalog/card_words.h"

#include "catalog/detail/words.h"

namespace shoalwright {

namespace {

template <class E, std::size_t N>
std::string_view word_in(const Words<E, N>& words, E value) {
  for (const auto& [word, one] : words)
    if (one == value) return word;
  return {};
}

template <class E, std::size_t N>
std::vector<std::string_view> all_of(const Words<E, N>& words) {
  std::vector<std::string_view> list;
  for (const auto& row : words) list.push_back(row.first);
  return list;
}

template <std::size_t N>
std::vector<std::string_view> all_of(const std::array<std::string_view, N>& words) {
  return {words.begin(), words.end()};
}

}  // namespace

std::string_view word_of(Body value) { return word_in(body_words, value); }
std::string_view word_of(Style value) { return word_in(style_words, value); }
std::string_view word_of(GroupKind value) { return word_in(group_kind_words, value); }
std::string_view word_of(Jumps value) { return word_in(jumps_words, value); }
std::string_view word_of(Toward value) { return word_in(toward_words, value); }
std::string_view word_of(Salinity value) { return word_in(salinity_words, value); }

std::vector<std::string_view> words_for(std::string_view path) {
  if (path == "kind") return all_of(kind_list);
  if (path == "group") return all_of(group_list);
  if (path == "size.body") return all_of(body_words);
  if (path == "water.salinity") return all_of(salinity_words);
  if (path == "water.hardiness") return all_of(hardiness_list);
  if (path == "life.style") return all_of(style_words);
  if (path == "life.group.kind") return all_of(group_kind_words);
  if (path == "life.group.added") return all_of(added_list);
  if (path == "life.sexes.told_apart") return all_of(told_apart_list);
  if (path == "life.active") return all_of(active_list);
  if (path == "life.current") return all_of(current_list);
  if (path == "life.cover") return all_of(cover_list);
  if (path == "life.jumps") return all_of(jumps_words);
  if (path == "temper.to_own_kind" || path == "temper.to_others") return all_of(toward_words);
  if (path == "temper.nips_fins") return all_of(nips_list);
  if (path == "temper.fins") return all_of(fin_length_list);
  if (path == "temper.feeding_pace") return all_of(pace_list);
  if (path == "mouth.eater") return all_of(eater_list);
  if (path == "mouth.eats_shrimp") return all_of(eats_shrimp_list);
  if (path == "mouth.eats_plants") return all_of(eats_plants_list);
  if (path == "needs.substrate") return all_of(substrate_list);
  if (path == "diet.kind") return all_of(diet_list);
  if (path == "diet.foods") return all_of(food_list);
  if (path == "diet.feeds_at") return all_of(feeds_at_list);
  if (path == "breeding.mode") return all_of(breeding_mode_list);
  if (path == "breeding.first_food") return all_of(first_food_list);
  if (path == "look.form") return all_of(form_list);
  if (path == "look.marks") return all_of(mark_list);
  if (path == "look.fins") return all_of(fin_shape_list);
  return {};
}

}  // namespace shoalwright
