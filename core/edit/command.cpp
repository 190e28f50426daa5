// SPDX-License-Identifier: MIT
#include "edit/command.h"

#include <algorithm>
#include <utility>

#include "edit/detail/lines.h"
#include "plan/assumed.h"
#include "plan/check.h"
#include "tank/terrain.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

/// Sets a value of the plan; only what changes is decided.
template <class T>
void set(Plan& plan, T& value, const T& wanted, const std::string& pointer) {
  if (value == wanted) return;
  value = wanted;
  decide(plan, pointer);
}

/// A part that may be absent as a whole, member by member where it is there before and after.
template <class T, class Members>
void set_part(Plan& plan, std::optional<T>& value, const std::optional<T>& wanted, const std::string& pointer,
              const Members& members) {
  if (value && wanted) {
    members(*value, *wanted);
    value->other_keys = wanted->other_keys;
  } else {
    set(plan, value, wanted, pointer);
  }
}

/// The measures that the shape does not have are gone.
Tank tidied(Tank tank) {
  const Tank given = tank;
  tank.length_cm = tank.width_cm = tank.bow_cm = tank.diameter_cm = tank.side_cm = tank.front_cm = 0;
  tank.outline_cm.clear();
  switch (tank.shape) {
    case Shape::bow_front: tank.bow_cm = given.bow_cm; [[fallthrough]];
    case Shape::rectangular:
      tank.length_cm = given.length_cm;
      tank.width_cm = given.width_cm;
      break;
    case Shape::cylinder:
    case Shape::half_cylinder:
    case Shape::quarter_cylinder: tank.diameter_cm = given.diameter_cm; break;
    case Shape::pentagon_corner: tank.front_cm = given.front_cm; [[fallthrough]];
    case Shape::hexagon: tank.side_cm = given.side_cm; break;
    case Shape::prism: tank.outline_cm = given.outline_cm; break;
  }
  return tank;
}

void drop_sexes_that_do_not_add_up(Group& group) {
  if (group.males.value_or(0) + group.females.value_or(0) <= group.count) return;
  group.males.reset();
  group.females.reset();
}

struct Apply {
  Plan& plan;
  const Catalog& catalog;

  /// The one line of a species, others folded into it; null when there is none.
  Group* line_of(const std::string& species) {
    const std::optional<std::size_t> line = fold_lines(plan, catalog, species);
    return line ? &plan.stock[*line] : nullptr;
  }
  std::string pointer_of(const Group& group, const char* key) const {
    return "/stock/" + std::to_string(&group - plan.stock.data()) + '/' + key;
  }

  void operator()(const AddGroup& edit) {
    if (!(edit.count >= 1)) return;
    Group* group = line_of(edit.species);
    if (group == nullptr) {
      plan.stock.push_back(Group{.species = resolved(plan, catalog, edit.species)});
      group = &plan.stock.back();
    }
    const std::int64_t sum = static_cast<std::int64_t>(group->count) + edit.count;
    set(plan, group->count, static_cast<int>(std::min<std::int64_t>(sum, most_count)), pointer_of(*group, "count"));
    drop_sexes_that_do_not_add_up(*group);
  }

  void operator()(const SetCount& edit) {
    Group* group = line_of(edit.species);
    if (group == nullptr) return;
    set(plan, group->count, std::clamp(edit.count, 1, most_count), pointer_of(*group, "count"));
    group->have = std::min(group->have, group->count);
    drop_sexes_that_do_not_add_up(*group);
  }

  void operator()(const TakeOut& edit) {
    const std::string key = resolved(plan, catalog, edit.species);
    for (std::size_t i = plan.stock.size(); i-- > 0;) {
      if (resolved(plan, catalog, plan.stock[i].species) != key) continue;
      plan.stock.erase(plan.stock.begin() + static_cast<std::ptrdiff_t>(i));
      forget_entry(plan, "/stock", i);
    }
  }

  void operator()(const SetHave& edit) {
    if (Group* group = line_of(edit.species))
      set(plan, group->have, std::clamp(edit.have, 0, group->count), pointer_of(*group, "have"));
  }

  void operator()(const SetSexes& edit) {
    Group* group = line_of(edit.species);
    if (group == nullptr) return;
    set(plan, group->males, edit.males, pointer_of(*group, "males"));
    set(plan, group->females, edit.females, pointer_of(*group, "females"));
  }

  void operator()(const SetArrival& edit) {
    if (Group* group = line_of(edit.species)) set(plan, group->arrives_week, edit.week, pointer_of(*group, "arrives_week"));
  }

  void operator()(const SetGroupNote& edit) {
    if (Group* group = line_of(edit.species)) group->note = edit.note;
  }

  void operator()(const PutPiece& edit) { plan.pieces.push_back(edit.piece); }

  void operator()(const ChangePiece& edit) {
    if (!(edit.index < plan.pieces.size())) return;
    Piece& piece = plan.pieces[edit.index];
    const std::string at = "/pieces/" + std::to_string(edit.index);
    set(plan, piece.length_cm, edit.piece.length_cm, at + "/length_cm");
    set(plan, piece.depth_cm, edit.piece.depth_cm, at + "/depth_cm");
    set(plan, piece.height_cm, edit.piece.height_cm, at + "/height_cm");
    piece = edit.piece;
  }

  void operator()(const TakePiece& edit) {
    if (!(edit.index < plan.pieces.size())) return;
    plan.pieces.erase(plan.pieces.begin() + static_cast<std::ptrdiff_t>(edit.index));
    forget_entry(plan, "/pieces", edit.index);
  }

  void operator()(const PinPiece& edit) {
    if (!(edit.index < plan.pieces.size())) return;
    const std::string at = "/pieces/" + std::to_string(edit.index);
    plan.fixed.erase(
        std::remove_if(plan.fixed.begin(), plan.fixed.end(),
                       [&](const std::string& one) { return one == at || one.compare(0, at.size() + 1, at + "/") == 0; }),
        plan.fixed.end());
    if (edit.pinned) plan.fixed.insert(std::upper_bound(plan.fixed.begin(), plan.fixed.end(), at), at);
  }

  void operator()(const SetTank& edit) {
    const Tank tank = tidied(edit.tank);
    Tank& now = plan.tank;
    const double before_cm = inside_length_cm(now);
    set(plan, now.shape, tank.shape, "/tank/shape");
    set(plan, now.length_cm, tank.length_cm, "/tank/length_cm");
    set(plan, now.width_cm, tank.width_cm, "/tank/width_cm");
    set(plan, now.height_cm, tank.height_cm, "/tank/height_cm");
    set(plan, now.bow_cm, tank.bow_cm, "/tank/bow_cm");
    set(plan, now.diameter_cm, tank.diameter_cm, "/tank/diameter_cm");
    set(plan, now.side_cm, tank.side_cm, "/tank/side_cm");
    set(plan, now.front_cm, tank.front_cm, "/tank/front_cm");
    set(plan, now.outline_cm, tank.outline_cm, "/tank/outline_cm");
    set(plan, now.glass_mm, tank.glass_mm, "/tank/glass_mm");
    set(plan, now.fill_cm, tank.fill_cm, "/tank/fill_cm");
    set(plan, now.lid, tank.lid, "/tank/lid");
    now.other_keys = tank.other_keys;
    if (!plan.substrate.line_cm.empty())
      plan.substrate.line_cm = fitted(plan.substrate.line_cm, before_cm, inside_length_cm(now), now.height_cm);
  }

  void operator()(const SetSubstrate& edit) {
    Substrate substrate = edit.substrate;
    if (substrate.kind == SubstrateKind::bare) substrate.line_cm.clear();
    set(plan, plan.substrate, substrate, "/substrate");
  }

  void operator()(const SetLid& edit) {
    plan.tank.lid = edit.lid;
    decide(plan, "/tank/lid");
  }

  void operator()(const SetSource& edit) {
    SourceWater& now = plan.source;
    set(plan, now.temperature_c, edit.source.temperature_c, "/source/temperature_c");
    set(plan, now.ph, edit.source.ph, "/source/ph");
    set(plan, now.gh_dgh, edit.source.gh_dgh, "/source/gh_dgh");
    set(plan, now.kh_dkh, edit.source.kh_dkh, "/source/kh_dkh");
    set(plan, now.nitrate_mg_l, edit.source.nitrate_mg_l, "/source/nitrate_mg_l");
    set(plan, now.disinfectant, edit.source.disinfectant, "/source/disinfectant");
    now.other_keys = edit.source.other_keys;
  }

  void operator()(const SetAim& edit) {
    set_part(plan, plan.water, edit.water, "/water", [&](WaterAim& now, const WaterAim& wanted) {
      set(plan, now.temperature_c, wanted.temperature_c, "/water/temperature_c");
      set(plan, now.ph, wanted.ph, "/water/ph");
      set(plan, now.gh_dgh, wanted.gh_dgh, "/water/gh_dgh");
      set(plan, now.kh_dkh, wanted.kh_dkh, "/water/kh_dkh");
    });
  }

  void operator()(const SetMeasured& edit) { set(plan, plan.measured, edit.measured, "/measured"); }
  void operator()(const SetLimits& edit) { set(plan, plan.limits, edit.limits, "/limits"); }

  void operator()(const SetGear& edit) {
    set_part(plan, plan.gear, edit.gear, "/gear", [&](Gear& now, const Gear& wanted) {
      set(plan, now.filter_known, wanted.filter_known, "/gear/filter");
      set(plan, now.filter, wanted.filter, "/gear/filter");
      set(plan, now.heater_w, wanted.heater_w, "/gear/heater_w");
      set(plan, now.surface, wanted.surface, "/gear/surface");
    });
  }

  void operator()(const SetRunning& edit) {
    plan.running_weeks = edit.weeks;
    decide(plan, "/running_weeks");
  }

  void operator()(const SetUpkeep& edit) {
    set_part(plan, plan.upkeep, edit.upkeep, "/upkeep", [&](Upkeep& now, const Upkeep& wanted) {
      set(plan, now.change_fraction, wanted.change_fraction, "/upkeep/change_fraction");
      set(plan, now.every_days, wanted.every_days, "/upkeep/every_days");
    });
  }

  void operator()(const SetFeeding& edit) {
    set_part(plan, plan.feeding, edit.feeding, "/feeding", [&](Feeding& now, const Feeding& wanted) {
      set(plan, now.ration, wanted.ration, "/feeding/ration");
      set(plan, now.fasting_days, wanted.fasting_days, "/feeding/fasting_days");
    });
  }

  void operator()(const SetPlanting& edit) {
    plan.planting = edit.planting;
    decide(plan, "/planting");
  }

  void operator()(const SetPlace& edit) {
    set(plan, plan.place.temperature_c, edit.place.temperature_c, "/place/temperature_c");
    set(plan, plan.place.region, edit.place.region, "/place/region");
    plan.place.other_keys = edit.place.other_keys;
  }

  void operator()(const SetStrictness& edit) { plan.strictness = edit.strictness; }
  void operator()(const Rename& edit) { plan.name = edit.name; }
  void operator()(const SetNotes& edit) { plan.notes = edit.notes; }

  void operator()(const SetSeen& edit) {
    const auto same = [&](const Seen& seen) { return seen.rule == edit.rule && seen.species == edit.species; };
    const auto there = std::find_if(plan.seen.begin(), plan.seen.end(), same);
    if (edit.known && there == plan.seen.end()) plan.seen.push_back(Seen{.rule = edit.rule, .species = edit.species});
    if (!edit.known && there != plan.seen.end()) plan.seen.erase(there);
  }

  std::vector<Species>::iterator own_of(const std::string& id) {
    return std::find_if(plan.own_species.begin(), plan.own_species.end(), [&](const Species& one) { return one.id == id; });
  }

  void operator()(const SetOwnSpecies& edit) {
    const auto there = own_of(edit.species.id);
    if (there != plan.own_species.end())
      *there = edit.species;
    else
      plan.own_species.push_back(edit.species);
  }

  void operator()(const DropOwnSpecies& edit) {
    if (own_of(edit.id) == plan.own_species.end()) return;
    if (find_species(catalog, std::string_view(edit.id)) == nullptr) (*this)(TakeOut{edit.id});
    const auto at = own_of(edit.id);
    const std::size_t index = static_cast<std::size_t>(at - plan.own_species.begin());
    plan.own_species.erase(at);
    forget_entry(plan, "/own_species", index);
  }
};

}  // namespace

Plan apply(Plan plan, const Command& command, const Catalog& catalog) {
  std::visit(Apply{plan, catalog}, command);
  return plan;
}

}  // namespace shoalwright
