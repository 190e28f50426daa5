// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace shoalwright {

/// Days since 1970-01-01 of a calendar day written "2026-12-05" (ISO 8601, Gregorian, years 1583 to 9999). Empty when the text is
/// not such a day.
std::optional<int> day_number(std::string_view iso_day);

/// The other way; `day` as day_number gives it.
std::string day_text(int day);

/// The day as it is said: "Sat 5 Dec"; with the year: "Sat 5 Dec 2026".
std::string said_day(int day, bool with_year = false);

}  // namespace shoalwright
