// SPDX-License-Identifier: MIT
#include "views/held_words.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "app/retold.h"
#include "assess/margin.h"
#include "units/order.h"
#include "units/text.h"

namespace shoalwright {
namespace {

// Below what a kit tells apart a change of nitrate is not worth a line. Common practice, no source.
constexpr double nitrate_word_mg_l = 1;
// A margin this small is called just: a tape measure reads no closer.
constexpr double just_cm = 0.5;

/// Whole centimetres where a keeper reads no closer.
double in_known_digits(double cm) { return cm < 10 ? cm : std::round(cm); }

bool same_matter(const Finding& a, const Finding& b) { return a.rule == b.rule && a.species == b.species; }

/// Not there as grave without what is in hand.
bool is_new(const Finding& finding, const Assessment& now) {
  return std::none_of(now.findings.begin(), now.findings.end(),
                      [&](const Finding& before) { return same_matter(before, finding) && before.severity <= finding.severity; });
}

std::optional<Severity> worst_of(const Assessment& assessment, const std::string& rule) {
  std::optional<Severity> worst;
  for (const Finding& finding : assessment.findings)
    if (finding.rule == rule && (!worst || finding.severity < *worst)) worst = finding.severity;
  return worst;
}

std::string place_of(const std::string& rule) {
  if (rule == "crowding-top") return "Surface";
  if (rule == "crowding-mid") return "Middle";
  if (rule == "crowding-bottom" || rule == "territory") return "Floor";
  if (rule == "load") return "Load";
  if (rule == "nitrate") return "Nitrate";
  return "Room";
}

struct Sorted {
  int rank = 0;  ///< grade of a finding (0 to 3), then the margins in their order
  Consequence said;
};
enum Rank { loudest = 0, watch_rank = 2, room_rank = 3, lane_rank, temperature_rank, nitrate_rank, note_rank };

int rank_of(Severity severity) { return severity == Severity::note ? note_rank : static_cast<int>(severity); }

class Collected {
 public:
  explicit Collected(const Look& look) : look_(look) {
    const std::vector<GroupRoom>& groups = look.shown_assessment.room.groups;
    const auto found =
        std::find_if(groups.begin(), groups.end(), [&](const GroupRoom& g) { return g.species == look.held->species->id; });
    if (found != groups.end()) group_ = &*found;
  }

  void room() {
    if (!group_ || group_->largest_count == 0) return;  // then no number of them fits: a finding says why
    const int total = held_total(look_);
    const std::optional<Margin> margin = tightest_room();
    const std::string place = margin ? margin->place : place_of(group_->stopped_by) + ": ";
    const std::optional<int> before_strain = group_->largest_count;
    const int spare = margin ? margin->animals : before_strain ? *before_strain - total : 0;
    if (!margin && !before_strain) return;
    const bool strains = before_strain && *before_strain < total;
    // Room ends before the strain begins: both are said, so that the card agrees with the margins and with the shelf.
    const std::string until =
        before_strain && !strains && *before_strain - total > spare ? "; strain past " + std::to_string(*before_strain) : "";
    if (spare < 0) {
      const std::optional<Severity> grade = strains ? worst_of(look_.shown_assessment, group_->stopped_by) : worst_crowding();
      if (strains) told_.push_back(group_->stopped_by);
      const std::string over = std::to_string(std::min(-spare, total)) + " of the " + std::to_string(total);
      add(grade ? rank_of(*grade) : room_rank,
          {grade ? *grade : Severity::note, Fit::over, place + over + (until.empty() ? " too many" : " over" + until)});
    } else {
      const std::string more = spare == 0      ? "no more"
                               : until.empty() ? "room for " + std::to_string(spare) + " more"
                                               : std::to_string(spare) + " more";
      add(room_rank, {std::nullopt, spare > 0 ? Fit::spare : Fit::just, place + more + until});
    }
  }

  void lane() {
    if (!group_ || !(group_->lane_needed_cm > 0)) return;
    const double spare = group_->lane_cm - group_->lane_needed_cm;
    const Measures& m = look_.measures;
    if (spare >= 0) {
      add(lane_rank,
          {std::nullopt, spare < just_cm ? Fit::just : Fit::spare, "Lane: " + m.length(in_known_digits(spare)) + " spare"});
      return;
    }
    for (const char* rule : {"tank-length", "swim-lane"}) {
      for (const Finding& finding : look_.shown_assessment.findings) {
        if (finding.rule != rule ||
            std::find(finding.species.begin(), finding.species.end(), group_->species) == finding.species.end())
          continue;
        told_.push_back(rule);
        told_.push_back("adult-size");
        const std::string have = m.length(in_known_digits(group_->lane_cm)), unit = std::string(" ") + m.length_unit();
        const bool has_unit = have.size() > unit.size() && have.compare(have.size() - unit.size(), unit.size(), unit) == 0;
        add(rank_of(finding.severity), {finding.severity, Fit::over,
                                        "Lane " + (has_unit ? have.substr(0, have.size() - unit.size()) : have) + " of " +
                                            m.length(in_known_digits(group_->lane_needed_cm))});
        return;
      }
    }
  }

  void temperature() {
    const std::optional<Range>& now = look_.now.water.temperature_c.tolerated;
    const std::optional<Range>& then = look_.shown_assessment.water.temperature_c.tolerated;
    if (!now || !then || *now == *then) return;
    const Measures& m = look_.measures;
    const auto bare = [&](double c) { return short_text(m.temperature_out(c), m.us ? 0 : 1); };
    std::string was = now->low == then->low ? bare(now->high) : now->high == then->high ? bare(now->low) : "";
    if (was.empty()) was = bare(now->low) + " to " + bare(now->high);
    add(temperature_rank, {Severity::note, Fit::spare, "Temperature " + m.temperatures(then->low, then->high) + ", was " + was});
  }

  void nitrate() {
    const std::optional<double>& now = look_.now.load.nitrate_peak_mg_l;
    const std::optional<double>& then = look_.shown_assessment.load.nitrate_peak_mg_l;
    if (!now || !then || !(*then - *now >= nitrate_word_mg_l)) return;
    for (const Finding& finding : look_.shown_assessment.findings)
      if (finding.rule == "nitrate" && is_new(finding, look_.now)) return;  // says it with its number
    add(nitrate_rank, {Severity::note, Fit::spare, "Nitrate peak up about " + look_.measures.nitrate(*then - *now)});
  }

  void findings() {
    for (const Finding& finding : look_.shown_assessment.findings) {
      if (!is_new(finding, look_.now) || finding.rule == "empty") continue;
      if (std::find(told_.begin(), told_.end(), finding.rule) != told_.end()) continue;
      add(rank_of(finding.severity), {finding.severity, Fit::over, retold(look_.measures, finding.text, about_of(finding.rule))});
    }
  }

  std::vector<Consequence> first(std::size_t most) {
    sort_stable(all_, [](const Sorted& a, const Sorted& b) { return a.rank < b.rank; });
    std::vector<Consequence> out;
    for (std::size_t i = 0; i < std::min(most, all_.size()); ++i) out.push_back(all_[i].said);
    return out;
  }

 private:
  struct Margin {
    std::string place;
    int animals = 0;
  };
  /// Of room by depth and floor the one that has place for fewest more of the kind in hand, where it has a part in it.
  std::optional<Margin> tightest_room() const {
    std::optional<Margin> tightest;
    for (const char* name : {"crowding_l_cm", "floor_cm2"}) {
      const MarginFacts* facts = find_margin(look_.shown_margins, name);
      if (!facts || facts->kind != look_.held->species->id || !facts->animals) continue;
      if (tightest && tightest->animals <= *facts->animals) continue;
      const std::string place =
          facts->depth_cm ? look_.measures.length(std::round(*facts->depth_cm)) + " down: " : std::string("Floor: ");
      tightest = Margin{place, *facts->animals};
    }
    return tightest;
  }
  std::optional<Severity> worst_crowding() const {
    std::optional<Severity> worst;
    for (const char* rule : {"crowding-top", "crowding-mid", "crowding-bottom"})
      if (const auto one = worst_of(look_.shown_assessment, rule); one && (!worst || *one < *worst)) worst = one;
    return worst;
  }

  void add(int rank, Consequence said) { all_.push_back({rank, std::move(said)}); }

  const Look& look_;
  const GroupRoom* group_ = nullptr;
  std::vector<std::string> told_;  ///< rules that a margin has spoken for
  std::vector<Sorted> all_;
};

}  // namespace

int held_total(const Look& look) {
  int total = look.held->count;
  for (const Group& group : look.plan.stock) {
    const Species* species = species_of(look, group.species);
    if (species && species->id == look.held->species->id) total += group.count;
  }
  return total;
}

std::vector<Consequence> consequences(const Look& look, std::size_t most) {
  Collected collected(look);
  collected.room();
  collected.lane();
  collected.findings();
  collected.temperature();
  collected.nitrate();
  return collected.first(most);
}

}  // namespace shoalwright
