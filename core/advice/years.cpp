// SPDX-License-Identifier: MIT
#include "advice/years.h"

#include <algorithm>
#include <cmath>

#include "stocking/stock.h"

namespace shoalwright {

namespace {

constexpr double sold_share_unsaid = 0.5, half_year_y = 0.5, cm_a_year = 20, left_when_old = 0.6;

Species sized(Species species, double length_cm) {
  const double share = length_cm / species.size.adult_tl_cm;
  species.size.adult_tl_cm = length_cm;
  for (std::optional<double>* one :
       {&species.size.adult_male_cm, &species.size.adult_female_cm, &species.size.height_with_fins_cm})
    if (*one) **one *= share;
  if (species.size.sold_cm) species.size.sold_cm = std::min(*species.size.sold_cm, length_cm);
  return species;
}

void leave_the_old(Group& group) {
  if (group.count < 1) return;
  group.count = std::max(static_cast<int>(std::floor(group.count * left_when_old + 0.5)), 1);
  group.have = std::min(group.have, group.count);
  if (group.males.value_or(0) + group.females.value_or(0) > group.count) group.males = group.females = std::nullopt;
}

}  // namespace

const char* words_of(Age age) {
  switch (age) {
    case Age::bought: return "When bought";
    case Age::half_year: return "In 6 months";
    case Age::grown: return "Grown up";
    case Age::old: return "Grown old";
  }
  return "";
}

double length_at(const Species& species, Age age) {
  const double adult_cm = species.size.adult_tl_cm;
  if (age == Age::grown || age == Age::old || !(adult_cm > 0)) return adult_cm;
  const double sold_cm = std::min(species.size.sold_cm.value_or(sold_share_unsaid * adult_cm), adult_cm);
  const double years = age == Age::bought ? 0 : half_year_y;
  return adult_cm - (adult_cm - sold_cm) * std::exp(-years / (adult_cm / cm_a_year));
}

Plan at_age(const Plan& plan, const Catalog& catalog, Age age) {
  Plan then = plan;
  if (age == Age::grown) return then;
  if (age == Age::old) {
    for (Group& group : then.stock) leave_the_old(group);
    return then;
  }
  for (const Kept& kept : resolve_stock(plan, catalog)) {
    if (!kept.species || !(kept.species->size.adult_tl_cm > 0)) continue;
    Species young = sized(*kept.species, length_at(*kept.species, age));
    std::erase_if(then.own_species, [&](const Species& own) { return own.id == young.id; });
    then.own_species.push_back(std::move(young));
  }
  return then;
}

}  // namespace shoalwright
