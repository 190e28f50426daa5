// SPDX-License-Identifier: MIT
#include "share/fill_json.h"

#include "share/json_out.h"
#include "units/json.h"

namespace shoalwright {

namespace {

/// Walks over the text's values; the first thing that is not as expected is kept, and what is read after it does not count.
class ProblemReader {
 public:
  std::optional<Error> error;

  void refuse(const std::string& place, const char* expected, const Json* found) {
    if (!error)
      error = Error{place, place + ": " + expected + " is expected, " + (found ? describe(*found) : "nothing") + " is there."};
  }

  const Json* member(const Json& object, const std::string& place, const char* key, Json::Kind kind, const char* expected) {
    const Json* json = object.kind == Json::Kind::object ? find(object, key) : nullptr;
    if (json != nullptr && json->kind == kind) return json;
    refuse(place + "/" + key, expected, json);
    return nullptr;
  }

  double number(const Json& object, const std::string& place, const char* key) {
    const Json* json = member(object, place, key, Json::Kind::number, "a number");
    return json ? json->number : 0;
  }

  int whole(const Json& object, const std::string& place, const char* key) {
    const double value = number(object, place, key);
    if (value >= 0 && value <= most_animals && value == static_cast<int>(value)) return static_cast<int>(value);
    refuse(place + "/" + key, "a whole number from 0 to 1000000", find(object, key));
    return 0;
  }

  std::vector<double> numbers(const Json& object, const std::string& place, const char* key) {
    std::vector<double> values;
    const Json* list = member(object, place, key, Json::Kind::list, "a list of numbers");
    if (list == nullptr) return values;
    for (const Json& item : list->items) {
      if (item.kind != Json::Kind::number) refuse(place + "/" + key, "a list of numbers", &item);
      values.push_back(item.number);
    }
    return values;
  }

  /// Zones, waste, oxygen: as capacities and as needs.
  std::vector<double> amounts(const Json& object, const std::string& place) {
    std::vector<double> values = numbers(object, place, "zone");
    values.push_back(number(object, place, "waste"));
    values.push_back(number(object, place, "oxygen"));
    return values;
  }

  Offer offer(const Json& json, const std::string& place) {
    Offer offer{.least = whole(json, place, "min"),
                .most = whole(json, place, "max"),
                .present = number(json, place, "present"),
                .each = number(json, place, "perFish"),
                .needs = amounts(json, place),
                .water = {}};
    const std::vector<double> low = numbers(json, place, "lo"), high = numbers(json, place, "hi");
    if (low.size() != high.size()) refuse(place + "/hi", "a number for each of lo", find(json, "hi"));
    for (std::size_t i = 0; i < low.size() && i < high.size(); ++i) offer.water.push_back({low[i], high[i]});
    return offer;
  }

  std::pair<int, int> conflict(const Json& json, const std::string& place, std::size_t species) {
    const auto position = [&](const Json& item) {
      return item.kind == Json::Kind::number && item.number >= 0 && item.number < static_cast<double>(species) &&
             item.number == static_cast<int>(item.number);
    };
    if (json.items.size() == 2 && position(json.items[0]) && position(json.items[1]))
      return {static_cast<int>(json.items[0].number), static_cast<int>(json.items[1].number)};
    refuse(place, "a pair of positions in the list of species", &json);
    return {};
  }
};

}  // namespace

Result<StockProblem> read_stock_problem(std::string_view text) {
  const Result<Json> root = parse_json(text);
  if (!root) return root.error();
  ProblemReader reader;
  const Json* format = reader.member(*root, "", "format", Json::Kind::text, "\"choose-groups-1\"");
  if (format && format->text != "choose-groups-1") reader.refuse("/format", "\"choose-groups-1\"", format);
  StockProblem problem;
  problem.most_species = reader.whole(*root, "", "K");
  if (const Json* caps = reader.member(*root, "", "caps", Json::Kind::object, "an object"))
    problem.capacities = reader.amounts(*caps, "/caps");
  if (const Json* axes = reader.member(*root, "", "water", Json::Kind::list, "a list"))
    for (std::size_t i = 0; i < axes->items.size(); ++i) {
      const std::string place = "/water/" + std::to_string(i);
      problem.water.push_back({reader.number(axes->items[i], place, "lo"), reader.number(axes->items[i], place, "hi")});
    }
  if (const Json* species = reader.member(*root, "", "species", Json::Kind::list, "a list"))
    for (std::size_t i = 0; i < species->items.size() && !reader.error; ++i)
      problem.species.push_back(reader.offer(species->items[i], "/species/" + std::to_string(i)));
  if (const Json* conflicts = reader.member(*root, "", "conflicts", Json::Kind::list, "a list"))
    for (std::size_t i = 0; i < conflicts->items.size() && !reader.error; ++i)
      problem.conflicts.push_back(
          reader.conflict(conflicts->items[i], "/conflicts/" + std::to_string(i), problem.species.size()));
  if (reader.error) return *reader.error;
  if (const std::optional<Error> error = problem_error(problem)) return *error;
  return problem;
}

std::string fill_instance_json(const StocksFound& found, double seconds) {
  JsonOut out;
  out.begin_object().key("optimum");
  const StockFound* best = found.stocks.empty() ? nullptr : &found.stocks.front();
  if (best)
    out.value(best->score);
  else
    out.null();
  out.member("proven", found.proven).key("chosen");
  if (best) {
    out.begin_object();
    for (const GroupChosen& group : best->groups) out.member(std::to_string(group.species), group.count);
    out.end_object();
  } else {
    out.null();
  }
  out.member("seconds", seconds).end_object();
  return out.text();
}

}  // namespace shoalwright
