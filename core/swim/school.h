// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <vector>

#include "stocking/stock.h"
#include "swim/chance.h"
#include "swim/swim_room.h"

namespace shoalwright {

// Fish that swim as zones about each of them say: away from those too near, along with those at hand, toward those farther off.
// Reference: Couzin, I.D., Krause, J., James, R., Ruxton, G.D. & Franks, N.R. 2002. Collective memory and spatial sorting in
// animal groups. Journal of Theoretical Biology 218: 1-11. A course that each of them prefers is weighed against that: Couzin,
// I.D., Krause, J., Franks, N.R. & Levin, S.A. 2005. Effective leadership and decision-making in animal groups on the move.
// Nature 433: 513-516. Both from memory; zones are soft here, so that nothing jerks, and each fish keeps to a depth of its own.

inline constexpr int depth_strips = 18;        ///< six to each third of the water
inline constexpr float on_floor_share = 0.6f;  ///< kinds with this share of their time in the bottom third hug the floor

/// How the fish of one kind move.
struct SwimGroup {
  std::string species;
  float length_cm = 0, half_depth_cm = 0;  ///< total length; half the height of the body, which keeps off everything
  float cruise_cm_s = 0;
  float together = 0;                       ///< 1 a shoal, less a loose one, 0 each for itself
  bool on_floor = false;                    ///< hugs the floor
  bool crawls = false;                      ///< never leaves it
  std::array<float, depth_strips> depth{};  ///< share of its time, from the water line down
  std::size_t field = 0;                    ///< of the room
  float until_s = 0;                        ///< to the next course of the shoal
};

/// One fish. Its nose points along `heading`, which turns slowly; it moves at `velocity`.
struct Swimmer {
  std::uint16_t group = 0;
  SwimPoint place, velocity;  ///< cm, cm/s
  SwimPoint heading;          ///< level, length 1
  SwimPoint course;           ///< the same, where it would go of itself
  float spin = 0;             ///< turn of the heading, radians a second, from right toward back
  float in_vain_s = 0;        ///< how long it has turned or pushed in vain
  float pace = 1;             ///< of its cruising speed
  float height_cm = 0;        ///< the depth that it seeks, over the inside bottom
  float until_s = 0;          ///< to the next
};

struct School {
  SwimRoom room;
  std::vector<SwimGroup> groups;  ///< known kinds, in stock order
  std::vector<Swimmer> fish;      ///< group after group
  Chance chance;
  bool seeks_depth = true;  ///< false: each height is as good as another
};

/// Fish of a plan at places drawn by the depths that they seek, the same for the same seed; at most so many: of a larger stock
/// each group is cut in proportion, to one at least. Empty without water. `bodies` are of the plan.
School school_of(const Plan& plan, const std::vector<Kept>& stock, const BodyRooms& bodies, std::uint64_t seed, int most = 200);

/// Lets them swim on by up to 0.1 s. Each stays in open water, and half its height off everything where it has so much room; one
/// that is caught in a corner may squeeze through.
void step(School& school, float seconds);

/// A depth that a fish of a group likes now, cm over the inside bottom.
float height_for(School& school, const SwimGroup& group);

/// A level way of length 1, each as likely as another.
SwimPoint any_course(Chance& chance);

}  // namespace shoalwright
