// SPDX-License-Identifier: MIT
#include "share/patch.h"

#include <algorithm>
#include <utility>

#include "plan/assumed.h"
#include "share/json_out.h"
#include "share/plan_json.h"
#include "units/json.h"

namespace shoalwright {

namespace {

Error refused(const std::string& path, const std::string& why) {
  return Error{.place = path,
               .sentence = "The patch cannot be applied at " + (path.empty() ? "the whole document" : path) + ": " + why + "."};
}

/// The reference tokens of a JSON Pointer (RFC 6901 section 3), unescaped. Empty when it is none.
std::optional<std::vector<std::string>> tokens_of(std::string_view pointer) {
  std::vector<std::string> tokens;
  if (pointer.empty()) return tokens;
  if (pointer[0] != '/') return std::nullopt;
  for (std::size_t i = 0; i < pointer.size(); ++i) {
    const char c = pointer[i];
    if (c == '/') {
      tokens.emplace_back();
    } else if (c == '~') {
      if (++i >= pointer.size() || (pointer[i] != '0' && pointer[i] != '1')) return std::nullopt;
      tokens.back() += pointer[i] == '0' ? '~' : '/';
    } else {
      tokens.back() += c;
    }
  }
  return tokens;
}

/// An array index without leading zeros (RFC 6901 section 4), below `size`.
std::optional<std::size_t> index_of(const std::string& token, std::size_t size) {
  if (token.empty() || token.size() > 9 || (token.size() > 1 && token[0] == '0')) return std::nullopt;
  std::size_t index = 0;
  for (const char c : token) {
    if (!(c >= '0' && c <= '9')) return std::nullopt;
    index = index * 10 + static_cast<std::size_t>(c - '0');
  }
  return index < size ? std::optional(index) : std::nullopt;
}

Json* child(Json& parent, const std::string& token) {
  if (parent.kind == Json::Kind::list) {
    const std::optional<std::size_t> index = index_of(token, parent.items.size());
    return index ? &parent.items[*index] : nullptr;
  }
  for (JsonMember& member : parent.members)
    if (member.key == token) return &member.value;
  return nullptr;
}

/// The value that the first `count` tokens lead to.
Json* walk(Json& root, const std::vector<std::string>& tokens, std::size_t count) {
  Json* at = &root;
  for (std::size_t i = 0; i < count && at != nullptr; ++i) at = child(*at, tokens[i]);
  return at;
}

/// Numbers equal by value, objects whatever the order of their keys (RFC 6902 section 4.6).
bool equal(const Json& a, const Json& b) {
  if (a.kind != b.kind) return false;
  switch (a.kind) {
    case Json::Kind::null: return true;
    case Json::Kind::boolean: return a.boolean == b.boolean;
    case Json::Kind::number: return a.number == b.number;
    case Json::Kind::text: return a.text == b.text;
    case Json::Kind::list: return std::equal(a.items.begin(), a.items.end(), b.items.begin(), b.items.end(), equal);
    case Json::Kind::object:
      return a.members.size() == b.members.size() &&
             std::all_of(a.members.begin(), a.members.end(), [&](const JsonMember& member) {
               const Json* other = find(b, member.key);
               return other != nullptr && equal(member.value, *other);
             });
  }
  return false;
}

using Problem = std::optional<std::string>;

Problem add(Json& root, const std::vector<std::string>& tokens, Json value) {
  if (tokens.empty()) {
    root = std::move(value);
    return std::nullopt;
  }
  Json* parent = walk(root, tokens, tokens.size() - 1);
  if (parent == nullptr) return "there is no such place";
  const std::string& last = tokens.back();
  if (parent->kind == Json::Kind::object) {
    if (Json* there = child(*parent, last))
      *there = std::move(value);
    else
      parent->members.push_back(JsonMember{.key = last, .value = std::move(value)});
    return std::nullopt;
  }
  if (parent->kind != Json::Kind::list) return "there is no list or object to add to";
  const std::size_t size = parent->items.size();
  const std::optional<std::size_t> index = last == "-" ? std::optional(size) : index_of(last, size + 1);
  if (!index) return "there is no such place in the list";
  parent->items.insert(parent->items.begin() + static_cast<std::ptrdiff_t>(*index), std::move(value));
  return std::nullopt;
}

/// Takes the value out and hands it over.
Problem take(Json& root, const std::vector<std::string>& tokens, Json& taken) {
  Json* there = walk(root, tokens, tokens.size());
  if (there == nullptr) return "there is nothing";
  taken = std::move(*there);
  if (tokens.empty()) {
    root = Json{};
    return std::nullopt;
  }
  Json* parent = walk(root, tokens, tokens.size() - 1);
  if (parent->kind == Json::Kind::list)
    parent->items.erase(parent->items.begin() + (there - parent->items.data()));
  else
    parent->members.erase(std::find_if(parent->members.begin(), parent->members.end(),
                                       [&](const JsonMember& member) { return &member.value == there; }));
  return std::nullopt;
}

Problem move_or_copy(Json& root, const PatchStep& step, const std::vector<std::string>& tokens) {
  const Result<Json> from_json = parse_json(step.value_json);
  if (!from_json || from_json->kind != Json::Kind::text) return "it does not say from where";
  const std::optional<std::vector<std::string>> from = tokens_of(from_json->text);
  if (!from) return "it is not said from where by a JSON Pointer";
  Json value;
  if (step.op == "copy") {
    const Json* there = walk(root, *from, from->size());
    if (there == nullptr) return "there is nothing to copy";
    value = *there;
  } else {
    if (tokens.size() > from->size() && std::equal(from->begin(), from->end(), tokens.begin()))
      return "a value cannot move into itself";
    if (Problem problem = take(root, *from, value)) return problem;
  }
  return add(root, tokens, std::move(value));
}

Problem apply(Json& root, const PatchStep& step) {
  const std::optional<std::vector<std::string>> tokens = tokens_of(step.path);
  if (!tokens) return "the path is no JSON Pointer";
  if (step.op == "move" || step.op == "copy") return move_or_copy(root, step, *tokens);
  if (step.op == "remove") {
    Json taken;
    return take(root, *tokens, taken);
  }
  Result<Json> value = parse_json(step.value_json);
  if (!value) return "its value is no JSON";
  if (step.op == "add") return add(root, *tokens, std::move(value.value()));
  Json* there = walk(root, *tokens, tokens->size());
  if (step.op == "replace") {
    if (there == nullptr) return "there is nothing to replace";
    *there = std::move(value.value());
    return std::nullopt;
  }
  if (step.op == "test") return there != nullptr && equal(*there, *value) ? Problem() : Problem("the value there is another one");
  return "the operation \"" + step.op + "\" is not known";
}

}  // namespace

std::string steps_json(const std::vector<PatchStep>& steps) {
  JsonOut out;
  out.begin_list();
  for (const PatchStep& step : steps) {
    out.begin_object().member("op", step.op).member("path", step.path);
    if (!step.value_json.empty()) out.key("value").json(step.value_json);
    out.end_object();
  }
  out.end_list();
  return out.text();
}

std::string json_at(std::string_view document, std::string_view pointer) {
  Result<Json> root = parse_json(document);
  const std::optional<std::vector<std::string>> tokens = tokens_of(pointer);
  if (!root || !tokens) return "";
  const Json* at = walk(root.value(), *tokens, tokens->size());
  return at ? dump(*at) : "";
}

Result<std::string> patch_json(std::string_view document, const std::vector<PatchStep>& steps) {
  Result<Json> json = parse_json(document);
  if (!json) return json.error();
  for (const PatchStep& step : steps)
    if (const Problem problem = apply(json.value(), step)) return refused(step.path, *problem);
  return dump(*json);
}

Result<std::vector<PatchStep>> read_patch(std::string_view json_text) {
  const Result<Json> json = parse_json(json_text);
  if (!json) return json.error();
  if (json->kind != Json::Kind::list)
    return Error{.place = "", .sentence = "Expected a list of patch steps, found " + describe(*json) + "."};
  std::vector<PatchStep> steps;
  for (std::size_t i = 0; i < json->items.size(); ++i) {
    const Json& item = json->items[i];
    const std::string place = "/" + std::to_string(i);
    const Json *op = find(item, "op"), *path = find(item, "path"), *value = find(item, "value"), *from = find(item, "from");
    const auto is_text = [](const Json* member) { return member != nullptr && member->kind == Json::Kind::text; };
    if (!is_text(op) || !is_text(path))
      return Error{.place = place, .sentence = "Expected a step with op and path at " + place + "."};
    const bool moves = op->text == "move" || op->text == "copy";
    const Json* operand = moves ? from : value;
    if (operand == nullptr && op->text != "remove")
      return Error{.place = place,
                   .sentence = std::string("Expected ") + (moves ? "from" : "value") + " in the step at " + place + "."};
    steps.push_back(PatchStep{.op = op->text, .path = path->text, .value_json = operand != nullptr ? dump(*operand) : ""});
  }
  return steps;
}

Result<Plan> apply_patch(const Plan& plan, const std::vector<PatchStep>& steps) {
  const Result<std::string> patched = patch_json(plan_json(plan), steps);
  return patched ? read_plan(*patched) : Result<Plan>(patched.error());
}

Result<Plan> take_remedy(const Plan& plan, const std::vector<PatchStep>& steps) {
  Result<Plan> taken = apply_patch(plan, steps);
  if (!taken) return taken;
  for (const PatchStep& step : steps)
    if (step.op == "add" || step.op == "replace") decide(taken.value(), step.path);
  return taken;
}

}  // namespace shoalwright
