// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "plan/plan.h"

namespace shoalwright {

/// The keeper has decided the value under a JSON Pointer: it, and all under it, is no longer assumed. Where a parent was assumed
/// as a whole, its other values stay assumed.
void decide(Plan& plan, const std::string& pointer);

/// A value under a JSON Pointer was guessed.
void assume(Plan& plan, const std::string& pointer);

/// Entry `index` of the list at `list` ("/stock", "/pieces") is gone: pointers to it go too, those to later entries follow.
void forget_entry(Plan& plan, const std::string& list, std::size_t index);

/// An entry came in at `index`: pointers to it and to later entries follow.
void make_room_for_entry(Plan& plan, const std::string& list, std::size_t index);

}  // namespace shoalwright
