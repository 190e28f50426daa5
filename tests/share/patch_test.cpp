// SPDX-License-Identifier: MIT
#include "share/patch.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "share/plan_json.h"
#include "support/plan_files.h"

namespace shoalwright {
namespace {

using nlohmann::json;

struct Example {
  const char *name, *document, *patch, *result;  ///< no result: the patch must be refused
};

// Documents, patches and results of RFC 6902, appendix A (from memory): A.1 to A.16. A.11 and A.13 are about reading a patch.
constexpr Example rfc[] = {
    {"A.1 adding an object member", R"({"foo":"bar"})", R"([{"op":"add","path":"/baz","value":"qux"}])",
     R"({"baz":"qux","foo":"bar"})"},
    {"A.2 adding an array element", R"({"foo":["bar","baz"]})", R"([{"op":"add","path":"/foo/1","value":"qux"}])",
     R"({"foo":["bar","qux","baz"]})"},
    {"A.3 removing an object member", R"({"baz":"qux","foo":"bar"})", R"([{"op":"remove","path":"/baz"}])", R"({"foo":"bar"})"},
    {"A.4 removing an array element", R"({"foo":["bar","qux","baz"]})", R"([{"op":"remove","path":"/foo/1"}])",
     R"({"foo":["bar","baz"]})"},
    {"A.5 replacing a value", R"({"baz":"qux","foo":"bar"})", R"([{"op":"replace","path":"/baz","value":"boo"}])",
     R"({"baz":"boo","foo":"bar"})"},
    {"A.6 moving a value", R"({"foo":{"bar":"baz","waldo":"fred"},"qux":{"corge":"grault"}})",
     R"([{"op":"move","from":"/foo/waldo","path":"/qux/thud"}])",
     R"({"foo":{"bar":"baz"},"qux":{"corge":"grault","thud":"fred"}})"},
    {"A.7 moving an array element", R"({"foo":["all","grass","cows","eat"]})",
     R"([{"op":"move","from":"/foo/1","path":"/foo/3"}])", R"({"foo":["all","cows","eat","grass"]})"},
    {"A.8 testing a value: success", R"({"baz":"qux","foo":["a",2,"c"]})",
     R"([{"op":"test","path":"/baz","value":"qux"},{"op":"test","path":"/foo/1","value":2}])",
     R"({"baz":"qux","foo":["a",2,"c"]})"},
    {"A.9 testing a value: error", R"({"baz":"qux"})", R"([{"op":"test","path":"/baz","value":"bar"}])", nullptr},
    {"A.10 adding a nested member object", R"({"foo":"bar"})", R"([{"op":"add","path":"/child","value":{"grandchild":{}}}])",
     R"({"foo":"bar","child":{"grandchild":{}}})"},
    {"A.11 ignoring unrecognized elements", R"({"foo":"bar"})", R"([{"op":"add","path":"/baz","value":"qux","xyz":123}])",
     R"({"foo":"bar","baz":"qux"})"},
    {"A.12 adding to a nonexistent target", R"({"foo":"bar"})", R"([{"op":"add","path":"/baz/bat","value":"qux"}])", nullptr},
    {"A.13 invalid JSON patch document", R"({"foo":"bar"})", R"([{"op":"add","path":"/baz","value":"qux","op":"remove"}])",
     nullptr},
    {"A.14 escape ordering", R"({"/":9,"~1":10})", R"([{"op":"test","path":"/~01","value":10}])", R"({"/":9,"~1":10})"},
    {"A.15 comparing strings and numbers", R"({"/":9,"~1":10})", R"([{"op":"test","path":"/~01","value":"10"}])", nullptr},
    {"A.16 adding an array value", R"({"foo":["bar"]})", R"([{"op":"add","path":"/foo/-","value":["abc","def"]}])",
     R"({"foo":["bar",["abc","def"]]})"},
};

// What the sections of RFC 6901 and 6902 say besides (section numbers from memory).
constexpr Example more[] = {
    {"6902 4: a member that exists is replaced by add", R"({"a":1})", R"([{"op":"add","path":"/a","value":2}])", R"({"a":2})"},
    {"6902 4.1: the whole document can be set", R"({"a":1})", R"([{"op":"add","path":"","value":[1]}])", "[1]"},
    {"6902 4.1: an index beyond the end", R"([1])", R"([{"op":"add","path":"/2","value":2}])", nullptr},
    {"6902 4.1: at the end by its index", R"([1])", R"([{"op":"add","path":"/1","value":2}])", "[1,2]"},
    {"6902 4.2: what is removed must be there", R"({"a":1})", R"([{"op":"remove","path":"/b"}])", nullptr},
    {"6902 4.3: what is replaced must be there", R"({"a":1})", R"([{"op":"replace","path":"/b","value":1}])", nullptr},
    {"6902 4.4: no move into itself", R"({"a":{"b":1}})", R"([{"op":"move","from":"/a","path":"/a/b/c"}])", nullptr},
    {"6902 4.4: a move to the same place", R"({"a":{"b":1}})", R"([{"op":"move","from":"/a","path":"/a"}])", R"({"a":{"b":1}})"},
    {"6902 4.5: copy", R"({"a":{"b":1}})", R"([{"op":"copy","from":"/a","path":"/c"}])", R"({"a":{"b":1},"c":{"b":1}})"},
    {"6902 4.5: copy into itself is fine", R"({"a":{"b":1}})", R"([{"op":"copy","from":"/a","path":"/a/c"}])",
     R"({"a":{"b":1,"c":{"b":1}}})"},
    {"6902 4.6: numbers by value", R"({"a":1.0})", R"([{"op":"test","path":"/a","value":1}])", R"({"a":1.0})"},
    {"6902 4.6: objects whatever their order", R"({"a":{"x":1,"y":[2]}})",
     R"([{"op":"test","path":"/a","value":{"y":[2],"x":1}}])", R"({"a":{"x":1,"y":[2]}})"},
    {"6902 5: all steps or none", R"({"a":1})", R"([{"op":"remove","path":"/a"},{"op":"remove","path":"/a"}])", nullptr},
    {"6901 4: no leading zeros", R"([1,2])", R"([{"op":"remove","path":"/01"}])", nullptr},
    {"6901 3: a lone tilde", R"({"~":1})", R"([{"op":"remove","path":"/~"}])", nullptr},
    {"6901 5: the empty key", R"({"":1,"a":2})", R"([{"op":"remove","path":"/"}])", R"({"a":2})"},
    {"an operation that is none", R"({"a":1})", R"([{"op":"mend","path":"/a","value":1}])", nullptr},
    {"a step without a path", R"({"a":1})", R"([{"op":"add","value":1}])", nullptr},
    {"a step without a value", R"({"a":1})", R"([{"op":"add","path":"/b"}])", nullptr},
    {"a patch that is no list", R"({"a":1})", R"({"op":"remove","path":"/a"})", nullptr},
};

void expect_as_told(const Example& example) {
  const Result<std::vector<PatchStep>> steps = read_patch(example.patch);
  const Result<std::string> patched = steps ? patch_json(example.document, *steps) : Result<std::string>(steps.error());
  if (example.result == nullptr) {
    ASSERT_FALSE(patched) << example.name << ": " << *patched;
    EXPECT_EQ(patched.error().sentence.back(), '.') << example.name;
    return;
  }
  ASSERT_TRUE(patched) << example.name << ": " << patched.error().sentence;
  EXPECT_EQ(json::parse(*patched), json::parse(example.result)) << example.name;
}

TEST(JsonPatch, DoesWhatTheStandardsExamplesShow) {
  for (const Example& example : rfc) expect_as_told(example);
}

TEST(JsonPatch, KeepsToTheLetterOfTheStandard) {
  for (const Example& example : more) expect_as_told(example);
}

const Plan& riverbank() {
  static const Plan plan = read_plan(test_file("plans/riverbank.json")).value();
  return plan;
}

TEST(PatchOfAPlan, ChangesWhatItNamesAndNothingElse) {
  const Result<Plan> patched = apply_patch(riverbank(), {{"replace", "/tank/lid", "false"}, {"replace", "/stock/0/count", "12"}});
  ASSERT_TRUE(patched);
  Plan expected = riverbank();
  expected.tank.lid = false;
  expected.stock[0].count = 12;
  EXPECT_EQ(*patched, expected);
}

TEST(PatchOfAPlan, ThatWouldLeaveNoPlanIsRefusedWithThePlaceOfTheFault) {
  EXPECT_FALSE(apply_patch(riverbank(), {{"remove", "/tank", ""}}));
  EXPECT_FALSE(apply_patch(riverbank(), {{"replace", "/tank", "null"}}));
  EXPECT_EQ(apply_patch(riverbank(), {{"replace", "/stock/0/count", "-1"}}).error().place, "/stock/0/count");
  EXPECT_EQ(apply_patch(riverbank(), {{"replace", "/stock/9/count", "1"}}).error().place, "/stock/9/count");
}

TEST(PatchOfAPlan, WithoutStepsGivesTheSamePlan) {
  for (const NamedPlan& named : all_plans()) EXPECT_EQ(*apply_patch(named.plan, {}), named.plan) << named.name;
}

TEST(Remedy, TakenUpIsTheKeepersDecision) {
  Plan plan = riverbank();
  plan.assumed = {"/gear", "/tank/lid"};
  const std::vector<PatchStep> steps = {{"replace", "/tank/lid", "false"}, {"replace", "/gear/heater_w", "200"}};
  EXPECT_TRUE(is_assumed(*apply_patch(plan, steps), "/tank/lid"));
  const Plan taken = take_remedy(plan, steps).value();
  EXPECT_FALSE(is_assumed(taken, "/tank/lid"));
  EXPECT_FALSE(is_assumed(taken, "/gear/heater_w"));
  EXPECT_TRUE(is_assumed(taken, "/gear/filter"));
  EXPECT_TRUE(is_assumed(taken, "/gear/surface"));
}

}  // namespace
}  // namespace shoalwright
