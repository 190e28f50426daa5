// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "app/look.h"
#include "draw/panels.h"
#include "units/result.h"

namespace shoalwright {

/// A raised card over the window, with its heading and a cross. What is drawn until end_sheet lies on top of everything before
/// it.
struct SheetCard {
  Box body;  ///< under the heading, inside the padding
};
/// `id` names the window; the cross has the spot `id.close` and pushes ShowSheet{none}. At most `most`
/// large, over the middle of a wide window, so that what answers at its sides stays in sight.
SheetCard begin_sheet(Ui& ui, std::string_view id, const Box& area, ImVec2 most, std::string_view heading, Actions& out);
void end_sheet();

/// Why the last number changed nothing, in a box `sentence_height` high for its width. Spot: `id`.
float sentence_height(const Pen& pen, std::string_view sentence, float width);
void draw_sentence(Ui& ui, std::string_view id, const Box& box, std::string_view sentence);

/// A row with its name at the left; returns the box for its control, `width` wide, at the right.
Box sheet_row(Ui& ui, const Box& row, std::string_view name, float width);

/// A number that may be not known: an empty field shows `placeholder`, the cross empties it. True when `value` has changed.
bool optional_field(Ui& ui, std::string_view id, const Box& box, std::optional<double>& value, std::string_view label,
                    std::string_view unit, int decimals, std::string_view placeholder, double step = 1);
/// The same for a hardness and for nitrate, which are entered as the keeper counts them.
bool hardness_field(Ui& ui, std::string_view id, const Box& box, std::optional<double>& degrees, Hardness of,
                    const Measures& measures, std::string_view placeholder);
bool nitrate_field(Ui& ui, std::string_view id, const Box& box, std::optional<double>& no3_mg_l, std::string_view label,
                   const Measures& measures, std::string_view placeholder);

/// A number that must be there, without zeros at its end; `step` by the arrow keys. True when `value` has changed. Anything can
/// be typed, so that what cannot be is refused by a sentence and not bent.
struct PlainNumber {
  std::string_view unit;
  int decimals = 1;
  double step = 1;
};
bool plain_field(Ui& ui, std::string_view id, const Box& box, double& value, std::string_view label, const PlainNumber& look);

/// An error as one sentence for the keeper: without the place in the file.
std::string plain_sentence(const Error& error);

}  // namespace shoalwright
