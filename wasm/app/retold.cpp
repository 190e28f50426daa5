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

enum class Unit { temperature, length, area, volume, volume_per_length, mass, hardness, nitrate };

struct Metric {
  Unit unit;
  std::string_view word;
};

// Longer ones first, since "cm" begins "cm²".
constexpr Metric metric_units[] = {{Unit::temperature, "°C"},         {Unit::area, "cm²"},    {Unit::length, "cm"},
                                   {Unit::volume_per_length, "L/cm"}, {Unit::volume, "L"},    {Unit::mass, "kg"},
                                   {Unit::hardness, "°dH"},           {Unit::nitrate, "mg/L"}};

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

/// Which hardness the text was last told of before `at`; where of none, the next one after it.
Hardness hardness_at(std::string_view text, std::size_t at, Hardness otherwise) {
  const std::size_t gh = text.rfind("GH", at), kh = text.rfind("KH", at);
  if (gh != std::string_view::npos || kh != std::string_view::npos) {
    if (kh == std::string_view::npos) return Hardness::gh;
    return gh == std::string_view::npos || kh > gh ? Hardness::kh : Hardness::gh;
  }
  const std::size_t next_gh = text.find("GH", at), next_kh = text.find("KH", at);
  if (next_gh == next_kh) return otherwise;
  return next_kh < next_gh ? Hardness::kh : Hardness::gh;
}

/// Whether the number at `at` stands behind GH or KH, by itself or by one of the words that sentences have there.
bool behind_hardness(std::string_view text, std::size_t at) {
  for (const std::string_view word : {" ", " to ", " comes to ", " falls to ", " comes out "}) {
    if (at < word.size() + 2 || text.substr(at - word.size(), word.size()) != word) continue;
    const std::string_view name = text.substr(at - word.size() - 2, 2);
    if (name == "GH" || name == "KH") return true;
  }
  return false;
}

struct Teller {
  const Measures& m;
  const About& about;

  bool counts_as_core(Unit unit) const {
    if (unit == Unit::hardness) return m.hardness_in == HardnessUnit::degrees;
    if (unit == Unit::nitrate) return !(m.nitrate_as_n && about.nitrate);
    return !m.us;
  }

  std::string figures(double value, Unit unit, bool difference, Hardness hardness) const {
    switch (unit) {
      case Unit::temperature: return difference ? short_text(f_difference_from_c(value), 1) : short_text(f_from_c(value), 0);
      case Unit::length: return short_text(in_from_cm(value), 1);
      case Unit::area: return short_text(in_from_cm(in_from_cm(value)), 0);
      case Unit::volume: return short_text(us_gal_from_l(value), us_gal_from_l(value) < 100 ? 1 : 0);
      case Unit::volume_per_length: return short_text(us_gal_from_l(value) * cm_per_in, 2);
      case Unit::mass: return known_text(lb_from_kg(value), lb_from_kg(value) < 200 ? 1 : 10);
      case Unit::hardness: return m.hardness_figure(value, hardness);
      case Unit::nitrate: return m.nitrate_figure(value, value == static_cast<int>(value) ? 0 : 1);
    }
    return "";
  }

  const char* word(Unit unit, Hardness hardness) const {
    switch (unit) {
      case Unit::temperature: return "°F";
      case Unit::length: return "in";
      case Unit::area: return "in²";
      case Unit::volume: return "gal";
      case Unit::volume_per_length: return "gal/in";
      case Unit::mass: return "lb";
      case Unit::hardness: return m.hardness_unit(hardness);
      case Unit::nitrate: return m.nitrate_unit();
    }
    return "";
  }
};

}  // namespace

About about_of(std::string_view rule) {
  return {.nitrate = rule == "nitrate" || rule == "load",
          .hardness = rule == "water-kh" || rule == "kh-low" ? Hardness::kh : Hardness::gh};
}

std::string retold(const Measures& measures, std::string_view metric, const About& about) {
  if (!measures.us && !measures.nitrate_as_n && measures.hardness_in == HardnessUnit::degrees) return std::string(metric);
  const Teller teller{measures, about};
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
    std::optional<Metric> unit = end < metric.size() && metric[end] == ' ' ? unit_at(metric, end + 1) : std::nullopt;
    std::size_t after = unit ? end + 1 + unit->word.size() : end;
    if (!unit && behind_hardness(metric, at)) unit = {Unit::hardness, ""};
    if (!unit || teller.counts_as_core(unit->unit)) {
      told += metric.substr(at, first);
      at += first;
      continue;
    }
    const Hardness hardness = hardness_at(metric, at, about.hardness);
    const bool difference = is_difference(metric.substr(after));
    for (std::size_t i = 0; i < count; ++i) {
      if (i > 0) told += metric.substr(row[i - 1].at + row[i - 1].size, row[i].at - row[i - 1].at - row[i - 1].size);
      told += teller.figures(value_of(metric.substr(row[i].at, row[i].size)), unit->unit, difference, hardness);
    }
    told += std::string(" ") + teller.word(unit->unit, hardness);
    at = after;
  }
  return told;
}

}  // namespace shoalwright
