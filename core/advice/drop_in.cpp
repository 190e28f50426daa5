// SPDX-License-Identifier: MIT
#include "advice/drop_in.h"

#include "assess/reckoned.h"
#include "edit/command.h"

namespace shoalwright {

std::vector<Finding> raised_by_dropping(const Plan& plan, const Catalog& catalog, const Species& species, int count,
                                        const Assessment& now, BodyRooms known, Remedies remedies) {
  std::vector<Finding> raised;
  if (!(count >= 1)) return raised;
  const Plan with = apply(plan, AddGroup{.species = species.id, .count = count}, catalog);
  for (Finding& finding : assess(with, catalog, known, remedies).findings)
    if (!known_before(finding, now.findings)) raised.push_back(std::move(finding));
  return raised;
}

}  // namespace shoalwright
