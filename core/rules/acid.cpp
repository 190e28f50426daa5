// SPDX-License-Identifier: MIT
// acid: a pH that is aimed at and that only acid would bring at its KH. The special case of water-unreachable, which keeps quiet
// about it: acid is never the remedy, less KH is.
#include <cmath>

#include "notebook/say.h"
#include "rules/aimed_ph.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

constexpr double kh_step_dkh = 0.5;  // no kit reads finer

void tell(const Facts& facts, const AimedPh& aimed, Finding& finding) {
  const double ceiling = co2_ceiling_mg_l(facts.plan);
  const std::string kh = amount(aimed.water.kh_dkh, 1, ""), ph = amount(aimed.ph, 1, "");
  finding.text = "pH " + ph + " at KH " + kh + " wants acid";
  finding.why = "pH follows from KH and CO2: KH " + kh + " with " + amount(ceiling, 0, "mg/L") +
                " of CO2, as much as is allowed, has pH " + amount(aimed.reached.low, 1, "") +
                ". Acid is eaten up by KH first and then lets pH fall at once.";
  double lower = std::floor(kh_for_ph_dkh(aimed, ceiling) / kh_step_dkh + 1e-9) * kh_step_dkh;
  const std::optional<Range>& shared = facts.water.kh_dkh.tolerated;
  if (!(lower > 0) || (shared && lower < shared->low)) {
    finding.remedy = "Choose fish for the pH that this KH gives";
    return;
  }
  if (shared) lower = std::fmin(lower, shared->high);
  finding.edits = aim_water(facts, "kh_dkh", lower);
  finding.remedy = "Mix with RO water to KH " + amount(lower, 1, "") + " first, never add acid";
}

}  // namespace

void acid(const Facts& facts, Found& out) {
  const std::optional<double>& kh = facts.water.kh_dkh.now;
  if (!kh || !(*kh >= limits::acid_least_kh_dkh)) return;
  const std::optional<AimedPh> aimed = missed_ph_of(facts);
  if (!aimed || !wants_acid(*aimed)) return;
  const double under = rounded(aimed->under());
  out.add("acid", *grade(under, limits::acid_ph), "", under, [&](Finding& finding) { tell(facts, *aimed, finding); });
}

}  // namespace shoalwright
