// SPDX-License-Identifier: MIT
// water-temperature, water-ph, water-gh, water-kh: no shared window, or the water outside it, judged by how far.
#include <algorithm>
#include <cmath>

#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

enum class Kind { temperature, ph, gh, kh };

struct Quantity {
  Kind kind;
  const char* rule;
  const char* key;     ///< in /water, /source and the species card
  const char* field;   ///< of the species card, for its evidence
  const char* name;    ///< as a sentence begins
  const char* inside;  ///< within a sentence
  const char* unit;
  Window Windows::*window;
  Need Species::WaterNeeds::*need;
};

constexpr Quantity temperature{Kind::temperature,
                               "water-temperature",
                               "temperature_c",
                               "water.temperature_c.tolerated",
                               "Temperature",
                               "temperature",
                               "°C",
                               &Windows::temperature_c,
                               &Species::WaterNeeds::temperature_c};
constexpr Quantity ph{Kind::ph, "water-ph", "ph", "water.ph.tolerated", "pH", "pH", "", &Windows::ph, &Species::WaterNeeds::ph};
constexpr Quantity gh{Kind::gh, "water-gh", "gh_dgh",         "water.gh_dgh.tolerated",    "GH",
                      "GH",     "°dH",      &Windows::gh_dgh, &Species::WaterNeeds::gh_dgh};
constexpr Quantity kh{Kind::kh, "water-kh", "kh_dkh",         "water.kh_dkh.tolerated",    "KH",
                      "KH",     "°dH",      &Windows::kh_dkh, &Species::WaterNeeds::kh_dkh};

enum class Side { under, over };

const std::optional<Range>& tolerated(const Kept& kept, const Quantity& q) {
  static const std::optional<Range> unknown;
  return kept.species ? (kept.species->water.*q.need).tolerated : unknown;
}

bool needs_hard_water(const Species& species) {
  if (species.kind == "snail") return true;
  const std::optional<Range>& gh_range = species.water.gh_dgh.tolerated;
  return gh_range && gh_range->low >= limits::hard_water_low_dgh;
}

/// How warm a kind can be kept; more may be borne for days.
double high_for_long(const Quantity& q, const Species& species) {
  const Need& need = species.water.*q.need;
  const bool cool = q.kind == Kind::temperature && (species.kind == "fish" || species.kind == "frog") && need.ideal &&
                    need.ideal->high <= limits::cool_water_most_c;
  return cool ? std::min(need.tolerated->high, limits::cool_water_most_c) : need.tolerated->high;
}

// The watch of GH is as wide as a share of the edge where that is more.
Steps widened(Steps steps, double edge) {
  const double reach = std::max(steps.strain, limits::gh_watch_edge_share * edge);
  return {steps.note, steps.watch, reach, std::max(steps.harm, reach)};
}

Steps steps_of(const Quantity& q, Side side, double edge, const Species& species, Strictness strictness) {
  switch (q.kind) {
    case Kind::temperature: return limits::temperature_steps_c;
    case Kind::ph: return limits::ph_steps;
    case Kind::gh:
      return widened(side == Side::over ? in_view(limits::gh_over_steps_dgh, strictness) : limits::gh_steps_dgh, edge);
    case Kind::kh:
      return side == Side::under && needs_hard_water(species) ? limits::kh_hard_water_steps_dkh : limits::kh_steps_dkh;
  }
  return {};
}

struct Past {
  const Kept* kept = nullptr;
  Side side = Side::over;
  double edge = 0, by = 0;
  Severity severity = Severity::note;
};

// How far the water that the tank has lies outside what one group lives in.
std::optional<Past> past_edge(const Facts& facts, const Quantity& q, const Kept& kept, double now) {
  const std::optional<Range>& range = tolerated(kept, q);
  if (!range) return std::nullopt;
  const double high = high_for_long(q, *kept.species);
  if (now >= range->low && now <= high) return std::nullopt;
  Past past{&kept, now > high ? Side::over : Side::under, 0, 0, Severity::note};
  past.edge = past.side == Side::over ? high : range->low;
  past.by = rounded(std::abs(now - past.edge));
  const auto graded = [&](double by) {
    return grade(by, steps_of(q, past.side, past.edge, *kept.species, facts.plan.strictness));
  };
  std::optional<Severity> severity = graded(past.by);
  if (!severity) return std::nullopt;
  // Warm for long only wears a fish down; what it cannot live in is another matter.
  if (past.side == Side::over && past.edge < range->high)
    severity = graver(graded(rounded(now - range->high)), at_most(*severity, Severity::strain));
  if (q.kind == Kind::gh && past.side == Side::under && past.by > limits::error_gh_dgh && now < limits::hard_water_harm_dgh &&
      needs_hard_water(*kept.species))
    severity = Severity::harm;
  const bool guessed = water_is_assumed(facts.plan, q.key);
  past.severity = guessed ? at_most(*severity, Severity::strain) : *severity;
  return past;
}

// How far the window of one group lies from that of the group that it misses most.
struct Gap {
  const Kept *lower = nullptr, *upper = nullptr;  ///< whose high edge, whose low edge
  double by = 0;
  Severity severity = Severity::note;
};

std::optional<Gap> gap_between(const Facts& facts, const Quantity& q, const Kept& lower, const Kept& upper) {
  const double edge = tolerated(lower, q)->high;
  const double by = rounded(tolerated(upper, q)->low - edge);
  if (!(by > 0)) return std::nullopt;
  std::optional<Severity> severity = grade(by, steps_of(q, Side::over, edge, *lower.species, facts.plan.strictness));
  const std::optional<Severity> below =
      grade(by, steps_of(q, Side::under, tolerated(upper, q)->low, *upper.species, facts.plan.strictness));
  severity = graver(severity, below);
  if (!severity) return std::nullopt;
  return Gap{&lower, &upper, by, *severity};
}

// The two whose edges shut the window most: the lowest high edge and the highest low edge, first in stock order on a tie.
struct Extremes {
  const Kept *lowest_high = nullptr, *highest_low = nullptr;
};

Extremes extremes(const Facts& facts, const Quantity& q, std::optional<Range> Need::*range) {
  Extremes found;
  const auto of = [&](const Kept* kept) -> const Range& { return *((kept->species->water.*q.need).*range); };
  for (const Kept& kept : facts.stock) {
    if (!kept.species || !((kept.species->water.*q.need).*range)) continue;
    if (!found.lowest_high || of(&kept).high < of(found.lowest_high).high) found.lowest_high = &kept;
    if (!found.highest_low || of(&kept).low > of(found.highest_low).low) found.highest_low = &kept;
  }
  return found;
}

std::vector<const Kept*> in_stock_order(const Kept* a, const Kept* b) {
  return a < b ? std::vector<const Kept*>{a, b} : std::vector<const Kept*>{b, a};
}

std::string in_unit(double value, const Quantity& q) { return amount(value, 1, q.unit); }
std::string with_name(double value, const Quantity& q) {
  return q.kind == Kind::temperature ? in_unit(value, q) : std::string(q.inside) + " " + amount(value, 1, "");
}

// Who has to leave for the others to share a window: all who do not meet the one of the pair, or all who do not meet the other;
// whichever takes out fewer that swim, then fewer animals. A side with a pinned group stays.
std::vector<const Kept*> who_leaves(const Facts& facts, const Quantity& q, const Gap& gap) {
  std::vector<const Kept*> sides[2];
  for (const Kept& kept : facts.stock) {
    const std::optional<Range>& range = tolerated(kept, q);
    if (range && range->low > tolerated(*gap.lower, q)->high) sides[0].push_back(&kept);
    if (range && range->high < tolerated(*gap.upper, q)->low) sides[1].push_back(&kept);
  }
  const auto cost = [](const std::vector<const Kept*>& side) {
    std::pair<int, int> animals;
    for (const Kept* kept : side) {
      animals.first += kept->have;
      animals.second += kept->count;
    }
    return animals;
  };
  if (leave_out(facts.plan, sides[0]).empty()) return sides[1];
  if (leave_out(facts.plan, sides[1]).empty()) return sides[0];
  return cost(sides[0]) < cost(sides[1]) ? sides[0] : sides[1];
}

void tell_gap(const Facts& facts, const Quantity& q, const Gap& gap, Finding& finding) {
  concern(finding, in_stock_order(gap.lower, gap.upper));
  finding.text = std::string("No shared ") + q.inside;
  finding.why = capital(name_of(*gap.upper)) + " needs " + with_name(tolerated(*gap.upper, q)->low, q) + " up, " +
                name_of(*gap.lower) + " " + with_name(tolerated(*gap.lower, q)->high, q) + " down: " + in_unit(gap.by, q) +
                " apart, and the middle suits neither.";
  rest_on(finding, facts, {gap.lower, gap.upper}, q.field);
  if (gap.severity == Severity::note) return;  // within what a test reads: nobody has to leave for that
  const std::vector<const Kept*> leaving = who_leaves(facts, q, gap);
  finding.edits = leave_out(facts.plan, leaving);
  finding.remedy = finding.edits.empty() ? "Keep the two apart" : say_leave_out(leaving);
}

const Past& worst_of(const std::vector<Past>& all) {
  return *std::max_element(all.begin(), all.end(), [](const Past& a, const Past& b) { return a.by < b.by; });
}

// Who is worst off first, since the heading speaks of it.
std::string lives(std::vector<Past> all, const Quantity& q) {
  constexpr std::size_t most_named = 3;
  const auto worst = all.begin() + (&worst_of(all) - all.data());
  std::rotate(all.begin(), worst, worst + 1);
  std::vector<std::string> said;
  for (std::size_t i = 0; i < all.size() && i < most_named; ++i) {
    const std::string edge = in_unit(all[i].edge, q);
    const bool for_days = all[i].side == Side::over && all[i].edge < tolerated(*all[i].kept, q)->high;
    said.push_back(name_of(*all[i].kept) + (i == 0 ? " lives " : " ") +
                   (all[i].side == Side::over ? "up to " + edge : "from " + edge + " up") +
                   (for_days ? ", warmer for days only" : ""));
  }
  return joined(said);
}

void tell_past(const Facts& facts, const Quantity& q, const std::vector<Past>& all, double now, Finding& finding) {
  std::vector<const Kept*> groups;
  for (const Past& past : all) groups.push_back(past.kept);
  concern(finding, groups);
  const Past& worst = worst_of(all);
  const std::string whom = all.size() == 1 ? name_of(*worst.kept) : std::to_string(all.size()) + " kinds";
  finding.text =
      std::string(q.name) + " " + in_unit(worst.by, q) + (worst.side == Side::over ? " over for " : " under for ") + whom;
  const bool aimed = has_aim(facts.plan, q.key);
  finding.why = std::string(aimed ? "The aim is " : "The tap has ") + with_name(now, q) + "; " + lives(all, q) + ".";
  rest_on(finding, facts, *worst.kept, q.field);

  std::optional<Range> window = (facts.water.*q.window).tolerated;
  for (const Past& past : all)
    if (window && past.side == Side::over) window->high = std::min(window->high, past.edge);
  if (!window || window->low > window->high) {
    remedy_by_count(facts.plan, *worst.kept, 0, finding);
    return;
  }
  const double aim = std::clamp(now, window->low, window->high);
  finding.edits = aim_water(facts, q.key, aim);
  const bool down = aim < now;
  if (q.kind == Kind::temperature) {
    finding.remedy = finding.edits.empty() ? "Choose fish for this water" : "Set the temperature to " + in_unit(aim, q);
    return;
  }
  finding.remedy = "Choose fish for this tap";
  if (finding.edits.empty()) return;
  finding.remedy += ", or aim for " + with_name(aim, q);
  if (q.kind == Kind::ph)
    finding.remedy += down ? " by a lower KH" : " by a higher KH";
  else
    finding.remedy += down ? " with RO water" : " with minerals";
}

void tell_comfort(const Facts& facts, const Quantity& q, const Extremes& ideal, Finding& finding) {
  concern(finding, in_stock_order(ideal.lowest_high, ideal.highest_low));
  const Need& lower = ideal.lowest_high->species->water.*q.need;
  const Need& upper = ideal.highest_low->species->water.*q.need;
  const Range& shared = *(facts.water.*q.window).tolerated;
  finding.text = std::string("No ") + q.inside + " is best for all";
  finding.why = capital(name_of(*ideal.highest_low)) + " thrives from " + with_name(upper.ideal->low, q) + " up, " +
                name_of(*ideal.lowest_high) + " up to " + with_name(lower.ideal->high, q) + "; all of them live at " +
                (q.kind == Kind::temperature ? "" : std::string(q.inside) + " ") +
                span_of(shared.low, shared.high, 1, q.kind == Kind::temperature ? q.unit : "") + ".";
  rest_on(finding, facts, {ideal.lowest_high, ideal.highest_low}, std::string("water.") + q.key + ".ideal");
}

void tell_narrow(const Facts& facts, const Range& shared, const Extremes& edges, Finding& finding) {
  concern(finding, in_stock_order(edges.lowest_high, edges.highest_low));
  const std::string overlap = amount(shared.high - shared.low, 1, "");
  finding.text = overlap == "0" ? "Only pH " + amount(shared.low, 1, "") + " is shared" : "Only " + overlap + " of pH shared";
  finding.why = capital(name_of(*edges.highest_low)) + " needs pH " + amount(shared.low, 1, "") + " up, " +
                name_of(*edges.lowest_high) + " pH " + amount(shared.high, 1, "") + " down; a kit reads no closer than 0.3.";
  rest_on(finding, facts, {edges.lowest_high, edges.highest_low}, ph.field);
}

void judge(const Facts& facts, const Quantity& q, Found& out) {
  const Window& window = facts.water.*q.window;
  const Extremes edges = extremes(facts, q, &Need::tolerated);
  if (!edges.lowest_high) return;

  std::optional<Severity> gap_severity;
  if (const std::optional<Gap> gap = gap_between(facts, q, *edges.lowest_high, *edges.highest_low)) {
    gap_severity = gap->severity;
    if (out.keeps_findings())
      out.add(q.rule, gap->severity, "", gap->by, [&](Finding& finding) { tell_gap(facts, q, *gap, finding); });
    else
      for (const Kept& kept : facts.stock) {
        if (!tolerated(kept, q)) continue;
        for (const auto& one : {gap_between(facts, q, *edges.lowest_high, kept), gap_between(facts, q, kept, *edges.highest_low)})
          if (one) out.add(q.rule, one->severity, kept.id, one->by, [](Finding&) {});
      }
  }

  if (window.now) {
    std::vector<Past> sides[2];
    for (const Kept& kept : facts.stock)
      if (const std::optional<Past> past = past_edge(facts, q, kept, *window.now)) {
        sides[past->side == Side::over].push_back(*past);
        if (!out.keeps_findings()) out.add(q.rule, past->severity, kept.id, past->by, [](Finding&) {});
      }
    if (out.keeps_findings())
      for (const std::vector<Past>& side : sides) {
        if (side.empty()) continue;
        Severity worst = Severity::note;
        for (const Past& past : side) worst = std::min(worst, past.severity);
        // Where the windows do not meet the water is always outside for some: said again only when that is worse than the gap.
        if (gap_severity && *gap_severity <= worst) continue;
        out.add(q.rule, worst, "", side.front().by, [&](Finding& finding) { tell_past(facts, q, side, *window.now, finding); });
      }
  }

  if (gap_severity || !out.keeps_findings()) return;
  const Range shared = *window.tolerated;
  if (q.kind == Kind::ph && rounded(shared.high - shared.low) < limits::ph_narrow && edges.lowest_high != edges.highest_low) {
    out.add(q.rule, Severity::note, "", 0, [&](Finding& finding) { tell_narrow(facts, shared, edges, finding); });
    return;
  }
  const Extremes ideal = extremes(facts, q, &Need::ideal);
  if (!ideal.lowest_high || ideal.lowest_high == ideal.highest_low) return;
  const double apart =
      (ideal.highest_low->species->water.*q.need).ideal->low - (ideal.lowest_high->species->water.*q.need).ideal->high;
  if (rounded(apart) > 0)
    out.add(q.rule, Severity::note, "", apart, [&](Finding& finding) { tell_comfort(facts, q, ideal, finding); });
}

}  // namespace

void water_temperature(const Facts& facts, Found& out) { judge(facts, temperature, out); }
void water_ph(const Facts& facts, Found& out) { judge(facts, ph, out); }
void water_gh(const Facts& facts, Found& out) { judge(facts, gh, out); }
void water_kh(const Facts& facts, Found& out) { judge(facts, kh, out); }

}  // namespace shoalwright
