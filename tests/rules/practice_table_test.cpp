// SPDX-License-Identifier: MIT
// What practice says of tanks that every adviser has been asked about. Common practice, no source. Open volumes are those of the
// tanks with 5 to 7 % of decoration, so the water is filled lower by as much.
#include <gtest/gtest.h>

#include "support/builders.h"

namespace shoalwright {
namespace {

struct Case {
  const char* what;
  double length_cm, width_cm, open_l;
  Style style;
  double adult_tl_cm;
  int count;
  double crowding;                    ///< of the worst layer, or of the floor for bottom kinds
  std::optional<Severity> room;       ///< crowding-* or territory
  std::optional<Severity> lane = {};  ///< swim-lane
};

class PracticeTable : public testing::TestWithParam<Case> {};

std::optional<Severity> worst_room(const Assessment& assessment) {
  std::optional<Severity> worst;
  for (const Finding& finding : assessment.findings)
    if (finding.rule.rfind("crowding-", 0) == 0 || finding.rule == "territory")
      worst = worst && *worst < finding.severity ? worst : finding.severity;
  return worst;
}

TEST_P(PracticeTable, IsWhatTheModelSays) {
  const Case& row = GetParam();
  Species species = sample_species("own--fish", row.style, row.adult_tl_cm);
  species.life.group.kind = row.style == Style::territorial_bottom ? GroupKind::pair : GroupKind::shoal;
  const double depth_cm = row.open_l * 1000 / (row.length_cm * row.width_cm);
  const Assessment tank = assess(a_plan().tank(row.length_cm, row.width_cm, depth_cm + 2.5).fish(species, row.count), Catalog{});
  double worst = 0;
  const bool floor = row.style == Style::bottom_shoal || row.style == Style::territorial_bottom;
  for (const Layer& layer : tank.room.layers) worst = std::max(worst, *layer.crowding);
  if (floor) worst = *tank.room.floor_crowding;
  EXPECT_NEAR(worst, row.crowding, 0.006) << row.what;
  EXPECT_EQ(worst_room(tank), row.room) << row.what << ": " << said(tank);
  EXPECT_EQ(severity_of(tank, "swim-lane"), row.lane) << row.what << ": " << said(tank);
  EXPECT_FALSE(finding_of(tank, "tank-length")) << row.what;
}

constexpr auto note = Severity::note, watch = Severity::watch, strain = Severity::strain;

INSTANTIATE_TEST_SUITE_P(
    Rows, PracticeTable,
    testing::Values(
        Case{"six small tetras in 38 L: possible", 50, 25, 28.5, Style::calm_mid, 4.5, 6, 0.93, note},
        Case{"eight small tetras in 38 L: watch", 50, 25, 28.5, Style::calm_mid, 4.5, 8, 1.24, watch},
        Case{"twelve small tetras in 38 L: want 75 L", 50, 25, 28.5, Style::calm_mid, 4.5, 12, 1.86, strain},
        Case{"twelve small tetras in 75 L, long", 75, 30, 53.2, Style::calm_mid, 4.5, 12, 1.00, note},
        Case{"twelve small tetras in 75 L, tall", 60, 30, 58.0, Style::calm_mid, 4.5, 12, 0.92, note},
        Case{"eight small tetras in 75 L, long", 75, 30, 53.2, Style::calm_mid, 4.5, 8, 0.67, {}},
        Case{"eight lively fish of 5 cm in 75 L, long: just fits", 75, 30, 53.2, Style::active_mid, 5, 8, 0.79, {}},
        Case{"eight lively fish of 5 cm in 38 L: crowded and short", 50, 25, 28.5, Style::active_mid, 5, 8, 1.48, strain, watch},
        Case{
            "six lively fish of 10 cm in 200 L: room, but a short run", 99, 39, 153.0, Style::active_mid, 10, 6, 0.72, {}, watch},
        Case{"a fighter in 10 L", 30, 20, 7.5, Style::centrepiece, 6, 1, 1.101, watch},
        Case{"a fighter in 20 L", 40, 20, 14, Style::centrepiece, 6, 1, 0.59, {}},
        Case{"a fighter in 38 L", 50, 25, 28.5, Style::centrepiece, 6, 1, 0.29, {}},
        Case{"a centrepiece of 12 cm in 75 L", 75, 30, 53.2, Style::centrepiece, 12, 1, 0.54, {}},
        Case{"ten tiny rasboras in 20 L", 40, 20, 14, Style::calm_mid, 1.8, 10, 0.61, {}},
        Case{"six armoured catfish of 5.5 cm in 75 L", 75, 30, 53.2, Style::bottom_shoal, 5.5, 6, 0.69, {}},
        Case{"six armoured catfish of 5.5 cm in 38 L", 50, 25, 28.5, Style::bottom_shoal, 5.5, 6, 1.24, watch},
        Case{"eight tiny catfish in 38 L", 50, 25, 28.5, Style::bottom_shoal, 2.5, 8, 0.40, {}},
        Case{"one pair of dwarf cichlids in 60 x 30", 60, 30, 50, Style::territorial_bottom, 7, 2, 0.76, {}},
        Case{"two pairs of dwarf cichlids in 60 x 30: rivals", 60, 30, 50, Style::territorial_bottom, 6, 4, 1.11, watch},
        Case{"two pairs of dwarf cichlids in 80 x 35", 80, 35, 90, Style::territorial_bottom, 6, 4, 0.71, {}},
        Case{"six discus in 150 x 60, 52 cm of water", 150, 60, 435.2, Style::centrepiece, 18, 6, 0.82, {}}));

TEST(PracticeTable, TwoAngelsInThirtyEightCentimetresOfWaterHaveRoomButLittleHeight) {
  Species angel = sample_species("own--angel", Style::centrepiece, 15, Body::short_deep);
  angel.size.height_with_fins_cm = 21;
  const Assessment tank = assess(a_plan().tank(90, 40, 40.5).fish(angel, 2), Catalog{});
  EXPECT_EQ(severity_of(tank, "tank-height"), watch);
  EXPECT_EQ(worst_room(tank), std::nullopt);
}

TEST(PracticeTable, SixKuhliLoachesAreNotRefusedInSixtyCentimetres) {
  for (const double length_cm : {9.0, 10.0}) {
    Species kuhli = sample_species("own--kuhli", Style::bottom_shoal, length_cm, Body::eel);
    const Assessment tank = assess(
        a_plan().tank(60, 30, 30).surface(SurfaceMotion::rippled).disinfectant(Disinfectant::none).fish(kuhli, 6), Catalog{});
    EXPECT_NEAR(*tank.room.floor_crowding, length_cm == 9 ? 0.60 : 0.73, 0.005);
    EXPECT_TRUE(tank.findings.empty()) << said(tank);
  }
}

}  // namespace
}  // namespace shoalwright
