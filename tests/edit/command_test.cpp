// SPDX-License-Identifier: MIT
#include "edit/command.h"

#include <gtest/gtest.h>

#include "catalog/plural.h"
#include "catalog/read.h"
#include "edit/history.h"
#include "plan/check.h"
#include "share/link.h"
#include "share/plan_json.h"
#include "support/plan_files.h"
#include "support/random_plan.h"

namespace shoalwright {
namespace {

const Catalog& known() { return the_catalog(); }

Plan riverbank() { return read_plan(test_file("plans/riverbank.json")).value(); }

Plan after(const Plan& plan, const Command& command) { return apply(plan, command, known()); }
std::string named(const Plan& before, const Command& command) { return name_of(command, before, known()); }

Group line(const std::string& species, int count) { return Group{.species = species, .count = count}; }

TEST(AddGroup, BeginsALineOrJoinsTheOneThatIsThere) {
  Plan plan = after(riverbank(), AddGroup{.species = "danio-rerio", .count = 6});
  ASSERT_EQ(plan.stock.size(), 5u);
  EXPECT_EQ(plan.stock[4], line("danio-rerio", 6));
  plan = after(plan, AddGroup{.species = "Danio rerio", .count = 2});
  ASSERT_EQ(plan.stock.size(), 5u);
  EXPECT_EQ(plan.stock[4].count, 8);
}

TEST(AddGroup, TakesASynonymForTheSameKind) {
  const Plan plan = after(riverbank(), AddGroup{.species = "corydoras sterbai", .count = 1});
  EXPECT_EQ(plan.stock.size(), 4u);
  EXPECT_EQ(plan.stock[1].species, "hoplisoma-sterbai");
  EXPECT_EQ(plan.stock[1].count, 9);
}

TEST(AddGroup, KeepsAnUnknownNameAsItWasWritten) {
  const Plan plan = after(riverbank(), AddGroup{.species = "Brown thing", .count = 2});
  EXPECT_EQ(plan.stock.back(), line("Brown thing", 2));
  EXPECT_FALSE(check_plan(plan));
}

TEST(AddGroup, NeverPassesWhatAPlanCanHold) {
  Plan plan = riverbank();
  plan.stock[0].count = most_count;
  EXPECT_EQ(after(plan, AddGroup{.species = plan.stock[0].species, .count = 2147483647}).stock[0].count, most_count);
  EXPECT_EQ(after(plan, AddGroup{.species = "danio-rerio", .count = 0}), plan);
  EXPECT_EQ(after(plan, AddGroup{.species = "danio-rerio", .count = -3}), plan);
}

TEST(SetCount, FoldsFurtherLinesOfTheKindIntoTheFirst) {
  Plan plan = riverbank();
  plan.stock.push_back(line("Trigonostigma heteromorpha", 5));
  plan.stock.back().note = "from the club";
  plan.fixed = {"/stock/3/count", "/stock/4"};
  plan = after(plan, SetCount{.species = "trigonostigma-heteromorpha", .count = 15});
  ASSERT_EQ(plan.stock.size(), 4u);
  EXPECT_EQ(plan.stock[0].count, 15);
  EXPECT_EQ(plan.stock[0].have, 6);
  EXPECT_EQ(plan.stock[0].note, "from the club");
  EXPECT_EQ(plan.fixed, std::vector<std::string>{"/stock/3/count"});
}

TEST(SetCount, NeverLeavesMoreSwimmingThanThereAreNorSexesThatDoNotAddUp) {
  Plan plan = after(riverbank(), SetCount{.species = "trigonostigma-heteromorpha", .count = 4});
  EXPECT_EQ(plan.stock[0].have, 4);
  plan = after(plan, SetCount{.species = "iriatherina-werneri", .count = 5});
  EXPECT_FALSE(plan.stock[2].males);
  EXPECT_FALSE(plan.stock[2].females);
  plan = after(riverbank(), SetCount{.species = "iriatherina-werneri", .count = 9});
  EXPECT_EQ(plan.stock[2].males, 2);
  EXPECT_EQ(plan.stock[2].females, 4);
  EXPECT_FALSE(check_plan(plan));
}

TEST(SetCount, StaysWithinOneAndTheMost) {
  const std::string species = "hoplisoma-sterbai";
  EXPECT_EQ(after(riverbank(), SetCount{.species = species, .count = 0}).stock[1].count, 1);
  EXPECT_EQ(after(riverbank(), SetCount{.species = species, .count = -9}).stock[1].count, 1);
  EXPECT_EQ(after(riverbank(), SetCount{.species = species, .count = 2147483647}).stock[1].count, most_count);
  EXPECT_EQ(after(riverbank(), SetCount{.species = "not there", .count = 3}), riverbank());
}

TEST(TakeOut, TakesEveryLineOfTheKindAndMovesPointersAlong) {
  Plan plan = riverbank();
  plan.stock.push_back(line("corydoras sterbai", 2));
  plan.fixed = {"/stock/1/count", "/stock/2/count", "/stock/4", "/tank"};
  plan = after(plan, TakeOut{.species = "hoplisoma-sterbai"});
  ASSERT_EQ(plan.stock.size(), 3u);
  EXPECT_EQ(plan.stock[1].species, "iriatherina-werneri");
  EXPECT_EQ(plan.fixed, (std::vector<std::string>{"/stock/1/count", "/tank"}));
}

TEST(SetHave, StaysWithinTheCount) {
  EXPECT_EQ(after(riverbank(), SetHave{.species = "hoplisoma-sterbai", .have = 99}).stock[1].have, 8);
  EXPECT_EQ(after(riverbank(), SetHave{.species = "hoplisoma-sterbai", .have = -1}).stock[1].have, 0);
}

TEST(GroupEdits, SetWhatTheySay) {
  Plan plan = after(riverbank(), SetSexes{.species = "hoplisoma-sterbai", .males = 3, .females = 5});
  EXPECT_EQ(plan.stock[1].males, 3);
  EXPECT_EQ(plan.stock[1].females, 5);
  plan = after(plan, SetArrival{.species = "hoplisoma-sterbai", .week = 4});
  EXPECT_EQ(plan.stock[1].arrives_week, 4);
  plan = after(plan, SetGroupNote{.species = "hoplisoma-sterbai", .note = "bred here"});
  EXPECT_EQ(plan.stock[1].note, "bred here");
  plan = after(plan, SetArrival{.species = "hoplisoma-sterbai", .week = {}});
  EXPECT_FALSE(plan.stock[1].arrives_week);
}

TEST(Pieces, ArePutChangedAndTakenByTheirPlace) {
  Plan plan = riverbank();
  plan.assumed = {"/pieces/1/height_cm", "/pieces/2/length_cm"};
  Piece stone{.kind = "stone", .x_cm = 40, .z_cm = 20, .length_cm = 10, .depth_cm = 9, .height_cm = 7};
  plan = after(plan, PutPiece{.piece = stone});
  EXPECT_EQ(plan.pieces.back(), stone);
  Piece moved = plan.pieces[2];
  moved.x_cm = 30;
  plan = after(plan, ChangePiece{.index = 2, .piece = moved});
  EXPECT_EQ(plan.pieces[2].x_cm, 30);
  EXPECT_TRUE(is_assumed(plan, "/pieces/2/length_cm"));
  moved.length_cm = 25;
  plan = after(plan, ChangePiece{.index = 2, .piece = moved});
  EXPECT_FALSE(is_assumed(plan, "/pieces/2/length_cm"));
  plan = after(plan, TakePiece{.index = 0});
  EXPECT_EQ(plan.pieces.size(), 6u);
  EXPECT_TRUE(is_assumed(plan, "/pieces/0/height_cm"));
  EXPECT_EQ(after(plan, TakePiece{.index = 99}), plan);
  EXPECT_EQ(after(plan, ChangePiece{.index = 99, .piece = stone}), plan);
}

TEST(SetTank, LeavesNoMeasureOfAnotherShapeBehind) {
  Tank tank = riverbank().tank;
  tank.shape = Shape::cylinder;
  tank.diameter_cm = 60;
  const Plan plan = after(riverbank(), SetTank{.tank = tank});
  EXPECT_EQ(plan.tank.length_cm, 0);
  EXPECT_FALSE(check_plan(plan));
  tank.shape = Shape::bow_front;
  tank.bow_cm = 10;
  EXPECT_FALSE(check_plan(after(plan, SetTank{.tank = tank})));
}

TEST(Edits, DecideWhatTheySetAndNothingElse) {
  Plan plan = riverbank();
  plan.assumed = {"/gear", "/tank", "/upkeep"};
  Tank taller = plan.tank;
  taller.height_cm += 5;
  plan = after(plan, SetTank{.tank = taller});
  EXPECT_FALSE(is_assumed(plan, "/tank/height_cm"));
  for (const char* pointer : {"/tank/length_cm", "/tank/width_cm", "/tank/glass_mm", "/tank/lid", "/tank/shape"})
    EXPECT_TRUE(is_assumed(plan, pointer)) << pointer;
  EXPECT_FALSE(is_assumed(plan, "/tank/diameter_cm"));
  Gear gear = *plan.gear;
  gear.heater_w = 200;
  plan = after(plan, SetGear{.gear = gear});
  EXPECT_FALSE(is_assumed(plan, "/gear/heater_w"));
  EXPECT_TRUE(is_assumed(plan, "/gear/filter"));
  plan = after(plan, SetUpkeep{.upkeep = Upkeep{.change_fraction = 0.5, .every_days = plan.upkeep->every_days}});
  EXPECT_TRUE(is_assumed(plan, "/upkeep/every_days"));
  EXPECT_FALSE(is_assumed(plan, "/upkeep/change_fraction"));
  EXPECT_TRUE(is_assumed(riverbank(), "/source/nitrate_mg_l"));
  SourceWater source = riverbank().source;
  source.ph = 7;
  EXPECT_TRUE(is_assumed(after(riverbank(), SetSource{.source = source}), "/source/nitrate_mg_l"));
  source.nitrate_mg_l = 5;
  EXPECT_FALSE(is_assumed(after(riverbank(), SetSource{.source = source}), "/source/nitrate_mg_l"));
}

TEST(SetLid, OfTheSameLidConfirmsIt) {
  Plan plan = riverbank();
  plan.assumed = {"/tank/lid"};
  EXPECT_TRUE(after(plan, SetLid{.lid = true}).assumed.empty());
}

TEST(SetSeen, IsTakenBackByTheSameFinding) {
  const SetSeen seen{.rule = "lid", .species = {"danio-rerio"}, .known = true};
  const Plan plan = after(after(riverbank(), seen), seen);
  EXPECT_EQ(plan.seen.size(), 1u);
  EXPECT_EQ(after(plan, SetSeen{.rule = "lid", .species = {"danio-rerio"}, .known = false}), riverbank());
  EXPECT_EQ(after(plan, SetSeen{.rule = "lid", .species = {}, .known = false}), plan);
}

Species own_kind(const char* id, const char* name) {
  const std::string text = std::string(R"({"id":")") + id + R"(","name":{"common":[{"text":")" + name +
                           R"(","lang":"en"}]},"size":{"adult_tl_cm":4},"life":{"style":"calm_mid",)"
                           R"("depth":{"surface":0,"mid":1,"bottom":0},"group":{"kind":"shoal","least":6}}})";
  return read_species(std::string_view(text)).value();
}

/// One edit of each kind.
std::vector<Command> every_edit(const Plan& plan) {
  const std::string first = plan.stock.empty() ? "danio-rerio" : plan.stock.front().species;
  Tank tank = plan.tank;
  tank.height_cm += 1;
  Gear gear;
  gear.heater_w = 75;
  SourceWater source = plan.source;
  source.ph = 6.66;
  return {
      AddGroup{.species = first, .count = 3},
      SetCount{.species = first, .count = 4},
      TakeOut{.species = first},
      SetHave{.species = first, .have = 1},
      SetSexes{.species = first, .males = {}, .females = {}},
      SetArrival{.species = first, .week = 9},
      SetGroupNote{.species = first, .note = "a note"},
      PutPiece{.piece = {.kind = "stone", .length_cm = 5, .depth_cm = 5, .height_cm = 5}},
      ChangePiece{.index = 0, .piece = {.kind = "root", .length_cm = 5, .depth_cm = 5, .height_cm = 5}},
      TakePiece{.index = 0},
      PinPiece{.index = 0},
      SetTank{.tank = tank},
      SetSubstrate{.substrate = {.kind = SubstrateKind::coarse_sand, .front_cm = 1, .back_cm = 2, .line_cm = {{0, 1}, {5, 4}}}},
      SetLid{.lid = {}},
      SetSource{.source = source},
      SetAim{.water = WaterAim{.temperature_c = 23.4}},
      SetMeasured{.measured = Measured{.date = "", .ph = 7.1, .ammonia_mg_l = 0.5, .other_keys = ""}},
      SetLimits{.limits = {.nitrate_mg_l = 33}},
      SetGear{.gear = gear},
      SetRunning{.weeks = 3},
      SetUpkeep{.upkeep = Upkeep{.change_fraction = 0.2, .every_days = 5}},
      SetFeeding{.feeding = Feeding{.ration = Ration::light, .fasting_days = 2}},
      SetPlanting{.planting = Planting::dense},
      SetPlace{.place = {.temperature_c = 19, .region = "NO"}},
      SetStrictness{.strictness = Strictness::strict},
      Rename{.name = "another name"},
      SetNotes{.notes = "other notes"},
      SetSeen{.rule = "lid", .species = {}, .known = true},
      SetOwnSpecies{own_kind("own--blue-thing", "blue thing")},
      DropOwnSpecies{plan.own_species.empty() ? "own--nothing" : plan.own_species.front().id}};
}

TEST(SetSubstrate, DrawsATerrainLineAndLevelsIt) {
  const Plan plan = riverbank();
  SetSubstrate draw{plan.substrate};
  draw.substrate.line_cm = {{20, 0}, {30, 9}, {40, 0}};
  const Plan hill = after(plan, draw);
  EXPECT_EQ(hill.substrate.line_cm, draw.substrate.line_cm);
  EXPECT_EQ(named(plan, draw), "Terrain line");
  const SetSubstrate level{plan.substrate};
  EXPECT_EQ(named(hill, level), "Level the substrate");
  EXPECT_EQ(after(hill, level), plan);
  SetSubstrate deeper{hill.substrate};
  deeper.substrate.back_cm += 1;
  EXPECT_EQ(named(hill, deeper), "Substrate depth");
  SetSubstrate bare{hill.substrate};
  bare.substrate.kind = SubstrateKind::bare;
  bare.substrate.front_cm = bare.substrate.back_cm = 0;
  EXPECT_TRUE(after(hill, bare).substrate.line_cm.empty());
  History history = begin_history(plan);
  remember(history, hill, named(plan, draw), join_of(draw), 1);
  EXPECT_TRUE(undo(history));
  EXPECT_EQ(present(history), plan);
}

TEST(SetTank, SqueezesATerrainLineThatWouldNotFit) {
  Plan plan = riverbank();
  plan.substrate.line_cm = {{0, 2}, {44.2, 9}, {88.4, 0}};
  SetTank shorter{plan.tank};
  shorter.tank.length_cm = 60;
  const Plan after_it = after(plan, shorter);
  EXPECT_EQ(after_it.substrate.line_cm, (std::vector<LinePoint>{{0, 2}, {30, 9}, {60, 0}}));
  EXPECT_FALSE(check_plan(after_it));
  EXPECT_EQ(after(after_it, SetTank{plan.tank}).substrate, after_it.substrate) << "hills stay where they are, as stones do";
  SetTank round{plan.tank};
  round.tank.shape = Shape::cylinder;
  round.tank.diameter_cm = 50;
  EXPECT_FALSE(check_plan(after(plan, round))) << check_plan(after(plan, round))->sentence;
}

TEST(EveryEdit, OfAnyPlanGivesAPlanThatCanBeUndone) {
  for (std::uint64_t seed = 0; seed < 60; ++seed) {
    const Plan plan = random_plan(seed, known());
    for (const Command& command : every_edit(plan)) {
      const Plan edited = after(plan, command);
      EXPECT_FALSE(check_plan(edited)) << seed << ' ' << named(plan, command) << ": " << check_plan(edited)->sentence;
      const Result<Plan> read_back = read_plan(plan_json(edited));
      ASSERT_TRUE(read_back);
      EXPECT_EQ(*read_back, edited) << seed << ' ' << named(plan, command);
      History history = begin_history(plan);
      remember(history, edited, named(plan, command), join_of(command), 1);
      undo(history);
      EXPECT_EQ(present(history), plan) << seed << ' ' << named(plan, command);
    }
  }
}

TEST(EveryEdit, HasANameOfItsOwn) {
  std::vector<std::string> names;
  const std::vector<Command> edits = every_edit(riverbank());
  EXPECT_EQ(edits.size(), std::variant_size_v<Command>);
  for (const Command& command : edits) {
    const std::string name = named(riverbank(), command);
    ASSERT_FALSE(name.empty());
    EXPECT_NE(name.back(), '.') << name;
    EXPECT_EQ(std::count(names.begin(), names.end(), name), 0) << name;
    names.push_back(name);
  }
}

TEST(EditName, ReadsWell) {
  const Plan plan = riverbank();
  EXPECT_EQ(named(plan, AddGroup{.species = "rohanella-titteya", .count = 8}), "Add 8 cherry barbs");
  EXPECT_EQ(named(plan, AddGroup{.species = "pterophyllum-scalare", .count = 1}), "Add 1 angelfish");
  EXPECT_EQ(named(plan, AddGroup{.species = "hoplisoma-sterbai", .count = 2}), "Add 2 more Sterba's corydoras");
  EXPECT_EQ(named(plan, SetCount{.species = "hoplisoma-sterbai", .count = 10}), "2 more Sterba's corydoras");
  EXPECT_EQ(named(plan, SetCount{.species = "hoplisoma-sterbai", .count = 7}), "1 fewer Sterba's corydoras");
  EXPECT_EQ(named(plan, SetCount{.species = "trigonostigma-heteromorpha", .count = 8}), "2 fewer harlequin rasboras");
  EXPECT_EQ(named(plan, SetCount{.species = "trigonostigma-heteromorpha", .count = 5}), "Re-home 1 harlequin rasbora");
  EXPECT_EQ(named(plan, TakeOut{.species = "iriatherina-werneri"}), "Take out 6 threadfin rainbowfish");
  EXPECT_EQ(named(plan, TakeOut{.species = "trigonostigma-heteromorpha"}), "Re-home 6 harlequin rasboras");
  EXPECT_EQ(named(plan, SetHave{.species = "trichogaster-chuna", .have = 1}), "1 honey gourami swims here");
  EXPECT_EQ(named(plan, SetHave{.species = "trichogaster-chuna", .have = 0}), "No honey gouramis here yet");
  EXPECT_EQ(named(plan, AddGroup{.species = "Brown thing", .count = 2}), "Add 2 Brown thing");
  EXPECT_EQ(named(plan, PutPiece{.piece = {.kind = "stem-plants"}}), "Put in stem thicket");
  Piece moved = plan.pieces[0];
  moved.x_cm = 1;
  EXPECT_EQ(named(plan, ChangePiece{.index = 0, .piece = moved}), "Move bank branch");
  moved.turn_deg = 90;
  EXPECT_EQ(named(plan, ChangePiece{.index = 0, .piece = moved}), "Turn bank branch");
  moved.height_cm = 1;
  EXPECT_EQ(named(plan, ChangePiece{.index = 0, .piece = moved}), "Change bank branch");
}

TEST(Plural, OfEveryKindOfTheCatalogueIsEnglish) {
  const std::pair<const char*, const char*> rows[] = {
      {"guppy", "guppies"},
      {"molly", "mollies"},
      {"bumblebee goby", "bumblebee gobies"},
      {"kuhli loach", "kuhli loaches"},
      {"angelfish", "angelfish"},
      {"cherry shrimp", "cherry shrimp"},
      {"yellow mbuna", "yellow mbuna"},
      {"otocinclus", "otocinclus"},
      {"common pleco", "common plecos"},
      {"lyretail killi", "lyretail killis"},
      {"X-ray tetra", "X-ray tetras"},
      {"ray", "rays"},
      {"goldfish", "goldfish"},
      {"Sterba's corydoras", "Sterba's corydoras"},
      {"zebra nerite", "zebra nerites"},
  };
  for (const auto& [one, many] : rows) {
    EXPECT_EQ(name_for(one, 1), one);
    EXPECT_EQ(name_for(one, 2), many);
    EXPECT_EQ(name_for(one, 0), many);
  }
  Species nameless;
  nameless.name.scientific = "Exemplum plenum";
  EXPECT_EQ(name_for(nameless, 3), "Exemplum plenum");
}

TEST(QuickRepetitions, OfOneCountAreOneStepAndOfTwoKindsAreTwo) {
  EXPECT_EQ(join_of(SetCount{.species = "a", .count = 1}), join_of(SetCount{.species = "a", .count = 2}));
  EXPECT_NE(join_of(SetCount{.species = "a", .count = 1}), join_of(SetCount{.species = "b", .count = 1}));
  EXPECT_NE(join_of(SetCount{.species = "a", .count = 1}), join_of(SetHave{.species = "a", .have = 1}));
  EXPECT_EQ(join_of(AddGroup{.species = "a", .count = 1}), "");
}

TEST(OwnSpecies, IsAddedChangedAndTakenOutWithItsGroup) {
  const Plan plan = riverbank();
  const SetOwnSpecies put{own_kind("own--blue-thing", "blue thing")};
  EXPECT_EQ(named(plan, put), "Own kind: blue thing");
  Plan with = after(plan, put);
  ASSERT_EQ(with.own_species.size(), 1u);
  EXPECT_FALSE(check_plan(with));
  with = after(with, AddGroup{.species = "own--blue-thing", .count = 6});
  const SetOwnSpecies change{own_kind("own--blue-thing", "bluer thing")};
  EXPECT_EQ(named(with, change), "Change bluer thing");
  with = after(with, change);
  ASSERT_EQ(with.own_species.size(), 1u) << "in its place";
  EXPECT_EQ(display_name(with.own_species[0]), "bluer thing");
  const DropOwnSpecies drop{"own--blue-thing"};
  EXPECT_EQ(named(with, drop), "Remove bluer thing and its 6");
  EXPECT_EQ(after(with, drop), plan);
  EXPECT_EQ(after(plan, drop), plan);
}

TEST(OwnSpecies, OverridesAKindOfTheCatalogueUntilItIsTakenBack) {
  const Plan plan = riverbank();
  const SetOwnSpecies put{own_kind("hoplisoma-sterbai", "Sterba's corydoras")};
  EXPECT_EQ(named(plan, put), "Own values for Sterba's corydoras");
  const Plan with = after(plan, put);
  EXPECT_EQ(with.stock, plan.stock) << "the group stays";
  const DropOwnSpecies drop{"hoplisoma-sterbai"};
  EXPECT_EQ(named(with, drop).rfind("Catalogue’s values for ", 0), 0u);
  EXPECT_EQ(after(with, drop), plan);
}

TEST(OwnSpecies, TravelsInFileAndLinkAndIsUndone) {
  Plan plan = after(riverbank(), SetOwnSpecies{own_kind("own--blue-thing", "blue thing")});
  plan = after(plan, AddGroup{.species = "own--blue-thing", .count = 6});
  EXPECT_EQ(read_plan(plan_json(plan)).value(), plan);
  EXPECT_EQ(decode_link(encode_link(plan, known()), known()).value(), plan);
  History history = begin_history(riverbank());
  remember(history, plan, "Own kind", "", 0);
  ASSERT_TRUE(undo(history));
  EXPECT_EQ(present(history), riverbank());
  ASSERT_TRUE(redo(history));
  EXPECT_EQ(present(history), plan);
}

}  // namespace
}  // namespace shoalwright
