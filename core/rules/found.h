// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "notebook/finding.h"

namespace shoalwright {

/// A harm or a strain without its words: enough to compare two states of a plan.
struct Raised {
  std::string_view rule;     ///< id
  std::string_view subject;  ///< what the rule speaks of: a species id, an edge of the water; empty when it is the tank's
  Severity severity = Severity::harm;
  double amount = 0;  ///< the quantity that was judged, larger is worse
};

/// Whether a harm or strain is among those of another state of the plan, as grave and as much. `Graded` has what Raised has.
template <class Graded>
bool known_before(const Graded& one, const std::vector<Graded>& before) {
  constexpr double slack = 1e-9;  // sums in another order
  return std::any_of(before.begin(), before.end(), [&](const Graded& b) {
    return b.rule == one.rule && b.subject == one.subject && b.severity <= one.severity && b.amount >= one.amount - slack;
  });
}

/// Where rules put what they find. Three ways of keeping it: whole findings with all their words; the same without the remedies
/// that need a search, which is what a frame of a drag can afford; or only how grave the harms and strains are, for a search over
/// many counts.
class Found {
 public:
  enum class Keep { findings, findings_at_once, grades };

  explicit Found(Keep keep) : keep_(keep) {}

  bool keeps_findings() const { return keep_ != Keep::grades; }
  bool searches_remedies() const { return keep_ == Keep::findings; }

  /// `tell(Finding&)` fills in species, words and edits; it is called only where findings are kept. `rule` must be a literal,
  /// `subject` must outlive this.
  template <class Tell>
  void add(std::string_view rule, Severity severity, std::string_view subject, double amount, Tell tell) {
    if (keep_ == Keep::grades) {
      if (severity == Severity::harm || severity == Severity::strain) raised_.push_back({rule, subject, severity, amount});
      return;
    }
    Finding finding;
    finding.rule = rule;
    finding.severity = severity;
    tell(finding);
    findings_.push_back(std::move(finding));
  }

  const std::vector<Raised>& raised() const { return raised_; }
  std::vector<Finding> take_findings() { return std::move(findings_); }

 private:
  Keep keep_;
  std::vector<Raised> raised_;
  std::vector<Finding> findings_;
};

}  // namespace shoalwright
