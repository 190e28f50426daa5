// SPDX-License-Identifier: MIT
#include "mend/mend.h"

#include <algorithm>
#include <limits>
#include <optional>

#include "mend/change.h"
#include "mend/clear_out.h"
#include "mend/repairs.h"
#include "share/patch.h"
#include "share/plan_json.h"
#include "units/order.h"

namespace shoalwright {

namespace {

constexpr std::size_t most_mends = 3;
/// Plans that are judged before the best so far has to do: some seconds.
constexpr int most_judged = 1500;
/// Repairs that are looked at from one plan.
constexpr std::size_t most_repairs = 60;
/// Larger tanks and other kinds are looked for while no more than this has been done.
constexpr std::size_t all_repairs_to = 1;

/// What was done, and of which changes it speaks.
struct Said {
  std::string says;
  std::vector<std::string> about;
};

/// A plan on the way to a sound one.
struct Node {
  Plan plan;
  std::vector<PatchStep> edits;
  std::vector<Said> said;
  std::vector<Grade> grades;
  double cost = 0, at_least = 0;  ///< so far; and to the end, at the least
};

bool same_matter(const Grade& a, const Grade& b) { return a.rule == b.rule && a.subject == b.subject; }

bool has_harm(const std::vector<Grade>& grades) {
  return std::any_of(grades.begin(), grades.end(), [](const Grade& one) { return one.severity == Severity::harm; });
}

std::vector<std::string> names_of(const std::vector<Change>& changes) {
  std::vector<std::string> names;
  for (const Change& one : changes) names.push_back(one.what);
  std::sort(names.begin(), names.end());
  return names;
}

bool is_within(const std::vector<std::string>& few, const std::vector<std::string>& many) {
  return std::includes(many.begin(), many.end(), few.begin(), few.end());
}

/// What a later step does about the same thing takes the place of what an earlier one did.
void say(std::vector<Said>& said, Said one) {
  std::erase_if(said, [&](const Said& before) { return is_within(before.about, one.about); });
  said.push_back(std::move(one));
}

}  // namespace

struct MendState {
  Plan plan;
  const Catalog& catalog;
  BodyRooms bodies;
  std::vector<Node> open;
  std::vector<std::string> seen;  ///< plans reached, sorted
  std::vector<Grade> hopeless;    ///< what no repair lessens from the start
  std::optional<Node> at;         ///< the plan that is led on from
  std::vector<Repair> repairs;
  std::vector<std::optional<Node>> children;  ///< of the repairs judged so far
  std::vector<Node> sound;                    ///< found, the least costly first
  std::optional<Node> harmless;               ///< the best that only leaves strains
  std::string stays;                          ///< the words of a harm that nothing lessens
  int judged = 0;
  bool ended = false, in_order = true;

  MendState(const Plan& from, const Catalog& all, BodyRooms known) : plan(from), catalog(all), bodies(std::move(known)) {
    Node root{.plan = from, .edits = {}, .said = {}, .grades = grades_of(from, catalog, bodies)};
    if (root.grades.empty())
      ended = true;
    else
      open.push_back(std::move(root));
  }

  bool is_hopeless(const Grade& one) const {
    return std::any_of(hopeless.begin(), hopeless.end(), [&](const Grade& other) { return same_matter(one, other); });
  }
  bool is_sound(const Node& node) const {
    return std::all_of(node.grades.begin(), node.grades.end(), [&](const Grade& one) { return is_hopeless(one); });
  }

  void take_next();
  void judge(const Repair& repair);
  void lead_on();
  void find_hopeless();
  void keep_sound(Node node);
  void keep_harmless(const Node& node);
  void give_up();
};

void MendState::take_next() {
  const auto next =
      std::min_element(open.begin(), open.end(), [](const Node& a, const Node& b) { return a.at_least < b.at_least; });
  Node node = std::move(*next);
  open.erase(next);
  keep_harmless(node);
  if (!node.edits.empty() && is_sound(node)) {
    keep_sound(std::move(node));
    return;
  }
  repairs = repairs_of(node.plan, catalog, bodies, node.said.size() <= all_repairs_to ? RepairsOf::all : RepairsOf::small_things);
  if (repairs.size() > most_repairs) repairs.resize(most_repairs);
  children.clear();
  at = std::move(node);
}

void MendState::keep_sound(Node node) {
  const std::vector<std::string> done = names_of(changes_between(plan, node.plan, catalog));
  for (const Node& other : sound) {
    const std::vector<std::string> others = names_of(changes_between(plan, other.plan, catalog));
    if (is_within(done, others) || is_within(others, done)) return;
  }
  sound.push_back(std::move(node));
  if (sound.size() == most_mends) ended = true;
}

void MendState::keep_harmless(const Node& node) {
  if (has_harm(node.grades) || node.edits.empty()) return;
  const bool better = !harmless || node.grades.size() < harmless->grades.size() ||
                      (node.grades.size() == harmless->grades.size() && node.cost < harmless->cost);
  if (better) harmless = node;
}

void MendState::judge(const Repair& repair) {
  ++judged;
  children.emplace_back();
  Result<Plan> after = apply_patch(at->plan, repair.edits);
  if (!after || !keeps_what_is_pinned(at->plan, *after)) return;
  Node child{.plan = std::move(after.value()), .edits = at->edits, .said = at->said, .grades = {}};
  const std::vector<Change> all = changes_between(plan, child.plan, catalog);
  child.cost = cost_of(all);
  child.edits.insert(child.edits.end(), repair.edits.begin(), repair.edits.end());
  say(child.said, {repair.says, names_of(changes_between(at->plan, child.plan, catalog))});
  child.grades = grades_of(child.plan, catalog, bodies);
  children.back() = std::move(child);
}

/// What no repair lessens is left as it is; a harm among it is the reason why there is no mending.
void MendState::find_hopeless() {
  for (const Grade& one : at->grades) {
    const bool lessened = std::any_of(children.begin(), children.end(),
                                      [&](const auto& child) { return child && !known_before(one, child->grades); });
    if (!lessened) hopeless.push_back(one);
  }
  if (!has_harm(hopeless)) return;
  const Reckoned all = reckon(plan, resolve_stock(plan, catalog), bodies);
  for (const Finding& one : findings_of(facts_of(plan, catalog, all, bodies), Found::Keep::findings_at_once)) {
    const bool is_it = std::any_of(hopeless.begin(), hopeless.end(), [&](const Grade& grade) {
      return grade.severity == Severity::harm && grade.rule == one.rule;
    });
    if (is_it && one.severity == Severity::harm && stays.empty()) stays = one.text;
  }
  ended = true;
}

void MendState::lead_on() {
  if (at->edits.empty()) find_hopeless();
  const double least_cost = 1e-3;  // a repair that costs nothing would be taken for ever
  std::vector<double> costs;
  for (const auto& child : children)
    costs.push_back(child ? std::max(child->cost - at->cost, least_cost) : std::numeric_limits<double>::infinity());
  std::vector<Grade> matters;
  for (const Grade& one : at->grades)
    if (!is_hopeless(one)) matters.push_back(one);

  std::vector<std::vector<std::size_t>> lessened_by(matters.size());
  std::vector<int> lessens(children.size());
  for (std::size_t repair = 0; repair < children.size(); ++repair)
    for (std::size_t i = 0; i < matters.size(); ++i)
      if (children[repair] && !known_before(matters[i], children[repair]->grades)) {
        lessened_by[i].push_back(repair);
        ++lessens[repair];
      }
  std::vector<double> share(matters.size());
  std::size_t chosen = matters.size();
  for (std::size_t i = 0; i < matters.size(); ++i) {
    if (lessened_by[i].empty()) continue;
    share[i] = std::numeric_limits<double>::infinity();
    for (const std::size_t repair : lessened_by[i]) share[i] = std::min(share[i], costs[repair] / lessens[repair]);
    if (chosen == matters.size() || lessened_by[i].size() < lessened_by[chosen].size()) chosen = i;
  }
  if (chosen < matters.size())
    for (const std::size_t repair : lessened_by[chosen]) {
      Node& child = *children[repair];
      const std::string text = plan_json(child.plan);
      const auto place = std::lower_bound(seen.begin(), seen.end(), text);
      if (place != seen.end() && *place == text) continue;
      seen.insert(place, text);
      child.at_least = child.cost;
      for (std::size_t i = 0; i < matters.size(); ++i)
        if (std::any_of(child.grades.begin(), child.grades.end(), [&](const Grade& one) { return same_matter(one, matters[i]); }))
          child.at_least += share[i];
      child.at_least = std::max(child.at_least, at->at_least);
      open.push_back(std::move(child));
    }
  at.reset();
}

/// The search has gone on for long enough: where it has found nothing, groups go until nobody is harmed.
void MendState::give_up() {
  ended = true;
  in_order = false;
  if (!sound.empty()) return;
  std::optional<Cleared> cleared = clear_out(plan, catalog, bodies);
  if (!cleared) return;
  Node node{.plan = std::move(cleared->plan), .edits = std::move(cleared->edits), .said = {}, .grades = {}};
  node.grades = grades_of(node.plan, catalog, bodies);
  node.cost = cost_of(changes_between(plan, node.plan, catalog));
  for (std::string& text : cleared->says) node.said.push_back({std::move(text), {}});
  keep_harmless(node);
}

MendSearch::MendSearch(const Plan& plan, const Catalog& catalog, BodyRooms known)
    : state_(std::make_unique<MendState>(plan, catalog, std::move(known))) {}
MendSearch::MendSearch(MendSearch&&) noexcept = default;
MendSearch& MendSearch::operator=(MendSearch&&) noexcept = default;
MendSearch::~MendSearch() = default;

bool MendSearch::step() {
  MendState& s = *state_;
  if (s.ended) return true;
  if (!s.at) {
    if (s.open.empty())
      s.ended = true;
    else
      s.take_next();
  } else if (s.children.size() < s.repairs.size()) {
    s.judge(s.repairs[s.children.size()]);
  } else {
    s.lead_on();
    if (s.judged >= most_judged && !s.ended) s.give_up();
  }
  return s.ended;
}

Mends MendSearch::found() const {
  const MendState& s = *state_;
  Mends found;
  if (s.ended && !s.stays.empty()) found.why_none = "Nothing that may be changed mends this: " + s.stays + ".";
  found.searched_out = s.ended && s.in_order;
  const auto add = [&](const Node& node) {
    Mend mend{.cost = node.cost, .says = {}, .edits = node.edits, .left = {}, .after = {}};
    for (const Said& one : node.said) mend.says.push_back(one.says);
    for (const Grade& one : node.grades)
      if (std::find(mend.left.begin(), mend.left.end(), one.rule) == mend.left.end()) mend.left.push_back(one.rule);
    Result<Plan> after = take_remedy(s.plan, node.edits);
    mend.after = after ? std::move(after.value()) : node.plan;
    found.mends.push_back(std::move(mend));
  };
  if (!found.why_none.empty()) return found;
  for (const Node& node : s.sound) add(node);
  if (found.mends.empty() && s.ended && s.harmless) add(*s.harmless);
  return found;
}

Mends mend(const Plan& plan, const Catalog& catalog) {
  MendSearch search(plan, catalog);
  while (!search.step()) {
  }
  return search.found();
}

}  // namespace shoalwright
