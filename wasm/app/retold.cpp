// SPDX-License-Identifier: MIT
#include "app/retold.h"

#include <cstdlib>
#include <optional>

#include "units/convert.h"
#include "units/text.h"

namespace shoalwright {

namespace {

bool is_figure(char c) { return c >= '0' && c <= '9'; }
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

/// Bytes of the number that begins at `at`: figures, and a point with figures behind it. 0: none.
std::size_t number_at(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && is_figure(text[end])) ++end;
  if (end == at) return 0;
  if (end + 1 < text.size() && text[end] == '.' && is_figure(text[end + 1]))
    for (++end; end < text.size() && is_figure(text[end]);) ++end;
  return end - at;
}

double value_of(std::string_view figures) { return std::strtod(std::string(figures).c_str(), nullptr); }

enum class Unit { temperature, length, area, volume, volume_per_length, mass };

struct Metric {
  Unit unit;
  std::string_view word;
};

// Longer ones first, since "cm" begins "cm²".
constexpr Metric metric_units[] = {{Unit::temperature, "°C"},         {Unit::area, "cm²"}, {Unit::length, "cm"},
                                   {Unit::volume_per_length, "L/cm"}, {Unit::volume, "L"}, {Unit::mass, "kg"}};

/// The unit that stands at `at` as a word of its own.
std::optional<Metric> unit_at(std::string_view text, std::size_t at) {
  for (const Metric& metric : metric_units) {
    if (text.substr(at, metric.word.size()) != metric.word) continue;
    const std::size_t after = at + metric.word.size();
    if (after < text.size() && (is_letter(text[after]) || is_figure(text[after]) || text[after] == '/')) continue;
    return metric;
  }
  return std::nullopt;
}

bool is_difference(std::string_view after) {
  for (const std::string_view word : {" over", " under", " apart", " short", " spare", " wide", " in hand", " of ", " too "})
    if (after.substr(0, word.size()) == word) return true;
  return false;
}

std::string figures_in_us(double value, Unit unit, bool difference) {
  switch (unit) {
    case Unit::temperature: return difference ? short_text(f_difference_from_c(value), 1) : short_text(f_from_c(value), 0);
    case Unit::length: return short_text(in_from_cm(value), 1);
    case Unit::area: return short_text(in_from_cm(in_from_cm(value)), 0);
    case Unit::volume: return short_text(us_gal_from_l(value), us_gal_from_l(value) < 100 ? 1 : 0);
    case Unit::volume_per_length: return short_text(us_gal_from_l(value) * cm_per_in, 2);
    case Unit::mass: return known_text(lb_from_kg(value), lb_from_kg(value) < 200 ? 1 : 10);
  }
  return "";
}

const char* us_word(Unit unit) {
  switch (unit) {
    case Unit::temperature: return "°F";
    case Unit::length: return "in";
    case Unit::area: return "in²";
    case Unit::volume: return "gal";
    case Unit::volume_per_length: return "gal/in";
    case Unit::mass: return "lb";
  }
  return "";
}

}  // namespace

std::string retold(const Measures& measures, std::string_view metric) {
  if (!measures.us) return std::string(metric);
  std::string told;
  std::size_t at = 0;
  while (at < metric.size()) {
    const bool begins = at == 0 || !(is_figure(metric[at - 1]) || is_letter(metric[at - 1]) || metric[at - 1] == '.');
    const std::size_t first = begins ? number_at(metric, at) : 0;
    if (first == 0) {
      told += metric[at++];
      continue;
    }
    // "24 to 27 °C", "2 of 5 cm", "40 × 20 × 25 cm": a row of numbers shares the unit behind the last.
    struct Number {
      std::size_t at, size;
    };
    Number row[4] = {{at, first}};
    std::size_t count = 1, end = at + first;
    for (bool more = true; more && count < 4;) {
      more = false;
      for (const std::string_view link : {" to ", " of ", " × ", " x "}) {
        if (metric.substr(end, link.size()) != link) continue;
        const std::size_t size = number_at(metric, end + link.size());
        if (size == 0) continue;
        row[count++] = {end + link.size(), size};
        end += link.size() + size;
        more = true;
        break;
      }
    }
    const std::optional<Metric> unit = end < metric.size() && metric[end] == ' ' ? unit_at(metric, end + 1) : std::nullopt;
    if (!unit) {
      told += metric.substr(at, first);
      at += first;
      continue;
    }
    const std::size_t after = end + 1 + unit->word.size();
    const bool difference = is_difference(metric.substr(after));
    for (std::size_t i = 0; i < count; ++i) {
      if (i > 0) told += metric.substr(row[i - 1].at + row[i - 1].size, row[i].at - row[i - 1].at - row[i - 1].size);
      told += figures_in_us(value_of(metric.substr(row[i].at, row[i].size)), unit->unit, difference);
    }
    told += std::string(" ") + us_word(unit->unit);
    at = after;
  }
  return told;
}

}  // namespace shoalwright
