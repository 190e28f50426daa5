// SPDX-License-Identifier: MIT
#include "plan/detail/checker.h"

#include <cmath>

#include "units/day.h"
#include "units/shortest.h"

namespace shoalwright {

namespace {

constexpr std::size_t most_word_bytes = 500;

/// The length of the well-formed UTF-8 sequence at the start of `text`, 0 when there is none (RFC 3629 section 4).
std::size_t sequence_length(std::string_view text) {
  const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u; };
  const auto follows = [&](std::size_t i) { return (byte(i) & 0xC0u) == 0x80u; };
  const unsigned first = byte(0), second = byte(1);
  if (first < 0x80) return 1;
  if (first >= 0xC2 && first <= 0xDF) return follows(1) ? 2 : 0;
  if (first >= 0xE0 && first <= 0xEF) {
    const bool overlong = first == 0xE0 && second < 0xA0, surrogate = first == 0xED && second > 0x9F;
    return follows(1) && follows(2) && !overlong && !surrogate ? 3 : 0;
  }
  if (first >= 0xF0 && first <= 0xF4) {
    const bool overlong = first == 0xF0 && second < 0x90, beyond = first == 0xF4 && second > 0x8F;
    return follows(1) && follows(2) && follows(3) && !overlong && !beyond ? 4 : 0;
  }
  return 0;
}

std::string found(double value) { return std::isfinite(value) ? shortest(value) : "no finite number"; }

}  // namespace

void Checker::fail(const std::string& place, const std::string& sentence) {
  if (!error) error = Error{.place = place, .sentence = sentence};
}

void Checker::within(double value, double low, double high, const std::string& place) {
  if (!(value >= low && value <= high))
    fail(place,
         "Expected a number from " + shortest(low) + " to " + shortest(high) + " at " + place + ", found " + found(value) + ".");
}

void Checker::within(std::optional<double> value, double low, double high, const std::string& place) {
  if (value) within(*value, low, high, place);
}

void Checker::whole(int value, int low, int high, const std::string& place) {
  if (!(value >= low && value <= high))
    fail(place, "Expected a whole number from " + std::to_string(low) + " to " + std::to_string(high) + " at " + place +
                    ", found " + std::to_string(value) + ".");
}

void Checker::whole(std::optional<int> value, int low, int high, const std::string& place) {
  if (value) whole(*value, low, high, place);
}

void Checker::above_zero(double value, double high, const std::string& place) {
  if (!(value > 0 && value <= high))
    fail(place, "Expected a number above 0 and up to " + shortest(high) + " at " + place + ", found " + found(value) + ".");
}

void Checker::length(std::size_t size, int most, const std::string& place) {
  if (!(size <= static_cast<std::size_t>(most)))
    fail(place, "Expected at most " + std::to_string(most) + " entries at " + place + ", found " + std::to_string(size) + ".");
}

void Checker::utf8(std::string_view text, const std::string& place) {
  while (!text.empty()) {
    const std::size_t length = sequence_length(text);
    if (length == 0) return fail(place, "Expected text in UTF-8 at " + place + ", found other bytes.");
    text.remove_prefix(length);
  }
}

void Checker::word(std::string_view text, const std::string& place) {
  if (!(text.size() <= most_word_bytes))
    fail(place, "Expected at most " + std::to_string(most_word_bytes) + " bytes at " + place + ", found " +
                    std::to_string(text.size()) + ".");
  utf8(text, place);
}

void Checker::text(std::string_view text, const std::string& place) {
  text_bytes += text.size();
  utf8(text, place);
}

void Checker::day(std::string_view day_as_text, const std::string& place) {
  if (!day_as_text.empty() && !day_number(day_as_text))
    fail(place, "Expected a calendar day such as 2026-12-05 at " + place + ".");
}

}  // namespace shoalwright
