// SPDX-License-Identifier: MIT
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace shoalwright {

/// The JSON Pointers of all values inside `json` that are neither list nor object.
inline std::vector<std::string> leaves_of(const nlohmann::json& json) {
  std::vector<std::string> out;
  const nlohmann::json flat = json.flatten();
  for (const auto& [pointer, value] : flat.items())
    if (!value.is_null() || json.at(nlohmann::json::json_pointer(pointer)).is_null()) out.push_back(pointer);
  return out;
}

inline const nlohmann::json& at(const nlohmann::json& json, const std::string& pointer) {
  return json.at(nlohmann::json::json_pointer(pointer));
}

inline nlohmann::json with(nlohmann::json json, const std::string& pointer, nlohmann::json value) {
  json[nlohmann::json::json_pointer(pointer)] = std::move(value);
  return json;
}

}  // namespace shoalwright
