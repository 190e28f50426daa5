// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

Vec Trunk::at(float x, float v) const { return {x, lerp(height_at(top, x), height_at(bottom, x), v)}; }

float Trunk::depth(float x) const { return height_at(top, x) - height_at(bottom, x); }

Trunk trunk_of(const FishShape& shape) { return {smooth(shape.top, 8), smooth(shape.bottom, 8)}; }

Detail detail_of(int level) {
  constexpr Detail levels[4] = {
      {10, 2, 6, false, false}, {14, 3, 7, false, false}, {30, 8, 12, true, true}, {48, 12, 18, true, true}};
  return levels[std::clamp(level, 0, 3)];
}

FishShape with_fins(Form form, Fins fins) {
  FishShape out = fish_shape(form);
  const bool angel = form == Form::angelfish, flowing = form == Form::fighter || form == Form::goldfish_fancy;
  const auto grow_fins = [&out](float height, float sweep, bool back, bool belly) {
    for (FinShape& fin : out.fins) {
      if (!fin.grows || fin.pectoral || (fin.at == FinAt::back && !back) || (fin.at == FinAt::belly && !belly)) continue;
      const Vec base{(fin.from + fin.to) / 2, fin.edge.front().y > 0 ? 0.1f : -0.1f};
      for (Vec& p : fin.edge) {
        p.y = base.y + (p.y - base.y) * height;
        p.x += std::max(0.0f, (p.x - fin.from)) * sweep + std::abs(p.y - base.y) * sweep * 0.6f;
      }
    }
  };
  const auto grow_tail = [&out](float reach, float spread, float droop) {
    for (Vec& p : out.tail) {
      p.y = p.y * spread - droop * (p.x - 1);
      p.x = 1 + (p.x - 1) * reach;
    }
  };
  switch (fins) {
    case Fins::plain: break;
    case Fins::longer:
      if (angel) break;  // its form has them long already
      grow_fins(1.45f, 0.25f, true, true);
      grow_tail(1.5f, 1.3f, 0);
      break;
    case Fins::lyre: {
      grow_fins(1.12f, 0.12f, true, true);
      // Two points that stream, whatever the plain tail is like.
      float half = 0, reach = 1;
      for (const Vec p : out.tail) {
        half = std::max(half, std::abs(p.y));
        reach = std::max(reach, p.x);
      }
      const float far_x = 1 + (reach - 1) * 1.7f, notch = 1 + (reach - 1) * 0.72f;
      out.tail = {{far_x, half * 1.45f},  {lerp(notch, far_x, 0.45f), half * 0.86f},  {notch, half * 0.25f},
                  {notch, -half * 0.25f}, {lerp(notch, far_x, 0.45f), -half * 0.86f}, {far_x, -half * 1.45f}};
      break;
    }
    case Fins::threads: {
      float far_x = 1;
      for (const Vec p : out.tail) far_x = std::max(far_x, p.x);
      if (out.threads.empty()) {
        for (const FinShape& fin : out.fins) {
          if (!fin.grows || fin.pectoral || fin.to - fin.from < 0.12f) continue;
          const Vec tip =
              *std::max_element(fin.edge.begin(), fin.edge.end(), [](Vec a, Vec b) { return std::abs(a.y) < std::abs(b.y); });
          const float side = tip.y > 0 ? 1.0f : -1.0f;
          out.threads.push_back({tip, tip + Vec{0.14f, 0.07f * side}, tip + Vec{0.36f, 0.05f * side}});
        }
        out.threads.push_back({out.tail.front(), out.tail.front() + Vec{0.1f, 0.04f}, out.tail.front() + Vec{0.24f, 0.03f}});
        out.threads.push_back({out.tail.back(), out.tail.back() + Vec{0.1f, -0.04f}, out.tail.back() + Vec{0.24f, -0.03f}});
      }
      break;
    }
    case Fins::veil:
      grow_fins(flowing ? 1.18f : 1.6f, flowing ? 0.2f : 0.4f, true, true);
      grow_tail(flowing ? 1.42f : 1.7f, flowing ? 1.25f : 1.45f, flowing ? 0.36f : 0.18f);
      out.tail_bend += 0.1f;
      break;
    case Fins::fan: {
      grow_fins(1.25f, 0.25f, true, false);
      const float half = std::max(0.3f, std::abs(out.tail.front().y) * 1.75f),
                  reach = 1 + (out.tail[out.tail.size() / 2].x - 1) * 1.3f;
      out.tail = {{1 + (reach - 1) * 0.88f, half},
                  {1 + (reach - 1) * 1.04f, half * 0.62f},
                  {1 + (reach - 1) * 1.09f, 0},
                  {1 + (reach - 1) * 1.04f, -half * 0.62f},
                  {1 + (reach - 1) * 0.88f, -half}};
      out.tail_bend = 0.02f;
      break;
    }
    case Fins::sail:
      // Higher and, what makes the sail, on a longer base.
      for (FinShape& fin : out.fins) {
        if (!fin.grows || fin.at != FinAt::back) continue;
        const float from = fin.from, stretch = (fin.to - from + 0.1f) / (fin.to - from);
        fin.to += 0.1f;
        for (Vec& p : fin.edge) p.x = from + (p.x - from) * stretch;
      }
      grow_fins(1.28f, 0.06f, true, false);
      break;
  }
  return out;
}

namespace {

std::vector<Vec> line_between(Vec a, Vec b, int count) {
  std::vector<Vec> out;
  for (int i = 0; i < count; ++i) out.push_back(lerp(a, b, static_cast<float>(i) / static_cast<float>(count - 1)));
  return out;
}

void add_rays(Mesh& mesh, const Rail& root, const Rail& edge, ImU32 colour) {
  for (size_t i = 1; i + 1 < root.points.size(); ++i) {
    const Vec line[2] = {lerp(root.points[i], edge.points[i], 0.15f), lerp(root.points[i], edge.points[i], 0.94f)};
    add_stroke(mesh, line, 0.005f, 0.001f, colour);
  }
}

// A fin between its base and its free edge. The edge may carry another colour, which a narrow last band shows.
void add_fin(Mesh& mesh, std::vector<Vec> base, std::span<const Vec> edge_points, const Coat& coat, const Detail& detail) {
  std::vector<Vec> control{base.front()};
  control.insert(control.end(), edge_points.begin(), edge_points.end());
  control.push_back(base.back());
  // Long fins take more corners than short ones.
  const int count = detail.fin_points + 2 + (length(base.back() - base.front()) > 0.4f ? detail.fin_points : 0);
  const Rail root = rail(even(base, count), coat.fin_root);
  Rail edge = rail(smooth_even(control, count), coat.fin);
  const bool edged = coat.fin_edge != coat.fin;
  if (edged) {
    Rail inner = edge;
    for (size_t i = 0; i < inner.points.size(); ++i) {
      inner.points[i] = lerp(root.points[i], edge.points[i], 0.8f);
      edge.colours[i] = coat.fin_edge;
      inner.colours[i] = mix(coat.fin, coat.fin_edge, 0.25f);
    }
    const Rail rails[3] = {root, inner, edge};
    add_sheet_with_free_edge(mesh, rails);
  } else {
    const Rail rails[2] = {root, edge};
    add_sheet_with_free_edge(mesh, rails);
  }
  if (detail.rays && !coat.flat) add_rays(mesh, root, edge, scale_alpha(coat.line, 0.75f));
}

void add_tail(Mesh& mesh, const FishShape& shape, const Trunk& trunk, const Coat& coat, const Detail& detail) {
  const Vec upper = trunk.at(0.965f, 0.04f), lower = trunk.at(0.965f, 0.96f);
  const int count = std::max(5, detail.fin_points + 4) | 1;
  const Rail root = rail(line_between(upper, lower, count), coat.fin_root);
  Rail edge = rail(smooth_even(shape.tail, count), coat.fin);
  Rail middle = root;
  for (size_t i = 0; i < middle.points.size(); ++i) {
    const float side = 2 * static_cast<float>(i) / static_cast<float>(count - 1) - 1;
    middle.points[i] = lerp(root.points[i], edge.points[i], 0.5f);
    const float half = std::abs(shape.tail.front().y - shape.tail.back().y) / 2;
    middle.points[i].y -= side * std::abs(side) * shape.tail_bend * half * 0.6f;
    middle.colours[i] = mix(coat.fin_root, coat.fin, 0.6f);
  }
  if (coat.fin_edge != coat.fin) {
    Rail inner = edge;
    for (size_t i = 0; i < edge.points.size(); ++i) {
      inner.points[i] = lerp(middle.points[i], edge.points[i], 0.72f);
      inner.colours[i] = mix(coat.fin, coat.fin_edge, 0.2f);
      edge.colours[i] = coat.fin_edge;
    }
    const Rail rails[4] = {root, middle, inner, edge};
    add_sheet(mesh, rails);
  } else {
    const Rail rails[3] = {root, middle, edge};
    add_sheet(mesh, rails);
  }
  if (detail.rays && !coat.flat) add_rays(mesh, middle, edge, scale_alpha(coat.line, 0.75f));
}

void add_body(Mesh& mesh, const Trunk& trunk, const Coat& coat, const Detail& detail) {
  std::vector<float> shares{0, 0.5f, 1};
  std::vector<ImU32> colours{coat.rim_top, coat.flank, coat.rim_bottom};
  if (detail.fine_marks) {
    // A line of sheen below the back, as on wet scales.
    shares = {0, 0.12f, 0.24f, 0.36f, 0.5f, 0.68f, 0.88f, 1};
    const ImU32 sheen = mix(mix(coat.back, coat.flank, 0.75f), IM_COL32(255, 255, 255, 255), 0.16f);
    colours = {coat.rim_top, coat.back,      mix(coat.back, coat.flank, 0.5f),
               sheen,        coat.flank,     mix(coat.flank, coat.belly, 0.45f),
               coat.belly,   coat.rim_bottom};
  }
  std::vector<Rail> rails(shares.size());
  for (int i = 0; i < detail.stations; ++i) {
    // Stations stand closer at the snout, where the outline turns most.
    const float x = std::pow(static_cast<float>(i) / static_cast<float>(detail.stations - 1), 1.35f);
    for (size_t r = 0; r < rails.size(); ++r) {
      rails[r].points.push_back(trunk.at(x, shares[r]));
      rails[r].colours.push_back(colours[r]);
    }
  }
  add_sheet(mesh, rails);
}

// Rows of scale edges, for large pictures only.
void add_scales(Mesh& mesh, const Trunk& trunk, const FishShape& shape, ImU32 colour) {
  constexpr float step = 0.052f;
  for (int row = 0; row < 9; ++row) {
    const float v = 0.14f + 0.09f * static_cast<float>(row);
    for (float x = shape.gill_x + 0.07f + (row % 2 != 0 ? step / 2 : 0); x < 0.96f; x += step) {
      if (trunk.depth(x) < 0.09f) continue;
      const Vec arc[3] = {trunk.at(x - 0.012f, v - 0.045f), trunk.at(x + 0.01f, v), trunk.at(x - 0.012f, v + 0.045f)};
      add_stroke(mesh, arc, 0.004f, 0.004f, colour);
    }
  }
}

}  // namespace

Mesh fish_mesh(const AnimalLook& look, const Coat& coat, int level) {
  const FishShape shape = with_fins(look.form, look.fins);
  // Outlines are drawn at one size, so one fineness does.
  const Detail detail = coat.flat ? Detail{24, 6, 10, false, false} : detail_of(level);
  const Trunk trunk = trunk_of(shape);
  Mesh mesh;
  const ImU32 thread = with_alpha(coat.fin, coat.flat ? 1.0f : level < 2 ? 0.7f : 0.85f);
  for (const auto& line : shape.threads) add_stroke(mesh, smooth_even(line, detail.fine_marks ? 16 : 5), 0.017f, 0.007f, thread);
  add_tail(mesh, shape, trunk, coat, detail);
  for (const FinShape& fin : shape.fins) {
    if (fin.pectoral) continue;
    // The base lies a little under the skin, so that no gap opens where the outline is cut into chords.
    const float v = fin.at == FinAt::back ? 0.06f : 0.94f;
    std::vector<Vec> base;
    for (int i = 0; i < detail.fin_points + 2; ++i) {
      base.push_back(trunk.at(lerp(fin.from, fin.to, static_cast<float>(i) / static_cast<float>(detail.fin_points + 1)), v));
    }
    add_fin(mesh, std::move(base), fin.edge, coat, detail);
  }
  if (level > 0) {
    for (const auto& line : shape.barbels)
      add_stroke(mesh, smooth_even(line, detail.fine_marks ? 7 : 3), 0.022f, 0.010f, coat.flat ? coat.flank : coat.back);
  }
  add_body(mesh, trunk, coat, detail);
  const bool scaled = !shape.plates && !shape.bristles && look.form != Form::eel_loach && look.form != Form::deep_loach &&
                      look.form != Form::puffer && look.form != Form::sucker;
  if (level == 3 && scaled && !coat.flat) add_scales(mesh, trunk, shape, scale_alpha(coat.line, 0.6f));
  add_marks(mesh, look, trunk, shape, coat, detail);
  if (detail.fine_marks && !coat.flat) {
    std::vector<Vec> gill;
    for (int i = 0; i <= 6; ++i) {
      const float t = static_cast<float>(i) / 6;
      gill.push_back(trunk.at(shape.gill_x + 0.03f * std::sin(t * 3.1416f), lerp(0.3f, 0.86f, t)));
    }
    add_stroke(mesh, gill, 0.008f, 0.006f, coat.line);
    const Vec mouth[3] = {trunk.at(0.0f, 0.55f), trunk.at(0.02f, 0.66f), trunk.at(0.045f, 0.74f)};
    add_stroke(mesh, mouth, 0.008f, 0.004f, coat.line);
  }
  if (level > 0 || coat.flat) {
    for (const FinShape& fin : shape.fins) {
      if (!fin.pectoral) continue;
      std::vector<Vec> base = line_between({fin.from, fin.base_y + 0.02f}, {fin.to, fin.base_y - 0.02f}, detail.fin_points + 2);
      Coat over = coat;
      if (!coat.flat) over.fin = with_alpha(coat.fin, 0.6f);
      over.fin_edge = over.fin;
      add_fin(mesh, std::move(base), fin.edge, over, detail);
    }
  }
  if (shape.bristles && level > 0) {
    for (int i = 0; i < 5; ++i) {
      const float t = static_cast<float>(i) / 4;
      const Vec root = trunk.at(0.012f + 0.1f * t, 0.02f);
      const Vec line[3] = {root, root + Vec{-0.02f + 0.01f * t, 0.03f}, root + Vec{-0.032f + 0.02f * t, 0.068f - 0.015f * t}};
      add_stroke(mesh, line, 0.017f, 0.009f, coat.flat ? coat.flank : coat.back);
    }
  }
  add_ellipse(mesh, shape.eye, {shape.eye_radius, shape.eye_radius}, detail.eye_corners, coat.eye);
  if (!coat.flat) {
    add_ellipse(mesh, shape.eye, Vec{1, 1} * (shape.eye_radius * 0.64f), std::max(5, detail.eye_corners - 2), coat.pupil,
                detail.fine_marks);
    if (detail.fine_marks) {
      add_ellipse(mesh, shape.eye + Vec{-0.22f, 0.26f} * shape.eye_radius, Vec{1, 1} * (shape.eye_radius * 0.2f), 6,
                  IM_COL32(255, 255, 255, 220));
    }
  }
  float reach = 1;
  for (const Vec p : fish_shape(look.form).tail) reach = std::max(reach, p.x);
  settle(mesh, 0, reach, (height_at(trunk.top, 0.4f) + height_at(trunk.bottom, 0.4f)) / 2);
  return mesh;
}

void settle(Mesh& mesh, float from, float to, float middle) {
  const float scale = 1 / (to - from);
  for (MeshVertex& v : mesh.vertices) {
    v.x = (v.x - from) * scale - 0.5f;
    v.y = (v.y - middle) * scale;
  }
}

}  // namespace shoalwright
