// SPDX-License-Identifier: MIT
#include "units/shortest.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>

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
  char text[40];
  // 17 significant digits always read back exactly (IEEE 754 section 5.12.2), so the loop ends with an exact text.
  for (int digits = 1; digits <= 17; ++digits) {
    std::snprintf(text, sizeof text, "%.*e", digits - 1, magnitude);
    if (std::strtod(text, nullptr) == magnitude) break;
  }
  Digits out;
  const char* c = text;
  for (; *c != 'e'; ++c)
    if (*c >= '0' && *c <= '9') out.text += *c;  // the point is whatever the locale says: leave it out
  out.power = std::atoi(c + 1);
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
