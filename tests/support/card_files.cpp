// SPDX-License-Identifier: MIT
#include "support/card_files.h"

#include "support/plan_files.h"

namespace shoalwright {

std::string card_texts() {
  const std::string species = "../catalog/species";
  std::string all = "[";
  for (const std::string& group : files_of(species, ""))
    for (const std::string& name : files_of(species + "/" + group, ".json"))
      all += (all.size() > 1 ? "," : "") + test_file(species + "/" + group + "/" + name);
  return all + "]";
}

}  // namespace shoalwright
