// SPDX-License-Identifier: MIT
#include "units/day.h"

#include <algorithm>

namespace shoalwright {

namespace {

constexpr int first_year = 1583;  // the first whole year of the Gregorian calendar

constexpr bool is_leap(int year) { return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0; }

constexpr int days_in(int year, int month) {
  if (month == 2) return is_leap(year) ? 29 : 28;
  return month == 4 || month == 6 || month == 9 || month == 11 ? 30 : 31;
}

/// Days of all years from year 1 to before `year`.
constexpr int days_before(int year) {
  const int past = year - 1;
  return past * 365 + past / 4 - past / 100 + past / 400;
}

constexpr int epoch = days_before(1970);

int digits(std::string_view text) {
  int value = 0;
  for (const char c : text) {
    if (!(c >= '0' && c <= '9')) return -1;
    value = value * 10 + (c - '0');
  }
  return value;
}

struct Date {
  int year = 1970, month = 1, day = 1;
};

Date date_of(int number) {
  int year = 1970 + number / 366;  // at or before the year wanted after 1970; walked to it below
  while (days_before(year) - epoch > number) --year;
  while (days_before(year + 1) - epoch <= number) ++year;
  int rest = number - (days_before(year) - epoch), month = 1;
  while (rest >= days_in(year, month)) rest -= days_in(year, month++);
  return {year, month, rest + 1};
}

}  // namespace

std::optional<int> day_number(std::string_view iso_day) {
  if (!(iso_day.size() == 10 && iso_day[4] == '-' && iso_day[7] == '-')) return std::nullopt;
  const int year = digits(iso_day.substr(0, 4)), month = digits(iso_day.substr(5, 2)), day = digits(iso_day.substr(8, 2));
  if (!(year >= first_year && month >= 1 && month <= 12 && day >= 1 && day <= days_in(year, month))) return std::nullopt;
  int number = days_before(year) - epoch + day - 1;
  for (int m = 1; m < month; ++m) number += days_in(year, m);
  return number;
}

std::string day_text(int day) {
  const Date date = date_of(day);
  const auto figures = [](int number, std::size_t width) {
    const std::string text = std::to_string(number);
    return std::string(width - std::min(width, text.size()), '0') + text;
  };
  return figures(date.year, 4) + '-' + figures(date.month, 2) + '-' + figures(date.day, 2);
}

std::string said_day(int day, bool with_year) {
  // 1970-01-01 was a Thursday.
  constexpr const char* weekdays[] = {"Thu", "Fri", "Sat", "Sun", "Mon", "Tue", "Wed"};
  constexpr const char* months[] = {"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
  const Date date = date_of(day);
  return std::string(weekdays[(day % 7 + 7) % 7]) + " " + std::to_string(date.day) + " " + months[date.month - 1] +
         (with_year ? " " + std::to_string(date.year) : "");
}

}  // namespace shoalwright
