// SPDX-License-Identifier: MIT
#include "units/order.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <memory>
#include <string>

#include "support/dice.h"

namespace shoalwright {
namespace {

TEST(Order, SortsAsTheStandardLibraryDoesAndKeepsTheOrderOfEquals) {
  Dice dice(7);
  for (int round = 0; round < 200; ++round) {
    std::vector<std::pair<int, int>> items;
    for (int i = 0; i < round; ++i) items.push_back({dice.below(9), i});
    auto expected = items;
    const auto less = [](const auto& a, const auto& b) { return a.first < b.first; };
    std::stable_sort(expected.begin(), expected.end(), less);
    sort_stable(items, less);
    EXPECT_EQ(items, expected);
  }
}

TEST(Order, MovesWhatCannotBeCopied) {
  std::vector<std::unique_ptr<std::string>> items;
  for (const char* name : {"tetra", "barb", "loach"}) items.push_back(std::make_unique<std::string>(name));
  sort_stable(items, [](const auto& a, const auto& b) { return *a < *b; });
  EXPECT_EQ(*items[0], "barb");
  EXPECT_EQ(*items[2], "tetra");
}

}  // namespace
}  // namespace shoalwright
