// SPDX-License-Identifier: MIT
#include "units/result.h"

#include <gtest/gtest.h>

namespace shoalwright {
namespace {

TEST(Result, HoldsEitherTheValueOrTheError) {
  const Result<int> good = 7;
  ASSERT_TRUE(good);
  EXPECT_EQ(*good, 7);
  const Result<int> bad = Error{"/tank/height_cm", "The height must be above 0 cm."};
  EXPECT_FALSE(bad);
  EXPECT_EQ(bad.error().place, "/tank/height_cm");
}

}  // namespace
}  // namespace shoalwright
