// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

namespace {

std::vector<Vec> tail_edge(const Painter& paint, int count) { return smooth_even(paint.shape.tail, count); }

Vec on_tail(const Painter& paint, Vec edge, float across, float out) {
  return lerp(paint.trunk.at(0.975f, lerp(0.1f, 0.9f, across)), edge, out);
}

// Rows of dots that cross the tail and the larger unpaired fins.
void fin_dots(const Painter& paint, ImU32 colour) {
  const bool fine = paint.detail.fine_marks;
  const int along = fine ? 7 : 4;
  const float r = fine ? 0.011f : 0.016f;
  const std::vector<Vec> tail = tail_edge(paint, along + 2);
  for (const float out : {0.3f, 0.56f, 0.82f}) {
    if (!fine && out > 0.7f) continue;
    for (int i = 0; i < along; ++i)
      paint.lozenge(
          on_tail(paint, tail[static_cast<size_t>(i + 1)], static_cast<float>(i + 1) / static_cast<float>(along + 1), out), r,
          colour);
  }
  for (const FinShape& fin : paint.shape.fins) {
    if (fin.at == FinAt::side || !fin.grows || fin.to - fin.from < 0.1f) continue;
    std::vector<Vec> edge = fin.edge;
    const std::vector<Vec> rim = smooth_even(edge, along);
    const std::vector<Vec>& side = fin.at == FinAt::back ? paint.trunk.top : paint.trunk.bottom;
    for (const float out : {0.3f, 0.68f}) {
      if (!fine && out > 0.5f) continue;
      for (int i = 0; i < along; ++i) {
        const float x = lerp(fin.from, fin.to, (static_cast<float>(i) + 0.5f) / static_cast<float>(along));
        paint.lozenge(lerp({x, height_at(side, x)}, rim[static_cast<size_t>(i)], out), r, colour);
      }
    }
  }
}

}  // namespace

void add_fin_marks(const Painter& paint, const AnimalLook& look) {
  const Coat& coat = paint.coat;
  const bool fine = paint.detail.fine_marks;
  for (const Mark one : look.marks) {
    switch (one) {
      case Mark::fin_dots: fin_dots(paint, coat.mark); break;
      case Mark::tail_tips: {
        // The outer third of either lobe.
        const std::vector<Vec> edge = tail_edge(paint, 9);
        for (int side = 0; side < 2; ++side) {
          const Vec corner = edge[side == 0 ? 0 : 8], next = edge[side == 0 ? 2 : 6];
          const Vec root = on_tail(paint, corner, side == 0 ? 0.0f : 1.0f, 0.45f),
                    low = on_tail(paint, next, side == 0 ? 0.25f : 0.75f, 0.62f);
          const std::uint32_t a = add_vertex(paint.mesh, corner, coat.mark), b = add_vertex(paint.mesh, next, coat.mark),
                              c = add_vertex(paint.mesh, low, coat.mark), d = add_vertex(paint.mesh, root, coat.mark);
          add_triangle(paint.mesh, a, b, c);
          add_triangle(paint.mesh, a, c, d);
        }
        break;
      }
      case Mark::flag_tail: {
        // One stripe in the middle and one or two in each lobe, as rummy-noses and flagtails have them.
        const std::vector<Vec> edge = tail_edge(paint, 9);
        for (const int i : {2, 4, 6}) {
          const float across = static_cast<float>(i) / 8;
          const Vec from = on_tail(paint, edge[static_cast<size_t>(i)], across, 0.08f),
                    to = on_tail(paint, edge[static_cast<size_t>(i)], across, 0.9f), line[3] = {from, lerp(from, to, 0.5f), to};
          const float wide = std::abs(edge[0].y - edge[8].y) * 0.055f, half[2] = {wide * 0.8f, wide};
          add_limb(paint.mesh, line, half, fine ? 5 : 2, coat.mark, coat.mark, coat.mark);
        }
        break;
      }
      default: break;
    }
  }
}

}  // namespace shoalwright
