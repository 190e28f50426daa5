// SPDX-License-Identifier: MIT
// The reader against catalog/schema/species.json: whatever the schema forbids, the reader refuses, and it names the place.
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "built_in.h"

namespace shoalwright {
namespace {

using nlohmann::json;
using Pointer = json::json_pointer;

json parsed_file(const std::string& name) {
  std::ifstream file(std::string(SHOALWRIGHT_CATALOG_DIR) + "/" + name);
  std::stringstream text;
  text << file.rdbuf();
  return json::parse(text.str(), nullptr, false);
}

const json& schema() {
  static const json read = parsed_file("schema/species.json");
  return read;
}

json full_entry() { return json::parse(full_entry_text, nullptr, false); }

const json& resolved(const json& node) {
  if (!node.contains("$ref")) return node;
  return schema()[Pointer(node["$ref"].get<std::string>().substr(1))];
}

/// Reads a catalogue of this one entry and expects a refusal that names the id and the place, or a part of it.
void expect_refused(const json& entry, const std::string& pointer, const std::string& what) {
  const Result<Catalog> read = read_catalog(json::array({entry}).dump());
  ASSERT_FALSE(read) << what << " at " << pointer << " was taken";
  EXPECT_EQ(read.error().place.find("/0" + pointer), 0u) << what << ": place " << read.error().place;
  EXPECT_NE(read.error().sentence.find(pointer), std::string::npos) << read.error().sentence;
  if (pointer == "/id") return;  // without it there is nothing to name
  EXPECT_NE(read.error().sentence.find("exemplum-plenum"), std::string::npos) << read.error().sentence;
}

void expect_refused_with(const std::string& pointer, const json& value, const std::string& what) {
  json entry = full_entry();
  entry[Pointer(pointer)] = value;
  expect_refused(entry, pointer, what);
}

struct Counts {
  int fields = 0, words = 0, bounds = 0;
} counts;

void check_value(const json& raw, const std::string& pointer);

void check_object(const json& node, const std::string& pointer) {
  if (node.value("additionalProperties", json()) == false) {
    json entry = full_entry();
    entry[Pointer(pointer + "/surely_unknown")] = 1;
    expect_refused(entry, pointer + "/surely_unknown", "an unknown key");
  }
  for (const auto& [key, child] : node["properties"].items()) {
    const std::string place = pointer + "/" + key;
    ASSERT_TRUE(full_entry().contains(Pointer(place))) << "the full example lacks " << place;
    const json required = node.value("required", json::array());
    if (std::find(required.begin(), required.end(), key) != required.end()) {
      json entry = full_entry();
      entry[Pointer(pointer)].erase(key);
      expect_refused(entry, place, "a missing key");
    }
    ++counts.fields;
    if (key != "evidence") check_value(child, place);
  }
}

void check_word(const json& node, const std::string& pointer) {
  expect_refused_with(pointer, "surely-no-such-word", "a word outside the closed list");
  for (const json& word : node["enum"]) {
    json entry = full_entry();
    entry[Pointer(pointer)] = word;
    const Result<Catalog> read = read_catalog(json::array({entry}).dump());
    EXPECT_TRUE(read) << pointer << " " << word << ": " << read.error().sentence;
    ++counts.words;
  }
}

void check_number(const json& node, const std::string& pointer, bool is_in_list) {
  const auto check = [&](double value, const char* what) {
    const std::string place = is_in_list ? pointer.substr(0, pointer.rfind('/')) : pointer;
    json entry = full_entry();
    entry[Pointer(pointer)] = value;
    expect_refused(entry, place, what);
    ++counts.bounds;
  };
  if (node.contains("minimum")) check(node["minimum"].get<double>() - 1, "a number too small");
  if (node.contains("exclusiveMinimum")) check(node["exclusiveMinimum"].get<double>(), "a number too small");
  if (node.contains("maximum")) check(node["maximum"].get<double>() + 1, "a number too large");
  if (node["type"] == "integer") check(full_entry()[Pointer(pointer)].get<double>() + 0.5, "half of a whole number");
}

void check_list(const json& node, const std::string& pointer) {
  const json& item = resolved(node["items"]);
  const json good = full_entry()[Pointer(pointer)];
  const auto least = node.value("minItems", std::size_t{0});
  if (least > 0) {
    json few = json::array();
    for (std::size_t i = 0; i + 1 < least; ++i) few.push_back(good[i]);
    expect_refused_with(pointer, few, "too short a list");
  }
  if (node.contains("maxItems")) {
    json many = good;
    while (many.size() <= node["maxItems"].get<std::size_t>()) many.push_back(good[0]);
    expect_refused_with(pointer, many, "too long a list");
  }
  if (node.value("uniqueItems", false)) {
    json twice = good;
    twice.push_back(good[0]);
    expect_refused_with(pointer, twice, "the same twice");
  }
  check_value(item, pointer + "/0");
}

void check_value(const json& raw, const std::string& pointer) {
  const json& node = resolved(raw);
  const bool is_in_list = !pointer.empty() && pointer.substr(pointer.rfind('/') + 1) == "0";
  if (node.contains("enum")) {
    if (!is_in_list) return check_word(node, pointer);
    const std::string list = pointer.substr(0, pointer.rfind('/'));
    json entry = full_entry();
    entry[Pointer(pointer)] = "surely-no-such-word";
    expect_refused(entry, list, "a word outside the closed list");
    for (const json& word : node["enum"]) {
      entry = full_entry();
      entry[Pointer(list)] = json::array({word});
      const Result<Catalog> read = read_catalog(json::array({entry}).dump());
      EXPECT_TRUE(read) << list << " " << word << ": " << read.error().sentence;
      ++counts.words;
    }
    return;
  }
  const std::string type = node["type"];
  json wrong = type == "string" ? json(5) : json("no " + type);
  if (is_in_list && type != "object") {
    json entry = full_entry();
    entry[Pointer(pointer)] = wrong;
    expect_refused(entry, pointer.substr(0, pointer.rfind('/')), "a wrong type");
  } else {
    expect_refused_with(pointer, wrong, "a wrong type");
  }
  if (type == "object") check_object(node, pointer);
  if (type == "array") check_list(node, pointer);
  if (type == "number" || type == "integer") check_number(node, pointer, is_in_list);
  if (node.contains("pattern")) {
    json entry = full_entry();
    entry[Pointer(pointer)] = "?";
    expect_refused(entry, is_in_list ? pointer.substr(0, pointer.rfind('/')) : pointer, "text outside the pattern");
  }
}

TEST(SpeciesSchema, TheFullExampleIsTaken) {
  const Result<Catalog> read = read_catalog(json::array({full_entry()}).dump());
  ASSERT_TRUE(read) << read.error().sentence;
  EXPECT_EQ(read->species.size(), 1u);
}

TEST(SpeciesSchema, WhatItForbidsTheReaderRefusesAndNames) {
  ASSERT_TRUE(schema().is_object());
  counts = {};
  check_object(schema(), "");
  // The walk itself: a schema that it failed to enter would prove nothing.
  EXPECT_GT(counts.fields, 100);
  EXPECT_GT(counts.words, 150);
  EXPECT_GT(counts.bounds, 80);
}

TEST(SpeciesSchema, ACatalogueEntryWithoutItsPermanentCodeIsRefused) {
  json entry = full_entry();
  entry.erase("code");
  expect_refused(entry, "/code", "a missing code");
}

TEST(SpeciesSchema, APublishedLengthNeedsItsType) {
  json entry = full_entry();
  entry["size"].erase("published_max_type");
  expect_refused(entry, "/size/published_max_type", "a length of unknown type");
  entry = full_entry();
  entry["size"].erase("published_max_cm");
  expect_refused(entry, "/size/published_max_cm", "a type without its length");
}

TEST(SpeciesSchema, EvidenceNeedsAClassAndAPublishedOneItsPlace) {
  for (const char* key : {"class", "source", "where"}) {
    json entry = full_entry();
    entry["evidence"]["size.published_max_cm"].erase(key);
    expect_refused(entry, "/evidence/size.published_max_cm", std::string("evidence without ") + key);
  }
  json entry = full_entry();
  entry["evidence"]["life"]["class"] = "hearsay";
  expect_refused(entry, "/evidence/life/class", "an evidence class of its own");
  entry = full_entry();
  entry["evidence"].erase("*");
  expect_refused(entry, "/evidence/*", "evidence for some fields only");
}

}  // namespace
}  // namespace shoalwright
