// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/scene/piece.h"
#include "units/order.h"

namespace shoalwright {

namespace {

struct Stand {
  float u, v;  // shares of length and depth, -0.5 to 0.5
};

// Places spread evenly over an ellipse, without two on one spot (a sunflower's order, shaken a little).
std::vector<Stand> spread(int count, Dice& dice) {
  std::vector<Stand> out;
  const float turn = dice.between(0, 6.28f);
  for (int i = 0; i < count; ++i) {
    const float radius = 0.5f * std::sqrt((static_cast<float>(i) + 0.5f) / static_cast<float>(count));
    const float angle = turn + static_cast<float>(i) * 2.399963f + dice.between(-0.25f, 0.25f);
    out.push_back({radius * std::cos(angle), radius * std::sin(angle)});
  }
  return out;
}

int held(float value, int low, int high) { return std::clamp(static_cast<int>(value), low, high); }

}  // namespace

void add_thicket(Mesh& mesh, const PieceFrame& frame, std::uint32_t seed, Side side, const PieceLight& light) {
  Dice dice{seed};
  const Palette& c = *light.colours;
  std::vector<Stand> stands = spread(held(frame.length * frame.depth / 18, 4, 13), dice);
  struct Stem {
    Vec3 foot;
    float tall, lean, leaf;
    bool red;
  };
  std::vector<Stem> stems;
  for (const Stand& stand : stands) {
    stems.push_back({frame.at(stand.u * frame.length * 0.92f, stand.v * frame.depth * 0.92f, 0),
                     frame.height * dice.between(0.62f, 1.0f), dice.between(-1, 1), std::clamp(frame.height * 0.09f, 1.1f, 2.9f),
                     dice.next() < 0.2f});
  }
  stems.front().tall = frame.height;
  sort_stable(stems, [](const Stem& a, const Stem& b) { return a.foot.z > b.foot.z; });
  for (size_t k = 0; k < stems.size(); ++k) {
    const Stem& stem = stems[k];
    // Stems at the back of the thicket are darker and bluer.
    const float nearness = static_cast<float>(k) / static_cast<float>(std::max<size_t>(1, stems.size() - 1));
    const float back = 0.3f * (1 - nearness);
    const ImU32 dark = mix(light.tone(c.leafC), light.water, back * 0.7f), middle = mix(light.tone(c.leafA), light.water, back);
    const ImU32 bright = mix(light.tone(mix(c.leafA, c.leafB, 0.35f + 0.65f * nearness)), light.water, back),
                tip = stem.red ? light.tone(c.leafR) : bright;
    if (side == Side::above) {
      for (int j = 0; j < 6; ++j) {
        const float angle = static_cast<float>(j) * 1.0472f + static_cast<float>(k);
        add_leaf(mesh, seen(stem.foot, side), angle, stem.leaf * 1.15f, stem.leaf * 0.26f,
                 j % 2 != 0 ? middle : (stem.red && j == 0 ? tip : bright), true);
      }
      continue;
    }
    const int nodes = held(stem.tall / 1.95f, 4, 15);
    std::vector<Vec> line;
    for (int i = 0; i <= nodes; ++i) {
      const float t = static_cast<float>(i) / static_cast<float>(nodes);
      line.push_back({stem.foot.x + stem.lean * 1.6f * t * t + 0.25f * std::sin(static_cast<float>(i) * 0.9f + stem.foot.x),
                      stem.foot.h + stem.tall * t});
    }
    add_stroke(mesh, even(line, 5), 0.26f, 0.12f, dark);
    const bool smooth_rim = nearness > 0.5f;
    for (int i = 1; i <= nodes; ++i) {
      const float t = static_cast<float>(i) / static_cast<float>(nodes);
      const float size = stem.leaf * (0.65f + 0.5f * std::sin(3.1416f * std::min(1.0f, t * 0.85f + 0.15f)));
      const ImU32 colour = t > 0.8f ? tip : (i % 2 != 0 ? middle : bright);
      // Pairs are never quite level.
      const float up = 0.25f + 0.5f * t, right = dice.between(-0.14f, 0.14f), left = dice.between(-0.14f, 0.14f),
                  long_one = dice.between(0.86f, 1.1f);
      add_leaf(mesh, line[static_cast<size_t>(i)], up + right, size * long_one, size * 0.23f, colour, smooth_rim);
      add_leaf(mesh, line[static_cast<size_t>(i)], 3.1416f - up - left, size / long_one, size * 0.23f,
               i % 2 != 0 ? mix(colour, dark, 0.25f) : colour, smooth_rim);
    }
  }
}

void add_rosette(Mesh& mesh, const PieceFrame& frame, std::uint32_t seed, Side side, const PieceLight& light, bool feathered) {
  Dice dice{seed};
  const Palette& c = *light.colours;
  struct Blade {
    float depth;
    std::vector<Vec> line;
    float half;
    ImU32 dark, bright;
  };
  std::vector<Blade> blades;
  const int count = held(8 + frame.length * 0.4f, 9, 18);
  for (int i = 0; i < count; ++i) {
    const float angle = (static_cast<float>(i) + dice.between(-0.2f, 0.2f)) * 2.399963f;
    const bool inner = i > count * 2 / 3;
    const float out = inner ? dice.between(0.2f, 0.45f) : dice.between(0.72f, 1.0f),
                tall = inner ? dice.between(0.8f, 1.0f) : dice.between(0.5f, 0.85f);
    std::vector<Vec> line;
    for (const float t : {0.0f, 0.3f, 0.65f, 1.0f}) {
      // Leaves the crown a little to its side, rises, then bows outwards under its own weight.
      const float away = lerp(0.09f, out, std::pow(t, 1.15f)), up = tall * (1.75f * t - (inner ? 0.75f : 0.95f) * t * t);
      line.push_back(seen(frame.at(std::cos(angle) * away * frame.length / 2, std::sin(angle) * away * frame.depth / 2,
                                   std::clamp(up, 0.0f, 1.0f) * frame.height),
                          side));
    }
    const float back = frame.at(std::cos(angle), std::sin(angle), 0).z - frame.z;
    const float shade = 0.22f + 0.22f * back;
    const ImU32 base = light.tone(mix(c.leafA, c.leafC, std::clamp(shade * 1.6f, 0.0f, 1.0f)));
    blades.push_back({side == Side::front ? back : -tall, std::move(line), std::clamp(frame.height * 0.055f, 0.35f, 1.5f), base,
                      mix(base, light.tone(c.leafB), 0.75f)});
  }
  sort_stable(blades, [](const Blade& a, const Blade& b) { return a.depth > b.depth; });
  for (const Blade& blade : blades) {
    if (feathered) {
      // A frond: a midrib with leaflets that shorten towards the tip.
      const std::vector<Vec> rib = smooth_even(blade.line, 9);
      add_stroke(mesh, rib, 0.2f, 0.08f, blade.dark);
      for (size_t i = 1; i + 1 < rib.size(); ++i) {
        const float t = static_cast<float>(i) / static_cast<float>(rib.size() - 1);
        const Vec along = unit(rib[i + 1] - rib[i - 1]), across{-along.y, along.x};
        const float size = (0.5f + 1.6f * blade.half) * (1.05f - 0.75f * t), half = 0.3f * size;
        for (const float way : {1.0f, -1.0f}) {
          const ImU32 colour = way > 0 ? blade.bright : mix(blade.bright, blade.dark, 0.5f);
          const std::uint32_t low = add_vertex(mesh, rib[i] - along * half, colour),
                              high = add_vertex(mesh, rib[i] + along * half, colour);
          add_triangle(mesh, low, high, add_vertex(mesh, rib[i] + (along * 0.55f + across * (0.84f * way)) * size, colour));
        }
      }
      continue;
    }
    const std::vector<Vec> line = smooth_even(blade.line, 7);
    Rail rails[3];
    for (size_t i = 0; i < line.size(); ++i) {
      const float t = static_cast<float>(i) / static_cast<float>(line.size() - 1);
      const Vec along = unit(line[std::min(i + 1, line.size() - 1)] - line[i > 0 ? i - 1 : 0]), across{-along.y, along.x};
      const float half = blade.half * (0.18f + 0.95f * std::sin(3.1416f * std::pow(t, 0.8f))) * (t < 1 ? 1.0f : 0.05f);
      rails[0].points.push_back(line[i] + across * half);
      rails[1].points.push_back(line[i]);
      rails[2].points.push_back(line[i] - across * half);
      rails[0].colours.push_back(blade.bright);
      rails[1].colours.push_back(mix(blade.dark, blade.bright, 0.35f));
      rails[2].colours.push_back(blade.dark);
    }
    add_sheet(mesh, rails);
  }
}

void add_carpet(Mesh& mesh, const Scene& scene, const PieceFrame& frame, std::uint32_t seed, Side side, const PieceLight& light) {
  Dice dice{seed};
  const Palette& c = *light.colours;
  struct Blade {
    Vec3 foot;
    float angle, size;
    bool bright;
  };
  std::vector<Blade> blades;
  const int count = held(frame.length * frame.depth * 0.42f, 30, side == Side::front ? 165 : 80);
  for (const Stand& stand : spread(count, dice)) {
    Vec3 foot = frame.at(stand.u * frame.length, stand.v * frame.depth, 0);
    foot.h +=
        static_cast<float>(ground_cm(scene, foot.x, foot.z)) - static_cast<float>(ground_cm(scene, frame.x, frame.z)) - 0.25f;
    blades.push_back({foot, 1.5708f + dice.between(-0.55f, 0.55f), frame.height * dice.between(0.5f, 1.1f), dice.next() < 0.5f});
  }
  sort_stable(blades, [](const Blade& a, const Blade& b) { return a.foot.z > b.foot.z; });
  for (const Blade& blade : blades) {
    const ImU32 colour = light.tone(blade.bright ? c.carpB : c.carpA);
    if (side == Side::front) {
      // A blade of grass: three corners do.
      const Vec foot = seen(blade.foot, side), tip = foot + Vec{std::cos(blade.angle), std::sin(blade.angle)} * blade.size;
      const float half = std::clamp(blade.size * 0.12f, 0.15f, 0.3f);
      const std::uint32_t left = add_vertex(mesh, foot - Vec{half, 0}, colour),
                          right = add_vertex(mesh, foot + Vec{half, 0}, colour);
      add_triangle(mesh, left, right, add_vertex(mesh, tip, mix(colour, light.tone(c.carpB), 0.5f)));
    } else {
      add_ellipse(mesh, seen(blade.foot, side), {0.58f, 0.58f}, 7, colour, false);
    }
  }
}

void add_litter(Mesh& mesh, const PieceFrame& frame, std::uint32_t seed, Side side, const PieceLight& light) {
  Dice dice{seed};
  const Palette& c = *light.colours;
  for (const Stand& stand : spread(held(frame.length * frame.depth / 14, 6, 26), dice)) {
    const float reach = std::clamp(frame.length * 0.16f, 1.2f, 4.5f);
    const ImU32 colour = light.tone(mix(dice.next() < 0.5f ? c.wood : c.woodHi, c.leafR, dice.between(0.1f, 0.5f)));
    const Vec3 at = frame.at(stand.u * frame.length * 0.9f, stand.v * frame.depth * 0.9f, dice.between(0, 0.7f) * frame.height);
    const float angle =
        side == Side::above ? dice.between(0, 6.28f) : dice.between(-0.35f, 0.35f) + (dice.next() < 0.5f ? 3.14f : 0.0f);
    add_leaf(mesh, seen(at, side), angle, reach, reach * (side == Side::above ? 0.3f : 0.13f), colour, true);
  }
}

void add_moss(Mesh& mesh, const PieceFrame& frame, std::uint32_t seed, Side side, const PieceLight& light) {
  Dice dice{seed};
  const Palette& c = *light.colours;
  std::vector<Vec> rim;
  constexpr int corners = 14;
  if (side == Side::front) {
    for (int i = 0; i <= corners; ++i) {
      const float angle = static_cast<float>(i) / corners * 3.1415927f;
      rim.push_back(seen(
          frame.at(-std::cos(angle) * frame.length / 2, 0, std::sin(angle) * frame.height * dice.between(0.72f, 0.95f)), side));
    }
  } else {
    for (int i = 0; i < corners; ++i) {
      const float angle = static_cast<float>(i) / corners * 6.2831853f, size = dice.between(0.8f, 1.0f) / 2;
      rim.push_back(seen(frame.at(std::cos(angle) * frame.length * size, std::sin(angle) * frame.depth * size, 0), side));
    }
  }
  Vec middle{};
  for (const Vec p : rim) middle = middle + p * (1 / static_cast<float>(rim.size()));
  add_fan(mesh, rim, middle, light.tone(c.leafC), light.tone(mix(c.leafC, c.leafA, 0.5f)));
  const int count = held(frame.length * (side == Side::front ? frame.height : frame.depth) * 0.9f, 30, 90);
  for (int i = 0; i < count; ++i) {
    const float along = dice.next();
    const auto k = static_cast<size_t>(along * static_cast<float>(rim.size() - 1));
    const Vec at = lerp(lerp(rim[k], rim[std::min(k + 1, rim.size() - 1)], dice.next()), middle, std::pow(dice.next(), 1.6f));
    const Vec out = unit(at - middle);
    const float angle = std::atan2(out.y + 0.35f, out.x) + dice.between(-0.8f, 0.8f);
    add_leaf(mesh, at, angle, dice.between(0.6f, 1.15f), 0.17f,
             light.tone(dice.next() < 0.5f ? c.carpA : mix(c.carpB, c.leafA, 0.3f)), false);
  }
}

void add_floating(Mesh& pads, Mesh* roots, const PieceFrame& frame, float surface_cm, std::uint32_t seed, Side side,
                  const PieceLight& light) {
  Dice dice{seed};
  const Palette& c = *light.colours;
  if (side == Side::above) {
    for (const Stand& stand : spread(held(frame.length * frame.depth / 15, 6, 40), dice)) {
      const Vec at = seen(frame.at(stand.u * frame.length, stand.v * frame.depth, 0), side);
      const float size = dice.between(0.8f, 1.35f);
      add_ellipse(pads, at, {size, size}, 12, with_alpha(light.tone(dice.next() < 0.5f ? c.floating : c.floatD), 0.88f));
    }
    return;
  }
  const float wide = std::abs(frame.cos_turn) * frame.length + std::abs(frame.sin_turn) * frame.depth;
  const float hang = std::clamp(frame.height, 1.2f, 12.0f);
  for (float x = frame.x - wide / 2 + 0.6f; x < frame.x + wide / 2; x += 1.3f * dice.between(0.85f, 1.2f)) {
    // A leaf lies flat on the water; its upper side is lit, its edge below is dark.
    const float wide_leaf = dice.between(0.85f, 1.3f);
    const bool young = dice.next() < 0.5f;
    add_ellipse(pads, {x, surface_cm - 0.02f}, {wide_leaf, 0.36f}, 8,
                light.tone(young ? mix(c.floating, c.floatD, 0.5f) : c.floatD));
    add_ellipse(pads, {x - 0.06f, surface_cm + 0.13f}, {wide_leaf * 0.86f, 0.22f}, 7,
                light.tone(young ? mix(c.floating, IM_COL32(255, 255, 255, 255), 0.12f) : c.floating), false);
    if (roots == nullptr) continue;
    for (int j = 0; j < 2; ++j) {
      const float rx = x + dice.between(-0.5f, 0.5f), drift = dice.between(-0.45f, 0.45f);
      const Vec line[3] = {{rx, surface_cm},
                           {rx + drift, surface_cm - hang * 0.4f},
                           {rx + drift + dice.between(-0.5f, 0.5f), surface_cm - hang * dice.between(0.5f, 1.0f)}};
      add_stroke(*roots, smooth_even(line, 4), 0.12f, 0.04f, with_alpha(light.tone(c.root), 0.75f));
    }
  }
}

}  // namespace shoalwright
