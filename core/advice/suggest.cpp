// SPDX-License-Identifier: MIT
#include "advice/suggest.h"

#include <algorithm>
#include <array>
#include <tuple>

#include "advice/shelf_list.h"
#include "assess/tightest.h"
#include "notebook/say.h"
#include "stocking/encounter.h"
#include "units/order.h"

namespace shoalwright {

namespace {

std::vector<std::string> rules_raised(std::vector<Finding> after, const std::vector<Finding>& before) {
  sort_stable(after,
              [](const Finding& a, const Finding& b) { return std::tie(a.severity, a.rule) < std::tie(b.severity, b.rule); });
  std::vector<std::string> rules;
  for (const Finding& one : after)
    if (one.severity != Severity::note && !known_before(one, before) &&
        std::find(rules.begin(), rules.end(), one.rule) == rules.end())
      rules.push_back(one.rule);
  return rules;
}

int usual_group(const ShelfAnswer& answer) {
  if (answer.fit == ShelfFit::over || !answer.largest) return std::max(answer.in_plan, answer.least);
  const int wanted = answer.in_plan < answer.good ? answer.good : answer.in_plan + 1;
  return std::clamp(wanted, 1, std::max(*answer.largest, 1));
}

SuggestedFit fit_of(const ShelfAnswer& answer) {
  switch (answer.fit) {
    case ShelfFit::spare: return SuggestedFit::fits;
    case ShelfFit::just: return SuggestedFit::close;
    case ShelfFit::over:
    case ShelfFit::unknown: break;
  }
  return SuggestedFit::no;
}

}  // namespace

std::vector<Suggestion> suggestions_for(const Plan& plan, const Catalog& catalog) {
  ShelfSearch shelf(plan, catalog);
  const std::vector<Finding> now = shelf.findings(reckon(plan, resolve_stock(plan, catalog), shelf.bodies()));
  std::vector<Suggestion> all;
  for (const Species* species : shelf_kinds(shelf.plan(), catalog)) {
    Suggestion one{.answer = shelf.answer(*species), .first = {}, .findings = {}};
    one.fit = fit_of(one.answer);
    one.count = std::max(one.answer.room_for.value_or(0), 0);
    const int group = usual_group(one.answer);
    const Reckoned after = shelf.reckoned(*species, group);
    const std::vector<Tightest> margins = tightest_margins(facts_of(plan, catalog, after, shelf.bodies()));
    if (!margins.empty()) one.first = margins.front();
    if (one.fit == SuggestedFit::no)
      one.findings = one.answer.stopped_by;
    else if (group != one.answer.in_plan)
      one.findings = rules_raised(shelf.findings(after), now);
    all.push_back(std::move(one));
  }
  // Of two that would do as well the one that asks for less care.
  constexpr double care = 0.5;
  const auto rank = [](const Suggestion& one) {
    return one.answer.usefulness() - care * static_cast<double>(one.findings.size());
  };
  sort_stable(all, [&](const Suggestion& a, const Suggestion& b) { return a.fit != b.fit ? a.fit < b.fit : rank(a) > rank(b); });
  return all;
}

Lacking lacking_in(const Plan& plan, const Catalog& catalog) {
  constexpr std::array<const char*, 4> names = {"surface", "upper", "middle", "floor"};
  Lacking lacking;
  std::array<bool, 4> used{};
  for (const Kept& kept : resolve_stock(plan, catalog)) {
    if (!kept.species) continue;
    const std::array<bool, 4> levels = levels_in_order(swim_levels(*kept.species));
    for (std::size_t i = 0; i < 4; ++i) used[i] = used[i] || levels[i];
    if (kept.count < kept.species->life.group.good) lacking.groups.push_back(kept.id);
  }
  for (std::size_t i = 0; i < 4; ++i)
    if (!used[i]) lacking.levels.push_back(names[i]);
  return lacking;
}

std::string say_lacking(const Lacking& lacking) {
  if (lacking.nothing()) return "Nothing is missing: every level has its animals, every group its number.";
  if (lacking.levels.size() == 4) return "Nobody swims here yet.";
  std::string text;
  if (!lacking.levels.empty())
    text = "Nobody swims at the " + joined(lacking.levels) + (lacking.levels.size() > 1 ? " levels" : " level");
  if (!lacking.groups.empty())
    text += (text.empty() ? "" : "; ") + std::to_string(lacking.groups.size()) +
            (lacking.groups.size() == 1 ? " group is" : " groups are") + " smaller than is good for " +
            (lacking.groups.size() == 1 ? "it" : "them");
  return text + ".";
}

}  // namespace shoalwright
