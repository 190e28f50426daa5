// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "plan/plan.h"
#include "units/result.h"

namespace shoalwright {

/// Remembers the first thing that does not hold.
struct Checker {
  std::optional<Error> error;
  std::size_t text_bytes = 0;  ///< of all texts seen

  void fail(const std::string& place, const std::string& sentence);
  /// low <= value <= high, and finite.
  void within(double value, double low, double high, const std::string& place);
  void within(std::optional<double> value, double low, double high, const std::string& place);
  void whole(int value, int low, int high, const std::string& place);
  void whole(std::optional<int> value, int low, int high, const std::string& place);
  /// 0 < value <= high.
  void above_zero(double value, double high, const std::string& place);
  /// A list of at most `most` entries.
  void length(std::size_t size, int most, const std::string& place);
  /// A name or an id: well-formed UTF-8 (RFC 3629) of at most 500 bytes.
  void word(std::string_view text, const std::string& place);
  /// What the keeper wrote freely: well-formed UTF-8, adds to text_bytes.
  void text(std::string_view text, const std::string& place);
  /// Empty or a calendar day.
  void day(std::string_view text, const std::string& place);

 private:
  void utf8(std::string_view text, const std::string& place);
};

void check_tank(Checker& checker, const Tank& tank);

}  // namespace shoalwright
