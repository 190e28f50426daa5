// SPDX-License-Identifier: MIT
// The fields of a keeper's own card as rows of a form.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "app/look.h"
#include "draw/layout.h"
#include "units/json.h"
#include "units/result.h"

namespace shoalwright {

/// How a field is asked for.
enum class Ask { text, word, words, yes, number, range, ratio };
/// What its numbers count; the keeper's unit on the screen, metric on the card.
enum class Counts { plain, whole, length, volume, temperature, gh, kh, share };

struct OwnField {
  const char *path, *name;
  Ask ask = Ask::number;
  Counts counts = Counts::plain;
  int decimals = 1;
  double step = 1;
};

struct OwnChapter {
  const char* heading;
  std::span<const OwnField> fields;
};

/// Name, Size, Water, Life, Temper, Food, Needs, in this order.
std::span<const OwnChapter> own_chapters();

/// What the form is written into and what it says.
struct OwnForm {
  Ui& ui;
  const Look& look;
  Json& card;
  const std::vector<Error>& errors;
  bool tried = false;  ///< what is missing is said too
};

/// A chapter with its heading.
void draw_own_chapter(OwnForm& form, Stack& stack, const OwnChapter& chapter);

/// A heading of the form.
void own_heading(OwnForm& form, Stack& stack, const char* words);

/// What is wrong with a field, as a sentence; empty: nothing to be said.
std::string own_error(const OwnForm& form, const OwnField& field);
/// Draws it under the field's row.
void draw_own_error(OwnForm& form, Stack& stack, const OwnField& field);

/// Words of a closed list as chips, each on or off; of `none` and others only one side at a time.
void draw_own_chips(OwnForm& form, Stack& stack, const OwnField& field);
/// One word of a closed list.
void draw_own_word(OwnForm& form, const Box& box, const OwnField& field);

}  // namespace shoalwright
