// SPDX-License-Identifier: MIT
#include "app/rule_words.h"

#include "notebook/say.h"
#include "plan/defaults.h"
#include "rules/company_limits.h"
#include "stocking/arrivals.h"
#include "water/media.h"
#include "water/reach.h"

namespace shoalwright {

namespace {

std::string past_edge(double error, const Steps& steps, int decimals, std::string_view unit, std::string_view measured_with) {
  return "Each kind has a range that it lives in and inside it one that it thrives in. Past the edge by no more than " +
         amount(error, decimals, unit) + ", which is what " + std::string(measured_with) + " may read wrong, is a note; up to " +
         amount(steps.strain, decimals, unit) + " a watch.";
}

std::string of_share(double value) { return amount(value, 2, ""); }

std::string crowding_words(std::string_view where) {
  return "Each animal wants room by the length it grows to and by how it lives; wanted over open is summed for " +
         std::string(where) + ". Up to " + of_share(crowding_note_to) + " is a note at most, up to " +
         of_share(crowding_watch_to) + " a watch, up to " + of_share(crowding_strain_to) + " a strain.";
}

}  // namespace

std::string rule_words(std::string_view rule) {
  if (rule == "water-temperature")
    return past_edge(limits::error_temperature_c, limits::temperature_steps_c, 1, "°C", "a thermometer");
  if (rule == "water-ph") return past_edge(limits::error_ph, limits::ph_steps, 1, "", "a kit");
  if (rule == "water-gh") return past_edge(limits::error_gh_dgh, limits::gh_steps_dgh, 0, "°dH", "a kit");
  if (rule == "water-kh")
    return "Each kind has a range that it lives in. KH follows GH and pH: up to " + amount(limits::error_kh_dkh, 0, "°dH") +
           " past an edge is a note, more a watch; only kinds that need hard water are strained by too little.";
  if (rule == "crowding-top" || rule == "crowding-mid") return crowding_words("each third of the depth");
  if (rule == "crowding-bottom") return crowding_words("the lowest third of the depth, and for the floor");
  if (rule == "territory")
    return "Who holds ground wants floor by the square of its length, a shoal by its number; nine tenths of the floor can be "
           "used. Up to " +
           of_share(crowding_note_to) + " of it nothing is said, up to " + of_share(crowding_watch_to) + " is a watch.";
  if (rule == "swim-lane" || rule == "tank-length")
    return "A swimmer wants a clear run of several of its adult lengths, by how it lives. From " + percent(lane_note_from) +
           " of it on is a note, from " + percent(lane_watch_from) + " a watch; under " + percent(lane_harm_below) +
           " in an empty tank it is hurt. Some kinds are not kept under a certain length of tank, however few.";
  if (rule == "tank-width")
    return "Front to back a fish wants " + amount(width_quiet_from, 1, "") + " of its adult lengths to turn at ease; under " +
           amount(width_harm_below, 1, "") + " it cannot.";
  if (rule == "tank-height")
    return "A tall fish wants water over the substrate of " + amount(height_quiet_from, 1, "") +
           " times its height with fins; under " + amount(height_strain_below, 1, "") + " is a strain.";
  if (rule == "tank-volume")
    return "Some kinds are not kept in less than a certain volume, however few. Under " + percent(least_tank_harm_below) +
           " of it they are hurt.";
  if (rule == "group-size")
    return "The card of each kind has the least and a good size of group. Between the two it is a note or a watch, under the "
           "least a strain "
           "or worse; a loner has its own rule the other way round.";
  if (rule == "sex-ratio" || rule == "surplus-young")
    return "Live-bearing fish of both sexes: a male wants " + amount(limits::females_for_a_male, 0, "") +
           " females, unless its card says one is enough; where both sexes are, young come.";
  if (rule == "male-rivalry")
    return "Rival males of a pair or harem kind want a territory each, " + amount(limits::rival_ground_bl2, 0, "") +
           " times their length squared; " + amount(limits::rivals_spread, 0, "") +
           " and more spread their fights. Males of a loner that fights its own kind kill each other.";
  if (rule == "look-alike-rivalry")
    return "A card names the group whose kinds take each other for rivals; from " + amount(look_alike_least_l, 0, "L") +
           " on they keep apart.";
  if (rule == "temperament")
    return "A kind that drives off all others hurts peaceful ones up to " + amount(limits::bullied_times, 1, "") +
           " times its length, and strains the rest. A rough one is a matter only where its run or its ground is short; a pair "
           "that guards eggs in less than " +
           amount(limits::guarding_least_l, 0, "L") + ".";
  if (rule == "predation")
    return "Mouth over depth of body, reach over length, both grown: " + of_share(swallow_eaten_from) +
           " and more is eaten, from " + of_share(swallow_risk_from) + " on at risk, from " + of_share(swallow_watch_from) +
           " on a watch. Beside those that are no hunters practice is divided, and the view decides how grave it is.";
  if (rule == "fin-nipping")
    return "Nippers beside long fins at the same level, unless those are quick. A kind that nips when few is calmer in a good "
           "group "
           "of " +
           amount(limits::nip_calm_group, 0, "") + " or more; practice is divided on whether that is enough.";
  if (rule == "invertebrate-predation")
    return "A card says whether its kind eats grown shrimps, young ones or none, and snails; who is as long as the eater is safe "
           "when grown.";
  if (rule == "feeding")
    return "Slow eaters beside fast ones that are fed at the same place, and plant eaters beside meat eaters. What grazes or "
           "eats by "
           "night is left out.";
  if (rule == "hybrid") return "A card lists the kinds that its own crosses with. One sex of both kinds makes no young.";
  if (rule == "plant-eater")
    return "Who eats leaves or digs, from " + amount(limits::digger_least_cm, 0, "cm") +
           " on, beside drawn plants: a watch. Ferns and mosses are left alone; plants that are not drawn are a note.";
  if (rule == "legal")
    return "Lists of the region that you have given, with the date at which they were read. Banned and restricted is a strain, a "
           "hint to check a note.";
  if (rule == "adult-size")
    return "All room is reckoned at the size that the animals grow to. Sold under " + percent(limits::sold_small_share) +
           " of it, a fish hides what it will need.";
  if (rule == "substrate")
    return "By how a kind feeds from the floor: rounded sand suits all. Smooth gravel and soil are a note, since practice is "
           "divided, sharp gravel is a strain under barbels and mouths that sift. A floor left bare is a note from " +
           amount(limits::bare_quiet_weeks, 0, "weeks") + " on.";
  if (rule == "cover")
    return "Who sleeps by day wants a hide each. Others want some shelter, " + percent(limits::cover_some) +
           " of the floor, or much, " + percent(limits::cover_much) + ": pieces as seen from above, and plants beyond them, " +
           percent(shelter_light) + " for light planting, " + percent(shelter_medium) + " for medium, " + percent(shelter_dense) +
           " for dense.";
  if (rule == "wood-needed")
    return "Some kinds rasp wood all day for what grows on it; any piece from the shelf of woods will do.";
  if (rule == "current")
    return "What the filter moves in an hour over the water in the tank. Still-water kinds stand " +
           amount(limits::current_still_most, 0, "") +
           " volumes, more only where plants give calm places; kinds of streams want " +
           amount(limits::current_strong_least, 0, "") + " or more.";
  if (rule == "lid") return "By how readily a kind jumps; a tank with a lid keeps it.";
  if (rule == "load")
    return "Food becomes ammonia and then nitrate. The weekly change that would hold nitrate " +
           amount(load_nitrate_mg_l, 0, "mg/L") + " above the tap says how much waste there is, whatever is changed now: up to " +
           percent(load_quiet_to) + " nothing is said, up to " + percent(load_watch_to) + " is a watch.";
  if (rule == "nitrate")
    return "Nitrate rises between changes and falls with each, until both balance. Your own limit holds; without one it is " +
           amount(default_nitrate_mg_l[0], 0, "mg/L") + ", " + amount(default_nitrate_mg_l[1], 0, "mg/L") + " or " +
           amount(default_nitrate_mg_l[2], 0, "mg/L") +
           " as the view is lenient, usual or strict. A tenth over is what a kit may read wrong.";
  if (rule == "water-unreachable")
    return "KH and dissolved CO2 set pH: from balance with fresh air down to the CO2 ceiling, " +
           amount(safe_co2_mg_l, 0, "mg/L") + " where you have set none. An aim off by no more than " +
           amount(limits::error_ph, 1, "") + " is what a kit may read wrong.";
  if (rule == "acid")
    return "From KH " + amount(limits::acid_least_kh_dkh, 0, "") +
           " on acid is eaten up by carbonate until that is gone, and then pH falls at once. Lower KH first; pH follows.";
  if (rule == "water-change-shock")
    return "One change should move pH by no more than " + amount(limits::change_ph.watch, 1, "") +
           ", GH and KH by no more than " + percent(limits::change_hardness_share.watch) +
           " of what they were and temperature by no more than two degrees Celsius. "
           "pH of a mix follows from its carbon and KH, it is never a mean.";
  if (rule == "kh-low")
    return "Bacteria that turn ammonia into nitrate use up KH; changes bring it back. Under " +
           amount(limits::kh_left_least_dkh, 1, "°dH") + " before a change pH may slide, under " +
           amount(limits::kh_left_least_dkh - limits::kh_left_short.strain, 1, "°dH") + " it may fall at once.";
  if (rule == "softened-water")
    return "A softener puts sodium in the place of calcium: GH " + amount(limits::softened_most_gh_dgh, 0, "") +
           " or less beside KH " + amount(limits::softened_least_kh_dkh, 0, "") + " or more looks like it.";
  if (rule == "tap-disinfectant")
    return "Chlorine and chloramine burn gills and kill a filter. What is not known is treated as chloramine; standing does not "
           "remove it.";
  if (rule == "private-water")
    return "A supplier tests what it delivers; a well, a spring or a roof has nobody who does. It stays a note: only a test "
           "tells more.";
  if (rule == "brackish")
    return "A card says whether its kind needs salt for good. What lives in either, fresh or brackish, is not spoken of here.";
  if (rule == "cycle")
    return "A new filter takes about " + amount(settling_weeks, 0, "weeks") +
           " until it carries animals; until then those that are there are tested for. Later ones come in stages of " +
           percent(stage_share) + " of all food, or group by group, about " + amount(weeks_to_gate, 0, "weeks") +
           " apart, each after clean tests. Who is only wished for is judged as settled.";
  if (rule == "mature-tank")
    return "A card says how long a tank should have been lived in before its kind comes. Without a week of arrival it is a "
           "watch, "
           "with one that is too early a strain.";
  if (rule == "ammonia")
    return "Of what a kit reads, only un-ionised ammonia harms, and pH and warmth decide how much that is: from " +
           amount(limits::ammonia_nh3_mg_l.watch, 3, "mg/L") + " a watch, from " +
           amount(limits::ammonia_nh3_mg_l.strain, 2, "") + " a strain, from " + amount(limits::ammonia_nh3_mg_l.harm, 2, "") +
           " gills are harmed. Nitrite: from " + amount(limits::nitrite_mg_l.watch, 1, "mg/L") +
           ", half of that in water with little chloride.";
  if (rule == "oxygen")
    return "Animals, bacteria and plants use oxygen in the dark, the surface brings it: lowest before dawn. From " +
           amount(limits::oxygen_ease_mg_l, 0, "mg/L") + " nothing is said, under " +
           amount(limits::oxygen_ease_mg_l - limits::oxygen_short.watch, 0, "") + " is a watch, under " +
           amount(limits::oxygen_ease_mg_l - limits::oxygen_short.strain, 0, "") +
           " a strain. A heat wave is judged a step milder.";
  if (rule == "filter")
    return "Media are reckoned half clogged, to hold ammonia at " + amount(film_target_tan_mg_l, 1, "mg/L") +
           "; glass, gravel and plants help, so that up to " + amount(limits::filter_media.watch, 0, "") +
           " times too little is a note. A filter should move the water " + amount(limits::filter_turnover, 0, "") +
           " times an hour.";
  if (rule == "heater")
    return "Heat goes through glass, lid and surface by the room’s temperature; half as much again makes up for cold nights. "
           "How cold it gets without decides.";
  if (rule == "unknown-input") return "What is not known is never taken for fine: the verdict waits until it is given.";
  if (rule == "unknown-species") return "A kind without a card has no figures, and no sum is made up without it.";
  if (rule == "empty") return "Company, room and load are judged by what lives in the tank.";
  return "";
}

std::string evidence_words(const Finding& finding) {
  switch (finding.evidence) {
    case Evidence::published: {
      const std::string_view cited = citation(finding.source);
      return "Published: " + std::string(cited.empty() ? std::string_view(finding.source) : cited);
    }
    case Evidence::common_practice: return "Common practice, no source.";
    case Evidence::from_memory: return "From memory; no source has been checked for it.";
    case Evidence::keeper: return "Your own value.";
  }
  return "";
}

}  // namespace shoalwright
