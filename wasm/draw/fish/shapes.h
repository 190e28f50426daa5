// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <initializer_list>

#include "draw/fish/shape.h"

namespace shoalwright {

// Shapes are plain constant tables in thousandths of a body length: they cost their bytes and no code. fish_shape() makes the
// working shape from its table.

struct Point {
  std::int16_t x = 0, y = 0;
  constexpr Point() = default;
  constexpr Point(double px, double py) : x(thousandths(px)), y(thousandths(py)) {}
  static constexpr std::int16_t thousandths(double v) { return static_cast<std::int16_t>(v * 1000 + (v < 0 ? -0.5 : 0.5)); }
};

/// A list with room for `most`.
template <class T, int most>
struct List {
  T items[most] = {};
  std::int8_t count = 0;
  constexpr List() = default;
  constexpr List(std::initializer_list<T> from) {
    for (const T& one : from) items[count++] = one;  // too many do not compile: the tables are constants
  }
  constexpr const T* begin() const { return items; }
  constexpr const T* end() const { return items + count; }
};
using Outline = List<Point, 9>;
using Strand = List<Point, 4>;

struct FinData {
  FinAt at = FinAt::back;
  Point base = {};
  List<Point, 7> edge = {};
  bool pectoral = false;
  std::int16_t base_y = 0;
  bool grows = true;
};

/// FishShape as a table; its members mean the same.
struct ShapeData {
  Outline top, bottom;
  List<FinData, 6> fins;
  Outline tail;
  float tail_bend = 0.12f;
  Point eye;
  float eye_radius = 0.035f;
  List<Strand, 3> barbels = {};
  List<Strand, 6> threads = {};
  List<Strand, 1> beaks = {};
  float beak_width = 0.03f;
  Row finlets = {}, thorns = {};
  float fin_accent = 0.4f, fin_alpha = 0.7f, gill_x = 0.24f;
  std::int8_t bands = 5;
  bool plates = false, bristles = false, scales = true, dark_fins = false, accent_marks = false;
};

constexpr FinData back_fin(double from, double to, List<Point, 7> edge) {
  return {.at = FinAt::back, .base = {from, to}, .edge = edge};
}
constexpr FinData belly_fin(double from, double to, List<Point, 7> edge) {
  return {.at = FinAt::belly, .base = {from, to}, .edge = edge};
}
constexpr FinData fixed(FinData fin) {
  fin.grows = false;
  return fin;
}
constexpr FinData pectoral(double from, double to, double y, List<Point, 7> edge) {
  return {.at = FinAt::side, .base = {from, to}, .edge = edge, .pectoral = true, .base_y = Point::thousandths(y), .grows = false};
}

/// Free edges of tails: forked with corners at (reach, half) and a notch, or rounded.
constexpr Outline forked(double reach, double half, double notch) {
  return {{reach, half}, {reach - 0.055, half * 0.62}, {notch, 0}, {reach - 0.055, -half * 0.62}, {reach, -half}};
}
constexpr Outline rounded(double reach, double half) {
  return {{1 + (reach - 1) * 0.45, half * 0.98},
          {1 + (reach - 1) * 0.86, half * 0.72},
          {reach, 0},
          {1 + (reach - 1) * 0.86, -half * 0.72},
          {1 + (reach - 1) * 0.45, -half * 0.98}};
}

extern const ShapeData slim_tetra_shape;
extern const ShapeData deep_tetra_shape;
extern const ShapeData hatchet_shape;
extern const ShapeData rasbora_shape;
extern const ShapeData danio_shape;
extern const ShapeData barb_shape;
extern const ShapeData goldfish_fancy_shape;
extern const ShapeData goldfish_long_shape;
extern const ShapeData livebearer_shape;
extern const ShapeData molly_shape;
extern const ShapeData corydoras_shape;
extern const ShapeData sucker_shape;
extern const ShapeData pleco_shape;
extern const ShapeData eel_loach_shape;
extern const ShapeData deep_loach_shape;
extern const ShapeData labyrinth_shape;
extern const ShapeData fighter_shape;
extern const ShapeData dwarf_cichlid_shape;
extern const ShapeData angelfish_shape;
extern const ShapeData mbuna_shape;
extern const ShapeData rainbow_thread_shape;
extern const ShapeData killi_shape;
extern const ShapeData puffer_shape;
extern const ShapeData goby_shape;
extern const ShapeData rainbowfish_shape;
extern const ShapeData blue_eye_shape;
extern const ShapeData ricefish_shape;
extern const ShapeData four_eyes_shape;
extern const ShapeData halfbeak_shape;
extern const ShapeData gar_shape;
extern const ShapeData pipefish_shape;
extern const ShapeData whisker_catfish_shape;
extern const ShapeData squeaker_shape;
extern const ShapeData shovelnose_shape;
extern const ShapeData shark_catfish_shape;
extern const ShapeData glass_catfish_shape;
extern const ShapeData banjo_catfish_shape;
extern const ShapeData talking_catfish_shape;
extern const ShapeData eel_catfish_shape;
extern const ShapeData electric_catfish_shape;
extern const ShapeData hoplo_shape;
extern const ShapeData whiptail_shape;
extern const ShapeData twig_catfish_shape;
extern const ShapeData knifefish_shape;
extern const ShapeData featherback_shape;
extern const ShapeData elephantnose_shape;
extern const ShapeData bichir_shape;
extern const ShapeData ropefish_shape;
extern const ShapeData lungfish_shape;
extern const ShapeData spiny_eel_shape;
extern const ShapeData sturgeon_shape;
extern const ShapeData arowana_shape;
extern const ShapeData butterflyfish_shape;
extern const ShapeData archerfish_shape;
extern const ShapeData moonfish_shape;
extern const ShapeData sunfish_shape;
extern const ShapeData leaffish_shape;
extern const ShapeData bush_fish_shape;
extern const ShapeData paradise_fish_shape;
extern const ShapeData wild_betta_shape;
extern const ShapeData mid_tetra_shape;
extern const ShapeData bristlenose_shape;
extern const ShapeData snakehead_shape;
extern const ShapeData mudskipper_shape;
extern const ShapeData dragon_goby_shape;
extern const ShapeData large_cichlid_shape;
extern const ShapeData hump_cichlid_shape;
extern const ShapeData parrot_cichlid_shape;
extern const ShapeData discus_shape;
extern const ShapeData eartheater_shape;
extern const ShapeData hap_shape;
extern const ShapeData slim_cichlid_shape;
extern const ShapeData sardine_cichlid_shape;
extern const ShapeData shell_dweller_shape;
extern const ShapeData shark_minnow_shape;
extern const ShapeData torpedo_barb_shape;
extern const ShapeData algae_eater_shape;
extern const ShapeData hillstream_shape;
extern const ShapeData pacu_shape;
extern const ShapeData headstander_shape;
extern const ShapeData prochilodus_shape;
extern const ShapeData pencilfish_shape;

}  // namespace shoalwright
