// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>
#include <cmath>

#include "draw/scene/piece.h"
#include "units/order.h"

namespace shoalwright {

namespace {

// Light falls from above, a little from the left and from the front.
constexpr Vec3 light_from{-0.38f, 0.82f, -0.43f};

Vec3 minus(Vec3 a, Vec3 b) { return {a.x - b.x, a.h - b.h, a.z - b.z}; }
Vec3 cross(Vec3 a, Vec3 b) { return {a.h * b.z - a.z * b.h, a.z * b.x - a.x * b.z, a.x * b.h - a.h * b.x}; }
float dot(Vec3 a, Vec3 b) { return a.x * b.x + a.h * b.h + a.z * b.z; }
Vec3 scaled_to_one(Vec3 a) {
  const float size = std::sqrt(dot(a, a));
  return size > 1e-9f ? Vec3{a.x / size, a.h / size, a.z / size} : Vec3{};
}

// Between four tones, 0 the darkest to 3 the lightest.
ImU32 tone_of_four(const std::array<ImU32, 4>& tones, float at) {
  at = std::clamp(at, 0.0f, 2.999f);
  const auto i = static_cast<size_t>(at);
  return mix(tones[i], tones[i + 1], at - static_cast<float>(i));
}

// By how squarely the light falls on a face.
ImU32 tone_by_light(const std::array<ImU32, 4>& tones, float lit) { return tone_of_four(tones, lit * 2.9f + 0.6f); }

struct Face {
  std::vector<Vec3> corners;
};

// Faces with flat tones, those turned away left out, farther ones first; beneath them the outline with a smooth rim.
void add_solid(Mesh& mesh, const std::vector<Face>& faces, Vec3 middle, Side side, const std::array<ImU32, 4>& tones,
               float rough = 0) {
  struct Drawn {
    float depth;
    ImU32 colour;
    const Face* face;
  };
  std::vector<Drawn> drawn;
  std::vector<Vec> all;
  const Vec3 viewer = side == Side::front ? Vec3{0, 0, -1} : Vec3{0, 1, 0};
  for (const Face& face : faces) {
    Vec3 centre{};
    for (const Vec3 p : face.corners) {
      centre = {centre.x + p.x, centre.h + p.h, centre.z + p.z};
      all.push_back(seen(p, side));
    }
    const float share = 1 / static_cast<float>(face.corners.size());
    centre = {centre.x * share, centre.h * share, centre.z * share};
    Vec3 normal = scaled_to_one(cross(minus(face.corners[1], face.corners[0]), minus(face.corners[2], face.corners[0])));
    if (dot(normal, minus(centre, middle)) < 0) normal = {-normal.x, -normal.h, -normal.z};
    if (!(dot(normal, viewer) > 0.01f)) continue;
    // No two neighbours quite alike, as on broken stone.
    const float own = rough * std::sin(static_cast<float>(&face - faces.data()) * 2.4f);
    drawn.push_back({dot(centre, viewer), tone_by_light(tones, dot(normal, light_from) + own), &face});
  }
  if (drawn.empty()) return;
  sort_stable(drawn, [](const Drawn& a, const Drawn& b) { return a.depth < b.depth; });
  const std::vector<Vec> hull = convex_hull(all);
  Vec hull_middle{};
  for (const Vec p : hull) hull_middle = hull_middle + p * (1 / static_cast<float>(hull.size()));
  add_fan(mesh, hull, hull_middle, tones[1], tones[1]);
  for (const Drawn& one : drawn) {
    const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
    for (const Vec3 p : one.face->corners) add_vertex(mesh, seen(p, side), one.colour);
    for (std::uint32_t i = 1; i + 1 < one.face->corners.size(); ++i) add_triangle(mesh, first, first + i, first + i + 1);
  }
}

// One limb: a spine in the tank with a radius at each point, shaded as a round bar.
void add_wood(Mesh& mesh, std::span<const Vec3> spine, float radius_from, float radius_to, int count, Side side,
              const PieceLight& light, float phase) {
  std::vector<Vec> flat;
  for (const Vec3 p : spine) flat.push_back(seen(p, side));
  // From above the wood is drawn smaller and takes fewer stations.
  const std::vector<Vec> line = smooth_even(flat, side == Side::front ? count : std::max(5, count * 3 / 5));
  const std::array<ImU32, 4> tones{light.tone(light.colours->woodLo), light.tone(light.colours->wood),
                                   light.tone(mix(light.colours->wood, light.colours->woodHi, 0.5f)),
                                   light.tone(light.colours->woodHi)};
  const Vec lit = unit(Vec{light_from.x, side == Side::front ? light_from.h : 0.75f});
  // Both ends are rounded off by one more station each.
  struct Station {
    Vec at, across;
    float radius;
  };
  std::vector<Station> stations;
  for (size_t i = 0; i < line.size(); ++i) {
    const float t = static_cast<float>(i) / static_cast<float>(line.size() - 1);
    const Vec along = unit(line[std::min(i + 1, line.size() - 1)] - line[i > 0 ? i - 1 : 0]);
    const float radius =
        lerp(radius_from, radius_to, std::pow(t, 0.85f)) * (1 + 0.13f * std::sin(t * 16 + phase)) * std::min(1.0f, 0.8f + t * 4);
    if (i == 0) stations.push_back({line[i] - along * (radius * 0.5f), {-along.y, along.x}, radius * 0.55f});
    stations.push_back({line[i], {-along.y, along.x}, radius});
    if (i + 1 == line.size()) stations.push_back({line[i] + along * (radius * 1.1f), {-along.y, along.x}, radius * 0.25f});
  }
  constexpr float offsets[] = {1.0f, 0.62f, 0.0f, -0.62f, -1.0f};
  Rail rails[std::size(offsets)];
  for (const Station& station : stations) {
    const float way = station.across.x * lit.x + station.across.y * lit.y;
    for (size_t r = 0; r < std::size(offsets); ++r) {
      const float o = offsets[r], facing = way * o;
      rails[r].points.push_back(station.at + station.across * (o * station.radius));
      // Lit from above: brightest a little inside the upper rim, dark along the lower edge.
      rails[r].colours.push_back(tone_of_four(tones, 1.25f + 1.9f * facing - (facing > 0.75f ? 0.7f : 0.0f)));
    }
  }
  add_sheet(mesh, rails);
  // Along stout limbs a crisp light above and a dark seam below, as on split bark.
  if (radius_from < 0.7f || side == Side::above) return;
  struct Seam {
    float offset, width;
    ImU32 colour;
  };
  const float up =
      stations[stations.size() / 2].across.x * lit.x + stations[stations.size() / 2].across.y * lit.y >= 0 ? 1.0f : -1.0f;
  const Seam seams[3] = {{0.5f * up, 0.34f, with_alpha(mix(tones[3], IM_COL32(255, 246, 226, 255), 0.16f), 0.75f)},
                         {0.05f * up, 0.1f, with_alpha(tones[0], 0.55f)},
                         {-0.55f * up, 0.3f, with_alpha(tones[0], 0.55f)}};
  for (const Seam& seam : seams) {
    std::vector<Vec> run;
    const size_t from = stations.size() / 9 + 1, to = stations.size() * 4 / 5;
    for (size_t i = from; i <= to; ++i) {
      const Station& s = stations[i];
      run.push_back(s.at + s.across * (s.radius * (seam.offset + 0.07f * std::sin(static_cast<float>(i) * 1.3f + phase))));
    }
    if (run.size() > 2) add_stroke(mesh, run, radius_from * seam.width, radius_to * seam.width * 0.6f, seam.colour);
  }
}

}  // namespace

void add_shadow(Mesh& mesh, const PieceFrame& frame, Side side, const PieceLight& light) {
  const float wide = std::abs(frame.cos_turn) * frame.length + std::abs(frame.sin_turn) * frame.depth,
              deep = std::abs(frame.sin_turn) * frame.length + std::abs(frame.cos_turn) * frame.depth;
  const ImU32 dark = with_alpha(mix(light.colours->woodLo, IM_COL32(0, 0, 0, 255), 0.4f), 0.34f);
  // From the front a flat oval at the foot; from above it lies away from the light.
  const Vec centre = side == Side::front ? Vec{frame.x + 0.04f * wide, frame.foot}
                                         : Vec{frame.x + 0.1f * frame.height, frame.z + 0.08f * frame.height};
  const Vec radius =
      side == Side::front ? Vec{wide * 0.58f, std::min(0.9f, 0.05f * deep + 0.25f)} : Vec{wide * 0.54f, deep * 0.54f};
  constexpr int corners = 20;
  Rail rim, core;
  for (int i = 0; i <= corners; ++i) {
    const float angle = static_cast<float>(i) * 6.2831853f / corners;
    const Vec out{std::cos(angle) * radius.x, std::sin(angle) * radius.y};
    rim.points.push_back(centre + out);
    core.points.push_back(centre + out * 0.6f);
  }
  rim.colours.assign(rim.points.size(), dark & ~IM_COL32_A_MASK);
  core.colours.assign(core.points.size(), dark);
  Rail middle = core;
  middle.points.assign(core.points.size(), centre);
  const Rail rails[3] = {rim, core, middle};
  add_sheet(mesh, rails, false);
}

void add_branch(Mesh& mesh, const PieceFrame& frame, std::uint32_t seed, Side side, const PieceLight& light) {
  struct Limb {
    std::vector<Vec> points;  // share of the length, share of the height
    float radius_from, radius_to;
    int count;
  };
  // Two growths: one climbs from its root to a far tip, one lies low in an arch. Shares of length and height; radii of the mean.
  static const std::vector<Limb> climbing = {
      {{{0.28f, 0.23f}, {0.3f, 0.53f}, {0.24f, 0.76f}, {0.32f, 1.0f}}, 0.042f, 0.011f, 10},
      {{{0.47f, 0.52f}, {0.53f, 0.75f}, {0.64f, 0.88f}, {0.72f, 0.985f}}, 0.034f, 0.010f, 9},
      {{{0.72f, 0.62f}, {0.86f, 0.585f}, {1.0f, 0.52f}}, 0.024f, 0.008f, 7},
      {{{0.0f, 0.05f}, {0.18f, 0.23f}, {0.36f, 0.45f}, {0.52f, 0.57f}, {0.73f, 0.625f}, {0.96f, 0.77f}}, 0.078f, 0.015f, 20},
      {{{0.12f, 0.16f}, {0.29f, 0.19f}, {0.47f, 0.12f}, {0.62f, 0.0f}}, 0.05f, 0.022f, 11}};
  static const std::vector<Limb> lying = {
      {{{0.3f, 0.42f}, {0.45f, 0.72f}, {0.66f, 1.0f}}, 0.05f, 0.013f, 8},
      {{{0.14f, 0.22f}, {0.09f, 0.55f}, {0.2f, 0.86f}}, 0.042f, 0.014f, 7},
      {{{0.58f, 0.48f}, {0.76f, 0.7f}, {0.9f, 0.74f}}, 0.033f, 0.010f, 7},
      {{{0.0f, 0.08f}, {0.24f, 0.34f}, {0.5f, 0.46f}, {0.78f, 0.34f}, {1.0f, 0.06f}}, 0.09f, 0.033f, 18}};
  const std::vector<Limb>& limbs = frame.height > 0.42f * frame.length ? climbing : lying;
  Dice dice{seed};
  const float mean = std::sqrt(frame.length * frame.height);
  const float bow = dice.between(0.35f, 0.9f), lean = dice.between(-0.25f, 0.25f);
  for (const Limb& limb : limbs) {
    std::vector<Vec3> spine;
    const float drift = dice.between(-0.45f, 0.45f);
    for (size_t i = 0; i < limb.points.size(); ++i) {
      const Vec p = limb.points[i];
      const float t = static_cast<float>(i) / static_cast<float>(limb.points.size() - 1);
      const bool trunk = &limb == &limbs.back() || limb.points.front().x < 0.05f;
      // Across its depth the wood swings to and fro; side limbs leave the trunk to one side.
      const float swing = 0.32f * bow * std::sin(p.x * 5.2f + lean * 6) + (trunk ? 0.0f : drift * t);
      const float wobble = i > 0 && i + 1 < limb.points.size() ? dice.between(-0.025f, 0.025f) : 0.0f;
      spine.push_back(frame.at((p.x - 0.5f) * frame.length, std::clamp(swing, -0.5f, 0.5f) * frame.depth,
                               std::clamp(p.y + wobble, 0.0f, 1.0f) * frame.height));
    }
    add_wood(mesh, spine, limb.radius_from * mean, limb.radius_to * mean, limb.count, side, light, dice.between(0, 6));
  }
}

void add_stone(Mesh& mesh, const PieceFrame& frame, std::uint32_t seed, Side side, const PieceLight& light) {
  Dice dice{seed};
  // Boulder, slab or peak: how wide the stone still is at three heights.
  struct Build {
    float shoulder_up, shoulder, brow_up, brow, top;
  };
  constexpr Build builds[3] = {
      {0.32f, 1.0f, 0.76f, 0.66f, 1.0f}, {0.4f, 1.0f, 0.88f, 0.6f, 1.0f}, {0.3f, 0.95f, 0.68f, 0.5f, 1.0f}};
  const Build build = builds[std::min(2, static_cast<int>(dice.next() * 3))];
  constexpr int sides = 8;
  std::array<std::array<Vec3, sides>, 3> ring;
  const float start = dice.between(0, 6.28f), slant = dice.between(-0.16f, 0.16f);
  for (int i = 0; i < sides; ++i) {
    const float angle = start + (static_cast<float>(i) + dice.between(-0.28f, 0.28f)) * 6.2831853f / sides;
    const float c = std::cos(angle) * 0.5f * frame.length, s = std::sin(angle) * 0.5f * frame.depth;
    const float foot = dice.between(0.8f, 0.92f), shoulder = build.shoulder * dice.between(0.84f, 1.0f),
                brow = build.brow * dice.between(0.78f, 1.08f);
    const float lift = slant * std::cos(angle);
    const auto k = static_cast<size_t>(i);
    ring[0][k] = frame.at(c * foot, s * foot, 0);
    ring[1][k] = frame.at(c * shoulder, s * shoulder,
                          frame.height * std::clamp(build.shoulder_up + lift + dice.between(-0.07f, 0.07f), 0.1f, 0.9f));
    ring[2][k] = frame.at(c * brow, s * brow,
                          frame.height * std::clamp(build.brow_up + lift * 0.6f + dice.between(-0.05f, 0.05f), 0.2f, 0.99f));
  }
  const Vec3 peak =
      frame.at(dice.between(-0.12f, 0.12f) * frame.length, dice.between(-0.12f, 0.12f) * frame.depth, frame.height * build.top);
  std::vector<Face> faces;
  for (size_t r = 0; r < 2; ++r) {
    for (size_t i = 0; i < sides; ++i) {
      const size_t next = (i + 1) % sides;
      // Cut along alternating diagonals, so that facets do not line up.
      if (i % 2 == r % 2) {
        faces.push_back({{ring[r][i], ring[r][next], ring[r + 1][next]}});
        faces.push_back({{ring[r][i], ring[r + 1][next], ring[r + 1][i]}});
      } else {
        faces.push_back({{ring[r][i], ring[r][next], ring[r + 1][i]}});
        faces.push_back({{ring[r][next], ring[r + 1][next], ring[r + 1][i]}});
      }
    }
  }
  for (size_t i = 0; i < sides; ++i) faces.push_back({{ring[2][i], ring[2][(i + 1) % sides], peak}});
  const Palette& p = *light.colours;
  add_solid(mesh, faces, frame.at(0, 0, frame.height * 0.4f), side,
            {light.tone(p.stone4), light.tone(p.stone2), light.tone(p.stone1), light.tone(p.stone3)}, 0.13f);
}

void add_stones(Mesh& mesh, const PieceFrame& frame, std::uint32_t seed, Side side, const PieceLight& light) {
  // One large stone, two smaller ones at its feet and a little before it; shares of the footprint.
  struct Part {
    float u, v, length, depth, height;
  };
  constexpr Part parts[3] = {
      {-0.05f, 0.12f, 0.56f, 0.76f, 1.0f}, {-0.34f, -0.16f, 0.32f, 0.6f, 0.62f}, {0.3f, -0.14f, 0.4f, 0.66f, 0.7f}};
  std::vector<std::pair<PieceFrame, std::uint32_t>> stones;
  for (const Part& part : parts) {
    PieceFrame one = frame;
    const Vec3 at = frame.at(part.u * frame.length, part.v * frame.depth, 0);
    one.x = at.x;
    one.z = at.z;
    one.length = part.length * frame.length;
    one.depth = part.depth * frame.depth;
    one.height = part.height * frame.height;
    stones.push_back({one, seed + static_cast<std::uint32_t>(&part - parts) * 977u});
  }
  // Farther ones first; from above the tallest last.
  sort_stable(stones, [side](const auto& a, const auto& b) {
    return side == Side::front ? a.first.z > b.first.z : a.first.height < b.first.height;
  });
  for (const auto& [one, own_seed] : stones) {
    add_shadow(mesh, one, side, light);
    add_stone(mesh, one, own_seed, side, light);
  }
}

void add_block(Mesh& mesh, const PieceFrame& frame, Side side, const PieceLight& light) {
  const float u = frame.length / 2, v = frame.depth / 2, h = frame.height;
  const auto p = [&](float a, float b, float up) { return frame.at(a * u, b * v, up * h); };
  const std::vector<Face> faces = {{{p(-1, -1, 0), p(1, -1, 0), p(1, -1, 1), p(-1, -1, 1)}},
                                   {{p(1, -1, 0), p(1, 1, 0), p(1, 1, 1), p(1, -1, 1)}},
                                   {{p(1, 1, 0), p(-1, 1, 0), p(-1, 1, 1), p(1, 1, 1)}},
                                   {{p(-1, 1, 0), p(-1, -1, 0), p(-1, -1, 1), p(-1, 1, 1)}},
                                   {{p(-1, -1, 1), p(1, -1, 1), p(1, 1, 1), p(-1, 1, 1)}}};
  const Palette& c = *light.colours;
  add_solid(mesh, faces, frame.at(0, 0, h / 2), side,
            {light.tone(c.stone4), light.tone(c.stone2), light.tone(c.stone1), light.tone(c.stone3)});
}

void add_cave(Mesh& mesh, const PieceFrame& frame, Side side, const PieceLight& light) {
  // A dome of fired clay with one low door, shaded round.
  const Palette& c = *light.colours;
  const ImU32 clay = mix(c.wood, c.leafR, 0.45f);
  const std::array<ImU32, 4> tones{light.tone(mix(clay, c.woodLo, 0.7f)), light.tone(mix(clay, c.woodLo, 0.25f)),
                                   light.tone(clay), light.tone(mix(clay, c.sandF, 0.45f))};
  // From the front the half between the two outermost points shows, from above all of it.
  const float widest = std::atan2(-frame.depth * frame.sin_turn * frame.flip, frame.length * frame.cos_turn);
  const float from = side == Side::front ? widest + (frame.flip < 0 ? 0.0f : 3.1415927f) : 0.0f,
              sweep = side == Side::front ? 3.1415927f : 6.2831853f;
  constexpr int stations = 15, rings = 5;
  std::vector<Rail> rails(rings + 1);
  for (int r = 0; r <= rings; ++r) {
    const float rise = static_cast<float>(r) / rings * 1.5708f, up = std::sin(rise), wide = std::cos(rise);
    for (int i = 0; i < stations; ++i) {
      const float angle = from + sweep * static_cast<float>(i) / (stations - 1), ca = std::cos(angle), sa = std::sin(angle);
      const Vec3 at = frame.at(ca * wide * frame.length / 2, sa * wide * frame.depth / 2, up * frame.height);
      // The normal of an ellipsoid leans towards its short axes.
      const Vec3 root = frame.at(0, 0, 0),
                 lean = frame.at(ca * wide / frame.length, sa * wide / frame.depth, up / (2 * frame.height));
      const Vec3 normal = scaled_to_one(minus(lean, root));
      rails[static_cast<size_t>(r)].points.push_back(seen(at, side));
      rails[static_cast<size_t>(r)].colours.push_back(tone_of_four(tones, 0.4f + 2.4f * std::max(0.0f, dot(normal, light_from))));
    }
  }
  add_sheet(mesh, rails);
  // The door looks along the piece's own front; from the front it shows where that faces the viewer.
  const ImU32 dark = light.tone(mix(c.woodLo, IM_COL32(0, 0, 0, 255), 0.45f));
  std::vector<Vec> door;
  const float half = std::min(frame.length * 0.2f, frame.depth * 0.3f), tall = frame.height * 0.52f;
  if (side == Side::front) {
    const float facing = frame.cos_turn;
    if (!(facing > 0.15f)) return;
    for (int i = 0; i <= 10; ++i) {
      const float angle = static_cast<float>(i) / 10 * 3.1415927f;
      const float u = -std::cos(angle) * half, up = std::sin(angle) * tall;
      const float v = -0.5f * frame.depth *
                      std::sqrt(std::max(0.0f, 1 - std::pow(2 * u / frame.length, 2.0f) - std::pow(up / frame.height, 2.0f)));
      door.push_back(seen(frame.at(u, v, up), side));
    }
    add_fan(mesh, door, lerp(door.front(), door.back(), 0.5f), dark, dark);
  } else {
    const Vec3 corners[4] = {frame.at(-half, -frame.depth * 0.5f, 0), frame.at(half, -frame.depth * 0.5f, 0),
                             frame.at(half * 0.7f, -frame.depth * 0.36f, 0), frame.at(-half * 0.7f, -frame.depth * 0.36f, 0)};
    Vec middle{};
    for (const Vec3 p : corners) {
      door.push_back(seen(p, side));
      middle = middle + door.back() * 0.25f;
    }
    add_fan(mesh, door, middle, dark, dark);
  }
}

void add_box(Mesh& mesh, const PieceFrame& frame, Side side, const PieceLight& light) {
  std::vector<Vec> corners;
  for (const float u : {-0.5f, 0.5f}) {
    for (const float v : {-0.5f, 0.5f}) {
      for (const float up : {0.0f, 1.0f})
        corners.push_back(seen(frame.at(u * frame.length, v * frame.depth, up * frame.height), side));
    }
  }
  const std::vector<Vec> hull = convex_hull(corners);
  Vec middle{};
  for (const Vec p : hull) middle = middle + p * (1 / static_cast<float>(hull.size()));
  const ImU32 fill = with_alpha(light.tone(light.colours->glass), 0.35f);
  add_fan(mesh, hull, middle, fill, fill);
  std::vector<Vec> rim = hull;
  rim.push_back(hull.front());
  add_stroke(mesh, rim, 0.12f, 0.12f, light.colours->glassEdge);
}

}  // namespace shoalwright
