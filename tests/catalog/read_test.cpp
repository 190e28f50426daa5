// SPDX-License-Identifier: MIT
#include <nlohmann/json.hpp>

#include "built_in.h"

namespace shoalwright {
namespace {

using nlohmann::json;

json full_entry() { return json::parse(full_entry_text, nullptr, false); }

Error refusal(const json& entries) {
  const Result<Catalog> read = read_catalog(entries.dump());
  return read ? Error{"taken", "taken"} : read.error();
}

TEST(ReadCatalog, EveryValueArrives) {
  const Result<Catalog> read = read_catalog(json::array({full_entry()}).dump());
  ASSERT_TRUE(read) << read.error().sentence;
  const Species& s = read->species.front();
  EXPECT_EQ(s.id, "exemplum-plenum");
  EXPECT_EQ(s.aliases, std::vector<std::string>{"exemplum-vetus"});
  EXPECT_EQ(s.code, 900);
  EXPECT_EQ(s.kind + " " + s.group, "fish others");
  EXPECT_EQ(s.name.family, "Exemplidae");
  EXPECT_EQ(s.name.common, (std::vector<CommonName>{{"full example", "en"}}));
  EXPECT_EQ(s.name.sold_as, std::vector<std::string>{"Exemplum aliud"});
  EXPECT_EQ(s.size.adult_tl_cm, 6);
  EXPECT_EQ(s.size.published_max_type, "TL");
  EXPECT_EQ(s.size.body, Body::fusiform);
  EXPECT_EQ(s.size.length_weight, (std::array<double, 2>{0.011, 3.04}));
  EXPECT_EQ(s.size.height_with_fins_cm, 5);
  EXPECT_TRUE(s.size.spines);
  EXPECT_EQ(s.water.temperature_c.tolerated, (Range{20, 28}));
  EXPECT_EQ(s.water.ph.ideal, (Range{6.5, 7.5}));
  EXPECT_EQ(s.water.gh_dgh.tolerated, (Range{2, 18}));
  EXPECT_EQ(s.water.kh_dkh.ideal, (Range{2, 8}));
  EXPECT_EQ(s.water.oxygen_least_mg_l, 5);
  EXPECT_EQ(s.life.style, Style::calm_mid);
  EXPECT_EQ(s.life.depth, (std::array<double, 3>{0.2, 0.5, 0.3}));
  EXPECT_EQ(s.life.group.kind, GroupKind::shoal);
  EXPECT_EQ(s.life.group.least * 100 + s.life.group.good, 610);
  EXPECT_TRUE(s.life.group.all_male_ok);
  EXPECT_EQ(s.life.sex_ratio, "1m:2f");
  EXPECT_EQ(s.life.longevity_y, (Range{3, 5}));
  EXPECT_EQ(s.temper.look_alike_group, "examples");
  EXPECT_EQ(s.temper.breeds_with, std::vector<std::string>{"exemplum-aliud"});
  EXPECT_EQ(s.mouth.gape_share, 0.07);
  EXPECT_EQ(s.needs.least_length_cm, 60);
  EXPECT_EQ(s.diet.foods, (std::vector<std::string>{"flake", "small-frozen"}));
  EXPECT_EQ(s.breeding_mode, "egg-scatterer");
  EXPECT_EQ(s.laws, (std::vector<Species::Law>{{"EU", "check", "An example", "2026-11", ""}}));
  EXPECT_EQ(s.look.marks, std::vector<std::string>{"wedge"});
  EXPECT_EQ(s.look.colours.size(), 4u);
  EXPECT_EQ(s.evidence.size(), 3u);
  EXPECT_EQ(s.whole_json, "") << "only a keeper's own entry travels with the plan";
}

TEST(ReadCatalog, NothingButAnArrayOfEntriesIsACatalogue) {
  for (const char* text : {"", "{}", "[", "7", "[7]", "null", "[[]]", "\xff\xfe"}) EXPECT_FALSE(read_catalog(text)) << text;
  EXPECT_TRUE(read_catalog("[]"));
}

TEST(ReadCatalog, AHostileDepthIsRefusedBeforeItIsParsed) {
  EXPECT_FALSE(read_catalog(std::string(200000, '[')));
  EXPECT_FALSE(read_species(std::string(200000, '[')));
  std::string inside = R"({"id":"own--x","extra":)" + std::string(5000, '[') + std::string(5000, ']') + "}";
  EXPECT_FALSE(read_species(inside));
  // Brackets inside text are only text.
  json entry = full_entry();
  entry["note"] = std::string(1000, '[') + "\\\"" + std::string(1000, '{');
  EXPECT_TRUE(read_catalog(json::array({entry}).dump()));
}

TEST(ReadCatalog, TheSecondEntryIsNamedByItsOwnPlace) {
  json second = full_entry();
  second["id"] = "exemplum-secundum";
  second["water"]["ph"]["ideal"] = {7, "8"};
  const Error error = refusal(json::array({full_entry(), second}));
  EXPECT_EQ(error.place, "/1/water/ph/ideal");
  EXPECT_EQ(error.sentence, "exemplum-secundum: /water/ph/ideal has to be two numbers, 3.5 to 9.5.");
}

TEST(ReadCatalog, RangesRunFromLowToHighAndIdealLiesInsideTolerated) {
  json entry = full_entry();
  entry["water"]["gh_dgh"]["tolerated"] = {18, 2};
  EXPECT_EQ(refusal(json::array({entry})).place, "/0/water/gh_dgh/tolerated");
  entry = full_entry();
  entry["water"]["temperature_c"]["ideal"] = {22, 28.5};
  EXPECT_EQ(refusal(json::array({entry})).place, "/0/water/temperature_c/ideal");
}

TEST(ReadCatalog, LeastIsAtMostGoodAndDepthSumsToOne) {
  json entry = full_entry();
  entry["life"]["group"]["good"] = 5;
  EXPECT_EQ(refusal(json::array({entry})).place, "/0/life/group/good");
  entry = full_entry();
  entry["life"]["depth"]["mid"] = 0.6;
  EXPECT_EQ(refusal(json::array({entry})).place, "/0/life/depth");
}

TEST(ReadCatalog, NoTwoEntriesShareAnIdACodeOrANameInUse) {
  json other = full_entry();
  other["id"] = "aliud-exemplum";
  other["code"] = 901;
  other["aliases"] = json::array();
  other["name"]["scientific"] = "Aliud exemplum";
  other["name"]["synonyms"] = json::array();
  EXPECT_TRUE(read_catalog(json::array({full_entry(), other}).dump()));

  EXPECT_NE(refusal(json::array({full_entry(), full_entry()})).sentence.find("twice"), std::string::npos);
  json same_code = other;
  same_code["code"] = 900;
  EXPECT_NE(refusal(json::array({full_entry(), same_code})).sentence.find("code 900"), std::string::npos);
  json same_name = other;
  same_name["name"]["synonyms"] = {"paradigma-PLENUM"};
  const std::string sentence = refusal(json::array({full_entry(), same_name})).sentence;
  EXPECT_NE(sentence.find("exemplum-plenum"), std::string::npos) << sentence;
  EXPECT_NE(sentence.find("aliud-exemplum"), std::string::npos) << sentence;
}

TEST(ReadCatalog, SpeciesStandInOrderOfTheirCode) {
  json other = full_entry();
  other["id"] = "aliud-exemplum";
  other["code"] = 5;
  other["aliases"] = json::array();
  other["name"]["scientific"] = "Aliud exemplum";
  other["name"]["synonyms"] = json::array();
  const Result<Catalog> read = read_catalog(json::array({full_entry(), other}).dump());
  ASSERT_TRUE(read);
  EXPECT_EQ(read->species[0].code, 5);
  EXPECT_EQ(read->species[1].code, 900);
}

constexpr const char* small_own = R"({
  "id": "own--black-dwarf", "name": { "common": [{ "text": "black dwarf" }] }, "size": { "adult_tl_cm": 4 },
  "life": { "style": "calm_mid", "depth": { "surface": 0.2, "mid": 0.5, "bottom": 0.3 }, "group": { "kind": "shoal", "least": 6 } }
})";

TEST(ReadSpecies, AKeepersFewValuesAreEnoughAndTheRestStaysUnknown) {
  const Result<Species> read = read_species(small_own);
  ASSERT_TRUE(read) << read.error().sentence;
  EXPECT_EQ(read->id, "own--black-dwarf");
  EXPECT_EQ(read->code, 0);
  EXPECT_EQ(display_name(*read), "black dwarf");
  EXPECT_FALSE(read->water.temperature_c.tolerated);
  EXPECT_FALSE(read->water.ph.ideal);
  EXPECT_FALSE(read->size.sold_cm);
  EXPECT_FALSE(read->needs.least_length_cm);
  EXPECT_EQ(read->mouth.eater, "");
  EXPECT_FALSE(read->life.jumps);
  EXPECT_EQ(read->size.body, Body::unknown);
  EXPECT_EQ(read->life.group.good, 6);
  ASSERT_EQ(read->evidence.size(), 1u);
  EXPECT_EQ(evidence_for(*read, "water.ph.tolerated")->evidence, Evidence::keeper);
}

TEST(ReadSpecies, EachOfThoseFewValuesIsNeeded) {
  const std::vector<std::string> places{
      "/id",         "/name",       "/name/common",    "/size",       "/size/adult_tl_cm", "/life",
      "/life/style", "/life/depth", "/life/depth/mid", "/life/group", "/life/group/kind",  "/life/group/least"};
  for (const std::string& place : places) {
    json entry = json::parse(small_own, nullptr, false);
    const auto cut = place.rfind('/');
    entry[json::json_pointer(place.substr(0, cut))].erase(place.substr(cut + 1));
    const Result<Species> read = read_species(entry.dump());
    ASSERT_FALSE(read) << place;
    EXPECT_EQ(read.error().place, place) << read.error().sentence;
  }
}

TEST(ReadSpecies, WhatAKeeperWritesIsCheckedLikeOurs) {
  json entry = full_entry();
  entry.erase("code");
  entry["id"] = "own--example";
  ASSERT_TRUE(read_species(entry.dump())) << read_species(entry.dump()).error().sentence;
  entry["water"]["ph"]["tolerated"] = {2, 8};
  EXPECT_EQ(read_species(entry.dump()).error().place, "/water/ph/tolerated");
  entry = full_entry();
  EXPECT_EQ(read_species(entry.dump()).error().place, "/code");
}

TEST(ReadSpecies, UnknownKeysAndNullsAreKeptAsTheyAre) {
  json entry = json::parse(small_own, nullptr, false);
  entry["my_shelf"] = {{"row", 3}};
  entry["size"]["adult_male_cm"] = nullptr;
  const Result<Species> read = read_species(entry.dump());
  ASSERT_TRUE(read) << read.error().sentence;
  EXPECT_EQ(json::parse(read->whole_json, nullptr, false), entry);
  EXPECT_FALSE(read->size.adult_male_cm);
}

TEST(ReadSpecies, AnEntryMayStandInForACatalogueSpecies) {
  json entry = json::parse(small_own, nullptr, false);
  entry["id"] = "danio-rerio";
  EXPECT_TRUE(read_species(entry.dump()));
}

}  // namespace
}  // namespace shoalwright
