// SPDX-License-Identifier: MIT
// unknown-input, unknown-species, empty: what keeps a verdict back.
#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "stocking/encounter.h"
#include "stocking/gas_transfer.h"
#include "units/text.h"

namespace shoalwright {

namespace {

bool anyone(const Facts& facts, std::optional<Range> Need::*range, Need Species::WaterNeeds::*need) {
  for (const Kept& kept : facts.stock)
    if (kept.species && (kept.species->water.*need).*range) return true;
  return false;
}

void water_not_known(const Facts& facts, Found& out) {
  const struct {
    const char* name;
    const Window& window;
    Need Species::WaterNeeds::*need;
  } all[] = {{"temperature", facts.water.temperature_c, &Species::WaterNeeds::temperature_c},
             {"pH", facts.water.ph, &Species::WaterNeeds::ph},
             {"GH", facts.water.gh_dgh, &Species::WaterNeeds::gh_dgh},
             {"KH", facts.water.kh_dkh, &Species::WaterNeeds::kh_dkh}};
  std::vector<std::string> missing;
  for (const auto& one : all)
    // Without an aim the temperature is the stock's own best one; there is none only where the windows do not meet, said
    // elsewhere.
    if (!one.window.now && anyone(facts, &Need::tolerated, one.need) &&
        (one.need != &Species::WaterNeeds::temperature_c || facts.plan.water))
      missing.push_back(one.name);
  if (missing.empty()) return;
  out.add("unknown-input", Severity::note, "water", 0, [&](Finding& finding) {
    finding.text = "Not known: " + joined(missing);
    finding.why = "Whether the stock can live in this water is not judged until " + joined(missing) +
                  (missing.size() == 1 ? " is" : " are") + " given.";
    finding.remedy = "Test the tap with drops, or read the supplier's report";
  });
}

// A card that gives no range leaves its kind out of that window.
void figures_not_known(const Facts& facts, Found& out) {
  const struct {
    const char* name;
    Need Species::WaterNeeds::*need;
  } all[] = {{"temperature", &Species::WaterNeeds::temperature_c},
             {"pH", &Species::WaterNeeds::ph},
             {"GH", &Species::WaterNeeds::gh_dgh},
             {"KH", &Species::WaterNeeds::kh_dkh}};
  for (const Kept& kept : facts.stock) {
    if (!kept.species) continue;
    std::vector<std::string> missing;
    for (const auto& one : all)
      if (!(kept.species->water.*one.need).tolerated) missing.push_back(one.name);
    if (missing.empty()) continue;
    out.add("unknown-input", Severity::note, kept.id, 0, [&](Finding& finding) {
      concern(finding, {&kept});
      finding.text =
          (missing.size() == 4 ? std::string("No water figures") : "No figure for " + joined(missing)) + ": " + name_of(kept);
      finding.why = capital(name_of(kept)) + " is left out of the shared window of " + joined(missing) +
                    "; whether it can live in this water is not judged.";
      finding.remedy = "Enter what it lives in on its card";
    });
  }
}

void nitrate_not_known(const Facts& facts, Found& out) {
  if (facts.plan.source.nitrate_mg_l) return;
  out.add("unknown-input", Severity::note, "nitrate", 0, [&](Finding& finding) {
    finding.text = "Not known: nitrate of the tap";
    finding.why = "How high nitrate climbs between changes is not judged until it is given.";
    finding.remedy = "Test nitrate in water fresh from the tap";
  });
}

void work_not_known(const Facts& facts, Found& out) {
  std::vector<std::string> missing;
  if (!facts.plan.upkeep) missing.push_back("water changes");
  if (!facts.plan.feeding) missing.push_back("feeding");
  if (missing.empty()) return;
  out.add("unknown-input", Severity::note, "work", 0, [&](Finding& finding) {
    finding.text = "Not known: " + joined(missing);
    finding.why = "How high nitrate climbs between changes is not judged until " + joined(missing) +
                  (missing.size() == 1 && facts.plan.upkeep ? " is" : " are") + " given.";
    finding.remedy = "Enter what you do";
  });
}

void plants_not_known(const Facts& facts, Found& out) {
  if (facts.plan.planting) return;
  out.add("unknown-input", Severity::note, "planting", 0, [&](Finding& finding) {
    finding.text = "Not known: planting";
    finding.why =
        "Plants take room from larger fish and hide shy ones; crowding and cover are not judged until the planting is given.";
    finding.remedy = "Say how densely it is planted";
  });
}

// Either tells how much air the water gets, and what a filter moves.
void gear_not_known(const Facts& facts, Found& out) {
  if (k600_of(facts.plan, facts.volume)) return;
  out.add("unknown-input", Severity::note, "gear", 0, [&](Finding& finding) {
    const bool filter_unknown = !facts.plan.gear || !facts.plan.gear->filter_known;
    finding.text = filter_unknown ? "Not known: filter and surface" : "Not known: flow and surface";
    finding.why =
        "How much oxygen is left before dawn is not judged until it is known how lively the surface is, or how much the filter "
        "moves.";
    finding.remedy = "Say how the surface moves";
  });
}

void lid_not_known(const Facts& facts, Found& out) {
  if (facts.plan.tank.lid) return;
  std::vector<const Kept*> jumpers;
  for (const Kept& kept : facts.stock)
    if (kept.species && kept.species->life.jumps.value_or(Jumps::rarely) != Jumps::rarely) jumpers.push_back(&kept);
  if (jumpers.empty()) return;
  out.add("unknown-input", Severity::note, "lid", 0, [&](Finding& finding) {
    concern(finding, jumpers);
    finding.text = "Not known: lid";
    finding.why =
        capital(names_of(jumpers)) + (jumpers.size() == 1 ? " jumps" : " jump") + "; whether that matters depends on a lid.";
    finding.remedy = "Say whether the tank has a lid";
  });
}

/// Kinds of which it matters who is male: live-bearing fish, and those whose males or pairs fight.
bool sexes_matter(const Kept& kept) {
  const Species& species = *kept.species;
  if (kept.count < 2 || kept.males || kept.females || species.kind == "snail" || species.kind == "shrimp") return false;
  return is_livebearer(species) || is_fighter(species) || (species.temper.rival_males && species.life.told_apart == "easy");
}

void sexes_not_known(const Facts& facts, Found& out) {
  std::vector<const Kept*> unsexed;
  for (const Kept& kept : facts.stock)
    if (kept.species && sexes_matter(kept)) unsexed.push_back(&kept);
  if (unsexed.empty()) return;
  out.add("unknown-input", Severity::note, "sexes", 0, [&](Finding& finding) {
    concern(finding, unsexed);
    finding.text = "Not known: sexes of " + name_or_number_of(unsexed);
    finding.why = "Whether males of " + names_of(unsexed) +
                  " fight or harry females, and whether young will come, is not judged until the sexes are given.";
    finding.remedy = "Say how many males and females there are";
  });
}

// A card that does not say how its kind eats is no sign that it eats nobody.
void company_not_known(const Facts& facts, Found& out) {
  std::vector<const Kept*> silent;
  int known = 0;
  for (const Kept& kept : facts.stock) {
    if (!kept.species) continue;
    ++known;
    if (kept.species->mouth.eater.empty() && kept.species->kind != "snail") silent.push_back(&kept);
  }
  if (known < 2 || silent.empty()) return;
  out.add("unknown-input", Severity::note, "company", 0, [&](Finding& finding) {
    concern(finding, silent);
    finding.text = "Not known: what " + name_or_number_of(silent) + (silent.size() == 1 ? " eats" : " eat");
    finding.why = "Whether " + names_of(silent) + (silent.size() == 1 ? " eats" : " eat") +
                  " one of the others is not judged until the card says how large a mouth it has.";
    finding.remedy = "Enter on its card how it eats";
  });
}

}  // namespace

void unknown_input(const Facts& facts, Found& out) {
  if (facts.stock.empty()) return;
  water_not_known(facts, out);
  figures_not_known(facts, out);
  nitrate_not_known(facts, out);
  work_not_known(facts, out);
  plants_not_known(facts, out);
  lid_not_known(facts, out);
  gear_not_known(facts, out);
  if (!out.keeps_findings()) return;
  sexes_not_known(facts, out);
  company_not_known(facts, out);
}

void unknown_species(const Facts& facts, Found& out) {
  for (const Kept& kept : facts.stock) {
    if (kept.species) continue;
    out.add("unknown-species", Severity::watch, kept.id, 0, [&](Finding& finding) {
      concern(finding, {&kept});
      finding.text = kept.id + " is not in the catalogue";
      finding.why =
          "Nothing is known of its size, water or habits, so room, floor, load and nitrate are not summed while it is in the "
          "plan.";
      finding.remedy = "Choose it from the shelf under another name, or enter its facts as your own species";
    });
  }
}

void empty(const Facts& facts, Found& out) {
  if (!facts.stock.empty()) return;
  out.add("empty", Severity::note, "", 0, [&](Finding& finding) {
    finding.text = "No animals yet";
    finding.why = "The tank holds " + amount(facts.volume.net_l, 0, "L") +
                  " of water; company, room and load are judged once something lives in it.";
    finding.remedy = "Take a kind from the shelf";
  });
}

}  // namespace shoalwright
