// SPDX-License-Identifier: MIT
#include "search/problem.h"

#include <cmath>

namespace shoalwright {

namespace {

Error wrong(const std::string& place, const char* sentence) { return Error{.place = place, .sentence = place + sentence}; }

bool not_negative(double value) { return std::isfinite(value) && value >= 0; }
bool is_score(double value) { return std::fabs(value) <= greatest_score; }

std::optional<Error> offer_error(const Offer& offer, const StockProblem& problem, const std::string& place) {
  if (!(offer.least >= 1)) return wrong(place + "/least", ": a group has at least one animal.");
  if (!(offer.most <= most_animals)) return wrong(place + "/most", ": more than a million animals.");
  if (!is_score(offer.present)) return wrong(place + "/present", ": not a score of at most 1e9.");
  if (!is_score(offer.each)) return wrong(place + "/each", ": not a score of at most 1e9.");
  if (offer.needs.size() != problem.capacities.size())
    return wrong(place + "/needs", ": one number for each capacity is expected.");
  for (double need : offer.needs)
    if (!not_negative(need)) return wrong(place + "/needs", ": numbers of 0 or more are expected.");
  if (offer.water.size() != problem.water.size()) return wrong(place + "/water", ": one range for each water axis is expected.");
  for (const Range& range : offer.water)
    if (!std::isfinite(range.low) || !std::isfinite(range.high))
      return wrong(place + "/water", ": a range of two numbers is expected.");
  return std::nullopt;
}

}  // namespace

std::optional<Error> problem_error(const StockProblem& problem) {
  const int count = static_cast<int>(problem.species.size());
  if (count > most_offers) return wrong("/species", ": more than 4096 species.");
  if (problem.capacities.size() > most_capacities) return wrong("/capacities", ": more than 64 capacities.");
  if (problem.water.size() > most_axes) return wrong("/water", ": more than 64 water axes.");
  if (!(problem.most_species >= 0)) return wrong("/most_species", ": a number of 0 or more is expected.");
  for (double capacity : problem.capacities)
    if (!not_negative(capacity)) return wrong("/capacities", ": numbers of 0 or more are expected.");
  for (const Range& axis : problem.water)
    if (!std::isfinite(axis.low) || !std::isfinite(axis.high)) return wrong("/water", ": a range of two numbers is expected.");
  for (int i = 0; i < count; ++i)
    if (std::optional<Error> error = offer_error(problem.species[i], problem, "/species/" + std::to_string(i))) return error;
  for (const auto& [a, b] : problem.conflicts)
    if (!(a >= 0 && a < count && b >= 0 && b < count && a != b))
      return wrong("/conflicts", ": two different species of the list are expected.");
  return std::nullopt;
}

}  // namespace shoalwright
