// SPDX-License-Identifier: MIT
#include "app/species_paper.h"

#include <algorithm>

#include "app/card_facts.h"
#include "app/plan_text.h"
#include "app/retold.h"
#include "draw/marks.h"
#include "notebook/say.h"
#include "units/day.h"

namespace shoalwright {

namespace {

struct Paper {
  std::string text;
  void line(const std::string& words) { text += on_one_line(words) + "\n"; }
  void row(const std::string& a, const std::string& b, const std::string& c) {
    text += "| " + on_one_line(a) + " | " + on_one_line(b) + " | " + on_one_line(c) + "\n";
  }
};

void facts(Paper& out, const std::vector<CardFact>& all, CardSources& sources) {
  for (const CardFact& fact : all) {
    const std::string mark = sources.mark(fact.evidence);
    const bool cited = !mark.empty() && mark[0] >= '0' && mark[0] <= '9';
    out.row(fact.name, fact.value, cited ? "source " + mark : mark);
  }
}

}  // namespace

std::string species_paper(const Look& look, const Species& species, const SpeciesPageState::Worked& worked, int today) {
  const Measures& m = look.measures;
  Paper out;
  out.line("# " + capital(display_name(species)));
  out.line(species.name.scientific + (species.name.family.empty() ? "" : ", " + species.name.family) + ". " +
           said_day(today, true) + (look.plan.name.empty() ? "" : ", for " + look.plan.name) + ".");
  out.line("## In this plan");
  out.line(retold(m, shelf_words(worked.answer)) + ".");
  for (const Finding& finding : worked.raised) {
    const About about = about_of(finding.rule);
    out.line("- " + std::string(grade_word(finding.severity)) + ": " + retold(m, finding.text, about) +
             (finding.remedy.empty() ? "." : ". " + retold(m, finding.remedy, about) + "."));
  }
  out.line("## Company");
  constexpr std::size_t most = 12;
  std::vector<std::string> names;
  for (std::size_t i = 0; i < std::min(most, worked.company.good.size()); ++i)
    names.push_back(display_name(*worked.company.good[i].species));
  if (!names.empty()) out.line("Shares its water and temper with " + joined(names) + ".");
  for (std::size_t i = 0; i < std::min<std::size_t>(6, worked.company.poor.size()); ++i)
    out.line("- Not with " + display_name(*worked.company.poor[i].species) + ": " + retold(m, worked.company.poor[i].text) + ".");
  CardSources sources;
  for (const CardChapter& chapter : card_chapters(species, worked.rest, m)) {
    out.line("## " + std::string(chapter.heading));
    out.row("Fact", "Value", "From");
    facts(out, chapter.facts, sources);
  }
  if (const std::vector<CardFact> breeding = breeding_facts(species, worked.rest, m); !breeding.empty()) {
    out.line("## Breeding");
    out.row("Fact", "Value", "From");
    facts(out, breeding, sources);
  }
  out.line("## Take care");
  for (const std::string& caution : card_cautions(species, look.plan.place.region, m)) out.line("- " + caution);
  out.line("## Where it comes from");
  out.line("practice: common practice, no source. memory: from memory, not looked up. yours: your own value.");
  for (std::size_t i = 0; i < sources.cited.size(); ++i) out.line("- Source " + std::to_string(i + 1) + ": " + sources.cited[i]);
  return out.text;
}

}  // namespace shoalwright
