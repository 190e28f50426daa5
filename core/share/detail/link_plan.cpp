// SPDX-License-Identifier: MIT
#include "share/detail/link_plan.h"

#include <algorithm>

#include "plan/check.h"
#include "plan/words.h"
#include "share/detail/link_pointers.h"
#include "share/detail/link_tables.h"
#include "share/detail/own_species.h"
#include "units/day.h"
#include "units/json.h"

namespace shoalwright {

namespace {

// What is usual here only makes it short; it is not what a plan means where it says nothing (plan/defaults.h), since every member
// travels. These figures and the order of the calls are link version 1 and never change; what came later is asked for by version.

constexpr int first_day = 20600;  // 2026-05-27
constexpr std::size_t most_texts = 10000;

/// Other keys of any part: rare, so one learnt chance for all of them.
struct Shared {
  TextModel others{97};
  TextModel json{60};
  SpeciesModel species;
  Magnitude days{9};
};

/// JSON text of an object or a list without its brackets, which are always the same.
void code_inside(LinkCoder& coder, TextModel& model, std::string_view brackets, std::string& json) {
  std::string inside = json.size() > 2 ? json.substr(1, json.size() - 2) : "";
  coder.text(model, inside);
  json = inside.empty() ? "" : brackets[0] + inside + brackets[1];
}

void code_others(LinkCoder& coder, Shared& shared, std::string& keys) { code_inside(coder, shared.others, "{}", keys); }

void code_day(LinkCoder& coder, Shared& shared, std::string& day) {
  Chance there = zero_in(40), odd = zero_in(98), earlier = zero_in(80);
  TextModel text{1};
  if (!coder.bit(there, !day.empty())) {
    day.clear();
    return;
  }
  const std::optional<int> number = day_number(day);
  if (coder.bit(odd, !number && !coder.reading())) return coder.text(text, day);
  const std::int64_t off = number ? *number - first_day : 0;
  const bool before = coder.bit(earlier, off < 0);
  const std::uint64_t distance = coder.magnitude(shared.days, static_cast<std::uint64_t>(before ? -off : off));
  constexpr std::uint64_t furthest = 3'000'000;  // in the year 10,000
  if (distance > furthest) return coder.refuse("This link holds a day that no calendar has, so nothing was opened.");
  if (coder.reading()) day = day_text(first_day + (before ? -1 : 1) * static_cast<int>(distance));
}

/// Where a piece can stand, cm: only so that its place takes few bits.
struct Extent {
  double x_cm = 0, z_cm = 0;
};

Extent extent_of(const Tank& tank) {
  switch (tank.shape) {
    case Shape::rectangular: return {tank.length_cm, tank.width_cm};
    case Shape::bow_front: return {tank.length_cm, tank.width_cm + tank.bow_cm};
    case Shape::cylinder: return {tank.diameter_cm, tank.diameter_cm};
    case Shape::half_cylinder: return {tank.diameter_cm, tank.diameter_cm / 2};
    case Shape::quarter_cylinder: return {tank.diameter_cm / 2, tank.diameter_cm / 2};
    case Shape::hexagon: return {tank.side_cm * 2, tank.side_cm * 2};
    case Shape::pentagon_corner: return {tank.side_cm, tank.side_cm};
    case Shape::prism: break;
  }
  Extent extent;
  for (const Point& point : tank.outline_cm) {
    extent.x_cm = std::max(extent.x_cm, point.x_cm);
    extent.z_cm = std::max(extent.z_cm, point.z_cm);
  }
  return extent;
}

/// 4 mm up to 30 cm of height, and so on: the usual pane of its height.
double usual_glass_mm(double height_cm) {
  return height_cm <= 30 ? 4 : height_cm <= 40 ? 6 : height_cm <= 50 ? 8 : height_cm <= 60 ? 10 : 12;
}

void code_tank(LinkCoder& coder, Shared& shared, Tank& tank) {
  Chance shaped = zero_in(85), lid_known = zero_in(10), lid = zero_in(40);
  NumberModel length(10, 1, 6), width(10, 1, 5), height(10, 1, 5), glass(10, 80, 2), fill(10, 60, 2), corner(10, 1, 6);
  Magnitude corners(3);
  if (coder.bit(shaped, tank.shape != Shape::rectangular))
    coder.choice(tank.shape, Words<Shape>::all.size(), 16);
  else
    tank.shape = Shape::rectangular;
  switch (tank.shape) {
    case Shape::rectangular:
    case Shape::bow_front:
      coder.number(length, tank.length_cm, 88.4, 64);
      coder.number(width, tank.width_cm, 43.4, 32);
      if (tank.shape == Shape::bow_front) coder.number(width, tank.bow_cm, 10, 10);
      break;
    case Shape::cylinder:
    case Shape::half_cylinder:
    case Shape::quarter_cylinder: coder.number(length, tank.diameter_cm, 40, 40); break;
    case Shape::hexagon: coder.number(length, tank.side_cm, 30, 30); break;
    case Shape::pentagon_corner:
      coder.number(length, tank.side_cm, 60, 60);
      coder.number(width, tank.front_cm, 25, 25);
      break;
    case Shape::prism:
      tank.outline_cm.resize(coder.count(corners, tank.outline_cm.size(), most_outline_points));
      for (Point& point : tank.outline_cm) {
        coder.number(corner, point.x_cm, 0, 0);
        coder.number(corner, point.z_cm, 0, 0);
      }
      break;
  }
  coder.number(height, tank.height_cm, 44.2, 36);
  coder.number(glass, tank.glass_mm, usual_glass_mm(tank.height_cm), 8);
  coder.number(fill, tank.fill_cm, tank.height_cm - 2.5, tank.height_cm - 3);
  bool has_lid = tank.lid && *tank.lid;
  if (coder.bit(lid_known, tank.lid.has_value())) {
    coder.flag(lid, has_lid);
    tank.lid = has_lid;
  } else {
    tank.lid.reset();
  }
  code_others(coder, shared, tank.other_keys);
}

void code_place(LinkCoder& coder, Shared& shared, Place& place) {
  Chance there = zero_in(50), odd = zero_in(97);
  NumberModel temperature(10, 75, 2);
  TextModel text{1};
  coder.number(temperature, place.temperature_c, 20, 20);
  const auto capital = [](char c) { return c >= 'A' && c <= 'Z'; };
  const bool plain = place.region.size() == 2 && capital(place.region[0]) && capital(place.region[1]);
  if (!coder.bit(there, !place.region.empty())) {
    place.region.clear();
  } else if (coder.bit(odd, !plain)) {
    coder.text(text, place.region);
  } else {
    if (coder.reading()) place.region = "AA";
    for (char& c : place.region) c = static_cast<char>('A' + coder.uniform(static_cast<std::uint32_t>(c - 'A'), 26));
  }
  code_others(coder, shared, place.other_keys);
}

/// The four quantities that every water has.
struct WaterModels {
  NumberModel temperature{10, 15, 3}, ph{100, 10, 0}, gh{10, 10, 2}, kh{10, 10, 2}, dissolved{100, 20, 3};
  std::array<NumberModel*, 5> all() { return {&temperature, &ph, &gh, &kh, &dissolved}; }
};

void code_waters(LinkCoder& coder, Shared& shared, Plan& plan) {
  Chance aimed = zero_in(30), taken = zero_in(55);
  WaterModels models;
  SourceWater& source = plan.source;
  coder.number(models.temperature, source.temperature_c, 14, 12);
  coder.number(models.ph, source.ph, 7.5, 7);
  coder.number(models.gh, source.gh_dgh, 13, 10);
  coder.number(models.kh, source.kh_dkh, 8, 5);
  coder.number(models.dissolved, source.nitrate_mg_l, 10, 5);
  coder.choice(source.disinfectant, Words<Disinfectant>::all.size(), 8);
  code_others(coder, shared, source.other_keys);
  if (coder.bit(aimed, plan.water.has_value())) {
    WaterAim water = plan.water.value_or(WaterAim{});
    coder.number(models.temperature, water.temperature_c, 25, 24);
    coder.number(models.ph, water.ph, 7, 7);
    coder.number(models.gh, water.gh_dgh, 7, 7);
    coder.number(models.kh, water.kh_dkh, 3, 3);
    code_others(coder, shared, water.other_keys);
    plan.water = water;
  }
  if (coder.bit(taken, plan.measured.has_value())) {
    Measured measured = plan.measured.value_or(Measured{});
    WaterModels now;
    for (NumberModel* model : now.all()) model->known = zero_in(50);
    code_day(coder, shared, measured.date);
    coder.number(now.temperature, measured.temperature_c, 25, 24);
    coder.number(now.ph, measured.ph, 7, 7);
    coder.number(now.gh, measured.gh_dgh, 7, 7);
    coder.number(now.kh, measured.kh_dkh, 3, 3);
    coder.number(models.dissolved, measured.nitrate_mg_l, 20, 20);
    coder.number(now.dissolved, measured.ammonia_mg_l, 0, 0);
    coder.number(now.dissolved, measured.nitrite_mg_l, 0, 0);
    code_others(coder, shared, measured.other_keys);
    plan.measured = measured;
  }
}

void code_recipe(LinkCoder& coder, Shared& shared, Plan& plan) {
  NumberModel ceiling(10, 40, 3), ratio(10, 95, 1);
  ceiling.known = zero_in(85);
  ratio.known = zero_in(2);
  coder.number(ceiling, plan.limits.nitrate_mg_l, 40, 30);
  coder.number(ceiling, plan.limits.co2_mg_l, 25, 25);
  code_others(coder, shared, plan.limits.other_keys);
  Chance usual = zero_in(60);
  Magnitude salts(1);
  WordModel salt;
  const std::vector<std::string> three(link_salts.begin(), link_salts.begin() + 3);
  if (coder.bit(usual, plan.salts == three)) {
    plan.salts = three;
  } else {
    plan.salts.resize(coder.count(salts, plan.salts.size(), most_texts));
    for (std::string& name : plan.salts) coder.word(salt, link_salts, name);
  }
  coder.number(ratio, plan.ca_mg_ratio, 3, 3);
}

/// A line of at least one point: each from the one before it.
void code_line(LinkCoder& coder, std::vector<LinePoint>& line) {
  Magnitude points(2);
  NumberModel x(10, 1, 4), rise(10, 8, 3);
  const std::size_t more = coder.count(points, line.empty() ? 0 : line.size() - 1, most_line_points - 1);
  line.resize(more + 1);
  LinePoint last;
  for (LinePoint& point : line) {
    coder.number(x, point.x_cm, last.x_cm, last.x_cm);
    coder.number(rise, point.rise_cm, last.rise_cm, last.rise_cm);
    last = point;
  }
}

void code_scape(LinkCoder& coder, Shared& shared, Plan& plan, int version) {
  Substrate& substrate = plan.substrate;
  NumberModel depth(10, 30, 2);
  coder.choice(substrate.kind, Words<SubstrateKind>::all.size(), 16);
  const double usual_cm = substrate.kind == SubstrateKind::bare ? 0 : 3;
  coder.number(depth, substrate.front_cm, usual_cm, usual_cm);
  coder.number(depth, substrate.back_cm, usual_cm == 0 ? 0 : 7, 5);
  if (version >= 2) code_line(coder, substrate.line_cm);
  code_others(coder, shared, substrate.other_keys);

  Magnitude pieces(3);
  WordModel kind;
  NumberModel x(10, 1, 5), z(10, 1, 5), base(10, 85, 4), turn(10, 45, 3, true);
  NumberModel length(10, 8, 4), piece_depth(10, 8, 4), height(10, 8, 4);
  Habit habit;  // whoever places a stone to half a centimetre measures it so
  for (NumberModel* model : {&x, &z, &base, &length, &piece_depth, &height}) model->shared_habit = &habit;
  x.known = zero_in(5);
  z.known = zero_in(2);
  Chance mirror = zero_in(75);
  const Extent extent = extent_of(plan.tank);
  plan.pieces.resize(coder.count(pieces, plan.pieces.size(), most_pieces));
  Piece none;
  for (std::size_t i = 0; i < plan.pieces.size(); ++i) {
    Piece& piece = plan.pieces[i];
    coder.word(kind, link_piece_kinds, piece.kind);
    const Piece* like = &none;  // the last of its kind: stems and stones come in sizes
    for (std::size_t j = i; j-- > 0 && i - j <= 64 && like == &none;)
      if (plan.pieces[j].kind == piece.kind) like = &plan.pieces[j];
    coder.place(x, piece.x_cm, extent.x_cm);
    coder.place(z, piece.z_cm, extent.z_cm);
    coder.number(base, piece.base_cm, 0, 0);
    coder.number(length, piece.length_cm, like->length_cm, 0);
    coder.number(piece_depth, piece.depth_cm, like->depth_cm, 0);
    coder.number(height, piece.height_cm, like->height_cm, 0);
    coder.number(turn, piece.turn_deg, 0, 0);
    coder.flag(mirror, piece.mirror);
    code_others(coder, shared, piece.other_keys);
  }
}

struct GroupModels {
  Magnitude count{3};
  Chance none_swims = zero_in(35), all_swim = zero_in(40), sexed = zero_in(65), sexes_complete = zero_in(10);
  WholeModel some{3}, sex{2}, since{4}, arrives{4};
  TextModel note{88};
};

void code_sexes(LinkCoder& coder, GroupModels& models, Group& group) {
  if (!coder.bit(models.sexed, group.males || group.females)) return;
  const bool complete =
      group.males && group.females && *group.males <= group.count && *group.females == group.count - *group.males;
  if (coder.bit(models.sexes_complete, !complete)) {
    coder.whole(models.sex, group.males);
    coder.whole(models.sex, group.females);
    return;
  }
  int males = group.males.value_or(0);
  coder.whole(models.sex.size, males);
  group.males = males;
  group.females = group.count - males;
}

void code_stock(LinkCoder& coder, Shared& shared, Plan& plan) {
  Magnitude groups(3);
  GroupModels models;
  models.since.known = zero_in(60);
  models.arrives.known = zero_in(70);
  plan.stock.resize(coder.count(groups, plan.stock.size(), most_groups));
  for (Group& group : plan.stock) {
    coder.species(shared.species, group.species);
    coder.whole(models.count, group.count);
    if (coder.bit(models.none_swims, group.have == 0))
      group.have = 0;
    else if (coder.bit(models.all_swim, group.have == group.count))
      group.have = group.count;
    else
      coder.whole(models.some.size, group.have);
    code_sexes(coder, models, group);
    coder.whole(models.since, group.since_weeks);
    coder.whole(models.arrives, group.arrives_week);
    coder.text(models.note, group.note);
    code_others(coder, shared, group.other_keys);
  }
}

template <class T>
void code_maybe_choice(LinkCoder& coder, std::optional<T>& value, std::uint32_t places) {
  Chance known = zero_in(15);
  T chosen = value.value_or(T{});
  if (coder.bit(known, value.has_value())) {
    coder.choice(chosen, Words<T>::all.size(), places);
    value = chosen;
  } else {
    value.reset();
  }
}

void code_gear(LinkCoder& coder, Shared& shared, std::optional<Gear>& maybe) {
  Chance there = zero_in(35), filter_known = zero_in(10), filtered = zero_in(10);
  if (!coder.bit(there, maybe.has_value())) return maybe.reset();
  Gear gear = maybe.value_or(Gear{});
  coder.flag(filter_known, gear.filter_known);
  if (gear.filter_known && coder.bit(filtered, gear.filter.has_value())) {
    Filter filter = gear.filter.value_or(Filter{});
    WordModel kind;
    NumberModel flow(10, 2, 7, true), media(10, 20, 1);
    coder.word(kind, link_filter_kinds, filter.kind);
    coder.number(flow, filter.flow_l_h, 600, 0);
    coder.number(media, filter.media_l, 2, 0);
    code_others(coder, shared, filter.other_keys);
    gear.filter = filter;
  }
  NumberModel heater(10, 15, 4, true);
  coder.number(heater, gear.heater_w, 100, 0);
  code_maybe_choice(coder, gear.surface, 8);
  code_others(coder, shared, gear.other_keys);
  maybe = gear;
}

void code_work(LinkCoder& coder, Shared& shared, Plan& plan) {
  code_gear(coder, shared, plan.gear);
  Chance fed = zero_in(3), kept = zero_in(3);
  if (coder.bit(fed, plan.feeding.has_value())) {
    Feeding feeding = plan.feeding.value_or(Feeding{});
    Magnitude fasting(0);
    coder.choice(feeding.ration, Words<Ration>::all.size(), 4);
    coder.whole(fasting, feeding.fasting_days);
    code_others(coder, shared, feeding.other_keys);
    plan.feeding = feeding;
  }
  code_maybe_choice(coder, plan.planting, 8);
  if (coder.bit(kept, plan.upkeep.has_value())) {
    Upkeep upkeep = plan.upkeep.value_or(Upkeep{});
    NumberModel fraction(100, 50, 0), days(10, 75, 2);
    coder.number(fraction, upkeep.change_fraction, 0.3, 0.25);
    coder.number(days, upkeep.every_days, 7, 7);
    code_others(coder, shared, upkeep.other_keys);
    plan.upkeep = upkeep;
  }
  NumberModel weeks(10, 45, 4);
  weeks.known = zero_in(3);
  coder.number(weeks, plan.running_weeks, 0, 0);
  Chance unusual = zero_in(88);
  if (coder.bit(unusual, plan.strictness != Strictness::usual))
    coder.choice(plan.strictness, Words<Strictness>::all.size(), 4);
  else
    plan.strictness = Strictness::usual;
}

/// "/species/<id>/rest": the id by its code.
void code_species_path(LinkCoder& coder, Shared& shared, TextModel& text, std::string& path) {
  constexpr std::string_view start = "/species/";
  Chance odd = zero_in(98);
  const std::size_t end = path.find('/', start.size());
  const bool plain = path.rfind(start, 0) == 0 && end != std::string::npos && end > start.size();
  if (coder.bit(odd, !plain && !coder.reading())) return coder.text(text, path);
  std::string id = plain ? path.substr(start.size(), end - start.size()) : "";
  std::string rest = plain ? path.substr(end) : "";
  coder.species(shared.species, id);
  coder.text(text, rest);
  path = std::string(start) + id + rest;
}

void code_own_species(LinkCoder& coder, Shared& shared, std::vector<Species>& species) {
  Magnitude count(0);
  const std::size_t size = coder.count(count, species.size(), most_groups);
  species.resize(coder.reading() ? 0 : size);
  for (std::size_t i = 0; i < size; ++i) {
    std::string text = coder.reading() ? "" : species[i].whole_json;
    code_inside(coder, shared.json, "{}", text);
    if (!coder.reading() || coder.refusal_so_far()) continue;
    const Result<Json> json = parse_json(text);
    Result<Species> read = json ? read_own_species(*json, "/own_species/" + std::to_string(i)) : Result<Species>(json.error());
    if (read)
      species.push_back(std::move(read.value()));
    else
      coder.refuse("This link holds a species that cannot be read, so nothing was opened.");
  }
}

void code_notebook(LinkCoder& coder, Shared& shared, Plan& plan, bool with_log) {
  PointerModels assumed(85), fixed(93);
  code_pointers(coder, plan.assumed, assumed);
  code_pointers(coder, plan.fixed, fixed);

  Magnitude seen_count(0), species_count(1), own_count(0), lines(0);
  WordModel rule;
  TextModel note{80}, path{1}, line{50};
  plan.seen.resize(coder.count(seen_count, plan.seen.size(), most_entries));
  for (Seen& seen : plan.seen) {
    coder.word(rule, link_rules, seen.rule);
    seen.species.resize(coder.count(species_count, seen.species.size(), most_groups));
    for (std::string& species : seen.species) coder.species(shared.species, species);
    coder.text(note, seen.note);
    code_others(coder, shared, seen.other_keys);
  }
  plan.own_values.resize(coder.count(own_count, plan.own_values.size(), most_entries));
  for (OwnValue& value : plan.own_values) {
    code_species_path(coder, shared, path, value.path);
    coder.text(shared.json, value.value_json);
    coder.text(note, value.note);
    code_others(coder, shared, value.other_keys);
  }
  code_own_species(coder, shared, plan.own_species);
  code_inside(coder, shared.others, "[]", plan.breeding_json);
  std::string log = with_log || coder.reading() ? plan.log_json : "";
  code_inside(coder, shared.others, "[]", log);
  plan.log_json = log;
  plan.sheet.resize(coder.count(lines, plan.sheet.size(), most_entries));
  for (std::string& text : plan.sheet) coder.text(line, text);
}

}  // namespace

void code_plan(LinkCoder& coder, Plan& plan, bool with_log, int version) {
  Shared shared;
  TextModel name{40}, notes{50};
  coder.text(name, plan.name);
  coder.text(notes, plan.notes);
  code_day(coder, shared, plan.start);
  code_tank(coder, shared, plan.tank);
  code_place(coder, shared, plan.place);
  code_waters(coder, shared, plan);
  code_recipe(coder, shared, plan);
  code_scape(coder, shared, plan, version);
  code_stock(coder, shared, plan);
  code_work(coder, shared, plan);
  code_notebook(coder, shared, plan, with_log);
  code_others(coder, shared, plan.other_keys);
}

}  // namespace shoalwright
