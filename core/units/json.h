// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "units/result.h"

namespace shoalwright {

struct JsonMember;

/// A JSON value as it was written, plain: what the reader of plans walks over. Numbers keep their text, so that a key that this
/// program does not know comes back unchanged.
struct Json {
  enum class Kind { null, boolean, number, text, list, object };
  Kind kind = Kind::null;
  bool boolean = false;
  double number = 0;
  std::string text;  ///< of a text or a number
  std::vector<Json> items;
  std::vector<JsonMember> members;
};

struct JsonMember {
  std::string key;
  Json value;
};

inline constexpr int deepest_json = 64;                       ///< lists and objects inside one another
inline constexpr std::size_t longest_json = 8 * 1024 * 1024;  ///< bytes; a plan at all its limits is shorter

/// Reads one JSON value (RFC 8259). Refused with one sentence: anything else, a key twice in one object, a number that no double
/// holds, what is too deep or too long.
Result<Json> parse_json(std::string_view text);

/// One line without spaces, keys of objects in byte order: equal values give equal text.
std::string dump(const Json& json);

/// The member of an object; null when there is none.
const Json* find(const Json& object, std::string_view key);

/// "a text", "a list": what a value is, for a sentence.
std::string describe(const Json& json);

/// Appends `text` between quotation marks, escaped as RFC 8259 section 7 wants it and no further.
void append_quoted(std::string& out, std::string_view text);

/// The same as a text of its own.
std::string in_quotes(std::string_view text);

/// One reference token of a JSON Pointer (RFC 6901): ~ and / escaped.
std::string pointer_token(std::string_view key);

}  // namespace shoalwright
