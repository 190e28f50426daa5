// SPDX-License-Identifier: MIT
#include <algorithm>

#include "views/species_desk.h"

namespace shoalwright {

namespace {

constexpr float mark_w = 62;

/// Facts one below the other: name, value, where it comes from.
void draw_facts(SpeciesDesk& desk, Stack& stack, std::string_view heading, const std::vector<CardFact>& facts,
                CardSources& sources) {
  const Pen pen = pen_of(desk.ui);
  const Palette& p = *desk.ui.palette;
  const float top = stack.y();
  std::string read(heading);
  if (!heading.empty()) {
    draw_text(pen, semibold(type::small), {stack.box.x, stack.y()}, p.ink, heading);
    stack.skip(20);
  }
  const float name_w = std::floor(std::min(150.0f, stack.box.w * 0.4f)), value_w = stack.box.w - name_w - mark_w - 8;
  for (const CardFact& fact : facts) {
    const std::string mark = sources.mark(fact.evidence);
    const float h =
        std::max(wrapped_height(pen, type::small, fact.name, name_w - 6), wrapped_height(pen, type::small, fact.value, value_w));
    const Box row = stack.take(h + 4);
    draw_wrapped(pen, type::small, row.min(), name_w - 6, p.ink2, fact.name);
    draw_wrapped(pen, type::small, {row.x + name_w, row.y}, value_w, p.ink, fact.value);
    const bool cited = !mark.empty() && mark[0] >= '0' && mark[0] <= '9';
    draw_text(pen, type::axis, {row.right(), row.y + 1}, cited ? p.ink : p.ink3, cited ? "[" + mark + "]" : mark, Align::right);
    read += (read.empty() ? "" : ". ") + fact.name + ": " + fact.value +
            (mark.empty() ? "" : ", " + (cited ? "source " + mark : mark));
  }
  add_spot(desk.ui, "species.facts/" + std::string(heading.empty() ? "Breeding" : heading),
           {stack.box.x, top, stack.box.w, stack.y() - top}, read);
  stack.skip(10);
}

void draw_cautions(SpeciesDesk& desk, Stack& stack) {
  const Pen pen = pen_of(desk.ui);
  const float top = stack.y();
  std::string read;
  for (const std::string& caution : card_cautions(desk.species, desk.look.plan.place.region, desk.look.measures)) {
    pen.dl->AddCircleFilled({stack.box.x + 4, stack.y() + 8}, 2, desk.ui.palette->ink2);
    stack.skip(draw_wrapped(pen, type::small, {stack.box.x + 14, stack.y()}, stack.box.w - 14, desk.ui.palette->ink, caution) +
               4);
    read += (read.empty() ? "" : " ") + caution;
  }
  add_spot(desk.ui, "species.cautions", {stack.box.x, top, stack.box.w, stack.y() - top}, read);
  stack.skip(8);
}

void draw_sources(SpeciesDesk& desk, Stack& stack, const CardSources& sources) {
  species_heading(desk, stack, "Where it comes from");
  species_note(
      desk, stack,
      "[1]: published, below. practice: common practice, no source. memory: from memory, not looked up. yours: your own value.");
  const Pen pen = pen_of(desk.ui);
  for (std::size_t i = 0; i < sources.cited.size(); ++i) {
    const float top = stack.y();
    draw_text(pen, type::small, {stack.box.x, top}, desk.ui.palette->ink, "[" + std::to_string(i + 1) + "]");
    stack.skip(
        draw_wrapped(pen, type::small, {stack.box.x + 30, top}, stack.box.w - 30, desk.ui.palette->ink2, sources.cited[i]) + 3);
    add_spot(desk.ui, "species.source/" + std::to_string(i + 1), {stack.box.x, top, stack.box.w, stack.y() - top},
             sources.cited[i]);
  }
}

}  // namespace

void draw_species_facts(SpeciesDesk& desk, Stack& stack) {
  CardSources sources;
  const RestOfCard& rest = desk.mine.worked.rest;
  const bool wide = stack.box.w >= 560;
  const float gap = 28, half = wide ? std::floor((stack.box.w - gap) / 2) : stack.box.w;
  const std::vector<CardChapter> chapters = card_chapters(desk.species, rest, desk.look.measures);
  species_heading(desk, stack, "The card", "where each value comes from: at the foot");
  Stack columns[2] = {{{stack.box.x, stack.y(), half, 0}}, {{stack.box.x + half + gap, stack.y(), half, 0}}};
  // The first three chapters at the left, the others at the right, so that they are read in order.
  for (std::size_t i = 0; i < chapters.size(); ++i)
    draw_facts(desk, columns[wide && i >= (chapters.size() + 1) / 2 ? 1 : 0], chapters[i].heading, chapters[i].facts, sources);
  stack.skip(std::max(columns[0].at, columns[1].at));

  const std::vector<CardFact> breeding = breeding_facts(desk.species, rest, desk.look.measures);
  if (!breeding.empty()) {
    species_heading(desk, stack, "Breeding");
    draw_facts(desk, stack, "", breeding, sources);
  }
  species_heading(desk, stack, "Take care");
  draw_cautions(desk, stack);
  draw_sources(desk, stack, sources);
}

}  // namespace shoalwright
