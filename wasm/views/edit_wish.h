// SPDX-License-Identifier: MIT
#pragma once

#include "app/look.h"
#include "edit/command.h"

namespace shoalwright {

/// The plan after a command as one undoable step with its own name.
inline EditPlan edit_wish(const Look& look, const Command& command) {
  return {.plan = apply(look.plan, command, look.catalog),
          .name = name_of(command, look.plan, look.catalog),
          .join = join_of(command)};
}

/// The same, told at the foot of the window with a way back.
inline void wish_and_tell(const Look& look, const Command& command, Actions& out) {
  EditPlan wish = edit_wish(look, command);
  const std::string name = wish.name;
  out.push_back(std::move(wish));
  out.push_back(Tell{name, "Undo"});
}

}  // namespace shoalwright
