// SPDX-License-Identifier: MIT
#include "share/json_out.h"

#include "units/json.h"
#include "units/shortest.h"

namespace shoalwright {

void JsonOut::comma() {
  if (!text_.empty() && text_.back() != '{' && text_.back() != '[' && text_.back() != ':') text_ += ',';
}

JsonOut& JsonOut::begin_object() {
  comma();
  text_ += '{';
  return *this;
}

JsonOut& JsonOut::end_object() {
  text_ += '}';
  return *this;
}

JsonOut& JsonOut::begin_list() {
  comma();
  text_ += '[';
  return *this;
}

JsonOut& JsonOut::end_list() {
  text_ += ']';
  return *this;
}

JsonOut& JsonOut::key(std::string_view key) {
  comma();
  append_quoted(text_, key);
  text_ += ':';
  return *this;
}

JsonOut& JsonOut::value(double number) { return json(shortest(number)); }
JsonOut& JsonOut::value(int number) { return json(std::to_string(number)); }
JsonOut& JsonOut::value(bool flag) { return json(flag ? "true" : "false"); }
JsonOut& JsonOut::null() { return json("null"); }

JsonOut& JsonOut::value(std::string_view text) {
  comma();
  append_quoted(text_, text);
  return *this;
}

JsonOut& JsonOut::json(std::string_view text) {
  comma();
  text_ += text;
  return *this;
}

JsonOut& JsonOut::member_or_null(std::string_view name, const std::string& text) {
  key(name);
  return text.empty() ? null() : value(text);
}

JsonOut& JsonOut::others(std::string_view object_text) {
  if (object_text.size() <= 2) return *this;
  return json(object_text.substr(1, object_text.size() - 2));
}

}  // namespace shoalwright
