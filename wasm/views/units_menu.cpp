// SPDX-License-Identifier: MIT
#include "views/units_menu.h"

#include <string>
#include <string_view>

#include "draw/menus.h"

namespace shoalwright {

void draw_units_menu(Ui& ui, const Look& look, const Box& button, Actions& out) {
  if (!begin_menu(ui, "top.units/menu", button, 246, 250)) return;
  Preferences preferences = look.preferences;
  const auto row = [&](const std::string& id, std::string_view words, bool ticked, auto change) {
    if (!menu_row(ui, id, words, {.ticked = ticked})) return;
    change();
    out.push_back(SetPreferences{preferences});
  };
  row("top.units/metric", "°C, centimetres, litres", !preferences.us_units, [&] { preferences.us_units = false; });
  row("top.units/us", "°F, inches, US gallons", preferences.us_units, [&] { preferences.us_units = true; });
  menu_line(ui);
  constexpr std::string_view hardness[] = {"GH, KH in °dH", "GH, KH in mg/L CaCO₃", "GH in mmol/L, KH in meq/L"};
  for (int i = 0; i < 3; ++i) {
    const auto unit = static_cast<HardnessUnit>(i);
    row("top.units/hardness/" + std::to_string(i), hardness[i], look.preferences.hardness_in == unit,
        [&] { preferences.hardness_in = unit; });
  }
  menu_line(ui);
  for (const bool as_n : {false, true})
    row(as_n ? "top.units/nitrate/n" : "top.units/nitrate/no3", as_n ? "Nitrate as N" : "Nitrate as NO₃",
        look.preferences.nitrate_as_n == as_n, [&] { preferences.nitrate_as_n = as_n; });
  end_menu(ui);
}

}  // namespace shoalwright
