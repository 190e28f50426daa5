// SPDX-License-Identifier: MIT
// Any text after "#p=" gives either a plan or one sentence: never a crash, a hang or half a plan. Run under the sanitizers by
// tests/run san.
#include <gtest/gtest.h>

#include "fuzz/texts.h"
#include "plan/check.h"
#include "share/detail/base64url.h"
#include "share/detail/deflate.h"
#include "share/link.h"
#include "share/plan_json.h"
#include "support/plan_files.h"
#include "support/random_plan.h"

namespace shoalwright {
namespace {

/// Whatever it was made of: a valid plan that its own link gives back, or one sentence.
bool opens_or_says_why(const std::string& link) {
  const Result<Plan> plan = decode_link(link, the_catalog());
  if (!plan) return !plan.error().sentence.empty() && plan.error().sentence.back() == '.';
  if (check_plan(*plan)) return false;
  const Result<Plan> again = decode_link(encode_link(*plan, the_catalog(), true), the_catalog());
  return again && *again == *plan;
}

std::string sealed(const std::string& version_and_body) {
  const std::uint32_t sum = crc32_of(version_and_body);
  std::string bytes(1, version_and_body[0]);
  for (int shift = 24; shift >= 0; shift -= 8) bytes += static_cast<char>(sum >> shift);
  return "#p=" + base64url(bytes + version_and_body.substr(1));
}

/// The version and the packed plan of a link, so that they can be damaged under a checksum that is right.
std::string unsealed(const std::string& link) {
  const std::string bytes = bytes_of_base64url(std::string_view(link).substr(3)).value();
  return bytes[0] + bytes.substr(5);
}

TEST(HostileLink, OfTheCorpusOpensNothingOrAPlan) {
  const std::vector<std::string> files = files_of("fuzz/corpus", ".link");
  ASSERT_GE(files.size(), 10u);
  for (const std::string& name : files) EXPECT_TRUE(opens_or_says_why(test_file("fuzz/corpus/" + name))) << name;
}

TEST(HostileLink, OfRandomCharactersOpensNothing) {
  constexpr std::string_view letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
  Dice dice(1);
  for (int i = 0; i < 30000; ++i) {
    std::string link = "#p=";
    for (int left = dice.below(200); left > 0; --left) link += dice.pick(letters);
    ASSERT_TRUE(opens_or_says_why(link)) << link;
  }
}

TEST(HostileLink, WithARightChecksumAroundRandomBytesOpensNothingOrAPlan) {
  Dice dice(2);
  int opened = 0;
  for (int i = 0; i < 30000; ++i) {
    std::string body(1, '\1');
    for (int left = dice.below(150); left > 0; --left) body += static_cast<char>(dice.below(dice.percent(30) ? 4 : 256));
    const std::string link = sealed(body);
    ASSERT_TRUE(opens_or_says_why(link)) << link;
    if (decode_link(link, the_catalog())) ++opened;
  }
  EXPECT_LT(opened, 30000);
}

TEST(HostileLink, MadeFromAGoodOneUnderARightChecksumOpensNothingOrAPlan) {
  Dice dice(3);
  std::vector<std::string> good;
  for (const NamedPlan& named : all_plans()) good.push_back(unsealed(encode_link(named.plan, the_catalog(), true)));
  for (std::uint64_t seed = 0; seed < 30; ++seed)
    good.push_back(unsealed(encode_link(random_plan(seed, the_catalog()), the_catalog())));
  for (int i = 0; i < 30000; ++i) {
    std::string body = dice.pick(good);
    body = '\1' + mutated(body.substr(1), dice);
    const std::string link = sealed(body);
    ASSERT_TRUE(opens_or_says_why(link)) << link;
  }
}

TEST(HostileLink, ThatAsksForEndlessWorkIsRefusedAtOnce) {
  // Lists of the greatest length around next to no bytes: what is read past the end has no end of its own.
  for (const char fill : {'\0', '\xff', '\x7f', '\x80', '\xaa'})
    for (const std::size_t length : {1u, 40u, 4000u, 400000u})
      EXPECT_TRUE(opens_or_says_why(sealed('\1' + std::string(length, fill))));
}

}  // namespace
}  // namespace shoalwright
