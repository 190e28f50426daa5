// SPDX-License-Identifier: MIT
// feeding: slow eaters beside fast ones, plant eaters beside meat eaters. Common practice, no source.
#include <algorithm>

#include "notebook/say.h"
#include "rules/company_limits.h"
#include "rules/pairs.h"
#include "rules/table.h"
#include "rules/tell.h"

namespace shoalwright {

namespace {

using Groups = std::vector<const Kept*>;

bool feed_together(const Species& a, const Species& b) {
  const std::string &one = a.diet.feeds_at, &other = b.diet.feeds_at;
  return !one.empty() && !other.empty() && (one == other || one == "any" || other == "any") && share_a_level(a, b);
}

/// Who is fed at the hour and the place of the others: not who feeds by night or grazes all day.
bool waits_for_food(const Species& species) {
  return species.life.active != "night" && species.diet.kind != "aufwuchs" && species.kind != "shrimp" && species.kind != "snail";
}

struct Sides {
  Groups some, others;
};

template <class Clash>
Sides sides_of(const Facts& facts, Clash clash) {
  Sides sides;
  for (const Kept& a : facts.stock)
    for (const Kept& b : facts.stock) {
      if (&a == &b || !a.species || !b.species || !clash(*a.species, *b.species)) continue;
      for (auto [list, kept] : {std::pair{&sides.some, &a}, std::pair{&sides.others, &b}})
        if (std::find(list->begin(), list->end(), kept) == list->end()) list->push_back(kept);
    }
  for (Groups* list : {&sides.some, &sides.others}) std::sort(list->begin(), list->end());
  return sides;
}

}  // namespace

void feeding(const Facts& facts, Found& out) {
  if (!out.keeps_findings()) return;  // never a strain
  const Sides paces = sides_of(facts, [](const Species& slow, const Species& fast) {
    return is_outpaced(slow, fast) && waits_for_food(slow) && fast.kind != "snail" && feed_together(slow, fast);
  });
  if (!paces.some.empty())
    out.add("feeding", Severity::watch, "", 0, [&](Finding& finding) {
      concern(finding, paces.some);
      finding.text = heading_of(paces.some) + does(paces.some, " comes", " come") + " late to the food";
      finding.why = capital(names_of(paces.others)) + does(paces.others, " is", " are") +
                    " quick at the same place, and the food is gone before " + names_of(paces.some) +
                    does(paces.some, " has", " have") + " begun.";
      rest_on(finding, facts, paces.some, "temper.feeding_pace");
      finding.remedy = "Feed the slow ones at the other end, with a tube, or after lights out";
    });
  const Sides diets = sides_of(facts, [](const Species& plants, const Species& meat) {
    return plants.diet.kind == "herbivore" && meat.diet.kind == "carnivore" && feed_together(plants, meat);
  });
  if (!diets.some.empty())
    out.add("feeding", Severity::watch, "", 0, [&](Finding& finding) {
      concern(finding, diets.some);
      finding.text = heading_of(diets.some) + does(diets.some, " wants", " want") + " plants, others meat";
      finding.why = "On the food of " + names_of(diets.others) + ", " + names_of(diets.some) + does(diets.some, " gets", " get") +
                    " bloated; on plants alone the others waste away.";
      rest_on(finding, facts, diets.some, "diet.kind");
      finding.remedy = "Feed at two places at once: plant food at one, meat at the other";
    });
}

}  // namespace shoalwright
