// SPDX-License-Identifier: MIT
// kh-low: carbonate hardness that the bacteria of the filter eat up between changes, so that pH may fall.
#include <algorithm>
#include <cmath>

#include "notebook/say.h"
#include "rules/changes.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "stocking/limits.h"
#include "water/change.h"

namespace shoalwright {

namespace {

constexpr double days_a_week = 7;

/// The saw-tooth of what is eaten up, settled; without changes it never settles, and what a year comes to stands for it.
struct Fall {
  double kh = 0;     ///< of the water that comes in
  double a_day = 0;  ///< eaten up
  double by = 0;     ///< before a change
  bool unchanged = false;
  double left() const { return std::max(kh - by, 0.0); }
  double weeks() const { return kh / (days_a_week * a_day); }  ///< until none is left without a change
};

std::optional<Fall> fall_of(const Facts& facts) {
  const std::optional<double>& kh = facts.water.kh_dkh.now;
  const std::optional<double>& drift = facts.load.kh_drift_dkh_week;
  if (facts.stock.empty() || !kh || !drift || !facts.plan.upkeep) return std::nullopt;
  const Upkeep& upkeep = *facts.plan.upkeep;
  Fall fall{.kh = *kh, .a_day = std::max(-*drift, 0.0) / days_a_week, .unchanged = upkeep.change_fraction == 0};
  fall.by = fall.a_day * unchanged_days;
  if (!fall.unchanged)
    fall.by = settled_peak({.rise_per_day = fall.a_day, .every_days = upkeep.every_days, .fraction = upkeep.change_fraction})
                  .value_or(fall.by);
  return fall;
}

// A card may ask for water that hardly holds its pH: with such a kind low KH is meant.
bool soft_kind(const Kept& kept) {
  const std::optional<Range> best = kept.species ? kept.species->water.kh_dkh.ideal : std::nullopt;
  return best && best->low < limits::soft_kind_kh_dkh;
}

// A kind whose best KH nobody gave may be one of them: with it low KH is not known to be wrong.
bool may_be_soft(const Kept& kept) { return !kept.species || !kept.species->water.kh_dkh.ideal; }

std::string say_weeks(double weeks) {
  constexpr double years = 52;
  if (weeks >= 2 * years) return amount(weeks / years, 0, "years");
  return weeks < 1.5 ? "a week" : amount(weeks, 0, "weeks");
}

std::string say_a_week(const Fall& fall) {
  const double a_week = fall.a_day * days_a_week;
  return a_week < 0.1 ? "less than 0.1 °dH" : amount(a_week, 1, "°dH");
}

// More change where that is enough, else water of a higher KH.
void mend(const Facts& facts, const Fall& fall, Finding& finding) {
  const double least = limits::kh_left_least_dkh;
  if (fall.kh > least && remedy_by_more_change(facts.plan, fall.a_day, fall.kh - least, finding)) return;
  const double enough = std::ceil(2 * (least + fall.by) - 1e-9) / 2;
  const std::optional<Range>& shared = facts.water.kh_dkh.tolerated;
  finding.remedy = "Test KH every week";
  if (fall.unchanged || !shared || enough > shared->high) return;
  finding.edits = aim_water(facts, "kh_dkh", enough);
  if (!finding.edits.empty()) finding.remedy = "Aim for KH " + amount(enough, 1, "");
}

void tell(const Facts& facts, const Fall& fall, bool meant, Finding& finding) {
  const bool gone = !(fall.left() > 0.05);
  const std::string left = gone ? "0" : amount(fall.left(), 1, "");
  const bool stays = fall.by < 0.05;
  if (stays)
    finding.text = "KH " + left + " hardly holds pH";
  else if (fall.unchanged)
    finding.text = gone ? "KH is gone in " + say_weeks(fall.weeks()) : "KH falls to " + left + " in a year";
  else
    finding.text = "KH falls to " + left + " between changes";
  finding.why = stays ? "New water brings KH " + amount(fall.kh, 1, "")
                      : "Turning ammonia into nitrate takes " + say_a_week(fall) + " of KH a week; " +
                            (fall.unchanged ? "there were " : "new water brings ") + amount(fall.kh, 1, "°dH") +
                            (fall.unchanged ? " and no water is changed" : "");
  if (fall.a_day > 0 && fall.kh > 0) finding.why += ". Without a change all of it is gone in " + say_weeks(fall.weeks());
  finding.why += ". Under " + amount(limits::kh_left_least_dkh, 1, "°dH") + " pH may fall fast.";
  if (meant)
    finding.remedy = "Test KH every week";
  else
    mend(facts, fall, finding);
}

}  // namespace

void kh_low(const Facts& facts, Found& out) {
  const std::optional<Fall> fall = fall_of(facts);
  if (!fall) return;
  // Not held at 0, so that more animals are always worse.
  const double short_by = rounded(limits::kh_left_least_dkh - (fall->kh - fall->by));
  std::optional<Severity> severity = grade(short_by, limits::kh_left_short);
  if (!severity) return;
  const bool meant = std::any_of(facts.stock.begin(), facts.stock.end(), soft_kind);
  if (meant || std::any_of(facts.stock.begin(), facts.stock.end(), may_be_soft)) severity = at_most(*severity, Severity::watch);
  // Where new water alone has too little, more animals are not what makes it so.
  const bool by_source = fall->kh < limits::kh_left_least_dkh - limits::kh_left_short.strain;
  out.add("kh-low", *severity, "", by_source ? 0 : short_by, [&](Finding& finding) { tell(facts, *fall, meant, finding); });
}

}  // namespace shoalwright
