// SPDX-License-Identifier: MIT
// cover: hides for who sleeps by day, shelter for who is shy.
#include "stocking/cover.h"

#include <algorithm>

#include "catalog/piece_kind.h"
#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/limits.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "rules/thickets.h"
#include "tank/placed_piece.h"

namespace shoalwright {

namespace {

/// One for each animal, more where the card asks for more.
int hides_wanted(const Kept& kept) { return std::max(kept.species->needs.caves, 1) * kept.count; }

// A cave is as long as the longest that is to lie in it.
void remedy_by_caves(const Facts& facts, const std::vector<const Kept*>& groups, int lack, Finding& finding) {
  double longest_cm = 0;
  for (const Kept* kept : groups) longest_cm = std::max(longest_cm, kept->species->size.adult_tl_cm);
  const double larger = std::max(longest_cm / static_cast<double>(piece_kind("cave").length_cm), 1.0);
  const Piece cave = usual_piece(facts.plan, "cave", larger, larger);
  const int count = std::min(lack, limits::cover_most_pieces);
  const std::string caves = count == 1 ? "a cave" : std::to_string(count) + " caves";
  finding.remedy = "Add " + caves + (count < lack ? " of the " + std::to_string(lack) + " that are short, " : ", ") +
                   say_measures(cave) + (count > 1 ? " each" : "");
  finding.edits = add_pieces(facts.plan, cave, count);
}

void hides(const Facts& facts, const Cover& cover, Found& out) {
  std::vector<const Kept*> sleepers;
  int animals = 0;
  std::int64_t wanted = 0;
  for (const Kept& kept : facts.stock) {
    if (!kept.species || kept.species->life.active != "night") continue;
    sleepers.push_back(&kept);
    animals += kept.count;
    wanted += hides_wanted(kept);
  }
  if (wanted <= cover.hides) return;
  out.add("cover", Severity::watch, "", 0, [&](Finding& finding) {
    concern(finding, sleepers);
    finding.text = "Too few hides for " + name_or_number_of(sleepers);
    finding.why = capital(names_of(sleepers)) + (sleepers.size() == 1 ? " sleeps" : " sleep") +
                  " hidden by day: " + (animals == 1 ? "one animal wants " : std::to_string(animals) + " animals want ") +
                  std::to_string(wanted) + (wanted == 1 ? " hide" : " hides") + ", the scape has " +
                  (cover.hides == 0 ? std::string("none") : std::to_string(cover.hides)) +
                  ". Caves, roots and hollow wood count.";
    rest_on(finding, facts, sleepers, "life.active");
    remedy_by_caves(facts, sleepers, static_cast<int>(wanted - cover.hides), finding);
  });
}

double shelter_wanted(const Species& species) {
  if (species.life.cover == "much") return limits::cover_much;
  return species.life.cover == "some" ? limits::cover_some : 0;
}

void shelter(const Facts& facts, const Cover& cover, Found& out) {
  if (!cover.share || !(facts.volume.gross_l > 0)) return;  // planting that is not known is said by unknown-input
  std::vector<const Kept*> shy;
  double least = 1, most = 0;
  for (const Kept& kept : facts.stock) {
    if (!kept.species) continue;
    const double wanted = shelter_wanted(*kept.species);
    if (!(rounded(wanted - *cover.share) > 0)) continue;
    shy.push_back(&kept);
    least = std::min(least, wanted);
    most = std::max(most, wanted);
  }
  if (shy.empty()) return;
  const Severity severity = facts.plan.strictness == Strictness::strict ? Severity::watch : Severity::note;
  out.add("cover", severity, "", 0, [&](Finding& finding) {
    concern(finding, shy);
    finding.text = "Little cover for " + name_or_number_of(shy);
    finding.why = "Wood, caves and plants shelter " + percent(*cover.share) + " of the floor; " + names_of(shy) +
                  (shy.size() == 1 ? " wants " : " want ") + span_of(100 * least, 100 * most, 0, "%") +
                  ". Animals that can get out of sight show themselves more.";
    rest_on(finding, facts, shy, "life.cover");
    remedy_by_thickets(facts, most - *cover.share, finding);
  });
}

}  // namespace

void cover(const Facts& facts, Found& out) {
  if (!out.keeps_findings()) return;  // never a strain
  const Cover here = cover_of(facts.plan);
  hides(facts, here, out);
  shelter(facts, here, out);
}

}  // namespace shoalwright
