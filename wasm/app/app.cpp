// SPDX-License-Identifier: MIT
#include "app/app.h"

#include <algorithm>
#include <utility>

#include "app/builtin_demo.h"
#include "app/keep.h"
#include "app/plan_text.h"
#include "app/retold.h"
#include "catalog/builtin.h"
#include "edit/command.h"
#include "platform/platform.h"
#include "share/link.h"
#include "share/plan_json.h"

namespace shoalwright {

namespace {

constexpr double rest_s = 0.12;  // a plan that has not changed for so long rests

/// One line for the live region: what the plan now comes to.
std::string spoken(const App& app) {
  int fix = 0, strain = 0;
  for (const Finding& finding : app.now.findings) {
    if (finding.severity == Severity::harm) ++fix;
    if (finding.severity == Severity::strain) ++strain;
  }
  std::string text = std::to_string(fix) + " to fix, " + std::to_string(strain) + (strain == 1 ? " strain." : " strains.");
  for (const Finding& finding : app.now.findings)
    if (finding.severity == Severity::harm) {
      text += " " + retold(app.measures, finding.text, about_of(finding.rule)) + ".";
      break;
    }
  return text;
}

/// What the present plan comes to, to be shown and told.
void look_over(App& app, Remedies remedies) {
  app.now = assess(present(app.history), app.catalog, app.bodies, remedies);
  show_what_is_held(app);
  app.untold = true;
  platform::wake();
}

}  // namespace

Look look_at(App& app) {
  return {.catalog = app.catalog,
          .history = app.history,
          .plan = present(app.history),
          .now = app.now,
          .shown = app.shown,
          .shown_assessment = app.shown_assessment,
          .shown_bodies = app.previewing.empty() ? app.bodies : app.shown_bodies,
          .spread = app.spread,
          .now_margins = app.now_margins,
          .shown_margins = app.shown_margins,
          .previewing = app.previewing,
          .held = app.held,
          .preferences = app.preferences,
          .measures = app.measures,
          .pointed_species = app.pointed_species,
          .chosen_pieces = app.chosen_pieces,
          .chosen_terrain = app.chosen_terrain,
          .piece_in_hand = app.piece_in_hand,
          .sheet = app.sheet,
          .age = app.age.age,
          .animals = app.animals};
}

void show_what_is_held(App& app) {
  app.previewing.clear();
  if (app.held) {
    const AddGroup add{.species = app.held->species->id, .count = app.held->count};
    app.shown = apply(present(app.history), add, app.catalog);
    app.previewing = "If you drop " + std::to_string(app.held->count) + " here";
  } else if (app.preview) {
    app.shown = app.preview->plan;
    app.previewing = app.preview->title;
  } else {
    app.shown = present(app.history);
  }
  if (app.age.age != Age::grown) {
    app.shown = app.age.at_age(app.shown, app.catalog, app.age.age);
    app.previewing += (app.previewing.empty() ? "" : ", ") + std::string(words_of(app.age.age));
  }
  const std::string in_hand = app.held ? app.held->species->id : "";
  const bool other = !app.previewing.empty();
  app.shown_assessment = other ? assess(app.shown, app.catalog, app.shown_bodies, Remedies::at_once) : app.now;
  app.shown_margins = margin_table(app.shown, app.catalog, app.shown_assessment, in_hand, other ? app.shown_bodies : app.bodies);
  app.now_margins = other ? margin_table(present(app.history), app.catalog, app.now, in_hand, app.bodies) : app.shown_margins;
}

void plan_changed(App& app) {
  const std::size_t pieces = present(app.history).pieces.size();
  const Substrate& bed = present(app.history).substrate;
  if (app.chosen_terrain && *app.chosen_terrain >= static_cast<int>(bed.line_cm.size())) app.chosen_terrain = -1;
  if (bed.kind == SubstrateKind::bare) app.chosen_terrain.reset();
  std::erase_if(app.chosen_pieces, [&](std::size_t piece) { return piece >= pieces; });
  look_over(app, Remedies::at_once);
  app.link_untold = true;
  const bool to_search = std::any_of(app.now.findings.begin(), app.now.findings.end(),
                                     [](const Finding& one) { return one.rule == "swim-lane" && one.remedy.empty(); });
  app.search_at_s.reset();
  if (to_search) {
    app.search_at_s = ImGui::GetTime() + rest_s;
    platform::wake_in(static_cast<int>(rest_s * 1000) + 10);
  }
}

void search_remedies(App& app) {
  if (!app.search_at_s || app.held || ImGui::IsMouseDown(ImGuiMouseButton_Left)) return;
  if (ImGui::GetTime() < *app.search_at_s) {
    platform::wake_in(40);
    return;
  }
  app.search_at_s.reset();
  look_over(app, Remedies::searched);
}

namespace {

void work_out_spread(App& app, BodyRooms& bodies) {
  const std::vector<Kept> stock = resolve_stock(app.shown, app.catalog);
  app.spread.spread = spread_of(app.shown, stock, bodies);
  app.spread.front = seen_from_front(app.spread.spread);
  app.spread.above = seen_from_above(app.spread.spread);
  app.spread.territories = territories_of(app.shown, stock, bodies);
  ++app.spread.version;
  app.spread_of = app.shown;
}

}  // namespace

void follow_spread(App& app) {
  const bool wanted = app.spread.wanted || app.preferences.overlay != Overlay::none,
             stale = app.spread.version == 0 || !(app.spread_of == app.shown);
  const bool to_spread = wanted && stale && platform::have_rest();  // where it is not here, its coming draws a frame
  if (!to_spread && app.grazing_of == app.shown) return;
  const double now_s = ImGui::GetTime();
  const bool dragging = ImGui::IsMouseDown(ImGuiMouseButton_Left);
  const bool seen = app.preferences.overlay != Overlay::none;
  if (dragging && !seen) return;
  if ((dragging || !seen) && now_s < app.spread_at_s + rest_s) {
    platform::wake_in(static_cast<int>((app.spread_at_s + rest_s - now_s) * 1000) + 10);
    return;
  }
  BodyRooms& bodies = app.previewing.empty() ? app.bodies : app.shown_bodies;
  app.spread.grazing = grazing_surface_of(app.shown, bodies.scape());
  app.grazing_of = app.shown;
  if (to_spread) work_out_spread(app, bodies);
  app.spread_at_s = now_s;
}

void tell_page(App& app) {
  if (!app.untold) return;
  app.untold = false;
  const Plan& plan = present(app.history);
  platform::keep_draft(plan_json(plan));
  platform::set_title(plan.name.empty() ? "Shoalwright" : plan.name + " - Shoalwright");
  platform::set_plan_text(plan_text(look_at(app)));
  platform::say(spoken(app));
}

namespace {

bool read_cards(App& app) {
  const std::string_view cards = platform::asset("cards");
  if (cards.empty() || !platform::rest_is_here()) return false;
  app.catalog = packed_catalog(cards);
  return app.whole_catalogue = true;
}

}  // namespace

void take_catalogue(App& app) {
  const bool somebody = ImGui::IsMousePosValid() || !app.ui.ring_id.empty();
  if (app.whole_catalogue || !(somebody ? platform::have_rest() : platform::rest_is_here())) return;
  // What points into the catalogue goes before it.
  const std::string in_hand = app.held ? app.held->species->id : "";
  app.views.shelf.work = {};
  app.views.shelf.rows = {};
  app.views.tank.shoals.clear();
  app.views.tank.placed = {};
  app.animals = {};
  if (!read_cards(app)) return;
  if (app.held) app.held->species = species_of(look_at(app), in_hand);
  look_over(app, Remedies::at_once);
}

void begin(App& app) {
  if (!read_cards(app)) app.catalog = first_catalog();
  app.preferences = kept_preferences();
  app.measures = app.preferences.measures();
  Plan plan = read_plan(builtin_demo_plan()).value();
  const std::string kept = platform::draft();
  if (!kept.empty()) {
    Result<Plan> mine = read_plan(kept);
    if (mine)
      plan = std::move(mine.value());
    else
      app.notice = Notice{"The plan kept on this device cannot be read",
                          mine.error().sentence + " It stays on the device; the demo is open instead."};
  }
  if (app.notice) platform::leave_draft();
  app.history = begin_history(std::move(plan));
  plan_changed(app);
  app.link_untold = !kept.empty() && !app.notice;
}

void open_link(App& app, const std::string& link) {
  app.link_to_open = link;
  platform::wake();
}

namespace {

void open_followed_link(App& app) {
  const std::string link = std::exchange(app.link_to_open, "");
  Result<Plan> plan = decode_link(link, app.catalog);
  if (!plan) {
    app.notice = Notice{"The link was not opened", plan.error().sentence + " Your own plan is as you left it."};
    platform::say(app.notice->sentence);
    app.link_untold = true;
    platform::wake();
    return;
  }
  if (*plan == present(app.history)) return;
  app.held.reset();
  platform::leave_draft();
  remember(app.history, std::move(plan.value()), "Open a shared plan", "", ImGui::GetTime());
  plan_changed(app);
  show_toast(app.ui, app.toast, "A shared plan is open. Your changes make your own copy; Undo goes back to your plan.", "Undo");
}

void copy_link(App& app) {
  app.link_wanted = false;
  const std::string link = encode_link(present(app.history), app.catalog);
  platform::copy_text(platform::page_address() + link);
  show_toast(app.ui, app.toast, "Link copied, " + std::to_string(link.size()) + " characters", "");
}

}  // namespace

void follow_link(App& app) {
  const bool to_tell = app.link_untold && !ImGui::IsMouseDown(ImGuiMouseButton_Left);  // not in the midst of a drag
  if ((app.link_to_open.empty() && !app.link_wanted && !to_tell) || !platform::have_rest()) return;
  if (!app.link_to_open.empty()) open_followed_link(app);
  if (app.link_wanted) copy_link(app);
  if (!to_tell) return;
  app.link_untold = false;
  platform::set_link(encode_link(present(app.history), app.catalog));
}

void open_file(App& app, const std::string& name, const std::string& text) {
  Result<Plan> plan = read_plan(text);
  if (!plan) {
    const std::string place = plan.error().place.empty() ? "" : " (at " + plan.error().place + ")";
    app.notice = Notice{"“" + name + "” was not opened", plan.error().sentence + place + " Your own plan is as you left it."};
    platform::say(app.notice->sentence);
    platform::wake();
    return;
  }
  app.held.reset();
  platform::leave_draft();
  remember(app.history, std::move(plan.value()), "Open " + name, "", ImGui::GetTime());
  plan_changed(app);
  show_toast(app.ui, app.toast, "Opened " + name, "Undo");
}

}  // namespace shoalwright
