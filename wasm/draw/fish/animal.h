// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "catalog/species.h"
#include "draw/fish/kinds.h"
#include "draw/mesh.h"

namespace shoalwright {

/// What an animal looks like: plain data, compared member by member.
struct AnimalLook {
  Form form = Form::slim_tetra;
  std::vector<Mark> marks;
  Fins fins = Fins::plain;
  ImU32 back = rgb(0x5E6A5B), flank = rgb(0xA9AE99), belly = rgb(0xE4E2D2), accent = rgb(0xB0653C);
  ImU32 mark = rgb(0x26232A);  ///< what dark marks are drawn in; fins and bright marks have the accent
  bool operator==(const AnimalLook&) const = default;
};

/// The look of a catalogue entry. colours are, in order, back, flank, belly, accent and, where given, the colour of the dark
/// marks; with three they are flank, mark and accent, and back and belly follow from the flank. Unknown words fall back to a slim
/// tetra without marks, so that a keeper's own species always has a picture.
AnimalLook animal_look(const Species::Look& look);

/// How far the drawing reaches from its centre at length 1, fins and threads included: left, right, below, above, looking left.
struct Reach {
  float left = 0, right = 0, below = 0, above = 0;
};

/// An animal to draw. Its meshes, four finenesses and a one-tone outline, are made when they are first drawn: a shelf row needs
/// the outline alone. One body length (tip of the snout to the tip of a plain tail; shell of a snail, snout to vent of a frog) is
/// 1, the middle of it is the origin, it looks left.
struct Animal {
  AnimalLook look;
  mutable std::array<Mesh, 4> meshes;
  mutable Mesh silhouette;
  mutable std::optional<Reach> reach;
};
/// `level` 0 for the smallest, 3 for large pictures.
const Mesh& mesh_at(const Animal& animal, int level);
const Mesh& silhouette_of(const Animal& animal);

/// Keeps animals by species, so that each is made once. Owned by the app.
class AnimalStore {
 public:
  const Animal& get(const std::string& species, const Species::Look& look);

 private:
  std::map<std::string, std::pair<Species::Look, Animal>> by_species_;
};

/// Draws one animal of `length_px` (total length as the catalogue measures it) around `centre`. facing below 0 looks left, else
/// right. tilt in radians, nose up is positive either way.
void draw_animal(ImDrawList* list, const Animal& animal, ImVec2 centre, float length_px, float facing, float tilt,
                 const Tint& tint = {});

/// The same, held over the tank: its coat mixed 28 % towards the water.
void draw_ghost(ImDrawList* list, const Animal& animal, ImVec2 centre, float length_px, float facing, float tilt, ImU32 water);

/// One-tone outline for a shelf row: body in ink, fins in lighter ink, marks and eye in the colour of the paper. Looks left.
void draw_silhouette(ImDrawList* list, const Animal& animal, ImVec2 centre, float length_px, ImU32 ink, ImU32 paper);

Reach reach_of(const Animal& animal);

}  // namespace shoalwright
