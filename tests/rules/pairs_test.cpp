// SPDX-License-Identifier: MIT
#include "rules/pairs.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "support/random_stock.h"

namespace shoalwright {
namespace {

struct Stock {
  std::vector<Kept> kept;
  explicit Stock(std::initializer_list<const char*> ids) {
    for (const char* id : ids)
      kept.push_back({.species = nullptr, .id = id, .count = 1, .have = 0, .males = {}, .females = {}, .lines = {}});
  }
  Deed deed(std::size_t doer, std::size_t other, Severity severity = Severity::strain) const {
    return {&kept[doer], &kept[other], severity, 0};
  }
};

TEST(Folded, ANipperAndItsThreeVictimsAreOneMatter) {
  const Stock s{"nipper", "a", "b", "c"};
  const std::vector<Matter> matters = folded({s.deed(0, 1), s.deed(0, 2), s.deed(0, 3)});
  ASSERT_EQ(matters.size(), 1u);
  EXPECT_EQ(matters[0].doers.size(), 1u);
  EXPECT_EQ(matters[0].others.size(), 3u);
}

TEST(Folded, FivePredatorsOfOneGroupAreOneMatter) {
  const Stock s{"a", "b", "c", "d", "e", "shrimp"};
  const std::vector<Matter> matters = folded({s.deed(0, 5), s.deed(1, 5), s.deed(2, 5), s.deed(3, 5), s.deed(4, 5)});
  ASSERT_EQ(matters.size(), 1u);
  EXPECT_EQ(matters[0].doers.size(), 5u);
  EXPECT_EQ(matters[0].others.size(), 1u);
}

TEST(Folded, TwoWhoDoTheSameToTheSameAreOneMatter) {
  const Stock s{"a", "b", "x", "y"};
  EXPECT_EQ(folded({s.deed(0, 2), s.deed(0, 3), s.deed(1, 2), s.deed(1, 3)}).size(), 1u);
}

TEST(Folded, SeveritiesStayApartAndNoDeedIsLost) {
  const Stock s{"a", "b", "x", "y", "z"};
  const std::vector<Deed> deeds{s.deed(0, 2, Severity::harm), s.deed(0, 3), s.deed(0, 4), s.deed(1, 2), s.deed(1, 3)};
  std::size_t said = 0;
  for (const Matter& matter : folded(deeds)) {
    for (const Kept* doer : matter.doers)
      for (const Kept* other : matter.others) {
        const auto found = std::find_if(deeds.begin(), deeds.end(), [&](const Deed& deed) {
          return deed.doer == doer && deed.other == other && deed.severity == matter.severity;
        });
        EXPECT_NE(found, deeds.end()) << doer->id << " " << other->id;
        ++said;
      }
  }
  EXPECT_EQ(said, deeds.size());
  EXPECT_EQ(folded(deeds).front().severity, Severity::harm);
}

TEST(Folded, ByVictimHasAllDoersOfOneTogether) {
  const Stock s{"a", "b", "shrimp", "snail"};
  const std::vector<Deed> deeds{s.deed(0, 2), s.deed(0, 3), s.deed(1, 2)};
  const std::vector<Matter> matters = folded(deeds, Fold::by_victim);
  ASSERT_EQ(matters.size(), 2u);
  EXPECT_EQ(matters[0].doers.size(), 2u);
  EXPECT_EQ(matters[0].others.front()->id, "shrimp");
}

TEST(Folded, NothingIsNoMatter) { EXPECT_TRUE(folded({}).empty()); }

TEST(Grades, CountToHowManyOneDoesSoMuchOrWorse) {
  const Stock s{"a", "x", "y", "z"};
  Found found(Found::Keep::grades);
  add_grades("predation", {s.deed(0, 1, Severity::harm), s.deed(0, 2), s.deed(0, 3, Severity::watch)}, found);
  ASSERT_EQ(found.raised().size(), 2u) << "a watch is not raised";
  EXPECT_EQ(found.raised()[0].amount, 1);
  EXPECT_EQ(found.raised()[1].amount, 2) << "one more at the same grade is seen";
  EXPECT_EQ(found.raised()[1].subject, "a");
}

/// Everything that one rule says of one severity about the same kinds is said once.
TEST(Company, IsNeverToldTwice) {
  int told_of = 0;
  for (const NamedPlan& named : many_plans()) {
    std::map<std::string, int> said;
    for (const Finding& finding : assessed(named).findings) {
      std::string key = finding.rule + "|" + finding.text;
      for (const std::string& id : finding.species) key += "|" + id;
      EXPECT_EQ(++said[key], 1) << named.name << ": " << key;
      told_of += finding.species.size() > 1;
    }
  }
  EXPECT_GT(told_of, 100 / plans_step);
}

TEST(Rules, NameNoSpecies) {
  const std::filesystem::path core = std::filesystem::path(SHOALWRIGHT_CATALOG_DIR).parent_path() / "core";
  std::vector<std::filesystem::path> files{core / "stocking" / "encounter.cpp", core / "stocking" / "encounter.h",
                                           core / "stocking" / "swallow.cpp"};
  for (const auto& entry : std::filesystem::directory_iterator(core / "rules")) files.push_back(entry.path());
  EXPECT_GT(files.size(), 60u);
  for (const auto& file : files) {
    std::stringstream text;
    text << std::ifstream(file).rdbuf();
    const std::string source = text.str();
    ASSERT_FALSE(source.empty()) << file;
    for (const Species& species : the_catalog().species) {
      EXPECT_EQ(source.find(species.id), std::string::npos) << file << " names " << species.id;
      EXPECT_EQ(source.find(species.name.scientific), std::string::npos) << file << " names " << species.name.scientific;
      // Why a kind wants its floor fine is known of whole groups only; one rule has the id that a group is called by.
      if (file.filename() != "substrate.cpp" && !(file.filename() == "brackish.cpp" && species.group == "brackish")) {
        EXPECT_EQ(source.find("\"" + species.group + "\""), std::string::npos) << file << " names " << species.group;
      }
    }
  }
}

}  // namespace
}  // namespace shoalwright
