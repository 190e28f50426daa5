// SPDX-License-Identifier: MIT
// The cards against what is printed: tests/data/published-facts.csv has lengths and temperatures of 150 kinds, each row with its
// source (single facts of FishBase by table and reference number).
#include <algorithm>
#include <cstdlib>
#include <map>
#include <nlohmann/json.hpp>

#include "built_in.h"
#include "catalog/builtin.h"
#include "catalog/fold.h"
#include "catalog/rest_of_card.h"
#include "stocking/body.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

struct Fact {
  std::string name, type, length_source, temperature_source;
  std::optional<double> length_cm;
  std::optional<Range> temperature_c;
};

/// One line of a CSV file, fields in quotes where they hold commas.
std::vector<std::string> fields_of(const std::string& line) {
  std::vector<std::string> fields{""};
  bool quoted = false;
  for (const char c : line) {
    if (c == '"')
      quoted = !quoted;
    else if (c == ',' && !quoted)
      fields.emplace_back();
    else if (c != '\r')
      fields.back() += c;
  }
  return fields;
}

const std::vector<Fact>& facts() {
  static const std::vector<Fact> all = [] {
    std::vector<Fact> read;
    const std::string text = test_file("data/published-facts.csv");
    for (std::size_t from = text.find('\n') + 1; from > 0 && from < text.size();) {
      const std::size_t to = std::min(text.find('\n', from), text.size());
      const std::vector<std::string> cell = fields_of(text.substr(from, to - from));
      from = to + 1;
      if (cell.size() != 7) {
        ADD_FAILURE() << "a row of " << cell.size() << " fields";
        continue;
      }
      Fact fact{.name = cell[0],
                .type = cell[2],
                .length_source = cell[3],
                .temperature_source = cell[6],
                .length_cm = {},
                .temperature_c = {}};
      if (!cell[1].empty()) fact.length_cm = std::strtod(cell[1].c_str(), nullptr);
      if (!cell[4].empty())
        fact.temperature_c = Range{std::strtod(cell[4].c_str(), nullptr), std::strtod(cell[5].c_str(), nullptr)};
      read.push_back(fact);
    }
    return read;
  }();
  return all;
}

/// The card of a name that science or books of before gave it. Names that the trade gives to another animal lead to none: what is
/// printed under them is of an animal that has no card.
const Species* bearer(const std::string& name) {
  const std::string wanted = folded(name);
  for (const Species& species : built_in().species) {
    if (folded(species.name.scientific) == wanted) return &species;
    for (const std::string& synonym : species.name.synonyms)
      if (folded(synonym) == wanted) return &species;
  }
  return nullptr;
}

const nlohmann::json& cards() {
  static const nlohmann::json all = nlohmann::json::parse(card_texts(), nullptr, false);
  return all;
}

nlohmann::json card_of(const Species& species) {
  const auto card = std::find_if(cards().begin(), cards().end(), [&](const auto& one) { return one["id"] == species.id; });
  EXPECT_TRUE(card != cards().end()) << species.id;
  return card == cards().end() ? nlohmann::json::object() : *card;
}

bool says_why(const Species& species) { return species.note.find("ublished") != std::string::npos; }

TEST(Published, EveryRowHasItsSourceAndNearlyEveryOneItsCard) {
  ASSERT_EQ(facts().size(), 150u);
  std::vector<std::string> without;
  for (const Fact& fact : facts()) {
    EXPECT_FALSE(fact.length_cm && fact.length_source.empty()) << fact.name;
    EXPECT_FALSE(fact.temperature_c && fact.temperature_source.empty()) << fact.name;
    if (bearer(fact.name)) continue;
    without.push_back(fact.name);
    const Species* sold = find_species(built_in(), fact.name);
    ASSERT_TRUE(sold) << fact.name;
    const Species::Name& name = sold->name;
    EXPECT_GT(std::count(name.misapplied.begin(), name.misapplied.end(), fact.name) +
                  std::count(name.sold_as.begin(), name.sold_as.end(), fact.name),
              0)
        << fact.name;
  }
  EXPECT_LE(without.size(), 4u);
}

TEST(Published, EveryFactStandsOnItsCardAsPrinted) {
  for (const Fact& fact : facts()) {
    const Species* species = bearer(fact.name);
    if (!species) continue;
    if (fact.length_cm) {
      EXPECT_EQ(species->size.published_max_cm, fact.length_cm) << fact.name;
      EXPECT_EQ(species->size.published_max_type, fact.type) << fact.name;
    }
    if (fact.temperature_c) {
      EXPECT_EQ(rest_of_card(*species, builtin_cards()).published_temperature_c, fact.temperature_c) << fact.name;
    }
  }
}

TEST(Published, TemperaturesLieInsideWhatIsToleratedOrTheCardSaysWhyNot) {
  int inside = 0;
  for (const Fact& fact : facts()) {
    const Species* species = bearer(fact.name);
    if (!species || !fact.temperature_c) continue;
    const Range& lives = *species->water.temperature_c.tolerated;
    const bool contains = lives.low <= fact.temperature_c->low && lives.high >= fact.temperature_c->high;
    inside += contains ? 1 : 0;
    EXPECT_TRUE(contains || says_why(*species)) << fact.name;
    // A span of survival is no husbandry: it may not become a window, and what is kept lies in it.
    if (fact.temperature_source.find("survival") != std::string::npos &&
        fact.temperature_c->high - fact.temperature_c->low > 20) {
      EXPECT_LT(lives.high - lives.low, fact.temperature_c->high - fact.temperature_c->low) << fact.name;
    }
  }
  EXPECT_GT(inside, 120);
}

/// How far a kept adult may be from the print, both in total length. Records of large and fished kinds are twice what is kept;
/// small kinds were printed from a few preserved animals and grow up to 70 % longer in a tank.
Range kept_over_print(double print_tl_cm) { return {print_tl_cm > 12 ? 0.4 : 0.7, print_tl_cm < 10 ? 1.7 : 1.25}; }

TEST(Published, LengthsOfKeptAdultsAgreeOrTheCardSaysWhyNot) {
  int rows = 0;
  for (const Fact& fact : facts()) {
    const Species* species = bearer(fact.name);
    if (!species || !fact.length_cm) continue;
    ++rows;
    const double print_cm = fact.type == "SL" ? total_length_cm(species->size.body, *fact.length_cm) : *fact.length_cm;
    const Range share = kept_over_print(print_cm);
    const double kept = species->size.adult_tl_cm / print_cm;
    EXPECT_TRUE((kept >= share.low && kept <= share.high) || species->note.find("published length") != std::string::npos)
        << fact.name << ": kept " << species->size.adult_tl_cm << ", printed " << print_cm << ", " << kept;
  }
  EXPECT_GT(rows, 130);
}

// Mass is reckoned from length by the shape's prior or the card's own pair. It has to lie where the prior of its shape does for
// nineteen of twenty kinds (Froese, Thorson & Reyes 2014, Journal of Applied Ichthyology 30: 78-85), and no animal is heavier
// than a box of its length, its depth and as thick as deep (rays are flat).
TEST(Published, MassesLieWithinTheLengthWeightRelationsOfTheirShape) {
  int own_pairs = 0;
  for (const Species& species : built_in().species) {
    const double mass_g = adult_mass_g(species), length_cm = species.size.adult_tl_cm;
    const Range band = body_mass_band_g(species.size.body, length_cm);
    own_pairs += species.size.length_weight ? 1 : 0;
    EXPECT_GT(mass_g, 0) << species.id;
    if (species.kind != "fish") continue;
    // A body that its prior does not fit has a pair of its own, with a word on where that is from.
    const bool inside = mass_g >= band.low && mass_g <= band.high;
    EXPECT_TRUE(inside || species.size.length_weight) << species.id << ": " << mass_g << " g";
    if (species.size.length_weight) {
      const nlohmann::json card = card_of(species);
      ASSERT_TRUE(card["evidence"].contains("size.length_weight")) << species.id;
      const nlohmann::json& evidence = card["evidence"]["size.length_weight"];
      EXPECT_FALSE(evidence.value("note", "").empty() && evidence.value("where", "").empty()) << species.id;
      continue;
    }
    const double depth_cm = length_cm * species.size.body_depth_share.value_or(usual_depth_share(species.size.body));
    const double wide_cm = species.look.form == "stingray" ? length_cm / 2 : depth_cm;  // a disc, and a tail of the same length
    EXPECT_LE(mass_g, length_cm * depth_cm * wide_cm * 1.05) << species.id;
  }
  EXPECT_GE(own_pairs, 10);
}

std::string percent_of(int part, int all) { return std::to_string(all > 0 ? (100 * part + all / 2) / all : 0) + " %"; }

// How much of the catalogue rests on what; printed, so that whoever changes it sees where it stands.
TEST(Published, TheShareOfEachEvidenceClassByFieldIsKnown) {
  const std::vector<std::string> fields{"name.scientific",
                                        "size.adult_tl_cm",
                                        "size.sold_cm",
                                        "size.published_max_cm",
                                        "size.length_weight",
                                        "water.temperature_c.tolerated",
                                        "water.temperature_c.ideal",
                                        "water.temperature_c.published",
                                        "water.ph.tolerated",
                                        "water.ph.ideal",
                                        "water.gh_dgh.tolerated",
                                        "water.kh_dkh.tolerated",
                                        "water.oxygen_least_mg_l",
                                        "life.style",
                                        "life.group.least",
                                        "life.longevity_y",
                                        "temper.to_others",
                                        "mouth.gape_share",
                                        "needs.least_length_cm",
                                        "needs.least_volume_l",
                                        "diet",
                                        "breeding.hatch",
                                        "legal",
                                        "look"};
  for (const std::string& field : fields) {
    std::map<Evidence, int> of;
    int has = 0;
    for (const nlohmann::json& card : cards()) {
      std::string pointer = "/" + field;
      std::replace(pointer.begin(), pointer.end(), '.', '/');
      if (!card.contains(nlohmann::json::json_pointer(pointer))) continue;
      ++has;
      const Species* species = find_species(built_in(), card["code"].get<int>());
      ++of[evidence_for(*species, field)->evidence];
    }
    std::printf("%-32s %4d cards: published %5s, common practice %5s, from memory %5s\n", field.c_str(), has,
                percent_of(of[Evidence::published], has).c_str(), percent_of(of[Evidence::common_practice], has).c_str(),
                percent_of(of[Evidence::from_memory], has).c_str());
    EXPECT_EQ(of[Evidence::keeper], 0) << field;
    EXPECT_GT(has, 0) << field;
    // What a source has printed is quoted as printed, what we made of it is not.
    if (field == "water.temperature_c.published") {
      EXPECT_EQ(of[Evidence::published], has) << field;
    }
    if (field == "size.published_max_cm") {
      EXPECT_GE(of[Evidence::published], has * 9 / 10) << field;
    }
    if (field == "water.temperature_c.tolerated" || field == "size.adult_tl_cm") {
      EXPECT_LT(of[Evidence::published], has / 10) << field;
    }
  }
}

}  // namespace
}  // namespace shoalwright
