// SPDX-License-Identifier: MIT
#include "catalog/card_edit.h"

#include <algorithm>

#include "catalog/fold.h"
#include "catalog/read.h"
#include "catalog/rest_of_card.h"
#include "units/shortest.h"

namespace shoalwright {

namespace {

using Kind = Json::Kind;

constexpr const char* sample =
    R"({"kind":"fish","group":"others","aliases":[],"name":{"status":"identity-uncertain","synonyms":[],)"
    R"("misapplied":[],"common":[],"sold_as":[]},)"
    R"("size":{"body":"fusiform"},"water":{"salinity":"fresh"},)"
    R"("life":{"style":"calm_mid","depth":{"surface":0.2,"mid":0.6,"bottom":0.2},"group":{"kind":"shoal","least":6,"good":8},)"
    R"("active":"day","current":"gentle","cover":"some","jumps":"rarely"},)"
    R"("temper":{"to_own_kind":"peaceful","to_others":"peaceful","nips_fins":"no","fins":"short","feeding_pace":"usual"},)"
    R"("mouth":{"eater":"small-mouth","eats_shrimp":"young","eats_plants":"no"},"needs":{"substrate":"any"},)"
    R"("diet":{"kind":"omnivore","foods":["flake"],"feeds_at":"mid"},"legal":[],)"
    R"("look":{"form":"rasbora","colours":["#6f7a5a","#b9bf9c","#ece9d8","#3a3f38"],"marks":["none"],"fins":"plain"},)"
    R"("evidence":{"*":{"class":"keeper"}}})";

Json text_json(std::string text) { return {.kind = Kind::text, .text = std::move(text)}; }
Json number_json(double value) { return {.kind = Kind::number, .number = value, .text = shortest(value)}; }
Json object_json() { return {.kind = Kind::object}; }

Json* member(Json& object, std::string_view key) {
  for (JsonMember& one : object.members)
    if (one.key == key) return &one.value;
  return nullptr;
}

void erase(Json& object, std::string_view key) {
  std::erase_if(object.members, [&](const JsonMember& one) { return one.key == key; });
}

void put(Json& object, std::string_view key, Json value) {
  if (Json* there = member(object, key))
    *there = std::move(value);
  else
    object.members.push_back({std::string(key), std::move(value)});
}

std::vector<std::string_view> parts_of(std::string_view path, char between) {
  std::vector<std::string_view> parts;
  while (!path.empty()) {
    const std::size_t end = std::min(path.find(between), path.size());
    parts.push_back(path.substr(0, end));
    path.remove_prefix(std::min(end + 1, path.size()));
  }
  return parts;
}

const Json* at(const Json& card, std::string_view path, Kind kind) {
  const Json* here = &card;
  for (const std::string_view part : parts_of(path, '.'))
    if (here != nullptr) here = here->kind == Kind::object ? find(*here, part) : nullptr;
  return here != nullptr && here->kind == kind ? here : nullptr;
}

/// The class that speaks for a path now: the longest that fits.
std::string class_of(const Json& evidence, std::string_view path) {
  std::string best;
  std::size_t length = 0;
  for (const JsonMember& one : evidence.members) {
    const bool rest = one.key == "*",
               fits = path.substr(0, one.key.size()) == one.key && (path.size() == one.key.size() || path[one.key.size()] == '.');
    const std::size_t of = rest ? 0 : one.key.size();
    if (!(rest || fits) || (!best.empty() && of < length)) continue;
    length = of;
    if (const Json* word = find(one.value, "class")) best = word->text;
  }
  return best;
}

void make_keepers(Json& card, std::string_view path) {
  Json* evidence = member(card, "evidence");
  if (evidence == nullptr) return;  // an entry without evidence is the keeper's own
  if (class_of(*evidence, path) == "keeper") return;
  Json entry = object_json();
  put(entry, "class", text_json("keeper"));
  put(*evidence, path, std::move(entry));
}

/// Puts a value at a path, or takes it out where `value` is null; objects on the way are made and, left empty, taken out.
void set(Json& card, std::string_view path, Json value) {
  const std::vector<std::string_view> parts = parts_of(path, '.');
  std::vector<Json*> way{&card};
  for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
    Json* next = member(*way.back(), parts[i]);
    if (next == nullptr || next->kind != Kind::object) {
      if (value.kind == Kind::null) return;
      put(*way.back(), parts[i], object_json());
      next = member(*way.back(), parts[i]);
    }
    way.push_back(next);
  }
  const Json* now = member(*way.back(), parts.back());
  if (now == nullptr ? value.kind == Kind::null : value.kind != Kind::null && dump(*now) == dump(value)) return;
  if (value.kind == Kind::null)
    erase(*way.back(), parts.back());
  else
    put(*way.back(), parts.back(), std::move(value));
  for (std::size_t i = way.size(); i-- > 1;)
    if (way[i]->members.empty()) erase(*way[i - 1], parts[i - 1]);
  make_keepers(card, path);
}

/// Numbers of the packed catalogue have no text yet.
void write_numbers(Json& json) {
  if (json.kind == Kind::number && json.text.empty()) json.text = shortest(json.number);
  for (Json& item : json.items) write_numbers(item);
  for (JsonMember& one : json.members) write_numbers(one.value);
}

/// What stands at a JSON Pointer of objects alone in a card that is right.
const Json* right_value(const Json& card, const std::vector<std::string_view>& parts) {
  const Json* here = &card;
  for (const std::string_view part : parts)
    if (here != nullptr) here = find(*here, part);
  return here;
}

}  // namespace

Json new_card() { return parse_json(sample).value(); }

Json card_to_edit(const Species& species, std::string_view packed) {
  Json card = whole_card(species, packed);
  if (card.kind != Kind::object) return new_card();
  write_numbers(card);
  erase(card, "code");
  return card;
}

Json own_copy(const Species& species, const std::vector<Species>& own, std::string_view packed) {
  Json card = card_to_edit(species, packed);
  put(card, "id", text_json(own_id(display_name(species), own)));
  put(card, "aliases", Json{.kind = Kind::list});
  if (Json* name = member(card, "name"))
    for (const char* key : {"synonyms", "misapplied", "sold_as"}) put(*name, key, Json{.kind = Kind::list});
  return card;
}

std::string own_id(std::string_view name, const std::vector<Species>& own) {
  std::string slug;
  for (const char c : folded(name)) {
    const bool kept = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    if (kept)
      slug += c;
    else if (!slug.empty() && slug.back() != '-')
      slug += '-';
  }
  while (!slug.empty() && slug.back() == '-') slug.pop_back();
  const std::string plain = "own--" + (slug.empty() ? "kind" : slug);
  std::string id = plain;
  const auto taken = [&] { return std::any_of(own.begin(), own.end(), [&](const Species& one) { return one.id == id; }); };
  for (int n = 2; taken(); ++n) id = plain + "-" + std::to_string(n);
  return id;
}

std::optional<double> card_number(const Json& card, std::string_view path) {
  const Json* value = at(card, path, Kind::number);
  return value != nullptr ? std::optional(value->number) : std::nullopt;
}

std::string card_text(const Json& card, std::string_view path) {
  const Json* value = at(card, path, Kind::text);
  return value != nullptr ? value->text : "";
}

bool card_flag(const Json& card, std::string_view path) {
  const Json* value = at(card, path, Kind::boolean);
  return value != nullptr && value->boolean;
}

std::vector<std::string> card_texts(const Json& card, std::string_view path) {
  std::vector<std::string> texts;
  if (const Json* list = at(card, path, Kind::list))
    for (const Json& item : list->items) texts.push_back(item.text);
  return texts;
}

std::pair<std::optional<double>, std::optional<double>> card_range(const Json& card, std::string_view path) {
  const Json* list = at(card, path, Kind::list);
  const auto end = [&](std::size_t i) {
    return list != nullptr && i < list->items.size() && list->items[i].kind == Kind::number ? std::optional(list->items[i].number)
                                                                                            : std::nullopt;
  };
  return {end(0), end(1)};
}

std::string card_name(const Json& card) {
  const Json* names = at(card, "name.common", Kind::list);
  return names == nullptr || names->items.empty() ? "" : card_text(names->items.front(), "text");
}

void set_card_number(Json& card, std::string_view path, std::optional<double> value) {
  set(card, path, value ? number_json(*value) : Json{});
}

void set_card_text(Json& card, std::string_view path, const std::string& value) {
  set(card, path, value.empty() ? Json{} : text_json(value));
}

void set_card_flag(Json& card, std::string_view path, bool value) {
  if (card_flag(card, path) != value) set(card, path, {.kind = Kind::boolean, .boolean = value});
}

void set_card_texts(Json& card, std::string_view path, const std::vector<std::string>& values) {
  Json list{.kind = Kind::list};
  for (const std::string& value : values) list.items.push_back(text_json(value));
  set(card, path, values.empty() ? Json{} : std::move(list));
}

void set_card_range(Json& card, std::string_view path, std::optional<double> low, std::optional<double> high) {
  Json list{.kind = Kind::list};
  for (const std::optional<double>& end : {low, high}) list.items.push_back(end ? number_json(*end) : Json{});
  set(card, path, low || high ? std::move(list) : Json{});
}

void set_card_name(Json& card, const std::string& name) {
  Json names{.kind = Kind::list};
  if (const Json* now = at(card, "name.common", Kind::list)) names = *now;
  if (!names.items.empty()) names.items.erase(names.items.begin());
  if (!name.empty()) {
    Json first = object_json();
    put(first, "text", text_json(name));
    put(first, "lang", text_json("en"));
    names.items.insert(names.items.begin(), std::move(first));
  }
  set(card, "name.common", std::move(names));
}

std::vector<Error> card_errors(const Json& card) {
  constexpr int most = 40;
  std::vector<Error> errors;
  Json mended = card;
  Json right = new_card();
  set_card_name(right, "name");
  set_card_number(right, "size.adult_tl_cm", 5);
  put(right, "id", text_json("own--name"));
  for (int i = 0; i < most; ++i) {
    const Result<Species> species = read_species(mended);
    if (species) break;
    const std::string& place = species.error().place;
    const bool again = std::any_of(errors.begin(), errors.end(), [&](const Error& one) { return one.place == place; });
    if (again) break;
    errors.push_back(species.error());
    // The whole field is set right: what is wrong inside a list is the list's.
    std::vector<std::string_view> parts = parts_of(std::string_view(place).substr(place.empty() ? 0 : 1), '/');
    Json* here = &mended;
    std::size_t deep = 0;
    while (deep + 1 < parts.size() && member(*here, parts[deep]) != nullptr && member(*here, parts[deep])->kind == Kind::object)
      here = member(*here, parts[deep++]);
    if (parts.empty()) break;
    const std::vector<std::string_view> way(parts.begin(), parts.begin() + static_cast<std::ptrdiff_t>(deep) + 1);
    const Json* value = right_value(right, way);
    if (value != nullptr)
      put(*here, way.back(), *value);
    else
      erase(*here, way.back());
  }
  return errors;
}

std::string expectation_of(const Error& error) {
  const std::size_t at = error.sentence.find(error.place.empty() ? " it " : error.place + " ");
  if (at == std::string::npos) return error.sentence;
  std::string words = error.sentence.substr(at + (error.place.empty() ? 4 : error.place.size() + 1));
  if (!words.empty() && words.back() == '.') words.pop_back();
  return words;
}

}  // namespace shoalwright
