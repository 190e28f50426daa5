// SPDX-License-Identifier: MIT
#include "share/detail/own_species.h"

#include "catalog/read.h"

namespace shoalwright {

Result<Species> read_own_species(const Json& json, const std::string& place) {
  if (json.kind != Json::Kind::object)
    return Error{.place = place, .sentence = "Expected a species at " + place + ", found " + describe(json) + "."};
  Result<Species> species = read_species(json);
  if (!species) return Error{.place = place + species.error().place, .sentence = species.error().sentence};
  return species;
}

}  // namespace shoalwright
