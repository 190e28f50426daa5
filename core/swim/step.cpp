// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "swim/school.h"

namespace shoalwright {

namespace {

// Zones in body lengths. In schools the nearest neighbour is about one length off, in loose shoals one to three: Partridge, B.L.,
// Pitcher, T., Cullen, J.M. & Wilson, J. 1980. The three-dimensional structure of fish schools. Behavioral Ecology and
// Sociobiology 6: 277-288 (from memory). The others: tuned to look right, no source.
constexpr float too_near_bl = 1.0f, along_bl = 3.0f, toward_bl = 12.0f;
constexpr float course_weight = 0.6f, toward_weight = 0.6f, apart_weight = 2.0f, glass_weight = 3;
constexpr float turn_s = 2.2f, most_spin = 2.5f, spin_s = 6.0f;  // how fast a turn follows the wish, radians/s at most, how soon
constexpr float patience_s = 3;                                  // after turning or pushing in vain for so long it is caught
constexpr float ahead_s = 0.8f;                                  // glass and pieces are seen so far ahead

/// What the others make a fish wish.
struct Others {
  SwimPoint apart, along, toward;
  int along_count = 0, toward_count = 0;
};

float dot(const SwimPoint& a, const SwimPoint& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
float length(const SwimPoint& way) { return std::sqrt(dot(way, way)); }
float level_length(const SwimPoint& way) { return std::sqrt(way.x * way.x + way.z * way.z); }
float level_dot(const SwimPoint& a, const SwimPoint& b) { return a.x * b.x + a.z * b.z; }
/// The way turned by a small angle.
SwimPoint turned(const SwimPoint& way, float radians) {
  const SwimPoint to{way.x - way.z * radians, 0, way.z + way.x * radians};
  return to * (1 / level_length(to));
}

std::vector<Others> look_round(const School& school) {
  std::vector<Others> all(school.fish.size());
  for (std::size_t a = 0; a < all.size(); ++a)
    for (std::size_t b = a + 1; b < all.size(); ++b) {
      const Swimmer &one = school.fish[a], &other = school.fish[b];
      const SwimGroup &kind = school.groups[one.group], &other_kind = school.groups[other.group];
      const SwimPoint way = other.place + one.place * -1;
      const float level = way.x * way.x + way.z * way.z, squared = level + way.y * way.y;
      const float near_cm = too_near_bl * (kind.length_cm + other_kind.length_cm) / 2 * (one.group == other.group ? 1 : 0.7f);
      if (squared < near_cm * near_cm) {
        const float cm = std::sqrt(squared) + 0.01f;
        const SwimPoint push = way * ((near_cm - cm) / (near_cm * cm));
        all[a].apart = all[a].apart + push * -1;
        all[b].apart = all[b].apart + push;
      }
      if (one.group != other.group || !(kind.together > 0)) continue;
      // What stands between two of a shoal hides them from each other.
      if (!is_open(school.room, kind.field, one.place + way * 0.5f)) continue;
      const float length_cm = kind.length_cm;
      if (level < along_bl * along_bl * length_cm * length_cm) {
        all[a].along = all[a].along + other.heading;
        all[b].along = all[b].along + one.heading;
        ++all[a].along_count, ++all[b].along_count;
      } else if (level < toward_bl * toward_bl * length_cm * length_cm) {
        const SwimPoint pull = way * (1 / std::sqrt(level));
        all[a].toward = all[a].toward + pull;
        all[b].toward = all[b].toward + pull * -1;
        ++all[a].toward_count, ++all[b].toward_count;
      }
    }
  return all;
}

/// How near something ahead is, 0 to 1, and the way off it.
struct Ahead {
  float near = 0;
  SwimPoint off;
};

Ahead look_ahead(const SwimRoom& room, const Swimmer& fish, const SwimGroup& group, float keep_cm) {
  const float reach_cm = ahead_s * group.cruise_cm_s + group.length_cm / 2;
  float cm = 0;
  while (cm < reach_cm) {
    const Clearance seen = clearance_at(room, group.field, fish.place + fish.heading * cm);
    if (seen.cm < keep_cm && level_dot(seen.away, fish.heading) < 0) return {1 - cm / reach_cm, seen.away};
    cm += std::max(seen.cm - keep_cm, room.cell_cm / 2);
  }
  return {};
}

/// Moves as far as water is: on, else along what is in the way, else up or down, else not at all. Whether it went on or along.
bool move(const SwimRoom& room, Swimmer& fish, std::size_t field, const Clearance& here, float keep_cm, float seconds) {
  const float most_cm = std::max(here.cm, room.cell_cm / 2);  // what is taken lies farther off: nothing is jumped over
  const SwimPoint away = here.away * (1 / (length(here.away) + 1e-6f));
  SwimPoint by = fish.velocity * seconds;
  for (int trial = 0; trial < 3; ++trial) {
    const float cm = length(by);
    if (cm > most_cm) by = by * (most_cm / cm);
    const SwimPoint to = fish.place + by;
    const float clear_cm = clearance_at(room, field, to).cm;
    if ((clear_cm >= keep_cm || clear_cm > here.cm) && is_open(room, field, to)) {
      fish.place = to;
      return trial < 2;
    }
    const float into = dot(by, away);
    by = trial ? SwimPoint{0, fish.velocity.y * seconds, 0} : by + away * (0.02f * cm - std::min(into, 0.0f));
  }
  return false;
}

}  // namespace

void step(School& school, float seconds) {
  const float s = std::clamp(seconds, 0.0f, 0.1f);
  const std::vector<Others> others = look_round(school);
  Chance& chance = school.chance;
  std::size_t i = 0;
  for (std::size_t g = 0; g < school.groups.size(); ++g) {
    SwimGroup& group = school.groups[g];
    group.until_s -= s;
    const bool new_course = group.together > 0 && group.until_s <= 0;
    const SwimPoint shared = any_course(chance);
    if (new_course) group.until_s = chance.between(6, 16);
    for (; i < school.fish.size() && school.fish[i].group == g; ++i) {
      Swimmer& fish = school.fish[i];
      const Others& seen = others[i];
      // A pit that it turns round in without finding a way on is left by trying, and through gaps that are narrow for it.
      const bool caught = fish.in_vain_s > patience_s;
      const Clearance here = clearance_at(school.room, group.field, fish.place);
      const float keep_cm = caught ? 0 : std::min(group.half_depth_cm, here.cm);
      const SwimPoint off = here.away * std::max(0.0f, 1.2f - here.cm / group.half_depth_cm);
      fish.until_s = std::min(fish.until_s, caught ? 1.5f : 15.0f) - s;
      if (fish.until_s <= 0) {
        fish.until_s = chance.between(5, 15);
        fish.pace = chance.between(0.7f, 1.2f);
        fish.height_cm = caught ? fish.place.y + chance.around() * school.room.third_cm : height_for(school, group);
        if (caught || !(group.together > 0)) fish.course = any_course(chance);
      }
      if (new_course) fish.course = shared;
      fish.course = turned(fish.course, chance.between(-1, 1) * std::sqrt(s));
      const Ahead ahead = look_ahead(school.room, fish, group, keep_cm);
      // The course is thrown back by glass as light is, so that in the long run no part of the tank is favoured.
      const float steep = level_length(ahead.off), into = level_dot(fish.course, ahead.off);
      if (ahead.near > 0.5f && steep > 0.5f && into < 0)
        fish.course = turned(fish.course + ahead.off * (-2 * into / (steep * steep)), 0);

      SwimPoint wish = fish.heading * 0.3f + fish.course * course_weight + seen.apart * apart_weight +
                       ahead.off * (glass_weight * ahead.near) + off;
      const float heed = caught ? 0 : group.together * (1 - ahead.near);
      if (seen.along_count) wish = wish + seen.along * (heed / static_cast<float>(seen.along_count));
      if (seen.toward_count) wish = wish + seen.toward * (toward_weight * heed / static_cast<float>(seen.toward_count));
      const float wished = level_length(wish) + 1e-6f;
      const float straight = level_dot(fish.heading, wish) / wished;
      float side = (fish.heading.x * wish.z - fish.heading.z * wish.x) / wished;
      // Once it turns round it goes on that way: in a corner each wall alone would send it to the other.
      if (straight < 0) side = (ahead.near > 0 && std::abs(fish.spin) > 0.2f ? fish.spin : side) < 0 ? -1 : 1;
      const float most = group.crawls ? most_spin / 4 : most_spin;
      fish.spin += (std::clamp(side * turn_s, -most, most) - fish.spin) * std::min(1.0f, spin_s * s);
      fish.heading = turned(fish.heading, fish.spin * s);

      const float speed = group.cruise_cm_s * fish.pace * (0.4f + 0.6f * std::max(0.0f, straight)) * (1 - 0.6f * ahead.near);
      const float climb_cm_s = 0.5f * group.cruise_cm_s + 0.5f;
      float seek_cm = fish.height_cm - fish.place.y;
      if (off.y * seek_cm < 0) seek_cm = 0;  // it does not press on what it rests over or under
      const float climb =
          std::clamp(seek_cm * 0.8f + (2 * ahead.near * ahead.off.y + off.y) * climb_cm_s + seen.apart.y * climb_cm_s,
                     -climb_cm_s, climb_cm_s);
      const SwimPoint aim = fish.heading * speed + SwimPoint{0, climb, 0};
      fish.velocity = fish.velocity + (aim + fish.velocity * -1) * std::min(1.0f, 3 * s);
      const bool went = move(school.room, fish, group.field, here, keep_cm, s),
                 in_vain = !went || (straight < 0 && ahead.near > 0);
      fish.in_vain_s = in_vain ? std::min(fish.in_vain_s + s, 2 * patience_s) : std::max(0.0f, fish.in_vain_s - s);
    }
  }
}

}  // namespace shoalwright
