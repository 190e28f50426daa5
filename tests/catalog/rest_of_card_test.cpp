// SPDX-License-Identifier: MIT
#include "catalog/rest_of_card.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "built_in.h"
#include "catalog/builtin.h"
#include "catalog/read.h"

namespace shoalwright {
namespace {

using nlohmann::json;

TEST(RestOfCard, HasBreedingAndLawOfEveryCard) {
  for (const json& card : json::parse(card_texts(), nullptr, false)) {
    const Species* species = find_species(built_in(), std::string_view(card["id"].get_ref<const std::string&>()));
    ASSERT_NE(species, nullptr);
    const RestOfCard rest = rest_of_card(*species, builtin_cards());
    EXPECT_EQ(rest.breeding.mode, card["breeding"]["mode"].get<std::string>()) << species->id;
    EXPECT_EQ(rest.breeding.first_food, card["breeding"].value("first_food", "")) << species->id;
    EXPECT_EQ(rest.breeding.brood.has_value(), card["breeding"].contains("brood")) << species->id;
    ASSERT_EQ(species->laws.size(), card["legal"].size()) << species->id;
    for (std::size_t i = 0; i < species->laws.size(); ++i) {
      EXPECT_EQ(species->laws[i].region, card["legal"][i]["region"].get<std::string>());
      EXPECT_EQ(species->laws[i].effect, card["legal"][i]["effect"].get<std::string>());
    }
    const auto colours = [&](const char* sex) {
      return card["look"].value(sex, json::object()).value("colours", std::vector<std::string>());
    };
    EXPECT_EQ(rest.male_colours, colours("male")) << species->id;
    EXPECT_EQ(rest.female_colours, colours("female")) << species->id;
    EXPECT_EQ(rest.published_temperature_c.has_value(), card["water"]["temperature_c"].contains("published")) << species->id;
  }
}

TEST(RestOfCard, OfAnOwnEntryComesFromItsOwnText) {
  const Result<Species> own = read_species(
      R"({"id":"own--fish","name":{"scientific":"Fish"},"size":{"adult_tl_cm":5},"life":{"style":"calm_mid",
          "depth":{"surface":0,"mid":1,"bottom":0},"group":{"kind":"shoal","least":6}},
          "breeding":{"mode":"egg-scatterer","hatch":{"hours":[20,30],"at_c":26},"first_food":"powder"}})");
  ASSERT_TRUE(own);
  const RestOfCard rest = rest_of_card(*own, builtin_cards());
  EXPECT_EQ(rest.breeding.mode, "egg-scatterer");
  EXPECT_EQ(rest.breeding.hatch_hours, (Range{20, 30}));
  EXPECT_EQ(rest.breeding.hatch_at_c, 26);
  EXPECT_EQ(rest.breeding.first_food, "powder");
  Species unheard;
  unheard.id = "never-heard-of";
  EXPECT_EQ(rest_of_card(unheard, builtin_cards()), RestOfCard{});
}

}  // namespace
}  // namespace shoalwright
