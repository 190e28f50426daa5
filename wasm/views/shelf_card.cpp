// SPDX-License-Identifier: MIT
#include "views/shelf_card.h"

#include <algorithm>
#include <array>

#include "draw/geometry.h"
#include "draw/marks.h"
#include "draw/text.h"
#include "notebook/say.h"
#include "units/text.h"

namespace shoalwright {
namespace {

constexpr float card_width = 292, pad = 12, row_height = 20;
constexpr int caution_lines = 5;

struct Axis {
  const char* name;
  Need Species::WaterNeeds::*need;
  Window Windows::*window;
  double from, to;  ///< ends of the drawn axis
  std::optional<Hardness> hardness;
};
constexpr std::array<Axis, 4> axes{{
    {"Temperature", &Species::WaterNeeds::temperature_c, &Windows::temperature_c, 14, 34, {}},
    {"pH", &Species::WaterNeeds::ph, &Windows::ph, 4.5, 9, {}},
    {"GH", &Species::WaterNeeds::gh_dgh, &Windows::gh_dgh, 0, 30, Hardness::gh},
    {"KH", &Species::WaterNeeds::kh_dkh, &Windows::kh_dkh, 0, 20, Hardness::kh},
}};

std::string spaced(std::string word) {
  std::replace(word.begin(), word.end(), '-', ' ');
  return word;
}

std::string range_words(const Axis& axis, const Range& range, const Measures& measures) {
  if (axis.need == &Species::WaterNeeds::temperature_c) return measures.temperatures(range.low, range.high);
  if (axis.hardness) {
    const std::string low = measures.hardness_figure(range.low, *axis.hardness),
                      high = measures.hardness(range.high, *axis.hardness);
    return range.low == range.high ? high : low + " to " + high;
  }
  return span_of(range.low, range.high, 1, "");
}

void draw_axis(const Pen& pen, const Look& look, const Axis& axis, const Need& need, ImVec2 at, float width) {
  const Palette& p = *pen.palette;
  draw_text(pen, medium(type::small), at, p.ink, axis.name);
  if (!need.tolerated) {
    draw_text(pen, type::small, {at.x + width, at.y}, p.ink3, "No figure", Align::right);
    return;
  }
  draw_text(pen, type::small, {at.x + width, at.y}, p.ink, range_words(axis, *need.tolerated, look.measures), Align::right);
  const float x = at.x + 82, w = width - 82 - 84, y = snapped(pen, at.y + 8);
  const auto x_of = [&](double value) {
    return x + static_cast<float>(std::clamp((value - axis.from) / (axis.to - axis.from), 0.0, 1.0)) * w;
  };
  pen.dl->AddRectFilled({x, y - 6}, {x + w, y + 6}, p.sunk, 2);
  const Range lives = *need.tolerated, thrives = need.ideal.value_or(lives);
  pen.dl->AddRectFilled({x_of(lives.low), y - 1}, {x_of(lives.high), y + 1}, p.bandEdge);
  pen.dl->AddRectFilled({x_of(thrives.low), y - 3}, {x_of(thrives.high), y + 3}, p.bandEdge);
  for (const double end : {lives.low, lives.high})
    pen.dl->AddRectFilled({x_of(end) - 0.75f, y - 4}, {x_of(end) + 0.75f, y + 4}, p.bandEdge);
  if (const std::optional<double> now = (look.now.water.*axis.window).now) {
    pen.dl->AddRectFilled({x_of(*now) - 1, y - 7}, {x_of(*now) + 1, y + 7}, p.ink);
    draw_filled_diamond(pen, {x_of(*now), y - 7}, 3.5f, p.ink);
  }
}

}  // namespace

std::string said_company(const Species& species) {
  const Species::Life::Group& group = species.life.group;
  const std::string least = std::to_string(group.least), good = std::to_string(group.good);
  const std::string from = group.good > group.least ? ", good from " + good : "";
  switch (group.kind) {
    case GroupKind::solitary: return "Lives alone";
    case GroupKind::pair: return group.least < 2 ? "Alone or as a pair" : "Lives as a pair";
    case GroupKind::harem: return "One male with females, " + least + " or more" + from;
    case GroupKind::loose: return group.least > 1 ? "Loose company of " + least + " or more" + from : "Loose company" + from;
    case GroupKind::shoal: return "Shoal of " + least + " or more" + from;
    case GroupKind::colony: return "Colony of " + least + " or more" + from;
  }
  return "";
}

std::string said_food(const Species& species) {
  std::vector<std::string> foods;
  for (const std::string& food : species.diet.foods) foods.push_back(spaced(food));
  const std::string eats = joined(foods);
  const std::string kind = capital(spaced(species.diet.kind));
  if (kind.empty()) return capital(eats);
  return eats.empty() ? kind : kind + ": " + eats;
}

std::string said_caution(const Species& species, const Plan& plan) {
  if (species.water.salinity == Salinity::brackish) return "Lives in brackish water; this planner reckons fresh water only.";
  const double runs_weeks = plan.running_weeks.value_or(0);
  if (species.needs.mature_weeks > runs_weeks)
    return "Wants a tank that has run " + std::to_string(species.needs.mature_weeks) + " weeks; this one has run " +
           short_text(runs_weeks, 0) + ".";
  return species.note;
}

void draw_kind_card(const Ui& ui, const Look& look, const Species& species, const Box& row) {
  Pen pen = pen_of(ui);
  pen.dl = ImGui::GetForegroundDrawList();
  pen.dl->_FringeScale = 1 / ui.device_scale;
  const Palette& p = *ui.palette;
  const float inner = card_width - 2 * pad;
  const std::string company = said_company(species), food = said_food(species), caution = said_caution(species, look.plan);
  const std::string family = species.name.family;
  const auto height_of = [&](const std::string& text) {
    return text.empty() ? 0 : wrapped_height(pen, type::small, text, inner) + 4;
  };
  const float height = 10 + 18 + 16 + 8 + 4 * row_height + 6 + height_of(company) + height_of(food) +
                       (caution.empty() ? 0 : 11 + wrapped_height(pen, type::small, caution, inner, caution_lines)) + 6;
  const ImVec2 screen = ImGui::GetIO().DisplaySize;
  const float right = row.right() + 8;
  const float x = right + card_width + 4 <= screen.x ? right : std::max(4.0f, row.x - 8 - card_width);
  const float y = std::clamp(row.y, 4.0f, std::max(4.0f, screen.y - height - 4));
  const Box card{snapped(pen, x), snapped(pen, y), card_width, height};
  draw_panel(pen, card, p.raised, p.edge, 6);
  float at = card.y + 10;
  const float left = card.x + pad;
  const Type head = semibold(type::body);
  draw_text(pen, head, {left, at}, p.ink, elided(pen, head, capital(display_name(species)), inner));
  at += 18;
  const std::string names = family.empty() ? species.name.scientific : species.name.scientific + ", " + family;
  draw_text(pen, italic(type::small), {left, at}, p.ink3, elided(pen, italic(type::small), names, inner));
  at += 16 + 8;
  for (const Axis& axis : axes) {
    draw_axis(pen, look, axis, species.water.*axis.need, {left, at}, inner);
    at += row_height;
  }
  at += 6;
  for (const std::string& text : {company, food})
    if (!text.empty()) at += draw_wrapped(pen, type::small, {left, at}, inner, p.ink2, text) + 4;
  if (caution.empty()) return;
  draw_rule(pen, left, at + 1, card.right() - pad, p.line);
  at += 7;
  draw_wrapped(pen, type::small, {left, at}, inner, p.ink, caution, caution_lines);
}

}  // namespace shoalwright
