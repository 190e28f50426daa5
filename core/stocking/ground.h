// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

/// Diameter of the round ground of a holder, cm, from its floor in body lengths squared and its length. For drawing: 25 lengths
/// squared give a pair of 7 cm the 38 to 50 cm that trade books tell. Common practice, no source.
double ground_across_cm(double floor_bl2, double length_cm);

}  // namespace shoalwright
