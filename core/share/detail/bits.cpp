// SPDX-License-Identifier: MIT
#include "share/detail/bits.h"

#include <algorithm>
#include <utility>

namespace shoalwright {

namespace {

constexpr int fraction_bits = 12;                // of a chance that the coder sees
constexpr std::uint32_t least_range = 1u << 24;  // below it a byte is settled

/// The part of `range` that stands for 0: never nothing, never all of it.
std::uint32_t part_of_zero(std::uint32_t range, const Chance& chance) {
  const std::uint32_t share = std::max(1u, static_cast<std::uint32_t>(chance.of_zero) >> (16 - fraction_bits));
  return (range >> fraction_bits) * share;
}

}  // namespace

void Chance::learn(bool bit) {
  const int shift = seen < 2 ? 2 : seen < 5 ? 3 : seen < 12 ? 4 : 5;
  if (bit)
    of_zero = static_cast<std::uint16_t>(of_zero - (of_zero >> shift));
  else
    of_zero = static_cast<std::uint16_t>(of_zero + ((0xFFFF - of_zero) >> shift));
  if (seen < 12) ++seen;
}

void BitWriter::add(std::uint32_t amount) {
  low_ += amount;
  if (low_ >= amount) return;
  for (std::size_t i = bytes_.size(); i-- > 0;) {  // carry into the bytes that are settled already
    const auto byte = static_cast<unsigned char>(static_cast<unsigned char>(bytes_[i]) + 1u);
    bytes_[i] = static_cast<char>(byte);
    if (byte != 0) return;
  }
}

void BitWriter::normalise() {
  while (range_ < least_range) {
    bytes_ += static_cast<char>(low_ >> 24);
    low_ <<= 8;
    range_ <<= 8;
  }
}

void BitWriter::bit(Chance& chance, bool value) {
  const std::uint32_t zero = part_of_zero(range_, chance);
  if (value) {
    add(zero);
    range_ -= zero;
  } else {
    range_ = zero;
  }
  chance.learn(value);
  normalise();
}

void BitWriter::uniform(std::uint32_t value, std::uint32_t total) {
  range_ /= total;
  add(range_ * value);
  normalise();
}

std::string BitWriter::finish() {
  // The number inside the last interval with the most zeros at its end; the reader takes missing bytes as zeros.
  for (int kept = 0; kept <= 4; ++kept) {
    const std::uint32_t below = kept == 4 ? 0 : 0xFFFFFFFFu >> (8 * kept);
    const std::uint32_t up = (~low_ + 1) & below;  // to the next number that ends in zeros
    if (!(up < range_)) continue;
    add(up);
    for (int i = 0; i < kept; ++i) bytes_ += static_cast<char>(low_ >> (24 - 8 * i));
    break;
  }
  while (!bytes_.empty() && bytes_.back() == 0) bytes_.pop_back();
  return std::move(bytes_);
}

BitReader::BitReader(std::string_view bytes) : bytes_(bytes) {
  for (int i = 0; i < 4; ++i) {
    code_ = code_ << 8 | (at_ < bytes_.size() ? static_cast<unsigned char>(bytes_[at_]) : 0u);
    ++at_;
  }
}

void BitReader::normalise() {
  while (range_ < least_range) {
    code_ = code_ << 8 | (at_ < bytes_.size() ? static_cast<unsigned char>(bytes_[at_]) : 0u);
    range_ <<= 8;
    ++at_;
  }
}

bool BitReader::bit(Chance& chance) {
  const std::uint32_t zero = part_of_zero(range_, chance);
  const bool value = code_ >= zero;
  if (value) {
    code_ -= zero;
    range_ -= zero;
  } else {
    range_ = zero;
  }
  chance.learn(value);
  normalise();
  return value;
}

std::uint32_t BitReader::uniform(std::uint32_t total) {
  range_ /= total;
  const std::uint32_t value = std::min(code_ / range_, total - 1);
  code_ -= range_ * value;
  normalise();
  return value;
}

}  // namespace shoalwright
