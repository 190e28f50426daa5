// SPDX-License-Identifier: MIT
#include "draw/fish/kinds.h"

#include "catalog/detail/words.h"

namespace shoalwright {

// The closed lists of the cards are in the order of the kinds; the marks of a card begin with "none", which is no mark.
static_assert(form_list.size() == form_count && mark_list.size() == mark_count + 1);

const char* word_of(Form form) { return form_list[static_cast<std::size_t>(form)].data(); }

const char* word_of(Mark mark) { return mark_list[static_cast<std::size_t>(mark) + 1].data(); }

bool form_from_word(const std::string& word, Form& form) {
  for (int i = 0; i < form_count; ++i) {
    if (word == form_list[static_cast<std::size_t>(i)]) {
      form = static_cast<Form>(i);
      return true;
    }
  }
  return false;
}

bool mark_from_word(const std::string& word, Mark& mark) {
  for (int i = 0; i < mark_count; ++i) {
    if (word == mark_list[static_cast<std::size_t>(i) + 1]) {
      mark = static_cast<Mark>(i);
      return true;
    }
  }
  return false;
}

Build build_of(Form form) {
  switch (form) {
    case Form::shrimp:
    case Form::long_arm_shrimp:
    case Form::fan_shrimp: return Build::shrimp;
    case Form::crayfish: return Build::crayfish;
    case Form::crab: return Build::crab;
    case Form::snail:
    case Form::cone_snail:
    case Form::ramshorn:
    case Form::apple_snail:
    case Form::nerite:
    case Form::horned_nerite:
    case Form::limpet: return Build::snail;
    case Form::frog: return Build::frog;
    case Form::stingray: return Build::ray;
    default: return Build::fish;
  }
}

}  // namespace shoalwright
