// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

namespace {

/// A stripe from `start` to `end` around the height `centre`; `rear` says how wide it ends.
struct Run {
  float start, end, centre, half, rear;
};
void run(const Painter& paint, Run r, ImU32 colour) {
  const Spot upper[4] = {{r.start, r.centre - r.half * 0.5f},
                         {0.3f, r.centre - r.half},
                         {0.7f, r.centre - r.half * 1.1f},
                         {r.end, r.centre - r.half * r.rear}};
  const Spot lower[4] = {{r.start, r.centre + r.half * 0.5f},
                         {0.3f, r.centre + r.half},
                         {0.7f, r.centre + r.half * 1.1f},
                         {r.end, r.centre + r.half * r.rear}};
  paint.patch(upper, lower, colour, colour, paint.detail.fine_marks ? 12 : 6);
}

// The line that gleams on a neon, with light in its middle; over a red half it stops before the tail.
void glow(const Painter& paint, const AnimalLook& look) {
  const bool half_red = wears(look, Mark::half_stripe_red);
  const bool over_dark = wears(look, Mark::dark_band) || wears(look, Mark::lateral_stripe);
  const float centre = over_dark ? 0.27f : half_red ? 0.36f : 0.34f, half = over_dark ? 0.06f : 0.12f;
  run(paint, {0.06f, half_red ? 0.86f : 0.97f, centre, half, 0.3f}, paint.coat.bright);
  if (paint.detail.fine_marks && !paint.coat.flat)
    run(paint, {0.12f, 0.8f, centre - 0.022f, half * 0.28f, 0.2f}, mix(paint.coat.bright, IM_COL32(255, 255, 246, 255), 0.55f));
}

// The bars of a disc: through the eye, before and behind the middle, at the tail; the third runs out into the fins.
void disc_bars(const Painter& paint, ImU32 colour) {
  paint.bar(0.115f, 0.16f, 0.1f, 0.14f, 0.02f, 0.98f, colour);
  paint.bar(0.35f, 0.41f, 0.355f, 0.41f, 0.01f, 0.99f, colour);
  paint.bar(0.62f, 0.71f, 0.62f, 0.71f, 0.005f, 0.995f, colour);
  paint.bar(0.93f, 0.985f, 0.93f, 0.985f, 0.02f, 0.98f, colour);
  for (const FinShape& fin : paint.shape.fins) {
    if (fin.at == FinAt::side || fin.to - fin.from < 0.3f) continue;
    const Vec root = paint.trunk.at(0.665f, fin.at == FinAt::back ? 0.02f : 0.98f);
    const Vec tip = fin.edge[fin.edge.size() / 2];
    const Vec line[3] = {root, lerp(root, tip, 0.45f) + Vec{-0.03f, 0}, lerp(root, tip, 0.85f)};
    add_stroke(paint.mesh, smooth_even(line, paint.detail.fine_marks ? 9 : 4), 0.085f, 0.03f, scale_alpha(colour, 0.6f));
  }
}

void bands(const Painter& paint, ImU32 colour) {
  if (paint.shape.bands == 3) {
    paint.bar(0.09f, 0.2f, 0.13f, 0.18f, 0.02f, 0.95f, colour);
    paint.bar(0.3f, 0.46f, 0.36f, 0.43f, 0.01f, 0.97f, colour);
    paint.bar(0.64f, 0.85f, 0.72f, 0.8f, 0.02f, 0.97f, colour);
    return;
  }
  const int count = paint.shape.bands;
  const float step = 0.9f / static_cast<float>(count), wide = step * (count < 5 ? 0.5f : count > 8 ? 0.62f : 0.45f);
  for (int i = 0; i < count; ++i) {
    const float x = 0.095f + step * static_cast<float>(i);
    paint.bar(x, x + wide, x + wide * 0.12f, x + wide * 0.88f, 0.01f, count > 8 ? 0.82f : 0.94f, colour);
  }
}

// Narrow bands that slant and fork.
void marbling(const Painter& paint, ImU32 colour) {
  constexpr Spot lines[][4] = {{{0.2f, 0.12f}, {0.24f, 0.36f}, {0.2f, 0.6f}, {0.25f, 0.84f}},
                               {{0.36f, 0.14f}, {0.31f, 0.38f}, {0.37f, 0.62f}, {0.31f, 0.88f}},
                               {{0.44f, 0.16f}, {0.5f, 0.42f}, {0.43f, 0.64f}, {0.47f, 0.9f}},
                               {{0.6f, 0.14f}, {0.56f, 0.44f}, {0.62f, 0.68f}, {0.57f, 0.9f}},
                               {{0.7f, 0.14f}, {0.74f, 0.46f}, {0.7f, 0.7f}, {0.74f, 0.88f}},
                               {{0.85f, 0.16f}, {0.82f, 0.44f}, {0.87f, 0.66f}, {0.83f, 0.86f}},
                               {{0.31f, 0.42f}, {0.37f, 0.5f}, {0.44f, 0.56f}, {0.5f, 0.6f}}};
  for (const auto& one : lines) paint.line(one, 0.036f, 0.024f, colour);
}

// Fine worm lines that run lengthwise, bend and break, as sailfin plecos and pufferfish wear them.
void maze(const Painter& paint, ImU32 colour) {
  const bool fine = paint.detail.fine_marks;
  const int rows = fine ? 6 : 3;
  for (int row = 0; row < rows; ++row) {
    const float v = 0.1f + 0.76f * static_cast<float>(row) / static_cast<float>(rows - 1),
                swing = 0.28f / static_cast<float>(rows);
    const float shift = row % 2 != 0 ? 0.09f : 0.0f, piece = fine ? 0.17f : 0.25f;
    for (float x = 0.06f + shift; x + piece * 0.8f < 0.99f; x += piece) {
      const Spot line[4] = {
          {x, v - swing}, {x + piece * 0.28f, v + swing}, {x + piece * 0.52f, v - swing}, {x + piece * 0.8f, v + swing}};
      paint.line(std::span<const Spot>(line, fine ? 4 : 3), fine ? 0.015f : 0.022f, fine ? 0.015f : 0.022f, colour);
    }
  }
}

// A net of slanted lines.
void net(const Painter& paint, float step, float width, ImU32 colour) {
  for (int way = -1; way <= 1; way += 2) {
    for (float start = -0.1f; start < 1.1f; start += step) {
      std::vector<Vec> line;
      const int knots = paint.detail.fine_marks ? 4 : 2;
      for (int i = 0; i <= knots; ++i) {
        const float t = static_cast<float>(i) / static_cast<float>(knots),
                    x = start + static_cast<float>(way) * (t - 0.5f) * 0.24f;
        if (x > 0.2f && x < 0.97f) line.push_back(paint.trunk.at(x, lerp(0.07f, 0.9f, t)));
      }
      if (line.size() > 1) add_stroke(paint.mesh, line, width, width, colour);
    }
  }
}

}  // namespace

void add_stripe_marks(const Painter& paint, const AnimalLook& look) {
  const Coat& coat = paint.coat;
  const ImU32 mark = coat.mark, soft = coat.flat ? mark : with_alpha(mark, 0.7f);
  const bool small = !paint.detail.fine_marks;
  const int points = small ? 5 : 12;
  for (const Mark one : look.marks) {
    switch (one) {
      case Mark::lateral_stripe:
        if (look.form == Form::hatchet) {
          run(paint, {0.16f, 1.0f, 0.2f, 0.026f, 1.6f}, mark);
        } else {
          const bool from_snout = look.form == Form::corydoras || look.form == Form::sucker;
          run(paint, {from_snout ? 0.02f : 0.11f, 1.0f, 0.44f, 0.075f, 1.2f}, mark);
        }
        break;
      case Mark::glow_stripe: glow(paint, look); break;
      case Mark::front_stripe: {
        const Spot upper[3] = {{0.02f, 0.32f}, {0.25f, 0.22f}, {0.62f, 0.26f}},
                   lower[3] = {{0.02f, 0.44f}, {0.25f, 0.36f}, {0.62f, 0.3f}};
        paint.patch(upper, lower, coat.bright, coat.bright, points);
        break;
      }
      case Mark::double_stripe:
        run(paint, {0.03f, 1.0f, 0.2f, 0.055f, 1.2f}, mark);
        run(paint, {0.03f, 1.0f, 0.55f, 0.065f, 1.2f}, mark);
        break;
      case Mark::stripes:
        for (const float centre : {0.2f, 0.4f, 0.6f, 0.79f})
          run(paint, {centre > 0.7f ? 0.2f : 0.1f, 1.0f, centre, centre > 0.7f ? 0.032f : 0.048f, 1.1f}, mark);
        break;
      case Mark::back_stripe: {
        const Spot upper[4] = {{0.16f, 0.01f}, {0.35f, 0.008f}, {0.7f, 0.008f}, {1.0f, 0.02f}},
                   lower[4] = {{0.2f, 0.12f}, {0.36f, 0.3f}, {0.7f, 0.32f}, {1.0f, 0.5f}};
        paint.patch(upper, lower, mark, mark, points);
        break;
      }
      case Mark::hockey_stripe: {
        run(paint, {0.24f, 1.0f, 0.5f, 0.075f, 1.5f}, mark);
        const Vec low = paint.shape.tail.back(), line[3] = {{0.985f, 0.0f}, lerp({1.0f, 0}, low, 0.5f) + Vec{0, 0.006f}, low};
        add_stroke(paint.mesh, smooth_even(line, small ? 4 : 9), 0.05f, 0.03f, mark);
        break;
      }
      case Mark::slant_stripe: {
        const Spot upper[3] = {{0.03f, 0.44f}, {0.4f, 0.2f}, {0.8f, 0.0f}},
                   lower[3] = {{0.03f, 0.56f}, {0.42f, 0.36f}, {0.9f, 0.02f}};
        paint.patch(upper, lower, mark, mark, points);
        break;
      }
      case Mark::half_stripe_red: {
        const Spot upper[4] = {{0.4f, 0.6f}, {0.55f, 0.5f}, {0.8f, 0.44f}, {1.0f, 0.36f}},
                   lower[4] = {{0.44f, 0.9f}, {0.58f, 0.95f}, {0.8f, 0.95f}, {1.0f, 0.9f}};
        paint.patch(upper, lower, coat.red, coat.red, points);
        break;
      }
      case Mark::wedge: {
        const Spot upper[4] = {{0.47f, 0.16f}, {0.6f, 0.2f}, {0.8f, 0.26f}, {1.0f, 0.38f}};
        const Spot lower[4] = {{0.53f, 0.93f}, {0.64f, 0.84f}, {0.82f, 0.72f}, {1.0f, 0.62f}};
        paint.patch(upper, lower, mark, mark, points);
        break;
      }
      case Mark::dark_band: {
        const Spot upper[5] = {{0.005f, 0.42f}, {0.12f, 0.38f}, {0.4f, 0.34f}, {0.75f, 0.34f}, {1.0f, 0.3f}};
        const Spot lower[5] = {{0.005f, 0.62f}, {0.12f, 0.6f}, {0.4f, 0.62f}, {0.75f, 0.64f}, {1.0f, 0.7f}};
        paint.patch(upper, lower, mark, mark, small ? 6 : 14);
        break;
      }
      case Mark::bars:
        if (look.form == Form::angelfish) {
          disc_bars(paint, mark);
        } else {
          for (const float x : {0.3f, 0.43f, 0.56f, 0.69f, 0.81f, 0.92f})
            paint.bar(x, x + 0.045f, x + 0.012f, x + 0.038f, 0.03f, 0.88f, soft);
        }
        break;
      case Mark::tiger_bars:
        if (look.form == Form::angelfish) {
          disc_bars(paint, mark);
        } else {
          paint.bar(0.09f, 0.15f, 0.1f, 0.145f, 0.02f, 0.96f, mark);
          paint.bar(0.315f, 0.4f, 0.335f, 0.4f, 0.015f, 0.9f, mark);
          paint.bar(0.6f, 0.685f, 0.625f, 0.69f, 0.015f, 0.97f, mark);
          paint.bar(0.9f, 0.965f, 0.91f, 0.965f, 0.02f, 0.98f, mark);
        }
        break;
      case Mark::bands: bands(paint, mark); break;
      case Mark::oblique_bars:
        for (int i = 0; i < 8; ++i) {
          const float x = 0.2f + 0.094f * static_cast<float>(i);
          paint.bar(x, x + 0.034f, x + 0.045f, x + 0.075f, 0.05f, 0.92f, coat.flat ? mark : with_alpha(mark, 0.85f));
        }
        break;
      case Mark::marbling: marbling(paint, coat.flat ? mark : with_alpha(mark, 0.8f)); break;
      case Mark::maze: maze(paint, coat.flat ? mark : with_alpha(mark, 0.85f)); break;
      case Mark::reticulate:
        net(paint, small ? 0.15f : 0.085f, small ? 0.016f : 0.011f, coat.flat ? mark : with_alpha(mark, 0.55f));
        break;
      case Mark::eye_band: {
        const float x = paint.shape.eye.x, half = std::max(0.03f, paint.shape.eye_radius * 0.85f);
        paint.bar(x - half + 0.015f, x + half + 0.03f, x - half * 0.8f, x + half * 0.6f, 0.03f, 0.92f, mark);
        break;
      }
      case Mark::cheek_stripe: {
        const Vec eye = paint.shape.eye;
        const float gill = paint.shape.gill_x;
        const Vec line[2] = {eye, {lerp(eye.x, gill, 0.65f), lerp(eye.y, height_at(paint.trunk.bottom, gill), 0.85f)}};
        add_stroke(paint.mesh, line, 0.03f, 0.022f, mark);
        break;
      }
      default: break;
    }
  }
}

}  // namespace shoalwright
