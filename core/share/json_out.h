// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace shoalwright {

/// Writes JSON on one line in the order of the calls. Numbers by their shortest exact text; what is not known is null.
class JsonOut {
 public:
  JsonOut& begin_object();
  JsonOut& end_object();
  JsonOut& begin_list();
  JsonOut& end_list();
  JsonOut& key(std::string_view key);

  JsonOut& value(double number);
  JsonOut& value(int number);
  JsonOut& value(bool flag);
  JsonOut& value(std::string_view text);
  JsonOut& value(const char* text) { return value(std::string_view(text)); }
  JsonOut& value(const std::string& text) { return value(std::string_view(text)); }
  JsonOut& null();
  /// JSON text that stands for itself.
  JsonOut& json(std::string_view text);

  template <class T>
  JsonOut& value(const std::optional<T>& maybe) {
    return maybe ? value(*maybe) : null();
  }
  template <class T>
  JsonOut& value(const std::vector<T>& items) {
    begin_list();
    for (const T& item : items) value(item);
    return end_list();
  }
  template <class T>
  JsonOut& member(std::string_view name, const T& content) {
    return key(name).value(content);
  }
  /// Null instead of an empty text.
  JsonOut& member_or_null(std::string_view name, const std::string& text);
  /// The members of an object that is given as JSON text (empty: none) into the open object.
  JsonOut& others(std::string_view object_text);

  const std::string& text() const { return text_; }

 private:
  void comma();
  std::string text_;
};

}  // namespace shoalwright
