// SPDX-License-Identifier: MIT
#include "rules/tell.h"

#include <algorithm>
#include <cmath>

#include "notebook/say.h"

namespace shoalwright {

Severity unless_assumed(const Plan& plan, Severity severity, std::initializer_list<const char*> pointers) {
  if (severity != Severity::harm) return severity;
  const bool assumed = std::any_of(pointers.begin(), pointers.end(), [&](const char* p) { return is_assumed(plan, p); });
  return assumed ? Severity::strain : Severity::harm;
}

Severity unless_floor_assumed(const Plan& plan, Severity severity) {
  return unless_assumed(plan, severity,
                        {"/tank/shape", "/tank/length_cm", "/tank/width_cm", "/tank/bow_cm", "/tank/diameter_cm", "/tank/side_cm",
                         "/tank/front_cm", "/tank/outline_cm"});
}

Severity unless_tank_assumed(const Plan& plan, Severity severity) {
  return unless_assumed(plan, unless_floor_assumed(plan, severity), {"/tank/height_cm"});
}

const std::string& name_of(const Kept& kept) { return kept.species ? display_name(*kept.species) : kept.id; }

std::string names_of(const std::vector<const Kept*>& groups, std::size_t most) {
  std::vector<std::string> names;
  for (const Kept* kept : groups) names.push_back(name_of(*kept));
  if (names.size() > most + 1) {
    const std::size_t others = names.size() - most;
    names.resize(most);
    names.push_back(std::to_string(others) + " others");
  }
  return joined(names);
}

std::string name_or_number_of(const std::vector<const Kept*>& groups) {
  return groups.size() == 1 ? name_of(*groups.front()) : std::to_string(groups.size()) + " kinds";
}

void concern(Finding& finding, const std::vector<const Kept*>& groups) {
  for (const Kept* kept : groups) finding.species.push_back(kept->id);
}

void rest_on(Finding& finding, const Facts& facts, const Kept& kept, const std::string& field) {
  for (const Species& own : facts.plan.own_species)
    if (&own == kept.species) {
      finding.evidence = Evidence::keeper;
      return;
    }
  const EvidenceEntry* entry = evidence_for(*kept.species, field);
  if (!entry) return;
  finding.evidence = entry->evidence;
  if (entry->evidence == Evidence::published) finding.source = entry->source;
}

void rest_on(Finding& finding, const Facts& facts, const std::vector<const Kept*>& groups, const std::string& field) {
  rest_on(finding, facts, *groups.front(), field);
  for (const Kept* kept : groups) {
    Finding one;
    rest_on(one, facts, *kept, field);
    if (!(one.evidence > finding.evidence)) continue;
    finding.evidence = one.evidence;
    finding.source = one.source;
  }
}

double rounded(double amount) { return std::round(amount * 1e6) / 1e6; }

bool has_aim(const Plan& plan, std::string_view quantity) {
  if (!plan.water) return false;
  const WaterAim& aim = *plan.water;
  if (quantity == "temperature_c") return aim.temperature_c.has_value();
  if (quantity == "ph") return aim.ph.has_value();
  return quantity == "gh_dgh" ? aim.gh_dgh.has_value() : aim.kh_dkh.has_value();
}

bool water_is_assumed(const Plan& plan, const char* quantity) {
  return is_assumed(plan, std::string(has_aim(plan, quantity) ? "/water/" : "/source/") + quantity);
}

}  // namespace shoalwright
