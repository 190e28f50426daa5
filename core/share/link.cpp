// SPDX-License-Identifier: MIT
#include "share/link.h"

#include "share/detail/base64url.h"
#include "share/detail/deflate.h"
#include "share/detail/link_plan.h"
#include "share/plan_json.h"

namespace shoalwright {

namespace {

// A link is the base64url of: one byte of version, four bytes CRC-32 (big end first) of the version and of all that follows, and
// the packed plan. Version and checksum stand there in every version, so that an older program can tell a newer link from a
// damaged one.
constexpr unsigned char newest_version = 2;
constexpr std::string_view opening = "#p=";
constexpr std::size_t head_bytes = 5;
constexpr std::size_t longest_link = 16 * 1024 * 1024;  // characters; a plan at its limits is shorter

Error sentence(const char* text) { return Error{.place = "", .sentence = text}; }

std::string checksum(std::string_view body, unsigned char of_version) {
  std::string checked(1, static_cast<char>(of_version));
  checked += body;
  const std::uint32_t sum = crc32_of(checked);
  std::string bytes;
  for (int shift = 24; shift >= 0; shift -= 8) bytes += static_cast<char>(sum >> shift);
  return bytes;
}

/// What follows "#p=" of an address, without spaces and line breaks, which letters put in.
std::string payload_of(std::string_view text) {
  const std::size_t at = text.find(opening);
  if (at != std::string_view::npos) text.remove_prefix(at + opening.size());
  std::string out;
  for (const char c : text)
    if (c != ' ' && c != '\t' && c != '\r' && c != '\n') out += c;
  return out;
}

/// The oldest version that can carry a plan, so that older programs open what they can show and equal plans have equal links.
unsigned char version_for(const Plan& plan) { return plan.substrate.line_cm.empty() ? 1 : 2; }

/// The plan as reading its canonical form gives it, which is itself for every valid plan; JSON inside it in canonical order.
Result<Plan> read_again(const Plan& plan) {
  Result<Plan> read = read_plan(plan_json(plan));
  if (!read) return read;
  read.value().assumed = plan.assumed;  // two sets: the reader sorts them, whoever made the plan need not have
  read.value().fixed = plan.fixed;
  return read;
}

}  // namespace

std::string encode_link(const Plan& plan, const Catalog& catalog, bool with_log) {
  const Result<Plan> valid = read_again(plan);
  Plan travelling = valid ? *valid : plan;
  LinkCoder gatherer = LinkCoder::gatherer(catalog), writer = LinkCoder::writer(catalog);
  const unsigned char version = version_for(travelling);
  code_plan(gatherer, travelling, with_log, version);
  writer.texts(gatherer.gathered());
  code_plan(writer, travelling, with_log, version);
  const std::string body = writer.finish();
  return std::string(opening) + base64url(static_cast<char>(version) + checksum(body, version) + body);
}

Result<Plan> decode_link(std::string_view text, const Catalog& catalog) {
  if (!(text.size() <= longest_link)) return sentence("This link is longer than any plan needs, so it was not opened.");
  const std::string payload = payload_of(text);
  const bool marked = text.find(opening) != std::string_view::npos;
  const std::optional<std::string> bytes = bytes_of_base64url(payload);
  if (!marked && (!bytes || bytes->size() < head_bytes)) return sentence("This is not a link to a Shoalwright plan.");
  const Error damaged = sentence("This link is damaged: some of it is missing or changed, so nothing was opened.");
  if (!bytes || bytes->size() < head_bytes) return damaged;
  const auto made_by = static_cast<unsigned char>((*bytes)[0]);
  const std::string_view body = std::string_view(*bytes).substr(head_bytes);
  if (std::string_view(*bytes).substr(1, head_bytes - 1) != checksum(body, made_by))
    return marked || (made_by >= 1 && made_by <= newest_version) ? damaged
                                                                 : sentence("This is not a link to a Shoalwright plan.");
  if (made_by > newest_version)
    return sentence("This link was made by a newer Shoalwright: open the planner again to get the newest version.");
  if (made_by < 1) return damaged;
  Plan plan;
  LinkCoder reader = LinkCoder::reader(catalog, body);
  std::string texts;
  reader.texts(texts);
  code_plan(reader, plan, true, made_by);
  if (const std::optional<std::string> refusal = reader.refusal()) return Error{.place = "", .sentence = *refusal};
  // The checksum says that the link is as it was made; that what made it was this program, only a full reading can say.
  const Result<Plan> read = read_again(plan);
  if (!read) return Error{.place = read.error().place, .sentence = "This link holds no possible plan. " + read.error().sentence};
  // A key that the program which made the link did not know has become one of the plan's since.
  if (plan.substrate.line_cm.empty() && !read->substrate.line_cm.empty()) plan.substrate = read->substrate;
  if (!(*read == plan)) return damaged;
  return plan;
}

}  // namespace shoalwright
