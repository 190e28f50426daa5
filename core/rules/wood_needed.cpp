// SPDX-License-Identifier: MIT
// wood-needed: who rasps wood and finds none.
#include <algorithm>

#include "catalog/piece_kind.h"
#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "tank/placed_piece.h"

namespace shoalwright {

namespace {

/// Wood from the shelf of woods; a coconut shell is too hard and too smooth to rasp.
bool has_wood(const Plan& plan) {
  return std::any_of(plan.pieces.begin(), plan.pieces.end(), [](const Piece& piece) {
    const PieceKind& kind = piece_kind(piece.kind);
    return kind.shelf == PieceShelf::wood && kind.material == Material::wood;
  });
}

}  // namespace

// A note for all. Kinds that live in and on wood would be a watch, kinds that only like to rasp it a note; a card says just that
// a kind rasps, so the milder one holds until cards tell them apart.
void wood_needed(const Facts& facts, Found& out) {
  if (!out.keeps_findings()) return;  // never a strain
  std::vector<const Kept*> raspers;
  for (const Kept& kept : facts.stock)
    if (kept.species && kept.species->needs.wood) raspers.push_back(&kept);
  if (raspers.empty() || has_wood(facts.plan)) return;
  out.add("wood-needed", Severity::note, "", 0, [&](Finding& finding) {
    const bool one = raspers.size() == 1;
    concern(finding, raspers);
    finding.text = "No wood for " + name_or_number_of(raspers);
    finding.why = capital(names_of(raspers)) + (one ? " rasps" : " rasp") +
                  " wood all day for the growth on it; no piece of wood is in the tank.";
    rest_on(finding, facts, raspers, "needs.wood");
    const Piece branch = usual_piece(facts.plan, "branch-low");
    finding.remedy = "Add a low branch of wood, " + say_measures(branch);
    finding.edits = add_pieces(facts.plan, branch);
  });
}

}  // namespace shoalwright
