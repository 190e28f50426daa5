// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <vector>

namespace shoalwright {

/// `harm`: animals will be hurt, change it. `strain`: works only if something changes or with constant care.
/// `watch`: fine now, keep an eye on it. `note`: good to know. Worst first.
enum class Severity { harm, strain, watch, note };

/// How sure a value or a rule is. `published` names its source; `keeper` is the keeper's own value.
enum class Evidence { published, common_practice, from_memory, keeper };

/// One operation of a JSON Patch (RFC 6902) on the canonical plan. `value_json` is JSON text, empty for `remove`.
struct PatchStep {
  std::string op;
  std::string path;
  std::string value_json;
  bool operator==(const PatchStep&) const = default;
};

/// One thing to know about a plan: poor husbandry is an ordinary result, not an error.
struct Finding {
  std::string rule;  ///< id, FORMATS section 4; never renamed once landed
  Severity severity = Severity::note;
  std::vector<std::string>
      species;         ///< ids of the groups concerned, by id, so that the order of lines never shows; empty: the tank's
  std::string text;    ///< what: a fact in a few words, metric
  std::string why;     ///< the mechanism with both numbers, ours and theirs
  std::string remedy;  ///< what to do, a verb and its amount; empty when nothing mends it
  std::vector<PatchStep> edits;  ///< the remedy as a patch of the canonical plan; empty when no edit can mend
  Evidence evidence = Evidence::common_practice;
  std::string source;  ///< key of catalog/sources.json when published, else empty
  bool operator==(const Finding&) const = default;
};

/// "harm", "strain", "watch", "note".
const char* name_of(Severity severity);
/// "published", "common-practice", "from-memory", "keeper".
const char* name_of(Evidence evidence);

}  // namespace shoalwright
