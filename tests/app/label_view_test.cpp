// SPDX-License-Identifier: MIT
// A trade word opens what is sold under it; what a shop has is ticked on the shelf, kept, and shown alone.
#include "views/label_view.h"

#include <gtest/gtest.h>

#include "app/fill.h"
#include "app/keep.h"

namespace shoalwright {
namespace {

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::string label_of_spot(Screen& screen, const std::string& id) {
  const Spots::Spot* spot = screen.spot(id);
  EXPECT_NE(spot, nullptr) << id;
  return spot ? spot->label : "";
}

std::vector<std::string> shown_with(const Screen& screen, const std::string& prefix) {
  std::vector<std::string> ids;
  for (const Spots::Spot& spot : screen.spots().list)
    if (spot.id.starts_with(prefix)) ids.push_back(spot.id.substr(prefix.size()));
  return ids;
}

void search_for(Screen& screen, const std::string& word) {
  screen.app().views.shelf.search = word;
  screen.frames(3);
  screen.rest();
}

TEST(LabelView, ATypedTradeWordOffersAllThatIsSoldUnderIt) {
  Screen screen({});
  search_for(screen, "cherry barb");
  EXPECT_EQ(screen.spot("shelf.label"), nullptr) << "one kind is no label";
  search_for(screen, "siamese algae eater");
  EXPECT_EQ(label_of_spot(screen, "shelf.label"), "Sold under this name: 3 kinds");
  screen.shoot("label-line");
  screen.click("shelf.label");
  screen.rest();
  EXPECT_EQ(screen.app().sheet, Sheet::label);
  EXPECT_EQ(shown_with(screen, "label.kind/"),
            (std::vector<std::string>{"crossocheilus-oblongus", "epalzeorhynchos-kalopterus", "gyrinocheilus-aymonieri"}));
  EXPECT_TRUE(has(label_of_spot(screen, "label.scale"), "1 13 cm, 2 13 cm, 3 25 cm")) << label_of_spot(screen, "label.scale");
  EXPECT_TRUE(has(label_of_spot(screen, "label.kind/gyrinocheilus-aymonieri"), "Grows to 25 cm"));
  EXPECT_TRUE(has(label_of_spot(screen, "label.more"), "Garra cambodgiensis"));
  screen.shoot("label-light");
}

TEST(LabelView, AKindOpensItsPageAndEscapeLeadsBackToTheLine) {
  Screen screen({});
  search_for(screen, "molly");
  screen.app().ui.focus_wanted = "shelf.label";
  screen.frames(4);
  screen.key(ImGuiKey_Enter);
  screen.frames(4);
  ASSERT_EQ(screen.app().sheet, Sheet::label);
  EXPECT_EQ(screen.app().ui.ring_id, "label.close") << "the keyboard is on the sheet";
  screen.key(ImGuiKey_Tab);
  EXPECT_EQ(screen.app().ui.ring_id, "label.kind/poecilia-sphenops");
  screen.key(ImGuiKey_Tab);
  EXPECT_EQ(screen.app().ui.ring_id, "label.kind/poecilia-latipinna");
  screen.key(ImGuiKey_Enter);
  screen.frames(4);
  EXPECT_EQ(screen.app().sheet, Sheet::species);
  EXPECT_EQ(screen.app().views.species_page.species, "poecilia-latipinna");
  screen.key(ImGuiKey_Escape);
  screen.frames(3);
  EXPECT_EQ(screen.app().sheet, Sheet::none);
  EXPECT_EQ(screen.app().ui.ring_id, "shelf.label");
  screen.key(ImGuiKey_Enter);
  screen.frames(4);
  screen.key(ImGuiKey_Escape);
  screen.frames(3);
  EXPECT_EQ(screen.app().sheet, Sheet::none);
  EXPECT_EQ(screen.app().ui.ring_id, "shelf.label");
}

TEST(LabelView, DrawsThemAtOneScaleAndInsideTheSheetEverywhere) {
  struct Window {
    const char* name;
    ScreenKind kind;
  };
  for (const Window& window : {Window{"dark", {.theme = Theme::dark}}, Window{"tablet", {.width = 1024, .height = 768}},
                               Window{"phone", {.width = 390, .height = 844, .touch = true}},
                               Window{"phone-dark", {.width = 390, .height = 844, .theme = Theme::dark, .touch = true}}}) {
    Screen screen(window.kind);
    for (const char* word : {"common pleco", "chili rasbora"}) {
      carry_out(screen.app(), {ShowLabel{word}});
      screen.frames(4);
      screen.rest();
      const Spots::Spot* scale = screen.spot("label.scale");
      ASSERT_NE(scale, nullptr) << window.name;
      EXPECT_GE(scale->min.x, 0) << window.name;
      EXPECT_LE(scale->max.x, window.kind.width) << window.name;
      EXPECT_GE(shown_with(screen, "label.kind/").size(), 2u) << window.name;
      screen.shoot(std::string("label-") + (word[1] == 'o' ? "pleco-" : "chili-") + window.name);
    }
  }
}

TEST(MyShop, IsTickedOnTheShelfKeptOnTheDeviceAndShownAlone) {
  Screen screen({});
  screen.click("shelf.filter/shop");
  screen.rest();
  EXPECT_TRUE(has(label_of_spot(screen, "shelf.shop"), "nothing ticked"));
  EXPECT_TRUE(shown_with(screen, "shelf.row/").empty());
  screen.shoot("shop-empty");
  screen.click("shelf.shop/tick");
  screen.rest();
  EXPECT_GT(shown_with(screen, "shelf.row/").size(), 5u) << "all kinds, to be ticked";
  for (const std::pair<const char*, const char*>& one :
       {std::pair("Paracheirodon innesi", "paracheirodon-innesi"), std::pair("guppy", "poecilia-reticulata"),
        std::pair("bala shark", "balantiocheilos-melanopterus")}) {
    search_for(screen, one.first);
    screen.click(std::string("shelf.row/") + one.second);
    screen.rest();
  }
  EXPECT_FALSE(screen.app().held) << "a row that is ticked is not picked up";
  EXPECT_EQ(screen.app().preferences.shop,
            (std::vector<std::string>{"paracheirodon-innesi", "poecilia-reticulata", "balantiocheilos-melanopterus"}));
  EXPECT_EQ(kept_preferences().shop, screen.app().preferences.shop);
  search_for(screen, "neon");
  screen.shoot("shop-ticking");
  screen.click("shelf.shop/tick");
  screen.rest();
  const std::vector<std::string> rows = shown_with(screen, "shelf.row/");
  EXPECT_EQ(rows.size(), 3u);
  EXPECT_EQ(rows.back(), "balantiocheilos-melanopterus") << "closest fit first: it has no room here";
  EXPECT_TRUE(has(label_of_spot(screen, "shelf.shop"), "My shop has 3 kinds")) << label_of_spot(screen, "shelf.shop");
  screen.shoot("shop-light");
  // Once more on a row takes it out.
  screen.click("shelf.shop/tick");
  search_for(screen, "bala shark");
  screen.click("shelf.row/balantiocheilos-melanopterus");
  EXPECT_EQ(screen.app().preferences.shop.size(), 2u);
}

TEST(MyShop, IsReachedByTheKeyboard) {
  Screen screen({});
  screen.app().ui.focus_wanted = "shelf.filter/shop";
  screen.frames(4);
  screen.key(ImGuiKey_Space);
  screen.rest();
  screen.app().ui.focus_wanted = "shelf.shop/tick";
  screen.frames(4);
  screen.key(ImGuiKey_Enter);
  screen.rest();
  ASSERT_TRUE(screen.app().views.shelf.ticking);
  search_for(screen, "cherry barb");
  screen.app().ui.focus_wanted = "shelf.row/rohanella-titteya";
  screen.frames(4);
  screen.key(ImGuiKey_Enter);
  EXPECT_EQ(screen.app().preferences.shop, (std::vector<std::string>{"rohanella-titteya"}));
  screen.key(ImGuiKey_Space);
  EXPECT_TRUE(screen.app().preferences.shop.empty());
}

TEST(MyShop, FitsAPhoneAndTheDark) {
  for (const Theme theme : {Theme::light, Theme::dark}) {
    Screen screen({.width = 390, .height = 844, .theme = theme, .touch = true});
    Preferences preferences = screen.app().preferences;
    preferences.shop = {"paracheirodon-innesi", "hoplisoma-sterbai", "balantiocheilos-melanopterus", "betta-splendens"};
    carry_out(screen.app(), {SetPreferences{preferences}});
    screen.app().views.shelf.filter.in_shop = true;
    screen.frames(4);
    screen.rest();
    bring(screen, "shelf.shop/tick", {195, 600});
    screen.shoot(theme == Theme::light ? "shop-phone" : "shop-phone-dark");
    screen.click("shelf.shop/tick");
    screen.rest();
    EXPECT_TRUE(screen.app().views.shelf.ticking);
    screen.shoot(theme == Theme::light ? "shop-ticking-phone" : "shop-ticking-phone-dark");
  }
}

TEST(ShelfGroups, OneGroupOfTheCatalogueAlone) {
  Screen screen({});
  screen.click("shelf.group");
  screen.rest();
  screen.shoot("shelf-groups");
  screen.click("shelf.group/sharks");
  screen.rest();
  const std::vector<std::string> rows = shown_with(screen, "shelf.row/");
  EXPECT_EQ(screen.app().views.shelf.rows.kinds.size(), 11u);
  ASSERT_FALSE(rows.empty());
  for (const Species* kind : screen.app().views.shelf.rows.kinds) EXPECT_EQ(kind->group, "sharks");
  screen.shoot("shelf-sharks");
  screen.click("shelf.group");
  screen.rest();
  screen.click("shelf.group/all");
  screen.rest();
  EXPECT_GT(screen.app().views.shelf.rows.kinds.size(), 500u);
}

}  // namespace
}  // namespace shoalwright
