// SPDX-License-Identifier: MIT
#include "notebook/say.h"

#include "units/text.h"

namespace shoalwright {

std::string joined(const std::vector<std::string>& parts) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (i > 0) text += i + 1 == parts.size() ? " and " : ", ";
    text += parts[i];
  }
  return text;
}

std::string amount(double value, int decimals, std::string_view unit) {
  std::string text = short_text(value, decimals);
  if (!unit.empty()) text.append(" ").append(unit);
  return text;
}

std::string span_of(double low, double high, int decimals, std::string_view unit) {
  const std::string from = short_text(low, decimals), to = short_text(high, decimals);
  if (from == to) return amount(low, decimals, unit);
  return from + " to " + amount(high, decimals, unit);
}

std::string percent(double share) { return amount(share * 100, 0, "%"); }

std::string capital(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

}  // namespace shoalwright
