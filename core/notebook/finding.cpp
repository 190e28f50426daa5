// SPDX-License-Identifier: MIT
#include "notebook/finding.h"

namespace shoalwright {

const char* name_of(Severity severity) {
  switch (severity) {
    case Severity::harm: return "harm";
    case Severity::strain: return "strain";
    case Severity::watch: return "watch";
    case Severity::note: return "note";
  }
  return "";
}

const char* name_of(Evidence evidence) {
  switch (evidence) {
    case Evidence::published: return "published";
    case Evidence::common_practice: return "common-practice";
    case Evidence::from_memory: return "from-memory";
    case Evidence::keeper: return "keeper";
  }
  return "";
}

}  // namespace shoalwright
