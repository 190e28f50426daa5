// SPDX-License-Identifier: MIT
#include "tool/commands.h"

#include <gtest/gtest.h>

#include <cstdio>

#include "shoalwright.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

constexpr int bad_input = 2;

std::string plan_path(const std::string& name) { return std::string(SHOALWRIGHT_TESTS_DIR) + "/plans/" + name; }

/// A file of that text; the path.
std::string written(const char* name, const std::string& text) {
  const std::string path = testing::TempDir() + "shoalwright_" + name;
  std::FILE* file = std::fopen(path.c_str(), "wb");
  EXPECT_NE(file, nullptr) << path;
  if (file == nullptr) return path;
  std::fwrite(text.data(), 1, text.size(), file);
  std::fclose(file);
  return path;
}

/// Bad input: nothing on stdout, one sentence on stderr.
void expect_refused(const Answer& answer, const std::string& part) {
  EXPECT_EQ(answer.code, bad_input) << part;
  EXPECT_EQ(answer.out, "");
  EXPECT_NE(answer.error.find(part), std::string::npos) << answer.error;
  ASSERT_FALSE(answer.error.empty());
  EXPECT_EQ(answer.error.back(), '.');
  EXPECT_EQ(answer.error.find('\n'), std::string::npos) << answer.error;
}

TEST(Helper, AssessesEveryPlanAsTheCoreDoes) {
  for (const NamedPlan& named : all_plans()) {
    const Answer answer = run_command({"assess", plan_path(named.name)});
    EXPECT_EQ(answer.code, 0) << answer.error;
    EXPECT_EQ(answer.error, "");
    EXPECT_EQ(answer.out, assessment_json(assess(named.plan, the_catalog()))) << named.name;
  }
}

TEST(Helper, MakesALinkAndOpensItAsTheCanonicalPlan) {
  for (const NamedPlan& named : all_plans()) {
    const Answer link = run_command({"link", plan_path(named.name)});
    ASSERT_EQ(link.code, 0) << link.error;
    EXPECT_EQ(link.out.rfind("#p=", 0), 0u);
    Plan travels = named.plan;
    travels.log_json.clear();
    for (const std::string& text : {link.out, link.out.substr(3), "http://localhost:8080/" + link.out}) {
      const Answer opened = run_command({"open", text});
      EXPECT_EQ(opened.code, 0) << opened.error;
      EXPECT_EQ(opened.out, plan_json(travels)) << named.name;
    }
  }
}

TEST(Helper, TellsTheRecipeAsTheCoreDoes) {
  for (const NamedPlan& named : all_plans()) {
    const Answer answer = run_command({"recipe", plan_path(named.name)});
    EXPECT_EQ(answer.code, 0) << named.name << " " << answer.error;
    EXPECT_EQ(answer.out, recipe_json(recipe_card(named.plan, the_catalog()))) << named.name;
  }
  expect_refused(run_command({"recipe"}), "Use: ");
  expect_refused(run_command({"recipe", plan_path("there-is-none.json")}), "cannot be opened");
}

TEST(Helper, SuggestsMendsAndNamesTanksAsTheCoreDoes) {
  for (const NamedPlan& named : all_plans()) {
    if (named.name != "riverbank.json" && named.name != "corner-pentagon.json") continue;
    EXPECT_EQ(run_command({"suggest", plan_path(named.name)}).out, suggestions_json(suggestions_for(named.plan, the_catalog())));
    EXPECT_EQ(run_command({"least-tank", plan_path(named.name)}).out, least_tanks_json(least_tanks(named.plan, the_catalog())));
    EXPECT_EQ(run_command({"mend", plan_path(named.name)}).out, mends_json(mend(named.plan, the_catalog())));
  }
  const Answer filled = run_command({"fill", plan_path("riverbank.json")});
  EXPECT_NE(filled.out.find("\"proven\":true"), std::string::npos) << filled.out;
  for (const char* command : {"suggest", "least-tank", "mend", "fill"}) {
    expect_refused(run_command({command}), "Use: ");
    expect_refused(run_command({command, plan_path("there-is-none.json")}), "cannot be opened");
  }
}

TEST(Helper, FillsAStoredProblemToItsOptimum) {
  const std::string path = std::string(SHOALWRIGHT_TESTS_DIR) + "/problems/n60-k6-v120-hard.json";
  const Answer answer = run_command({"fill", "--instance", path});
  ASSERT_EQ(answer.code, 0) << answer.error;
  const std::string start = R"({"optimum":1282,"proven":true,"chosen":{")";
  EXPECT_EQ(answer.out.compare(0, start.size(), start), 0) << answer.out;
  EXPECT_NE(answer.out.find("},\"seconds\":"), std::string::npos) << answer.out;
  expect_refused(run_command({"fill", "--instance"}), "Use: ");
  expect_refused(run_command({"fill", "--problem", path}), "Use: ");
  expect_refused(run_command({"fill", "--instance", plan_path("minimal.json")}), "choose-groups-1");
}

TEST(Helper, RefusesBadInputByOneSentence) {
  expect_refused(run_command({}), "Use: shoal assess");
  expect_refused(run_command({"assess"}), "Use: ");
  expect_refused(run_command({"assess", plan_path("minimal.json"), "more"}), "Use: ");
  expect_refused(run_command({"largest", plan_path("minimal.json")}), "Use: ");
  expect_refused(run_command({"devour", plan_path("minimal.json")}), "Use: ");
  expect_refused(run_command({"assess", plan_path("there-is-none.json")}), "cannot be opened");
  expect_refused(run_command({"link", std::string(SHOALWRIGHT_TESTS_DIR)}), "cannot be read");
  expect_refused(run_command({"open", "#p=AAAA"}), "damaged");
  expect_refused(run_command({"open", ""}), "not a link");
  expect_refused(run_command({"assess", written("no_plan.json", "[1,2")}), "not JSON");
  expect_refused(run_command({"assess", written("no_tank.json", R"({"format":"shoalwright-plan","version":1})")}), "/tank");
  expect_refused(
      run_command(
          {"link", written("no_length.json",
                           R"({"format":"shoalwright-plan","version":1,"tank":{"shape":"rectangular","length_cm":"long"}})")}),
      "/tank/length_cm");
}

TEST(Helper, SaysHowManyOfAKindFitUnderAnyOfItsNames) {
  const Plan plan = read_plan(test_file("plans/riverbank.json")).value();
  const Largest largest = largest_count(plan, the_catalog(), *find_species(the_catalog(), "danio-rerio"));
  const std::string expected =
      "{\"count\":" + std::to_string(*largest.count) + ",\"stopped_by\":[\"" + largest.stopped_by.front() + "\"]}";
  for (const char* name : {"danio-rerio", "Danio rerio", "Brachydanio rerio"})
    EXPECT_EQ(run_command({"largest", plan_path("riverbank.json"), name}).out, expected) << name;
  expect_refused(run_command({"largest", plan_path("riverbank.json"), "no such fish"}), "no such fish");
}

TEST(Helper, TakesTheKeepersOwnCardForTheCatalogues) {
  Plan plan = read_plan(test_file("plans/riverbank.json")).value();
  Result<Species> own = read_species(R"({"id":"danio-rerio","name":{"scientific":"Danio rerio"},"size":{"adult_tl_cm":30},
    "life":{"style":"active_mid","depth":{"surface":0,"mid":1,"bottom":0},"group":{"kind":"loose","least":1}}})");
  ASSERT_TRUE(own) << own.error().sentence;
  plan.own_species.push_back(*own);
  const std::string path = written("own_danio.json", plan_json(plan));
  for (const char* name : {"danio-rerio", "Danio rerio", "Brachydanio rerio"}) {
    const Answer answer = run_command({"largest", path, name});
    EXPECT_EQ(answer.out.rfind("{\"count\":0,", 0), 0u) << "30 cm do not fit: " << name << " " << answer.out << answer.error;
  }
}

TEST(Helper, CountsTheRowsOfATableAndFailsWithThem) {
  const std::string header = "quantity,inputs,expected,unit,tolerance,kind,source\n",
                    good = "psf in kPa,psf=40,1.91521,kPa,rel:0.001,K,s\n";
  const Answer passed = run_command({"check", written("good.csv", header + good)});
  EXPECT_EQ(passed.code, 0);
  EXPECT_EQ(passed.out, "1 passed, 0 failed");
  const Answer failed = run_command({"check", written("bad.csv", header + good + "psf in kPa,psf=40,2,kPa,rel:0.001,K,s\n")});
  EXPECT_EQ(failed.code, 1);
  EXPECT_EQ(failed.out.rfind("Line 3: psf in kPa", 0), 0u) << failed.out;
  EXPECT_EQ(failed.out.substr(failed.out.rfind('\n') + 1), "1 passed, 1 failed");
  expect_refused(run_command({"check", written("no_table.csv", "a,b\n1,2\n")}), "Line 1");
}

}  // namespace
}  // namespace shoalwright
