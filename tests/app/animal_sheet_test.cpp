// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <set>

#include "app/easel.h"
#include "catalog/built_in.h"
#include "catalog/builtin.h"
#include "draw/fish/animal.h"
#include "draw/fish/shape.h"

namespace shoalwright {
namespace {

Animal animal_of(const char* id) {
  const Species* species = find_species(built_in(), id);
  EXPECT_NE(species, nullptr) << id;
  return Animal{animal_look(species != nullptr ? species->look : Species::Look{}), {}, {}, {}};
}

constexpr ImU32 paper = rgb(0x9FCBD2);

/// One animal that looks left, in the middle of a square of twice its length.
Picture portrait(const Animal& animal, int length_px, int samples = 2) {
  Easel easel(length_px * 2, length_px * 2, paper);
  return easel.paint(
      [&](ImDrawList* list) {
        draw_animal(list, animal, {static_cast<float>(length_px), static_cast<float>(length_px)}, static_cast<float>(length_px),
                    -1, 0);
      },
      1, samples);
}

int channel(ImU32 colour, int shift) { return static_cast<int>((colour >> shift) & 255); }
int red(ImU32 c) { return channel(c, IM_COL32_R_SHIFT); }
int green(ImU32 c) { return channel(c, IM_COL32_G_SHIFT); }
int blue(ImU32 c) { return channel(c, IM_COL32_B_SHIFT); }
bool dark(ImU32 c) { return luminance(c) < 0.05f; }

/// How unlike two pictures are, 0 to 1: difference of colour over the pixels that at least one of them covers.
double unlikeness(const Picture& a, const Picture& b) {
  double sum = 0;
  int covered = 0;
  for (int y = 0; y < a.height; ++y) {
    for (int x = 0; x < a.width; ++x) {
      const ImU32 p = a.at(x, y), q = b.at(x, y);
      if (p == paper && q == paper) continue;
      ++covered;
      sum += (std::abs(red(p) - red(q)) + std::abs(green(p) - green(q)) + std::abs(blue(p) - blue(q))) / (3 * 255.0);
    }
  }
  return covered > 0 ? sum / covered : 0;
}

struct Centre {
  double x = 0, y = 0;
  int count = 0;
};
template <typename Is>
Centre centre_of(const Picture& picture, Is is) {
  Centre centre;
  for (int y = 0; y < picture.height; ++y) {
    for (int x = 0; x < picture.width; ++x) {
      if (!is(picture.at(x, y))) continue;
      centre.x += x;
      centre.y += y;
      ++centre.count;
    }
  }
  if (centre.count > 0) centre = {centre.x / centre.count, centre.y / centre.count, centre.count};
  return centre;
}

/// Runs of dark pixels along a row, of at least `least` pixels each.
int dark_runs(const Picture& picture, int y, int least) {
  int runs = 0, run = 0;
  for (int x = 0; x <= picture.width; ++x) {
    if (x < picture.width && dark(picture.at(x, y))) {
      ++run;
      continue;
    }
    if (run >= least) ++runs;
    run = 0;
  }
  return runs;
}

// The page's first file draws fish alone.
TEST(Animals, TheFirstCardsAreFish) {
  for (const Species& species : first_catalog().species)
    EXPECT_EQ(build_of(animal_look(species.look).form), Build::fish) << species.id;
}

TEST(Animals, EveryFormHasAtLeastThirtyStations) {
  EXPECT_GE(detail_of(2).stations, 30);
  EXPECT_GE(detail_of(3).stations, 30);
  for (int i = 0; i < form_count; ++i) {
    AnimalLook look;
    look.form = static_cast<Form>(i);
    SCOPED_TRACE(word_of(look.form));
    const Animal animal = Animal{look, {}, {}, {}};
    for (const int level : {2, 3}) {
      // Stations show as different places along the body among the corners that are fully painted.
      std::set<int> places;
      for (const MeshVertex& v : mesh_at(animal, level).vertices) {
        if ((v.colour & IM_COL32_A_MASK) == IM_COL32_A_MASK) places.insert(static_cast<int>(std::lround(v.x * 2000)));
      }
      EXPECT_GE(places.size(), 30u);
    }
  }
}

TEST(Animals, TankSizedOnesStayWithinTheirCorners) {
  for (const Species& species : built_in().species) {
    SCOPED_TRACE(species.id);
    const Animal animal = Animal{animal_look(species.look), {}, {}, {}};
    EXPECT_LE(mesh_at(animal, 0).vertices.size(), 400u);
    EXPECT_LE(mesh_at(animal, 1).vertices.size(), 440u);
    EXPECT_LE(mesh_at(animal, 2).vertices.size(), 2000u);
    EXPECT_LE(mesh_at(animal, 3).vertices.size(), 3200u);
    EXPECT_LE(silhouette_of(animal).vertices.size(), 1000u);
    for (int level = 0; level < 4; ++level) EXPECT_GE(mesh_at(animal, level).vertices.size(), 100u);
  }
}

/// A kind at 61 pixels in the frame of one at 60.
Picture own_larger(const char* id) {
  const Animal animal = animal_of(id);
  Easel easel(120, 120, paper);
  return easel.paint([&](ImDrawList* list) { draw_animal(list, animal, {60, 60}, 61, -1, 0); });
}

TEST(Animals, TenChosenKindsAreToldApartAtSixtyPixels) {
  const char* chosen[10] = {"paracheirodon-innesi", "trigonostigma-heteromorpha", "puntigrus-tetrazona", "hoplisoma-sterbai",
                            "pterophyllum-scalare", "poecilia-reticulata",        "pangio-semicincta",   "ancistrus-cirrhosus",
                            "carnegiella-strigata", "neocaridina-davidi"};
  std::array<Picture, 10> pictures, outlines;
  for (size_t i = 0; i < 10; ++i) {
    const Animal animal = animal_of(chosen[i]);
    pictures[i] = portrait(animal, 60);
    Easel easel(120, 120, paper);
    outlines[i] = easel.paint([&](ImDrawList* list) { draw_silhouette(list, animal, {60, 60}, 60, rgb(0x102020), paper); });
  }
  for (size_t i = 0; i < 10; ++i) {
    // The yardstick: the same kind a little larger is less unlike than any other kind.
    const Picture larger = own_larger(chosen[i]);
    EXPECT_LT(unlikeness(pictures[i], larger), 0.1) << chosen[i];
    for (size_t k = i + 1; k < 10; ++k) {
      EXPECT_GT(unlikeness(pictures[i], pictures[k]), 0.12) << chosen[i] << " and " << chosen[k];
      EXPECT_GT(unlikeness(outlines[i], outlines[k]), 0.12) << chosen[i] << " and " << chosen[k];
    }
  }
}

// What each kind is known by, as any keeper would tell it: common practice, no source.
TEST(Animals, ANeonIsBlueOverRedAndTheRedIsInTheRearHalf) {
  for (const int length : {27, 60, 200}) {
    const Picture picture = portrait(animal_of("paracheirodon-innesi"), length, 3);
    const Centre line = centre_of(picture, [](ImU32 c) { return c != paper && blue(c) > red(c) + 70 && blue(c) > 150; });
    const Centre half = centre_of(picture, [](ImU32 c) { return red(c) > blue(c) + 60 && red(c) > green(c) + 60; });
    ASSERT_GT(line.count, length * length / 150) << length;
    ASSERT_GT(half.count, length * length / 150) << length;
    EXPECT_LT(line.y, half.y);
    EXPECT_LT(line.x, half.x);
    EXPECT_GT(half.x, length);
  }
}

TEST(Animals, ATigerBarbHasFourBars) {
  const Picture picture = portrait(animal_of("puntigrus-tetrazona"), 200);
  EXPECT_EQ(dark_runs(picture, 206, 5), 4);
}

TEST(Animals, AKuhliLoachHasManyBandsAndIsThin) {
  const Picture picture = portrait(animal_of("pangio-semicincta"), 200);
  int most = 0;
  for (int y = 180; y < 215; ++y) most = std::max(most, dark_runs(picture, y, 3));
  EXPECT_GE(most, 8);
  const Reach reach = reach_of(animal_of("pangio-semicincta"));
  EXPECT_LT(reach.above + reach.below, 0.3f);
}

TEST(Animals, AHarlequinWearsItsDarkWedgeBehindTheMiddleAndItNarrowsToTheTail) {
  const Picture picture = portrait(animal_of("trigonostigma-heteromorpha"), 200);
  const auto tall_at = [&picture](int x) {
    int tall = 0;
    for (int y = 0; y < picture.height; ++y) tall += dark(picture.at(x, y));
    return tall;
  };
  EXPECT_EQ(tall_at(150), 0);
  EXPECT_GT(tall_at(190), 25);
  EXPECT_GT(tall_at(200), tall_at(230));
  EXPECT_GT(tall_at(230), 0);
}

TEST(Animals, BodiesHaveTheBuildOfTheirKind) {
  const Reach angel = reach_of(animal_of("pterophyllum-scalare"));
  EXPECT_GT(angel.above + angel.below, 1.2f) << "taller than long with its fins";
  const Reach hatchet = reach_of(animal_of("carnegiella-strigata"));
  EXPECT_GT(hatchet.below, 0.18f) << "a keel";
  // A fan tail is wider than the body is deep; a plain one of the same form is not.
  const Reach guppy = reach_of(animal_of("poecilia-reticulata"));
  AnimalLook plain = animal_of("poecilia-reticulata").look;
  plain.fins = Fins::plain;
  EXPECT_GT(guppy.right, reach_of(Animal{plain, {}, {}, {}}).right + 0.05f);
  EXPECT_GT(guppy.below, reach_of(Animal{plain, {}, {}, {}}).below + 0.04f);
}

TEST(Animals, LookingRightIsTheMirrorOfLookingLeft) {
  const Animal animal = animal_of("hoplisoma-sterbai");
  const auto paint = [&](int facing) {
    Easel easel(120, 120, paper);
    return easel.paint([&](ImDrawList* list) { draw_animal(list, animal, {60, 60}, 60, facing, 0); }, 1, 4);
  };
  const Picture left = paint(-1), right = paint(1);
  int apart = 0;
  for (int y = 0; y < 120; ++y)
    for (int x = 0; x < 120; ++x) apart += std::abs(red(left.at(x, y)) - red(right.at(119 - x, y))) > 24;
  EXPECT_LT(apart, 20);
}

TEST(Animals, AnUnknownLookStillHasAPicture) {
  Species::Look look;
  look.form = "no-such-form";
  look.marks = {"no-such-mark"};
  look.colours = {"not a colour"};
  const Animal animal = Animal{animal_look(look), {}, {}, {}};
  EXPECT_EQ(animal.look.form, Form::slim_tetra);
  EXPECT_FALSE(mesh_at(animal, 1).empty());
}

}  // namespace
}  // namespace shoalwright
