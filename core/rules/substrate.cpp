// SPDX-License-Identifier: MIT
// substrate: who feeds in the floor, and what the floor does to barbels and gills.
#include <algorithm>
#include <cmath>

#include "notebook/say.h"
#include "plan/words.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

/// What a kind does with the floor, most particular first.
enum class Feeds { by_mouthfuls, with_barbels, over_fine, anywhere };

// The card says how fine, not why; the why follows from its group. Cichlids that want sand take it by mouthfuls and let it out
// through the gills, all others that want it search or burrow in it. Of kinds that want it fine, corydoras, loaches and
// catfish have barbels to wear; the others (dwarf frogs, small gobies, rock cichlids) only live better on it.
Feeds feeding_of(const Species& species) {
  const std::string& bed = species.needs.substrate;
  if (bed == "sand") return species.group == "cichlids" ? Feeds::by_mouthfuls : Feeds::with_barbels;
  if (bed != "fine") return Feeds::anywhere;
  return species.group == "corydoras" || species.group == "loaches" || species.group == "catfish" ? Feeds::with_barbels
                                                                                                  : Feeds::over_fine;
}

// Smooth gravel and soil under barbels divide the trade: lenient and usual keepers take them.
Severity divided(Strictness strictness) { return strictness == Strictness::strict ? Severity::watch : Severity::note; }

std::optional<Severity> severity_of(Feeds feeds, const Plan& plan) {
  if (feeds == Feeds::anywhere) return std::nullopt;
  switch (plan.substrate.kind) {
    case SubstrateKind::fine_sand:
    case SubstrateKind::coarse_sand: return std::nullopt;
    case SubstrateKind::planted_soil: return divided(plan.strictness);
    case SubstrateKind::smooth_gravel: return feeds == Feeds::by_mouthfuls ? Severity::strain : divided(plan.strictness);
    case SubstrateKind::sharp_gravel: return feeds == Feeds::over_fine ? Severity::watch : Severity::strain;
    case SubstrateKind::bare:
      if (feeds == Feeds::over_fine) return std::nullopt;  // nothing that they would search for
      // How long it has run is not known: no reason to take it for a tank that is only being run in.
      if (plan.running_weeks && *plan.running_weeks < limits::bare_quiet_weeks) return std::nullopt;
      return Severity::note;
  }
  return std::nullopt;
}

std::string floor_words(SubstrateKind kind) {
  switch (kind) {
    case SubstrateKind::bare: return "bare floor";
    case SubstrateKind::planted_soil: return "planted soil";
    case SubstrateKind::fine_sand:
    case SubstrateKind::coarse_sand: return "sand";
    case SubstrateKind::smooth_gravel: return "smooth gravel";
    case SubstrateKind::sharp_gravel: return "sharp gravel";
  }
  return "";
}

std::string habit(Feeds feeds, bool one) {
  switch (feeds) {
    case Feeds::by_mouthfuls: return one ? " takes the floor up by mouthfuls" : " take the floor up by mouthfuls";
    case Feeds::with_barbels: return one ? " searches the floor for food" : " search the floor for food";
    case Feeds::over_fine: return one ? " lives on the floor and likes it fine" : " live on the floor and like it fine";
    case Feeds::anywhere: break;
  }
  return "";
}

std::string harm_done(Feeds feeds, SubstrateKind kind) {
  if (kind == SubstrateKind::bare)
    return "a bare floor gives nothing to search or dig, fine while a tank is run in, up to " +
           amount(limits::bare_quiet_weeks, 0, "weeks") + ".";
  const bool sharp = kind == SubstrateKind::sharp_gravel;
  switch (feeds) {
    case Feeds::by_mouthfuls:
      return kind == SubstrateKind::planted_soil ? "soil crumbles, and whether gills stand it is disputed."
                                                 : "gravel cannot be sifted, and gills wear on it.";
    case Feeds::with_barbels:
      return sharp ? "on sharp gravel barbels wear down and inflame, by edges or by dirt: keepers differ."
                   : "some keepers see barbels inflamed by the dirt that coarse grains hold, others none.";
    case Feeds::over_fine: return sharp ? "sharp edges scrape it." : "coarse grains keep food out of reach and hold dirt.";
    case Feeds::anywhere: break;
  }
  return "";
}

// Rounded sand of a millimetre or less suits all of them. A floor that was bare needs its depths too.
void remedy_by_sand(const Plan& plan, Finding& finding) {
  const std::string sand = "rounded sand, 1 mm or finer";
  std::vector<PatchStep> steps = set_value(plan, "/substrate/kind", "\"" + std::string(word_of(SubstrateKind::fine_sand)) + "\"");
  finding.remedy = "Change the floor to " + sand;
  if (plan.substrate.kind == SubstrateKind::bare) {
    const double most_cm = limits::sand_most_share * water_line_cm(plan.tank);
    const auto depth = [&](double cm) { return std::max(std::floor(std::min(cm, most_cm) * 2) / 2, 0.5); };
    const double front_cm = depth(limits::sand_front_cm), back_cm = depth(limits::sand_back_cm);
    finding.remedy = "Put in " + sand + ", " + span_of(front_cm, back_cm, 1, "cm") + " deep";
    for (const auto& [pointer, cm] : {std::pair("/substrate/front_cm", front_cm), std::pair("/substrate/back_cm", back_cm)}) {
      const std::vector<PatchStep> step = set_value(plan, pointer, json_number(cm));
      if (step.empty()) return;  // one of them is pinned: half a floor is none
      steps.insert(steps.end(), step.begin(), step.end());
    }
    if (is_fixed(plan, "/substrate/kind")) return;
  }
  finding.edits = std::move(steps);
}

}  // namespace

void substrate(const Facts& facts, Found& out) {
  for (const Feeds feeds : {Feeds::by_mouthfuls, Feeds::with_barbels, Feeds::over_fine}) {
    const std::optional<Severity> severity = severity_of(feeds, facts.plan);
    std::vector<const Kept*> groups;
    for (const Kept& kept : facts.stock)
      if (kept.species && feeding_of(*kept.species) == feeds) groups.push_back(&kept);
    if (!severity || groups.empty()) continue;
    const auto tell = [&](Finding& finding) {
      const SubstrateKind kind = facts.plan.substrate.kind;
      const bool one = groups.size() == 1;
      concern(finding, groups);
      finding.text = capital(floor_words(kind)) + " under " + name_or_number_of(groups);
      finding.why = capital(names_of(groups)) + habit(feeds, one) + "; " + harm_done(feeds, kind);
      rest_on(finding, facts, groups, "needs.substrate");
      remedy_by_sand(facts.plan, finding);
    };
    if (out.keeps_findings())
      out.add("substrate", *severity, "", 0, tell);
    else
      for (const Kept* kept : groups) out.add("substrate", *severity, kept->id, 0, tell);
  }
}

}  // namespace shoalwright
