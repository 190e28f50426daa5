// SPDX-License-Identifier: MIT
#include "stocking/stock.h"

#include <gtest/gtest.h>

#include "support/samples.h"

namespace shoalwright {
namespace {

Catalog sample_catalog() {
  Catalog catalog;
  for (const char* id : {"barbus-ruber", "danio-albus"}) {
    Species s = sample_species(id, Style::calm_mid, 5);
    s.name.scientific = id;
    s.code = static_cast<int>(catalog.species.size()) + 1;
    catalog.species.push_back(s);
  }
  catalog.species[0].aliases = {"puntius-ruber"};
  return catalog;
}

Group line(const std::string& species, int count, int have = 0, std::optional<int> males = {}, std::optional<int> females = {}) {
  Group g;
  g.species = species;
  g.count = count;
  g.have = have;
  g.males = males;
  g.females = females;
  return g;
}

TEST(Stock, LinesOfOneSpeciesAreOneGroupInOrderOfFirstAppearance) {
  const Catalog catalog = sample_catalog();
  Plan plan;
  plan.stock = {line("danio-albus", 4, 2), line("barbus-ruber", 6), line("Danio albus", 3, 1)};
  const std::vector<Kept> stock = resolve_stock(plan, catalog);
  ASSERT_EQ(stock.size(), 2u);
  EXPECT_EQ(stock[0].id, "danio-albus");
  EXPECT_EQ(stock[0].count, 7);
  EXPECT_EQ(stock[0].have, 3);
  EXPECT_EQ(stock[0].lines, (std::vector<int>{0, 2}));
  EXPECT_EQ(stock[0].species, &catalog.species[1]);
  EXPECT_EQ(stock[1].id, "barbus-ruber");
}

TEST(Stock, ASynonymIsTheSpecies) {
  const Catalog catalog = sample_catalog();
  Plan plan;
  plan.stock = {line("Puntius ruber", 6), line("barbus-ruber", 2)};
  const std::vector<Kept> stock = resolve_stock(plan, catalog);
  ASSERT_EQ(stock.size(), 1u);
  EXPECT_EQ(stock[0].id, "barbus-ruber");
  EXPECT_EQ(stock[0].count, 8);
}

TEST(Stock, SexesAreKnownOnlyWhenEveryLineGivesThem) {
  const Catalog catalog = sample_catalog();
  Plan plan;
  plan.stock = {line("danio-albus", 4, 0, 1, 3), line("danio-albus", 2, 0, 1, 1)};
  EXPECT_EQ(resolve_stock(plan, catalog)[0].males, 2);
  EXPECT_EQ(resolve_stock(plan, catalog)[0].females, 4);
  plan.stock.push_back(line("danio-albus", 1, 0, 1));
  EXPECT_EQ(resolve_stock(plan, catalog)[0].males, 3);
  EXPECT_FALSE(resolve_stock(plan, catalog)[0].females);
  plan.stock.push_back(line("danio-albus", 1, 0, 1, 0));
  EXPECT_FALSE(resolve_stock(plan, catalog)[0].females);
}

TEST(Stock, AnUnknownNameKeepsItsRowAsWritten) {
  Plan plan;
  plan.stock = {line("Some Fish", 3), line("Some Fish", 2)};
  const std::vector<Kept> stock = resolve_stock(plan, sample_catalog());
  ASSERT_EQ(stock.size(), 1u);
  EXPECT_EQ(stock[0].species, nullptr);
  EXPECT_EQ(stock[0].id, "Some Fish");
  EXPECT_EQ(stock[0].count, 5);
}

TEST(Stock, LinesOfNoneAreLeftOut) {
  Plan plan;
  plan.stock = {line("danio-albus", 0)};
  EXPECT_TRUE(resolve_stock(plan, sample_catalog()).empty());
}

TEST(Stock, TheKeepersOwnCardWinsOverTheCatalogues) {
  const Catalog catalog = sample_catalog();
  Plan plan;
  plan.own_species = {sample_species("own--mystery", Style::grazer, 8), sample_species("barbus-ruber", Style::active_mid, 7)};
  plan.stock = {line("own--mystery", 1), line("barbus-ruber", 6), line("Puntius ruber", 1)};
  const std::vector<Kept> stock = resolve_stock(plan, catalog);
  ASSERT_EQ(stock.size(), 2u);
  EXPECT_EQ(stock[0].species, &plan.own_species[0]);
  EXPECT_EQ(stock[1].species, &plan.own_species[1]);
  EXPECT_EQ(stock[1].count, 7);
}

}  // namespace
}  // namespace shoalwright
