// SPDX-License-Identifier: MIT
#include "share/detail/own_species.h"

namespace shoalwright {

Result<Species> read_own_species(const Json& json, const std::string& place) {
  const Json* id = json.kind == Json::Kind::object ? find(json, "id") : nullptr;
  if (id == nullptr || id->kind != Json::Kind::text || id->text.empty())
    return Error{.place = place + "/id", .sentence = "Expected the id of the species at " + place + "/id."};
  Species species;
  species.id = id->text;
  species.whole_json = dump(json);
  return species;
}

}  // namespace shoalwright
