// SPDX-License-Identifier: MIT
#include "app/say.h"

#include <algorithm>
#include <cmath>

#include "assess/margin.h"
#include "catalog/plural.h"
#include "units/convert.h"
#include "units/order.h"
#include "units/text.h"

namespace shoalwright {

namespace {

bool begins_with(std::string_view text, std::string_view with) { return text.substr(0, with.size()) == with; }
bool contains(std::string_view text, std::string_view part) { return text.find(part) != std::string_view::npos; }

const Kept* kept_of(const Told& told, const std::string& species) {
  for (const Kept& kept : told.stock)
    if (kept.id == species) return &kept;
  return nullptr;
}

/// Rules that say a margin is over.
bool speaks_of(std::string_view rule, std::string_view margin) {
  if (margin == "temperature_c") return rule == "water-temperature";
  if (margin == "ph") return rule == "water-ph";
  if (margin == "gh_dgh") return rule == "water-gh";
  if (margin == "kh_dkh") return rule == "water-kh";
  if (margin == "lane_cm") return rule == "swim-lane" || rule == "tank-length";
  if (margin == "crowding_l_cm") return begins_with(rule, "crowding-");
  if (margin == "floor_cm2") return rule == "crowding-bottom" || rule == "territory";
  if (margin == "nitrate_mg_l") return rule == "nitrate" || rule == "load";
  if (margin == "dawn_mg_l") return rule == "oxygen";
  if (margin == "ammonia_nh3_mg_l") return rule == "ammonia";
  return false;
}

std::optional<Severity> grade_of(const Told& told, const Tightest& margin) {
  if (!(margin.value < 0)) return std::nullopt;
  for (const Finding& finding : told.assessment.findings)  // worst first
    if (speaks_of(finding.rule, margin.margin)) return finding.severity;
  return std::nullopt;
}

const Window* window_of(const Assessment& assessment, std::string_view margin) {
  if (margin == "temperature_c") return &assessment.water.temperature_c;
  if (margin == "ph") return &assessment.water.ph;
  if (margin == "gh_dgh") return &assessment.water.gh_dgh;
  if (margin == "kh_dkh") return &assessment.water.kh_dkh;
  return nullptr;
}

const char* water_name(std::string_view margin) {
  if (margin == "temperature_c") return "Temperature";
  if (margin == "ph") return "pH";
  return margin == "gh_dgh" ? "GH" : "KH";
}

void say_water(const Told& told, const Tightest& margin, const Window& window, MarginWords& words) {
  const Measures& measures = told.look.measures;
  const bool temperature = margin.margin == "temperature_c";
  words.name = water_name(margin.margin);
  const double by = std::abs(margin.value);
  const bool hardness = margin.margin == "gh_dgh" || margin.margin == "kh_dkh";
  const Hardness of = margin.margin == "gh_dgh" ? Hardness::gh : Hardness::kh;
  words.amount =
      hardness ? measures.hardness_figure(by, of) : short_text(temperature && measures.us ? f_difference_from_c(by) : by, 1);
  words.state = margin.value >= 0                                    ? "spare"
                : !window.tolerated                                  ? "apart"
                : window.now && *window.now > window.tolerated->high ? "over"
                                                                     : "under";
  const std::string unit = temperature ? measures.temperature_unit() : hardness ? measures.hardness_unit(of) : "";
  words.number = words.amount;
  words.words = words.short_words = unit.empty() ? words.state : unit + " " + words.state;
}

/// What is only known roughly: whole numbers, two figures at most, a tenth under 1.
std::string about(double value) {
  return value < 1 ? short_text(value, 1) : value < 100 ? short_text(value, 0) : significant_text(value, 2);
}

void say_animals(const Told& told, const MarginFacts& facts, MarginWords& words) {
  const int count = *facts.animals;
  words.number = count == 0 ? "No" : std::to_string(std::abs(count));
  const auto named = [&](bool shortened) {
    const std::string some = animals_text(told, facts.kind, count == 0 ? 2 : std::abs(count), shortened);
    const std::string name = some.substr(some.find(' ') + 1);
    return count < 0 ? name + " over" : "more " + name;
  };
  words.words = named(false);
  words.short_words = named(true);
}

}  // namespace

const char* id_of(Section section) {
  switch (section) {
    case Section::water: return "water";
    case Section::room: return "room";
    case Section::load: return "load";
    case Section::air: return "air";
    case Section::company: return "company";
  }
  return "";
}

Section section_of(const Finding& finding) {
  const std::string_view rule = finding.rule;
  if (rule == "unknown-input") {
    if (contains(finding.text, "sexes of") || contains(finding.text, "known: what ")) return Section::company;
    if (contains(finding.text, "nitrate of the tap") || contains(finding.text, "water changes") ||
        contains(finding.text, "feeding"))
      return Section::load;
    if (contains(finding.text, "planting")) return Section::room;
    if (contains(finding.text, "surface")) return Section::air;
    return contains(finding.text, "lid") ? Section::company : Section::water;
  }
  if (begins_with(rule, "water-") || rule == "softened-water" || rule == "acid" || rule == "tap-disinfectant" ||
      rule == "private-water" || rule == "brackish")
    return Section::water;
  if (begins_with(rule, "crowding-") || rule == "swim-lane" || rule == "territory" || begins_with(rule, "tank-") ||
      rule == "substrate" || rule == "cover" || rule == "wood-needed" || rule == "current")
    return Section::room;
  if (rule == "oxygen" || rule == "heater") return Section::air;
  return rule == "load" || rule == "nitrate" || rule == "ammonia" || rule == "filter" || rule == "kh-low" || rule == "cycle" ||
                 rule == "mature-tank"
             ? Section::load
             : Section::company;
}

Section section_of_margin(std::string_view margin) {
  if (margin == "nitrate_mg_l" || margin == "ammonia_nh3_mg_l") return Section::load;
  if (margin == "dawn_mg_l") return Section::air;
  if (margin == "lane_cm" || margin == "crowding_l_cm" || margin == "floor_cm2") return Section::room;
  return margin == "company" ? Section::company : Section::water;
}

Told told_shown(const Look& look) {
  return {look, look.shown, look.shown_assessment, look.shown_margins, resolve_stock(look.shown, look.catalog)};
}

Told told_now(const Look& look) { return {look, look.plan, look.now, look.now_margins, resolve_stock(look.plan, look.catalog)}; }

std::vector<int> plates_of(const Told& told, const std::vector<std::string>& species) {
  std::vector<int> plates;
  for (std::size_t i = 0; i < told.stock.size(); ++i)
    if (std::find(species.begin(), species.end(), told.stock[i].id) != species.end()) plates.push_back(static_cast<int>(i) + 1);
  return plates;
}

std::string plates_text(const std::vector<int>& plates) {
  std::string text;
  for (const int plate : plates) text += (text.empty() ? "" : ", ") + std::to_string(plate);
  return text;
}

std::string animals_text(const Told& told, const std::string& species, int count, bool shortened) {
  const Kept* kept = kept_of(told, species);
  std::string name = kept != nullptr && kept->species != nullptr ? name_for(*kept->species, count) : species;
  const bool common = kept != nullptr && kept->species != nullptr && !kept->species->name.common.empty();
  if (shortened && common) {
    const std::size_t space = name.rfind(' ');
    if (space != std::string::npos) name.erase(0, space + 1);
  }
  return std::to_string(count) + " " + name;
}

MarginWords margin_words(const Told& told, const Tightest& margin) {
  const Measures& measures = told.look.measures;
  MarginWords words;
  words.margin = margin.margin;
  words.value = margin.value;
  words.plates = plates_of(told, margin.set_by);
  words.grade = grade_of(told, margin);
  if (const Window* window = window_of(told.assessment, margin.margin)) {
    say_water(told, margin, *window, words);
    return words;
  }
  const double by = std::abs(margin.value);
  std::string unit;
  if (margin.margin == "lane_cm") {
    words.name = "Swimming lane";
    words.amount = short_text(measures.length_out(by), by < 10 ? 1 : 0);
    unit = measures.length_unit();
    words.state = margin.value < 0 ? "short" : "spare";
  } else if (margin.margin == "crowding_l_cm") {
    words.name = "Tightest depth";
    words.amount = measures.us ? short_text(us_gal_from_l(by) * cm_per_in, 2) : short_text(by, 1);
    unit = measures.us ? "gal/in" : "L/cm";
    words.state = margin.value < 0 ? "over" : "spare";
  } else if (margin.margin == "floor_cm2") {
    words.name = "Floor";
    words.amount = short_text(measures.length_out(measures.length_out(by)), 0);
    unit = measures.us ? "in²" : "cm²";
    words.state = margin.value < 0 ? "short" : "spare";
  } else if (margin.margin == "nitrate_mg_l") {
    words.name = never_changed(told.plan) ? "Nitrate in a year" : "Nitrate peak";
    words.amount = about(measures.nitrate_out(by));
    unit = measures.nitrate_unit();
    words.state = margin.value < 0 ? "over" : "spare";
  } else if (margin.margin == "dawn_mg_l") {
    words.name = "Oxygen at dawn";
    words.amount = short_text(by, 1);
    unit = "mg/L";
    words.state = margin.value < 0 ? "short" : "spare";
  } else {
    words.name = "Free ammonia";
    words.amount = by < 0.1 ? short_text(by, 3) : short_text(by, 2);
    unit = "mg/L";
    words.state = margin.value < 0 ? "over" : "spare";
  }
  words.number = words.amount;
  words.words = words.short_words = unit + " " + words.state;
  const MarginFacts* facts = find_margin(told.margins, margin.margin);
  if (!facts) return words;
  if (facts->depth_cm)
    words.name = (measures.us ? short_text(measures.length_out(*facts->depth_cm), 0) : short_text(*facts->depth_cm, 0)) + " " +
                 measures.length_unit() + " down";
  // Over by more animals than there are: the amount says it better.
  const Kept* kind = kept_of(told, facts->kind);
  const bool can_be_counted = facts->animals && kind != nullptr && -*facts->animals <= kind->count;
  if (can_be_counted) {
    say_animals(told, *facts, words);
    words.detail = (margin.margin == "nitrate_mg_l" || margin.margin == "dawn_mg_l" ? "about " : "") + words.amount + " " + unit;
  }
  return words;
}

std::vector<MarginWords> first_margins(const Told& told, std::size_t most) {
  std::vector<MarginWords> all;
  for (const Severity severity : {Severity::harm, Severity::strain}) {
    const int count = count_of(told, Section::company, severity);
    if (count == 0) continue;
    MarginWords company;
    company.margin = "company";
    company.name = "Company";
    company.number = company.amount = std::to_string(count);
    company.words = severity == Severity::harm ? "to fix" : count == 1 ? "strain" : "strains";
    company.short_words = company.words;
    company.grade = severity;
    company.value = -count;
    std::vector<std::string> who;
    for (const Finding& finding : told.assessment.findings)
      if (section_of(finding) == Section::company && finding.severity == severity)
        who.insert(who.end(), finding.species.begin(), finding.species.end());
    company.plates = plates_of(told, who);
    all.push_back(std::move(company));
    break;
  }
  for (const Tightest& margin : told.assessment.tightest) all.push_back(margin_words(told, margin));
  // Fix, Strain, Watch, then the rest as the assessment has them, worst first: a limit that is just passed before one that is
  // not.
  const auto rank = [](const MarginWords& words) { return static_cast<int>(words.grade.value_or(Severity::note)); };
  sort_stable(all, [&](const MarginWords& a, const MarginWords& b) { return rank(a) < rank(b); });
  if (all.size() > most) all.resize(most);
  return all;
}

int count_of(const Told& told, Section section, Severity severity) {
  int count = 0;
  for (const Finding& finding : told.assessment.findings)
    if (finding.severity == severity && section_of(finding) == section && !is_known(told.plan, finding)) ++count;
  return count;
}

bool is_known(const Plan& plan, const Finding& finding) {
  if (finding.severity == Severity::harm || finding.severity == Severity::strain) return false;  // these keep their mark
  return std::any_of(plan.seen.begin(), plan.seen.end(),
                     [&](const Seen& seen) { return seen.rule == finding.rule && seen.species == finding.species; });
}

}  // namespace shoalwright
