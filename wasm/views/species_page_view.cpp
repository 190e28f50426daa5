// SPDX-License-Identifier: MIT
#include "views/species_page_view.h"

#include <algorithm>

#include "advice/drop_in.h"
#include "advice/shelf_list.h"
#include "app/species_paper.h"
#include "draw/buttons.h"
#include "draw/panels.h"
#include "edit/command.h"
#include "notebook/say.h"
#include "platform/platform.h"
#include "units/day.h"
#include "views/edit_wish.h"
#include "views/sheet_card.h"
#include "views/species_desk.h"
#include "views/species_more.h"

namespace shoalwright {

namespace {

constexpr int countless = 1000;  // more than anybody counts

/// What everything rests on: not begun anew in the midst of a drag.
void work_out(SpeciesPageState& mine, const Look& look) {
  SpeciesPageState::Worked& worked = mine.worked;
  const bool same_kind = worked.done && worked.species == mine.species;
  if (same_kind && (worked.plan == look.plan || ImGui::IsMouseDown(ImGuiMouseButton_Left))) return;
  worked = {.done = true, .species = mine.species, .plan = look.plan};
  const std::vector<const Species*> kinds = shelf_kinds(worked.plan, look.catalog);
  const auto found = std::find_if(kinds.begin(), kinds.end(), [&](const Species* one) { return one->id == mine.species; });
  if (found == kinds.end()) return;
  const Species& species = **found;
  worked.answer = ShelfSearch(worked.plan, look.catalog, look.shown_bodies).answer(species);
  worked.dropped = usual_addition(species, worked.answer.in_plan);
  worked.raised = raised_by_dropping(worked.plan, look.catalog, species, worked.dropped, look.now, look.shown_bodies);
  const int past = worked.answer.largest.value_or(0) + 1 - worked.answer.in_plan;
  if (worked.answer.largest.value_or(0) > 0 && *worked.answer.largest < countless && past > 0) {
    const std::vector<Finding> next =
        raised_by_dropping(worked.plan, look.catalog, species, past, look.now, look.shown_bodies, Remedies::at_once);
    if (!next.empty() && next.front().severity <= Severity::strain) worked.stops = next.front();
  }
  worked.company = company_of(species, kinds);
  worked.rest = rest_of_card(species, platform::asset("cards"));
}

/// Names, and what can be done with the kind.
void draw_top_rows(SpeciesDesk& desk, Stack& stack) {
  const Pen pen = pen_of(desk.ui);
  const Palette& p = *desk.ui.palette;
  const Species::Name& name = desk.species.name;
  std::string names =
      name.family.empty() || name.scientific.empty() ? name.scientific + name.family : name.scientific + ", " + name.family;
  stack.skip(8);
  const float top = stack.y();
  const std::string own = own_words(desk.species);
  const float own_w = own.empty() ? 0 : text_width(pen, medium(type::small), own) + 18;
  draw_text(pen, italic(type::body), {stack.box.x, top}, p.ink2, elided(pen, italic(type::body), names, stack.box.w - own_w));
  if (!own.empty()) {
    const Box chip{stack.box.right() - own_w, top - 2, own_w, 22};
    draw_panel(pen, chip, p.actSoft, 0, 4);
    draw_text(pen, medium(type::small), {chip.x + 9, chip.y + 3}, p.ink, own);
    add_spot(desk.ui, "species.own", chip, own);
  }
  stack.skip(20);
  std::vector<std::string> others;
  for (std::size_t i = 1; i < name.common.size(); ++i) others.push_back(name.common[i].text);
  others.insert(others.end(), name.synonyms.begin(), name.synonyms.end());
  std::string also = others.empty() ? "" : "Also " + joined(others) + ".";
  if (!name.sold_as.empty()) also += std::string(also.empty() ? "" : " ") + "The same label is on " + joined(name.sold_as) + ".";
  if (!also.empty()) stack.skip(draw_wrapped(pen, type::small, {stack.box.x, stack.y()}, stack.box.w, p.ink3, also, 3) + 2);
  add_spot(desk.ui, "species.name", {stack.box.x, top, stack.box.w, stack.y() - top}, names + ". " + also);
  stack.skip(6);

  Flow flow{.x = stack.box.x, .y = stack.y(), .width = stack.box.w, .row_height = 30, .gap = 8};
  const auto press = [&](const char* id, const std::string& words, const ButtonLook& look) {
    return button(desk.ui, id, flow.take(button_width(desk.ui, words, look)).min(), words, look).pressed;
  };
  const int count = desk.mine.worked.dropped;
  const std::string add = "Add " + std::to_string(count);
  if (press("species.add", add, {.kind = ButtonKind::primary}))
    wish_and_tell(desk.look, AddGroup{.species = desk.species.id, .count = count}, desk.out);
  if (press("species.print", "Print", {}))
    desk.out.push_back(
        PrintPage{species_paper(desk.look, desk.species, desk.mine.worked, day_number(platform::today()).value_or(0))});
  if (press("species.write", own.empty() ? "Own values" : "Change", {})) desk.out.push_back(WriteSpecies{desk.species.id});
  if (press("species.copy", "Copy", {})) desk.out.push_back(WriteSpecies{desk.species.id, true});
  if (!desk.mine.before.empty()) {
    const std::string back =
        elided(pen, medium(type::body), "Back to " + name_of_species(desk.look, desk.mine.before.back()), stack.box.w - 40);
    if (press("species.back", back, {.kind = ButtonKind::quiet})) desk.out.push_back(ShowSpecies{desk.mine.before.back(), true});
  }
  stack.skip(flow.height() + 12);
}

}  // namespace

void species_heading(SpeciesDesk& desk, Stack& stack, std::string_view words, std::string_view remark) {
  draw_rule(pen_of(desk.ui), stack.box.x, stack.y(), stack.box.right(), desk.ui.palette->line);
  stack.skip(9);
  section_header(desk.ui, {stack.box.x, stack.y(), stack.box.w, 20}, words, remark);
  stack.skip(27);
}

void species_note(SpeciesDesk& desk, Stack& stack, std::string_view words) {
  stack.skip(draw_wrapped(pen_of(desk.ui), type::small, {stack.box.x, stack.y()}, stack.box.w, desk.ui.palette->ink2, words) + 4);
}

void draw_species_page(Ui& ui, const Look& look, const Box& box, SpeciesPageState& mine, Actions& out) {
  const Species* species = species_of(look, mine.species);
  if (species == nullptr) {  // undone while it was open
    out.push_back(ShowSheet{Sheet::none});
    return;
  }
  if (!mine.begun && !ui.ring_id_before.empty()) ui.focus_wanted = "species.close";
  work_out(mine, look);
  SpeciesDesk desk{ui, look, mine, *species, out};
  const std::string heading = elided(pen_of(ui), type::head, capital(display_name(*species)), std::min(box.w, 800.0f) - 90);
  const SheetCard card = begin_sheet(ui, "species", box, {820, 1000}, heading, out);
  Column column = begin_column(ui, "species.all", card.body, ui.palette->raised, true);
  if (!mine.begun) ImGui::SetScrollY(0);
  mine.begun = true;
  Stack stack{{column.content.x, column.content.y, column.content.w - 10, 0}};
  draw_top_rows(desk, stack);
  if (card.body.w >= 640) {
    const float gap = 24, left_w = std::floor((stack.box.w - gap) * 0.56f);
    Stack left{{stack.box.x, stack.y(), left_w, 0}},
        right{{stack.box.x + left_w + gap, stack.y(), stack.box.w - left_w - gap, 0}};
    draw_species_picture(desk, left, 240);
    draw_species_sexes(desk, left);
    draw_species_fit(desk, right);
    stack.skip(std::max(left.at, right.at) + 12);
  } else {
    draw_species_picture(desk, stack, 190);
    draw_species_sexes(desk, stack);
    stack.skip(12);
    draw_species_fit(desk, stack);
    stack.skip(12);
  }
  draw_species_water(desk, stack);
  draw_species_company(desk, stack);
  draw_species_facts(desk, stack);
  end_column(ui, column, stack.at + 16);
  end_sheet();
}

}  // namespace shoalwright
