// SPDX-License-Identifier: MIT
#include "rules/sexes.h"

namespace shoalwright {

std::optional<Sexes> sexes_of(const Kept& kept) {
  const Sexes sexes{kept.males.value_or(0), kept.females.value_or(0)};
  // Where they do not make up the group some are of unknown sex.
  if (sexes.males + sexes.females != kept.count) return std::nullopt;
  return sexes;
}

bool may_breed(const Kept& a, const Kept& b) {
  const std::optional<Sexes> one = sexes_of(a), other = sexes_of(b);
  const bool a_male = !one || one->males > 0, a_female = !one || one->females > 0;
  const bool b_male = !other || other->males > 0, b_female = !other || other->females > 0;
  return (a_male && b_female) || (a_female && b_male);
}

}  // namespace shoalwright
