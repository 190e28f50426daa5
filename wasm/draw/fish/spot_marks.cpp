// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

namespace {

/// Rows of dots over a part of the body: distances in body lengths, from v0 to v1.
struct Scatter {
  float from, to, step_x, step_y, radius, v0, v1;
};
void scatter(const Painter& paint, Scatter s, ImU32 colour) {
  // A deep body has more skin: its dots are larger and farther apart, not more.
  const float deep = std::clamp(paint.trunk.depth(0.45f) / 0.36f, 1.0f, 1.5f);
  s.step_x *= deep;
  s.step_y *= deep;
  s.radius *= deep;
  int row = 0;
  for (float y = 0.45f; y > -0.45f; y -= s.step_y, ++row) {
    for (float x = s.from + (row % 2 != 0 ? s.step_x / 2 : 0); x < s.to; x += s.step_x) {
      const float top = height_at(paint.trunk.top, x), bottom = height_at(paint.trunk.bottom, x);
      const float v = (top - y) / std::max(1e-4f, top - bottom), edge = s.radius * 1.4f / std::max(1e-4f, top - bottom);
      if (v > std::max(s.v0, edge) && v < std::min(s.v1, 1 - edge)) paint.dot(x, v, s.radius, colour);
    }
  }
}

// Bright scales in straight rows along the body.
void spangles(const Painter& paint) {
  const bool small = !paint.detail.fine_marks;
  const ImU32 colour = paint.coat.flat ? paint.coat.bright : with_alpha(paint.coat.bright, 0.85f);
  const float step = small ? 0.11f : 0.062f;
  const float deep = paint.trunk.depth(0.45f);
  const int rows = std::clamp(static_cast<int>(deep / (small ? 0.085f : 0.05f)), 2, small ? 4 : 7);
  for (int row = 0; row < rows; ++row) {
    const float v = 0.16f + 0.66f * (static_cast<float>(row) + 0.5f) / static_cast<float>(rows);
    for (float x = paint.shape.gill_x + 0.03f + (row % 2 != 0 ? step / 2 : 0); x < 0.96f; x += step)
      paint.lozenge(paint.trunk.at(x, v), small ? 0.02f : 0.0155f, colour);
  }
}

void ringed(const Painter& paint, Vec at, float radius) {
  const int corners = paint.detail.fine_marks ? 14 : 8;
  add_ellipse(paint.mesh, at, {radius * 1.4f, radius * 1.4f}, corners, paint.coat.flat ? paint.coat.mark : paint.coat.bright);
  add_ellipse(paint.mesh, at, {radius * 0.85f, radius * 0.85f}, corners, paint.coat.flat ? paint.coat.flank : paint.coat.mark);
}

// Two arcs of dots on a spread tail.
void fan_dots(const Painter& paint, ImU32 colour) {
  const std::vector<Vec>& tail = paint.shape.tail;
  const float half = std::abs(tail.front().y), reach = tail[tail.size() / 2].x - 1;
  for (const float out : {0.42f, 0.7f}) {
    for (int i = -2; i <= 2; ++i) {
      const float across = static_cast<float>(i) * 0.36f + (out > 0.5f ? 0.0f : 0.1f);
      if (std::abs(across) > 0.8f) continue;
      const float r = 0.02f + 0.008f * out;
      add_ellipse(paint.mesh, {1 + reach * out, across * half * (0.3f + 0.65f * out)}, {r * 1.25f, r},
                  paint.detail.fine_marks ? 8 : 5, scale_alpha(colour, 0.75f), paint.detail.fine_marks);
    }
  }
}

void dorsal_spot(const Painter& paint) {
  for (const FinShape& fin : paint.shape.fins) {
    if (fin.at != FinAt::back || !fin.grows) continue;
    const auto tip =
        std::max_element(fin.edge.begin(), fin.edge.end(), [](Vec a, Vec b) { return std::abs(a.y) < std::abs(b.y); });
    const bool long_fin = fin.to - fin.from > 0.3f;
    const float root_x = long_fin ? fin.from + 0.07f : (fin.from + fin.to) / 2;
    const Vec root{root_x, height_at(fin.at == FinAt::back ? paint.trunk.top : paint.trunk.bottom, root_x)};
    const float radius = long_fin ? 0.034f : std::clamp((fin.to - fin.from) * 0.24f, 0.03f, 0.055f);
    add_ellipse(paint.mesh, lerp(root, *tip, long_fin ? 0.36f : 0.46f), {radius, radius * (long_fin ? 1.0f : 1.25f)},
                paint.detail.fine_marks ? 12 : 8, paint.coat.mark);
    break;
  }
}

}  // namespace

void add_spot_marks(const Painter& paint, const AnimalLook& look) {
  const Coat& coat = paint.coat;
  const ImU32 mark = coat.mark;
  const bool small = !paint.detail.fine_marks;
  const float deep = paint.trunk.depth(0.45f);
  for (const Mark one : look.marks) {
    switch (one) {
      case Mark::dots:
        if (look.fins == Fins::fan && look.form == Form::livebearer) fan_dots(paint, mark);
        scatter(paint, {0.17f, 0.98f, small ? 0.105f : 0.078f, small ? 0.066f : 0.05f, small ? 0.0185f : 0.0145f, 0.04f, 0.8f},
                small ? scale_alpha(mark, 0.85f) : mark);
        break;
      case Mark::spots:
        scatter(paint, {0.1f, 0.97f, small ? 0.155f : 0.13f, small ? 0.1f : 0.085f, small ? 0.034f : 0.028f, 0.04f, 0.86f}, mark);
        break;
      case Mark::honeycomb:
        scatter(paint, {0.08f, 0.98f, small ? 0.105f : 0.088f, small ? 0.06f : 0.052f, small ? 0.036f : 0.031f, 0.02f, 0.94f},
                coat.flat || look.form == Form::pleco ? mark : with_alpha(mark, 0.8f));
        break;
      case Mark::spangles: spangles(paint); break;
      case Mark::saddles:
        for (const float x : {0.17f, 0.38f, 0.6f, 0.82f}) paint.bar(x, x + 0.12f, x + 0.035f, x + 0.085f, 0.0f, 0.5f, mark);
        break;
      case Mark::blotches:
        for (int i = 0; i < 6; ++i)
          paint.blotch(0.24f + 0.138f * static_cast<float>(i), i % 2 != 0 ? 0.52f : 0.44f, i % 2 != 0 ? 0.045f : 0.056f,
                       i % 2 != 0 ? 0.15f : 0.2f, mark);
        break;
      case Mark::tail_spot: {
        const float radius = std::max(0.045f, paint.trunk.depth(0.95f) * 0.36f);
        add_ellipse(paint.mesh, paint.trunk.at(0.945f, 0.5f), {radius, radius * 0.95f}, small ? 8 : 14, mark);
        break;
      }
      case Mark::tail_eye: ringed(paint, paint.trunk.at(0.93f, 0.4f), std::max(0.034f, paint.trunk.depth(0.93f) * 0.22f)); break;
      case Mark::ocelli:
        for (int i = 0; i < 5; ++i)
          ringed(paint, paint.trunk.at(0.42f + 0.12f * static_cast<float>(i), 0.5f),
                 std::min(0.032f, paint.trunk.depth(0.42f + 0.12f * static_cast<float>(i)) * 0.26f));
        break;
      case Mark::shoulder_spot:
        paint.blotch(paint.shape.gill_x + 0.06f, 0.4f, std::clamp(deep * 0.1f, 0.022f, 0.04f), 0.16f, mark);
        break;
      case Mark::mid_spot: paint.blotch(0.54f, 0.42f, std::clamp(deep * 0.17f, 0.04f, 0.07f), 0.17f, mark); break;
      case Mark::heart_spot:
        // On the flank behind the gill; of an armoured catfish on the nape.
        if (paint.shape.plates) {
          paint.blotch(paint.shape.gill_x + 0.02f, 0.13f, 0.045f, 0.11f, coat.bright);
        } else {
          paint.blotch(paint.shape.gill_x + 0.12f, 0.5f, std::clamp(deep * 0.11f, 0.03f, 0.055f), 0.11f, coat.bright);
        }
        break;
      case Mark::dorsal_spot: dorsal_spot(paint); break;
      default: break;
    }
  }
}

}  // namespace shoalwright
