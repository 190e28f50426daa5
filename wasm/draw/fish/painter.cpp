// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

void Painter::patch(std::span<const Spot> upper, std::span<const Spot> lower, ImU32 above, ImU32 below, int points) const {
  const auto on_skin = [this, points](std::span<const Spot> line) {
    std::vector<Vec> flat;
    for (const Spot s : line) flat.push_back({s.x, s.v});
    std::vector<Vec> out;
    for (const Vec p : even(flat, points)) out.push_back(trunk.at(p.x, p.y));
    return out;
  };
  const Rail rails[2] = {rail(on_skin(upper), above), rail(on_skin(lower), below)};
  add_sheet(mesh, rails);
}

void Painter::bar(float back0, float back1, float belly0, float belly1, float v0, float v1, ImU32 colour) const {
  const Spot upper[2] = {{back0, v0}, {back1, v0}}, lower[2] = {{belly0, v1}, {belly1, v1}};
  patch(upper, lower, colour, colour, back1 - back0 > 0.12f ? 5 : 3);
}

void Painter::columns(std::span<const float> x, std::span<const ImU32> colours) const {
  std::vector<Rail> rails;
  const int rows = detail.fine_marks ? 9 : 4, between = detail.fine_marks ? 4 : 2;
  for (size_t k = 0; k < x.size(); ++k) {
    for (int step = 0; step < (k + 1 < x.size() ? between : 1); ++step) {
      const float t = static_cast<float>(step) / static_cast<float>(between);
      const size_t next = std::min(k + 1, x.size() - 1);
      std::vector<Vec> column;
      for (int i = 0; i < rows; ++i)
        column.push_back(
            trunk.at(lerp(x[k], x[next], t), lerp(0.015f, 0.985f, static_cast<float>(i) / static_cast<float>(rows - 1))));
      const float cover =
          lerp(static_cast<float>(colours[k] >> IM_COL32_A_SHIFT), static_cast<float>(colours[next] >> IM_COL32_A_SHIFT), t);
      rails.push_back(rail(std::move(column), with_alpha(mix(colours[k], colours[next], t), cover / 255)));
    }
  }
  add_sheet(mesh, rails, false);
}

void Painter::dot_at(Vec at, float radius, ImU32 colour) const {
  if (detail.fine_marks) {
    add_ellipse(mesh, at, {radius, radius}, radius < 0.02f ? 6 : 8, colour);
  } else {
    lozenge(at, radius, colour);
  }
}

void Painter::lozenge(Vec at, float radius, ImU32 colour) const {
  const std::uint32_t left = add_vertex(mesh, at - Vec{radius * 1.2f, 0}, colour),
                      above = add_vertex(mesh, at + Vec{0, radius * 1.2f}, colour);
  const std::uint32_t right = add_vertex(mesh, at + Vec{radius * 1.2f, 0}, colour),
                      below = add_vertex(mesh, at - Vec{0, radius * 1.2f}, colour);
  add_triangle(mesh, left, above, right);
  add_triangle(mesh, left, right, below);
}

void Painter::dot(float x, float v, float radius, ImU32 colour) const { dot_at(trunk.at(x, v), radius, colour); }

void Painter::line(std::span<const Spot> spots, float from, float to, ImU32 colour) const {
  std::vector<Vec> points;
  for (const Spot s : spots) points.push_back(trunk.at(s.x, s.v));
  add_stroke(mesh,
             smooth_even(points, detail.fine_marks ? static_cast<int>(points.size()) * 2 + 1 : static_cast<int>(points.size())),
             from, to, colour);
}

void Painter::blotch(float x, float v, float half_long, float half_high, ImU32 colour) const {
  const int corners = detail.fine_marks ? 14 : 7;
  std::vector<Vec> rim;
  for (int i = 0; i < corners; ++i) {
    const float angle = (static_cast<float>(i) + 0.5f) * 6.2831853f / static_cast<float>(corners);
    // On the skin, so that nothing hangs over its edge.
    rim.push_back(trunk.at(std::clamp(x + half_long * std::cos(angle), 0.01f, 0.995f),
                           std::clamp(v - half_high * std::sin(angle), 0.015f, 0.985f)));
  }
  add_fan(mesh, rim, trunk.at(x, v), colour, colour);
}

}  // namespace shoalwright
