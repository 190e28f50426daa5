// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>
#include <zlib.h>

#include <span>
#include <string>

#include "share/detail/base64url.h"
#include "share/detail/bits.h"
#include "share/detail/deflate.h"
#include "share/detail/link_tables.h"
#include "support/dice.h"

namespace shoalwright {
namespace {

TEST(Base64Url, EncodesTheVectorsOfItsStandard) {
  // RFC 4648 section 10, without the padding that section 5 lets us leave out.
  const std::pair<const char*, const char*> vectors[] = {
      {"", ""}, {"f", "Zg"}, {"fo", "Zm8"}, {"foo", "Zm9v"}, {"foob", "Zm9vYg"}, {"fooba", "Zm9vYmE"}, {"foobar", "Zm9vYmFy"}};
  for (const auto& [plain, encoded] : vectors) {
    EXPECT_EQ(base64url(plain), encoded);
    EXPECT_EQ(bytes_of_base64url(encoded), plain);
  }
}

TEST(Base64Url, UsesTheAlphabetThatIsSafeInAnAddress) {
  // RFC 4648 section 5: 62 is "-", 63 is "_"; section 4 has "+" and "/" there.
  EXPECT_EQ(base64url("\xfb\xef\xbe\xff\xff\xff"), "----____");
  EXPECT_EQ(bytes_of_base64url("----____"), "\xfb\xef\xbe\xff\xff\xff");
  EXPECT_FALSE(bytes_of_base64url("++++"));
  EXPECT_FALSE(bytes_of_base64url("////"));
  EXPECT_FALSE(bytes_of_base64url("Zg=="));
}

TEST(Base64Url, RefusesStrayBitsAndLengthsThatNoBytesHave) {
  // RFC 4648 section 3.5: the pad bits are zero in every encoding; a decoder may refuse others.
  EXPECT_FALSE(bytes_of_base64url("Zh"));
  EXPECT_FALSE(bytes_of_base64url("Zm9"));
  EXPECT_FALSE(bytes_of_base64url("Z"));
  EXPECT_FALSE(bytes_of_base64url("Zm9vY"));
}

TEST(Crc32, GivesTheCheckValueOfItsKind) {
  // The sum of "123456789" by which CRC-32 of gzip and ITU-T V.42 is told from others (check value as in Williams, R.N. 1993, "A
  // painless guide to CRC error detection algorithms"; from memory).
  EXPECT_EQ(crc32_of("123456789"), 0xCBF43926u);
  EXPECT_EQ(crc32_of(""), 0u);
}

TEST(Inflate, ReadsStreamsWrittenByHandAfterTheStandard) {
  // RFC 1951 section 3.2.4: one stored block. Section 3.2.6: "a" (code 10010001) and the end (0000000) by the fixed codes.
  EXPECT_EQ(inflate_text(std::string("\x01\x05\x00\xfa\xffhello", 10), 5), "hello");
  EXPECT_EQ(inflate_text(std::string("\x4b\x04\x00", 3), 1), "a");
}

TEST(Inflate, TakesNothingButExactlyTheTextThatWasPacked) {
  const std::string text = "Keep the lid closed. Keep the lid closed.";
  const std::string packed = deflate_text(text);
  EXPECT_EQ(inflate_text(packed, text.size()), text);
  EXPECT_FALSE(inflate_text(packed, text.size() - 1));
  EXPECT_FALSE(inflate_text(packed, text.size() + 1));
  EXPECT_FALSE(inflate_text(packed + "x", text.size()));
  EXPECT_FALSE(inflate_text(packed.substr(0, packed.size() - 1), text.size()));
  EXPECT_FALSE(inflate_text("", 0));
}

TEST(Deflate, WritesWhatAnyReaderOfTheStandardCanRead) {
  // RFC 1951 by zlib's own reader, with our dictionary as its history.
  for (const std::string& text : {std::string("x"), std::string("\0\xff\x80 water", 9), std::string(70000, 'w')}) {
    const std::string packed = deflate_text(text);
    z_stream stream{};
    ASSERT_EQ(inflateInit2(&stream, -15), Z_OK);
    const std::string_view known = dictionary_v1();
    ASSERT_EQ(inflateSetDictionary(&stream, reinterpret_cast<const Bytef*>(known.data()), static_cast<uInt>(known.size())), Z_OK);
    std::string out(text.size() + 10, '\0');
    stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(packed.data()));
    stream.avail_in = static_cast<uInt>(packed.size());
    stream.next_out = reinterpret_cast<Bytef*>(out.data());
    stream.avail_out = static_cast<uInt>(out.size());
    EXPECT_EQ(inflate(&stream, Z_FINISH), Z_STREAM_END);
    EXPECT_EQ(out.substr(0, stream.total_out), text);
    inflateEnd(&stream);
  }
}

TEST(PackedBits, ComeBackAsTheyWentIn) {
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    Dice write_dice(seed), read_dice(seed);
    const int count = write_dice.below(400), share = write_dice.below(101);
    read_dice.below(1), read_dice.below(1);
    BitWriter writer;
    Chance bits = zero_in(90), others;
    for (int i = 0; i < count; ++i) {
      writer.bit(i % 3 == 0 ? others : bits, write_dice.percent(share));
      const auto total = static_cast<std::uint32_t>(write_dice.whole(1, 65536));
      writer.uniform(static_cast<std::uint32_t>(write_dice.below(static_cast<int>(total))), total);
    }
    const std::string bytes = writer.finish();
    BitReader reader(bytes);
    Chance read_bits = zero_in(90), read_others;
    for (int i = 0; i < count; ++i) {
      ASSERT_EQ(reader.bit(i % 3 == 0 ? read_others : read_bits), read_dice.percent(share)) << seed << ' ' << i;
      const auto total = static_cast<std::uint32_t>(read_dice.whole(1, 65536));
      ASSERT_EQ(reader.uniform(total), static_cast<std::uint32_t>(read_dice.below(static_cast<int>(total)))) << seed << ' ' << i;
    }
    EXPECT_FALSE(reader.overrun());
  }
}

TEST(PackedBits, ThatComeAsExpectedCostNextToNothing) {
  // Shannon's bound for 1000 bits of which none surprises a coder that learns: far below one bit each.
  BitWriter writer;
  Chance chance = zero_in(97);
  for (int i = 0; i < 1000; ++i) writer.bit(chance, false);
  EXPECT_LE(writer.finish().size(), 8u);
}

// Words of version 1 keep their numbers for ever, or old links would open as other plans. Sums as they were when version 1
// landed, over the words that were there then; new words go to the end.
std::uint32_t sum_of(std::span<const std::string_view> words, std::size_t first) {
  std::string all;
  for (std::size_t i = 0; i < first; ++i) all += std::string(words[i]) + ' ';
  return crc32_of(all);
}

TEST(WordNumbers, NeverChange) {
  EXPECT_EQ(sum_of(link_piece_kinds, 44), 3236173480u);
  EXPECT_EQ(sum_of(link_salts, 13), 3166333413u);
  EXPECT_EQ(sum_of(link_filter_kinds, 9), 3820204182u);
  EXPECT_EQ(sum_of(link_rules, 54), 2078134382u);
  EXPECT_EQ(sum_of(link_pointers, link_pointers.size()), 1827451196u);
  EXPECT_EQ(sum_of(link_entry_keys, 16), 1161095020u);
  EXPECT_EQ(crc32_of(dictionary_v1()), 2999480381u);
}

}  // namespace
}  // namespace shoalwright
