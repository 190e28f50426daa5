// SPDX-License-Identifier: MIT
#include "tool/commands.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <iterator>
#include <string_view>

#include "catalog/builtin.h"
#include "shoalwright.h"
#include "stocking/stock.h"
#include "support/check_table.h"

namespace shoalwright {

namespace {

constexpr int bad_input = 2, our_fault = 1;

Answer refuse(const Error& error) { return Answer{.code = bad_input, .error = error.sentence}; }

/// A whole file; "-" is stdin.
Result<std::string> read_file(const std::string& path) {
  std::FILE* file = path == "-" ? stdin : std::fopen(path.c_str(), "rb");
  if (file == nullptr) return Error{.place = "", .sentence = "The file " + path + " cannot be opened."};
  std::string text;
  char buffer[65536];
  for (std::size_t got; (got = std::fread(buffer, 1, sizeof buffer, file)) > 0;) text.append(buffer, got);
  const bool failed = std::ferror(file) != 0;
  if (file != stdin) std::fclose(file);
  if (failed) return Error{.place = "", .sentence = "The file " + path + " cannot be read."};
  return text;
}

Result<Plan> read_plan_file(const std::string& path) {
  const Result<std::string> text = read_file(path);
  return text ? read_plan(*text) : Result<Plan>(text.error());
}

/// A command that answers about a plan.
struct OfPlan {
  std::string_view command;
  std::string (*answer)(const Plan& plan, const Catalog& catalog);
};
constexpr OfPlan of_plan[] = {
    {"assess", [](const Plan& plan, const Catalog& catalog) { return assessment_json(assess(plan, catalog)); }},
    {"suggest", [](const Plan& plan, const Catalog& catalog) { return suggestions_json(suggestions_for(plan, catalog)); }},
    {"least-tank", [](const Plan& plan, const Catalog& catalog) { return least_tanks_json(least_tanks(plan, catalog)); }},
    {"mend", [](const Plan& plan, const Catalog& catalog) { return mends_json(mend(plan, catalog)); }},
    {"recipe", [](const Plan& plan, const Catalog& catalog) { return recipe_json(recipe_card(plan, catalog)); }},
    {"link", [](const Plan& plan, const Catalog& catalog) { return encode_link(plan, catalog); }},
};

const OfPlan* find_of_plan(std::string_view command) {
  const auto at = std::find_if(std::begin(of_plan), std::end(of_plan), [&](const OfPlan& one) { return one.command == command; });
  return at == std::end(of_plan) ? nullptr : at;
}

/// The best lists for a plan; the time is that of the search.
Answer fill_file(const Catalog& catalog, const std::string& path) {
  const Result<Plan> plan = read_plan_file(path);
  if (!plan) return refuse(plan.error());
  const auto start = std::chrono::steady_clock::now();
  const Filled filled = fill(*plan, catalog);
  const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
  return Answer{.out = filled_json(*plan, catalog, filled, seconds)};
}

/// The best stock of a problem; the time is that of reading it and of the search.
Answer fill_instance(const std::string& path) {
  const auto start = std::chrono::steady_clock::now();
  const Result<std::string> text = read_file(path);
  if (!text) return refuse(text.error());
  const Result<StockProblem> problem = read_stock_problem(*text);
  if (!problem) return refuse(problem.error());
  const StocksFound found = find_stocks(*problem);
  return Answer{.out =
                    fill_instance_json(found, std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count())};
}

/// How many of a kind the plan can hold, and what stops the next one.
Answer largest_in_file(const Catalog& catalog, const std::string& path, const std::string& name) {
  const Result<Plan> plan = read_plan_file(path);
  if (!plan) return refuse(plan.error());
  Plan asked = *plan;  // the name means what it would mean in the plan, whose own cards win over the catalogue's
  asked.stock = {Group{.species = name, .count = 1}};
  const Species* species = resolve_stock(asked, catalog).front().species;
  if (species == nullptr)
    return refuse(Error{.place = "", .sentence = "The catalogue has no species " + json_string(name) + "."});
  const Largest largest = largest_count(*plan, catalog, *species);
  std::string rules;
  for (const std::string& rule : largest.stopped_by) rules += (rules.empty() ? "" : ",") + json_string(rule);
  return Answer{.out = "{\"count\":" + (largest.count ? std::to_string(*largest.count) : "null") + ",\"stopped_by\":[" + rules +
                       "]}"};
}

Answer open_link(const Catalog& catalog, const std::string& link) {
  const Result<std::string> text = link == "-" ? read_file(link) : Result<std::string>(link);
  if (!text) return refuse(text.error());
  const Result<Plan> plan = decode_link(*text, catalog);
  if (!plan) return refuse(plan.error());
  return Answer{.out = plan_json(*plan)};
}

Answer check_file(const std::string& path) {
  const Result<std::string> text = read_file(path);
  if (!text) return refuse(text.error());
  const Result<std::vector<CheckRow>> rows = read_check_table(*text);
  if (!rows) return refuse(rows.error());
  const CheckReport report = check_table(*rows);
  Answer answer{.code = report.failed > 0 ? our_fault : 0};
  for (const std::string& line : report.lines) answer.out += line + '\n';
  answer.out += std::to_string(report.passed) + " passed, " + std::to_string(report.failed) + " failed";
  return answer;
}

}  // namespace

Answer run_command(const std::vector<std::string>& arguments) {
  const std::string command = arguments.empty() ? "" : arguments[0];
  const bool instance = command == "fill" && arguments.size() == 3 && arguments[1] == "--instance";
  const OfPlan* about_plan = find_of_plan(command);
  const bool of_one = about_plan || command == "fill" || command == "open" || command == "check";
  const bool known = instance || (command == "largest" && arguments.size() == 3) ||
                     (of_one && arguments.size() == 2 && arguments[1] != "--instance");
  if (!known)
    return Answer{.code = bad_input,
                  .error =
                      "Use: shoal assess PLAN.json, shoal suggest PLAN.json, shoal largest PLAN.json SPECIES, shoal least-tank "
                      "PLAN.json, shoal mend PLAN.json, shoal recipe PLAN.json, shoal fill PLAN.json, shoal fill --instance "
                      "FILE, shoal link PLAN.json, shoal open LINK or shoal check TABLE.csv; - reads stdin."};
  if (instance) return fill_instance(arguments[2]);
  if (command == "check") return check_file(arguments[1]);
  const Catalog catalog = builtin_catalog();
  if (about_plan) {
    const Result<Plan> plan = read_plan_file(arguments[1]);
    return plan ? Answer{.out = about_plan->answer(*plan, catalog)} : refuse(plan.error());
  }
  if (command == "largest") return largest_in_file(catalog, arguments[1], arguments[2]);
  if (command == "fill") return fill_file(catalog, arguments[1]);
  return open_link(catalog, arguments[1]);
}

}  // namespace shoalwright
