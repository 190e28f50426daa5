// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <optional>

#include "draw/fish/made_shape.h"
#include "draw/fish/shapes.h"
#include "platform/platform.h"

namespace shoalwright {

namespace {

// Of the cards that the first of the program's two files has (catalog/bundle.py); later_forms.cpp has the others.
constexpr TableOf first_tables[] = {{Form::slim_tetra, &slim_tetra_shape},
                                    {Form::deep_tetra, &deep_tetra_shape},
                                    {Form::mid_tetra, &mid_tetra_shape},
                                    {Form::hatchet, &hatchet_shape},
                                    {Form::rasbora, &rasbora_shape},
                                    {Form::danio, &danio_shape},
                                    {Form::barb, &barb_shape},
                                    {Form::goldfish_fancy, &goldfish_fancy_shape},
                                    {Form::goldfish_long, &goldfish_long_shape},
                                    {Form::livebearer, &livebearer_shape},
                                    {Form::molly, &molly_shape},
                                    {Form::corydoras, &corydoras_shape},
                                    {Form::sucker, &sucker_shape},
                                    {Form::pleco, &pleco_shape},
                                    {Form::bristlenose, &bristlenose_shape},
                                    {Form::eel_loach, &eel_loach_shape},
                                    {Form::labyrinth, &labyrinth_shape},
                                    {Form::rainbow_thread, &rainbow_thread_shape}};

}  // namespace

bool is_drawn_by_first(Form form) {
  return std::any_of(std::begin(first_tables), std::end(first_tables), [form](const TableOf& one) { return one.form == form; });
}

const FishShape& fish_shape(Form form) {
  // Made on first use because it holds lists.
  static std::optional<FishShape> shapes[form_count];
  std::optional<FishShape>& shape = shapes[static_cast<int>(form)];
  if (!shape) {
    const ShapeData* table = nullptr;
    for (const TableOf& one : first_tables)
      if (one.form == form) table = one.table;
    if (!table && !platform::have_rest()) return fish_shape(Form::slim_tetra);
    shape = table ? made(*table) : later_shape(form);
  }
  return *shape;
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
      if (out.threads.empty()) {
        for (const FinShape& fin : out.fins) {
          if (!fin.grows || fin.pectoral || fin.to - fin.from < (fin.at == FinAt::back ? 0.12f : 0.2f)) continue;
          const Vec tip =
              *std::max_element(fin.edge.begin(), fin.edge.end(), [](Vec a, Vec b) { return std::abs(a.y) < std::abs(b.y); });
          const float side = tip.y > 0 ? 1.0f : -1.0f;
          out.threads.push_back({tip, tip + Vec{0.14f, 0.07f * side}, tip + Vec{0.36f, 0.05f * side}});
        }
        if (out.threads.size() < 2) break;
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

}  // namespace shoalwright
