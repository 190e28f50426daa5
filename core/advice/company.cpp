// SPDX-License-Identifier: MIT
#include "advice/company.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

#include "advice/shelf_list.h"
#include "notebook/say.h"
#include "rules/limits.h"
#include "stocking/body.h"
#include "stocking/style.h"
#include "stocking/swallow.h"
#include "units/order.h"

namespace shoalwright {

namespace {

struct Quantity {
  const char *name, *unit;
  Parting parting;
  Need Species::WaterNeeds::*need;
  std::optional<Range> SharedWater::*shared;
  double error;  ///< what a home test reads wrong
};

constexpr std::array<Quantity, 4> quantities{{
    {"Temperature", "°C", Parting::temperature, &Species::WaterNeeds::temperature_c, &SharedWater::temperature_c,
     limits::error_temperature_c},
    {"pH", "", Parting::ph, &Species::WaterNeeds::ph, &SharedWater::ph, limits::error_ph},
    {"GH", "°dH", Parting::gh, &Species::WaterNeeds::gh_dgh, &SharedWater::gh_dgh, limits::error_gh_dgh},
    {"KH", "°dH", Parting::kh, &Species::WaterNeeds::kh_dkh, &SharedWater::kh_dkh, limits::error_kh_dkh},
}};

// What each thing to mind counts in the order, in shares of ideal water. Common practice, no source.
constexpr double mind_weight = 0.25;

std::string length(double cm) { return amount(cm, 1, "cm"); }

/// What two ranges share, as a share of the narrower one. A range without width counts as wholly shared where the other has it.
double shared_share(const Range& a, const Range& b) {
  const double low = std::max(a.low, b.low), high = std::min(a.high, b.high);
  if (high < low) return 0;
  const double narrower = std::min(a.high - a.low, b.high - b.low);
  return narrower > 0 ? (high - low) / narrower : 1;
}

/// What is said of `other` beside `kind`, from worst to mildest.
class Pair {
 public:
  Pair(const Species& kind, const Species& other) : kind_(kind), other_(other) {}

  std::optional<PoorCompany> parted() const {
    for (const auto& look : {&Pair::by_mouth, &Pair::by_fins, &Pair::by_temper, &Pair::by_current, &Pair::by_salt})
      if (std::optional<PoorCompany> found = (this->*look)()) return found;
    return by_water();
  }

  SharedWater water() const {
    SharedWater shared;
    for (const Quantity& q : quantities) {
      const Need &a = kind_.water.*q.need, &b = other_.water.*q.need;
      if (!a.tolerated || !b.tolerated) continue;
      const double low = std::max(a.tolerated->low, b.tolerated->low), high = std::min(a.tolerated->high, b.tolerated->high);
      // Edges that miss each other by less than a kit tells meet in the middle.
      shared.*q.shared = low <= high ? Range{low, high} : Range{(low + high) / 2, (low + high) / 2};
      shared.width = std::min(shared.width, shared_share(*a.tolerated, *b.tolerated));
      shared.ideal = std::min(shared.ideal, shared_share(a.ideal.value_or(*a.tolerated), b.ideal.value_or(*b.tolerated)));
    }
    return shared;
  }

  bool water_is_known() const {
    return std::all_of(quantities.begin(), quantities.end(),
                       [&](const Quantity& q) { return (kind_.water.*q.need).tolerated && (other_.water.*q.need).tolerated; });
  }

  std::vector<std::string> mind() const {
    std::vector<std::string> said;
    const auto when = [&](bool so, const char* words) {
      if (so) said.emplace_back(words);
    };
    const double swallows = std::max(swallowed(kind_, other_), swallowed(other_, kind_)),
                 when_sold = std::max(swallowed_when_sold(kind_, other_), swallowed_when_sold(other_, kind_));
    if (swallows >= swallow_watch_from)
      said.emplace_back("Close to what the larger one can swallow");
    else if (when_sold >= swallow_risk_from)
      said.emplace_back("Bring in only grown ones: at the size when sold they may be eaten");
    when(eats_young_shrimp(kind_, other_) || eats_young_shrimp(other_, kind_), "Young shrimps get eaten");
    when(rough(kind_, other_) || rough(other_, kind_), "Can be rough with smaller, slower or long-finned kinds");
    when((kind_.temper.feeding_pace == "slow" && other_.temper.feeding_pace == "fast") ||
             (kind_.temper.feeding_pace == "fast" && other_.temper.feeding_pace == "slow"),
         "See that the slower eater gets its share");
    when(!kind_.temper.look_alike_group.empty() && kind_.temper.look_alike_group == other_.temper.look_alike_group,
         "Look alike: rivals in less than 120 L");
    when(holds_floor(kind_) && holds_floor(other_), "Both hold ground: twice the floor");
    when(crosses(kind_, other_) || crosses(other_, kind_), "May cross with it");
    return said;
  }

 private:
  using Found = std::optional<PoorCompany>;

  PoorCompany poor(Parting parting, std::string text) const { return {&other_, parting, std::move(text), 0}; }

  /// Swallow index of `prey` for `eater`, both grown. What a card says of shrimps wins over it; shells are no meal for it.
  static double swallowed(const Species& eater, const Species& prey) {
    return prey.kind == "snail" || (prey.kind == "shrimp" && !eater.mouth.eats_shrimp.empty())
               ? 0
               : index(eater, prey, prey.size.adult_tl_cm);
  }
  static double swallowed_when_sold(const Species& eater, const Species& prey) {
    return prey.kind == "shrimp" || prey.kind == "snail" ? 0 : index(eater, prey, prey.size.sold_cm.value_or(0));
  }
  static double index(const Species& eater, const Species& prey, double prey_cm) {
    std::optional<Swallower> swallower = swallower_of(eater.mouth.eater);
    if (!swallower || (eater.mouth.eater == "picker" && prey_cm >= picker_prey_cm)) return 0;
    const bool hunts_by_night =
        eater.life.active == "night" && (eater.mouth.eater == "hunter" || eater.mouth.eater == "opportunist");
    if (hunts_by_night) swallower->reach_share += night_reach_share;
    if (eater.mouth.gape_share && swallower->gape_share > 0) swallower->gape_share = *eater.mouth.gape_share;
    const double depth_share = prey.size.body_depth_share.value_or(usual_depth_share(prey.size.body));
    return swallow_index(eater.size.adult_tl_cm, *swallower, prey_cm, depth_share);
  }

  Found by_mouth() const {
    const std::string sizes = ": grows to " + length(other_.size.adult_tl_cm) + " beside " + length(kind_.size.adult_tl_cm);
    const double eats_it = swallowed(other_, kind_), eaten = swallowed(kind_, other_);
    if (eats_it >= swallow_eaten_from) return poor(Parting::eats_it, "Would eat this kind" + sizes);
    if (eaten >= swallow_eaten_from) return poor(Parting::eaten, "Would be eaten" + sizes);
    if (eats_it >= swallow_risk_from) return poor(Parting::eats_it, "May eat this kind" + sizes);
    if (eaten >= swallow_risk_from) return poor(Parting::eaten, "May be eaten" + sizes);
    if (other_.mouth.eater == "biter") return poor(Parting::bitten, "Bites: no size is safe from it");
    if (kind_.mouth.eater == "biter") return poor(Parting::bitten, "Would be bitten, whatever its size");
    if (kind_.kind == "shrimp" && other_.mouth.eats_shrimp == "adults") return poor(Parting::shrimp, "Eats grown shrimps");
    if (other_.kind == "shrimp" && kind_.mouth.eats_shrimp == "adults") return poor(Parting::shrimp, "Would be eaten: a shrimp");
    if (kind_.kind == "snail" && other_.mouth.eats_snails) return poor(Parting::snail, "Eats snails");
    if (other_.kind == "snail" && kind_.mouth.eats_snails) return poor(Parting::snail, "Would be eaten: a snail");
    return std::nullopt;
  }

  static bool nips(const Species& one) { return one.temper.nips_fins == "yes" || one.temper.nips_fins == "when-few"; }

  Found by_fins() const {
    if (nips(other_) && kind_.temper.fins == "long") return poor(Parting::fins, "Nips long fins");
    if (nips(kind_) && other_.temper.fins == "long") return poor(Parting::fins, "Its long fins would be nipped");
    return std::nullopt;
  }

  bool meet() const {
    const SwimLevels a = swim_levels(kind_), b = swim_levels(other_);
    return (a.surface && b.surface) || (a.upper && b.upper) || (a.middle && b.middle) || (a.floor && b.floor);
  }

  Found by_temper() const {
    if (!meet()) return std::nullopt;
    if (other_.temper.to_others == Toward::aggressive) return poor(Parting::bullied, "Bullies other kinds");
    if (kind_.temper.to_others == Toward::aggressive) return poor(Parting::bullied, "Would be bullied");
    return std::nullopt;
  }

  Found by_current() const {
    if (kind_.life.current == "still" && other_.life.current == "strong")
      return poor(Parting::current, "Wants a strong current, not still water");
    if (kind_.life.current == "strong" && other_.life.current == "still")
      return poor(Parting::current, "Wants still water, no current");
    return std::nullopt;
  }

  Found by_salt() const {
    const bool a = kind_.water.salinity == Salinity::brackish, b = other_.water.salinity == Salinity::brackish;
    if (b && kind_.water.salinity == Salinity::fresh) return poor(Parting::salt, "Needs brackish water");
    if (a && other_.water.salinity == Salinity::fresh) return poor(Parting::salt, "Lives in fresh water alone");
    return std::nullopt;
  }

  Found by_water() const {
    Found worst;
    for (const Quantity& q : quantities) {
      const std::optional<Range>&a = (kind_.water.*q.need).tolerated, &b = (other_.water.*q.need).tolerated;
      if (!a || !b) continue;
      const bool below = b->high < a->low;
      const double gap = below ? a->low - b->high : b->low - a->high, miss = gap / q.error;
      if (!(gap > q.error * (1 + 1e-9)) || (worst && worst->miss >= miss)) continue;
      const std::string edge =
          below ? "lives up to " + amount(b->high, 1, q.unit) : "lives from " + amount(b->low, 1, q.unit) + " up";
      worst = PoorCompany{&other_, q.parting, std::string(q.name) + " " + amount(gap, 1, q.unit) + " apart: " + edge, miss};
    }
    return worst;
  }

  static bool eats_young_shrimp(const Species& eater, const Species& prey) {
    return prey.kind == "shrimp" && eater.mouth.eats_shrimp == "young";
  }
  static bool rough(const Species& one, const Species& to) {
    if (one.temper.to_others != Toward::semi) return false;
    return to.size.adult_tl_cm < one.size.adult_tl_cm || to.temper.feeding_pace == "slow" || to.temper.fins == "long";
  }
  static bool holds_floor(const Species& one) { return style_facts(one.life.style).holds_floor; }
  static bool crosses(const Species& one, const Species& with) {
    const std::vector<std::string>& all = one.temper.breeds_with;
    return std::find(all.begin(), all.end(), with.id) != all.end();
  }

  const Species &kind_, &other_;
};

std::string missing_water(const Species& species) {
  std::vector<std::string> names;
  for (const Quantity& q : quantities)
    if (!(species.water.*q.need).tolerated) names.emplace_back(q.name);
  return joined(names);
}

}  // namespace

Company company_of(const Species& species, const std::vector<const Species*>& kinds) {
  Company company;
  company.unknown_for = missing_water(species);
  for (const Species* other : kinds) {
    if (other == nullptr || other->id == species.id) continue;
    const Pair pair(species, *other);
    if (std::optional<PoorCompany> parted = pair.parted())
      company.poor.push_back(std::move(*parted));
    else if (pair.water_is_known())
      company.good.push_back({other, pair.water(), pair.mind()});
    else
      company.unknown.push_back(other);
  }
  sort_stable(company.good, [](const GoodCompany& a, const GoodCompany& b) {
    const auto key = [](const GoodCompany& one) {
      const double worth = one.water.ideal - mind_weight * static_cast<double>(one.mind.size());
      return std::tuple(-worth, -one.water.width, display_name(*one.species));
    };
    return key(a) < key(b);
  });
  sort_stable(company.poor, [](const PoorCompany& a, const PoorCompany& b) {
    const auto key = [](const PoorCompany& one) { return std::tuple(one.miss, one.parting, display_name(*one.species)); };
    return key(a) < key(b);
  });
  return company;
}

}  // namespace shoalwright
