// SPDX-License-Identifier: MIT
// Animals that died or went: kept in the plan's log as `"lost":[{"species":id,"count":n}]` of a day, and what the keeper means to
// do about them. A loss that was answered has `"answered":"top-up"`, `"run-out"`, `"re-home"` or `"taken-out"` beside its count.
#pragma once

#include <string>
#include <string_view>

#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// How many of a species the log has as lost and not yet answered; 0 where the log cannot be read.
int open_losses(const Plan& plan, const Catalog& catalog, const std::string& species);

/// `count` more of those that swim were lost on a day ("2026-12-05"): the group is so many fewer, and none is left of it where
/// all were. Below 0: so many were not lost after all, of those not yet answered. Held within what there is.
Plan with_loss(Plan plan, const Catalog& catalog, const std::string& species, int count, std::string_view day);

/// What becomes of a group that lost some.
enum class LossAnswer {
  top_up,   ///< as many again are wished for
  run_out,  ///< those that are left stay, no more come
  re_home   ///< those that are left go too
};

/// Its open losses are answered so.
Plan with_answer(Plan plan, const Catalog& catalog, const std::string& species, LossAnswer answer);

/// "Lost 2 harlequin rasboras", "Top up to 10 harlequin rasboras", "Let 4 harlequin rasboras run out", "Re-home 4 …".
std::string name_of_loss(const Plan& plan, const Catalog& catalog, const std::string& species, int count);
std::string name_of(LossAnswer answer, const Plan& plan, const Catalog& catalog, const std::string& species);

}  // namespace shoalwright
