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

// A fin between its base and its free edge. The edge may carry another colour, which a narrow last band shows, and so may the
// tip.
void add_fin(Mesh& mesh, std::vector<Vec> base, std::span<const Vec> edge_points, const Coat& coat, const Detail& detail) {
  std::vector<Vec> control{base.front()};
  control.insert(control.end(), edge_points.begin(), edge_points.end());
  control.push_back(base.back());
  // Long fins take more corners than short ones.
  const int count = detail.fin_points + 2 + (length(base.back() - base.front()) > 0.4f ? detail.fin_points : 0);
  const Rail root = rail(even(base, count), coat.fin_root);
  Rail edge = rail(smooth_even(control, count), coat.fin);
  const bool edged = coat.fin_edge != coat.fin;
  if (coat.tip != 0) {
    const auto high =
        std::max_element(edge.points.begin(), edge.points.end(), [](Vec a, Vec b) { return std::abs(a.y) < std::abs(b.y); });
    for (size_t i = 0; i < edge.points.size(); ++i) {
      const float from = std::abs(root.points[i].y),
                  share = (std::abs(edge.points[i].y) - from) / std::max(0.01f, std::abs(high->y) - from);
      if (share > 0.62f) edge.colours[i] = coat.tip;
    }
  }
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
  const ImU32 at_root = coat.tail == coat.fin ? coat.fin_root : with_alpha(mix(coat.tail, coat.flank, 0.2f), 1.0f);
  const Rail root = rail(line_between(upper, lower, count), at_root);
  Rail edge = rail(smooth_even(shape.tail, count), coat.tail);
  Rail middle = root;
  for (size_t i = 0; i < middle.points.size(); ++i) {
    const float side = 2 * static_cast<float>(i) / static_cast<float>(count - 1) - 1;
    middle.points[i] = lerp(root.points[i], edge.points[i], 0.5f);
    const float half = std::abs(shape.tail.front().y - shape.tail.back().y) / 2;
    middle.points[i].y -= side * std::abs(side) * shape.tail_bend * half * 0.6f;
    middle.colours[i] = mix(at_root, coat.tail, 0.6f);
  }
  if (coat.tail_edge != coat.tail) {
    Rail inner = edge;
    for (size_t i = 0; i < edge.points.size(); ++i) {
      inner.points[i] = lerp(middle.points[i], edge.points[i], 0.72f);
      inner.colours[i] = mix(coat.tail, coat.tail_edge, 0.2f);
      edge.colours[i] = coat.tail_edge;
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
  bool first_back = true;
  for (const FinShape& fin : shape.fins) {
    if (fin.pectoral) continue;
    // The base lies a little under the skin, so that no gap opens where the outline is cut into chords.
    const float v = fin.at == FinAt::back ? 0.06f : 0.94f;
    std::vector<Vec> base;
    for (int i = 0; i < detail.fin_points + 2; ++i) {
      base.push_back(trunk.at(lerp(fin.from, fin.to, static_cast<float>(i) / static_cast<float>(detail.fin_points + 1)), v));
    }
    Coat worn = coat;
    if (fin.at == FinAt::back && first_back && coat.dorsal != coat.fin) {
      worn.fin = coat.dorsal;
      worn.fin_root = with_alpha(coat.dorsal, 1.0f);
      if (coat.fin_edge == coat.fin) worn.fin_edge = coat.dorsal;
    }
    if (!fin.grows) worn.tip = 0;
    first_back = first_back && fin.at != FinAt::back;
    add_fin(mesh, std::move(base), fin.edge, worn, detail);
  }
  if (shape.finlets.count > 0) add_finlets(mesh, shape, trunk, coat);
  for (const auto& line : shape.beaks)
    add_stroke(mesh, smooth_even(line, detail.fine_marks ? 9 : 4), shape.beak_width, shape.beak_width * 0.45f,
               coat.flat ? coat.flank : mix(coat.flank, coat.back, 0.5f));
  if (level > 0) {
    for (const auto& line : shape.barbels)
      add_stroke(mesh, smooth_even(line, detail.fine_marks ? 7 : 3), 0.022f, 0.010f, coat.flat ? coat.flank : coat.back);
  }
  const bool glass = wears(look, Mark::glass);
  if (glass && !coat.flat) add_bones(mesh, shape, trunk, coat, detail);
  add_body(mesh, trunk, coat, detail);
  if (glass && coat.flat) add_bones(mesh, shape, trunk, coat, detail);
  const Painter paint{mesh, trunk, shape, coat, detail};
  if (!coat.flat) {
    add_colour_marks(paint, look);
    if (shape.plates && detail.fine_marks) add_plates(mesh, shape, trunk, coat);
    if (level == 3 && shape.scales && !glass) add_scales(mesh, trunk, shape, scale_alpha(coat.line, 0.6f));
  }
  if (shape.thorns.count > 0 && level > 0) add_thorns(mesh, shape, trunk, coat);
  add_fin_marks(paint, look);
  add_stripe_marks(paint, look);
  add_spot_marks(paint, look);
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
      // Wings that carry a form's looks are as full as its other fins; small ones are a veil over the flank.
      if (!coat.flat && fin.to - fin.from < 0.1f) over.fin = with_alpha(coat.fin, 0.6f);
      if (coat.fin_edge == coat.fin || fin.to - fin.from < 0.1f) over.fin_edge = over.fin;
      over.tip = 0;
      add_fin(mesh, std::move(base), fin.edge, over, detail);
    }
  }
  if (shape.bristles && level > 0) add_bristles(mesh, trunk, coat);
  if (!wears(look, Mark::no_eye)) add_eye(mesh, shape, coat, detail);
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
