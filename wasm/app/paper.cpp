// SPDX-License-Identifier: MIT
#include "app/paper.h"

#include <algorithm>
#include <cmath>

#include "app/plan_text.h"
#include "app/retold.h"
#include "plan/more_keys.h"
#include "units/day.h"
#include "units/text.h"

namespace shoalwright {

namespace {

void line(std::string& out, const std::string& text) { out += text + "\n"; }

void begin(std::string& out, const Look& look, const char* what, int day) {
  line(out, std::string("# ") + what + (look.plan.name.empty() ? "" : ": " + on_one_line(look.plan.name)));
  line(out, said_day(day, true) + ", " + look.measures.volume(look.now.volume.net_l) + " of water in the tank.");
}

void say_cautions(std::string& out, bool salts) {
  line(out, "## Take care");
  line(out, "- Never add acid to lower pH.");
  if (salts) {
    line(out, "- Salts: gloves and glasses, out of children’s reach. Weigh them, dissolve them in a jug, add them slowly.");
    line(out, "- Where your test kit says otherwise, the kit is right.");
  }
  for (const char* caution : {"Unplug before hands go in; cables hang in a loop below the socket.",
                              "A filled tank is very heavy: ask before you place a large one. Move it only empty.",
                              "Cover cuts, wash hands, start the siphon with a pump, never by mouth.",
                              "Test before adding animals; ammonia and nitrite must read zero.",
                              "Find the cause before any medicine; ask a vet or experienced keeper.",
                              "Never release animals, plants or tank water. Re-home them."})
    line(out, std::string("- ") + caution);
}

}  // namespace

std::string recipe_paper(const Look& look, const RecipeCard& card, std::size_t steps, int first_day) {
  const Measures& m = look.measures;
  std::string out;
  begin(out, look, "Water for a change", first_day);
  line(out, "New water: " + m.volume(card.for_l) + ", every " + short_text(card.every_days, 1) +
                (card.every_days == 1 ? " day." : " days."));
  line(out, "## Do this");
  for (std::size_t i = 0; i < card.says.size(); ++i) {
    if (i == steps) line(out, "## What to expect");
    line(out, (i < steps ? std::to_string(i + 1) + ". " : "- ") + on_one_line(retold(m, card.says[i])));
  }
  if (is_private(look.plan.source)) line(out, "- Private water: have it tested for nitrate and metals.");
  if (!card.way.steps.empty() && card.way.changes != 0) {
    line(out, "## The way there");
    line(out, "| Day | Change | GH after, " + std::string(m.hardness_unit(Hardness::gh)) + " | KH after, " +
                  m.hardness_unit(Hardness::kh));
    constexpr std::size_t most = 20;
    for (std::size_t i = 0; i < std::min(card.way.steps.size(), most); ++i) {
      const ChangeStep& step = card.way.steps[i];
      const double litres = card.fraction > 0 ? card.for_l * step.fraction / card.fraction : card.for_l;
      const int day = first_day + static_cast<int>(std::round(static_cast<double>(i) * card.every_days));
      line(out, "| " + said_day(day, true) + " | " + m.volume(litres) + " | " +
                    m.hardness_figure(step.after.gh_dgh.value_or(0), Hardness::gh) + " | " +
                    m.hardness_figure(step.after.kh_dkh.value_or(0), Hardness::kh));
    }
    if (card.way.buckets.size() > 1) line(out, "The first of these changes have weaker buckets: see the Water page.");
  }
  say_cautions(out, !card.salts.empty());
  return out;
}

std::string first_help_paper(const Look& look, const FirstHelp& help, int today) {
  const Measures& m = look.measures;
  std::string out;
  begin(out, look, "First help", today);
  std::vector<std::string> says = help.says;
  // Chlorine in the first bucket would undo all the rest.
  std::stable_partition(says.begin(), says.end(),
                        [](const std::string& one) { return one.find("conditioner") != std::string::npos; });
  line(out, "## Do this");
  for (std::size_t i = 0; i < says.size(); ++i) line(out, std::to_string(i + 1) + ". " + on_one_line(retold(m, says[i])));
  if (!help.changes.empty()) {
    line(out, "## Changes of water");
    line(out, "| Day | Change | Free ammonia before, mg/L | after");
    const auto figure = [](const std::optional<double>& mg_l) { return mg_l ? short_text(*mg_l, 3) : std::string("not tested"); };
    for (const HelpChange& change : help.changes)
      line(out, "| " + said_day(today + change.day, true) + " | " + m.volume(change.litres) + " | " +
                    figure(change.nh3_before_mg_l) + " | " + figure(change.nh3_after_mg_l));
    line(out, "The tests of each day decide whether it is changed.");
  }
  say_cautions(out, false);
  return out;
}

}  // namespace shoalwright
