// SPDX-License-Identifier: MIT
#include "support/check_table.h"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <set>
#include <sstream>

namespace shoalwright {
namespace {

constexpr const char* header = "quantity,inputs,expected,unit,tolerance,kind,source\n";

std::string file_text(const std::string& name) {
  std::ifstream file(std::string(SHOALWRIGHT_TESTS_DIR) + "/vectors/" + name, std::ios::binary);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

CheckResult only_row(const std::string& row) {
  const auto rows = read_check_table(header + row);
  EXPECT_TRUE(rows) << rows.error().sentence;
  return rows ? check_row(rows->at(0)) : CheckResult{};
}

void expect_all_pass(const std::string& name, int at_least) {
  const auto rows = read_check_table(file_text(name));
  ASSERT_TRUE(rows) << rows.error().sentence;
  for (const CheckRow& row : *rows) {
    const CheckResult result = check_row(row);
    EXPECT_NE(result.outcome, CheckOutcome::failed)
        << name << " line " << row.line << ": " << row.quantity << ": " << result.reason;
    EXPECT_FALSE(row.source.empty()) << name << " line " << row.line;
  }
  EXPECT_GE(check_table(*rows).passed, at_least);
}

TEST(CheckTable, EveryRowOfBiologyHolds) { expect_all_pass("biology.csv", 121); }
TEST(CheckTable, EveryRowOfChemistryHolds) { expect_all_pass("chemistry.csv", 258); }

// A row that moved away from its value by more than its tolerance must fail: the answers are computed, not looked up.
TEST(CheckTable, NoRowHoldsWhenWhatIsExpectedIsMoved) {
  int moved = 0;
  for (const char* name : {"biology.csv", "chemistry.csv"}) {
    const auto rows = read_check_table(file_text(name));
    ASSERT_TRUE(rows);
    for (CheckRow row : *rows) {
      const auto value = parse_number(row.expected);
      if (!value || row.tolerance == "quoted") continue;
      row.expected = std::to_string(*value * 1.1 + 1);
      EXPECT_EQ(check_row(row).outcome, CheckOutcome::failed) << row.quantity;
      ++moved;
    }
  }
  EXPECT_GT(moved, 80);
}

TEST(CheckTable, EveryQuantityThatWeAnswerHasARow) {
  std::set<std::string> seen;
  for (const char* name : {"biology.csv", "chemistry.csv"}) {
    const auto rows = read_check_table(file_text(name));
    ASSERT_TRUE(rows);
    for (const CheckRow& row : *rows) seen.insert(row.quantity);
  }
  for (const auto* table : {&check_biology(), &check_chemistry()})
    for (const auto& [quantity, function] : *table) EXPECT_TRUE(seen.count(quantity)) << quantity;
}

TEST(CheckTable, ReadsQuotedFieldsAsRfc4180Says) {
  const auto rows = read_check_table(
      "quantity,inputs,expected,unit,tolerance,kind,source\r\n\"a, b\",\"k=1;t=\"\"x\"\"\",2,\"u\n\nv\",quoted,K,\"\"\r\n");
  ASSERT_TRUE(rows) << rows.error().sentence;
  ASSERT_EQ(rows->size(), 1u);
  EXPECT_EQ((*rows)[0].quantity, "a, b");
  EXPECT_EQ((*rows)[0].inputs, "k=1;t=\"x\"");
  EXPECT_EQ((*rows)[0].unit, "u\n\nv");
  EXPECT_EQ((*rows)[0].source, "");
  EXPECT_EQ((*rows)[0].line, 2);
}

TEST(CheckTable, SaysWhichLineCannotBeRead) {
  EXPECT_NE(read_check_table(header + std::string("a,b\n")).error().sentence.find("Line 2"), std::string::npos);
  EXPECT_NE(read_check_table(header + std::string("a,b,c,d,e,f,\"g\n")).error().sentence.find("Line 2"), std::string::npos);
  EXPECT_NE(read_check_table(header + std::string("\"a\"x,b,c,d,e,f,g\n")).error().sentence.find("Line 2"), std::string::npos);
  EXPECT_NE(read_check_table("a,b\n").error().sentence.find("Line 1"), std::string::npos);
  EXPECT_FALSE(read_check_table(""));
}

TEST(CheckTable, OneToleranceThatHoldsIsEnough) {
  EXPECT_TRUE(*within("rel:0.01", 101.0, "100"));
  EXPECT_FALSE(*within("rel:0.001", 101.0, "100"));
  EXPECT_TRUE(*within("rel:0.001|abs:1.5", 101.0, "100"));
  EXPECT_TRUE(*within("abs:0", 11.0, "11"));
  EXPECT_FALSE(*within("abs:0", 10.0, "11"));
  EXPECT_FALSE(*within("abs:1000", std::nan(""), "1"));
  EXPECT_FALSE(within("near:1", 1.0, "1"));
  EXPECT_FALSE(within("abs:x", 1.0, "1"));
  EXPECT_FALSE(within("", 1.0, "1"));
}

TEST(CheckTable, ExactIsEqualTextOrTwelveDigits) {
  EXPECT_TRUE(*within("exact", std::string("roomy"), "roomy"));
  EXPECT_FALSE(*within("exact", std::string("roomy"), "full"));
  EXPECT_TRUE(*within("exact", 0.1 + 0.2, "0.3"));
  EXPECT_FALSE(*within("exact", 0.3000001, "0.3"));
}

TEST(CheckTable, AnUnknownQuantityIsAFailure) {
  EXPECT_EQ(only_row("length of a piece of string,,1,cm,abs:9,K,s\n").outcome, CheckOutcome::failed);
  EXPECT_EQ(only_row("length of a piece of string,,1,cm,quoted,K,s\n").outcome, CheckOutcome::quoted);
}

TEST(CheckTable, AMissingOrBrokenInputIsAFailure) {
  EXPECT_EQ(only_row("psf in kPa,psf=40,1.91521,kPa,rel:0.001,K,s\n").outcome, CheckOutcome::passed);
  EXPECT_EQ(only_row("psf in kPa,,0,kPa,abs:1,K,s\n").outcome, CheckOutcome::failed);
  EXPECT_EQ(only_row("psf in kPa,psf=forty,0,kPa,abs:1,K,s\n").outcome, CheckOutcome::failed);
  EXPECT_EQ(only_row("psf in kPa,psf=40;psf=40,1.91521,kPa,rel:0.001,K,s\n").outcome, CheckOutcome::failed);
  EXPECT_EQ(only_row("personal volume,L_cm=11;v0=8;shape=snake,1,L,abs:9,K,s\n").outcome, CheckOutcome::failed);
  EXPECT_EQ(only_row("floor crowding,n=6;L_cm=5;style=flying;A_cm2=1,1,-,abs:1e9,K,s\n").outcome, CheckOutcome::failed);
}

TEST(CheckTable, CountsWhatHoldsAndWhatDoesNot) {
  const auto rows = read_check_table(header + std::string("psf in kPa,psf=40,1.91521,kPa,rel:0.001,K,s\n"
                                                          "psf in kPa,psf=40,9,kPa,rel:0.001,K,s\n"
                                                          "a fact,,7,x,quoted,PUBLISHED,somebody 1999\n"));
  ASSERT_TRUE(rows);
  const CheckReport report = check_table(*rows);
  EXPECT_EQ(report.passed, 1);
  EXPECT_EQ(report.failed, 1);
  ASSERT_EQ(report.lines.size(), 2u);
  EXPECT_NE(report.lines[0].find("Line 3"), std::string::npos);
  EXPECT_NE(report.lines[1].find("quoted"), std::string::npos);
}

}  // namespace
}  // namespace shoalwright
