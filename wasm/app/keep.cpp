// SPDX-License-Identifier: MIT
#include "app/keep.h"

#include "platform/platform.h"

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

}  // namespace

Preferences kept_preferences() {
  Preferences preferences;
  const std::string theme = platform::setting("theme");
  if (theme == "light") preferences.theme = ThemeChoice::light;
  if (theme == "dark") preferences.theme = ThemeChoice::dark;
  preferences.us_units = platform::setting("units") == "us";
  const std::string overlay = platform::setting("overlay");
  for (const Overlay one : {Overlay::crowding, Overlay::clearance, Overlay::cover, Overlay::territory})
    if (overlay == setting_of(one)) preferences.overlay = one;
  preferences.swim = platform::setting("swim") == "on";
  preferences.show_lane = platform::setting("lane") != "off";
  preferences.show_numbers = platform::setting("numbers") != "off";
  return preferences;
}

void keep_preferences(const Preferences& preferences) {
  switch (preferences.theme) {
    case ThemeChoice::system: platform::keep_setting("theme", ""); break;
    case ThemeChoice::light: platform::keep_setting("theme", "light"); break;
    case ThemeChoice::dark: platform::keep_setting("theme", "dark"); break;
  }
  platform::keep_setting("units", preferences.us_units ? "us" : "metric");
  platform::keep_setting("overlay", setting_of(preferences.overlay));
  platform::keep_setting("swim", preferences.swim ? "on" : "off");
  platform::keep_setting("lane", preferences.show_lane ? "on" : "off");
  platform::keep_setting("numbers", preferences.show_numbers ? "on" : "off");
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
