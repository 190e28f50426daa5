// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "draw/icons.h"
#include "draw/ui.h"
#include "platform/platform.h"

namespace shoalwright {

struct FieldLook {
  std::string_view placeholder;
  std::string_view unit;     ///< shown behind the text, right in the box
  std::optional<Icon> icon;  ///< before the text
  bool clearable = false;    ///< a cross empties it (spot `id/clear`)
  bool enabled = true;
  bool bare = false;  ///< no border until pointed at or focused (the plan's name)
  Align align = Align::left;
  Type type = type::body;
  platform::FieldKind kind = platform::FieldKind::text;
  int most_bytes = 200;
};

struct FieldAnswer {
  bool changed = false;    ///< while typing, at every letter
  bool done = false;       ///< left by Enter, Tab or a click elsewhere
  bool cancelled = false;  ///< left by Escape; `text` is what it was
  bool editing = false;
  int step = 0;  ///< arrow up +1, down −1 while typing
};

/// A text field, drawn here and edited by the platform's real input laid over it.
FieldAnswer text_field(Ui& ui, std::string_view id, const Box& box, std::string& text, std::string_view label,
                       const FieldLook& look = {});

/// A number with its unit. True when `value` has changed; the text is read when the field is left, held to least and most;
/// a comma counts as a decimal point. Anything else leaves the value as it was.
struct NumberFieldLook {
  std::string_view unit;
  int decimals = 0;
  double least = 0;
  double most = 1e6;
  double step = 1;
  bool enabled = true;
};
bool number_field(Ui& ui, std::string_view id, const Box& box, double& value, std::string_view label,
                  const NumberFieldLook& look);

/// The number held within least and most and rounded to its decimals.
double held(double value, double least, double most, int decimals);
/// "24", "7.2": fixed decimals with a point, no trailing zeros cut, a minus sign for below zero.
std::string number_text(double value, int decimals);
/// Reads "7,2", " 7.2 ", "−1"; empty when it is no number.
std::optional<double> number_from(std::string_view text);

}  // namespace shoalwright
