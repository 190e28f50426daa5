// SPDX-License-Identifier: MIT
#include "draw/scene/profile.h"

#include <algorithm>
#include <cmath>

#include "draw/geometry.h"
#include "imgui_internal.h"

namespace shoalwright {

namespace {

float value_at(const std::vector<float>& curve, size_t i) { return i < curve.size() ? curve[i] : 0.0f; }

// Fills between two curves over the depth, one colour.
void fill_between(ImDrawList* list, const std::vector<ImVec2>& left, const std::vector<ImVec2>& right, ImU32 colour) {
  const ImVec2 white = list->_Data->TexUvWhitePixel;
  const int count = static_cast<int>(left.size());
  if (count < 2) return;
  list->PrimReserve((count - 1) * 6, count * 2);
  const unsigned base = list->_VtxCurrentIdx;
  for (unsigned i = 0; i + 1 < static_cast<unsigned>(count); ++i) {
    const unsigned a = base + 2 * i;
    for (const unsigned index : {a, a + 1, a + 3, a, a + 3, a + 2}) list->PrimWriteIdx(static_cast<ImDrawIdx>(index));
  }
  for (size_t i = 0; i < left.size(); ++i) {
    list->PrimWriteVtx(left[i], white, colour);
    list->PrimWriteVtx(right[i], white, colour);
  }
}

// The edge of a group's shape: a gap of paper, and just inside it the group's own dashes.
void edge_line(ImDrawList* list, const std::vector<ImVec2>& inner, const std::vector<ImVec2>& line, int key,
               const Palette& colours) {
  list->AddPolyline(line.data(), static_cast<int>(line.size()), colours.panel, 0, 1.2f);
  if (key_dash(key).empty()) return;
  // Dashes only where the shape is wide enough to hold them.
  std::vector<ImVec2> run;
  for (size_t i = 0; i <= line.size(); ++i) {
    if (i < line.size() && line[i].x - inner[i].x > 7) {
      run.push_back({line[i].x - 3, line[i].y});
      continue;
    }
    if (run.size() > 2) dashed_line(list, run, key_dash(key), with_alpha(colours.onKey, 0.6f), 1.1f);
    run.clear();
  }
}

}  // namespace

float profile_top_l_cm(const ProfilePicture& profile) {
  float most = 0;
  for (size_t i = 0; i < profile.depth_cm.size(); ++i) {
    float wanted = 0;
    for (const ProfileShare& share : profile.shares) wanted += value_at(share.wanted_l_cm, i);
    most = std::max({most, value_at(profile.open_l_cm, i), wanted, value_at(profile.before_l_cm, i)});
  }
  if (!(most > 0) || !std::isfinite(most)) return 1;
  // Up to the next of 1, 2, 3, 4, 5, 6, 8 times a power of ten.
  const float power = std::pow(10.0f, std::floor(std::log10(most)));
  for (const float step : {1.0f, 2.0f, 3.0f, 4.0f, 5.0f, 6.0f, 8.0f, 10.0f}) {
    if (most <= step * power * 1.0001f) return std::max(1.0f, step * power);
  }
  return std::max(1.0f, 10 * power);
}

ProfileLayout draw_depth_profile(ImDrawList* list, const ProfilePicture& profile, const ProfileView& view,
                                 const Palette& colours) {
  ProfileLayout layout;
  const size_t count = profile.depth_cm.size();
  if (count < 2) return layout;
  const auto x_of = [&view](float l_cm) { return view.x + l_cm * view.px_per_l_cm; };
  const auto y_of = [&view](float depth) { return view.y + depth * view.px_per_cm; };
  layout.bottom_y = y_of(profile.depth_cm.back());

  std::vector<ImVec2> axis(count), open(count), inner(count), outer(count);
  for (size_t i = 0; i < count; ++i) {
    const float y = y_of(profile.depth_cm[i]);
    axis[i] = {view.x, y};
    open[i] = {x_of(value_at(profile.open_l_cm, i)), y};
  }
  fill_between(list, axis, open, colours.band);
  inner = axis;
  std::vector<float> wanted(count, 0.0f);
  for (const ProfileShare& share : profile.shares) {
    float most = 0, tallest_depth = 0;
    for (size_t i = 0; i < count; ++i) {
      const float mine = value_at(share.wanted_l_cm, i);
      if (mine > most) {
        most = mine;
        tallest_depth = static_cast<float>(i);
      }
      wanted[i] += mine;
      outer[i] = {x_of(wanted[i]), axis[i].y};
    }
    fill_between(list, inner, outer, with_alpha(key_colour(colours, share.key), share.held ? 0.55f : 0.82f));
    edge_line(list, inner, outer, share.key, colours);
    if (most > 0) {
      const auto k = static_cast<size_t>(tallest_depth);
      layout.discs.push_back({share.key, {(inner[k].x + outer[k].x) / 2, axis[k].y}});
    }
    inner = outer;
  }
  if (profile.before_l_cm.size() == count) {
    for (size_t i = 0; i < count; ++i) outer[i] = {x_of(profile.before_l_cm[i]), axis[i].y};
    dashed_line(list, outer, dash_as_it_is(), colours.ink, 1.3f);
  }
  // Past the edge: the shape pales and is hatched in the call colour.
  bool over = false;
  std::vector<ImVec2> past(count);
  for (size_t i = 0; i < count; ++i) {
    past[i] = {std::max(open[i].x, x_of(wanted[i])), axis[i].y};
    over = over || wanted[i] > value_at(profile.open_l_cm, i) + 0.01f;
  }
  if (over) {
    fill_between(list, open, past, with_alpha(colours.panel, 0.35f));
    const auto along = [count](const std::vector<ImVec2>& line, float y) {
      const auto after = std::lower_bound(line.begin(), line.end(), y, [](ImVec2 p, float at) { return p.y < at; });
      if (after == line.begin()) return line.front().x;
      if (after == line.end()) return line[count - 1].x;
      const ImVec2 b = *after, a = *(after - 1);
      return b.y - a.y > 1e-4f ? lerp(a.x, b.x, (y - a.y) / (b.y - a.y)) : b.x;
    };
    hatch_between(
        list, axis.front().y + 3, axis.back().y, 4, [&](float y) { return along(open, y); },
        [&](float y) { return along(past, y); }, colours.call, 1.3f);
  }
  list->AddPolyline(open.data(), static_cast<int>(count), colours.bandEdge, 0, 2);
  list->AddLine(axis.front(), axis.back(), colours.edge, 1);

  if (profile.tightest >= 0 && static_cast<size_t>(profile.tightest) < count) {
    const auto k = static_cast<size_t>(profile.tightest);
    layout.spare_l_cm = value_at(profile.open_l_cm, k) - wanted[k];
    layout.tightest_from = {x_of(wanted[k]), axis[k].y};
    layout.tightest_to = {open[k].x, axis[k].y};
    const float from = std::min(layout.tightest_from.x, layout.tightest_to.x),
                to = std::max(layout.tightest_from.x, layout.tightest_to.x), y = axis[k].y;
    const ImU32 colour = layout.spare_l_cm < 0 ? colours.call : colours.ink;
    list->AddLine({from, y}, {to, y}, colour, 1.6f);
    for (const float x : {from, to}) list->AddLine({x, y - 4}, {x, y + 4}, colour, 1.6f);
    if (to - from > 14) {
      list->AddTriangleFilled({from + 5, y - 2.6f}, {from, y}, {from + 5, y + 2.6f}, colour);
      list->AddTriangleFilled({to - 5, y - 2.6f}, {to, y}, {to - 5, y + 2.6f}, colour);
    }
  }
  return layout;
}

}  // namespace shoalwright
