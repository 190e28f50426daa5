// SPDX-License-Identifier: MIT
#include "share/json_text.h"

#include <nlohmann/json.hpp>

namespace shoalwright {

std::string json_string(std::string_view text) {
  return nlohmann::json(std::string(text)).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

}  // namespace shoalwright
