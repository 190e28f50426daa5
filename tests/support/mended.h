// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include "share/patch.h"
#include "support/builders.h"

namespace shoalwright {

/// The plan after the remedy of the gravest finding of a rule. Made-up cards have no JSON to travel in: they are handed on.
inline Plan mended(const Plan& plan, const Catalog& catalog, std::string_view rule) {
  const Assessment assessment = assess(plan, catalog);
  const Finding* finding = finding_of(assessment, rule);
  EXPECT_TRUE(finding) << rule << " has nothing to mend";
  if (!finding) return plan;
  EXPECT_FALSE(finding->edits.empty()) << finding->text;
  Plan travels = plan;
  travels.own_species.clear();
  Result<Plan> after = apply_patch(travels, finding->edits);
  EXPECT_TRUE(after) << after.error().sentence;
  if (!after) return plan;
  after.value().own_species = plan.own_species;
  return after.value();
}

}  // namespace shoalwright
