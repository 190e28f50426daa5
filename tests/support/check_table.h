// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "units/result.h"

namespace shoalwright {

// Check tables: CSV by RFC 4180 with the columns quantity, inputs, expected, unit, tolerance, kind, source. `inputs` is key=value
// joined by semicolons. `tolerance` is alternatives joined by a bar, each abs:X or rel:X, of which one must hold; or `exact`:
// equal text, or equal to 12 digits; or `quoted`: a published fact that nothing here computes. Every answer comes from the core's
// own functions (check_biology.cpp, check_chemistry.cpp).

struct CheckRow {
  std::string quantity, inputs, expected, unit, tolerance, kind, source;
  int line = 0;  ///< where the record begins, from 1
};

/// Rows of a CSV text with that header, in its order. The error names the line.
Result<std::vector<CheckRow>> read_check_table(std::string_view csv);

/// The inputs of one row. A key that is asked for and not there, or is no number, makes the row fail.
class CheckInputs {
 public:
  explicit CheckInputs(std::string_view text);
  double number(const std::string& key);
  double number_or(const std::string& key, double otherwise);
  std::string text(const std::string& key);
  std::string text_or(const std::string& key, std::string otherwise);
  /// Says that the inputs cannot be answered.
  void refuse(std::string why);
  /// Why the row fails; empty when every input was found.
  const std::string& problem() const { return problem_; }

 private:
  std::map<std::string, std::string> values_;
  std::string problem_;
};

using CheckAnswer = std::variant<double, std::string>;
using CheckFunction = CheckAnswer (*)(CheckInputs& in);

/// What is known to answer, by the name of the quantity.
const std::map<std::string, CheckFunction, std::less<>>& check_biology();
const std::map<std::string, CheckFunction, std::less<>>& check_chemistry();

enum class CheckOutcome { passed, failed, quoted };

struct CheckResult {
  CheckOutcome outcome = CheckOutcome::failed;
  std::string reason;  ///< of a failure: what was got, or why nothing was
};

CheckResult check_row(const CheckRow& row);

/// Whether a tolerance accepts `got` for `expected`; empty when it is not written by the grammar above.
std::optional<bool> within(std::string_view tolerance, const CheckAnswer& got, const std::string& expected);

struct CheckReport {
  int passed = 0, failed = 0;
  std::vector<std::string> lines;  ///< quoted facts and failing rows, in the order of the table
};

CheckReport check_table(const std::vector<CheckRow>& rows);

/// The number that is the whole of a text; empty when it is none.
std::optional<double> parse_number(std::string_view text);

/// Text between separators, blanks at the ends taken off.
std::vector<std::string> split_text(std::string_view text, std::string_view separator);

}  // namespace shoalwright
