// SPDX-License-Identifier: MIT
#include "share/link.h"

#include <gtest/gtest.h>
#include <zlib.h>

#include <algorithm>
#include <iostream>

#include "assess/assess.h"
#include "plan/check.h"
#include "share/assessment_json.h"
#include "share/detail/base64url.h"
#include "share/detail/deflate.h"
#include "share/detail/link_plan.h"
#include "share/plan_json.h"
#include "support/plan_files.h"
#include "support/random_plan.h"
#include "tank/volume.h"

namespace shoalwright {
namespace {

const Catalog& known() { return the_catalog(); }

std::vector<NamedPlan> many_plans(PlanTaste taste = {}) {
  std::vector<NamedPlan> plans = all_plans();
  for (std::uint64_t seed = 0; seed < 200; ++seed)
    plans.push_back(NamedPlan{.name = "random " + std::to_string(seed), .plan = random_plan(seed, known(), taste)});
  return plans;
}

const Plan& bench() {
  static const Plan plan = read_plan(test_file("plans/bench-8-14.json")).value();
  return plan;
}

bool is_one_sentence(const std::string& text) {
  return !text.empty() && text.back() == '.' && text.find('\n') == std::string::npos && text[0] >= 'A' && text[0] <= 'Z';
}

void expect_refused(const std::string& link, const std::string& about) {
  const Result<Plan> plan = decode_link(link, known());
  ASSERT_FALSE(plan) << about;
  EXPECT_TRUE(is_one_sentence(plan.error().sentence)) << about << ": " << plan.error().sentence;
}

/// Raw deflate (RFC 1951) at zlib's best, base64url: the plain way to put a plan into a link.
std::size_t plain_length(const std::string& text) {
  z_stream stream{};
  EXPECT_EQ(deflateInit2(&stream, Z_BEST_COMPRESSION, Z_DEFLATED, -15, 9, Z_DEFAULT_STRATEGY), Z_OK);
  std::string packed(deflateBound(&stream, static_cast<uLong>(text.size())), '\0');
  stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(text.data()));
  stream.avail_in = static_cast<uInt>(text.size());
  stream.next_out = reinterpret_cast<Bytef*>(packed.data());
  stream.avail_out = static_cast<uInt>(packed.size());
  EXPECT_EQ(deflate(&stream, Z_FINISH), Z_STREAM_END);
  packed.resize(stream.total_out);
  deflateEnd(&stream);
  return base64url(packed).size();
}

TEST(Link, GivesBackTheSamePlanAndTheSameLink) {
  for (const NamedPlan& named : many_plans({.log = true})) {
    const std::string link = encode_link(named.plan, known(), true);
    const Result<Plan> opened = decode_link(link, known());
    ASSERT_TRUE(opened) << named.name << ": " << opened.error().sentence;
    EXPECT_EQ(*opened, named.plan) << named.name;
    EXPECT_EQ(encode_link(*opened, known(), true), link) << named.name;
  }
}

TEST(Link, GivesBackTheSameAssessment) {
  for (const NamedPlan& named : all_plans()) {
    const Result<Plan> opened = decode_link(encode_link(named.plan, known(), true), known());
    ASSERT_TRUE(opened) << named.name;
    EXPECT_EQ(assessment_json(assess(*opened, known())), assessment_json(assess(named.plan, known()))) << named.name;
  }
}

TEST(Link, IsEqualForEqualPlansAndOnlyForThose) {
  std::vector<std::string> links;
  for (const NamedPlan& named : many_plans()) {
    links.push_back(encode_link(named.plan, known()));
    EXPECT_EQ(encode_link(read_plan(plan_json(named.plan)).value(), known()), links.back()) << named.name;
  }
  std::sort(links.begin(), links.end());
  EXPECT_EQ(std::adjacent_find(links.begin(), links.end()), links.end());
}

TEST(Link, IsMadeOfLettersThatNeedNoEscapeInAFragment) {
  // RFC 3986 section 2.3, unreserved characters.
  for (const NamedPlan& named : many_plans()) {
    const std::string link = encode_link(named.plan, known());
    ASSERT_EQ(link.rfind("#p=", 0), 0u);
    for (const char c : link.substr(3))
      ASSERT_TRUE(std::isalnum(static_cast<unsigned char>(c)) || c == '-' || c == '_') << named.name;
  }
}

TEST(Link, IsReadFromAWholeAddressFromItsEndAndFromTheBareText) {
  const std::string link = encode_link(bench(), known());
  for (const std::string& text : {link, link.substr(3), "http://localhost:8080/" + link, "https://example.org/tank/?a=b" + link,
                                  "  " + link + "\n", link.substr(0, 60) + "\r\n" + link.substr(60)}) {
    const Result<Plan> opened = decode_link(text, known());
    ASSERT_TRUE(opened) << text;
    EXPECT_EQ(*opened, bench()) << text;
  }
}

TEST(Link, CarriesTheLogOnlyWhenAsked) {
  const Plan plan = read_plan(test_file("plans/unknown-keys.json")).value();
  ASSERT_FALSE(plan.log_json.empty());
  const std::string without = encode_link(plan, known()), with = encode_link(plan, known(), true);
  EXPECT_LT(without.size(), with.size());
  EXPECT_EQ(*decode_link(with, known()), plan);
  Plan expected = plan;
  expected.log_json.clear();
  EXPECT_EQ(*decode_link(without, known()), expected);
}

TEST(Link, NamesSpeciesByCodeSoThatARenamedOneStillOpens) {
  Catalog later = known();
  for (Species& species : later.species)
    if (species.id == "trigonostigma-heteromorpha") species.id = "trigonostigma-renamed";
  const Result<Plan> opened = decode_link(encode_link(bench(), known()), later);
  ASSERT_TRUE(opened);
  EXPECT_EQ(opened->stock[0].species, "trigonostigma-renamed");
}

TEST(Link, ToASpeciesThatThisVersionDoesNotKnowOpensNothing) {
  Catalog earlier = known();
  earlier.species.pop_back();
  Plan plan = bench();
  plan.stock[0].species = known().species.back().id;
  const Result<Plan> opened = decode_link(encode_link(plan, known()), earlier);
  ASSERT_FALSE(opened);
  EXPECT_NE(opened.error().sentence.find("newest version"), std::string::npos);
}

TEST(Link, OfYesterdayOpensToday) {
  // Made when version 1 landed. These two must open as these plans for ever.
  const Result<Plan> minimal = decode_link("#p=ATOEMTMCstoom4t86HeaIZtlBkYp", known());
  ASSERT_TRUE(minimal) << minimal.error().sentence;
  EXPECT_EQ(*minimal, read_plan(test_file("plans/minimal.json")).value());
  const Result<Plan> fighter = decode_link(
      "#p=AXnDpHZ9_s7tiWZIZQoDM0LaboVI5jpnQpB6lTi9jQ8bf1FyvLLbkFPd0dGlLXyhDZcoNNAiWh3HaB0-c7AlXXv0MFWioQFKS0-"
      "zSKaSDnexEMlycIHmLG074LpnBjY8uQg2hwtAKbnQn2blwArK9vclCIY6VDECm-E0W2I",
      known());
  ASSERT_TRUE(fighter) << fighter.error().sentence;
  EXPECT_EQ(*fighter, read_plan(test_file("plans/fighter-cube.json")).value());
  // Made when version 2 landed.
  Plan hills = read_plan(test_file("plans/riverbank.json")).value();
  hills.substrate.line_cm = {{0, 0}, {22, 9.5}, {40.5, -2}, {72.3, 4}, {88.4, 4}};
  const Result<Plan> hilly = decode_link(
      "#p=AlEZyKSRexifejloONoPMuFhOTfTMTdJVxAuyYUovcBmtcsfaSoy-fEktxdKB2e_hZCJvfTyBPBTxnnTbYsGC0r9x0SBAO11RJ0oSZ-"
      "jo95AjRp47GRiWFkZ5KJoToJY-VOppLO8B7rsK59chVf3Cl-XD-0-hPpwtq8Ay6-9fhtP1rPwvtWqkI-1Vm-149lixxnYf8ulT8XTed2r1u8py"
      "acl79qbCdk2_Th1R1XKG7I3Bv3GVsM-6AJYzpgC_LI",
      known());
  ASSERT_TRUE(hilly) << hilly.error().sentence;
  EXPECT_EQ(*hilly, hills);
}

TEST(DamagedLink, WithAnySingleCharacterChangedOpensNothing) {
  constexpr std::string_view letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_=+/.% #\n";
  for (const char* name : {"plans/riverbank.json", "plans/minimal.json"}) {
    const std::string link = encode_link(read_plan(test_file(name)).value(), known());
    for (std::size_t i = 0; i < link.size(); ++i)
      for (const char c : letters) {
        std::string changed = link;
        changed[i] = c;
        if (c != link[i]) expect_refused(changed, "character " + std::to_string(i) + " to " + c);
      }
  }
}

TEST(DamagedLink, CutAnywhereOpensNothing) {
  const std::string link = encode_link(bench(), known());
  for (std::size_t length = 0; length < link.size(); ++length)
    expect_refused(link.substr(0, length), "cut to " + std::to_string(length));
  const Result<Plan> cut = decode_link(link.substr(0, link.size() - 10), known());
  ASSERT_FALSE(cut);
  EXPECT_NE(cut.error().sentence.find("damaged"), std::string::npos) << cut.error().sentence;
}

TEST(DamagedLink, WithCharactersSwappedDoubledOrAddedOpensNothing) {
  const std::string link = encode_link(bench(), known());
  for (std::size_t i = 3; i + 1 < link.size(); ++i) {
    std::string swapped = link;
    std::swap(swapped[i], swapped[i + 1]);
    if (swapped != link) expect_refused(swapped, "swapped at " + std::to_string(i));
    expect_refused(std::string(link).insert(i, 1, link[i]), "doubled at " + std::to_string(i));
  }
  for (const char* more : {"A", ".", ")", "AAAA", "%20", "&x=1", "=="}) expect_refused(link + more, more);
}

/// A link of any version around any packed bytes, with a checksum that is right.
std::string forged(unsigned char version, const std::string& body) {
  std::string checked(1, static_cast<char>(version));
  const std::uint32_t sum = crc32_of(checked + body);
  for (int shift = 24; shift >= 0; shift -= 8) checked += static_cast<char>(sum >> shift);
  return "#p=" + base64url(checked + body);
}

TEST(NewerLink, IsToldFromADamagedOneByOneSentence) {
  for (int version = 3; version < 256; ++version) {
    const Result<Plan> plan = decode_link(forged(static_cast<unsigned char>(version), "what is to come"), known());
    ASSERT_FALSE(plan);
    EXPECT_NE(plan.error().sentence.find("newer"), std::string::npos) << version << ": " << plan.error().sentence;
    EXPECT_TRUE(is_one_sentence(plan.error().sentence));
  }
  EXPECT_NE(decode_link(forged(0, "before"), known()).error().sentence.find("damaged"), std::string::npos);
}

/// The version that stands in front of a link.
int version_of(const std::string& link) { return static_cast<unsigned char>((*bytes_of_base64url(link.substr(3)))[0]); }

TEST(LinkWithATerrainLine, IsOfVersion2AndOpensAsItIs) {
  Plan plan = bench();
  const std::string slope = encode_link(plan, known());
  EXPECT_EQ(version_of(slope), 1) << "older programs open what has no line";
  ASSERT_NE(plan.substrate.kind, SubstrateKind::bare);
  for (const std::vector<LinePoint>& line : {std::vector<LinePoint>{{12, 3}},
                                             {{0, -1.5}, {12.3, 8}, {30, 8}, {41.77, 0.123456}},
                                             {{0, 1.0 / 3}, {inside_length_cm(plan.tank), 4}}}) {
    plan.substrate.line_cm = line;
    const std::string link = encode_link(plan, known());
    EXPECT_EQ(version_of(link), 2);
    const Result<Plan> opened = decode_link(link, known());
    ASSERT_TRUE(opened) << opened.error().sentence;
    EXPECT_EQ(*opened, plan);
    EXPECT_EQ(encode_link(*opened, known()), link);
    EXPECT_NE(link, slope);
  }
  // Points as the hand draws them, on half a centimetre, cost a few letters each.
  plan.substrate.line_cm = {{0, 0}, {14.5, 6}, {22, 9.5}, {31, 3}, {50, 0}, {72.5, -1}, {88, 2}};
  EXPECT_LT(encode_link(plan, known()).size(), slope.size() + 7 * 4);
}

TEST(LinkOfAnOlderProgram, ThatKeptALineAsAnUnknownKeyOpensWithTheLine) {
  Plan kept = bench();
  kept.substrate.other_keys = "{\"line_cm\":[[10,2],[20,6]],\"tilt\":3}";
  LinkCoder gatherer = LinkCoder::gatherer(known()), writer = LinkCoder::writer(known());
  code_plan(gatherer, kept, false, 1);
  writer.texts(gatherer.gathered());
  code_plan(writer, kept, false, 1);
  const Result<Plan> opened = decode_link(forged(1, writer.finish()), known());
  ASSERT_TRUE(opened) << opened.error().sentence;
  EXPECT_EQ(opened->substrate.line_cm, (std::vector<LinePoint>{{10, 2}, {20, 6}}));
  EXPECT_EQ(opened->substrate.other_keys, "{\"tilt\":3}");
}

TEST(NoLink, IsRefusedByOneSentence) {
  for (const char* text :
       {"", "#p=", "#", "hello", "http://example.org/", "#q=AAAA", "#p=#p=", "AAAA", "#p=AQ", "#p=////", "ÄÖÜ", "\xff\xff",
        "<img src=x onerror=alert(1)>", "javascript:alert(1)", "{\"format\":\"shoalwright-plan\"}"})
    expect_refused(text, text);
  expect_refused(std::string(20 * 1024 * 1024, 'A'), "twenty million characters");
  expect_refused(std::string("#p=\0\0\0\0", 7), "zeros");
}

TEST(AbsurdLink, OfACountThatNoTankHoldsIsRefused) {
  // An invalid plan is packed as it stands, so that a count far beyond the limit reaches the reader with a right checksum.
  Plan plan = bench();
  plan.stock[0].count = 2147483647;
  expect_refused(encode_link(plan, known()), "2^31 - 1 fish");
  plan = bench();
  plan.tank.length_cm = 1e300;
  expect_refused(encode_link(plan, known()), "a tank beyond the stars");
  plan = bench();
  plan.notes = std::string(most_text + 1, 'a');
  expect_refused(encode_link(plan, known()), "too much text");
  plan = bench();
  plan.notes = "\xff";
  expect_refused(encode_link(plan, known()), "no UTF-8");
}

TEST(Link, KeepsHostileTextAsText) {
  for (const char* text : {"<img src=x onerror=alert(1)>", "</script><script>alert(1)</script>", "\"};alert(1)//",
                           "'; DROP TABLE fish;--", "%s%n%x", "\u202Edaer", "#p=AAAA", "javascript:alert(1)"}) {
    Plan plan = bench();
    plan.name = plan.notes = plan.stock[0].note = plan.stock[1].species = plan.pieces[0].kind = text;
    const Result<Plan> opened = decode_link(encode_link(plan, known()), known());
    ASSERT_TRUE(opened) << text;
    EXPECT_EQ(*opened, plan) << text;
  }
}

TEST(Link, OfAPlanAtItsLimitsOpens) {
  Plan plan = bench();
  plan.notes = std::string(60000, 'n');
  plan.pieces.assign(most_pieces, plan.pieces[3]);
  for (int i = 0; i < most_pieces; ++i) plan.pieces[static_cast<std::size_t>(i)].x_cm = i * 0.1 + 0.01 * (i % 3);
  plan.stock.clear();
  for (int i = 0; i < most_groups; ++i) plan.stock.push_back(Group{.species = "kind " + std::to_string(i), .count = most_count});
  const Result<Plan> opened = decode_link(encode_link(plan, known()), known());
  ASSERT_TRUE(opened) << opened.error().sentence;
  EXPECT_EQ(*opened, plan);
}

// Budgets: DESIGN section 7. The plain way is deflate and base64url over the canonical JSON of the same plan.
struct Ratios {
  std::vector<double> all;
  std::string worst;
};

Ratios ratios_of(const std::vector<NamedPlan>& plans) {
  Ratios out;
  for (const NamedPlan& named : plans) {
    Plan travels = named.plan;
    travels.log_json.clear();
    const double ratio =
        static_cast<double>(encode_link(travels, known()).size()) / static_cast<double>(plain_length(plan_json(travels)));
    if (out.all.empty() || ratio > *std::max_element(out.all.begin(), out.all.end())) out.worst = named.name;
    out.all.push_back(ratio);
  }
  std::sort(out.all.begin(), out.all.end());
  return out;
}

void expect_within(const char* what, const Ratios& ratios, double budget) {
  const double worst = ratios.all.back();
  std::cout << what << ": median " << ratios.all[ratios.all.size() / 2] << ", worst " << worst << " (" << ratios.worst
            << "), budget " << budget << '\n';
  EXPECT_LE(worst, budget) << what;
}

/// Unknown keys travel as deflated JSON, as the plain way does, so that the plan which is mostly those is judged by itself.
constexpr const char* mostly_unknown = "unknown-keys.json";

TEST(LinkBudget, WithNotesIsAThirdOfThePlainWay) {
  std::vector<NamedPlan> plans = many_plans(), apart;
  const auto odd = std::find_if(plans.begin(), plans.end(), [](const NamedPlan& named) { return named.name == mostly_unknown; });
  ASSERT_NE(odd, plans.end());
  apart.push_back(*odd);
  plans.erase(odd);
  expect_within("with notes", ratios_of(plans), 0.35);
  expect_within("mostly unknown keys", ratios_of(apart), 0.42);
}

TEST(LinkBudget, WithoutNotesIsASixthOfThePlainWay) {
  std::vector<NamedPlan> plans;
  for (NamedPlan& named : many_plans({.notes = false, .odd = false})) {
    if (named.name == mostly_unknown || !named.plan.own_species.empty()) continue;
    named.plan.name.clear();
    named.plan.notes.clear();
    named.plan.sheet.clear();
    for (Group& group : named.plan.stock) group.note.clear();
    for (Seen& seen : named.plan.seen) seen.note.clear();
    plans.push_back(named);
  }
  expect_within("without notes", ratios_of(plans), 0.18);
}

TEST(LinkBudget, OfTheBenchPlanFitsAMessage) {
  const std::size_t length = encode_link(bench(), known()).size();
  std::cout << "bench plan: " << length << " characters, budget 700\n";
  EXPECT_LT(length, 700u);
}

TEST(LinkBudget, OfTwentyPiecesAndLongNotesFitsAMessage) {
  const Plan plan = read_plan(test_file("plans/long-notes.json")).value();
  ASSERT_EQ(plan.pieces.size(), 20u);
  ASSERT_EQ(plan.notes.size(), 200u);
  const std::size_t length = encode_link(plan, known()).size();
  std::cout << "twenty pieces, long notes: " << length << " characters, budget 2000\n";
  EXPECT_LT(length, 2000u);
}

}  // namespace
}  // namespace shoalwright
