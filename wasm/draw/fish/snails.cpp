// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

namespace {

bool striped(const AnimalLook& look) {
  return wears(look, Mark::shell_stripes) || wears(look, Mark::bands) || wears(look, Mark::bars) ||
         wears(look, Mark::lateral_stripe);
}
bool spotted(const AnimalLook& look) {
  return wears(look, Mark::dots) || wears(look, Mark::spots) || wears(look, Mark::tiger_bars);
}

// Feelers and foot, on which every shell sits; a ramshorn's foot is shorter than its disc is wide.
void add_foot(Mesh& mesh, const AnimalLook& look, const Coat& coat, bool fine, float from, float to) {
  const ImU32 skin = coat.flat ? coat.fin : mix(coat.belly, wears(look, Mark::head_patch) ? look.accent : rgb(0x6E655A), 0.45f);
  const ImU32 dark = coat.flat ? coat.fin : mix(skin, coat.pupil, 0.3f);
  const Vec feeler_a[3] = {{from + 0.07f, -0.3f}, {from - 0.04f, -0.22f}, {from - 0.11f, -0.1f}},
            feeler_b[3] = {{from + 0.09f, -0.31f}, {from - 0.07f, -0.29f}, {from - 0.17f, -0.22f}};
  add_stroke(mesh, smooth(feeler_a, 4), 0.035f, 0.014f, dark);
  add_stroke(mesh, smooth(feeler_b, 4), 0.035f, 0.014f, dark);
  const float span = to - from;
  const Vec foot[5] = {{from, -0.335f},
                       {from + span * 0.17f, -0.345f},
                       {from + span * 0.47f, -0.35f},
                       {from + span * 0.77f, -0.355f},
                       {to, -0.385f}};
  const float half[5] = {0.05f, 0.075f, 0.075f, 0.055f, 0.008f};
  add_limb(mesh, foot, half, fine ? 18 : 9, skin, skin, dark);
  if (!coat.flat) add_ellipse(mesh, {from + 0.055f, -0.295f}, {0.016f, 0.016f}, 6, coat.pupil);
}

/// A shell like a cap or a ball: its outline from the front hem over the crown to the rear hem, the middle of its spiral and how
/// large that is.
struct Dome {
  Vec rim[9];
  Vec spire;
  float spiral;
};

Dome dome_of(Form form) {
  switch (form) {
    case Form::apple_snail:
      return {{{0.02f, -0.29f},
               {-0.02f, -0.04f},
               {0.07f, 0.2f},
               {0.27f, 0.35f},
               {0.5f, 0.4f},
               {0.73f, 0.37f},
               {0.92f, 0.2f},
               {0.99f, -0.04f},
               {0.9f, -0.29f}},
              {0.72f, 0.14f},
              0.22f};
    case Form::nerite:
    case Form::horned_nerite:
      return {{{0.0f, -0.28f},
               {0.02f, -0.08f},
               {0.14f, 0.1f},
               {0.34f, 0.2f},
               {0.58f, 0.215f},
               {0.8f, 0.13f},
               {0.95f, -0.02f},
               {1.0f, -0.17f},
               {0.93f, -0.3f}},
              {0.84f, -0.08f},
              0.15f};
    case Form::limpet:
      return {{{-0.02f, -0.31f},
               {0.08f, -0.19f},
               {0.22f, -0.1f},
               {0.4f, -0.035f},
               {0.58f, -0.02f},
               {0.74f, -0.06f},
               {0.87f, -0.14f},
               {0.96f, -0.22f},
               {1.0f, -0.31f}},
              {0.74f, -0.13f},
              0.0f};
    default:
      return {{{0.02f, -0.27f},
               {0.005f, -0.08f},
               {0.09f, 0.14f},
               {0.28f, 0.3f},
               {0.52f, 0.345f},
               {0.76f, 0.27f},
               {0.94f, 0.08f},
               {0.985f, -0.12f},
               {0.9f, -0.29f}},
              {0.72f, -0.02f},
              0.3f};
  }
}

void add_dome(Mesh& mesh, const AnimalLook& look, const Coat& coat, bool fine) {
  const Dome dome = dome_of(look.form);
  if (look.form == Form::horned_nerite) {
    // Spikes on the shoulder, some long, some worn down.
    constexpr float spikes[][4] = {
        {0.3f, 0.16f, 0.2f, 0.4f}, {0.52f, 0.2f, 0.56f, 0.43f}, {0.74f, 0.15f, 0.87f, 0.34f}, {0.14f, 0.06f, 0.0f, 0.2f}};
    for (const auto& s : spikes) {
      const Vec line[2] = {{s[0], s[1]}, {s[2], s[3]}};
      add_stroke(mesh, line, 0.07f, 0.014f, coat.flat ? coat.flank : mix(coat.back, coat.mark, 0.5f));
    }
  }
  const std::vector<Vec> rim = smooth_even(dome.rim, fine ? 34 : 13);
  std::vector<Vec> base;
  for (size_t i = 0; i < rim.size(); ++i)
    base.push_back({lerp(0.02f, 0.93f, static_cast<float>(i) / static_cast<float>(rim.size() - 1)), -0.31f});
  Rail inner;
  for (size_t i = 0; i < rim.size(); ++i) {
    inner.points.push_back(lerp(lerp(rim[i], base[i], 0.45f), dome.spire, 0.12f));
    // Lit from above and the left.
    inner.colours.push_back(mix(coat.flank, coat.flat ? coat.flank : mix(coat.flank, coat.pale, 0.55f),
                                0.5f * (1 - static_cast<float>(i) / static_cast<float>(rim.size() - 1))));
  }
  const Rail shell[3] = {rail(rim, coat.rim_top), inner, rail(base, coat.flat ? coat.flank : mix(coat.flank, coat.back, 0.6f))};
  add_sheet(mesh, shell);
  const auto down = [&](int i, float of) {
    const auto k = static_cast<size_t>((static_cast<float>(i) + 1.0f) / of * static_cast<float>(rim.size() - 1));
    const Vec crown = lerp(rim[k], base[k], 0.03f), hem = lerp(rim[k], base[k], 0.97f);
    const std::vector<Vec> line{crown, lerp(crown, hem, 0.5f) + Vec{-0.075f + 0.012f * static_cast<float>(i), 0.02f}, hem};
    return line;
  };
  if (striped(look)) {
    // Along the growth of the shell, from the crown down to the rim, each bent towards the mouth.
    const float half[2] = {0.019f, 0.011f};
    for (int i = 0; i < 7; ++i) {
      if (fine) {
        add_limb(mesh, down(i, 8.2f), half, coat.flat ? 5 : 9, coat.mark, coat.mark, coat.mark);
      } else {
        add_stroke(mesh, down(i, 8.2f), 0.05f, 0.03f, coat.mark);
      }
    }
  }
  if (spotted(look)) {
    for (int i = 1; i < static_cast<int>(rim.size()) - 1; i += fine ? 3 : 2) {
      for (int ring = 0; ring < (fine ? 3 : 2); ++ring) {
        const Vec at = lerp(rim[static_cast<size_t>(i)], dome.spire, 0.14f + 0.27f * static_cast<float>(ring));
        if (at.y > -0.24f) add_ellipse(mesh, at, {0.024f, 0.02f}, fine ? 7 : 4, coat.mark, fine && !coat.flat);
      }
    }
  }
  const ImU32 seam = coat.flat ? coat.mark : mix(coat.back, coat.pupil, 0.55f);
  if (dome.spiral > 0) {
    // The seam turns in on the spire; below it the last whorl swells to the mouth.
    std::vector<Vec> whorl;
    for (int i = 0; i <= (fine ? 34 : 9); ++i) {
      const float t = static_cast<float>(i) / (fine ? 34.0f : 9.0f), angle = -2.15f + 10.2f * t,
                  radius = dome.spiral * std::pow(0.16f, t);
      whorl.push_back(dome.spire + Vec{std::cos(angle) * radius, std::sin(angle) * radius * 0.9f});
    }
    add_stroke(mesh, whorl, 0.034f, 0.012f, coat.flat ? seam : with_alpha(seam, 0.75f));
    if (!coat.flat) {
      // Light catches the shoulder of each turn, just outside its seam.
      std::vector<Vec> light;
      for (size_t i = whorl.size() / 5; i < whorl.size() * 2 / 3; ++i) light.push_back(lerp(dome.spire, whorl[i], 1.16f));
      add_stroke(mesh, light, 0.022f, 0.008f, with_alpha(mix(coat.flank, IM_COL32(255, 255, 255, 255), 0.5f), 0.5f));
    }
  }
  if (coat.flat) return;
  if (fine) {
    for (int i = 0; i < 8; ++i) add_stroke(mesh, smooth(down(i, 10.5f), 5), 0.008f, 0.006f, scale_alpha(coat.line, 0.7f));
  }
  const auto shine_at = [&](float t) {
    return lerp(rim[static_cast<size_t>(t * static_cast<float>(rim.size() - 1))], dome.spire, 0.22f);
  };
  const Vec shine[3] = {shine_at(0.2f), shine_at(0.3f), shine_at(0.42f)};
  add_stroke(mesh, smooth(shine, 4), 0.02f, 0.04f, with_alpha(coat.pale, 0.45f));
}

// A tall spire that lies back over the foot: turns that swell, with seams between them.
void add_cone(Mesh& mesh, const AnimalLook& look, const Coat& coat, bool fine) {
  const Vec mouth{0.1f, -0.2f}, tip{1.0f, 0.2f};
  const Vec along = unit(tip - mouth), across{-along.y, along.x};
  const float reach = length(tip - mouth);
  constexpr int turns = 7;
  float at = -0.06f;
  // From the tip to the mouth, so that each larger turn lies over the next smaller one.
  struct Turn {
    float from, to, half;
  };
  Turn all[turns];
  float step = 0.27f, half = 0.2f;
  for (Turn& one : all) {
    one = {at, at + step * 1.22f, half};
    at += step;
    step *= 0.78f;
    half *= 0.76f;
  }
  const float fit = reach / (at + 0.02f);
  for (int i = turns - 1; i >= 0; --i) {
    const Turn one = all[i];
    const auto place = [&](float out, float side) { return mouth + along * (out * fit) + across * (side * one.half); };
    const float a = one.from, b = one.to, c = (a + b) / 2;
    const int corners = fine ? 9 : 3;
    const Vec upper_points[4] = {place(a, 0.72f), place(a + 0.25f * (c - a), 0.96f), place(c, 1.0f), place(b, 0.62f)};
    const Vec lower_points[4] = {place(a, -0.72f), place(a + 0.25f * (c - a), -0.96f), place(c, -1.0f), place(b, -0.62f)};
    const std::vector<Vec> upper = smooth_even(upper_points, corners), lower = smooth_even(lower_points, corners);
    std::vector<Vec> middle;
    for (size_t k = 0; k < upper.size(); ++k) middle.push_back(lerp(upper[k], lower[k], 0.42f));
    const bool dark = wears(look, Mark::bands) && i % 2 != 0;
    const ImU32 body = dark ? coat.mark : coat.flank;
    const Rail rails[3] = {rail(upper, coat.flat ? coat.flank : mix(body, coat.back, 0.55f)),
                           rail(middle, coat.flat ? (dark ? coat.mark : coat.flank) : mix(body, coat.pale, 0.18f)),
                           rail(lower, coat.flat ? coat.flank : mix(body, coat.pupil, 0.35f))};
    add_sheet(mesh, rails);
    const Vec seam[3] = {place(a, 0.7f), place(a + 0.06f, 0.0f), place(a, -0.7f)};
    if (i > 0 && (fine || i % 2 != 0))
      add_stroke(mesh, seam, 0.02f, 0.016f, coat.flat ? coat.mark : with_alpha(mix(coat.back, coat.pupil, 0.55f), 0.7f));
    if (spotted(look)) {
      for (const float side : {-0.5f, 0.0f, 0.5f})
        add_ellipse(mesh, place(c + 0.05f * side, side), {0.016f, 0.016f}, fine ? 7 : 4, coat.mark, false);
    }
    if (wears(look, Mark::reticulate)) {
      // Ribs that stand out from the turns.
      for (const float side : {-0.66f, -0.22f, 0.22f, 0.66f}) {
        if (!fine && std::abs(side) < 0.5f) continue;
        const Vec rib[2] = {place(a + 0.04f, side), place(c, side * 1.05f)};
        add_stroke(mesh, rib, 0.022f, 0.012f, coat.flat ? coat.mark : coat.mark);
      }
    }
    if (wears(look, Mark::fin_edges)) {
      for (const float side : {-1.0f, 1.0f}) {
        if (!fine && side < 0) continue;
        const Vec thorn[2] = {place(c, side * 0.9f), place(c - 0.02f, side * 1.35f)};
        add_stroke(mesh, thorn, 0.04f, 0.012f, coat.flat ? coat.flank : mix(coat.back, coat.flank, 0.4f));
      }
    }
  }
}

// A flat coil, seen from its side.
void add_coil(Mesh& mesh, const AnimalLook& look, const Coat& coat, bool fine) {
  const Vec middle{0.52f, 0.02f};
  const int corners = fine ? 40 : 20;
  constexpr float wide = 0.47f;
  std::vector<Vec> rim;
  for (int i = 0; i < corners; ++i) {
    const float angle = 6.2831853f * static_cast<float>(i) / static_cast<float>(corners);
    // The last turn opens towards the head, low in front.
    const float swell = angle > 3.1416f && angle < 4.5f ? 1.0f + 0.16f * std::sin((angle - 3.1416f) / 1.36f * 3.1416f) : 1.0f;
    rim.push_back(middle + Vec{std::cos(angle) * wide * swell, std::sin(angle) * wide * 0.86f * swell});
  }
  add_fan(mesh, rim, middle, coat.flat ? coat.flank : mix(coat.back, coat.flank, 0.55f), coat.flank);
  const auto spiral = [&](float from, float turns, float start, int count) {
    std::vector<Vec> line;
    for (int i = 0; i <= count; ++i) {
      const float t = static_cast<float>(i) / static_cast<float>(count), angle = start + 6.2831853f * turns * t,
                  radius = from * std::pow(0.14f, t);
      line.push_back(middle + Vec{std::cos(angle) * radius, std::sin(angle) * radius * 0.86f});
    }
    return line;
  };
  if (!coat.flat)
    add_stroke(mesh, spiral(0.36f, 2.6f, -2.2f, fine ? 44 : 16), 0.11f, 0.02f,
               with_alpha(mix(coat.flank, coat.pale, 0.4f), 0.55f));
  if (striped(look)) {
    for (const float at : {0.42f, 0.35f}) add_stroke(mesh, spiral(at, 2.2f, -2.3f, fine ? 44 : 16), 0.03f, 0.01f, coat.mark);
  }
  if (spotted(look)) {
    for (int i = 0; i < 14; ++i) {
      const float angle = 0.62f * static_cast<float>(i), out = 0.38f - 0.018f * static_cast<float>(i);
      add_ellipse(mesh, middle + Vec{std::cos(angle) * out, std::sin(angle) * out * 0.86f}, {0.022f, 0.02f}, fine ? 8 : 4,
                  coat.mark, fine);
    }
  }
  const ImU32 seam = coat.flat ? coat.mark : with_alpha(mix(coat.back, coat.pupil, 0.5f), 0.85f);
  add_stroke(mesh, spiral(0.3f, 2.4f, -2.4f, fine ? 44 : 14), 0.034f, 0.012f, seam);
}

}  // namespace

Mesh snail_mesh(const AnimalLook& look, const Coat& coat, int level) {
  Mesh mesh;
  const bool fine = level >= 2, coiled = look.form == Form::ramshorn, tall = look.form == Form::cone_snail;
  add_foot(mesh, look, coat, fine, coiled ? 0.02f : -0.09f, coiled ? 0.82f : tall ? 0.78f : 1.06f);
  if (coiled) {
    add_coil(mesh, look, coat, fine);
  } else if (tall) {
    add_cone(mesh, look, coat, fine);
  } else {
    add_dome(mesh, look, coat, fine);
  }
  settle(mesh, 0, 1, -0.03f);
  return mesh;
}

}  // namespace shoalwright
