// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

namespace {

bool has(const AnimalLook& look, Mark mark) { return std::find(look.marks.begin(), look.marks.end(), mark) != look.marks.end(); }

/// A place on the body: x along it, v from back (0) to belly (1).
struct Spot {
  float x, v;
};

struct Painter {
  Mesh& mesh;
  const Trunk& trunk;
  const Detail& detail;

  // Between an upper and a lower line on the skin.
  void patch(std::span<const Spot> upper, std::span<const Spot> lower, ImU32 colour, int points) const {
    const auto on_skin = [this, points](std::span<const Spot> line) {
      std::vector<Vec> flat;
      for (const Spot s : line) flat.push_back({s.x, s.v});
      std::vector<Vec> out;
      for (const Vec p : even(flat, points)) out.push_back(trunk.at(p.x, p.y));
      return out;
    };
    const Rail rails[2] = {rail(on_skin(upper), colour), rail(on_skin(lower), colour)};
    add_sheet(mesh, rails);
  }
  // A bar across the body: its left and right end at the back and at the belly.
  void bar(float back0, float back1, float belly0, float belly1, float v0, float v1, ImU32 colour) const {
    const Spot upper[2] = {{back0, v0}, {back1, v0}}, lower[2] = {{belly0, v1}, {belly1, v1}};
    patch(upper, lower, colour, back1 - back0 > 0.12f ? 5 : 3);
  }
  void dot(float x, float v, float radius, ImU32 colour) const {
    const Vec at = trunk.at(x, v);
    if (detail.fine_marks) {
      add_ellipse(mesh, at, {radius, radius}, 8, colour);
      return;
    }
    // A lozenge does where a dot is a pixel or two.
    const std::uint32_t left = add_vertex(mesh, at - Vec{radius * 1.2f, 0}, colour),
                        above = add_vertex(mesh, at + Vec{0, radius * 1.2f}, colour);
    const std::uint32_t right = add_vertex(mesh, at + Vec{radius * 1.2f, 0}, colour),
                        below = add_vertex(mesh, at - Vec{0, radius * 1.2f}, colour);
    add_triangle(mesh, left, above, right);
    add_triangle(mesh, left, right, below);
  }
};

void scatter(const Painter& paint, float from_x, float to_x, float step_x, float step_y, float radius, ImU32 colour, float v0,
             float v1) {
  int row = 0;
  for (float y = 0.45f; y > -0.45f; y -= step_y, ++row) {
    for (float x = from_x + (row % 2 != 0 ? step_x / 2 : 0); x < to_x; x += step_x) {
      const float top = height_at(paint.trunk.top, x), bottom = height_at(paint.trunk.bottom, x);
      const float v = (top - y) / std::max(1e-4f, top - bottom), edge = radius * 1.4f / std::max(1e-4f, top - bottom);
      if (v > std::max(v0, edge) && v < std::min(v1, 1 - edge)) paint.dot(x, v, radius, colour);
    }
  }
}

// A net of slanted lines.
void net(const Painter& paint, float step, float width, ImU32 colour) {
  for (int way = -1; way <= 1; way += 2) {
    for (float start = -0.1f; start < 1.1f; start += step) {
      std::vector<Vec> line;
      for (int i = 0; i <= 4; ++i) {
        const float t = static_cast<float>(i) / 4, x = start + static_cast<float>(way) * (t - 0.5f) * 0.24f;
        if (x > 0.2f && x < 0.97f) line.push_back(paint.trunk.at(x, lerp(0.07f, 0.9f, t)));
      }
      if (line.size() > 1) add_stroke(paint.mesh, line, width, width, colour);
    }
  }
}

// One stripe from the head to the tail; danios wear four, a neon's glows and ends short of the tail.
void stripe(const Painter& paint, const AnimalLook& look, const Coat& coat) {
  const bool small = !paint.detail.fine_marks;
  const auto run = [&](float start, float end, float centre, float half, float rear, ImU32 colour) {
    const Spot upper[4] = {
        {start, centre - half * 0.5f}, {0.3f, centre - half}, {0.7f, centre - half * 1.1f}, {end, centre - half * rear}};
    const Spot lower[4] = {
        {start, centre + half * 0.5f}, {0.3f, centre + half}, {0.7f, centre + half * 1.1f}, {end, centre + half * rear}};
    paint.patch(upper, lower, colour, small ? 6 : 12);
  };
  if (look.form == Form::danio) {
    for (const float centre : {0.24f, 0.43f, 0.62f, 0.8f})
      run(0.19f, 1.0f, centre, centre > 0.7f ? 0.03f : 0.05f, 1.1f, coat.stripe);
    return;
  }
  const bool neon = coat.stripe != coat.mark && !coat.flat, half_red = has(look, Mark::half_stripe_red);
  if (half_red || neon) {
    run(0.06f, half_red ? 0.86f : 0.97f, half_red ? 0.36f : 0.3f, 0.1f, 0.2f, coat.stripe);
    if (neon && !small)
      run(0.12f, 0.8f, half_red ? 0.335f : 0.275f, 0.032f, 0.2f, mix(coat.stripe, IM_COL32(190, 255, 246, 255), 0.6f));
    return;
  }
  if (look.form == Form::hatchet) {
    run(0.16f, 1.0f, 0.2f, 0.026f, 1.6f, coat.stripe);
    return;
  }
  run(look.form == Form::corydoras || look.form == Form::sucker ? 0.02f : 0.11f, 1.0f, 0.44f, 0.075f, 1.2f, coat.stripe);
}

// The bars of a disc: through the eye, before and behind the middle, at the tail; the third runs out into the fins.
void disc_bars(const Painter& paint, const FishShape& shape, ImU32 colour) {
  paint.bar(0.115f, 0.16f, 0.1f, 0.14f, 0.02f, 0.98f, colour);
  paint.bar(0.35f, 0.41f, 0.355f, 0.41f, 0.01f, 0.99f, colour);
  paint.bar(0.62f, 0.71f, 0.62f, 0.71f, 0.005f, 0.995f, colour);
  paint.bar(0.93f, 0.985f, 0.93f, 0.985f, 0.02f, 0.98f, colour);
  for (const FinShape& fin : shape.fins) {
    if (fin.at == FinAt::side || fin.to - fin.from < 0.3f) continue;
    const Vec root = paint.trunk.at(0.665f, fin.at == FinAt::back ? 0.02f : 0.98f);
    const Vec tip = fin.edge[fin.edge.size() / 2];
    const Vec line[3] = {root, lerp(root, tip, 0.45f) + Vec{-0.03f, 0}, lerp(root, tip, 0.85f)};
    add_stroke(paint.mesh, smooth_even(line, paint.detail.fine_marks ? 9 : 4), 0.085f, 0.03f, scale_alpha(colour, 0.6f));
  }
}

// A hatchet's flank: narrow bands that slant and fork.
void marbling(const Painter& paint, ImU32 colour) {
  constexpr Spot lines[][4] = {{{0.2f, 0.2f}, {0.24f, 0.4f}, {0.2f, 0.6f}, {0.25f, 0.82f}},
                               {{0.36f, 0.22f}, {0.31f, 0.42f}, {0.37f, 0.62f}, {0.31f, 0.86f}},
                               {{0.44f, 0.24f}, {0.5f, 0.44f}, {0.43f, 0.64f}, {0.47f, 0.88f}},
                               {{0.6f, 0.26f}, {0.56f, 0.48f}, {0.62f, 0.68f}, {0.57f, 0.9f}},
                               {{0.7f, 0.24f}, {0.74f, 0.5f}, {0.7f, 0.7f}, {0.74f, 0.86f}},
                               {{0.31f, 0.42f}, {0.37f, 0.5f}, {0.44f, 0.56f}, {0.5f, 0.6f}}};
  for (const auto& one : lines) {
    std::vector<Vec> line;
    for (const Spot s : one) line.push_back(paint.trunk.at(s.x, s.v));
    add_stroke(paint.mesh, smooth_even(line, paint.detail.fine_marks ? 9 : 4), 0.04f, 0.026f, colour);
  }
}

// Two arcs of dots on a spread tail.
void fan_dots(const Painter& paint, const FishShape& shape, ImU32 colour) {
  const float half = std::abs(shape.tail.front().y), reach = shape.tail[shape.tail.size() / 2].x - 1;
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

// A honey gourami's dark throat, which runs from under the eye along the belly.
void throat(const Painter& paint, ImU32 colour) {
  const Spot upper[4] = {{0.02f, 0.62f}, {0.14f, 0.6f}, {0.3f, 0.72f}, {0.56f, 0.93f}},
             lower[4] = {{0.03f, 0.97f}, {0.16f, 0.985f}, {0.3f, 0.99f}, {0.57f, 0.985f}};
  paint.patch(upper, lower, colour, paint.detail.fine_marks ? 10 : 5);
}

}  // namespace

void add_marks(Mesh& mesh, const AnimalLook& look, const Trunk& trunk, const FishShape& shape, const Coat& coat,
               const Detail& detail) {
  const Painter paint{mesh, trunk, detail};
  const ImU32 mark = coat.mark;
  const bool small = !detail.fine_marks;
  if (shape.plates && detail.fine_marks && !coat.flat) {
    for (int i = 0; i < 16; ++i) {
      const float x = 0.3f + 0.042f * static_cast<float>(i);
      const Vec line[3] = {trunk.at(x - 0.012f, 0.08f), trunk.at(x + 0.022f, 0.52f), trunk.at(x - 0.012f, 0.93f)};
      add_stroke(mesh, line, 0.005f, 0.005f, scale_alpha(coat.line, 0.7f));
    }
  }
  if (look.form == Form::labyrinth && look.marks.empty() && !coat.flat && luminance(mark) < 0.06f)
    throat(paint, with_alpha(mark, 0.8f));
  // White clouds: a gleaming line over the red of the tail's root.
  if (look.form == Form::danio && has(look, Mark::tail_spot) && !has(look, Mark::lateral_stripe)) {
    const Spot upper[3] = {{0.15f, 0.36f}, {0.5f, 0.35f}, {0.93f, 0.42f}},
               lower[3] = {{0.15f, 0.46f}, {0.5f, 0.47f}, {0.93f, 0.55f}};
    paint.patch(upper, lower, coat.flat ? mark : mix(coat.belly, IM_COL32(255, 255, 255, 255), 0.6f), small ? 5 : 10);
  }
  for (const Mark one : look.marks) {
    switch (one) {
      case Mark::lateral_stripe: stripe(paint, look, coat); break;
      case Mark::half_stripe_red: {
        const Spot upper[4] = {{0.4f, 0.6f}, {0.55f, 0.5f}, {0.8f, 0.44f}, {1.0f, 0.36f}},
                   lower[4] = {{0.44f, 0.9f}, {0.58f, 0.95f}, {0.8f, 0.95f}, {1.0f, 0.9f}};
        paint.patch(upper, lower, coat.red, small ? 5 : 10);
        break;
      }
      case Mark::wedge: {
        const Spot upper[4] = {{0.47f, 0.16f}, {0.6f, 0.2f}, {0.8f, 0.26f}, {1.0f, 0.38f}};
        const Spot lower[4] = {{0.53f, 0.93f}, {0.64f, 0.84f}, {0.82f, 0.72f}, {1.0f, 0.62f}};
        paint.patch(upper, lower, mark, small ? 5 : 12);
        break;
      }
      case Mark::bars:
        if (look.form == Form::angelfish) {
          disc_bars(paint, shape, mark);
        } else if (look.form == Form::labyrinth) {
          // Many narrow bars that lean, as a dwarf gourami wears them.
          for (int i = 0; i < 8; ++i) {
            const float x = 0.29f + 0.082f * static_cast<float>(i);
            paint.bar(x, x + 0.03f, x + 0.035f, x + 0.062f, 0.05f, 0.9f, coat.flat ? mark : with_alpha(mark, 0.8f));
          }
        } else {
          for (const float x : {0.32f, 0.46f, 0.6f, 0.74f, 0.87f})
            paint.bar(x, x + 0.035f, x + 0.008f, x + 0.035f, 0.04f, 0.85f, coat.flat ? mark : with_alpha(mark, 0.62f));
        }
        break;
      case Mark::tiger_bars:
        if (look.form == Form::angelfish) {
          disc_bars(paint, shape, mark);
        } else {
          paint.bar(0.09f, 0.15f, 0.1f, 0.145f, 0.02f, 0.96f, mark);
          paint.bar(0.315f, 0.4f, 0.335f, 0.4f, 0.015f, 0.9f, mark);
          paint.bar(0.6f, 0.685f, 0.625f, 0.69f, 0.015f, 0.97f, mark);
          paint.bar(0.9f, 0.965f, 0.91f, 0.965f, 0.02f, 0.98f, mark);
        }
        break;
      case Mark::bands:
        if (look.form == Form::hatchet) {
          marbling(paint, coat.flat ? mark : with_alpha(mark, 0.78f));
        } else if (look.form == Form::eel_loach) {
          for (int i = 0; i < 11; ++i) {
            const float x = 0.095f + 0.082f * static_cast<float>(i);
            paint.bar(x, x + 0.052f, x + 0.008f, x + 0.044f, 0.0f, 0.8f, mark);
          }
        } else if (look.form == Form::deep_loach) {
          paint.bar(0.09f, 0.2f, 0.13f, 0.18f, 0.02f, 0.95f, mark);
          paint.bar(0.3f, 0.46f, 0.36f, 0.43f, 0.01f, 0.97f, mark);
          paint.bar(0.64f, 0.85f, 0.72f, 0.8f, 0.02f, 0.97f, mark);
        } else if (look.form == Form::goby || look.form == Form::puffer) {
          for (const float x : {0.1f, 0.33f, 0.57f, 0.82f}) paint.bar(x, x + 0.12f, x + 0.01f, x + 0.11f, 0.01f, 0.97f, mark);
        } else {
          for (const float x : {0.1f, 0.28f, 0.46f, 0.64f, 0.83f})
            paint.bar(x, x + 0.085f, x + 0.01f, x + 0.08f, 0.02f, 0.9f, mark);
        }
        break;
      case Mark::dots:
        if (look.fins == Fins::fan && look.form == Form::livebearer) fan_dots(paint, shape, mark);
        scatter(paint, 0.17f, 0.98f, small ? 0.105f : 0.078f, small ? 0.066f : 0.05f, small ? 0.0185f : 0.0145f,
                small ? scale_alpha(mark, 0.85f) : mark, 0.04f, 0.8f);
        break;
      case Mark::spots:
        scatter(paint, 0.14f, 0.97f, small ? 0.155f : 0.13f, small ? 0.1f : 0.085f, small ? 0.034f : 0.028f, mark, 0.04f, 0.86f);
        break;
      case Mark::reticulate:
        net(paint, small ? 0.13f : 0.085f, small ? 0.016f : 0.011f, coat.flat ? mark : with_alpha(mark, 0.55f));
        break;
      case Mark::honeycomb: {
        const bool pleco = look.form == Form::pleco || look.form == Form::sucker;
        const ImU32 cell = coat.flat || pleco ? mark : with_alpha(mark, 0.8f);
        scatter(paint, 0.08f, 0.98f, small ? 0.105f : 0.088f, small ? 0.06f : 0.052f, small ? 0.036f : 0.031f, cell, 0.02f,
                0.94f);
        break;
      }
      case Mark::eye_band: {
        const float x = shape.eye.x, half = shape.eye_radius * 0.75f;
        paint.bar(x - half + 0.015f, x + half + 0.03f, x - half * 0.8f, x + half * 0.6f, 0.03f, 0.9f, mark);
        break;
      }
      case Mark::tail_spot: {
        const float radius = std::max(0.045f, trunk.depth(0.95f) * 0.36f);
        add_ellipse(mesh, trunk.at(0.945f, 0.5f), {radius, radius * 0.95f}, small ? 8 : 14, mark);
        break;
      }
      case Mark::dorsal_spot:
        for (const FinShape& fin : shape.fins) {
          // A deep tetra wears the spot on its anal fin too.
          if (fin.at == FinAt::side || !fin.grows || (fin.at == FinAt::belly && (look.form != Form::deep_tetra || fin.to < 0.7f)))
            continue;
          const auto tip =
              std::max_element(fin.edge.begin(), fin.edge.end(), [](Vec a, Vec b) { return std::abs(a.y) < std::abs(b.y); });
          const bool long_fin = fin.to - fin.from > 0.3f;
          const float root_x = long_fin ? fin.from + 0.07f : (fin.from + fin.to) / 2;
          const Vec root{root_x, height_at(fin.at == FinAt::back ? trunk.top : trunk.bottom, root_x)};
          const Vec at = lerp(root, *tip, 0.46f);
          const float radius = std::clamp((fin.to - fin.from) * 0.24f, 0.03f, 0.055f);
          add_ellipse(mesh, at, {radius, radius * 1.25f}, small ? 8 : 12, mark);
          if (look.form != Form::deep_tetra) break;
        }
        break;
      case Mark::dark_band: {
        const Spot upper[5] = {{0.005f, 0.42f}, {0.12f, 0.38f}, {0.4f, 0.34f}, {0.75f, 0.34f}, {1.0f, 0.3f}};
        const Spot lower[5] = {{0.005f, 0.62f}, {0.12f, 0.6f}, {0.4f, 0.62f}, {0.75f, 0.64f}, {1.0f, 0.7f}};
        paint.patch(upper, lower, mark, small ? 6 : 14);
        break;
      }
      case Mark::fin_edges: break;      // in the fins themselves
      case Mark::shell_stripes: break;  // on shells only
    }
  }
}

}  // namespace shoalwright
