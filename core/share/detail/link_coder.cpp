// SPDX-License-Identifier: MIT
#include "share/detail/link_coder.h"

#include <climits>
#include <cmath>
#include <cstring>

#include "share/detail/deflate.h"
#include "share/detail/off_grid.h"

namespace shoalwright {

namespace {

constexpr std::size_t most_text_bytes = 16 * 1024 * 1024;  // all texts of a plan at its limits, names and pointers included
constexpr std::uint32_t most_steps = 16'000'000;           // a plan at its limits takes a few million
constexpr double largest_on_grid = 1e9;
constexpr std::uint64_t furthest_offset = 1'000'000'000'000'000;
constexpr double largest_extent = 3000;  // so that tenths of it fit into 65536 places

constexpr const char* damaged = "This link is damaged: some of it is missing or changed, so nothing was opened.";

bool is_whole(double value) { return std::fabs(value) < largest_on_grid && std::floor(value) == value; }

std::int64_t nearest(double value) {
  return std::isfinite(value) && std::fabs(value) < largest_on_grid * 100 ? std::llround(value) : 0;
}

bool stands_on_grid(double value, int per_unit) {
  if (!(std::fabs(value) < largest_on_grid)) return false;
  return static_cast<double>(nearest(value * per_unit)) / per_unit == value;
}

}  // namespace

Magnitude::Magnitude(int digits) {
  for (int i = 0; i < 64; ++i) more[i] = zero_in(i + 1 < digits ? 7 : i < digits ? 25 : i == digits ? 55 : 75);
}

NumberModel::NumberModel(int points_a_unit, int same_percent, int digits, bool likes_fives)
    : per_unit(points_a_unit),
      fives(likes_fives),
      known(zero_in(15)),
      same(zero_in(100 - same_percent)),
      in_fives(zero_in(30)),
      below(zero_in(65)),
      inside(zero_in(3)),
      size(digits),
      fine_size(digits + (points_a_unit == 1    ? 0
                          : points_a_unit == 10 ? 3
                                                : 6)) {}

LinkCoder LinkCoder::gatherer(const Catalog& catalog) { return {Mode::gather, catalog, ""}; }
LinkCoder LinkCoder::writer(const Catalog& catalog) { return {Mode::write, catalog, ""}; }
LinkCoder LinkCoder::reader(const Catalog& catalog, std::string_view bytes) { return {Mode::read, catalog, bytes}; }

void LinkCoder::refuse(const std::string& sentence) {
  if (!refusal_) refusal_ = sentence;
}

std::optional<std::string> LinkCoder::refusal() const {
  if (!refusal_ && mode_ == Mode::read && taken_ != gathered_.size()) return damaged;
  return refusal_;
}

bool LinkCoder::may_read() {
  if (++steps_ > most_steps || reader_.overrun()) refuse(damaged);
  return !refusal_;
}

bool LinkCoder::bit(Chance& chance, bool value) {
  if (mode_ == Mode::write) writer_.bit(chance, value);
  if (mode_ == Mode::read) return may_read() && reader_.bit(chance);
  return value;
}

std::uint32_t LinkCoder::uniform(std::uint32_t value, std::uint32_t total) {
  if (mode_ == Mode::write) writer_.uniform(value, total);
  if (mode_ == Mode::read) return may_read() ? reader_.uniform(total) : 0;
  return value;
}

std::uint64_t LinkCoder::magnitude(Magnitude& model, std::uint64_t value) {
  // 1 more than the value has a first binary digit, which says where it ends. 63 digits are enough for all that is written.
  const std::uint64_t shifted = value + 1;
  int digits = 0;
  while (digits < 62 && shifted >> (digits + 1) != 0) ++digits;
  int length = 0;
  while (length < 62 && bit(model.more[length], length < digits)) ++length;
  std::uint64_t out = 1;
  if (length > 0) out = out << 1 | (bit(model.second[length], (shifted >> (length - 1) & 1) != 0) ? 1u : 0u);
  for (int left = length - 1; left > 0;) {
    const int now = left < 16 ? left : 16;
    left -= now;
    const std::uint64_t part = shifted >> left & ((1u << now) - 1);
    out = out << now | uniform(static_cast<std::uint32_t>(part), 1u << now);
  }
  return out - 1;
}

void LinkCoder::raw_number(double& value) {
  std::uint64_t bits = 0;
  std::memcpy(&bits, &value, sizeof bits);
  std::uint64_t out = 0;
  for (int left = 48; left >= 0; left -= 16)
    out = out << 16 | uniform(static_cast<std::uint32_t>(bits >> left & 0xFFFF), 1u << 16);
  std::memcpy(&value, &out, sizeof value);
}

void LinkCoder::off_grid(Habit& habit, double& value) {
  const std::optional<OffGrid> known = reading() ? std::nullopt : off_grid_of(value);
  if (!bit(habit.named, known.has_value())) return raw_number(value);
  OffGrid number = known.value_or(OffGrid{});
  if (bit(habit.decimal, number.scale == Scale::decimal)) {
    number.scale = Scale::decimal;
    number.decimals = static_cast<int>(uniform(static_cast<std::uint32_t>(number.decimals), 10));
  } else {
    const auto unit = static_cast<unsigned>(number.scale);
    const bool high = bit(habit.unit_high, unit >> 1 != 0);
    number.scale = static_cast<Scale>((high ? 2 : 0) + (bit(habit.unit_low[high], (unit & 1) != 0) ? 1 : 0));
  }
  number.steps = offset(habit.below, habit.size, number.steps, 0);
  value = value_of(number);
}

LinkCoder::Level LinkCoder::level(NumberModel& model, double value) {
  if (model.fives && bit(model.in_fives, is_whole(value) && is_whole(value / 5))) return Level::fives;
  Habit& habit = model.habit();
  if (bit(habit.whole, is_whole(value))) return Level::whole;
  if (model.per_unit > 1 && bit(habit.half, is_whole(value - 0.5))) return Level::half;
  if (model.per_unit > 1 && bit(habit.on_grid, stands_on_grid(value, model.per_unit))) return Level::grid;
  return Level::off;
}

std::int64_t LinkCoder::offset(Chance& under, Magnitude& size, std::int64_t value, std::int64_t from) {
  const std::int64_t off = value - from;
  const bool below = bit(under, off < 0);
  const std::uint64_t read = magnitude(size, static_cast<std::uint64_t>(off < 0 ? -off : off));
  if (read > furthest_offset) {  // never written; a made-up link could count past what an integer holds
    refuse(damaged);
    return from;
  }
  const auto distance = static_cast<std::int64_t>(read);
  return from + (below ? -distance : distance);
}

void LinkCoder::number(NumberModel& model, double& value, double usual, double from) {
  if (bit(model.same, value == usual)) {
    value = usual;
    return;
  }
  switch (level(model, value)) {
    case Level::fives:
      value = 5 * static_cast<double>(offset(model.below, model.size, nearest(value / 5), nearest(from / 5)));
      break;
    case Level::whole: value = static_cast<double>(offset(model.below, model.size, nearest(value), nearest(from))); break;
    case Level::half:
      value = static_cast<double>(offset(model.below, model.size, nearest(value - 0.5), nearest(from))) + 0.5;
      break;
    case Level::grid:
      value = static_cast<double>(
                  offset(model.below, model.fine_size, nearest(value * model.per_unit), nearest(from * model.per_unit))) /
              model.per_unit;
      break;
    case Level::off: off_grid(model.habit(), value); break;
  }
}

void LinkCoder::number(NumberModel& model, std::optional<double>& value, double usual, double from) {
  double number_value = value ? *value : 0;
  if (bit(model.known, value.has_value())) {
    number(model, number_value, usual, from);
    value = number_value;
  } else {
    value.reset();
  }
}

void LinkCoder::place(NumberModel& model, std::optional<double>& value, double extent) {
  double at = value ? *value : 0;
  if (!bit(model.known, value.has_value())) {
    value.reset();
    return;
  }
  const double most = extent >= 0 && extent <= largest_extent ? extent : 0;
  if (!bit(model.inside, at >= 0 && at <= most)) {
    number(model, at, 0, 0);
    value = at;
    return;
  }
  const auto among = [&](double steps, double all) {
    return static_cast<double>(uniform(static_cast<std::uint32_t>(steps), static_cast<std::uint32_t>(all) + 1));
  };
  const int fine = model.per_unit;
  switch (level(model, at)) {
    case Level::fives: at = 5 * among(at / 5, std::floor(most / 5)); break;
    case Level::whole: at = among(at, std::floor(most)); break;
    case Level::half: at = among(at - 0.5, std::floor(most)) + 0.5; break;
    case Level::grid: at = among(static_cast<double>(nearest(at * fine)), std::floor(most * fine) + 1) / fine; break;
    case Level::off: off_grid(model.habit(), at); break;
  }
  value = at;
}

void LinkCoder::whole(Magnitude& model, int& value) {
  const std::uint64_t read = magnitude(model, static_cast<std::uint64_t>(value < 0 ? INT_MAX : value));
  if (read <= INT_MAX)
    value = static_cast<int>(read);
  else
    refuse("This link holds a count that no tank can hold, so nothing was opened.");
}

void LinkCoder::whole(WholeModel& model, std::optional<int>& value) {
  int number_value = value ? *value : 0;
  if (bit(model.known, value.has_value())) {
    whole(model.size, number_value);
    value = number_value;
  } else {
    value.reset();
  }
}

std::size_t LinkCoder::count(Magnitude& model, std::size_t size, std::size_t most) {
  const std::uint64_t read = magnitude(model, size);
  if (read <= most) return static_cast<std::size_t>(read);
  refuse("This link holds a list longer than a plan can have, so nothing was opened.");
  return 0;
}

void LinkCoder::text(TextModel& model, std::string& value) {
  if (!bit(model.there, !value.empty())) {
    value.clear();
    return;
  }
  const std::uint64_t size = magnitude(model.length, value.size());
  if (mode_ == Mode::gather) gathered_ += value;
  if (mode_ != Mode::read) return;
  if (!(size <= gathered_.size() - taken_)) return refuse(damaged);
  value.assign(gathered_, taken_, static_cast<std::size_t>(size));
  taken_ += static_cast<std::size_t>(size);
}

void LinkCoder::word(WordModel& model, std::span<const std::string_view> list, std::string& value) {
  std::size_t index = list.size();
  for (std::size_t i = 0; i < list.size() && index == list.size(); ++i)
    if (list[i] == value) index = i;
  if (bit(model.other, index == list.size())) return text(model.text, value);
  std::size_t node = 1;
  for (int i = 5; i >= 0; --i) node = node << 1 | (bit(model.node[node], (index >> i & 1) != 0) ? 1u : 0u);
  if (node - 64 < list.size())
    value = list[node - 64];
  else
    refuse("This link was made by a newer Shoalwright: open the planner again to get the newest version.");
}

void LinkCoder::species(SpeciesModel& model, std::string& value) {
  const Species* known = nullptr;
  if (!reading())
    for (const Species& species : catalog_->species)
      if (species.id == value) known = &species;
  const bool by_code = known != nullptr && known->code > 0;
  if (bit(model.other, !by_code)) return text(model.text, value);
  const std::uint64_t code = magnitude(model.code, by_code ? static_cast<std::uint64_t>(known->code) : 0);
  if (!reading()) return;
  const Species* found = code <= INT_MAX ? find_species(*catalog_, static_cast<int>(code)) : nullptr;
  if (found != nullptr)
    value = found->id;
  else
    refuse("This link names a species that this version does not know: open the planner again to get the newest version.");
}

void LinkCoder::texts(std::string& all) {
  Chance there = zero_in(20);
  Magnitude size(8), packed_size(7);
  if (!bit(there, !all.empty())) return;
  const std::string packed = reading() ? "" : deflate_text(all);
  const std::uint64_t text_bytes = magnitude(size, all.size());
  const std::uint64_t packed_bytes = magnitude(packed_size, packed.size());
  if (!reading()) {
    for (const char c : packed) uniform(static_cast<unsigned char>(c), 256);
    return;
  }
  if (!(text_bytes <= most_text_bytes && packed_bytes <= most_text_bytes)) return refuse(damaged);
  std::string read;
  for (std::uint64_t i = 0; i < packed_bytes && !refusal_; ++i) read += static_cast<char>(uniform(0, 256));
  const std::optional<std::string> unpacked = inflate_text(read, static_cast<std::size_t>(text_bytes));
  if (!unpacked) return refuse(damaged);
  gathered_ = *unpacked;
}

}  // namespace shoalwright
