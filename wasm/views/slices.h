// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <chrono>
#include <memory>

#include "app/look.h"
#include "draw/ui.h"
#include "platform/platform.h"

namespace shoalwright {

/// How long a frame may go on with work that is not awaited, ms. Little while a hand is at work, so that its frames stay quick;
/// more at other times, so that there are few, above all where each takes long to come: on a slow device, in a tab that is not
/// looked at.
inline double slice_ms(const Ui& ui) {
  const bool at_work = ui.now_s < ui.moved_s + 0.15;
  return at_work ? 4 : std::max(16.0, 800.0 * static_cast<double>(ImGui::GetIO().DeltaTime));
}

/// A search over a plan that goes on between frames (core/mend, core/fill).
template <class Search>
struct SlicedSearch {
  Plan of;                         ///< outlives the search
  std::unique_ptr<Search> search;  ///< over `of`
  bool done = false;
};

/// A slice of it, or nothing when it is done; begun anew where the plan is another than before. True when it has gone on, so that
/// what it has found may be another.
template <class Search>
bool go_on(SlicedSearch<Search>& mine, const Ui& ui, const Look& look) {
  if (!mine.search || !(mine.of == look.plan)) {
    mine.search.reset();
    mine.of = look.plan;
    mine.search = std::make_unique<Search>(mine.of, look.catalog, look.shown_bodies);
    mine.done = false;
  }
  if (mine.done) return false;
  using Clock = std::chrono::steady_clock;
  const Clock::time_point begin = Clock::now();
  while (!mine.done && std::chrono::duration<double, std::milli>(Clock::now() - begin).count() < slice_ms(ui))
    mine.done = mine.search->step();
  platform::wake(1);
  return true;
}

}  // namespace shoalwright
