// SPDX-License-Identifier: MIT
#include "assess/cautions.h"

#include "tank/mass.h"

namespace shoalwright {

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
  return cautions;
}

}  // namespace shoalwright
