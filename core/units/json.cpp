// SPDX-License-Identifier: MIT
#include "units/json.h"

#include <nlohmann/json.hpp>

#include "units/order.h"

namespace shoalwright {

namespace {

/// Builds a Json from the parser's events, so that a doubled key or too deep a nesting is seen, which a finished tree hides.
class Builder : public nlohmann::json_sax<nlohmann::json> {
 public:
  Json root;
  std::string refusal;

  bool null() override { return put(Json{}); }
  bool boolean(bool value) override { return put(Json{.kind = Json::Kind::boolean, .boolean = value}); }
  bool number_integer(number_integer_t value) override { return put_number(static_cast<double>(value), std::to_string(value)); }
  bool number_unsigned(number_unsigned_t value) override { return put_number(static_cast<double>(value), std::to_string(value)); }
  bool number_float(number_float_t value, const string_t& text) override { return put_number(value, text); }
  bool string(string_t& value) override { return put(Json{.kind = Json::Kind::text, .text = std::move(value)}); }
  bool binary(binary_t&) override { return false; }
  bool start_object(std::size_t) override { return open(Json::Kind::object); }
  bool end_object() override { return close(); }
  bool start_array(std::size_t) override { return open(Json::Kind::list); }
  bool end_array() override { return close(); }

  bool key(string_t& value) override {
    open_.back().key = std::move(value);
    return true;
  }

  bool parse_error(std::size_t position, const std::string&, const nlohmann::json::exception&) override {
    refusal = "The text is not JSON: it stops making sense at byte " + std::to_string(position) + ".";
    return false;
  }

 private:
  struct Open {
    Json value;
    std::string key;
  };
  std::vector<Open> open_;

  bool put_number(double value, std::string text) {
    return put(Json{.kind = Json::Kind::number, .number = value, .text = std::move(text)});
  }

  bool put(Json value) {
    if (open_.empty()) {
      root = std::move(value);
    } else if (Open& last = open_.back(); last.value.kind == Json::Kind::object) {
      last.value.members.push_back(JsonMember{.key = std::move(last.key), .value = std::move(value)});
    } else {
      last.value.items.push_back(std::move(value));
    }
    return true;
  }

  bool open(Json::Kind kind) {
    if (open_.size() >= deepest_json) {
      refusal = "The text nests lists and objects more than " + std::to_string(deepest_json) + " deep.";
      return false;
    }
    open_.push_back(Open{.value = Json{.kind = kind}});
    return true;
  }

  bool close() {
    Json done = std::move(open_.back().value);
    open_.pop_back();
    std::vector<const std::string*> keys;
    for (const JsonMember& member : done.members) keys.push_back(&member.key);
    sort_stable(keys, [](const std::string* a, const std::string* b) { return *a < *b; });
    for (std::size_t i = 1; i < keys.size(); ++i)
      if (*keys[i] == *keys[i - 1]) {
        refusal = "The text has the key \"" + *keys[i] + "\" twice in one object.";
        return false;
      }
    return put(std::move(done));
  }
};

}  // namespace

Result<Json> parse_json(std::string_view text) {
  if (!(text.size() <= longest_json))
    return Error{.place = "", .sentence = "The text is longer than the 8 MiB that a plan can need."};
  Builder builder;
  if (!nlohmann::json::sax_parse(text.begin(), text.end(), &builder)) return Error{.place = "", .sentence = builder.refusal};
  return std::move(builder.root);
}

std::string dump(const Json& json) {
  switch (json.kind) {
    case Json::Kind::null: return "null";
    case Json::Kind::boolean: return json.boolean ? "true" : "false";
    case Json::Kind::number: return json.text;
    case Json::Kind::text: return in_quotes(json.text);
    case Json::Kind::list: {
      std::string out = "[";
      for (const Json& item : json.items) out += (out.size() > 1 ? "," : "") + dump(item);
      return out + "]";
    }
    case Json::Kind::object: {
      std::vector<const JsonMember*> sorted;
      for (const JsonMember& member : json.members) sorted.push_back(&member);
      sort_stable(sorted, [](const JsonMember* a, const JsonMember* b) { return a->key < b->key; });
      std::string out = "{";
      for (const JsonMember* member : sorted) {
        if (out.size() > 1) out += ',';
        append_quoted(out, member->key);
        out += ':' + dump(member->value);
      }
      return out + "}";
    }
  }
  return "";
}

const Json* find(const Json& object, std::string_view key) {
  for (const JsonMember& member : object.members)
    if (member.key == key) return &member.value;
  return nullptr;
}

std::string describe(const Json& json) {
  switch (json.kind) {
    case Json::Kind::null: return "null";
    case Json::Kind::boolean: return json.boolean ? "true" : "false";
    case Json::Kind::number: return json.text.size() <= 24 ? json.text : "a number";
    case Json::Kind::text: return json.text.size() <= 24 ? dump(json) : "a text";
    case Json::Kind::list: return "a list";
    case Json::Kind::object: return "an object";
  }
  return "";
}

void append_quoted(std::string& out, std::string_view text) {
  constexpr std::string_view with_letter = "\b\f\n\r\t", letters = "bfnrt";
  out += '"';
  for (const char c : text) {
    if (c == '"' || c == '\\') {
      out += '\\';
      out += c;
    } else if (const std::size_t at = with_letter.find(c); at != std::string_view::npos) {
      out += '\\';
      out += letters[at];
    } else if (static_cast<unsigned char>(c) < 0x20) {
      out += "\\u00";
      out += c < 0x10 ? '0' : '1';
      out += "0123456789abcdef"[c & 15];
    } else {
      out += c;
    }
  }
  out += '"';
}

std::string in_quotes(std::string_view text) {
  std::string out;
  append_quoted(out, text);
  return out;
}

std::string pointer_token(std::string_view key) {
  std::string out;
  for (const char c : key) {
    if (c == '~')
      out += "~0";
    else if (c == '/')
      out += "~1";
    else
      out += c;
  }
  return out;
}

}  // namespace shoalwright
