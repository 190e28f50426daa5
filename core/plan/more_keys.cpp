// SPDX-License-Identifier: MIT
#include "plan/more_keys.h"

#include <algorithm>
#include <string>

#include "units/json.h"
#include "units/shortest.h"

namespace shoalwright {

namespace {

constexpr std::string_view private_key = "private", chloride_key = "chloride_mg_l";

Json keys_of(const std::string& others) {
  Json keys;
  keys.kind = Json::Kind::object;
  if (others.empty()) return keys;
  if (Result<Json> read = parse_json(others); read && read->kind == Json::Kind::object) keys = std::move(*read);
  return keys;
}

/// Puts a key among the others, or takes it away where there is no value.
void put(std::string& others, std::string_view key, const std::optional<Json>& value) {
  Json keys = keys_of(others);
  std::erase_if(keys.members, [&](const JsonMember& member) { return member.key == key; });
  if (value) keys.members.push_back({std::string(key), *value});
  others = keys.members.empty() ? "" : dump(keys);
}

}  // namespace

bool is_private(const SourceWater& source) {
  if (source.other_keys.empty()) return false;
  const Json keys = keys_of(source.other_keys);
  const Json* value = find(keys, private_key);
  return value != nullptr && value->kind == Json::Kind::boolean && value->boolean;
}

void set_private(SourceWater& source, bool own) {
  Json yes;
  yes.kind = Json::Kind::boolean;
  yes.boolean = true;
  put(source.other_keys, private_key, own ? std::optional(yes) : std::nullopt);
}

std::optional<double> chloride_mg_l(const Measured& measured) {
  if (measured.other_keys.empty()) return std::nullopt;
  const Json keys = keys_of(measured.other_keys);
  const Json* value = find(keys, chloride_key);
  if (value == nullptr || value->kind != Json::Kind::number || !(value->number >= 0)) return std::nullopt;
  return value->number;
}

void set_chloride_mg_l(Measured& measured, std::optional<double> chloride_mg_l) {
  std::optional<Json> value;
  if (chloride_mg_l) {
    value.emplace();
    value->kind = Json::Kind::number;
    value->number = *chloride_mg_l;
    value->text = shortest(*chloride_mg_l);
  }
  put(measured.other_keys, chloride_key, value);
}

std::string more_key(const Plan& plan, std::string_view key) {
  if (plan.other_keys.empty()) return "";
  const Json keys = keys_of(plan.other_keys);
  const Json* value = find(keys, key);
  return value ? dump(*value) : "";
}

void set_more_key(Plan& plan, std::string_view key, std::string_view value_json) {
  Result<Json> value = parse_json(value_json);
  put(plan.other_keys, key, value ? std::optional(std::move(value.value())) : std::nullopt);
}

}  // namespace shoalwright
