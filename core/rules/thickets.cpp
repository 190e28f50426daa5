// SPDX-License-Identifier: MIT
#include "rules/thickets.h"

#include <algorithm>

#include "catalog/piece_kind.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "stocking/cover.h"
#include "tank/placed_piece.h"
#include "tank/volume.h"

namespace shoalwright {

void remedy_by_thickets(const Facts& facts, double lack_share, Finding& finding) {
  const double lack_cm2 = lack_share * inside_area_cm2(facts.plan.tank);
  const bool eats_plants = std::any_of(facts.stock.begin(), facts.stock.end(), [](const Kept& kept) {
    return kept.species && kept.species->mouth.eats_plants == "most";
  });
  const PieceKind& kind = piece_kind(eats_plants ? "bridge" : "stem-plants");
  Piece piece;
  int count = 0;
  for (bool enough = false; !enough && count < limits::cover_most_pieces;) {
    ++count;
    for (double wider = 1; !enough && wider <= limits::cover_most_times; wider += 0.125) {
      piece = usual_piece(facts.plan, kind.id, wider);
      enough = outline_cm2(kind, piece.length_cm, piece.depth_cm) * kind.shelter * count >= lack_cm2;
    }
  }
  const std::string name = eats_plants ? "stone bridge" : "stem thicket";
  finding.remedy = "Add " + (count == 1 ? "a " + name : std::to_string(count) + " " + name + "s") + ", " + say_measures(piece) +
                   (count > 1 ? " each" : "");
  finding.edits = add_pieces(facts.plan, piece, count);
}

}  // namespace shoalwright
