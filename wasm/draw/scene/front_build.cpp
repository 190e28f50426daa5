// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/scene/build.h"
#include "tank/terrain.h"

namespace shoalwright {

namespace {

constexpr int columns = 46;

float column_x(const SceneCache& cache, int i) { return cache.length_cm * static_cast<float>(i) / (columns - 1); }

/// Where the edge of the substrate is drawn: at every column, and where a terrain line bends.
std::vector<float> bed_columns(const SceneCache& cache) {
  std::vector<float> at;
  for (int i = 0; i < columns; ++i) at.push_back(column_x(cache, i));
  for (const LinePoint& point : cache.built_for.line_cm)
    if (point.x_cm > 0 && point.x_cm < static_cast<double>(cache.length_cm)) at.push_back(static_cast<float>(point.x_cm));
  std::inplace_merge(at.begin(), at.begin() + columns, at.end());
  return at;
}

// Sand is never quite flat; the waves are small and even out.
float ripple(float x, float phase) { return 0.16f * std::sin(x / 7.3f + phase) + 0.09f * std::sin(x / 3.1f + 2 * phase); }

void add_quad(Mesh& mesh, Vec a, Vec b, Vec c, Vec d, ImU32 ab, ImU32 cd) {
  const Rail rails[2] = {{{a, b}, {ab, ab}}, {{d, c}, {cd, cd}}};
  add_sheet(mesh, rails, false);
}

// A grain of sand is a pixel or two: three corners do.
void add_grain(Mesh& mesh, Vec at, float size, ImU32 colour) {
  const std::uint32_t left = add_vertex(mesh, at - Vec{size, size * 0.5f}, colour),
                      right = add_vertex(mesh, at + Vec{size, size * -0.35f}, colour);
  add_triangle(mesh, left, right, add_vertex(mesh, at + Vec{size * -0.2f, size * 0.7f}, colour));
}

void add_rect(Mesh& mesh, float x0, float y0, float x1, float y1, ImU32 colour) {
  const Rail rails[2] = {rail({{x0, y1}, {x1, y1}}, colour), rail({{x0, y0}, {x1, y0}}, colour)};
  add_sheet(mesh, rails);
}

// A pipe along straight and rounded pieces, of even width.
void add_pipe(Mesh& mesh, std::span<const Vec> line, float width, ImU32 colour) {
  Rail rails[2];
  for (size_t i = 0; i < line.size(); ++i) {
    const Vec along = unit(line[std::min(i + 1, line.size() - 1)] - line[i > 0 ? i - 1 : 0]),
              across = Vec{-along.y, along.x} * (width / 2);
    rails[0].points.push_back(line[i] + across);
    rails[1].points.push_back(line[i] - across);
  }
  for (Rail& one : rails) one.colours.assign(one.points.size(), colour);
  add_sheet(mesh, rails);
}

float gear_scale(const SceneCache& cache) { return std::clamp(cache.length_cm / 70, 0.45f, 1.0f); }

}  // namespace

Panes panes_at(const SceneCache& cache, float x_cm) {
  std::vector<Vec> turned;
  for (const Vec p : cache.outline) turned.push_back({p.y, p.x});
  float low = turned[0].y, high = turned[0].y;
  for (const Vec p : turned) {
    low = std::min(low, p.y);
    high = std::max(high, p.y);
  }
  const float margin = (high - low) * 0.002f;
  const std::vector<float> cuts = cuts_at_y(turned, std::clamp(x_cm, low + margin, high - margin));
  return cuts.empty() ? Panes{0, cache.width_cm} : Panes{cuts.front(), cuts.back()};
}

Ground ground_of(const Scene& scene) {
  const Palette& c = palette(scene.theme);
  Ground ground{c.sandF, c.sandFd, c.sandR, c.grain1, c.grain2};
  switch (scene.substrate) {
    case SubstrateKind::bare:
    case SubstrateKind::fine_sand: break;
    case SubstrateKind::coarse_sand: ground.grain_cm = 0.18f; break;
    case SubstrateKind::smooth_gravel:
      ground = {mix(c.sandF, c.stone1, 0.35f),
                mix(c.sandFd, c.stone2, 0.4f),
                mix(c.sandR, c.stone2, 0.35f),
                c.grain1,
                c.grain2,
                0.42f,
                true};
      break;
    case SubstrateKind::sharp_gravel:
      ground = {mix(c.sandF, c.stone2, 0.6f),
                mix(c.sandFd, c.stone4, 0.6f),
                mix(c.sandR, c.stone4, 0.5f),
                c.stone4,
                c.stone3,
                0.36f,
                true};
      break;
    case SubstrateKind::planted_soil:
      ground = {mix(c.wood, c.stone4, 0.35f), c.woodLo, mix(c.woodLo, c.wood, 0.6f), c.woodLo, c.woodHi, 0.26f, true};
      break;
  }
  return ground;
}

void add_water(SceneCache& cache) {
  const Palette& c = palette(cache.built_for.theme);
  const auto fill = static_cast<float>(cache.built_for.fill_cm), rim = static_cast<float>(cache.built_for.height_cm),
             l = cache.length_cm;
  Mesh& mesh = cache.front_far;
  add_quad(mesh, {0, rim}, {l, rim}, {l, fill}, {0, fill}, c.wall, c.wall);
  add_quad(mesh, {0, fill}, {l, fill}, {l, fill * 0.6f}, {0, fill * 0.6f}, c.waterTop, c.waterMid);
  add_quad(mesh, {0, fill * 0.6f}, {l, fill * 0.6f}, {l, 0}, {0, 0}, c.waterMid, c.waterBot);
  if (!cache.built_for.lamp) return;
  constexpr float shafts[4][4] = {{0.136f, 0.216f, 0.023f, 0.182f},
                                  {0.341f, 0.409f, 0.273f, 0.432f},
                                  {0.534f, 0.636f, 0.523f, 0.705f},
                                  {0.75f, 0.795f, 0.795f, 0.909f}};
  const ImU32 bright = with_alpha(c.ray, cache.built_for.theme == Theme::dark ? 0.16f : 0.5f);
  for (const auto& s : shafts)
    add_quad(mesh, {s[0] * l, fill}, {s[1] * l, fill}, {s[3] * l, fill * 0.12f}, {s[2] * l, fill * 0.12f}, bright,
             bright & ~IM_COL32_A_MASK);
}

void add_rear_bank(SceneCache& cache) {
  const Scene& scene = cache.built_for;
  if (!has_bed(scene)) return;
  const Palette& c = palette(scene.theme);
  const Ground ground = ground_of(scene);
  const ImU32 far = mix(ground.bank, c.waterBot, 0.36f), near = mix(mix(ground.bank, ground.face, 0.45f), c.waterBot, 0.14f);
  Rail rails[2];
  for (const float x : bed_columns(cache)) {
    const Panes panes = panes_at(cache, x);
    const auto back = static_cast<float>(ground_cm(scene, x, panes.back)),
               front = static_cast<float>(ground_cm(scene, x, panes.front)), top = std::max(back, front);
    rails[0].points.push_back({x, top > 0 ? top + ripple(x, 0.8f) : 0});
    rails[1].points.push_back({x, std::max(0.0f, std::min(back, front) - 0.5f)});
    // The bank is bluer where it is farther away.
    rails[0].colours.push_back(mix(near, far, (panes.back) / std::max(1.0f, cache.width_cm)));
    rails[1].colours.push_back(mix(near, far, (panes.front) / std::max(1.0f, cache.width_cm)));
  }
  add_sheet(cache.front_far, rails);
  // A little grain on the open bank, finer and paler towards the back.
  Dice dice{seed_of(std::span<const double>(&scene.back_cm, 1), "bank")};
  const int count = std::clamp(static_cast<int>(cache.length_cm * 1.3f), 20, 130);
  for (int i = 0; i < count; ++i) {
    const float x = dice.between(0.3f, cache.length_cm - 0.5f), share = dice.between(0.05f, 0.9f);
    const Panes panes = panes_at(cache, x);
    const float h = static_cast<float>(ground_cm(scene, x, static_cast<double>(lerp(panes.front, panes.back, share))));
    if (!(h > 0)) continue;
    const float size = ground.grain_cm * dice.between(0.5f, 1.2f) * (1 - 0.5f * share);
    const ImU32 grain = mix(dice.next() < 0.6f ? ground.grain_dark : ground.grain_light, c.waterBot, 0.15f + 0.3f * share);
    add_grain(cache.front_far, {x, h - size * 0.4f}, size, with_alpha(grain, 0.5f));
  }
}

void add_front_sand(SceneCache& cache) {
  const Scene& scene = cache.built_for;
  if (!has_bed(scene)) return;
  const Ground ground = ground_of(scene);
  Rail rails[3];
  std::vector<Vec> line;
  for (const float x : bed_columns(cache)) {
    const auto front = static_cast<float>(ground_cm(scene, x, panes_at(cache, x).front));
    const float top = front > 0 || scene.line_cm.empty() ? std::max(0.0f, front + ripple(x, 0)) : 0;
    line.push_back({x, top});
    rails[0].points.push_back({x, top});
    rails[1].points.push_back({x, top * 0.82f});
    rails[2].points.push_back({x, 0});
  }
  // The lip against the glass catches the light from above.
  rails[0].colours.assign(line.size(), mix(ground.face, IM_COL32(255, 255, 255, 255), scene.theme == Theme::dark ? 0.1f : 0.22f));
  rails[1].colours.assign(line.size(), ground.face);
  rails[2].colours.assign(line.size(), ground.foot);
  add_sheet(cache.front_near, rails);
  Dice dice{seed_of(std::span<const double>(&scene.front_cm, 1), "grain")};
  const int count =
      std::clamp(static_cast<int>(cache.length_cm * (ground.pebbles ? 4.8f : 3.8f)), 40, ground.pebbles ? 460 : 400);
  for (int i = 0; i < count; ++i) {
    const float x = dice.between(0.2f, cache.length_cm - 0.4f), top = height_at(line, x);
    const float h = top * dice.between(0.06f, 0.94f), size = ground.grain_cm * dice.between(0.55f, 1.5f);
    const ImU32 colour = with_alpha(dice.next() < 0.55f ? ground.grain_dark : ground.grain_light, ground.pebbles ? 0.75f : 0.6f);
    if (ground.pebbles) {
      add_ellipse(cache.front_near, {x, h}, {size, size * 0.7f}, 6, colour, false);
    } else {
      add_grain(cache.front_near, {x, h}, size, colour);
    }
  }
}

void add_gear_behind(SceneCache& cache) {
  const Scene& scene = cache.built_for;
  const Palette& c = palette(scene.theme);
  const auto fill = static_cast<float>(scene.fill_cm), rim = static_cast<float>(scene.height_cm);
  const float k = gear_scale(cache);
  Mesh& mesh = cache.front_far;
  if (scene.heater) {
    const float x0 = 3 * k, x1 = x0 + 1.8f * k, top = fill - 5.4f * k, long_cm = std::min(18 * k, fill * 0.5f),
                low = top - long_cm;
    const Vec cable[4] = {
        {x0 + 0.9f * k, top}, {x0 + 0.4f * k, top + 3 * k}, {x0 - 1.0f * k, fill + 1}, {x0 - 1.4f * k, rim + 0.8f}};
    add_pipe(mesh, smooth_even(cable, 9), 0.3f * k, c.lamp);
    // The tube: rounded foot, glass body, dark cap, coil inside, two clips.
    std::vector<Vec> tube;
    for (int i = 0; i <= 8; ++i) {
      const float angle = 3.1415927f + 3.1415927f * static_cast<float>(i) / 8;
      tube.push_back({(x0 + x1) / 2 + std::cos(angle) * 0.9f * k, low + 0.9f * k + std::sin(angle) * 0.9f * k});
    }
    tube.push_back({x1, top});
    tube.push_back({x0, top});
    std::vector<Vec> rim_line = tube;
    rim_line.push_back(tube.front());
    add_fan(mesh, tube, {(x0 + x1) / 2, (low + top) / 2}, with_alpha(c.glass, 0.75f), with_alpha(c.glass, 0.6f));
    for (float h = low + 2.6f * k; h < top - 4.4f * k; h += 1.1f * k) {
      const Vec coil[2] = {{x0 + 0.35f * k, h}, {x1 - 0.35f * k, h + 0.8f * k}};
      add_stroke(mesh, coil, 0.14f, 0.14f, c.lamp);
    }
    add_stroke(mesh, rim_line, 0.13f, 0.13f, c.glassEdge);
    add_rect(mesh, x0, top - 3.2f * k, x1, top + 0.2f * k, c.lamp);
    for (const float h : {top - 5.1f * k, low + 1.9f * k})
      add_rect(mesh, x0 - 0.5f * k, h - 0.35f * k, x1 + 0.5f * k, h + 0.35f * k, c.lamp);
  }
  if (scene.filter) {
    const float x = cache.length_cm - 1.3f * k,
                low = std::max(fill * 0.27f,
                               static_cast<float>(scene.back_cm + rise_at(scene.line_cm, static_cast<double>(x))) + 2);
    const Vec pipe[2] = {{x, rim + 0.3f}, {x, low}};
    add_pipe(mesh, pipe, 0.9f * k, with_alpha(c.glassEdge, 0.55f));
    add_rect(mesh, x - 0.8f * k, low - 2 * k, x + 0.8f * k, low + 3 * k, with_alpha(c.lamp, 0.6f));
  }
}

void add_gear_before(SceneCache& cache) {
  const Scene& scene = cache.built_for;
  if (!scene.filter) return;
  const Palette& c = palette(scene.theme);
  const auto fill = static_cast<float>(scene.fill_cm), rim = static_cast<float>(scene.height_cm);
  const float k = gear_scale(cache), right = cache.length_cm, x = right - 3.2f * k, y = fill - 2.8f * k;
  const ImU32 body = scene.theme == Theme::dark ? c.glassEdge : c.lamp;
  std::vector<Vec> pipe{{x, rim + 1.4f}, {x, y + 1.4f * k}};
  for (int i = 1; i <= 5; ++i) {
    const float angle = static_cast<float>(i) / 5 * 1.5707963f;
    pipe.push_back({x - 1.4f * k * (1 - std::cos(angle)), y + 1.4f * k * (1 - std::sin(angle))});
  }
  pipe.push_back({x - 3.2f * k, y});
  Mesh& mesh = cache.front_pads;
  add_pipe(mesh, pipe, 1.25f * k, body);
  add_rect(mesh, x - 4.6f * k, y - 0.9f * k, x - 2.9f * k, y + 0.9f * k, body);
  // The stream: three arrows in dashes, as far as the flow reaches.
  const float from = x - 4.9f * k,
              reach = (6 + 16 * static_cast<float>(std::clamp(scene.stream, 0.0, 1.0))) * std::clamp(right / 88, 0.3f, 1.3f);
  constexpr float ends[3][4] = {{0.5f, 1.4f, 1.12f, 0.2f}, {0.0f, -0.4f, 1.0f, 0.26f}, {-0.5f, -2.6f, 0.86f, 0.2f}};
  const ImU32 ray = with_alpha(c.ray, scene.theme == Theme::dark ? 0.6f : 0.9f);
  for (const auto& e : ends) {
    const Vec control[4] = {{from, y + e[0] * k},
                            {from - reach * e[2] * 0.3f, y + e[0] * k},
                            {from - reach * e[2] * 0.7f, y + lerp(e[0], e[1], 0.8f) * k},
                            {from - reach * e[2], y + e[1] * k}};
    const int count = std::max(4, static_cast<int>(reach * e[2] / 0.65f)) / 3 * 3 + 1;
    const std::vector<Vec> line = smooth_even(control, count);
    for (size_t i = 0; i + 2 < line.size(); i += 3) {
      const Vec dash[2] = {line[i], line[i + 2]};
      add_stroke(mesh, dash, e[3], e[3], ray);
    }
    const Vec tip = line.back(), head[3] = {tip + Vec{0.9f, 0.45f} * k, tip, tip + Vec{0.9f, -0.45f} * k};
    add_stroke(mesh, head, e[3], e[3], ray);
  }
}

void add_glass_shade(SceneCache& cache) {
  const Palette& c = palette(cache.built_for.theme);
  const auto rim = static_cast<float>(cache.built_for.height_cm);
  // A pane seen aslant takes more of the light: shade by the slope of the front pane at each x.
  Rail rails[2];
  bool any = false;
  for (int i = 0; i < columns * 2; ++i) {
    const float x = cache.length_cm * static_cast<float>(i) / (columns * 2 - 1), step = cache.length_cm * 0.004f;
    const float left = std::max(0.0f, x - step), right = std::min(cache.length_cm, x + step);
    const float slope = (panes_at(cache, right).front - panes_at(cache, left).front) / std::max(right - left, 1e-4f);
    const float square = 1 / std::sqrt(1 + slope * slope);
    const float shade = std::clamp(0.5f * (1 - square), 0.0f, 0.42f);
    any = any || shade > 0.005f;
    for (int r = 0; r < 2; ++r) {
      rails[r].points.push_back({x, r == 0 ? rim : 0});
      rails[r].colours.push_back(with_alpha(slope > 0 ? mix(c.glass, c.glassEdge, 0.3f) : c.glass, shade));
    }
  }
  if (any) add_sheet(cache.front_glass, rails, false);
  // Where two panes meet there is an edge; the foremost ones are drawn stronger.
  const size_t count = cache.outline.size();
  for (size_t i = 0; i < count; ++i) {
    const Vec p = cache.outline[i], before = unit(p - cache.outline[(i + count - 1) % count]),
              after = unit(cache.outline[(i + 1) % count] - p);
    if (before.x * after.x + before.y * after.y > 0.93f) continue;
    if (p.x < 0.02f * cache.length_cm || p.x > 0.98f * cache.length_cm) continue;
    const Panes panes = panes_at(cache, p.x);
    const bool front = p.y - panes.front < panes.back - p.y;
    const Vec line[2] = {{p.x, rim}, {p.x, 0}};
    add_stroke(front ? cache.front_glass : cache.front_far, line, 0.14f, 0.14f, with_alpha(c.glassEdge, front ? 0.85f : 0.3f));
  }
}

}  // namespace shoalwright
