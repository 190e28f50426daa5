// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>

#include "catalog/catalog.h"
#include "share/detail/bits.h"
#include "units/result.h"

namespace shoalwright {

/// How large a whole number is likely to be: its number of binary digits is learnt, the digits below the first two are not.
struct Magnitude {
  std::array<Chance, 64> more{}, second{};
  /// Expects about `digits` binary digits (0: mostly zero).
  explicit Magnitude(int digits);
};

/// How a keeper rounds: to whole, half or the grid's own units; beyond it to decimals, or in US units.
struct Habit {
  Chance whole = zero_in(25), half = zero_in(60), on_grid = zero_in(4);
  Chance named = zero_in(15), decimal = zero_in(50), unit_high = zero_in(50), below = zero_in(90);
  std::array<Chance, 2> unit_low{};
  Magnitude size{8};
};

/// A measure that mostly stands on a grid. `fives`: multiples of five are likely. `per_unit`: grid points a unit.
struct NumberModel {
  int per_unit = 10;
  bool fives = false;
  Chance known, same, in_fives, below, inside;
  Magnitude size, fine_size;
  Habit own_habit;
  Habit* shared_habit = nullptr;  ///< of measures that are taken alike; must outlive the model
  Habit& habit() { return shared_habit != nullptr ? *shared_habit : own_habit; }
  /// `same_percent`: how often it is what was expected; `digits`: of what it is off by otherwise, in whole units.
  NumberModel(int points_a_unit, int same_percent, int digits, bool likes_fives = false);
};

struct WholeModel {
  Chance known = zero_in(25);
  Magnitude size;
  explicit WholeModel(int digits) : size(digits) {}
};

struct TextModel {
  Chance there;
  Magnitude length{5};
  explicit TextModel(int empty_percent) : there(zero_in(empty_percent)) {}
};

/// A word of a fixed list of up to 64, or any text.
struct WordModel {
  Chance other = zero_in(94);
  std::array<Chance, 64> node{};
  TextModel text{1};
};

/// A species by its permanent code, or any name.
struct SpeciesModel {
  Chance other = zero_in(92);
  Magnitude code{6};
  TextModel text{1};
};

/// Writes and reads a link by the same calls, so that both directions can never differ: each call takes the value, writes it or
/// replaces it by what was read, and learns. In `gather` nothing is written and only the texts are put together, which travel in
/// front of the rest, deflated in one go.
class LinkCoder {
 public:
  static LinkCoder gatherer(const Catalog& catalog);
  static LinkCoder writer(const Catalog& catalog);
  static LinkCoder reader(const Catalog& catalog, std::string_view bytes);

  bool reading() const { return mode_ == Mode::read; }

  bool bit(Chance& chance, bool value);
  std::uint32_t uniform(std::uint32_t value, std::uint32_t total);
  std::uint64_t magnitude(Magnitude& model, std::uint64_t value);

  /// `usual`: what it mostly is, free. `from`: where counting starts otherwise.
  void number(NumberModel& model, double& value, double usual, double from);
  void number(NumberModel& model, std::optional<double>& value, double usual, double from);
  /// A place between 0 and `extent`, wherever that is.
  void place(NumberModel& model, std::optional<double>& value, double extent);
  void whole(Magnitude& model, int& value);
  void whole(WholeModel& model, std::optional<int>& value);
  void flag(Chance& chance, bool& value) { value = bit(chance, value); }
  /// The size of a list; 0 when what was read is above `most`.
  std::size_t count(Magnitude& model, std::size_t size, std::size_t most);
  void text(TextModel& model, std::string& value);
  void word(WordModel& model, std::span<const std::string_view> list, std::string& value);
  void species(SpeciesModel& model, std::string& value);
  template <class Choice>
  void choice(Choice& value, std::size_t known, std::uint32_t places);

  /// All texts as one, for the front of the link; of a reader: what was unpacked there.
  void texts(std::string& all);
  /// What is read: nothing more comes of it.
  void refuse(const std::string& sentence);

  std::string& gathered() { return gathered_; }
  std::string finish() { return writer_.finish(); }
  bool refusal_so_far() const { return refusal_.has_value(); }
  /// Why nothing can be opened, at the end of reading; empty when all is well.
  std::optional<std::string> refusal() const;

 private:
  enum class Mode { gather, write, read };
  LinkCoder(Mode mode, const Catalog& catalog, std::string_view bytes) : mode_(mode), catalog_(&catalog), reader_(bytes) {}
  bool may_read();
  void raw_number(double& value);
  void off_grid(Habit& habit, double& value);
  std::int64_t offset(Chance& under, Magnitude& size, std::int64_t value, std::int64_t from);
  enum class Level { fives, whole, half, grid, off };
  Level level(NumberModel& model, double value);

  Mode mode_;
  const Catalog* catalog_;
  BitWriter writer_;
  BitReader reader_;
  std::string gathered_;  ///< gather: what came so far; read: all of it
  std::size_t taken_ = 0;
  std::uint32_t steps_ = 0;  ///< read so far: bounded, since a made-up link could ask for hours of work in few bytes
  std::optional<std::string> refusal_;
};

template <class Choice>
void LinkCoder::choice(Choice& value, std::size_t known, std::uint32_t places) {
  const std::uint32_t index = uniform(static_cast<std::uint32_t>(value), places);
  if (index < known)
    value = static_cast<Choice>(index);
  else
    refuse("This link was made by a newer Shoalwright: open the planner again to get the newest version.");
}

}  // namespace shoalwright
