// SPDX-License-Identifier: MIT
#include "share/detail/section.h"

#include <algorithm>
#include <cmath>

namespace shoalwright {

namespace {

const Json nothing{.kind = Json::Kind::object};

}  // namespace

void Reading::fail(const std::string& place, const std::string& expected, const Json* found) {
  if (error) return;
  const std::string where = place.empty() ? "" : " at " + place;
  error = Error{.place = place,
                .sentence = "Expected " + expected + where + ", found " + (found ? describe(*found) : "nothing") + "."};
}

Section::Section(Reading& reading, const Json& object, std::string place)
    : reading_(reading), object_(&object), place_(std::move(place)) {
  if (object.kind == Json::Kind::object) return;
  reading_.fail(place_, "an object", object_);
  object_ = &nothing;
}

const Json* Section::member(std::string_view key) {
  asked_.push_back(key);
  return find(*object_, key);
}

bool Section::number(std::string_view key, double& value) {
  const Json* json = member(key);
  if (json == nullptr) return false;
  if (json->kind == Json::Kind::number)
    value = json->number;
  else
    reading_.fail(at(key), "a number", json);
  return true;
}

bool Section::number(std::string_view key, std::optional<double>& value) {
  const Json* json = member(key);
  if (json == nullptr) return false;
  value.reset();
  if (json->kind == Json::Kind::number)
    value = json->number;
  else if (json->kind != Json::Kind::null)
    reading_.fail(at(key), "a number or null", json);
  return true;
}

bool Section::whole(std::string_view key, int& value, int low, int high) {
  const Json* json = member(key);
  if (json == nullptr) return false;
  const bool fits =
      json->kind == Json::Kind::number && json->number >= low && json->number <= high && std::floor(json->number) == json->number;
  if (fits)
    value = static_cast<int>(json->number);
  else
    reading_.fail(at(key), "a whole number from " + std::to_string(low) + " to " + std::to_string(high), json);
  return true;
}

bool Section::whole(std::string_view key, std::optional<int>& value, int low, int high) {
  const Json* json = member(key);
  if (json == nullptr) return false;
  value.reset();
  if (json->kind == Json::Kind::null) return true;
  int number = 0;
  whole(key, number, low, high);
  value = number;
  return true;
}

bool Section::flag(std::string_view key, bool& value) {
  const Json* json = member(key);
  if (json == nullptr) return false;
  if (json->kind == Json::Kind::boolean)
    value = json->boolean;
  else
    reading_.fail(at(key), "true or false", json);
  return true;
}

bool Section::flag(std::string_view key, std::optional<bool>& value) {
  const Json* json = member(key);
  if (json == nullptr) return false;
  value.reset();
  if (json->kind == Json::Kind::boolean)
    value = json->boolean;
  else if (json->kind != Json::Kind::null)
    reading_.fail(at(key), "true, false or null", json);
  return true;
}

bool Section::text(std::string_view key, std::string& value) {
  const Json* json = member(key);
  if (json == nullptr) return false;
  value.clear();
  if (json->kind == Json::Kind::text)
    value = json->text;
  else if (json->kind != Json::Kind::null)
    reading_.fail(at(key), "a text", json);
  return true;
}

bool Section::texts(std::string_view key, std::vector<std::string>& values) {
  const std::vector<Json>* items = list(key);
  if (items == nullptr) return find(*object_, key) != nullptr;
  values.clear();
  for (std::size_t i = 0; i < items->size(); ++i) {
    const Json& item = (*items)[i];
    if (item.kind != Json::Kind::text) reading_.fail(at(key) + '/' + std::to_string(i), "a text", &item);
    values.push_back(item.text);
  }
  return true;
}

const std::vector<Json>* Section::list(std::string_view key) {
  const Json* json = member(key);
  if (json == nullptr || json->kind == Json::Kind::null) return nullptr;
  if (json->kind == Json::Kind::list) return &json->items;
  reading_.fail(at(key), "a list", json);
  return nullptr;
}

void Section::missing(std::string_view key, const std::string& expected) { reading_.fail(at(key), expected, nullptr); }

std::string Section::rest() const {
  Json others{.kind = Json::Kind::object};
  for (const JsonMember& member : object_->members)
    if (std::find(asked_.begin(), asked_.end(), member.key) == asked_.end()) others.members.push_back(member);
  return others.members.empty() ? "" : dump(others);
}

bool Section::word(std::string_view key, const std::string_view* words, std::size_t count, std::size_t& index) {
  const Json* json = member(key);
  if (json == nullptr) return false;
  for (std::size_t i = 0; i < count; ++i)
    if (json->kind == Json::Kind::text && json->text == words[i]) {
      index = i;
      return true;
    }
  std::string expected = "one of";
  for (std::size_t i = 0; i < count; ++i) expected += (i == 0 ? " \"" : ", \"") + std::string(words[i]) + '"';
  reading_.fail(at(key), expected, json);
  return true;
}

}  // namespace shoalwright
