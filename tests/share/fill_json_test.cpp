// SPDX-License-Identifier: MIT
#include "share/fill_json.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "support/problem_files.h"

namespace shoalwright {
namespace {

nlohmann::json stored() { return nlohmann::json::parse(problem_text("n60-k3-v60")); }

/// The place that the reader complains about after a change.
template <class Change>
std::string place_after(Change change) {
  nlohmann::json json = stored();
  change(json);
  const Result<StockProblem> problem = read_stock_problem(json.dump());
  if (problem) return "none";
  EXPECT_EQ(problem.error().sentence.back(), '.') << problem.error().sentence;
  EXPECT_EQ(problem.error().sentence.rfind(problem.error().place, 0), 0u) << problem.error().sentence;
  return problem.error().place;
}

TEST(FillJson, ReadsWhatStandsInTheFile) {
  const nlohmann::json json = stored();
  const StockProblem problem = read_stock_problem(json.dump()).value();
  EXPECT_EQ(problem.most_species, 3);
  ASSERT_EQ(problem.species.size(), 60u);
  ASSERT_EQ(problem.capacities.size(), 5u);
  EXPECT_EQ(problem.capacities[1], json["caps"]["zone"][1].get<double>());
  EXPECT_EQ(problem.capacities[3], json["caps"]["waste"].get<double>());
  EXPECT_EQ(problem.capacities[4], json["caps"]["oxygen"].get<double>());
  ASSERT_EQ(problem.water.size(), 4u);
  EXPECT_EQ(problem.water[1], (Range{json["water"][1]["lo"].get<double>(), json["water"][1]["hi"].get<double>()}));
  EXPECT_EQ(problem.conflicts.size(), json["conflicts"].size());
  for (std::size_t i = 0; i < 60; ++i) {
    const nlohmann::json& from = json["species"][i];
    const Offer& offer = problem.species[i];
    EXPECT_EQ(offer.least, from["min"].get<int>());
    EXPECT_EQ(offer.most, from["max"].get<int>());
    EXPECT_EQ(offer.present, from["present"].get<double>());
    EXPECT_EQ(offer.each, from["perFish"].get<double>());
    EXPECT_EQ(offer.needs[2], from["zone"][2].get<double>());
    EXPECT_EQ(offer.needs[3], from["waste"].get<double>());
    EXPECT_EQ(offer.needs[4], from["oxygen"].get<double>());
    EXPECT_EQ(offer.water[2], (Range{from["lo"][2].get<double>(), from["hi"][2].get<double>()}));
    EXPECT_FALSE(offer.must);
  }
}

TEST(FillJson, NamesThePlaceOfWhatItCannotRead) {
  EXPECT_EQ(place_after([](nlohmann::json&) {}), "none");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["note"] = 1; }), "none") << "other keys are passed over";
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["format"] = "another"; }), "/format");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json.erase("K"); }), "/K");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["K"] = -1; }), "/K");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["K"] = 2.5; }), "/K");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["K"] = 1e30; }), "/K");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["caps"].erase("zone"); }), "/caps/zone");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["caps"]["waste"] = "much"; }), "/caps/waste");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["water"][2] = 7; }), "/water/2/lo");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["species"] = 60; }), "/species");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["species"][7]["min"] = true; }), "/species/7/min");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["species"][7]["min"] = 0; }), "/species/7/least");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["species"][7]["zone"][1] = "a"; }), "/species/7/zone");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["species"][7]["lo"].push_back(1); }), "/species/7/hi");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["species"][7]["zone"].push_back(1); }), "/species/7/needs");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["conflicts"][3] = {0}; }), "/conflicts/3");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["conflicts"][3] = {0, 60}; }), "/conflicts/3");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["conflicts"][3] = {-1, 6}; }), "/conflicts/3");
  EXPECT_EQ(place_after([](nlohmann::json& json) { json["conflicts"][3] = {5, 5}; }), "/conflicts");
  EXPECT_FALSE(read_stock_problem("[1,"));
  EXPECT_FALSE(read_stock_problem("[]"));
  EXPECT_FALSE(read_stock_problem(""));
}

TEST(FillJson, TellsTheFirstStockByPositions) {
  StocksFound found{.stocks = {{.score = 12.5, .groups = {{3, 7}, {11, 2}}, .proven = true}}, .proven = true};
  EXPECT_EQ(fill_instance_json(found, 0.25), R"({"optimum":12.5,"proven":true,"chosen":{"3":7,"11":2},"seconds":0.25})");
  found.stocks.clear();
  found.proven = false;
  EXPECT_EQ(fill_instance_json(found, 1), R"({"optimum":null,"proven":false,"chosen":null,"seconds":1})");
}

}  // namespace
}  // namespace shoalwright
