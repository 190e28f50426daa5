// SPDX-License-Identifier: MIT
#include "edit/losses.h"

#include <algorithm>
#include <cmath>

#include "catalog/plural.h"
#include "edit/command.h"
#include "edit/detail/lines.h"
#include "plan/check.h"
#include "units/json.h"

namespace shoalwright {

namespace {

Json text_json(std::string_view text) {
  Json json;
  json.kind = Json::Kind::text;
  json.text = text;
  return json;
}

Json number_json(int number) {
  Json json;
  json.kind = Json::Kind::number;
  json.number = number;
  json.text = std::to_string(number);
  return json;
}

Json* member(Json& object, std::string_view key) {
  for (JsonMember& one : object.members)
    if (one.key == key) return &one.value;
  return nullptr;
}

void set_member(Json& object, std::string_view key, Json value) {
  if (Json* there = member(object, key))
    *there = std::move(value);
  else
    object.members.push_back({std::string(key), std::move(value)});
}

/// The log as a list; an empty one where there is none or it cannot be read.
Json log_of(const Plan& plan) {
  Json empty;
  empty.kind = Json::Kind::list;
  if (plan.log_json.empty()) return empty;
  const Result<Json> log = parse_json(plan.log_json);
  return log && log->kind == Json::Kind::list ? *log : empty;
}

int count_in(Json& loss) {
  const Json* count = member(loss, "count");
  return count && count->kind == Json::Kind::number && count->number >= 1 && count->number <= most_count
             ? static_cast<int>(std::floor(count->number))
             : 0;
}

/// Calls `use(entry, loss)` for each loss of a species that waits for an answer, latest first.
template <class Use>
void each_open(Json& log, const Plan& plan, const Catalog& catalog, const std::string& species, Use use) {
  const std::string wanted = resolved(plan, catalog, species);
  for (auto entry = log.items.rbegin(); entry != log.items.rend(); ++entry) {
    Json* lost = entry->kind == Json::Kind::object ? member(*entry, "lost") : nullptr;
    if (!lost || lost->kind != Json::Kind::list) continue;
    for (Json& loss : lost->items) {
      const Json* of = loss.kind == Json::Kind::object ? member(loss, "species") : nullptr;
      if (of && of->kind == Json::Kind::text && !member(loss, "answered") && resolved(plan, catalog, of->text) == wanted)
        use(*entry, loss);
    }
  }
}

void keep(Plan& plan, Json& log) {
  // What was taken back is gone, and so is a day of which nothing else was written.
  for (Json& entry : log.items)
    if (Json* lost = entry.kind == Json::Kind::object ? member(entry, "lost") : nullptr; lost && lost->kind == Json::Kind::list)
      std::erase_if(lost->items, [](Json& loss) {
        const Json* count = loss.kind == Json::Kind::object ? member(loss, "count") : nullptr;
        return count && count->kind == Json::Kind::number && count->number == 0;
      });
  std::erase_if(log.items, [](Json& entry) {
    if (entry.kind != Json::Kind::object) return false;
    const Json* lost = member(entry, "lost");
    return lost && lost->kind == Json::Kind::list && lost->items.empty() && entry.members.size() == 2 && member(entry, "date");
  });
  plan.log_json = log.items.empty() ? "" : dump(log);
}

void add_loss(Plan& plan, const Catalog& catalog, const std::string& species, int count, std::string_view day) {
  Json log = log_of(plan);
  const auto of_day = [&](Json& entry) {
    const Json* date = entry.kind == Json::Kind::object ? member(entry, "date") : nullptr;
    return date && date->kind == Json::Kind::text && date->text == day;
  };
  Json* joined = nullptr;
  each_open(log, plan, catalog, species, [&](Json& entry, Json& loss) {
    if (!joined && of_day(entry)) joined = &loss;
  });
  if (joined) {
    set_member(*joined, "count", number_json(count_in(*joined) + count));
    return keep(plan, log);
  }
  Json loss;
  loss.kind = Json::Kind::object;
  set_member(loss, "species", text_json(resolved(plan, catalog, species)));
  set_member(loss, "count", number_json(count));
  auto entry = std::find_if(log.items.begin(), log.items.end(), of_day);
  if (entry == log.items.end()) {
    Json fresh;
    fresh.kind = Json::Kind::object;
    set_member(fresh, "date", text_json(day));
    log.items.push_back(std::move(fresh));
    entry = log.items.end() - 1;
  }
  Json* lost = member(*entry, "lost");
  if (!lost || lost->kind != Json::Kind::list) {
    Json list;
    list.kind = Json::Kind::list;
    set_member(*entry, "lost", std::move(list));
    lost = member(*entry, "lost");
  }
  lost->items.push_back(std::move(loss));
  keep(plan, log);
}

void take_back(Plan& plan, const Catalog& catalog, const std::string& species, int count) {
  Json log = log_of(plan);
  each_open(log, plan, catalog, species, [&](Json&, Json& loss) {
    const int now = count_in(loss), back = std::min(now, count);
    if (back <= 0) return;
    set_member(loss, "count", number_json(now - back));
    count -= back;
  });
  keep(plan, log);
}

void answer(Plan& plan, const Catalog& catalog, const std::string& species, std::string_view word) {
  Json log = log_of(plan);
  each_open(log, plan, catalog, species, [&](Json&, Json& loss) { set_member(loss, "answered", text_json(word)); });
  keep(plan, log);
}

std::string some(const Plan& plan, const Catalog& catalog, const std::string& species, int count) {
  const Species* known = species_of(plan, catalog, species);
  return std::to_string(count) + " " + (known ? name_for(*known, count) : species);
}

}  // namespace

int open_losses(const Plan& plan, const Catalog& catalog, const std::string& species) {
  if (plan.log_json.empty()) return 0;
  Json log = log_of(plan);
  std::int64_t sum = 0;
  each_open(log, plan, catalog, species, [&](Json&, Json& loss) { sum += count_in(loss); });
  return static_cast<int>(std::min<std::int64_t>(sum, most_count));
}

Plan with_loss(Plan plan, const Catalog& catalog, const std::string& species, int count, std::string_view day) {
  const Total now = total_of(plan, catalog, species);
  const int change = std::clamp(count, -open_losses(plan, catalog, species), now.have);
  if (change == 0) return plan;
  if (change > 0)
    add_loss(plan, catalog, species, change, day);
  else
    take_back(plan, catalog, species, -change);
  if (now.count - change < 1) {
    answer(plan, catalog, species, "taken-out");
    return apply(std::move(plan), TakeOut{species}, catalog);
  }
  plan = apply(std::move(plan), SetCount{species, now.count - change}, catalog);
  return apply(std::move(plan), SetHave{species, now.have - change}, catalog);
}

Plan with_answer(Plan plan, const Catalog& catalog, const std::string& species, LossAnswer to) {
  const int lost = open_losses(plan, catalog, species), count = total_of(plan, catalog, species).count;
  if (lost == 0) return plan;
  switch (to) {
    case LossAnswer::top_up:
      answer(plan, catalog, species, "top-up");
      return apply(std::move(plan), SetCount{species, count + lost}, catalog);
    case LossAnswer::run_out: answer(plan, catalog, species, "run-out"); return plan;
    case LossAnswer::re_home: answer(plan, catalog, species, "re-home"); return apply(std::move(plan), TakeOut{species}, catalog);
  }
  return plan;
}

std::string name_of_loss(const Plan& plan, const Catalog& catalog, const std::string& species, int count) {
  if (count < 0) return some(plan, catalog, species, -count) + " not lost after all";
  return "Lost " + some(plan, catalog, species, count);
}

std::string name_of(LossAnswer answer, const Plan& plan, const Catalog& catalog, const std::string& species) {
  const int left = total_of(plan, catalog, species).count, lost = open_losses(plan, catalog, species);
  switch (answer) {
    case LossAnswer::top_up: return "Top up to " + some(plan, catalog, species, left + lost);
    case LossAnswer::run_out: return "Let " + some(plan, catalog, species, left) + " run out";
    case LossAnswer::re_home: return "Re-home " + some(plan, catalog, species, left);
  }
  return "";
}

}  // namespace shoalwright
