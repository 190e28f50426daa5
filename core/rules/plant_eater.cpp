// SPDX-License-Identifier: MIT
// plant-eater: who eats or uproots the plants of this tank. Common practice, no source.
#include <algorithm>

#include "catalog/piece_kind.h"
#include "notebook/say.h"
#include "rules/company_limits.h"
#include "rules/edits.h"
#include "rules/pairs.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

/// Ferns and mosses are tied to wood and stone and taste of nothing; mops and litter are no plants.
bool is_plant(const PieceKind& kind) { return kind.shelf == PieceShelf::plants && kind.leaf; }
bool is_tough(const PieceKind& kind) { return kind.drawing == PieceDrawing::fern || kind.drawing == PieceDrawing::moss; }
bool is_soft(const PieceKind& kind) {
  return kind.drawing == PieceDrawing::stem_thicket || kind.drawing == PieceDrawing::carpet || kind.floats;
}

struct Harmed {
  std::vector<const Kept*> eaters, diggers;
  std::vector<std::size_t> pieces;  ///< drawn plants that they spoil
};

Harmed harmed_in(const Facts& facts) {
  Harmed found;
  bool eats_soft = false, eats_all = false;
  for (const Kept& kept : facts.stock) {
    if (!kept.species) continue;
    const std::string& eats = kept.species->mouth.eats_plants;
    if (eats == "most" || eats == "soft") found.eaters.push_back(&kept);
    eats_soft = eats_soft || eats == "soft";
    eats_all = eats_all || eats == "most";
    if (kept.species->mouth.digs && kept.species->kind == "fish" && kept.species->size.adult_tl_cm >= limits::digger_least_cm)
      found.diggers.push_back(&kept);
  }
  if (found.eaters.empty() && found.diggers.empty()) return found;
  for (std::size_t i = 0; i < facts.plan.pieces.size(); ++i) {
    const PieceKind& kind = piece_kind(facts.plan.pieces[i].kind);
    if (!is_plant(kind) || is_tough(kind)) continue;
    if (eats_all || (eats_soft && is_soft(kind)) || (!found.diggers.empty() && !kind.floats)) found.pieces.push_back(i);
  }
  return found;
}

// Ferns of the same place and measures: the layout stays.
void remedy_by_tough_plants(const Facts& facts, const std::vector<std::size_t>& pieces, Finding& finding) {
  std::vector<PatchStep> edits;
  for (const std::size_t piece : pieces) {
    const std::string pointer = "/pieces/" + std::to_string(piece);
    if (is_fixed(facts.plan, pointer)) return;
    edits.push_back({"replace", pointer + "/kind", "\"fern\""});
  }
  finding.edits = std::move(edits);
  finding.remedy =
      "Put ferns tied to wood in place of " + std::to_string(pieces.size()) + (pieces.size() == 1 ? " plant" : " plants");
}

}  // namespace

void plant_eater(const Facts& facts, Found& out) {
  if (!out.keeps_findings()) return;  // never a strain
  const Harmed found = harmed_in(facts);
  std::vector<const Kept*> all = found.eaters;
  for (const Kept* digger : found.diggers)
    if (std::find(all.begin(), all.end(), digger) == all.end()) all.push_back(digger);
  std::sort(all.begin(), all.end());
  const bool by_word = facts.plan.planting.value_or(Planting::none) != Planting::none;
  if (all.empty() || (found.pieces.empty() && !by_word)) return;
  // What is planted beyond the drawing may be tough plants: only said.
  const Severity severity = found.pieces.empty() ? Severity::note : Severity::watch;
  out.add("plant-eater", severity, "", static_cast<double>(found.pieces.size()), [&](Finding& finding) {
    concern(finding, all);
    finding.text = heading_of(all) + does(all, " spoils", " spoil") + " plants";
    if (!found.eaters.empty()) finding.why = capital(names_of(found.eaters)) + does(found.eaters, " eats", " eat") + " leaves";
    if (!found.diggers.empty())
      finding.why += (found.eaters.empty() ? capital(names_of(found.diggers)) : " and " + names_of(found.diggers)) +
                     does(found.diggers, " digs", " dig") + " up roots";
    finding.why += found.pieces.empty() ? "; ferns and mosses tied to wood and stone last."
                                        : "; ferns and mosses tied to wood and stone last, the drawn plants do not.";
    rest_on(finding, facts, all, found.eaters.empty() ? "mouth.digs" : "mouth.eats_plants");
    if (!found.pieces.empty())
      remedy_by_tough_plants(facts, found.pieces, finding);
    else
      finding.remedy = "Choose ferns and mosses, tied on";
  });
}

}  // namespace shoalwright
