// SPDX-License-Identifier: MIT
#include "assess/cautions.h"

#include <algorithm>

#include "notebook/say.h"
#include "tank/mass.h"

namespace shoalwright {

namespace {

/// Animals are to come to animals that swim.
bool somebody_joins(const Facts& facts) {
  const auto& stock = facts.stock;
  return std::any_of(stock.begin(), stock.end(), [](const Kept& kept) { return kept.have > 0; }) &&
         std::any_of(stock.begin(), stock.end(), [](const Kept& kept) { return kept.have < kept.count; });
}

}  // namespace

std::vector<std::string> cautions_for(const Facts& facts) {
  std::vector<std::string> cautions;
  cautions.push_back(floor_caution(facts.volume.filled_mass_kg));
  cautions.push_back(
      "Unplug heater, pumps and lights before hands go in; cables hang in a loop below a socket on a residual-current device. "
      "The local wiring code and a licensed electrician decide.");
  cautions.push_back("Move the tank only empty, with two or more people; stones stand on a firm base, never on undermined sand.");
  cautions.push_back(
      "Cover cuts, wash hands after, start the siphon by pump or filling, never by mouth. A slow-healing lump: tell a doctor "
      "that you keep fish.");
  if (facts.plan.source.disinfectant != Disinfectant::none)
    cautions.push_back(
        "Treat every litre of tap water with a conditioner against chloramine before it meets animals or filter; standing does "
        "not remove it.");
  cautions.push_back(
      "Test before adding animals; ammonia and nitrite must read zero. Test kits and the animals overrule any forecast.");
  cautions.push_back("Find the cause before any medicine, and ask a vet or an experienced keeper.");
  cautions.push_back(
      "Never release animals, plants or tank water; re-home them. Check the lists of restricted kinds where you live.");
  if (somebody_joins(facts))
    cautions.push_back(
        "New animals wait three to four weeks in a tank of their own, with its own net and hose, before they join the others.");
  std::vector<std::string> listed;
  if (facts.plan.place.region.empty())
    for (const Kept& kept : facts.stock)
      if (kept.species && !kept.species->laws.empty()) listed.push_back(display_name(*kept.species));
  if (!listed.empty())
    cautions.push_back("Lists of some regions name " + joined(listed) + ": give the region, or check the law where you live.");
  return cautions;
}

}  // namespace shoalwright
