// SPDX-License-Identifier: MIT
#include "app/keep.h"

#include <algorithm>

#include "draw/fields.h"
#include "platform/platform.h"
#include "units/text.h"

namespace shoalwright {

namespace {

const char* setting_of(Overlay overlay) {
  switch (overlay) {
    case Overlay::none: break;
    case Overlay::crowding: return "crowding";
    case Overlay::clearance: return "clearance";
    case Overlay::cover: return "cover";
    case Overlay::territory: return "territory";
  }
  return "";
}

/// Ids have no spaces. What stands there twice is ticked once; a kind that no longer exists stays, since another plan may have
/// it.
std::vector<std::string> ids_of(const std::string& text) {
  std::vector<std::string> ids;
  for (std::size_t from = 0; from < text.size();) {
    const std::size_t to = std::min(text.find(' ', from), text.size());
    std::string id = text.substr(from, to - from);
    if (!id.empty() && std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(std::move(id));
    from = to + 1;
  }
  return ids;
}

}  // namespace

Preferences kept_preferences() {
  Preferences preferences;
  const std::string theme = platform::setting("theme");
  if (theme == "light") preferences.theme = ThemeChoice::light;
  if (theme == "dark") preferences.theme = ThemeChoice::dark;
  preferences.us_units = platform::setting("units") == "us";
  const std::string hardness = platform::setting("hardness");
  if (hardness == "ppm") preferences.hardness_in = HardnessUnit::mg_l_caco3;
  if (hardness == "mmol") preferences.hardness_in = HardnessUnit::mmol_l;
  preferences.nitrate_as_n = platform::setting("nitrate") == "n";
  if (const std::optional<double> ratio = number_from(platform::setting("ro-drain")); ratio && *ratio >= 0 && *ratio <= 20)
    preferences.ro_drain_l_per_l = ratio;
  const std::string overlay = platform::setting("overlay");
  for (const Overlay one : {Overlay::crowding, Overlay::clearance, Overlay::cover, Overlay::territory})
    if (overlay == setting_of(one)) preferences.overlay = one;
  preferences.swim = platform::setting("swim") == "on";
  preferences.show_lane = platform::setting("lane") != "off";
  preferences.show_numbers = platform::setting("numbers") != "off";
  preferences.shop = ids_of(platform::setting("shop"));
  return preferences;
}

void keep_preferences(const Preferences& preferences) {
  switch (preferences.theme) {
    case ThemeChoice::system: platform::keep_setting("theme", ""); break;
    case ThemeChoice::light: platform::keep_setting("theme", "light"); break;
    case ThemeChoice::dark: platform::keep_setting("theme", "dark"); break;
  }
  platform::keep_setting("units", preferences.us_units ? "us" : "metric");
  const HardnessUnit hardness = preferences.hardness_in;
  platform::keep_setting("hardness", hardness == HardnessUnit::mg_l_caco3 ? "ppm"
                                     : hardness == HardnessUnit::mmol_l   ? "mmol"
                                                                          : "");
  platform::keep_setting("nitrate", preferences.nitrate_as_n ? "n" : "");
  platform::keep_setting("ro-drain", preferences.ro_drain_l_per_l ? short_text(*preferences.ro_drain_l_per_l, 2) : "");
  platform::keep_setting("overlay", setting_of(preferences.overlay));
  platform::keep_setting("swim", preferences.swim ? "on" : "off");
  platform::keep_setting("lane", preferences.show_lane ? "on" : "off");
  platform::keep_setting("numbers", preferences.show_numbers ? "on" : "off");
  std::string shop;
  for (const std::string& id : preferences.shop) shop += (shop.empty() ? "" : " ") + id;
  platform::keep_setting("shop", shop);
}

std::string file_name_of(const Plan& plan) {
  std::string name;
  for (const char c : plan.name) {
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'))
      name += c;
    else if (c >= 'A' && c <= 'Z')
      name += char(c - 'A' + 'a');
    else if (!name.empty() && name.back() != '-')
      name += '-';
  }
  while (!name.empty() && name.back() == '-') name.pop_back();
  return (name.empty() ? "plan" : name) + ".json";
}

}  // namespace shoalwright
