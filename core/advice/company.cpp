// SPDX-License-Identifier: MIT
#include "advice/company.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

#include "advice/shelf_list.h"
#include "notebook/say.h"
#include "rules/limits.h"
#include "stocking/encounter.h"
#include "stocking/floor.h"
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
    const auto when = [&](bool so, std::string words) {
      if (so) said.push_back(std::move(words));
    };
    const double swallows = std::max(swallowed(kind_, other_), swallowed(other_, kind_)),
                 when_sold = std::max(swallowed_when_sold(kind_, other_), swallowed_when_sold(other_, kind_));
    if (swallows >= swallow_watch_from)
      said.emplace_back("Close to what the larger one can swallow");
    else if (when_sold >= swallow_risk_from)
      said.emplace_back("Bring in only grown ones: at the size when sold they may be eaten");
    when(loses_young(kind_, other_) || loses_young(other_, kind_), "Young shrimps get eaten");
    when(rough(kind_, other_) || rough(other_, kind_), "Can be rough with smaller, slower or long-finned kinds");
    when(is_outpaced(kind_, other_) || is_outpaced(other_, kind_), "See that the slower eater gets its share");
    when(look_alike(kind_, other_), "Look alike: rivals in less than " + amount(look_alike_least_l, 0, "L"));
    when(holds_floor(kind_) && holds_floor(other_), "Both hold ground: twice the floor");
    when(may_cross(kind_, other_), "May cross with it");
    return said;
  }

 private:
  using Found = std::optional<PoorCompany>;

  PoorCompany poor(Parting parting, std::string text) const { return {&other_, parting, std::move(text), 0}; }

  Found by_mouth() const {
    const std::string sizes = ": grows to " + length(other_.size.adult_tl_cm) + " beside " + length(kind_.size.adult_tl_cm);
    const double eats_it = swallowed(other_, kind_), eaten = swallowed(kind_, other_);
    if (eats_it >= swallow_eaten_from) return poor(Parting::eats_it, "Would eat this kind" + sizes);
    if (eaten >= swallow_eaten_from) return poor(Parting::eaten, "Would be eaten" + sizes);
    if (eats_it >= swallow_risk_from) return poor(Parting::eats_it, "May eat this kind" + sizes);
    if (eaten >= swallow_risk_from) return poor(Parting::eaten, "May be eaten" + sizes);
    if (is_biter(other_)) return poor(Parting::bitten, "Bites: no size is safe from it");
    if (is_biter(kind_)) return poor(Parting::bitten, "Would be bitten, whatever its size");
    if (kind_.kind == "shrimp" && loses_grown(kind_, other_)) return poor(Parting::shrimp, "Eats grown shrimps");
    if (other_.kind == "shrimp" && loses_grown(other_, kind_)) return poor(Parting::shrimp, "Would be eaten: a shrimp");
    if (kind_.kind == "snail" && loses_grown(kind_, other_)) return poor(Parting::snail, "Eats snails");
    if (other_.kind == "snail" && loses_grown(other_, kind_)) return poor(Parting::snail, "Would be eaten: a snail");
    return std::nullopt;
  }

  Found by_fins() const {
    if (nips(other_) && offers_fins(kind_)) return poor(Parting::fins, "Nips long fins");
    if (nips(kind_) && offers_fins(other_)) return poor(Parting::fins, "Its long fins would be nipped");
    return std::nullopt;
  }

  Found by_temper() const {
    if (!share_a_level(kind_, other_)) return std::nullopt;
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

  /// What the eater leaves of a shrimp or a snail.
  static bool loses_grown(const Species& prey, const Species& eater) { return small_fry_beside(eater, prey) == SmallFry::grown; }
  static bool loses_young(const Species& prey, const Species& eater) {
    if (prey.kind != "shrimp") return false;
    const SmallFry left = small_fry_beside(eater, prey);
    return left == SmallFry::young || left == SmallFry::picked;
  }
  static bool rough(const Species& one, const Species& to) {
    if (one.temper.to_others != Toward::semi) return false;
    return is_weaker(to, one);
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
