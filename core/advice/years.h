// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// The years of a stock. `grown` is what every plan is judged at.
enum class Age { bought, half_year, grown, old };

/// "When bought", "In 6 months", "Grown up", "Grown old".
const char* words_of(Age age);

/// Length of a kind at that age, cm, total length as the card counts it. From the size when sold (half the adult length where the
/// card has none: common practice, no source) it grows towards the adult one the slower the nearer it is: the form of von
/// Bertalanffy (L. von Bertalanffy 1938, "A quantitative theory of organic growth", Human Biology 10:181-213; from memory), the
/// lack falling to a third in so many years as the adult length has times 20 cm (common practice, no source). Snails and shrimps
/// are taken the same way.
double length_at(const Species& species, Age age);

/// The same plan when its stock has that age, to be drawn and judged like any other, never to be kept: every kind at its length
/// then, old groups with the six of ten that are left (common practice, no source), one at the least. What a card asks of a tank
/// stays as it is. A kind that is not known stays too.
Plan at_age(const Plan& plan, const Catalog& catalog, Age age);

}  // namespace shoalwright
