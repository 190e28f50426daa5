// SPDX-License-Identifier: MIT
#include "views/water_desk.h"

#include <algorithm>
#include <utility>

#include "app/say.h"
#include "draw/panels.h"
#include "plan/check.h"
#include "platform/platform.h"
#include "units/text.h"
#include "views/sheet_card.h"

namespace shoalwright {

void wish(WaterDesk& desk, Plan plan, const std::string& name, const std::string& join) {
  const std::optional<Error> error = check_plan(plan);
  desk.mine.sentence = error ? plain_sentence(*error) : "";
  if (error)
    platform::wake(2);
  else
    desk.out.push_back(EditPlan{std::move(plan), name, join});
}

void wish(WaterDesk& desk, const Command& command) {
  wish(desk, apply(desk.look.plan, command, desk.look.catalog), name_of(command, desk.look.plan, desk.look.catalog),
       join_of(command));
}

void choose(WaterDesk& desk, const WaterChoices& choices) {
  if (desk.mine.choices == choices) return;
  desk.mine.choices = choices;
  platform::wake(2);
}

void part_heading(WaterDesk& desk, Stack& stack, std::string_view words, std::string_view remark, std::string_view short_remark) {
  const Box line = stack.take(28, 4);
  const Pen pen = pen_of(desk.ui);
  const float width = line.w - desk.free_right, room = width - text_width(pen, semibold(type::lead), words) - 12;
  desk.free_right = 0;
  std::string_view said;
  for (const std::string_view one : {short_remark, remark})
    if (text_width(pen, type::small, one) <= room) said = one;
  section_header(desk.ui, {line.x, line.y + 2, width, 20}, words, said);
  draw_rule(pen, line.x, line.bottom(), line.right(), desk.ui.palette->line);
}

void part_note(WaterDesk& desk, Stack& stack, std::string_view text) {
  const Pen pen = pen_of(desk.ui);
  stack.skip(draw_wrapped(pen, type::small, {stack.box.x, stack.y()}, stack.box.w, desk.ui.palette->ink2, text) + 4);
}

std::string rough_volume(const Measures& measures, double l) {
  return significant_text(measures.volume_out(l), 2) + " " + measures.volume_unit();
}

int plate_in(const WaterWork& work, const std::string& species) {
  for (std::size_t i = 0; i < work.stock.size(); ++i)
    if (work.stock[i].id == species) return static_cast<int>(i) + 1;
  return 0;
}

std::string plates_words(const WaterWork& work, const std::vector<std::string>& species) {
  std::vector<int> plates;
  for (const std::string& id : species)
    if (const int plate = plate_in(work, id); plate > 0) plates.push_back(plate);
  std::sort(plates.begin(), plates.end());
  return plates_text(plates);
}

std::string no_window_words(const WaterWork& work, const BarQuantity& q, const Measures& measures) {
  const Window& window = work.windows.*q.window;
  if (window.tolerated || window.low_by.empty()) return "";
  const Range *low = tolerated_of(work.stock, q, window.low_by), *high = tolerated_of(work.stock, q, window.high_by);
  if (low == nullptr || high == nullptr) return "";
  const auto figure = [&](double value) { return bar_figure(measures, q, value); };
  return plates_words(work, {window.low_by}) + " needs " + figure(low->low) + " up, " + plates_words(work, {window.high_by}) +
         " needs " + figure(high->high) + " down";
}

}  // namespace shoalwright
