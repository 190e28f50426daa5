// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "plan/words.h"
#include "units/json.h"

namespace shoalwright {

/// The error of a whole reading: the first one stays.
struct Reading {
  std::optional<Error> error;
  void fail(const std::string& place, const std::string& expected, const Json* found);
};

/// One object of a plan being read: each member is asked for once by its key and its type is checked before its value is taken.
/// A member that is absent leaves the value as it is; every call says whether the member was there (null counts as there).
class Section {
 public:
  /// `object` must outlive the section. When it is no object, that is the error and the section reads as empty.
  Section(Reading& reading, const Json& object, std::string place);

  const Json* member(std::string_view key);
  bool number(std::string_view key, double& value);
  bool number(std::string_view key, std::optional<double>& value);
  bool whole(std::string_view key, int& value, int low, int high);
  bool whole(std::string_view key, std::optional<int>& value, int low, int high);
  bool flag(std::string_view key, bool& value);
  bool flag(std::string_view key, std::optional<bool>& value);
  bool text(std::string_view key, std::string& value);  ///< null is an empty text
  bool texts(std::string_view key, std::vector<std::string>& values);
  template <class Choice>
  bool choice(std::string_view key, Choice& value);
  template <class Choice>
  bool choice(std::string_view key, std::optional<Choice>& value);
  /// The items of a list; null when absent, null or no list (which is the error).
  const std::vector<Json>* list(std::string_view key);

  void missing(std::string_view key, const std::string& expected);
  std::string at(std::string_view key) const { return place_ + '/' + std::string(key); }
  const std::string& place() const { return place_; }
  Reading& reading() { return reading_; }

  /// The members that were never asked for, as the text of an object; empty when there are none. Closes the section.
  std::string rest() const;

 private:
  bool word(std::string_view key, const std::string_view* words, std::size_t count, std::size_t& index);

  Reading& reading_;
  const Json* object_;
  std::string place_;
  std::vector<std::string_view> asked_;
};

template <class Choice>
bool Section::choice(std::string_view key, Choice& value) {
  std::size_t index = static_cast<std::size_t>(value);
  const bool there = word(key, Words<Choice>::all.data(), Words<Choice>::all.size(), index);
  value = static_cast<Choice>(index);
  return there;
}

template <class Choice>
bool Section::choice(std::string_view key, std::optional<Choice>& value) {
  const Json* json = member(key);
  if (json == nullptr) return false;
  value.reset();
  if (json->kind == Json::Kind::null) return true;
  Choice chosen{};
  choice(key, chosen);
  value = chosen;
  return true;
}

}  // namespace shoalwright
