// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/look.h"
#include "draw/toast.h"
#include "edit/history.h"
#include "views/views.h"

namespace shoalwright {

/// A sentence that needs an answer before the keeper goes on: a damaged link, a wrong file.
struct Notice {
  std::string heading, sentence;
};

/// All that lives while the page is open. Only app/ changes it; views see it as a Look.
struct App {
  Catalog catalog;
  bool whole_catalogue = false;  ///< else only what the first look needs
  History history;
  Preferences preferences;
  Measures measures;

  Assessment now;                      ///< of the present plan
  BodyRooms bodies, shown_bodies;      ///< what bodies find in the present plan; in what is shown, where that is another
  std::optional<double> search_at_s;   ///< when remedies that need a search are looked for, once the plan rests
  std::string link_to_open;            ///< waits for the second file of the program
  std::optional<Held> held;            ///< a kind in hand
  std::optional<PreviewPlan> preview;  ///< a remedy or a size that is pointed at
  Plan shown;                          ///< what all views show
  Assessment shown_assessment;
  MarginTable now_margins, shown_margins;
  SpreadNow spread;
  Plan grazing_of;         ///< the plan that its grazing is of
  Plan spread_of;          ///< the plan that it is of
  double spread_at_s = 0;  ///< when it was worked out
  std::string previewing;

  AnimalStore animals;
  Faces faces;
  Ui ui;
  ViewStates views;
  Sheet sheet = Sheet::none;
  ShowAge age;  ///< at which the tank is shown
  std::string pointed_species;
  std::vector<std::size_t> chosen_pieces;  ///< rising, of the present plan
  std::optional<int> chosen_terrain;       ///< the substrate is worked on: a point of its terrain line, -1 none
  std::string piece_in_hand;               ///< a kind dragged off the shelf
  Toast toast;
  std::optional<Notice> notice;
  bool untold = false;       ///< the page has yet to hear of the present plan
  bool link_untold = false;  ///< and of its link, once what writes links is here; the demo as it comes needs none
  bool link_wanted = false;  ///< on the clipboard
};

/// Reads the catalogue and the plan to go on with: this tab's draft, else the demo.
void begin(App& app);

/// Takes the whole catalogue once the page has it (it comes with the second file of the program), and asks for it as soon as
/// somebody is there.
void take_catalogue(App& app);

/// One frame, from the keys to the carried-out wishes (app/frame.cpp).
void draw_frame(App& app);

/// Carries out what the views and keys wished for, in order.
void carry_out(App& app, const Actions& actions);

/// Wishes of the keyboard that belong to no widget (app/keys.cpp).
void read_keys(App& app, Actions& out);

/// A link that this tab did not write; a plan file. One sentence when it cannot be read, and nothing changes.
void open_link(App& app, const std::string& link);
void follow_link(App& app);  ///< once what reads and writes links is here
void open_file(App& app, const std::string& name, const std::string& text);

/// The present plan has changed: assess it. The page hears of it with the next frame.
void plan_changed(App& app);

/// Tells the page of the present plan when it has changed: keeps it on the device, rewrites the address and the text form.
void tell_page(App& app);

/// Looks for the remedies that need a search when the plan has rested long enough.
void search_remedies(App& app);

/// Works out who is where in what is shown: at once where that is to be seen, in the midst of a drag eight times a second, else
/// a little later and not before a drag has ended.
void follow_spread(App& app);

/// Works out `shown` and its assessment from what is held or pointed at.
void show_what_is_held(App& app);

/// What all views may see of it.
Look look_at(App& app);

}  // namespace shoalwright
