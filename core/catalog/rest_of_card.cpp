// SPDX-License-Identifier: MIT
#include "catalog/rest_of_card.h"

#include "units/json.h"
#include "units/packed_json.h"

namespace shoalwright {

namespace {

// The card was checked when it was read; what is of another type is left out all the same.

const Json* member(const Json* object, std::string_view key) { return object != nullptr ? find(*object, key) : nullptr; }

std::string text(const Json* object, std::string_view key) {
  const Json* value = member(object, key);
  return value != nullptr && value->kind == Json::Kind::text ? value->text : "";
}

std::optional<double> number(const Json* object, std::string_view key) {
  const Json* value = member(object, key);
  if (value == nullptr || value->kind != Json::Kind::number) return std::nullopt;
  return value->number;
}

std::optional<Range> range(const Json* object, std::string_view key) {
  const Json* value = member(object, key);
  if (value == nullptr || value->kind != Json::Kind::list || value->items.size() != 2) return std::nullopt;
  return Range{value->items[0].number, value->items[1].number};
}

std::vector<std::string> texts(const Json* object, std::string_view key) {
  std::vector<std::string> all;
  const Json* list = member(object, key);
  if (list == nullptr || list->kind != Json::Kind::list) return all;
  for (const Json& one : list->items) all.push_back(one.text);
  return all;
}

RestOfCard read(const Json& card) {
  RestOfCard rest;
  const Json* breeding = find(card, "breeding");
  const Json *water = member(breeding, "water"), *hatch = member(breeding, "hatch");
  rest.breeding = {.mode = text(breeding, "mode"),
                   .first_food = text(breeding, "first_food"),
                   .note = text(breeding, "note"),
                   .temperature_c = range(water, "temperature_c"),
                   .ph = range(water, "ph"),
                   .gh_dgh = range(water, "gh_dgh"),
                   .hatch_hours = range(hatch, "hours"),
                   .hatch_at_c = number(hatch, "at_c"),
                   .gestation_days = range(breeding, "gestation_days"),
                   .free_swimming_days = range(breeding, "free_swimming_days"),
                   .brood = range(breeding, "brood")};
  const Json* kept_in = find(card, "water");
  rest.published_temperature_c = range(member(kept_in, "temperature_c"), "published");
  rest.published_ph = range(member(kept_in, "ph"), "published");
  const Json* look = find(card, "look");
  rest.male_colours = texts(member(look, "male"), "colours");
  rest.female_colours = texts(member(look, "female"), "colours");
  return rest;
}

}  // namespace

Json whole_card(const Species& species, std::string_view packed) {
  if (!species.whole_json.empty()) {
    Result<Json> own = parse_json(species.whole_json);
    return own ? std::move(own.value()) : Json{};
  }
  if (packed.empty()) return {};
  Json cards = unpack_json(packed);
  for (Json& card : cards.items)
    if (text(&card, "id") == species.id) return std::move(card);
  return {};
}

RestOfCard rest_of_card(const Species& species, std::string_view packed) { return read(whole_card(species, packed)); }

}  // namespace shoalwright
