// SPDX-License-Identifier: MIT
#include "draw/fish/animal.h"

#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"
#include "draw/fish/shapes.h"

namespace shoalwright {

namespace {

constexpr const char* form_words[form_count] = {
    "slim-tetra",    "deep-tetra", "hatchet", "rasbora",       "danio",     "barb",  "goldfish-fancy",
    "goldfish-long", "livebearer", "molly",   "corydoras",     "sucker",    "pleco", "eel-loach",
    "deep-loach",    "labyrinth",  "fighter", "dwarf-cichlid", "angelfish", "mbuna", "rainbow-thread",
    "killi",         "puffer",     "goby",    "shrimp",        "snail",     "frog"};

constexpr const char* mark_words[mark_count] = {
    "lateral-stripe", "half-stripe-red", "wedge",     "bars",        "tiger-bars", "bands",     "dots",          "spots",
    "reticulate",     "eye-band",        "tail-spot", "dorsal-spot", "dark-band",  "fin-edges", "shell-stripes", "honeycomb"};

constexpr ImU32 black = rgb(0x0B0F12), white = rgb(0xFFFFFF);

ImU32 opaque(ImU32 colour) { return colour | IM_COL32_A_MASK; }

/// Too dark to colour fins: the accent of such a card is meant for its marks.
bool is_dark(ImU32 colour) {
  for (const int shift : {IM_COL32_R_SHIFT, IM_COL32_G_SHIFT, IM_COL32_B_SHIFT}) {
    if (((colour >> shift) & 255) >= 0x60) return false;
  }
  return true;
}

bool has(const AnimalLook& look, Mark mark) { return std::find(look.marks.begin(), look.marks.end(), mark) != look.marks.end(); }

// Cards give one accent for marks and fins; which of the two it is follows from how the kind is built.
ImU32 mark_colour(const AnimalLook& look) {
  const ImU32 dark = mix(black, look.back, 0.2f);
  if (is_dark(look.accent)) return look.accent;
  switch (look.form) {
    case Form::killi:
    case Form::labyrinth:
    case Form::danio:
    case Form::pleco:
    case Form::shrimp: return look.accent;
    case Form::corydoras: return luminance(look.flank) < 0.16f ? mix(look.belly, white, 0.15f) : dark;
    case Form::slim_tetra:
    case Form::deep_tetra:
    case Form::hatchet:
    case Form::rasbora:
    case Form::barb:
    case Form::goldfish_fancy:
    case Form::goldfish_long:
    case Form::livebearer:
    case Form::molly:
    case Form::sucker:
    case Form::eel_loach:
    case Form::deep_loach:
    case Form::fighter:
    case Form::dwarf_cichlid:
    case Form::angelfish:
    case Form::mbuna:
    case Form::rainbow_thread:
    case Form::puffer:
    case Form::goby:
    case Form::snail:
    case Form::frog: return dark;
  }
  return dark;
}

// Fins that are as dark as the marks: wagtails, black mollies, armoured suckermouths, threadfins.
bool wears_dark_fins(Form form) {
  return form == Form::livebearer || form == Form::molly || form == Form::pleco || form == Form::rainbow_thread;
}

Mesh mesh_of(const AnimalLook& look, bool silhouette, int level) {
  const bool fish = look.form != Form::shrimp && look.form != Form::snail && look.form != Form::frog;
  const Coat coat =
      silhouette ? silhouette_coat()
                 : coat_of(look, fish ? fish_shape(look.form).fin_accent : 0.3f, fish ? fish_shape(look.form).fin_alpha : 0.8f);
  switch (look.form) {
    case Form::shrimp: return shrimp_mesh(look, coat, level);
    case Form::snail: return snail_mesh(look, coat, level);
    case Form::frog: return frog_mesh(look, coat, level);
    case Form::slim_tetra:
    case Form::deep_tetra:
    case Form::hatchet:
    case Form::rasbora:
    case Form::danio:
    case Form::barb:
    case Form::goldfish_fancy:
    case Form::goldfish_long:
    case Form::livebearer:
    case Form::molly:
    case Form::corydoras:
    case Form::sucker:
    case Form::pleco:
    case Form::eel_loach:
    case Form::deep_loach:
    case Form::labyrinth:
    case Form::fighter:
    case Form::dwarf_cichlid:
    case Form::angelfish:
    case Form::mbuna:
    case Form::rainbow_thread:
    case Form::killi:
    case Form::puffer:
    case Form::goby: return fish_mesh(look, coat, level);
  }
  return {};
}

int level_for(float length_px) { return length_px < 17 ? 0 : length_px < 52 ? 1 : length_px < 120 ? 2 : 3; }

}  // namespace

const char* word_of(Form form) { return form_words[static_cast<int>(form)]; }

const char* word_of(Mark mark) { return mark_words[static_cast<int>(mark)]; }

bool form_from_word(const std::string& word, Form& form) {
  for (int i = 0; i < form_count; ++i) {
    if (word == form_words[i]) {
      form = static_cast<Form>(i);
      return true;
    }
  }
  return false;
}

bool mark_from_word(const std::string& word, Mark& mark) {
  for (int i = 0; i < mark_count; ++i) {
    if (word == mark_words[i]) {
      mark = static_cast<Mark>(i);
      return true;
    }
  }
  return false;
}

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
  constexpr FinWord fin_words[] = {{"long", Fins::longer}, {"lyre", Fins::lyre}, {"threads", Fins::threads},
                                   {"veil", Fins::veil},   {"fan", Fins::fan},   {"sail", Fins::sail}};
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

Coat coat_of(const AnimalLook& look, float fin_accent, float fin_alpha) {
  Coat coat;
  coat.back = look.back;
  coat.flank = look.flank;
  coat.belly = look.belly;
  coat.rim_top = mix(look.back, black, 0.22f);
  coat.rim_bottom = mix(look.belly, mix(look.back, black, 0.3f), 0.32f);
  // Clear fins are a pale tone of the flank; a neon's stripe colour never runs into its fins.
  const ImU32 clear = mix(mix(look.flank, look.belly, 0.6f), look.back, 0.15f);
  const bool neon = look.form == Form::slim_tetra && !is_dark(look.accent) &&
                    (has(look, Mark::lateral_stripe) || has(look, Mark::half_stripe_red));
  const ImU32 worn = is_dark(look.accent) && !wears_dark_fins(look.form) ? mix(look.flank, look.back, 0.2f) : look.accent;
  const bool lively = look.form == Form::danio && has(look, Mark::fin_edges) && has(look, Mark::tail_spot);
  const ImU32 fin = mix(clear, worn, neon ? 0.0f : lively ? 0.75f : fin_accent);
  coat.fin = with_alpha(fin, fin_alpha);
  coat.fin_root = with_alpha(mix(fin, look.flank, 0.35f), std::min(1.0f, fin_alpha + 0.2f));
  coat.fin_edge = coat.fin;
  if (has(look, Mark::fin_edges) && has(look, Mark::tiger_bars)) {
    // A tiger barb's dorsal is dark to a red edge; its other fins are red throughout.
    coat.fin_edge = with_alpha(rgb(0xD2482F), 0.95f);
    coat.fin = with_alpha(mix(fin, rgb(0xD2482F), 0.55f), fin_alpha);
  } else if (has(look, Mark::fin_edges)) {
    const ImU32 light = mix(look.accent, white, 0.45f), dark = look.mark;
    coat.fin_edge = with_alpha(
        std::abs(luminance(fin) - luminance(dark)) > std::abs(luminance(fin) - luminance(light)) ? dark : light, 0.95f);
  } else if (look.fins == Fins::fan) {
    coat.fin_edge = with_alpha(mix(fin, mix(black, look.back, 0.5f), 0.45f), std::min(1.0f, fin_alpha + 0.05f));
  }
  coat.mark = look.mark;
  // A neon's stripe is its accent; other stripes are the colour of the marks.
  coat.stripe = neon ? look.accent : look.mark;
  coat.red = rgb(0xCF3A2B);
  coat.pale = mix(look.belly, white, 0.4f);
  coat.eye = rgb(0xF4EFE2);
  coat.pupil = rgb(0x14110F);
  coat.line = with_alpha(mix(look.back, black, 0.5f), 0.3f);
  return coat;
}

Coat silhouette_coat() {
  const auto ink = [](int amount) { return IM_COL32(amount, 0, 0, 255); };
  Coat coat;
  coat.back = coat.flank = coat.belly = coat.rim_top = coat.rim_bottom = ink(255);
  coat.fin = coat.fin_root = coat.fin_edge = ink(158);
  coat.mark = coat.stripe = coat.red = coat.pale = ink(112);
  coat.eye = ink(0);
  coat.pupil = coat.line = ink(255);
  coat.flat = true;
  return coat;
}

const FishShape& fish_shape(Form form) {
  // Plain constant data; made on first use because it holds lists.
  static const FishShape shapes[] = {slim_tetra_shape(),     deep_tetra_shape(),    hatchet_shape(),        rasbora_shape(),
                                     danio_shape(),          barb_shape(),          goldfish_fancy_shape(), goldfish_long_shape(),
                                     livebearer_shape(),     molly_shape(),         corydoras_shape(),      sucker_shape(),
                                     pleco_shape(),          eel_loach_shape(),     deep_loach_shape(),     labyrinth_shape(),
                                     fighter_shape(),        dwarf_cichlid_shape(), angelfish_shape(),      mbuna_shape(),
                                     rainbow_thread_shape(), killi_shape(),         puffer_shape(),         goby_shape()};
  return shapes[std::min(static_cast<int>(form), static_cast<int>(Form::goby))];
}

const Mesh& mesh_at(const Animal& animal, int level) {
  Mesh& mesh = animal.meshes[static_cast<size_t>(level)];
  if (mesh.empty()) mesh = mesh_of(animal.look, false, level);
  return mesh;
}

const Mesh& silhouette_of(const Animal& animal) {
  // Shells and limbs have outlines that few corners would show; fish outlines have a fineness of their own.
  const Form form = animal.look.form;
  const bool fish = form != Form::shrimp && form != Form::snail && form != Form::frog;
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
  animal.reach = reach;
  return reach;
}

}  // namespace shoalwright
