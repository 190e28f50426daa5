// SPDX-License-Identifier: MIT
// A keeper's own card as a form writes it: begun, copied, changed field by field, refused in whole sentences, read again.
#include "catalog/card_edit.h"

#include <gtest/gtest.h>

#include "catalog/builtin.h"
#include "catalog/card_words.h"
#include "catalog/read.h"
#include "catalog/rest_of_card.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

const Species& kind(const char* id) { return *find_species(the_catalog(), std::string_view(id)); }

Json named() {
  Json card = new_card();
  set_card_name(card, "blue thing");
  set_card_number(card, "size.adult_tl_cm", 6);
  Json id = parse_json(R"({"id":"own--blue-thing"})").value();
  card.members.push_back(id.members.front());
  return card;
}

const Error* error_at(const std::vector<Error>& errors, const std::string& place) {
  for (const Error& error : errors)
    if (error.place == place) return &error;
  return nullptr;
}

TEST(CardEdit, ANewCardLacksOnlyNameLengthAndId) {
  const std::vector<Error> errors = card_errors(new_card());
  EXPECT_EQ(errors.size(), 3u);
  ASSERT_NE(error_at(errors, "/id"), nullptr);
  ASSERT_NE(error_at(errors, "/name/common"), nullptr);
  ASSERT_NE(error_at(errors, "/size/adult_tl_cm"), nullptr);
  EXPECT_EQ(expectation_of(*error_at(errors, "/size/adult_tl_cm")), "is missing");
  EXPECT_TRUE(card_errors(named()).empty());
  const Result<Species> species = read_species(named());
  ASSERT_TRUE(species);
  EXPECT_EQ(display_name(*species), "blue thing");
  EXPECT_FALSE(species->water.ph.tolerated) << "nobody knows it yet";
  EXPECT_EQ(evidence_for(*species, "water.ph.tolerated")->evidence, Evidence::keeper);
}

TEST(CardEdit, EveryFieldIsReadAsItWasWritten) {
  Json card = named();
  set_card_text(card, "name.scientific", "Res caerulea");
  set_card_text(card, "group", "tetras");
  set_card_number(card, "size.sold_cm", 2.5);
  set_card_text(card, "size.body", "elongated");
  set_card_range(card, "water.temperature_c.tolerated", 22, 28);
  set_card_range(card, "water.temperature_c.ideal", 24, 26.5);
  set_card_range(card, "water.ph.tolerated", 5.5, 7.25);
  set_card_number(card, "life.depth.surface", 0.5);
  set_card_number(card, "life.depth.mid", 0.3);
  set_card_number(card, "life.depth.bottom", 0.2);
  set_card_text(card, "life.sexes.ratio", "1m:2f");
  set_card_flag(card, "mouth.digs", true);
  set_card_texts(card, "diet.foods", {"live", "flake"});
  set_card_texts(card, "look.colours", {"#112233", "#445566", "#778899", "#aabbcc"});
  set_card_number(card, "needs.least_length_cm", 80);
  ASSERT_TRUE(card_errors(card).empty()) << card_errors(card)[0].sentence;
  const Species s = read_species(card).value();
  EXPECT_EQ(s.name.scientific, "Res caerulea");
  EXPECT_EQ(s.group, "tetras");
  EXPECT_EQ(s.size.sold_cm, 2.5);
  EXPECT_EQ(s.size.body, Body::elongated);
  EXPECT_EQ(s.water.temperature_c.tolerated, (Range{22, 28}));
  EXPECT_EQ(s.water.temperature_c.ideal, (Range{24, 26.5}));
  EXPECT_EQ(s.water.ph.tolerated, (Range{5.5, 7.25}));
  EXPECT_EQ(s.life.depth, (std::array<double, 3>{0.5, 0.3, 0.2}));
  EXPECT_EQ(s.life.sex_ratio, "1m:2f");
  EXPECT_TRUE(s.mouth.digs);
  EXPECT_EQ(s.diet.foods, (std::vector<std::string>{"live", "flake"}));
  EXPECT_EQ(s.needs.least_length_cm, 80);
  EXPECT_EQ(read_species(s.whole_json).value(), s) << "read again from its own text it is the same";
}

TEST(CardEdit, WhatIsEmptiedIsNotKnown) {
  Json card = named();
  const std::string before = dump(card);
  set_card_range(card, "water.ph.tolerated", 6, 7);
  EXPECT_NE(dump(card), before);
  set_card_range(card, "water.ph.tolerated", {}, {});
  EXPECT_EQ(dump(card), before) << "the empty object is gone with it";
  set_card_number(card, "needs.least_volume_l", {});
  set_card_text(card, "note", "");
  EXPECT_EQ(dump(card), before);
  set_card_text(card, "life.jumps", "");
  EXPECT_FALSE(read_species(card).value().life.jumps);
}

TEST(CardEdit, ErrorsNameEveryFieldOnce) {
  Json card = named();
  set_card_number(card, "size.adult_tl_cm", 900);
  set_card_range(card, "water.ph.tolerated", 8, 6);
  set_card_range(card, "water.gh_dgh.tolerated", 4, {});
  set_card_range(card, "water.temperature_c.tolerated", 22, 26);
  set_card_range(card, "water.temperature_c.ideal", 20, 24);
  set_card_number(card, "life.depth.surface", 0.9);
  set_card_number(card, "life.group.good", 2);
  set_card_texts(card, "look.colours", {"#112233", "blue", "#778899"});
  const std::vector<Error> errors = card_errors(card);
  for (const char* place : {"/size/adult_tl_cm", "/water/ph/tolerated", "/water/gh_dgh/tolerated", "/water/temperature_c/ideal",
                            "/life/depth", "/life/group/good", "/look/colours"}) {
    ASSERT_NE(error_at(errors, place), nullptr) << place;
    EXPECT_FALSE(expectation_of(*error_at(errors, place)).empty());
    EXPECT_EQ(expectation_of(*error_at(errors, place)).find('/'), std::string::npos) << place;
  }
  EXPECT_EQ(errors.size(), 7u);
  EXPECT_EQ(expectation_of(*error_at(errors, "/water/temperature_c/ideal")), "has to lie inside tolerated");
}

TEST(CardEdit, ACopyOfEveryKindIsItsCardAndReadsAgain) {
  for (const Species& species : the_catalog().species) {
    Json card = card_to_edit(species, builtin_cards());
    ASSERT_TRUE(card_errors(card).empty()) << species.id << ": " << card_errors(card)[0].sentence;
    Species same = read_species(card).value();
    EXPECT_EQ(rest_of_card(same, builtin_cards()), rest_of_card(species, builtin_cards())) << species.id;
    same.whole_json.clear();
    same.code = species.code;
    EXPECT_TRUE(same == species) << species.id;
  }
}

TEST(CardEdit, AnOwnCopyHasItsOwnIdAndNames) {
  const Species& danio = kind("danio-rerio");
  Species first = read_species(own_copy(danio, {}, builtin_cards())).value();
  EXPECT_EQ(first.id.rfind("own--", 0), 0u);
  EXPECT_TRUE(first.name.synonyms.empty());
  EXPECT_TRUE(first.aliases.empty());
  const Species second = read_species(own_copy(danio, {first}, builtin_cards())).value();
  EXPECT_EQ(second.id, first.id + "-2");
  EXPECT_EQ(own_id("Ünö  thing!", {}), "own--uno-thing");
  EXPECT_EQ(own_id("", {}), "own--kind");
}

TEST(CardEdit, OnlyWhatChangesBecomesTheKeepers) {
  const Species& barb = kind("puntigrus-tetrazona");
  Json card = card_to_edit(barb, builtin_cards());
  set_card_range(card, "water.ph.tolerated", 5.8, 7.8);  // as it was
  EXPECT_EQ(evidence_for(read_species(card).value(), "water.ph.tolerated")->evidence, Evidence::common_practice);
  set_card_range(card, "water.ph.tolerated", 5.8, 8);
  set_card_number(card, "life.group.least", 10);
  const Species own = read_species(card).value();
  EXPECT_EQ(evidence_for(own, "water.ph.tolerated")->evidence, Evidence::keeper);
  EXPECT_EQ(evidence_for(own, "water.ph.ideal")->evidence, Evidence::common_practice);
  EXPECT_EQ(evidence_for(own, "life.group.least")->evidence, Evidence::keeper) << "though it was published";
  EXPECT_EQ(evidence_for(own, "size.published_max_cm")->evidence, Evidence::published);
}

TEST(CardWords, ListsAreThoseOfTheReader) {
  for (const char* path : {"group", "size.body", "life.style", "temper.nips_fins", "mouth.eater", "needs.substrate", "diet.kind",
                           "look.form", "look.fins", "water.salinity", "life.jumps"}) {
    ASSERT_FALSE(words_for(path).empty()) << path;
    for (const std::string_view word : words_for(path)) {
      Json card = named();
      set_card_text(card, path, std::string(word));
      EXPECT_TRUE(card_errors(card).empty()) << path << " " << word;
    }
  }
  EXPECT_TRUE(words_for("size.adult_tl_cm").empty());
  EXPECT_EQ(word_of(Style::bottom_shoal), "bottom_shoal");
  EXPECT_EQ(word_of(Salinity::fresh_to_brackish), "fresh-to-brackish");
}

}  // namespace
}  // namespace shoalwright
