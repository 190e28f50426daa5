// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <optional>

#include "draw/fish/shapes.h"

namespace shoalwright {

namespace {

// In the order of Form; nothing for what is not a fish.
constexpr const ShapeData* tables[form_count] = {&slim_tetra_shape,
                                                 &deep_tetra_shape,
                                                 &hatchet_shape,
                                                 &rasbora_shape,
                                                 &danio_shape,
                                                 &barb_shape,
                                                 &goldfish_fancy_shape,
                                                 &goldfish_long_shape,
                                                 &livebearer_shape,
                                                 &molly_shape,
                                                 &corydoras_shape,
                                                 &sucker_shape,
                                                 &pleco_shape,
                                                 &eel_loach_shape,
                                                 &deep_loach_shape,
                                                 &labyrinth_shape,
                                                 &fighter_shape,
                                                 &dwarf_cichlid_shape,
                                                 &angelfish_shape,
                                                 &mbuna_shape,
                                                 &rainbow_thread_shape,
                                                 &killi_shape,
                                                 &puffer_shape,
                                                 &goby_shape,
                                                 nullptr,
                                                 nullptr,
                                                 nullptr,
                                                 &rainbowfish_shape,
                                                 &blue_eye_shape,
                                                 &ricefish_shape,
                                                 &four_eyes_shape,
                                                 &halfbeak_shape,
                                                 &gar_shape,
                                                 &pipefish_shape,
                                                 &whisker_catfish_shape,
                                                 &squeaker_shape,
                                                 &shovelnose_shape,
                                                 &shark_catfish_shape,
                                                 &glass_catfish_shape,
                                                 &banjo_catfish_shape,
                                                 &talking_catfish_shape,
                                                 &eel_catfish_shape,
                                                 &electric_catfish_shape,
                                                 &hoplo_shape,
                                                 &whiptail_shape,
                                                 &twig_catfish_shape,
                                                 &knifefish_shape,
                                                 &featherback_shape,
                                                 &elephantnose_shape,
                                                 &bichir_shape,
                                                 &ropefish_shape,
                                                 &lungfish_shape,
                                                 &spiny_eel_shape,
                                                 &sturgeon_shape,
                                                 &arowana_shape,
                                                 &butterflyfish_shape,
                                                 &archerfish_shape,
                                                 &moonfish_shape,
                                                 &sunfish_shape,
                                                 &leaffish_shape,
                                                 &bush_fish_shape,
                                                 &paradise_fish_shape,
                                                 &wild_betta_shape,
                                                 &snakehead_shape,
                                                 &mudskipper_shape,
                                                 &dragon_goby_shape,
                                                 &large_cichlid_shape,
                                                 &hump_cichlid_shape,
                                                 &parrot_cichlid_shape,
                                                 &discus_shape,
                                                 &eartheater_shape,
                                                 &hap_shape,
                                                 &slim_cichlid_shape,
                                                 &sardine_cichlid_shape,
                                                 &shell_dweller_shape,
                                                 &shark_minnow_shape,
                                                 &torpedo_barb_shape,
                                                 &algae_eater_shape,
                                                 &hillstream_shape,
                                                 &pacu_shape,
                                                 &headstander_shape,
                                                 &prochilodus_shape,
                                                 &pencilfish_shape,
                                                 nullptr,
                                                 nullptr,
                                                 nullptr,
                                                 nullptr,
                                                 nullptr,
                                                 nullptr,
                                                 nullptr,
                                                 nullptr,
                                                 nullptr,
                                                 nullptr,
                                                 nullptr,
                                                 &mid_tetra_shape,
                                                 &bristlenose_shape};

Vec vec_of(Point p) { return {static_cast<float>(p.x) / 1000, static_cast<float>(p.y) / 1000}; }

template <class Points>
std::vector<Vec> line_of(const Points& points) {
  std::vector<Vec> out;
  for (const Point p : points) out.push_back(vec_of(p));
  return out;
}

template <class Lines>
std::vector<std::vector<Vec>> lines_of(const Lines& lines) {
  std::vector<std::vector<Vec>> out;
  for (const auto& one : lines) out.push_back(line_of(one));
  return out;
}

FishShape made(const ShapeData& table) {
  FishShape out;
  out.top = line_of(table.top);
  out.bottom = line_of(table.bottom);
  for (const FinData& fin : table.fins) {
    const Vec base = vec_of(fin.base);
    out.fins.push_back(
        {fin.at, base.x, base.y, line_of(fin.edge), fin.pectoral, static_cast<float>(fin.base_y) / 1000, fin.grows});
  }
  out.tail = line_of(table.tail);
  out.tail_bend = table.tail_bend;
  out.eye = vec_of(table.eye);
  out.eye_radius = table.eye_radius;
  out.barbels = lines_of(table.barbels);
  out.threads = lines_of(table.threads);
  out.beaks = lines_of(table.beaks);
  out.beak_width = table.beak_width;
  out.finlets = table.finlets;
  out.thorns = table.thorns;
  out.fin_accent = table.fin_accent;
  out.fin_alpha = table.fin_alpha;
  out.gill_x = table.gill_x;
  out.bands = table.bands;
  out.plates = table.plates;
  out.bristles = table.bristles;
  out.scales = table.scales;
  out.dark_fins = table.dark_fins;
  out.accent_marks = table.accent_marks;
  return out;
}

}  // namespace

const FishShape& fish_shape(Form form) {
  // Made on first use because it holds lists.
  static std::optional<FishShape> shapes[form_count];
  std::optional<FishShape>& shape = shapes[static_cast<int>(form)];
  if (!shape) {
    const ShapeData* table = tables[static_cast<int>(form)];
    shape = made(table != nullptr ? *table : slim_tetra_shape);
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
    case Fins::sword: {
      // The lower rays alone are drawn out, the rest of the tail stays as it is.
      float half = 0, reach = 1;
      for (const Vec p : out.tail) {
        half = std::max(half, -p.y);
        reach = std::max(reach, p.x);
      }
      std::erase_if(out.tail, [&](Vec p) { return p.y < -half * 0.45f; });
      for (const Vec p : {Vec{0.95f, -0.6f}, Vec{1.2f, -0.8f}, Vec{2.7f, -1.02f}, Vec{0.9f, -1.04f}})
        out.tail.push_back({1 + (reach - 1) * p.x, half * p.y});
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
