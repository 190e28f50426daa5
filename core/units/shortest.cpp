// SPDX-License-Identifier: MIT
#include "units/shortest.h"

#include <cmath>
#include <cstdlib>
#include <nlohmann/json.hpp>

namespace shoalwright {

namespace {

/// The significant digits of a finite value other than 0 without point and sign, and its power of ten: 88.4 is "884", 1.
struct Digits {
  std::string text;
  int power = 0;
};

/// The same for what people type: at most nine decimals. Whole numbers below 2^53 and these powers of ten are exact, so their
/// quotient is the double that the decimal text reads back as. False where the value has more.
bool few_decimals(double magnitude, Digits& out) {
  double power = 1;
  for (int decimals = 0; decimals <= 9; ++decimals, power *= 10) {
    const double scaled = std::round(magnitude * power);
    if (!(scaled < 9007199254740992.0)) return false;
    if (scaled / power != magnitude) continue;
    out.text = std::to_string(static_cast<long long>(scaled));
    out.power = static_cast<int>(out.text.size()) - 1 - decimals;
    while (out.text.size() > 1 && out.text.back() == '0') out.text.pop_back();
    return true;
  }
  return false;
}

Digits fewest_digits(double magnitude) {
  if (Digits few; few_decimals(magnitude, few)) return few;
  char found[32];
  int count = 0, exponent = 0;
  // Digits that read back as the same double, seldom more of them than are needed (F. Loitsch, PLDI 2010, algorithm Grisu2).
  nlohmann::detail::dtoa_impl::grisu2(found, count, exponent, magnitude);
  long long figures = 0;
  for (int i = 0; i < count; ++i) figures = figures * 10 + (found[i] - '0');
  const auto reads_back = [magnitude](long long digits, int power) {
    return std::strtod((std::to_string(digits) + 'e' + std::to_string(power)).c_str(), nullptr) == magnitude;
  };
  for (bool fewer = true; fewer && figures >= 10;) {
    fewer = false;
    for (const long long one_less : {(figures + 5) / 10, figures / 10, figures / 10 + 1}) {
      if (fewer || !reads_back(one_less, exponent + 1)) continue;
      figures = one_less;
      ++exponent;
      fewer = true;
    }
  }
  Digits out;
  out.text = std::to_string(figures);
  out.power = static_cast<int>(out.text.size()) - 1 + exponent;
  while (out.text.size() > 1 && out.text.back() == '0') out.text.pop_back();
  return out;
}

}  // namespace

std::string shortest(double value) {
  if (!std::isfinite(value)) return "null";
  if (value == 0) return "0";
  const Digits digits = fewest_digits(std::fabs(value));
  const int count = static_cast<int>(digits.text.size());
  std::string out = value < 0 ? "-" : "";
  if (digits.power >= 17 || digits.power < -6) {
    out += digits.text.substr(0, 1);
    if (count > 1) out += '.' + digits.text.substr(1);
    return out + 'e' + (digits.power < 0 ? '-' : '+') + std::to_string(std::abs(digits.power));
  }
  if (digits.power < 0) return out + "0." + std::string(-digits.power - 1, '0') + digits.text;
  if (count <= digits.power + 1) return out + digits.text + std::string(digits.power + 1 - count, '0');
  return out + digits.text.substr(0, digits.power + 1) + '.' + digits.text.substr(digits.power + 1);
}

}  // namespace shoalwright
