// SPDX-License-Identifier: MIT
// The core alone as a WASM module: text in, text out. Each answer is JSON, {"value": …} or {"error": {"place": …, "sentence":
// …}}, owned by the module and valid until the next call.
#include <emscripten/emscripten.h>

#include <string>

#include "shoalwright.h"

namespace {

using namespace shoalwright;

std::string answer;

const Catalog& catalog() {
  static const Catalog built_in = builtin_catalog();
  return built_in;
}

const char* say(std::string value_json) {
  answer = "{\"value\":" + std::move(value_json) + "}";
  return answer.c_str();
}

const char* say(const Error& error) {
  answer = "{\"error\":{\"place\":" + json_string(error.place) + ",\"sentence\":" + json_string(error.sentence) + "}}";
  return answer.c_str();
}

/// What `tell` says of a plan, or why it is none.
template <class Tell>
const char* about(const Result<Plan>& plan, Tell tell) {
  return plan ? say(tell(*plan)) : say(plan.error());
}

}  // namespace

extern "C" {

/// The assessment of a plan (FORMATS section 3).
EMSCRIPTEN_KEEPALIVE const char* assess(const char* plan_text) {
  return about(read_plan(plan_text), [](const Plan& plan) { return assessment_json(shoalwright::assess(plan, catalog())); });
}

/// What else fits, best first (FORMATS section 6).
EMSCRIPTEN_KEEPALIVE const char* suggest(const char* plan_text) {
  return about(read_plan(plan_text), [](const Plan& plan) { return suggestions_json(suggestions_for(plan, catalog())); });
}

/// The least tanks for the stock.
EMSCRIPTEN_KEEPALIVE const char* least_tank(const char* plan_text) {
  return about(read_plan(plan_text), [](const Plan& plan) { return least_tanks_json(least_tanks(plan, catalog())); });
}

/// The least costly sets of repairs.
EMSCRIPTEN_KEEPALIVE const char* mend(const char* plan_text) {
  return about(read_plan(plan_text), [](const Plan& plan) { return mends_json(shoalwright::mend(plan, catalog())); });
}

/// The best lists for a plan; the time is that of the search.
EMSCRIPTEN_KEEPALIVE const char* fill(const char* plan_text) {
  return about(read_plan(plan_text), [](const Plan& plan) {
    const double start_ms = emscripten_get_now();
    const Filled filled = shoalwright::fill(plan, catalog());
    return filled_json(plan, catalog(), filled, (emscripten_get_now() - start_ms) / 1000);
  });
}

/// The recipe for the water aimed at.
EMSCRIPTEN_KEEPALIVE const char* recipe(const char* plan_text) {
  return about(read_plan(plan_text), [](const Plan& plan) { return recipe_json(recipe_card(plan, catalog())); });
}

/// "#p=…" as a JSON string.
EMSCRIPTEN_KEEPALIVE const char* link_of(const char* plan_text) {
  return about(read_plan(plan_text), [](const Plan& plan) { return json_string(encode_link(plan, catalog())); });
}

/// The plan of a link in canonical form.
EMSCRIPTEN_KEEPALIVE const char* open_link(const char* link) {
  return about(decode_link(link, catalog()), [](const Plan& plan) { return plan_json(plan); });
}

/// The best stock of a problem (FORMATS section 6, `fill --instance`); the time is that of reading it and of the search.
EMSCRIPTEN_KEEPALIVE const char* fill_instance(const char* problem_text) {
  const double start_ms = emscripten_get_now();
  const Result<StockProblem> problem = read_stock_problem(problem_text);
  if (!problem) return say(problem.error());
  const StocksFound found = find_stocks(*problem);
  return say(fill_instance_json(found, (emscripten_get_now() - start_ms) / 1000));
}

}  // extern "C"
