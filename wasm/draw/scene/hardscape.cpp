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

void add_limbs(Mesh& mesh, const PieceFrame& frame, const PieceKind& kind, Side side, const PieceLight& light) {
  const float mean = std::sqrt(frame.length * frame.height);
  float phase = 0.7f;
  for (const Limb& limb : kind.limbs) {
    std::vector<Vec3> spine;
    float length = 0;
    for (const LimbPoint& p : limb.points) {
      const Vec3 at = frame.at(p.u * frame.length, p.v * frame.depth, p.up * frame.height);
      if (!spine.empty()) length += std::hypot(at.x - spine.back().x, at.h - spine.back().h, at.z - spine.back().z);
      spine.push_back(at);
    }
    const int count = std::clamp(static_cast<int>(length / mean * 19), 6, 19);
    add_wood(mesh, spine, limb.radius_from * mean, limb.radius_to * mean, count, side, light, phase);
    phase += 1.7f;
  }
}

namespace {

/// Four tones of a material, the darkest first.
std::array<ImU32, 4> tones_of(Material material, const PieceLight& light) {
  const Palette& c = *light.colours;
  const auto toned = [&](ImU32 a, ImU32 b, ImU32 d, ImU32 e) {
    return std::array<ImU32, 4>{light.tone(a), light.tone(b), light.tone(d), light.tone(e)};
  };
  const ImU32 clay = mix(c.wood, c.leafR, 0.45f);
  switch (material) {
    case Material::wood: return toned(c.woodLo, mix(c.woodLo, c.wood, 0.6f), c.wood, c.woodHi);
    case Material::stone: break;
    case Material::slate: return toned(mix(c.stone4, c.woodLo, 0.3f), c.stone4, mix(c.stone4, c.stone2, 0.5f), c.stone2);
    case Material::limestone:
      return toned(mix(c.stone2, c.sandFd, 0.4f), mix(c.stone1, c.sandF, 0.5f), mix(c.stone3, c.sandF, 0.5f), c.sandF);
    case Material::clay: return toned(mix(clay, c.woodLo, 0.7f), mix(clay, c.woodLo, 0.25f), clay, mix(clay, c.sandF, 0.45f));
    case Material::leaf: return toned(c.leafC, c.leafA, c.leafA, c.leafB);
    case Material::litter: return toned(c.woodLo, c.wood, mix(c.wood, c.leafR, 0.4f), c.woodHi);
    case Material::device: return toned(c.lamp, mix(c.lamp, c.glassEdge, 0.25f), mix(c.lamp, c.glassEdge, 0.45f), c.glassEdge);
  }
  return toned(c.stone4, c.stone2, c.stone1, c.stone3);
}

bool breaks_rough(Material material) {
  return material == Material::stone || material == Material::slate || material == Material::limestone;
}

}  // namespace

void add_facets(Mesh& mesh, const PieceFrame& frame, const PieceKind& kind, std::uint32_t seed, Side side,
                const PieceLight& light) {
  const std::array<ImU32, 4> tones = tones_of(kind.material, light);
  const bool rough = breaks_rough(kind.material);
  // Farther ones first; from above what reaches higher last.
  std::vector<const Prism*> order;
  for (const Prism& prism : kind.prisms) order.push_back(&prism);
  const auto far = [&](const Prism& p) { return frame.at(p.u * frame.length, p.v * frame.depth, 0).z; };
  sort_stable(order, [&](const Prism* a, const Prism* b) {
    if (side == Side::above) return a->to < b->to;
    return far(*a) != far(*b) ? far(*a) > far(*b) : a->from < b->from;
  });
  for (const Prism* prism : order) {
    Dice dice{seed + static_cast<std::uint32_t>(prism - kind.prisms.data()) * 977u};
    const std::size_t sides = prism->outline.size();
    std::vector<Vec3> foot, top;
    for (const Spot& spot : prism->outline) {
      // No two corners of broken stone are alike; what is cut has straight edges.
      const float in = rough ? dice.between(0.93f, 1.0f) : 1.0f, lift = rough ? dice.between(-0.05f, 0.0f) : 0.0f;
      const float u = spot.u * prism->length, v = spot.v * prism->depth;
      foot.push_back(frame.at((prism->u + u * in) * frame.length, (prism->v + v * in) * frame.depth, prism->from * frame.height));
      top.push_back(frame.at((prism->u + prism->lean_u + u * prism->top * in) * frame.length,
                             (prism->v + prism->lean_v + v * prism->top * in) * frame.depth,
                             (prism->to + lift * (prism->to - prism->from)) * frame.height));
    }
    std::vector<Face> faces;
    for (std::size_t i = 0; i < sides; ++i) {
      const std::size_t next = (i + 1) % sides;
      if (!rough)
        faces.push_back({{foot[i], foot[next], top[next], top[i]}});
      else if (i % 2 == 0) {
        faces.push_back({{foot[i], foot[next], top[next]}});
        faces.push_back({{foot[i], top[next], top[i]}});
      } else {
        faces.push_back({{foot[i], foot[next], top[i]}});
        faces.push_back({{foot[next], top[next], top[i]}});
      }
    }
    faces.push_back({top});
    const float middle = (prism->from + prism->to) / 2;
    add_solid(mesh, faces, frame.at(prism->u * frame.length, prism->v * frame.depth, middle * frame.height), side, tones,
              rough ? 0.13f : 0.0f);
  }
}

void add_dome(Mesh& mesh, const PieceFrame& frame, const PieceKind& kind, Side side, const PieceLight& light) {
  const Palette& c = *light.colours;
  const std::array<ImU32, 4> tones = tones_of(kind.material, light);
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
