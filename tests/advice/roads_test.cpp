// SPDX-License-Identifier: MIT
#include "advice/roads.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support/plan_files.h"
#include "support/samples.h"

namespace shoalwright {
namespace {

/// 160 L, tap GH 18, KH 12, pH 7.9: cardinals and dwarf cichlids are wished for.
Plan hard_tap() {
  Plan plan = box_plan(100, 40, 43, 40);
  plan.source.gh_dgh = 18;
  plan.source.kh_dkh = 12;
  plan.source.ph = 7.9;
  plan.water->temperature_c = 26;
  plan.water->gh_dgh = 5;
  plan.water->kh_dkh = 3;
  plan.upkeep = Upkeep{.change_fraction = 0.25, .every_days = 7, .other_keys = ""};
  plan.stock = {Group{.species = "paracheirodon-axelrodi", .count = 12},
                Group{.species = "apistogramma-cacatuoides", .count = 2}};
  return plan;
}

double past_high(const std::string& id, const Need Species::WaterNeeds::*need, double tap) {
  return tap - (find_species(the_catalog(), id)->water.*need).tolerated->high;
}

TEST(Roads, NamesWhoMissesTheTapAndByHowMuch) {
  const Roads all = *roads(hard_tap(), the_catalog());
  for (const char* id : {"paracheirodon-axelrodi", "apistogramma-cacatuoides"}) {
    const KindMiss gh{id, WaterQuantity::gh, past_high(id, &Species::WaterNeeds::gh_dgh, 18)},
        kh{id, WaterQuantity::kh, past_high(id, &Species::WaterNeeds::kh_dkh, 12)};
    EXPECT_NE(std::find(all.others.misses.begin(), all.others.misses.end(), gh), all.others.misses.end()) << id;
    EXPECT_NE(std::find(all.others.misses.begin(), all.others.misses.end(), kh), all.others.misses.end()) << id;
  }
  EXPECT_EQ(all.others.kinds, static_cast<int>(the_catalog().species.size()));
  EXPECT_GT(all.others.kinds_that_suit, 0);
  EXPECT_LT(all.others.kinds_that_suit, all.others.kinds);
}

TEST(Roads, MixesToTheAimOrALittleOnly) {
  const Roads all = *roads(hard_tap(), the_catalog());
  EXPECT_NEAR(*all.mixing.recipe.ro_fraction, 0.75, 1e-9);
  EXPECT_NEAR(*all.mixing.recipe.reached.gh_dgh, 4.5, 1e-9);
  EXPECT_NEAR(*all.mixing.recipe.reached.kh_dkh, 3, 1e-9);
  EXPECT_NEAR(all.mixing.for_l, 40, 0.5);
  EXPECT_NEAR(*all.mixing.ro_l_week, 30, 0.5);
  ASSERT_TRUE(all.mixing.way.changes);
  EXPECT_NEAR(all.tolerant.ro_fraction, 1 - 12.0 / 18, 1e-12);
  EXPECT_NEAR(all.tolerant.ro_l_week, all.mixing.for_l / 3, 1e-9);
}

TEST(Roads, OffersTolerantKindsThatReallyLiveInTheirLesserMix) {
  const Roads all = *roads(hard_tap(), the_catalog());
  ASSERT_FALSE(all.tolerant.kinds.empty());
  double before = 0;
  for (const TolerantKind& kind : all.tolerant.kinds) {
    const Species& species = *find_species(the_catalog(), kind.species);
    const double gh = (1 - kind.ro_fraction) * 18, kh = (1 - kind.ro_fraction) * 12;
    EXPECT_GE(gh, species.water.gh_dgh.tolerated->low) << kind.species;
    EXPECT_LE(gh, species.water.gh_dgh.tolerated->high + 1e-9) << kind.species;
    EXPECT_LE(kh, species.water.kh_dkh.tolerated->high + 1e-9) << kind.species;
    EXPECT_TRUE(kind.ro_fraction == 0 || gh <= lesser_mix_most_dgh + 1e-9) << kind.species;
    EXPECT_LE(species.water.gh_dgh.tolerated->low, 5) << "no hard-water relative: " << kind.species;
    EXPECT_LT(kind.ro_fraction, 0.75) << "less work than the whole mix";
    EXPECT_GE(kind.ro_fraction, before) << "least first";
    EXPECT_NE(kind.species, "paracheirodon-axelrodi") << "lives up to GH 10";
    before = kind.ro_fraction;
  }
}

TEST(Roads, LeadNowhereWhereTheTapSuitsOrIsNotKnown) {
  Plan plan = hard_tap();
  plan.source.kh_dkh.reset();
  EXPECT_FALSE(roads(plan, the_catalog()));
  plan = hard_tap();
  plan.source.gh_dgh = 5;
  plan.source.kh_dkh = 3;
  EXPECT_FALSE(roads(plan, the_catalog()));
  plan.source.gh_dgh = 0.1;  // too soft is another matter
  EXPECT_FALSE(roads(plan, the_catalog()));
  plan = hard_tap();
  plan.stock.clear();
  EXPECT_FALSE(roads(plan, the_catalog()));
}

TEST(Roads, CountNoFewerKindsForASofterTap) {
  Plan harder = hard_tap();
  harder.source.gh_dgh = 25;
  harder.source.kh_dkh = 16;
  const Roads hard = *roads(hard_tap(), the_catalog()), very_hard = *roads(harder, the_catalog());
  EXPECT_LE(very_hard.others.kinds_that_suit, hard.others.kinds_that_suit);
  EXPECT_GE(very_hard.tolerant.ro_fraction, hard.tolerant.ro_fraction);
}

}  // namespace
}  // namespace shoalwright
