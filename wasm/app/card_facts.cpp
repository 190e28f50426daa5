// SPDX-License-Identifier: MIT
#include "app/card_facts.h"

#include <algorithm>
#include <utility>

#include "app/retold.h"
#include "app/rule_words.h"
#include "catalog/card_words.h"
#include "notebook/say.h"
#include "units/text.h"
#include "views/shelf_card.h"

namespace shoalwright {

namespace {

std::string hardness(const Measures& m, const Range& range, Hardness of) {
  return m.hardness_figure(range.low, of) + " to " + m.hardness(range.high, of);
}

std::string said(const Measures& m, const Range& range, const char* field) {
  const std::string_view name = field;
  if (name == "water.temperature_c") return m.temperatures(range.low, range.high);
  if (name == "water.gh_dgh") return hardness(m, range, Hardness::gh);
  if (name == "water.kh_dkh") return hardness(m, range, Hardness::kh);
  return span_of(range.low, range.high, 1, "");
}

/// Collects the facts of one card; what has no value is left out.
struct Teller {
  const Species& species;
  const Measures& m;
  std::vector<CardFact> facts = {};

  void tell(std::string name, std::string value, const char* path) {
    if (!value.empty()) facts.push_back({std::move(name), capital(std::move(value)), evidence_for(species, path)});
  }
  void length(std::string name, const std::optional<double>& cm, const char* path, const std::string& after = "") {
    if (cm) tell(std::move(name), m.length(*cm) + after, path);
  }
  void need(const char* name, const Need& need, const std::optional<Range>& published, const std::string& field) {
    if (need.tolerated)
      tell(std::string(name) + ", lives in", said(m, *need.tolerated, field.c_str()), (field + ".tolerated").c_str());
    if (need.ideal) tell(std::string(name) + ", thrives in", said(m, *need.ideal, field.c_str()), (field + ".ideal").c_str());
    if (published) tell(std::string(name) + ", as printed", said(m, *published, field.c_str()), (field + ".published").c_str());
  }
  std::vector<CardFact> taken() { return std::exchange(facts, {}); }
};

const char* yes(bool so) { return so ? "yes" : ""; }

std::string depth_words(const Species& species) {
  constexpr const char* names[] = {"upper", "middle", "lower"};
  std::vector<std::string> parts;
  for (std::size_t i = 0; i < 3; ++i)
    if (species.life.depth[i] > 0) parts.push_back(percent(species.life.depth[i]) + " " + names[i]);
  return joined(parts) + " third";
}

std::string ratio_words(const std::string& ratio) {
  // "1m:2f", checked by the reader.
  const std::size_t m = ratio.find('m'), f = ratio.find('f');
  if (m == std::string::npos || f == std::string::npos || f < m + 2) return "";
  const std::string males = ratio.substr(0, m), females = ratio.substr(m + 2, f - m - 2);
  return males + (males == "1" ? " male to " : " males to ") + females + (females == "1" ? " female" : " females");
}

std::string names_of(std::vector<std::string> words) {
  for (std::string& word : words) word = spaced_word(std::move(word));
  return joined(words);
}

void tell_body(Teller& t) {
  const Species::Size& size = t.species.size;
  t.length("Adult length", size.adult_tl_cm, "size.adult_tl_cm");
  t.length("Males", size.adult_male_cm, "size.adult_male_cm");
  t.length("Females", size.adult_female_cm, "size.adult_female_cm");
  t.length("When sold", size.sold_cm, "size.sold_cm");
  t.length("Largest printed", size.published_max_cm, "size.published_max_cm",
           size.published_max_type.empty() ? "" : ", " + size.published_max_type);
  t.length("Height with fins", size.height_with_fins_cm, "size.height_with_fins_cm");
  if (size.body != Body::unknown) t.tell("Shape", said_word("size.body", word_of(size.body)), "size.body");
}

void tell_water(Teller& t, const RestOfCard& rest) {
  const Species::WaterNeeds& water = t.species.water;
  t.need("Temperature", water.temperature_c, rest.published_temperature_c, "water.temperature_c");
  t.need("pH", water.ph, rest.published_ph, "water.ph");
  t.need("GH", water.gh_dgh, {}, "water.gh_dgh");
  t.need("KH", water.kh_dkh, {}, "water.kh_dkh");
  t.tell("Salt", said_word("water.salinity", word_of(water.salinity)), "water.salinity");
  if (water.oxygen_least_mg_l)
    t.tell("Oxygen at dawn", amount(*water.oxygen_least_mg_l, 1, "mg/L") + " or more", "water.oxygen_least_mg_l");
  t.tell("Hardiness", water.hardiness, "water.hardiness");
}

void tell_life(Teller& t) {
  const Species::Life& life = t.species.life;
  t.tell("Group", said_company(t.species), "life.group");
  t.tell("Comes in", said_word("life.group.added", life.group.added), "life.group.added");
  t.tell("Sexes", ratio_words(life.sex_ratio), "life.sexes.ratio");
  t.tell("Way of life", said_word("life.style", word_of(life.style)), "life.style");
  t.tell("Depth", depth_words(t.species), "life.depth");
  t.tell("Active", said_word("life.active", life.active), "life.active");
  t.tell("Current", life.current, "life.current");
  t.tell("Cover", life.cover, "life.cover");
  if (life.jumps) t.tell("Jumps", said_word("life.jumps", word_of(*life.jumps)), "life.jumps");
  t.tell("Breathes air", yes(life.air_breather), "life.air_breather");
  if (life.longevity_y) t.tell("Lives", span_of(life.longevity_y->low, life.longevity_y->high, 1, "years"), "life.longevity_y");
}

void tell_temper(Teller& t) {
  const Species::Temper& temper = t.species.temper;
  t.tell("To its own kind", said_word("temper.to_own_kind", word_of(temper.to_own_kind)), "temper.to_own_kind");
  t.tell("To others", said_word("temper.to_others", word_of(temper.to_others)), "temper.to_others");
  t.tell("Nips fins", spaced_word(temper.nips_fins), "temper.nips_fins");
  t.tell("Own fins", temper.fins, "temper.fins");
  t.tell("Males are rivals", yes(temper.rival_males), "temper.rival_males");
  t.tell("Feeds", said_word("temper.feeding_pace", temper.feeding_pace), "temper.feeding_pace");
  t.tell("Crosses with", names_of(temper.breeds_with), "temper.breeds_with");
}

void tell_food(Teller& t) {
  const Species::Mouth& mouth = t.species.mouth;
  t.tell("Food", said_food(t.species), "diet.foods");
  t.tell("Feeds at", said_word("diet.feeds_at", t.species.diet.feeds_at), "diet.feeds_at");
  t.tell("Eats like a", spaced_word(mouth.eater), "mouth.eater");
  t.tell("Eats shrimps", said_word("mouth.eats_shrimp", mouth.eats_shrimp), "mouth.eats_shrimp");
  t.tell("Eats snails", yes(mouth.eats_snails), "mouth.eats_snails");
  t.tell("Eats plants", said_word("mouth.eats_plants", mouth.eats_plants), "mouth.eats_plants");
  t.tell("Digs", yes(mouth.digs), "mouth.digs");
}

void tell_needs(Teller& t) {
  const Species::Needs& needs = t.species.needs;
  t.length("Least tank", needs.least_length_cm, "needs.least_length_cm", " long");
  if (needs.least_volume_l) t.tell("Least volume", t.m.volume(*needs.least_volume_l), "needs.least_volume_l");
  t.tell("Substrate", needs.substrate, "needs.substrate");
  t.tell("Wood", yes(needs.wood), "needs.wood");
  if (needs.caves > 0) t.tell("Caves for each", std::to_string(needs.caves), "needs.caves");
  t.tell("Open floor", yes(needs.open_floor), "needs.open_floor");
  if (needs.mature_weeks > 0) t.tell("Tank has run", std::to_string(needs.mature_weeks) + " weeks", "needs.mature_weeks");
}

std::string law_words(const Species::Law& law) {
  const std::string where = law.region == "EU" ? "the EU" : law.region;
  const std::string what = law.effect == "banned"       ? "Banned in " + where
                           : law.effect == "restricted" ? "Restricted in " + where
                                                        : "Check the law in " + where;
  return what + ": " + law.instrument + ", as of " + law.as_of + (law.note.empty() ? "." : ". " + law.note);
}

}  // namespace

std::string spaced_word(std::string word) {
  std::replace(word.begin(), word.end(), '-', ' ');
  std::replace(word.begin(), word.end(), '_', ' ');
  return word;
}

std::string said_word(std::string_view path, std::string_view word) {
  struct Said {
    std::string_view path, word, said;
  };
  constexpr Said rows[] = {{"size.body", "eel", "like an eel"},
                           {"size.body", "elongated", "long"},
                           {"size.body", "fusiform", "spindle"},
                           {"size.body", "short_deep", "short and deep"},
                           {"size.body", "unknown", "not known"},
                           {"life.style", "darting_surface", "darts at the surface"},
                           {"life.style", "surface_hover", "hovers at the surface"},
                           {"life.style", "calm_mid", "calm, in the middle"},
                           {"life.style", "active_mid", "active, in the middle"},
                           {"life.style", "bottom_shoal", "shoal on the floor"},
                           {"life.style", "territorial_bottom", "holds ground on the floor"},
                           {"life.style", "centrepiece", "single large fish"},
                           {"life.group.kind", "solitary", "one alone"},
                           {"life.group.kind", "loose", "loose company"},
                           {"water.salinity", "fresh-to-brackish", "fresh or brackish"},
                           {"diet.feeds_at", "mid", "middle"},
                           {"diet.feeds_at", "any", "every level"},
                           {"life.active", "any", "day and night"},
                           {"life.sexes.told_apart", "easy", "easily"},
                           {"life.sexes.told_apart", "adult", "when grown"},
                           {"life.sexes.told_apart", "hard", "hardly"},
                           {"mouth.eats_shrimp", "adults", "grown ones"},
                           {"mouth.eats_plants", "soft", "soft ones"},
                           {"temper.feeding_pace", "usual", "at the usual pace"},
                           {"life.group.added", "any", "any time"}};
  for (const Said& row : rows)
    if (row.path == path && row.word == word) return std::string(row.said);
  return word == "semi" ? "half peaceful" : spaced_word(std::string(word));
}

std::vector<CardChapter> card_chapters(const Species& species, const RestOfCard& rest, const Measures& measures) {
  Teller t{species, measures};
  std::vector<CardChapter> chapters;
  const auto chapter = [&](const char* heading) {
    if (!t.facts.empty()) chapters.push_back({heading, t.taken()});
  };
  tell_body(t);
  chapter("Body");
  tell_life(t);
  chapter("Life");
  tell_needs(t);
  chapter("Needs");
  tell_water(t, rest);
  chapter("Water");
  tell_temper(t);
  chapter("Temper");
  tell_food(t);
  chapter("Food");
  return chapters;
}

std::vector<CardFact> breeding_facts(const Species& species, const RestOfCard& rest, const Measures& m) {
  const RestOfCard::Breeding& b = rest.breeding;
  Teller t{species, m};
  t.tell("Way", spaced_word(b.mode), "breeding.mode");
  t.tell("Told apart", said_word("life.sexes.told_apart", species.life.told_apart), "life.sexes.told_apart");
  std::vector<std::string> water;
  if (b.temperature_c) water.push_back(m.temperatures(b.temperature_c->low, b.temperature_c->high));
  if (b.ph) water.push_back("pH " + span_of(b.ph->low, b.ph->high, 1, ""));
  if (b.gh_dgh) water.push_back("GH " + hardness(m, *b.gh_dgh, Hardness::gh));
  t.tell("Water", joined(water), "breeding.water");
  if (b.hatch_hours)
    t.tell("Hatches after",
           b.hatch_hours->high <= 96 ? span_of(b.hatch_hours->low, b.hatch_hours->high, 0, "hours")
                                     : span_of(b.hatch_hours->low / 24, b.hatch_hours->high / 24, 0, "days"),
           "breeding.hatch");
  if (b.gestation_days)
    t.tell("Carries for", span_of(b.gestation_days->low, b.gestation_days->high, 0, "days"), "breeding.gestation_days");
  if (b.free_swimming_days)
    t.tell("Swims free", span_of(b.free_swimming_days->low, b.free_swimming_days->high, 0, "days") + " later",
           "breeding.free_swimming_days");
  t.tell("First food", spaced_word(b.first_food), "breeding.first_food");
  if (b.brood) t.tell("Young", span_of(b.brood->low, b.brood->high, 0, ""), "breeding.brood");
  t.tell("Mind", retold(m, b.note), "breeding.note");
  return t.taken();
}

std::vector<std::string> card_cautions(const Species& species, std::string_view region, const Measures& m) {
  std::vector<std::string> all;
  if (!species.note.empty()) all.push_back(retold(m, species.note));
  if (species.water.salinity == Salinity::brackish)
    all.emplace_back("Needs brackish water for good; this planner reckons fresh water only.");
  if (species.life.jumps == Jumps::readily)
    all.emplace_back("Jumps readily: a lid without gaps.");
  else if (species.life.jumps == Jumps::when_chased)
    all.emplace_back("Jumps when chased: keep a lid on.");
  if (species.size.sold_cm && *species.size.sold_cm < 0.4 * species.size.adult_tl_cm)
    all.push_back("Sold at " + m.length(*species.size.sold_cm) + ", it grows to " + m.length(species.size.adult_tl_cm) + ".");
  std::vector<Species::Law> laws = species.laws;
  std::stable_partition(laws.begin(), laws.end(), [&](const Species::Law& law) { return law.region == region; });
  for (const Species::Law& law : laws) all.push_back(law_words(law));
  if (laws.empty()) all.emplace_back("No list known to us names it. Lists change: check the law where you live.");
  all.emplace_back("Never release it, its plants or its water. Re-home it.");
  return all;
}

std::string CardSources::mark(const EvidenceEntry* evidence) {
  if (evidence == nullptr) return "";
  switch (evidence->evidence) {
    case Evidence::common_practice: return "practice";
    case Evidence::from_memory: return "memory";
    case Evidence::keeper: return "yours";
    case Evidence::published: break;
  }
  const std::string_view known = citation(evidence->source);
  std::string words(known.empty() ? std::string_view(evidence->source) : known);
  if (!evidence->where.empty()) words += (words.empty() || words.back() == '.' ? " " : ". ") + capital(evidence->where);
  auto at = std::find(cited.begin(), cited.end(), words);
  if (at == cited.end()) at = cited.insert(cited.end(), words);
  return std::to_string(at - cited.begin() + 1);
}

}  // namespace shoalwright
