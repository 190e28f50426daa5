// SPDX-License-Identifier: MIT
#include "app/plan_text.h"

#include "app/retold.h"
#include "app/rule_words.h"
#include "app/say.h"
#include "draw/marks.h"
#include "tank/glass.h"
#include "tank/volume.h"
#include "units/text.h"

namespace shoalwright {

namespace {

void line(std::string& out, const std::string& text) { out += text + "\n"; }

std::string tank_line(const Told& told) {
  const Measures& measures = told.look.measures;
  Tank outside = outside_of(told.plan.tank);
  const double height_cm = outside.height_cm;
  outside.glass_mm = 0;
  const Volume& volume = told.assessment.volume;
  return "Tank " + measures.size(inside_length_cm(outside), inside_width_cm(outside), height_cm) + " outside, " +
         measures.volume(volume.gross_l) + " to the rim, " + measures.volume(volume.net_l) + " of water, about " +
         measures.mass(volume.filled_mass_kg) + " filled.";
}

void add_stock(std::string& out, const Told& told) {
  line(out, "## In the tank");
  if (told.stock.empty()) {
    line(out, "No animals yet.");
    return;
  }
  line(out, "| Number | Kind | How many | Swim here | Group");
  int number = 0;
  for (const Kept& kept : told.stock) {
    ++number;
    std::string name = kept.id, group = "not in the catalogue";
    if (kept.species != nullptr) {
      name = name_of_species(told.look, kept.id);
      const Species::Life::Group& least = kept.species->life.group;
      group = "least " + std::to_string(least.least) + ", good " + std::to_string(least.good);
      if (name != kept.species->name.scientific) name += " (" + kept.species->name.scientific + ")";
    }
    line(out, "| " + std::to_string(number) + " | " + on_one_line(name) + " | " + std::to_string(kept.count) + " | " +
                  std::to_string(kept.have) + " | " + group);
  }
}

/// What a reader can do to the stock from here.
void add_stock_actions(std::string& out, const Told& told) {
  for (const Kept& kept : told.stock) {
    if (kept.species == nullptr) continue;  // as written it may hold anything; an action is one word
    const std::string name = name_of_species(told.look, kept.id);
    line(out, "! more:" + kept.id + " One more " + name);
    if (kept.count > 1) line(out, "! fewer:" + kept.id + " One fewer " + name);
    line(out, "! take-out:" + kept.id + " Take out " + name);
  }
}

enum class Kind { temperature, ph, gh, kh };

std::string window_text(const Told& told, const char* name, const Window& window, Kind kind) {
  const Measures& measures = told.look.measures;
  const bool temperature = kind == Kind::temperature;
  const Hardness hardness = kind == Kind::gh ? Hardness::gh : Hardness::kh;
  const auto bare = [&](double value) {
    return kind == Kind::ph ? short_text(value, 1) : measures.hardness_figure(value, hardness);
  };
  const auto figure = [&](double value) {
    return temperature ? measures.temperature(value) : kind == Kind::ph ? bare(value) : measures.hardness(value, hardness);
  };
  std::string text = std::string("- ") + name + ": ";
  if (window.low_by.empty())
    text += "no figures";
  else if (!window.tolerated)
    text += "no window suits all";
  else
    text += (temperature ? measures.temperatures(window.tolerated->low, window.tolerated->high)
                         : bare(window.tolerated->low) + " to " + figure(window.tolerated->high)) +
            " suits all";
  return text + (window.now ? "; the tank has " + figure(*window.now) : "; not known");
}

void add_margins(std::string& out, const Told& told) {
  if (told.assessment.tightest.empty()) return;
  line(out, "## What gives first");
  for (const MarginWords& words : first_margins(told, 100)) {
    std::string text = "- " + words.name + ": " + words.number + " " + words.words;
    if (!words.detail.empty()) text += ", " + words.detail;
    if (!words.plates.empty()) text += "; set by " + plates_text(words.plates);
    if (words.grade) text += " (" + std::string(grade_word(*words.grade)) + ")";
    line(out, text);
  }
}

void add_findings(std::string& out, const Told& told) {
  line(out, "## Findings");
  if (told.assessment.findings.empty()) line(out, "None.");
  for (const Finding& finding : told.assessment.findings) {
    std::string text = std::string("- ") + grade_word(finding.severity) + ": " + finding.text + ". " + finding.why;
    if (!finding.remedy.empty()) text += " What to do: " + finding.remedy + ".";
    text = on_one_line(retold(told.look.measures, text, about_of(finding.rule))) + " " + on_one_line(evidence_words(finding));
    if (is_known(told.plan, finding)) text += " You know about it.";
    line(out, text);
  }
}

}  // namespace

std::string on_one_line(std::string text) {
  for (char& c : text)
    if (c == '\n' || c == '\r' || c == '|') c = ' ';
  return text;
}

std::string plan_text(const Look& look) {
  const Told told = told_now(look);
  std::string out;
  line(out, "# " + (told.plan.name.empty() ? "A plan without a name" : on_one_line(told.plan.name)));
  if (!told.plan.notes.empty()) line(out, on_one_line(told.plan.notes));
  line(out, tank_line(told));
  add_stock(out, told);
  add_stock_actions(out, told);
  line(out, "## Water");
  const Windows& water = told.assessment.water;
  line(out, window_text(told, "Temperature", water.temperature_c, Kind::temperature));
  line(out, window_text(told, "pH", water.ph, Kind::ph));
  line(out, window_text(told, "GH", water.gh_dgh, Kind::gh));
  line(out, window_text(told, "KH", water.kh_dkh, Kind::kh));
  add_margins(out, told);
  add_findings(out, told);
  line(out, "## Take care");
  for (const std::string& caution : told.assessment.cautions) line(out, "- " + on_one_line(retold(look.measures, caution)));
  line(out, "! undo Undo");
  line(out, "! redo Redo");
  line(out, "! share Copy the link of this plan");
  return out;
}

}  // namespace shoalwright
