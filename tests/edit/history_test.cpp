// SPDX-License-Identifier: MIT
#include "edit/history.h"

#include <gtest/gtest.h>

namespace shoalwright {
namespace {

Plan named(const char* name) {
  Plan plan;
  plan.name = name;
  return plan;
}

TEST(Undo, GivesBackTheSamePlan) {
  History history = begin_history(named("a"));
  remember(history, named("b"), "Rename to b", "", 0);
  EXPECT_EQ(undo_name(history), "Rename to b");
  ASSERT_TRUE(undo(history));
  EXPECT_EQ(present(history), named("a"));
  EXPECT_FALSE(undo(history));
  ASSERT_TRUE(redo(history));
  EXPECT_EQ(present(history), named("b"));
  EXPECT_FALSE(redo(history));
}

TEST(Undo, StepsOfOneKindWithinASecondAreOneStep) {
  History history = begin_history(named("a"));
  remember(history, named("b"), "b", "name", 10);
  remember(history, named("c"), "c", "name", 10.5);
  remember(history, named("d"), "d", "name", 12);
  undo(history);
  EXPECT_EQ(present(history).name, "c");
  undo(history);
  EXPECT_EQ(present(history).name, "a");
}

TEST(Undo, OfADragThatCameBackWithinASecondIsNoStep) {
  History history = begin_history(named("a"));
  remember(history, named("b"), "b", "drag", 10);
  remember(history, named("a"), "a", "drag", 10.5);
  EXPECT_FALSE(undo(history));
  EXPECT_EQ(present(history).name, "a");
}

TEST(Undo, AnEditAfterUndoDropsWhatCouldBeRedone) {
  History history = begin_history(named("a"));
  remember(history, named("b"), "b", "", 0);
  undo(history);
  remember(history, named("c"), "c", "", 5);
  EXPECT_FALSE(redo(history));
  EXPECT_EQ(present(history).name, "c");
}

TEST(Undo, KeepsTwoHundredSteps) {
  History history = begin_history(named("start"));
  for (int i = 0; i < 300; ++i) remember(history, named(std::to_string(i).c_str()), "step", "", i * 10.0);
  int steps = 0;
  while (undo(history)) ++steps;
  EXPECT_EQ(steps, 200);
}

TEST(Undo, AnEditThatChangesNothingIsNoStep) {
  History history = begin_history(named("a"));
  remember(history, named("a"), "nothing", "", 0);
  EXPECT_FALSE(undo(history));
}

}  // namespace
}  // namespace shoalwright
