// SPDX-License-Identifier: MIT
#include "catalog/read.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "catalog/builtin.h"
#include "catalog/detail/shapes.h"
#include "catalog/detail/words.h"
#include "catalog/fold.h"
#include "units/packed_json.h"

namespace shoalwright {

namespace {

using Kind = Json::Kind;

constexpr double rounding = 1e-6;

/// Who has to give a value: everyone, the built-in catalogue only, or nobody.
enum class Must { always, built_in, no };

constexpr Bounds length_bounds_cm{0.01, 150}, temperature_bounds_c{0, 40}, ph_bounds{3.5, 9.5}, hardness_bounds_d{0, 40},
    published_bounds{-5, 45};

/// A place in the entry: its value (null where the key is absent) and the way to it. The path is written only when something is
/// wrong.
struct Node {
  const Json* value = nullptr;
  const Node* parent = nullptr;              ///< lives as long as this one; null at the entry's root
  std::optional<std::string_view> key = {};  ///< of an object; none: `index` of a list
  std::size_t index = 0;

  std::string path() const {
    return parent == nullptr ? "" : parent->path() + "/" + (key ? std::string(*key) : std::to_string(index));
  }
};

/// The i-th of a list.
Node item_of(const Node& list, std::size_t i) { return {&list.value->items[i], &list, {}, i}; }

/// Reads one entry and remembers the first thing that was wrong with it.
class EntryReader {
 public:
  EntryReader(const Json& entry, bool own) : root_{.value = &entry}, own_(own) {}

  Species read();
  bool failed() const { return failed_; }
  const Error& error() const { return error_; }

 private:
  void fail(const std::string& path, const std::string& expectation) {
    if (failed_) return;
    failed_ = true;
    error_ = {path, (id_.empty() ? "The entry" : id_) + ": " + (path.empty() ? "it" : path) + " " + expectation + "."};
  }

  bool needed(Must must) const { return must == Must::always || (must == Must::built_in && !own_); }

  /// The value under a key. Absent keys fail where they are needed; a null counts as absent in a keeper's entry.
  Node child(const Node& parent, const char* key, Must must) {
    Node node{nullptr, &parent, key};
    if (!parent.value) return node;
    const Json* found = find(*parent.value, key);
    if (found != nullptr && !(own_ && found->kind == Kind::null)) node.value = found;
    if (!node.value && needed(must)) fail(node.path(), "is missing");
    return node;
  }

  Node object(const Node& parent, const char* key, Must must, std::initializer_list<const char*> known) {
    Node node = child(parent, key, must);
    if (node.value && node.value->kind != Kind::object) {
      fail(node.path(), "has to be an object");
      node.value = nullptr;
    }
    only(node, known);
    return node;
  }

  void only(const Node& node, std::initializer_list<const char*> known) {
    if (!node.value || own_) return;
    for (const JsonMember& item : node.value->members) {
      const auto same = [&](const char* key) { return item.key == key; };
      if (std::none_of(known.begin(), known.end(), same)) fail(node.path() + "/" + item.key, "is no field of the catalogue");
    }
  }

  std::optional<double> number(const Node& parent, const char* key, Must must, Bounds bounds) {
    const Node node = child(parent, key, must);
    if (!node.value) return std::nullopt;
    if (node.value->kind != Kind::number) return fail(node.path(), "has to be a number"), std::nullopt;
    const double value = node.value->number;
    if (!(value >= bounds.low && value <= bounds.high))
      return fail(node.path(), "has to be " + bounds_text(bounds)), std::nullopt;
    return value;
  }

  std::optional<int> whole(const Node& parent, const char* key, Must must, int low, int high) {
    const Node node = child(parent, key, must);
    if (!node.value) return std::nullopt;
    const Bounds bounds{static_cast<double>(low), static_cast<double>(high)};
    const double value = node.value->number;
    if (node.value->kind != Kind::number || !(value >= bounds.low && value <= bounds.high && value == std::floor(value)))
      return fail(node.path(), "has to be a whole number, " + bounds_text(bounds)), std::nullopt;
    return static_cast<int>(value);
  }

  bool flag(const Node& parent, const char* key, Must must) {
    const Node node = child(parent, key, must);
    if (!node.value) return false;
    if (node.value->kind != Kind::boolean) return fail(node.path(), "has to be true or false"), false;
    return node.value->boolean;
  }

  std::string text(const Node& parent, const char* key, Must must, bool may_be_empty = false) {
    const Node node = child(parent, key, must);
    if (!node.value) return "";
    if (node.value->kind != Kind::text) return fail(node.path(), "has to be text"), "";
    std::string value = node.value->text;
    if (value.empty() && !may_be_empty) fail(node.path(), "has to be text that says something");
    return value;
  }

  template <class List>
  std::string word(const Node& parent, const char* key, Must must, const List& list) {
    const std::string value = text(parent, key, must);
    if (!value.empty() && std::find(list.begin(), list.end(), value) == list.end())
      fail(parent.path() + "/" + key, "has to be one of: " + listed(list));
    return value;
  }

  template <class E, std::size_t N>
  E word(const Node& parent, const char* key, Must must, const Words<E, N>& words, E unknown) {
    const std::string value = text(parent, key, must);
    if (value.empty()) return unknown;
    std::array<std::string_view, N> list;
    for (std::size_t i = 0; i < N; ++i) {
      if (words[i].first == value) return words[i].second;
      list[i] = words[i].first;
    }
    fail(parent.path() + "/" + key, "has to be one of: " + listed(list));
    return unknown;
  }

  enum class Repeats { no, yes };

  std::vector<std::string> texts(const Node& parent, const char* key, Must must, Repeats repeats = Repeats::no) {
    const Node node = child(parent, key, must);
    std::vector<std::string> values;
    if (!node.value) return values;
    if (node.value->kind != Kind::list) return fail(node.path(), "has to be a list of texts"), values;
    for (const Json& item : node.value->items) {
      const Node place = item_of(node, values.size());
      if (item.kind != Kind::text || item.text.empty()) return fail(place.path(), "has to be text"), values;
      values.push_back(item.text);
      if (repeats == Repeats::no && std::count(values.begin(), values.end(), values.back()) > 1)
        fail(place.path(), "is in the list twice");
    }
    return values;
  }

  template <class List>
  std::vector<std::string> words(const Node& parent, const char* key, Must must, const List& list) {
    std::vector<std::string> values = texts(parent, key, must);
    const Node place{nullptr, &parent, key};
    for (std::size_t i = 0; i < values.size(); ++i) {
      if (std::find(list.begin(), list.end(), values[i]) == list.end())
        fail(place.path() + "/" + std::to_string(i), "has to be one of: " + listed(list));
    }
    if (values.empty() && needed(must)) fail(place.path(), "has to name at least one");
    return values;
  }

  std::vector<std::string> ids(const Node& parent, const char* key, Must must) {
    std::vector<std::string> values = texts(parent, key, must);
    for (const std::string& value : values) {
      if (!is_id(value)) fail(parent.path() + "/" + key, "has to hold ids, lower case and hyphens");
    }
    return values;
  }

  std::optional<std::array<double, 2>> two(const Node& parent, const char* key, Must must, Bounds bounds) {
    const Node node = child(parent, key, must);
    if (!node.value) return std::nullopt;
    const auto refuse = [&] { fail(node.path(), "has to be two numbers, " + bounds_text(bounds)); };
    if (node.value->kind != Kind::list || node.value->items.size() != 2) return refuse(), std::nullopt;
    std::array<double, 2> values{};
    for (std::size_t i = 0; i < 2; ++i) {
      const Json& item = node.value->items[i];
      values[i] = item.number;
      if (item.kind != Kind::number || !(values[i] >= bounds.low && values[i] <= bounds.high)) return refuse(), std::nullopt;
    }
    return values;
  }

  std::optional<Range> range(const Node& parent, const char* key, Must must, Bounds bounds) {
    const auto ends = two(parent, key, must, bounds);
    if (!ends) return std::nullopt;
    if (!((*ends)[0] <= (*ends)[1])) return fail(parent.path() + "/" + key, "has to run from low to high"), std::nullopt;
    return Range{(*ends)[0], (*ends)[1]};
  }

  Need need(const Node& water, const char* key, Bounds bounds, bool may_quote) {
    const Node node = may_quote ? object(water, key, Must::built_in, {"tolerated", "ideal", "published"})
                                : object(water, key, Must::built_in, {"tolerated", "ideal"});
    Need result{range(node, "tolerated", Must::built_in, bounds), range(node, "ideal", Must::built_in, bounds)};
    if (may_quote) range(node, "published", Must::no, published_bounds);
    if (result.tolerated && result.ideal &&
        !(result.tolerated->low <= result.ideal->low && result.ideal->high <= result.tolerated->high))
      fail(node.path() + "/ideal", "has to lie inside tolerated");
    return result;
  }

  void identity(Species& s);
  void name(Species& s);
  void size(Species& s);
  void water(Species& s);
  void life(Species& s);
  void temper(Species& s);
  void mouth_and_needs(Species& s);
  void diet_and_breeding(Species& s);
  void legal(Species& s);
  void look(Species& s);
  void evidence(Species& s);

  Node root_;
  bool own_ = false, failed_ = false;
  std::string id_;
  Error error_;
};

void EntryReader::identity(Species& s) {
  s.id = text(root_, "id", Must::always);
  if (!s.id.empty() && !is_id(s.id)) fail("/id", "has to be lower-case letters and digits joined by hyphens");
  id_ = s.id;
  s.aliases = ids(root_, "aliases", Must::built_in);
  if (!own_) s.code = whole(root_, "code", Must::built_in, 1, 65535).value_or(0);
  if (own_ && find(*root_.value, "code") != nullptr) fail("/code", "belongs to the built-in catalogue: leave it out");
  s.kind = word(root_, "kind", Must::built_in, kind_list);
  s.group = word(root_, "group", Must::built_in, group_list);
  s.note = text(root_, "note", Must::no, true);
}

void EntryReader::name(Species& s) {
  const Node node =
      object(root_, "name", Must::always, {"scientific", "status", "synonyms", "misapplied", "common", "sold_as", "family"});
  s.name.scientific = text(node, "scientific", Must::built_in);
  s.name.status = word(node, "status", Must::built_in, status_list);
  s.name.synonyms = texts(node, "synonyms", Must::built_in);
  s.name.misapplied = texts(node, "misapplied", Must::built_in);
  s.name.sold_as = texts(node, "sold_as", Must::built_in);
  s.name.family = text(node, "family", Must::built_in);
  const Node common = child(node, "common", Must::built_in);
  if (common.value && common.value->kind != Kind::list) return fail(common.path(), "has to be a list of names");
  if (common.value) {
    for (std::size_t i = 0; i < common.value->items.size(); ++i) {
      const Node item = item_of(common, i);
      if (item.value->kind != Kind::object) return fail(item.path(), "has to be an object with text and lang");
      only(item, {"text", "lang"});
      CommonName entry{text(item, "text", Must::always), text(item, "lang", Must::built_in)};
      if (!entry.lang.empty() && !(entry.lang.size() == 2 && is_id(entry.lang)))
        fail(item.path() + "/lang", "has to be a language of two letters");
      s.name.common.push_back(std::move(entry));
    }
  }
  if (s.name.common.empty() && (!own_ || s.name.scientific.empty())) fail(common.path(), "has to hold at least one name");
}

void EntryReader::size(Species& s) {
  const Node node = object(root_, "size", Must::always,
                           {"adult_tl_cm", "adult_male_cm", "adult_female_cm", "sold_cm", "published_max_cm",
                            "published_max_type", "height_with_fins_cm", "body", "body_depth_share", "length_weight", "spines"});
  s.size.adult_tl_cm = number(node, "adult_tl_cm", Must::always, length_bounds_cm).value_or(0);
  s.size.adult_male_cm = number(node, "adult_male_cm", Must::no, length_bounds_cm);
  s.size.adult_female_cm = number(node, "adult_female_cm", Must::no, length_bounds_cm);
  s.size.sold_cm = number(node, "sold_cm", Must::built_in, {0.01, 30});
  s.size.published_max_cm = number(node, "published_max_cm", Must::no, {0.01, 300});
  s.size.published_max_type =
      word(node, "published_max_type", s.size.published_max_cm ? Must::built_in : Must::no, length_type_list);
  if (!s.size.published_max_cm && !s.size.published_max_type.empty()) fail(node.path() + "/published_max_cm", "is missing");
  s.size.height_with_fins_cm = number(node, "height_with_fins_cm", Must::no, length_bounds_cm);
  s.size.spines = flag(node, "spines", Must::no);
  s.size.body = word(node, "body", Must::built_in, body_words, Body::unknown);
  s.size.body_depth_share = number(node, "body_depth_share", Must::built_in, {0.03, 1.2});
  s.size.length_weight = two(node, "length_weight", Must::no, {1e-6, 10});
}

void EntryReader::water(Species& s) {
  const Node node = object(root_, "water", Must::built_in,
                           {"temperature_c", "ph", "gh_dgh", "kh_dkh", "salinity", "oxygen_least_mg_l", "hardiness"});
  s.water.temperature_c = need(node, "temperature_c", temperature_bounds_c, true);
  s.water.ph = need(node, "ph", ph_bounds, true);
  s.water.gh_dgh = need(node, "gh_dgh", hardness_bounds_d, false);
  s.water.kh_dkh = need(node, "kh_dkh", hardness_bounds_d, false);
  s.water.salinity = word(node, "salinity", Must::built_in, salinity_words, Salinity::fresh);
  s.water.oxygen_least_mg_l = number(node, "oxygen_least_mg_l", Must::no, {1, 9});
  s.water.hardiness = word(node, "hardiness", Must::built_in, hardiness_list);
}

void EntryReader::life(Species& s) {
  const Node node =
      object(root_, "life", Must::always,
             {"style", "depth", "group", "sexes", "active", "current", "cover", "jumps", "air_breather", "longevity_y"});
  s.life.style = word(node, "style", Must::always, style_words, Style::calm_mid);
  const Node depth = object(node, "depth", Must::always, {"surface", "mid", "bottom"});
  constexpr std::array<const char*, 3> levels{"surface", "mid", "bottom"};
  double sum = 0;
  for (std::size_t i = 0; i < levels.size(); ++i) {
    s.life.depth[i] = number(depth, levels[i], Must::always, {0, 1}).value_or(0);
    sum += s.life.depth[i];
  }
  if (depth.value && !(std::abs(sum - 1) <= rounding)) fail(depth.path(), "has to sum to 1");
  const Node group = object(node, "group", Must::always, {"kind", "least", "good", "all_male_ok", "added"});
  s.life.group.kind = word(group, "kind", Must::always, group_kind_words, GroupKind::shoal);
  s.life.group.least = whole(group, "least", Must::always, 1, 50).value_or(1);
  s.life.group.good = whole(group, "good", Must::built_in, 1, 100).value_or(s.life.group.least);
  if (!(s.life.group.least <= s.life.group.good)) fail(group.path() + "/good", "has to be at least the least group");
  s.life.group.all_male_ok = flag(group, "all_male_ok", Must::built_in);
  s.life.group.added = word(group, "added", Must::built_in, added_list);
  const Node sexes = object(node, "sexes", Must::built_in, {"ratio", "told_apart"});
  s.life.sex_ratio = text(sexes, "ratio", Must::no);
  if (!s.life.sex_ratio.empty() && !follows(s.life.sex_ratio, "1m:1f")) fail(sexes.path() + "/ratio", "has to read like 1m:2f");
  s.life.told_apart = word(sexes, "told_apart", Must::built_in, told_apart_list);
  s.life.active = word(node, "active", Must::built_in, active_list);
  s.life.current = word(node, "current", Must::built_in, current_list);
  s.life.cover = word(node, "cover", Must::built_in, cover_list);
  if (const Jumps jumps = word(node, "jumps", Must::built_in, jumps_words, Jumps::rarely); !text(node, "jumps", Must::no).empty())
    s.life.jumps = jumps;
  s.life.air_breather = flag(node, "air_breather", Must::built_in);
  s.life.longevity_y = range(node, "longevity_y", Must::built_in, {0.3, 60});
}

void EntryReader::temper(Species& s) {
  const Node node =
      object(root_, "temper", Must::built_in,
             {"to_own_kind", "to_others", "look_alike_group", "rival_males", "nips_fins", "fins", "feeding_pace", "breeds_with"});
  s.temper.to_own_kind = word(node, "to_own_kind", Must::built_in, toward_words, Toward::peaceful);
  s.temper.to_others = word(node, "to_others", Must::built_in, toward_words, Toward::peaceful);
  s.temper.look_alike_group = text(node, "look_alike_group", Must::no);
  if (!s.temper.look_alike_group.empty() && !is_id(s.temper.look_alike_group))
    fail(node.path() + "/look_alike_group", "has to be lower case and hyphens");
  s.temper.rival_males = flag(node, "rival_males", Must::built_in);
  s.temper.nips_fins = word(node, "nips_fins", Must::built_in, nips_list);
  s.temper.fins = word(node, "fins", Must::built_in, fin_length_list);
  s.temper.feeding_pace = word(node, "feeding_pace", Must::built_in, pace_list);
  s.temper.breeds_with = ids(node, "breeds_with", Must::built_in);
}

void EntryReader::mouth_and_needs(Species& s) {
  const Node mouth =
      object(root_, "mouth", Must::built_in, {"eater", "gape_share", "eats_shrimp", "eats_snails", "eats_plants", "digs"});
  s.mouth.eater = word(mouth, "eater", Must::built_in, eater_list);
  s.mouth.gape_share = number(mouth, "gape_share", Must::no, {0.01, 0.4});
  s.mouth.eats_shrimp = word(mouth, "eats_shrimp", Must::built_in, eats_shrimp_list);
  s.mouth.eats_snails = flag(mouth, "eats_snails", Must::built_in);
  s.mouth.eats_plants = word(mouth, "eats_plants", Must::built_in, eats_plants_list);
  s.mouth.digs = flag(mouth, "digs", Must::built_in);
  const Node needs = object(root_, "needs", Must::built_in,
                            {"substrate", "wood", "caves", "open_floor", "mature_weeks", "least_length_cm", "least_volume_l"});
  s.needs.substrate = word(needs, "substrate", Must::built_in, substrate_list);
  s.needs.wood = flag(needs, "wood", Must::built_in);
  s.needs.caves = whole(needs, "caves", Must::built_in, 0, 10).value_or(0);
  s.needs.open_floor = flag(needs, "open_floor", Must::built_in);
  s.needs.mature_weeks = whole(needs, "mature_weeks", Must::built_in, 0, 52).value_or(0);
  s.needs.least_length_cm = number(needs, "least_length_cm", Must::built_in, {0.01, 800});
  s.needs.least_volume_l = number(needs, "least_volume_l", Must::built_in, {0.01, 30000});
}

void EntryReader::diet_and_breeding(Species& s) {
  const Node diet = object(root_, "diet", Must::built_in, {"kind", "foods", "feeds_at"});
  s.diet.kind = word(diet, "kind", Must::built_in, diet_list);
  s.diet.feeds_at = word(diet, "feeds_at", Must::built_in, feeds_at_list);
  s.diet.foods = words(diet, "foods", diet.value ? Must::built_in : Must::no, food_list);
  const Node breeding = object(root_, "breeding", Must::built_in,
                               {"mode", "water", "hatch", "gestation_days", "free_swimming_days", "first_food", "brood", "note"});
  s.breeding_mode = word(breeding, "mode", Must::built_in, breeding_mode_list);
  const Node wanted = object(breeding, "water", Must::no, {"temperature_c", "ph", "gh_dgh"});
  range(wanted, "temperature_c", Must::no, {5, 35});
  range(wanted, "ph", Must::no, {3.5, 9});
  range(wanted, "gh_dgh", Must::no, {0, 35});
  const Node hatch = object(breeding, "hatch", Must::no, {"hours", "at_c", "zero_c"});
  range(hatch, "hours", Must::built_in, {1, 5000});
  number(hatch, "at_c", Must::built_in, {5, 35});
  number(hatch, "zero_c", Must::no, {-5, 15});
  range(breeding, "gestation_days", Must::no, {1, 120});
  range(breeding, "free_swimming_days", Must::no, {0, 60});
  word(breeding, "first_food", Must::no, first_food_list);
  range(breeding, "brood", Must::no, {1, 200000});
  text(breeding, "note", Must::no, true);
}

void EntryReader::legal(Species& s) {
  const Node list = child(root_, "legal", Must::built_in);
  if (!list.value) return;
  if (list.value->kind != Kind::list) return fail(list.path(), "has to be a list");
  for (std::size_t i = 0; i < list.value->items.size(); ++i) {
    const Node item = item_of(list, i);
    if (item.value->kind != Kind::object) return fail(item.path(), "has to be an object");
    only(item, {"region", "effect", "instrument", "as_of", "note"});
    Species::Law law{.region = text(item, "region", Must::always), .effect = {}, .instrument = {}, .as_of = {}, .note = {}};
    if (!follows(law.region, "AA")) fail(item.path() + "/region", "has to be EU or a country of two capitals");
    law.effect = word(item, "effect", Must::always, legal_effect_list);
    law.instrument = text(item, "instrument", Must::always);
    law.as_of = text(item, "as_of", Must::always);
    if (!is_date(law.as_of)) fail(item.path() + "/as_of", "has to be a date like 2026-11 or 2026-11-20");
    law.note = text(item, "note", Must::no, true);
    s.laws.push_back(std::move(law));
  }
}

void EntryReader::look(Species& s) {
  const Node node = object(root_, "look", Must::built_in, {"form", "colours", "marks", "fins", "male", "female"});
  const auto colours = [&](const Node& parent, Must must) {
    std::vector<std::string> values = texts(parent, "colours", Must::no, Repeats::yes);
    const Node list = child(parent, "colours", must);
    if (list.value && !(values.size() >= 3 && values.size() <= 5)) fail(list.path(), "has to hold three to five colours");
    for (const std::string& value : values) {
      if (!follows(value, "#hhhhhh")) fail(list.path(), "has to hold colours like #d98a55, in lower case");
    }
    return values;
  };
  s.look.form = word(node, "form", Must::built_in, form_list);
  s.look.colours = colours(node, Must::built_in);
  s.look.marks = words(node, "marks", node.value ? Must::built_in : Must::no, mark_list);
  s.look.fins = word(node, "fins", Must::built_in, fin_shape_list);
  colours(object(node, "male", Must::no, {"colours"}), Must::built_in);
  colours(object(node, "female", Must::no, {"colours"}), Must::built_in);
}

void EntryReader::evidence(Species& s) {
  const Node node = child(root_, "evidence", Must::built_in);
  if (node.value && node.value->kind != Kind::object) return fail(node.path(), "has to be an object");
  if (!node.value || node.value->members.empty()) {
    if (own_) s.evidence.push_back({"*", Evidence::keeper, "", ""});
    if (!own_) fail(node.path(), "has to say where the values come from");
    return;
  }
  for (const JsonMember& item : node.value->members) {
    const Node entry{&item.value, &node, item.key};
    if (entry.value->kind != Kind::object) return fail(entry.path(), "has to be an object");
    only(entry, {"class", "source", "where", "note"});
    EvidenceEntry read{item.key, Evidence::from_memory, "", ""};
    read.evidence = word(entry, "class", Must::always, evidence_words, Evidence::from_memory);
    const Must must = read.evidence == Evidence::published ? Must::always : Must::no;
    read.source = text(entry, "source", must);
    read.where = text(entry, "where", must);
    text(entry, "note", Must::no);
    s.evidence.push_back(std::move(read));
  }
  if (!own_ && find(*node.value, "*") == nullptr)
    fail(node.path() + "/*", "is missing: it speaks for every field that is not named");
}

Species EntryReader::read() {
  Species species;
  if (root_.value->kind != Kind::object) {
    fail("", "has to be an object");
    return species;
  }
  identity(species);
  only(root_, {"id", "aliases", "code", "kind", "group", "name", "size", "water", "life", "temper", "mouth", "needs", "diet",
               "breeding", "legal", "look", "note", "evidence"});
  name(species);
  size(species);
  water(species);
  life(species);
  temper(species);
  mouth_and_needs(species);
  diet_and_breeding(species);
  legal(species);
  look(species);
  evidence(species);
  return species;
}

/// The first name or code that two species claim, as an error; nothing where each name in use leads to one species.
std::optional<Error> clash(const std::vector<Species>& all) {
  std::map<std::string, std::string> owner;
  std::map<int, std::string> code_owner;
  for (const Species& species : all) {
    std::vector<std::string> names = species.name.synonyms;
    names.insert(names.end(), species.aliases.begin(), species.aliases.end());
    names.push_back(species.id);
    names.push_back(species.name.scientific);
    for (const std::string& name : names) {
      const auto [place, is_new] = owner.emplace(folded(name), species.id);
      if (!is_new && place->second != species.id)
        return Error{"", species.id + ": the name " + name + " belongs to " + place->second + " already."};
    }
    const auto [place, is_new] = code_owner.emplace(species.code, species.id);
    if (!is_new)
      return Error{"", species.id + ": code " + std::to_string(species.code) + " belongs to " + place->second + " already."};
  }
  return std::nullopt;
}

void sort_by_code(Catalog& catalog) {
  std::sort(catalog.species.begin(), catalog.species.end(), [](const Species& a, const Species& b) { return a.code < b.code; });
}

}  // namespace

Catalog builtin_catalog() { return packed_catalog(builtin_cards()); }
Catalog first_catalog() {
  Catalog catalog = packed_catalog(first_cards());
  catalog.whole = false;
  return catalog;
}

Catalog packed_catalog(std::string_view packed) {
  const Json cards = unpack_json(packed);
  Catalog catalog;
  catalog.species.reserve(cards.items.size());
  for (const Json& card : cards.items) catalog.species.push_back(EntryReader(card, false).read());
  sort_by_code(catalog);
  return catalog;
}

Result<Catalog> read_catalog(std::string_view json_array_text) {
  const Result<Json> all = parse_json(json_array_text);
  if (!all) return all.error();
  if (all->kind != Kind::list) return Error{"", "The catalogue has to be a JSON array of species."};
  Catalog catalog;
  std::set<std::string> ids;
  for (std::size_t i = 0; i < all->items.size(); ++i) {
    EntryReader reader(all->items[i], false);
    Species species = reader.read();
    const std::string place = "/" + std::to_string(i);
    if (reader.failed()) return Error{place + reader.error().place, reader.error().sentence};
    if (!ids.insert(species.id).second) return Error{place + "/id", species.id + ": this id is in the catalogue twice."};
    catalog.species.push_back(std::move(species));
  }
  if (auto error = clash(catalog.species)) return *error;
  sort_by_code(catalog);
  return catalog;
}

Result<Species> read_species(const Json& entry) {
  EntryReader reader(entry, true);
  Species species = reader.read();
  if (reader.failed()) return reader.error();
  species.whole_json = dump(entry);
  return species;
}

Result<Species> read_species(std::string_view json_object_text) {
  const Result<Json> entry = parse_json(json_object_text);
  if (!entry) return entry.error();
  return read_species(*entry);
}

}  // namespace shoalwright
