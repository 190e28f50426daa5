// SPDX-License-Identifier: MIT
#include "support/check_table.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>

namespace shoalwright {

namespace {

std::string trimmed(std::string_view text) {
  const std::size_t from = text.find_first_not_of(" \t");
  if (from == std::string_view::npos) return {};
  return std::string(text.substr(from, text.find_last_not_of(" \t") - from + 1));
}

std::string at_line(int line, const std::string& what) { return "Line " + std::to_string(line) + ": " + what; }

struct Record {
  std::vector<std::string> fields;
  int line = 0;
};

/// RFC 4180: fields in quotes may hold commas, line ends and doubled quotes.
Result<std::vector<Record>> read_records(std::string_view csv) {
  std::vector<Record> records;
  int line = 1;
  std::size_t i = 0;
  while (i < csv.size()) {
    Record record{.fields = {}, .line = line};
    bool more = true;
    while (more) {
      std::string field;
      if (i < csv.size() && csv[i] == '"') {
        ++i;
        for (;; ++i) {
          if (i >= csv.size()) return Error{"", at_line(record.line, "a quoted field has no end.")};
          if (csv[i] == '\n') ++line;
          if (csv[i] != '"') {
            field += csv[i];
          } else if (i + 1 < csv.size() && csv[i + 1] == '"') {
            field += csv[++i];
          } else {
            ++i;
            break;
          }
        }
      } else {
        while (i < csv.size() && csv[i] != ',' && csv[i] != '\n' && csv[i] != '\r') {
          if (csv[i] == '"') return Error{"", at_line(line, "a quote stands inside a field that has none around it.")};
          field += csv[i++];
        }
      }
      record.fields.push_back(std::move(field));
      more = i < csv.size() && csv[i] == ',';
      if (more) ++i;
    }
    if (i < csv.size() && csv[i] == '\r') ++i;
    if (i < csv.size() && csv[i] != '\n') return Error{"", at_line(line, "text follows a quoted field.")};
    ++i;
    ++line;
    if (record.fields.size() == 1 && record.fields[0].empty()) continue;  // an empty line
    records.push_back(std::move(record));
  }
  return records;
}

std::string digits(double value, const char* format) {
  char text[64];
  std::snprintf(text, sizeof text, format, value);
  return text;
}

std::string text_of(const CheckAnswer& answer) {
  if (const double* number = std::get_if<double>(&answer)) return digits(*number, "%.9g");
  return std::get<std::string>(answer);
}

const CheckFunction* find_function(const std::string& quantity) {
  for (const auto* table : {&check_biology(), &check_chemistry()}) {
    const auto found = table->find(quantity);
    if (found != table->end()) return &found->second;
  }
  return nullptr;
}

}  // namespace

std::optional<double> parse_number(std::string_view text) {
  const std::string copy(text);
  if (copy.empty() || copy.find_first_not_of("+-.0123456789eE") != std::string::npos) return std::nullopt;
  char* end = nullptr;
  const double value = std::strtod(copy.c_str(), &end);
  if (*end != '\0' || !std::isfinite(value)) return std::nullopt;
  return value;
}

std::vector<std::string> split_text(std::string_view text, std::string_view separator) {
  std::vector<std::string> parts;
  std::size_t from = 0;
  for (;;) {
    const std::size_t at = text.find(separator, from);
    parts.push_back(trimmed(text.substr(from, at == std::string_view::npos ? at : at - from)));
    if (at == std::string_view::npos) return parts;
    from = at + separator.size();
  }
}

Result<std::vector<CheckRow>> read_check_table(std::string_view csv) {
  if (csv.substr(0, 3) == "\xEF\xBB\xBF") csv.remove_prefix(3);
  const Result<std::vector<Record>> records = read_records(csv);
  if (!records) return records.error();
  static const std::vector<std::string> header{"quantity", "inputs", "expected", "unit", "tolerance", "kind", "source"};
  if (records->empty() || (*records)[0].fields != header)
    return Error{"", "Line 1: the columns must be quantity, inputs, expected, unit, tolerance, kind, source."};
  std::vector<CheckRow> rows;
  for (std::size_t i = 1; i < records->size(); ++i) {
    const Record& r = (*records)[i];
    if (r.fields.size() != header.size()) return Error{"", at_line(r.line, "seven fields are needed.")};
    rows.push_back({r.fields[0], r.fields[1], r.fields[2], r.fields[3], r.fields[4], r.fields[5], r.fields[6], r.line});
  }
  return rows;
}

CheckInputs::CheckInputs(std::string_view text) {
  if (trimmed(text).empty()) return;
  for (const std::string& part : split_text(text, ";")) {
    const std::size_t equals = part.find('=');
    if (equals == std::string::npos || equals == 0)
      refuse("input \"" + part + "\" is not key=value");
    else if (!values_.emplace(part.substr(0, equals), part.substr(equals + 1)).second)
      refuse("input " + part.substr(0, equals) + " is given twice");
  }
}

void CheckInputs::refuse(std::string why) {
  if (problem_.empty()) problem_ = std::move(why);
}

std::string CheckInputs::text(const std::string& key) {
  const auto found = values_.find(key);
  if (found != values_.end()) return found->second;
  refuse("input " + key + " is missing");
  return {};
}

std::string CheckInputs::text_or(const std::string& key, std::string otherwise) {
  return values_.count(key) ? text(key) : std::move(otherwise);
}

double CheckInputs::number(const std::string& key) {
  const std::string value = text(key);
  const std::optional<double> parsed = parse_number(value);
  if (!parsed) refuse("input " + key + " is no number");
  return parsed.value_or(0);
}

double CheckInputs::number_or(const std::string& key, double otherwise) { return values_.count(key) ? number(key) : otherwise; }

std::optional<bool> within(std::string_view tolerance, const CheckAnswer& got, const std::string& expected) {
  const std::optional<double> wanted = parse_number(expected);
  const double* value = std::get_if<double>(&got);
  if (tolerance == "exact") {
    if (!value) return std::get<std::string>(got) == expected;
    return wanted && digits(*value, "%.12g") == digits(*wanted, "%.12g");
  }
  bool holds = false;
  for (const std::string& alternative : split_text(tolerance, "|")) {
    const bool relative = alternative.rfind("rel:", 0) == 0;
    if (!relative && alternative.rfind("abs:", 0) != 0) return std::nullopt;
    const std::optional<double> most = parse_number(std::string_view(alternative).substr(4));
    if (!most || !(*most >= 0)) return std::nullopt;
    if (!value || !wanted) continue;
    holds = holds || std::abs(*value - *wanted) <= (relative ? *most * std::abs(*wanted) : *most);
  }
  return holds;
}

CheckResult check_row(const CheckRow& row) {
  if (row.tolerance == "quoted") return {CheckOutcome::quoted, ""};
  const CheckFunction* function = find_function(row.quantity);
  if (!function) return {CheckOutcome::failed, "unknown quantity"};
  CheckInputs inputs(row.inputs);
  const CheckAnswer got = (*function)(inputs);
  if (!inputs.problem().empty()) return {CheckOutcome::failed, inputs.problem()};
  const std::optional<bool> accepted = within(row.tolerance, got, row.expected);
  if (!accepted) return {CheckOutcome::failed, "tolerance \"" + row.tolerance + "\" is not understood"};
  if (!*accepted) return {CheckOutcome::failed, "got " + text_of(got)};
  return {CheckOutcome::passed, ""};
}

CheckReport check_table(const std::vector<CheckRow>& rows) {
  CheckReport report;
  for (const CheckRow& row : rows) {
    const CheckResult result = check_row(row);
    const std::string what = row.quantity + (row.inputs.empty() ? "" : " (" + row.inputs + ")");
    switch (result.outcome) {
      case CheckOutcome::passed: ++report.passed; break;
      case CheckOutcome::failed:
        ++report.failed;
        report.lines.push_back(at_line(row.line, what + ": expected " + row.expected + " " + row.unit + ", " + row.tolerance +
                                                     "; " + result.reason + ". " + row.source));
        break;
      case CheckOutcome::quoted:
        report.lines.push_back(at_line(row.line, what + ": quoted, " + row.expected + " " + row.unit + ". " + row.source));
        break;
    }
  }
  return report;
}

}  // namespace shoalwright
