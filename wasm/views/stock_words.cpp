// SPDX-License-Identifier: MIT
#include "views/stock_words.h"

#include <algorithm>

#include "catalog/piece_kind.h"
#include "notebook/say.h"
#include "plan/words.h"
#include "tank/materials.h"
#include "units/convert.h"
#include "units/text.h"

namespace shoalwright {
namespace {

std::string counted(int n, const char* one, const char* many) { return std::to_string(n) + " " + (n == 1 ? one : many); }

std::string sexes(const Kept& kept) {
  if (!kept.males && !kept.females) return "";
  if (kept.males == 1 && kept.females == 1 && kept.count == 2) return "one pair; male and female";
  std::string words;
  if (kept.males) words = counted(*kept.males, "male", "males");
  if (kept.females) words += (words.empty() ? "" : ", ") + counted(*kept.females, "female", "females");
  return words;
}

std::string group_words(const Species::Life::Group& group) {
  switch (group.kind) {
    case GroupKind::solitary: return "lives alone";
    case GroupKind::pair: return group.least < 2 ? "alone or as a pair" : "lives as a pair";
    case GroupKind::harem:
    case GroupKind::loose:
    case GroupKind::shoal:
    case GroupKind::colony: break;
  }
  const std::string least = "least " + std::to_string(group.least);
  return group.good > group.least ? least + "; good group at " + std::to_string(group.good) : least;
}

std::string least_words(const Species::Life::Group& group) {
  const bool counts = group.kind != GroupKind::solitary && group.kind != GroupKind::pair;
  return counts ? "least " + std::to_string(group.least) : group_words(group);
}

}  // namespace

std::string stock_advice(const Kept& kept) {
  if (!kept.species) return "Not in the catalogue; no sums";
  const Species::Life::Group& group = kept.species->life.group;
  const std::string of_sexes = sexes(kept);
  if (kept.have > 0) {
    const std::string here =
        kept.have >= kept.count
            ? (kept.count == 1 ? "swims here" : "all " + std::to_string(kept.count) + " swim here")
            : std::to_string(kept.have) + " of " + std::to_string(kept.count) + (kept.have == 1 ? " swims here" : " swim here");
    return here + "; " + (of_sexes.empty() ? least_words(group) : of_sexes);
  }
  if (of_sexes.empty()) return group_words(group);
  return of_sexes.compare(0, 8, "one pair") == 0 ? of_sexes : least_words(group) + "; " + of_sexes;
}

std::string stock_sum(const std::vector<Kept>& stock) {
  int animals = 0;
  bool all_fish = true;
  for (const Kept& kept : stock) {
    animals += kept.count;
    all_fish = all_fish && kept.species && kept.species->kind == "fish";
  }
  const std::string heads = all_fish ? std::to_string(animals) + " fish" : counted(animals, "animal", "animals");
  return heads + ", " + std::to_string(stock.size()) + " species";
}

std::string piece_name(const std::string& kind) {
  std::string name(piece_kind(kind).name);
  if (!name.empty()) return name;
  name = kind;
  std::replace(name.begin(), name.end(), '-', ' ');
  return capital(name);
}

std::string materials_words(const Look& look) {
  const Plan& plan = look.shown;
  const Materials all = materials_of(plan);
  std::string text;
  const auto add = [&](const std::string& words) { text += (text.empty() ? "To buy: " : "; ") + words; };
  if (all.substrate_l > 0) {
    std::string kind(word_of(plan.substrate.kind));
    std::replace(kind.begin(), kind.end(), '-', ' ');
    add(kind + " " + look.measures.volume(all.substrate_l) + ", " + look.measures.mass(all.substrate_kg) + " dry");
  }
  std::size_t weighed = 0;
  for (const MaterialLine& line : all.pieces)
    if (line.kg > 0) {
      add(called(line.kind) + " " + look.measures.mass(line.kg));
      ++weighed;
    }
  if (weighed > 1) add("stone in all " + look.measures.mass(all.stone_kg));
  if (text.empty()) return text;
  const double m2 = look.spread.grazing.all_cm2() / 1e4;
  if (m2 > 0) {
    const double shown = look.measures.us ? m2 / (0.01 * 0.01 * cm_per_in * cm_per_in * 144) : m2;
    text += ". To graze: about " + significant_text(shown, 2) + (look.measures.us ? " ft²" : " m²") +
            " of glass, wood, stone and leaves";
  }
  return text + ".";
}

}  // namespace shoalwright
