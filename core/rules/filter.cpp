// SPDX-License-Identifier: MIT
// filter: none, too little in it, or too little through it. Glass, gravel and plants turn ammonia over too, so that this is never
// more than a strain.
#include <algorithm>
#include <cmath>

#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "stocking/load.h"

namespace shoalwright {

namespace {

double up_to_tens(double flow_l_h) { return std::ceil(flow_l_h / 10 - 1e-9) * 10; }

/// Litres as filters are filled: halves from one litre up, tenths below.
double up_to_fillings(double litres) {
  const double step = litres > 1 ? 0.5 : 0.1;
  return std::ceil(litres / step - 1e-9) * step;
}

std::string litres(double media_l) { return amount(media_l, 1, "L"); }

/// Empty: not known.
std::optional<double> load_index_of(const Facts& facts) {
  const std::optional<double> rise = nitrate_rise_mg_l_d(facts.load, facts.volume);
  return rise ? std::optional(load_index(*rise)) : std::nullopt;
}

void no_filter(const Facts& facts, Found& out) {
  const std::optional<double> index = load_index_of(facts);
  const bool plants = facts.plan.planting == Planting::dense && index && *index <= limits::filter_plants_carry;
  const bool next_to_nothing = index && *index <= limits::filter_glass_carries;
  const Severity severity = !index || plants || next_to_nothing ? Severity::watch : Severity::strain;
  // Not animals are what is too much: none of them is the one too many.
  out.add("filter", severity, "", 0, [&](Finding& finding) {
    finding.text = "No filter turns ammonia over";
    finding.why = plants
                      ? "A dense stand of plants can take up what this stock makes, while it grows; nothing else takes over when "
                        "it stops. Test ammonia and nitrite each week."
                      : "Ammonia from the food is left to what lives on glass and gravel, and nothing moves the water to it.";
    const std::optional<double>& needed = facts.load.media_needed_l;
    if (!needed || !(facts.volume.net_l > 0)) {
      finding.remedy = "Add a filter";
      return;
    }
    const double media_l = up_to_fillings(*needed), flow_l_h = up_to_tens(limits::filter_new_turnover * facts.volume.net_l);
    finding.remedy = "Add a filter with " + litres(media_l) + " of media";
    finding.edits =
        set_value(facts.plan, "/gear/filter",
                  R"({"kind":"internal","flow_l_h":)" + json_number(flow_l_h) + R"(,"media_l":)" + json_number(media_l) + "}");
  });
}

bool too_little_media(const Facts& facts, const Filter& filter, Found& out) {
  if (!filter.media_l || !facts.load.media_needed_l) return false;
  const double there = *filter.media_l, needed = *facts.load.media_needed_l;
  const double over = there > 0 ? needed / there : needed > 0 ? never : 0;
  const std::optional<Severity> severity = grade(rounded(over), limits::filter_media);
  if (!severity) return false;
  out.add("filter", *severity, "", over, [&](Finding& finding) {
    finding.text = "Too little filter media: " + litres(there);
    finding.why = "Food makes " + amount(*facts.load.tan_mg_d, 0, "mg") +
                  " of ammonia nitrogen a day; common media, half clogged, take " + litres(std::max(needed, 0.1)) +
                  " to hold it down, and there are " + litres(there) + ". Glass, gravel and plants turn some of it over too.";
    const double enough = up_to_fillings(needed);
    finding.remedy = "Fill the filter with " + litres(enough) + " of media";
    finding.edits = set_value(facts.plan, "/gear/filter/media_l", json_number(enough));
  });
  return true;
}

void too_little_flow(const Facts& facts, const Filter& filter, Found& out) {
  const std::optional<double> index = load_index_of(facts);
  // Next to no food needs next to no flow.
  if (!filter.flow_l_h || !(facts.volume.net_l > 0) || !index || *index <= limits::filter_glass_carries) return;
  const double turnover = *filter.flow_l_h / facts.volume.net_l;
  const std::optional<Severity> severity =
      grade(rounded(limits::filter_turnover * (1 - limits::error_volume_share) - turnover), limits::filter_turnover_short);
  if (!severity) return;
  out.add("filter", *severity, "", limits::filter_turnover - turnover, [&](Finding& finding) {
    finding.text = "Filter moves only " + amount(*filter.flow_l_h, 0, "L an hour");
    finding.why = "That is " + amount(turnover, 1, "") + " times the " + amount(facts.volume.net_l, 0, "L") + " of the tank; " +
                  amount(limits::filter_turnover, 0, "") +
                  " times or more bring ammonia and oxygen to all of the media, and a pump moves less as it clogs.";
    const double enough = up_to_tens(limits::filter_turnover * facts.volume.net_l);
    finding.remedy = "Set the filter to " + amount(enough, 0, "L an hour") + " or more";
    finding.edits = set_value(facts.plan, "/gear/filter/flow_l_h", json_number(enough));
  });
}

}  // namespace

void filter(const Facts& facts, Found& out) {
  if (facts.stock.empty() || !facts.plan.gear || !facts.plan.gear->filter_known) return;
  const std::optional<Filter>& filter = facts.plan.gear->filter;
  if (!filter) {
    no_filter(facts, out);
    return;
  }
  // One thing at a time: media first.
  if (too_little_media(facts, *filter, out) || !out.keeps_findings()) return;
  too_little_flow(facts, *filter, out);
}

}  // namespace shoalwright
