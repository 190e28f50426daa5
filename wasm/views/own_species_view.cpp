// SPDX-License-Identifier: MIT
#include "views/own_species_view.h"

#include <algorithm>

#include "catalog/card_edit.h"
#include "catalog/read.h"
#include "draw/buttons.h"
#include "draw/panels.h"
#include "notebook/say.h"
#include "plan/check.h"
#include "platform/platform.h"
#include "views/edit_wish.h"
#include "views/own_look.h"
#include "views/sheet_card.h"

namespace shoalwright {

namespace {

const Species* own_of(const Look& look, const std::string& id) {
  for (const Species& one : look.plan.own_species)
    if (one.id == id) return &one;
  return nullptr;
}

bool overrides(const Look& look, const OwnSpeciesState::Draft& draft) {
  return !draft.copy && find_species(look.catalog, std::string_view(draft.species)) != nullptr;
}

/// A draft that is not saved yet goes on where it was left.
void begin_draft(OwnSpeciesState& mine, const Look& look) {
  OwnSpeciesState::Draft& draft = mine.draft;
  if (draft.there && draft.species == mine.species && draft.copy == mine.copy) return;
  draft = {.there = true, .species = mine.species, .copy = mine.copy};
  const std::string_view cards = platform::asset("cards");
  const Species* from = mine.species.empty() ? nullptr : species_of(look, mine.species);
  if (from == nullptr)
    draft.card = new_card();
  else
    draft.card = mine.copy ? own_copy(*from, look.plan.own_species, cards) : card_to_edit(*from, cards);
}

/// The card as it would be saved: a new one gets its id by its name.
Json card_of(const OwnSpeciesState::Draft& draft, const Look& look) {
  Json card = draft.card;
  if (find(card, "id") == nullptr) {
    Json id{.kind = Json::Kind::text, .text = own_id(card_name(card), look.plan.own_species)};
    card.members.insert(card.members.begin(), {"id", std::move(id)});
  }
  return card;
}

void check(OwnSpeciesState::Draft& draft, const Look& look) {
  const Json card = card_of(draft, look);
  std::string text = dump(card);
  if (text == draft.checked) return;
  draft.errors = card_errors(card);
  draft.checked = std::move(text);
  draft.sentence.clear();
}

/// The keyboard goes to the first field that keeps it from being saved.
void show_first_error(OwnForm& form, std::string& sentence) {
  std::vector<std::string> names;
  for (const OwnChapter& chapter : own_chapters())
    for (const OwnField& field : chapter.fields) {
      if (own_error(form, field).empty()) continue;
      if (names.empty()) form.ui.focus_wanted = std::string("own.") + field.path + (field.ask == Ask::range ? "/low" : "");
      names.push_back(field.name);
    }
  if (names.size() > 3) names.resize(3);
  sentence = names.empty() ? form.errors.front().sentence : "Not saved yet. See " + joined(names) + ".";
}

void save(OwnSpeciesState& mine, OwnForm& form, const Look& look, Actions& out) {
  OwnSpeciesState::Draft& draft = mine.draft;
  draft.tried = form.tried = true;
  if (!draft.errors.empty()) return show_first_error(form, draft.sentence);
  Result<Species> species = read_species(card_of(draft, look));
  if (!species) {
    draft.sentence = species.error().sentence;
    return;
  }
  const SetOwnSpecies command{std::move(species.value())};
  const EditPlan wish = edit_wish(look, command);
  if (const std::optional<Error> error = check_plan(wish.plan)) {
    draft.sentence = error->sentence;
    return;
  }
  out.push_back(wish);
  out.push_back(Tell{wish.name, "Undo"});
  out.push_back(ShowSpecies{command.species.id});
  draft = {};
}

void draw_buttons(OwnSpeciesState& mine, OwnForm& form, const Look& look, Stack& stack, Actions& out) {
  OwnSpeciesState::Draft& draft = mine.draft;
  Flow flow{.x = stack.box.x, .y = stack.y(), .width = stack.box.w, .row_height = 30, .gap = 8};
  const auto press = [&](const char* id, std::string_view words, const ButtonLook& button_look) {
    return button(form.ui, id, flow.take(button_width(form.ui, words, button_look)).min(), words, button_look).pressed;
  };
  if (press("own.save", "Save", {.kind = ButtonKind::primary})) save(mine, form, look, out);
  if (!draft.there) return;
  if (!draft.copy && own_of(look, draft.species) != nullptr) {
    const bool over = overrides(look, draft);
    if (press("own.remove", over ? "Back to the catalogue’s values" : "Remove this kind", {})) {
      wish_and_tell(look, DropOwnSpecies{draft.species}, out);
      out.push_back(over ? Action{ShowSpecies{draft.species}} : Action{ShowSheet{Sheet::none}});
      draft = {};
      return;
    }
  }
  if (press("own.again", "Begin again", {.kind = ButtonKind::quiet})) {
    draft = {};
    begin_draft(mine, look);
  }
  stack.skip(flow.height() + 6);
  stack.skip(
      draw_wrapped(pen_of(form.ui), type::small, {stack.box.x, stack.y()}, stack.box.w, form.ui.palette->ink2,
                   overrides(look, draft)
                       ? "These values stand in this plan alone. What you leave open is not known and gets no verdict."
                       : "It lives in this plan and goes with its link. What you leave open is not known and gets no verdict.") +
      6);
}

std::string heading_of(const Look& look, const OwnSpeciesState::Draft& draft) {
  const std::string name = card_name(draft.card);
  if (overrides(look, draft)) return "Your own values for " + name;
  return name.empty() ? "A kind of your own" : "Your own kind: " + name;
}

}  // namespace

void draw_own_species(Ui& ui, const Look& look, const Box& box, OwnSpeciesState& mine, Actions& out) {
  if (!mine.begun && !ui.ring_id_before.empty()) ui.focus_wanted = "own.close";
  begin_draft(mine, look);
  OwnSpeciesState::Draft& draft = mine.draft;
  check(draft, look);
  const std::string heading = elided(pen_of(ui), type::head, heading_of(look, draft), std::min(box.w, 800.0f) - 90);
  const SheetCard card = begin_sheet(ui, "own", box, {820, 1000}, heading, out);
  Box body = card.body;
  body.cut_top(8);
  OwnForm form{ui, look, draft.card, draft.errors, draft.tried};
  Stack head{{body.x, body.y, body.w, 0}};
  draw_buttons(mine, form, look, head, out);
  if (!draft.there) {  // saved or removed: another sheet comes
    end_sheet();
    return;
  }
  if (!draft.sentence.empty()) {
    const float h = sentence_height(pen_of(ui), draft.sentence, body.w);
    draw_sentence(ui, "own.sentence", head.take(h), draft.sentence);
    head.skip(6);
  }
  body.cut_top(head.at);
  draw_rule(pen_of(ui), body.x, body.y, body.right(), ui.palette->line);
  body.cut_top(1);
  Column column = begin_column(ui, "own.all", body, ui.palette->raised, true);
  if (!mine.begun) ImGui::SetScrollY(0);
  mine.begun = true;
  const float w = column.content.w - 12;
  const std::span<const OwnChapter> chapters = own_chapters();
  if (w >= 640) {
    const float gap = 36, half = std::floor((w - gap) / 2);
    Stack left{{column.content.x, column.content.y, half, 0}}, right{{column.content.x + half + gap, column.content.y, half, 0}};
    for (const std::size_t i : {0u, 1u, 2u, 6u, 4u}) draw_own_chapter(form, left, chapters[i]);
    draw_own_look(form, right, mine.colour);
    for (const std::size_t i : {3u, 5u}) draw_own_chapter(form, right, chapters[i]);
    end_column(ui, column, std::max(left.at, right.at) + 16);
  } else {
    Stack stack{{column.content.x, column.content.y, w, 0}};
    draw_own_chapter(form, stack, chapters[0]);
    draw_own_look(form, stack, mine.colour);
    for (std::size_t i = 1; i < chapters.size(); ++i) draw_own_chapter(form, stack, chapters[i]);
    end_column(ui, column, stack.at + 16);
  }
  end_sheet();
}

}  // namespace shoalwright
