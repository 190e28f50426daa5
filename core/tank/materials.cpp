// SPDX-License-Identifier: MIT
#include "tank/materials.h"

#include <algorithm>

#include "tank/mass.h"
#include "tank/placed_piece.h"
#include "tank/substrate.h"
#include "tank/volume.h"

namespace shoalwright {

Materials materials_of(const Plan& plan) {
  Materials out;
  const SubstrateFacts facts = substrate_facts(plan.substrate.kind);
  out.substrate_l = volume_of(plan).substrate_l;
  out.substrate_kg = substrate_mass_kg(out.substrate_l, facts.porosity, facts.grain_kg_m3);
  for (const Piece& piece : plan.pieces) {
    auto line =
        std::find_if(out.pieces.begin(), out.pieces.end(), [&](const MaterialLine& one) { return one.kind == piece.kind; });
    if (line == out.pieces.end()) line = out.pieces.insert(line, {.kind = piece.kind});
    // Where it stands says nothing of what it weighs.
    const PlacedPiece stands = placed(plan, piece);
    ++line->count;
    line->litres += solids_l(stands);
    line->kg += piece_mass_kg(stands);
    out.stone_kg += piece_mass_kg(stands);
  }
  return out;
}

}  // namespace shoalwright
