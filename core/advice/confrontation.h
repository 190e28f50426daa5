// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "notebook/finding.h"
#include "stocking/stock.h"

namespace shoalwright {

/// Two kinds that a finding is about, side by side: the one that does it and the one that suffers it, total lengths in cm.
struct Confrontation {
  const Species* doer = nullptr;
  const Species* other = nullptr;
  /// Where the one swallows the other: how far its mouth opens, the longest body of that form that it takes, and how deep the
  /// other's body is, cm (stocking/swallow.h has the sources).
  std::optional<double> opens_cm, takes_cm, deep_cm;
};

/// Of several pairs the one of which the mouth is largest for the other. Empty for findings about one kind or about none, and
/// where what they do to each other has nothing to do with their bodies. The stock must outlive the answer.
std::optional<Confrontation> confrontation_of(const Finding& finding, const std::vector<Kept>& stock);

}  // namespace shoalwright
