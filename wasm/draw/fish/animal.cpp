// SPDX-License-Identifier: MIT
#include "draw/fish/animal.h"

#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"
#include "platform/platform.h"

namespace shoalwright {

namespace {

constexpr ImU32 black = rgb(0x0B0F12), white = rgb(0xFFFFFF);

ImU32 opaque(ImU32 colour) { return colour | IM_COL32_A_MASK; }

// With four colours the accent serves marks and fins; which of the two it is follows from how the kind is built.
ImU32 mark_colour(const AnimalLook& look) {
  const Build build = build_of(look.form);
  if (is_dark(look.accent) || build == Build::shrimp || build == Build::crayfish || build == Build::crab) return look.accent;
  if (build == Build::fish && fish_shape(look.form).accent_marks) return look.accent;
  if (look.form == Form::corydoras && luminance(look.flank) < 0.16f) return mix(look.belly, white, 0.15f);
  return mix(black, look.back, 0.2f);
}

// In the order of Build. Only the first comes with the program's first file: no card that it has wears another.
using MeshMaker = Mesh (*)(const AnimalLook& look, const Coat& coat, int level);
constexpr MeshMaker mesh_makers[] = {fish_mesh, shrimp_mesh, crayfish_mesh, crab_mesh, snail_mesh, frog_mesh, ray_mesh};

/// Empty while what draws it is not here.
Mesh mesh_of(const AnimalLook& look, bool silhouette, int level) {
  const Build build = build_of(look.form);
  if (build != Build::fish && !platform::have_rest()) return {};
  return mesh_makers[static_cast<std::size_t>(build)](look, silhouette ? silhouette_coat() : coat_of(look), level);
}

int level_for(float length_px) { return length_px < 17 ? 0 : length_px < 52 ? 1 : length_px < 120 ? 2 : 3; }

}  // namespace

AnimalLook animal_look(const Species::Look& look) {
  AnimalLook out;
  form_from_word(look.form, out.form);
  for (const std::string& word : look.marks) {
    Mark mark;
    if (mark_from_word(word, mark)) out.marks.push_back(mark);
  }
  struct FinWord {
    const char* word;
    Fins fins;
  };
  constexpr FinWord fin_words[] = {{"long", Fins::longer}, {"lyre", Fins::lyre}, {"threads", Fins::threads}, {"veil", Fins::veil},
                                   {"fan", Fins::fan},     {"sail", Fins::sail}, {"sword", Fins::sword}};
  for (const FinWord& one : fin_words) {
    if (look.fins == one.word) out.fins = one.fins;
  }
  const auto colour = [&look](size_t i, ImU32 otherwise) {
    return i < look.colours.size() ? opaque(colour_from_text(look.colours[i].c_str(), otherwise)) : otherwise;
  };
  const size_t count = look.colours.size();
  if (count >= 4) {
    out.back = colour(0, out.back);
    out.flank = colour(1, out.flank);
    out.belly = colour(2, out.belly);
    out.accent = colour(3, out.accent);
    out.mark = colour(4, mark_colour(out));
  } else if (count > 0) {
    out.flank = colour(0, out.flank);
    out.mark = colour(1, out.mark);
    out.accent = colour(2, out.accent);
    out.back = mix(out.flank, black, 0.32f);
    out.belly = mix(out.flank, white, 0.5f);
  }
  return out;
}

const Mesh& mesh_at(const Animal& animal, int level) {
  Mesh& mesh = animal.meshes[static_cast<size_t>(level)];
  if (mesh.empty()) mesh = mesh_of(animal.look, false, level);
  return mesh;
}

const Mesh& silhouette_of(const Animal& animal) {
  // Shells and limbs have outlines that few corners would show; fish outlines have a fineness of their own.
  const bool fish = build_of(animal.look.form) == Build::fish;
  if (animal.silhouette.empty()) animal.silhouette = mesh_of(animal.look, true, fish ? 1 : 2);
  return animal.silhouette;
}

const Animal& AnimalStore::get(const std::string& species, const Species::Look& look) {
  const auto [found, fresh] = by_species_.try_emplace(species);
  auto& [of, animal] = found->second;
  if (fresh || !(of == look))
    found->second = {look, Animal{.look = animal_look(look), .meshes = {}, .silhouette = {}, .reach = {}}};
  return animal;
}

void draw_animal(ImDrawList* list, const Animal& animal, ImVec2 centre, float length_px, float facing, float tilt,
                 const Tint& tint) {
  if (!(length_px > 0.5f)) return;
  emit(list, mesh_at(animal, level_for(length_px)),
       {.origin = centre, .scale = length_px, .tilt = facing < 0 ? -tilt : tilt, .across = -facing}, tint);
}

void draw_ghost(ImDrawList* list, const Animal& animal, ImVec2 centre, float length_px, float facing, float tilt, ImU32 water) {
  draw_animal(list, animal, centre, length_px, facing, tilt, {.mix_to = water, .mix_amount = 0.28f});
}

void draw_silhouette(ImDrawList* list, const Animal& animal, ImVec2 centre, float length_px, ImU32 ink, ImU32 paper) {
  if (!(length_px > 0.5f)) return;
  emit_tones(list, silhouette_of(animal), {.origin = centre, .scale = length_px}, paper, ink);
}

Reach reach_of(const Animal& animal) {
  if (animal.reach) return *animal.reach;
  Reach reach;
  for (const MeshVertex& v : silhouette_of(animal).vertices) {
    reach.left = std::max(reach.left, -v.x);
    reach.right = std::max(reach.right, v.x);
    reach.below = std::max(reach.below, -v.y);
    reach.above = std::max(reach.above, v.y);
  }
  if (!silhouette_of(animal).empty()) animal.reach = reach;
  return reach;
}

}  // namespace shoalwright
