// SPDX-License-Identifier: MIT
#include <algorithm>

#include "app/app.h"
#include "app/builtin_demo.h"
#include "app/keep.h"
#include "edit/command.h"
#include "platform/platform.h"
#include "share/link.h"
#include "share/plan_json.h"

namespace shoalwright {

namespace {

double now_s() { return ImGui::GetTime(); }

void edit(App& app, Plan plan, const std::string& name, const std::string& join) {
  remember(app.history, std::move(plan), name, join, now_s());
  plan_changed(app);
}

void edit(App& app, const Command& command) {
  const Plan& before = present(app.history);
  edit(app, apply(before, command, app.catalog), name_of(command, before, app.catalog), join_of(command));
}

void tell(App& app, const std::string& text, const std::string& action) {
  show_toast(app.ui, app.toast, text, action);
  platform::say(text);
}

void put_back(App& app) {
  app.held.reset();
  show_what_is_held(app);
}

struct Carry {
  App& app;

  void operator()(const EditPlan& wish) { edit(app, wish.plan, wish.name, wish.join); }
  void operator()(const PreviewPlan& wish) { app.preview = wish; }
  void operator()(const ShowAge& wish) {
    app.age = wish;
    show_what_is_held(app);
    platform::say(words_of(wish.age));
  }
  void operator()(const PickUp& wish) {
    const Look look = look_at(app);
    const Species* species = find_species(app.catalog, std::string_view(wish.species));
    // In the plan that is kept: what is shown is made anew while it is in hand.
    for (const Species& own : present(app.history).own_species)
      if (own.id == wish.species) species = &own;
    if (!species) return;
    const int plate = plate_of(look, species->id);
    const int next = int(resolve_stock(present(app.history), app.catalog).size()) + 1;
    const Layer& middle = app.now.room.layers[1];
    app.held = Held{.species = species,
                    .count = wish.count > 0 ? wish.count : 1,
                    .number = plate > 0 ? plate : next,
                    .by_keyboard = wish.by_keyboard,
                    .over_tank = wish.by_keyboard,
                    .x_cm = inside_length_cm(present(app.history).tank) / 2,
                    .depth_cm = (middle.from_cm + middle.to_cm) / 2,
                    .in_plan = plate > 0};
    show_what_is_held(app);
  }
  void operator()(const HoldCount& wish) {
    if (!app.held || wish.count < 1) return;
    app.held->count = wish.count;
    show_what_is_held(app);
  }
  void operator()(const HoldOver& wish) {
    if (!app.held) return;
    app.held->over_tank = wish.x_cm.has_value();
    if (wish.x_cm) app.held->x_cm = *wish.x_cm;
    if (wish.depth_cm) app.held->depth_cm = *wish.depth_cm;
  }
  void operator()(const Drop&) {
    if (!app.held) return;
    const AddGroup add{.species = app.held->species->id, .count = app.held->count};
    app.held.reset();
    const std::string name = name_of(add, present(app.history), app.catalog);
    edit(app, add);
    tell(app, name, "Undo");
  }
  void operator()(const PutBack&) { put_back(app); }
  void operator()(const Undo&) {
    app.held.reset();
    if (undo(app.history)) plan_changed(app);
  }
  void operator()(const Redo&) {
    app.held.reset();
    if (redo(app.history)) plan_changed(app);
  }
  void operator()(const NewPlan&) {
    Plan fresh = read_plan(builtin_fresh_plan()).value();
    platform::leave_draft();
    edit(app, std::move(fresh), "New plan", "");
    tell(app, "A new plan; the one before is one step of Undo away", "Undo");
  }
  void operator()(const OpenDemo&) {
    platform::leave_draft();
    edit(app, read_plan(builtin_demo_plan()).value(), "Open the demo", "");
  }
  void operator()(const OpenPlan&) { platform::open_file(); }
  void operator()(const SavePlan&) {
    const Plan& plan = present(app.history);
    platform::save_file(file_name_of(plan), plan_json(plan));
  }
  void operator()(const ShareLink&) {
    app.link_wanted = true;
    follow_link(app);  // now where it can be: copying belongs to the press
  }
  void operator()(const Know& wish) { edit(app, SetSeen{wish.rule, wish.species, wish.known}); }
  void operator()(const SetPreferences& wish) {
    app.preferences = wish.preferences;
    app.measures = wish.preferences.measures();
    keep_preferences(app.preferences);
  }
  void operator()(const ShowSheet& wish) {
    SpeciesPageState& page = app.views.species_page;
    // The keyboard goes back to the row that the page was opened from.
    const std::string& from = app.sheet == Sheet::own_species ? app.views.own_species.opened_from : page.opened_from;
    if ((app.sheet == Sheet::species || app.sheet == Sheet::own_species) && wish.sheet == Sheet::none && !from.empty())
      app.ui.focus_wanted = from;
    if (app.sheet == Sheet::label && wish.sheet == Sheet::none && !app.views.label.opened_from.empty())
      app.ui.focus_wanted = app.views.label.opened_from;
    if (app.sheet == Sheet::species) page = {};
    app.sheet = wish.sheet;
  }
  void operator()(const ShowLabel& wish) {
    app.views.label = {.word = wish.word, .opened_from = app.ui.ring_id};
    app.sheet = Sheet::label;
  }
  void operator()(const ShowSpecies& wish) {
    SpeciesPageState& page = app.views.species_page;
    SpeciesPageState next{.species = wish.species};
    if (app.sheet == Sheet::species) {
      next.before = std::move(page.before);
      next.opened_from = std::move(page.opened_from);
      if (wish.back && !next.before.empty())
        next.before.pop_back();
      else if (page.species != wish.species)
        next.before.push_back(page.species);
    } else {
      next.opened_from = app.sheet == Sheet::own_species ? app.views.own_species.opened_from
                         : app.sheet == Sheet::label     ? app.views.label.opened_from
                                                         : app.ui.ring_id;
    }
    page = std::move(next);
    app.sheet = Sheet::species;
  }
  void operator()(const WriteSpecies& wish) {
    OwnSpeciesState& own = app.views.own_species;
    own.opened_from = app.sheet == Sheet::species ? app.views.species_page.opened_from : app.ui.ring_id;
    own.species = wish.species;
    own.copy = wish.copy;
    own.begun = false;
    app.views.species_page = {};
    app.sheet = Sheet::own_species;
  }
  void operator()(const AskWhoIsWhere&) { app.spread.wanted = true; }
  void operator()(const PointAt& wish) { app.pointed_species = wish.species; }
  void operator()(const ChoosePieces& wish) {
    app.chosen_pieces = wish.pieces;
    if (!wish.pieces.empty()) app.chosen_terrain.reset();
    std::sort(app.chosen_pieces.begin(), app.chosen_pieces.end());
  }
  void operator()(const ChooseTerrain& wish) {
    app.chosen_terrain = wish.point;
    if (wish.point) app.chosen_pieces.clear();
  }
  void operator()(const HoldPiece& wish) { app.piece_in_hand = wish.kind; }
  void operator()(const PrintPage& wish) { platform::print_page(wish.lines); }
  void operator()(const JudgeShelf& wish) {
    ShelfState& shelf = app.views.shelf;
    shelf.by_tap = wish.by_tap;
    if (!wish.by_tap) return;
    shelf.part = ShelfPart::animals;
    shelf.search.clear();
    shelf.filter = {};
    shelf.order = ShelfOrder::closest_first;
    shelf.open = true;
  }
  void operator()(const Tell& wish) { tell(app, wish.text, wish.action); }
  void operator()(const FocusItem& wish) { app.ui.focus_wanted = wish.id; }
};

}  // namespace

void carry_out(App& app, const Actions& actions) {
  const bool had_preview = app.preview.has_value();
  const Plan previewed = had_preview ? app.preview->plan : Plan{};
  const std::string pointed = app.pointed_species;
  app.preview.reset();
  app.pointed_species.clear();
  for (const Action& action : actions) std::visit(Carry{app}, action);
  const bool has_preview = app.preview.has_value();
  const bool other_preview = had_preview != has_preview || (has_preview && !(app.preview->plan == previewed));
  if (other_preview) show_what_is_held(app);
  bool more_than_preview = false;
  for (const Action& action : actions)
    if (!std::holds_alternative<PreviewPlan>(action) && !std::holds_alternative<PointAt>(action)) more_than_preview = true;
  if (other_preview || more_than_preview || pointed != app.pointed_species) platform::wake(2);
}

}  // namespace shoalwright
