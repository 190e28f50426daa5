// SPDX-License-Identifier: MIT
// The packed cards are the cards: what a start reads quickly is what the checked reader makes of the files.
#include "catalog/builtin.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "built_in.h"
#include "units/packed_json.h"

namespace shoalwright {
namespace {

using namespace std::string_view_literals;

TEST(Builtin, IsWhatTheFilesSay) {
  const Catalog packed = builtin_catalog();
  ASSERT_EQ(packed.species.size(), built_in().species.size());
  for (std::size_t i = 0; i < packed.species.size(); ++i)
    EXPECT_TRUE(packed.species[i] == built_in().species[i]) << packed.species[i].id;
}

void expect_same(const Json& packed, const nlohmann::json& written, const std::string& place) {
  switch (packed.kind) {
    case Json::Kind::null: EXPECT_TRUE(written.is_null()) << place; break;
    case Json::Kind::boolean: EXPECT_TRUE(written.is_boolean() && written.get<bool>() == packed.boolean) << place; break;
    case Json::Kind::number: EXPECT_TRUE(written.is_number() && written.get<double>() == packed.number) << place; break;
    case Json::Kind::text: EXPECT_TRUE(written.is_string() && written.get<std::string>() == packed.text) << place; break;
    case Json::Kind::list:
      ASSERT_TRUE(written.is_array() && written.size() == packed.items.size()) << place;
      for (std::size_t i = 0; i < packed.items.size(); ++i)
        expect_same(packed.items[i], written[i], place + "/" + std::to_string(i));
      break;
    case Json::Kind::object:
      ASSERT_TRUE(written.is_object() && written.size() == packed.members.size()) << place;
      for (const JsonMember& member : packed.members) {
        ASSERT_TRUE(written.contains(member.key)) << place << "/" << member.key;
        expect_same(member.value, written[member.key], place + "/" + member.key);
      }
      break;
  }
}

TEST(Builtin, HoldsEveryValueOfTheFilesBitForBit) {
  nlohmann::json cards = nlohmann::json::parse(card_texts(), nullptr, false);
  std::sort(cards.begin(), cards.end(), [](const auto& a, const auto& b) { return a["code"] < b["code"]; });
  expect_same(unpack_json(builtin_cards()), cards, "");
}

TEST(PackedJson, ReadsEveryKindAsLaidOut) {
  // Three texts; then {"a": [null, false, true, -12.5, 300], "": "bc"}.
  const Json value = unpack_json("\3\1a\0\2bc\6\2\0\5\5\0\1\2\3\xfb\1\1\3\xd8\4\0\1\4\2"sv);
  ASSERT_EQ(value.kind, Json::Kind::object);
  const Json *list = find(value, "a"), *text = find(value, "");
  ASSERT_TRUE(list && text);
  ASSERT_EQ(list->items.size(), 5u);
  EXPECT_EQ(list->items[0].kind, Json::Kind::null);
  EXPECT_FALSE(list->items[1].boolean);
  EXPECT_TRUE(list->items[2].boolean);
  EXPECT_EQ(list->items[3].number, -12.5);
  EXPECT_EQ(list->items[4].number, 300);
  EXPECT_EQ(text->text, "bc");
}

}  // namespace
}  // namespace shoalwright
