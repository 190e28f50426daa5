// SPDX-License-Identifier: MIT
#include "draw/mesh.h"

#include <algorithm>
#include <cmath>

#include "imgui_internal.h"

namespace shoalwright {

namespace {

// Gives the rim its smooth edge: the named corners step half a pixel in, and a ring half a pixel out fades to nothing. `rim` goes
// round once; its sense of turning is found from its area.
void soften_rim(Mesh& mesh, const std::vector<std::uint32_t>& rim) {
  std::vector<std::uint32_t> ring;
  for (const std::uint32_t corner : rim) {
    if (ring.empty()) {
      ring.push_back(corner);
      continue;
    }
    const MeshVertex &a = mesh.vertices[ring.back()], &b = mesh.vertices[corner];
    if (length({b.x - a.x, b.y - a.y}) > 1e-6f) ring.push_back(corner);
  }
  const auto at = [&mesh](std::uint32_t corner) { return Vec{mesh.vertices[corner].x, mesh.vertices[corner].y}; };
  while (ring.size() > 1 && length(at(ring.front()) - at(ring.back())) <= 1e-6f) ring.pop_back();
  const size_t count = ring.size();
  if (count < 3) return;
  float area = 0;
  for (size_t i = 0; i < count; ++i) {
    const Vec a = at(ring[i]), b = at(ring[(i + 1) % count]);
    area += a.x * b.y - a.y * b.x;
  }
  const float side = area >= 0 ? 1.0f : -1.0f;
  std::vector<Vec> out(count);
  for (size_t i = 0; i < count; ++i) {
    const Vec before = unit(at(ring[i]) - at(ring[(i + count - 1) % count])),
              after = unit(at(ring[(i + 1) % count]) - at(ring[i]));
    const Vec sum = Vec{before.y + after.y, -before.x - after.x} * (0.5f * side);
    const float size = length(sum);
    // At a sharp corner the mitre would run away; held at about two pixels.
    out[i] = size > 0.25f ? sum * (1 / (size * size)) : unit(sum.x == 0 && sum.y == 0 ? Vec{before.x, before.y} : sum) * 2.0f;
  }
  const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
  for (size_t i = 0; i < count; ++i) {
    MeshVertex& inner = mesh.vertices[ring[i]];
    inner.out_x = -0.5f * out[i].x;
    inner.out_y = -0.5f * out[i].y;
    const MeshVertex outer{inner.x, inner.y, 0.5f * out[i].x, 0.5f * out[i].y, inner.colour & ~IM_COL32_A_MASK};
    mesh.vertices.push_back(outer);
  }
  for (size_t i = 0; i < count; ++i) {
    const auto next = static_cast<std::uint32_t>((i + 1) % count);
    const std::uint32_t here = static_cast<std::uint32_t>(i);
    add_triangle(mesh, ring[i], ring[next], first + next);
    add_triangle(mesh, ring[i], first + next, first + here);
  }
}

}  // namespace

Rail rail(std::vector<Vec> points, ImU32 colour) {
  Rail out;
  out.colours.assign(points.size(), colour);
  out.points = std::move(points);
  return out;
}

std::uint32_t add_vertex(Mesh& mesh, Vec at, ImU32 colour, Vec out) {
  mesh.vertices.push_back({at.x, at.y, out.x, out.y, colour});
  return static_cast<std::uint32_t>(mesh.vertices.size() - 1);
}

void add_triangle(Mesh& mesh, std::uint32_t a, std::uint32_t b, std::uint32_t c) {
  mesh.indices.insert(mesh.indices.end(), {a, b, c});
}

void add_sheet(Mesh& mesh, std::span<const Rail> rails, bool smooth_rim) {
  if (rails.size() < 2) return;
  const size_t count = rails[0].points.size();
  if (count < 2) return;
  for (const Rail& one : rails) {
    if (one.points.size() != count || one.colours.size() != count) return;
  }
  const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
  const auto stride = static_cast<std::uint32_t>(count);
  for (const Rail& one : rails) {
    for (size_t i = 0; i < count; ++i) add_vertex(mesh, one.points[i], one.colours[i]);
  }
  const auto last_rail = static_cast<std::uint32_t>(rails.size() - 1);
  for (std::uint32_t r = 0; r < last_rail; ++r) {
    for (std::uint32_t i = 0; i + 1 < stride; ++i) {
      const std::uint32_t a = first + r * stride + i;
      add_triangle(mesh, a, a + 1, a + stride + 1);
      add_triangle(mesh, a, a + stride + 1, a + stride);
    }
  }
  if (!smooth_rim) return;
  std::vector<std::uint32_t> rim;
  for (std::uint32_t i = 0; i < stride; ++i) rim.push_back(first + i);
  for (std::uint32_t r = 1; r < last_rail; ++r) rim.push_back(first + r * stride + stride - 1);
  for (std::uint32_t i = stride; i-- > 0;) rim.push_back(first + last_rail * stride + i);
  for (std::uint32_t r = last_rail; r-- > 1;) rim.push_back(first + r * stride);
  soften_rim(mesh, rim);
}

void add_sheet_with_free_edge(Mesh& mesh, std::span<const Rail> rails) {
  const auto before = static_cast<std::uint32_t>(mesh.vertices.size());
  add_sheet(mesh, rails, false);
  if (mesh.vertices.size() == before) return;
  const std::vector<Vec>& edge = rails.back().points;
  const std::vector<Vec>& inner = rails[rails.size() - 2].points;
  const auto count = static_cast<std::uint32_t>(edge.size()),
             last = before + count * static_cast<std::uint32_t>(rails.size() - 1);
  const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
  for (std::uint32_t i = 0; i < count; ++i) {
    const Vec along = unit(edge[std::min(i + 1, count - 1)] - edge[i > 0 ? i - 1 : 0]);
    Vec out{-along.y, along.x};
    const Vec away = edge[i] - inner[i];
    if (out.x * away.x + out.y * away.y < 0) out = out * -1.0f;
    mesh.vertices[last + i].out_x = -0.5f * out.x;
    mesh.vertices[last + i].out_y = -0.5f * out.y;
    add_vertex(mesh, edge[i], mesh.vertices[last + i].colour & ~IM_COL32_A_MASK, out * 0.5f);
  }
  for (std::uint32_t i = 0; i + 1 < count; ++i) {
    add_triangle(mesh, last + i, last + i + 1, first + i + 1);
    add_triangle(mesh, last + i, first + i + 1, first + i);
  }
}

void add_fan(Mesh& mesh, std::span<const Vec> rim, Vec centre, ImU32 rim_colour, ImU32 centre_colour, bool smooth_rim) {
  if (rim.size() < 3) return;
  const std::uint32_t middle = add_vertex(mesh, centre, centre_colour);
  std::vector<std::uint32_t> corners;
  for (const Vec p : rim) corners.push_back(add_vertex(mesh, p, rim_colour));
  for (size_t i = 0; i < corners.size(); ++i) add_triangle(mesh, middle, corners[i], corners[(i + 1) % corners.size()]);
  if (smooth_rim) soften_rim(mesh, corners);
}

void add_ellipse(Mesh& mesh, Vec centre, Vec radius, int corners, ImU32 colour, bool smooth_rim) {
  const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
  std::vector<std::uint32_t> rim;
  for (int i = 0; i < corners; ++i) {
    const float angle = (static_cast<float>(i) + 0.5f) * 6.2831853f / static_cast<float>(corners);
    rim.push_back(add_vertex(mesh, {centre.x + radius.x * std::cos(angle), centre.y + radius.y * std::sin(angle)}, colour));
  }
  for (std::uint32_t i = 1; i + 1 < rim.size(); ++i) add_triangle(mesh, first, first + i, first + i + 1);
  if (smooth_rim) soften_rim(mesh, rim);
}

void add_stroke(Mesh& mesh, std::span<const Vec> points, float width_from, float width_to, ImU32 colour) {
  if (points.size() < 2) return;
  const auto first = static_cast<std::uint32_t>(mesh.vertices.size());
  for (size_t i = 0; i < points.size(); ++i) {
    const Vec along = unit(points[std::min(i + 1, points.size() - 1)] - points[i > 0 ? i - 1 : 0]);
    const Vec across{-along.y, along.x};
    const float half = lerp(width_from, width_to, static_cast<float>(i) / static_cast<float>(points.size() - 1)) * 0.5f;
    // The middle carries the colour, both sides fade: a line thinner than a pixel then stays one soft pixel wide.
    add_vertex(mesh, points[i] + across * half, colour & ~IM_COL32_A_MASK, across * 0.8f);
    add_vertex(mesh, points[i], colour);
    add_vertex(mesh, points[i] - across * half, colour & ~IM_COL32_A_MASK, across * -0.8f);
  }
  for (std::uint32_t i = 0; i + 1 < points.size(); ++i) {
    const std::uint32_t a = first + 3 * i;
    for (std::uint32_t side = 0; side < 2; ++side) {
      add_triangle(mesh, a + side, a + side + 3, a + side + 4);
      add_triangle(mesh, a + side, a + side + 4, a + side + 1);
    }
  }
}

namespace {

// Puts the corners in place and asks `colour_of` for each colour; neighbours often share one, so the last answer is kept. Tens of
// thousands of corners are written in a frame: straight into the room reserved, not one call each.
template <typename ColourOf>
void emit_with(ImDrawList* list, const Mesh& mesh, const Placement& placement, ColourOf colour_of) {
  const float c = std::cos(placement.tilt), s = std::sin(placement.tilt), flip = placement.across;
  const float scale = placement.scale, fringe = list->_FringeScale;
  const Vec x_by{flip * c * scale, flip * s * scale}, y_by{-s * scale, c * scale};
  const Vec out_x_by{flip * c * fringe, flip * s * fringe}, out_y_by{-s * fringe, c * fringe};
  const ImVec2 white = list->_Data->TexUvWhitePixel, origin = placement.origin;
  list->PrimReserve(static_cast<int>(mesh.indices.size()), static_cast<int>(mesh.vertices.size()));
  const unsigned base = list->_VtxCurrentIdx;
  ImDrawIdx* index_out = list->_IdxWritePtr;
  for (const std::uint32_t index : mesh.indices) *index_out++ = static_cast<ImDrawIdx>(base + index);
  ImDrawVert* out = list->_VtxWritePtr;
  ImU32 last_in = mesh.vertices[0].colour, last_out = colour_of(last_in);
  for (const MeshVertex& v : mesh.vertices) {
    if (v.colour != last_in) {
      last_in = v.colour;
      last_out = colour_of(last_in);
    }
    const float px = v.x * x_by.x + v.y * y_by.x + v.out_x * out_x_by.x + v.out_y * out_y_by.x;
    const float py = v.x * x_by.y + v.y * y_by.y + v.out_x * out_x_by.y + v.out_y * out_y_by.y;
    out->pos = {origin.x + px, origin.y - py};
    out->uv = white;
    out->col = last_out;
    ++out;
  }
  list->_IdxWritePtr = index_out;
  list->_VtxWritePtr = out;
  list->_VtxCurrentIdx = base + static_cast<unsigned>(mesh.vertices.size());
}

}  // namespace

void emit(ImDrawList* list, const Mesh& mesh, const Placement& placement, const Tint& tint) {
  if (mesh.empty() || !(tint.alpha > 0)) return;
  emit_with(list, mesh, placement, [&tint](ImU32 colour) {
    const ImU32 alpha = colour & IM_COL32_A_MASK;
    if (tint.mix_amount > 0) colour = (mix(colour, tint.mix_to, tint.mix_amount) & ~IM_COL32_A_MASK) | alpha;
    return tint.alpha < 1 ? scale_alpha(colour, tint.alpha) : colour;
  });
}

void emit_tones(ImDrawList* list, const Mesh& mesh, const Placement& placement, ImU32 paper, ImU32 ink) {
  if (mesh.empty()) return;
  emit_with(list, mesh, placement, [paper, ink](ImU32 colour) {
    const ImU32 tone = mix(paper, ink, static_cast<float>((colour >> IM_COL32_R_SHIFT) & 255) / 255.0f);
    return scale_alpha(tone, static_cast<float>((colour >> IM_COL32_A_SHIFT) & 255) / 255.0f);
  });
}

}  // namespace shoalwright
