// SPDX-License-Identifier: MIT
#include "views/own_fields.h"

#include <algorithm>
#include <cmath>

#include "app/card_facts.h"
#include "app/retold.h"
#include "catalog/card_edit.h"
#include "catalog/card_words.h"
#include "draw/chips.h"
#include "draw/fields.h"
#include "draw/menus.h"
#include "draw/panels.h"
#include "notebook/say.h"
#include "views/sheet_card.h"

namespace shoalwright {

namespace {

constexpr float row_height = 34, control = 168, range_width = 188;

std::string spot_of(const OwnField& field) { return std::string("own.") + field.path; }

/// The keeper's count of a metric value, and back.
struct Unit {
  const Measures& m;
  Counts counts;

  double out(double v) const {
    switch (counts) {
      case Counts::length: return m.length_out(v);
      case Counts::volume: return m.volume_out(v);
      case Counts::temperature: return m.temperature_out(v);
      case Counts::gh: return m.hardness_out(v, Hardness::gh);
      case Counts::kh: return m.hardness_out(v, Hardness::kh);
      case Counts::share: return v * 100;
      case Counts::plain:
      case Counts::whole: break;
    }
    return v;
  }
  double in(double shown) const {
    switch (counts) {
      case Counts::length: return m.length_in(shown);
      case Counts::volume: return m.volume_in(shown);
      case Counts::temperature: return m.temperature_in(shown);
      case Counts::gh: return m.hardness_back(shown, Hardness::gh);
      case Counts::kh: return m.hardness_back(shown, Hardness::kh);
      case Counts::share: return shown / 100;
      case Counts::plain:
      case Counts::whole: break;
    }
    return shown;
  }
  const char* word() const {
    switch (counts) {
      case Counts::length: return m.length_unit();
      case Counts::volume: return m.volume_unit();
      case Counts::temperature: return m.temperature_unit();
      case Counts::gh: return m.short_hardness_unit(Hardness::gh);
      case Counts::kh: return m.short_hardness_unit(Hardness::kh);
      case Counts::share: return "%";
      case Counts::plain:
      case Counts::whole: break;
    }
    return "";
  }
  int decimals(int metric) const {
    if (counts == Counts::gh || counts == Counts::kh) return m.hardness_decimals();
    return counts == Counts::length && m.us ? std::max(metric, 1) : metric;
  }
};

bool draw_number(OwnForm& form, const std::string& id, const Box& box, const OwnField& field, std::optional<double>& value,
                 const std::string& label) {
  const Unit unit{form.look.measures, field.counts};
  std::optional<double> shown;
  if (value) shown = unit.out(*value);
  // Of a range the unit stands in its name: its fields are narrow.
  const char* word = field.ask == Ask::range ? "" : unit.word();
  if (!optional_field(form.ui, id, box, shown, label, word, unit.decimals(field.decimals), "–", field.step)) return false;
  value = shown ? std::optional(unit.in(*shown)) : std::nullopt;
  return true;
}

void draw_range(OwnForm& form, const Box& box, const OwnField& field, const std::string& label) {
  auto [low, high] = card_range(form.card, field.path);
  const float half = std::floor((box.w - 22) / 2);
  const Box left{box.x, box.y, half, box.h}, right{box.right() - half, box.y, half, box.h};
  bool changed = draw_number(form, spot_of(field) + "/low", left, field, low, label + ", from");
  draw_text(pen_of(form.ui), type::small, {box.x + box.w / 2, box.y + 6}, form.ui.palette->ink2, "to", Align::centre);
  changed |= draw_number(form, spot_of(field) + "/high", right, field, high, label + ", to");
  if (changed) set_card_range(form.card, field.path, low, high);
}

std::string said(std::string_view path, std::string_view word) { return word.empty() ? "not known" : said_word(path, word); }

void draw_choice(OwnForm& form, const Box& box, const OwnField& field, const std::vector<std::string>& words,
                 const std::vector<std::string>& shown) {
  const std::string now = card_text(form.card, field.path);
  const auto at = std::find(words.begin(), words.end(), now);
  const int chosen = at == words.end() ? 0 : static_cast<int>(at - words.begin());
  std::vector<std::string_view> views(shown.begin(), shown.end());
  const int picked = select(form.ui, spot_of(field), box, views, chosen, field.name);
  if (picked >= 0 && picked != chosen) set_card_text(form.card, field.path, words[static_cast<std::size_t>(picked)]);
}

void draw_ratio(OwnForm& form, const Box& box, const OwnField& field) {
  std::vector<std::string> words{"", "1m:1f", "1m:2f", "1m:3f", "1m:4f", "2m:1f"};
  std::vector<std::string> shown{
      "Any", "1 male to 1 female", "1 male to 2 females", "1 male to 3 females", "1 male to 4 females", "2 males to 1 female"};
  const std::string now = card_text(form.card, field.path);
  if (std::find(words.begin(), words.end(), now) == words.end()) {
    words.push_back(now);
    shown.push_back(now);
  }
  draw_choice(form, box, field, words, shown);
}

bool may_be_empty(std::string_view path) {
  for (const char* always : {"life.style", "life.group.kind", "kind", "group"})
    if (path == always) return false;
  return true;
}

std::string_view unit_of_bounds(Counts counts) {
  switch (counts) {
    case Counts::length: return " cm";
    case Counts::volume: return " L";
    case Counts::temperature: return " °C";
    case Counts::gh:
    case Counts::kh: return " °dH";
    case Counts::plain:
    case Counts::whole:
    case Counts::share: break;
  }
  return "";
}

}  // namespace

void own_heading(OwnForm& form, Stack& stack, const char* words) {
  draw_text(pen_of(form.ui), semibold(type::body), {stack.box.x, stack.y() + 8}, form.ui.palette->ink, words);
  stack.skip(32);
}

std::string own_error(const OwnForm& form, const OwnField& field) {
  std::string place = "/" + std::string(field.path);
  std::replace(place.begin(), place.end(), '.', '/');
  // The three shares have one sentence, under the last of them.
  const bool last_share = place == "/life/depth/bottom";
  for (const Error& error : form.errors) {
    const bool of_all = last_share && error.place == "/life/depth";
    if (error.place != place && !of_all && error.place.compare(0, place.size() + 1, place + "/") != 0) continue;
    std::string words = expectation_of(error);
    if (words == "is missing" || words == "has to hold at least one name") {
      if (!form.tried) return "";
      return std::string(field.name) + " is needed.";
    }
    if (of_all) return "The three shares have to sum to 100 %.";
    if (words == "has to lie inside tolerated") return "Has to lie inside what it lives in.";
    if (field.counts == Counts::share) return "Has to be 0 to 100 %.";
    if (words.find("two numbers") != std::string::npos) words = "needs both ends, " + words.substr(words.rfind(", ") + 2);
    const Hardness hardness = field.counts == Counts::kh ? Hardness::kh : Hardness::gh;
    if (!words.empty() && words.back() >= '0' && words.back() <= '9') words += unit_of_bounds(field.counts);
    return capital(retold(form.look.measures, words, {.nitrate = false, .hardness = hardness})) + ".";
  }
  return "";
}

void draw_own_error(OwnForm& form, Stack& stack, const OwnField& field) {
  const std::string words = own_error(form, field);
  if (words.empty()) return;
  const Pen pen = pen_of(form.ui);
  const float top = stack.y();
  stack.skip(draw_wrapped(pen, medium(type::small), {stack.box.x, top}, stack.box.w, form.ui.palette->call, words) + 6);
  add_spot(form.ui, std::string("own.error/") + field.path, {stack.box.x, top, stack.box.w, stack.y() - top}, words);
}

void draw_own_word(OwnForm& form, const Box& box, const OwnField& field) {
  std::vector<std::string> words, shown;
  if (may_be_empty(field.path)) words.emplace_back();
  for (const std::string_view word : words_for(field.path)) words.emplace_back(word);
  for (const std::string& word : words) shown.push_back(capital(said(field.path, word)));
  draw_choice(form, box, field, words, shown);
}

void draw_own_chips(OwnForm& form, Stack& stack, const OwnField& field) {
  const Pen pen = pen_of(form.ui);
  draw_text(pen, type::body, {stack.box.x, stack.y() + 4}, form.ui.palette->ink, field.name);
  stack.skip(26);
  std::vector<std::string> on = card_texts(form.card, field.path);
  Flow flow{.x = stack.box.x, .y = stack.y(), .width = stack.box.w};
  for (const std::string_view word : words_for(field.path)) {
    const std::string words = spaced_word(std::string(word));
    const auto at = std::find(on.begin(), on.end(), word);
    const bool is_on = at != on.end();
    const ChipLook look{.tight = true};
    if (!chip(form.ui, spot_of(field) + "/" + std::string(word), flow.take(chip_width(form.ui, words, look)).min(), words, is_on,
              look))
      continue;
    if (is_on)
      on.erase(at);
    else
      on.emplace_back(word);
    // "none" says that there are no others.
    if (!is_on) std::erase_if(on, [&](const std::string& one) { return one != word && (one == "none" || word == "none"); });
    if (on.empty() && words_for(field.path).front() == "none") on.emplace_back("none");
    set_card_texts(form.card, field.path, on);
    break;
  }
  stack.skip(flow.height() + 8);
}

namespace {

void draw_text_field(OwnForm& form, const Box& box, const OwnField& field) {
  const bool name = field.path == std::string_view("name.common");
  std::string text = name ? card_name(form.card) : card_text(form.card, field.path);
  const std::string before = text;
  const bool note = field.path == std::string_view("note");
  text_field(form.ui, spot_of(field), box, text, field.name,
             {.placeholder = name ? "What you call it" : "", .most_bytes = note ? 600 : 120});
  if (text == before) return;
  if (name)
    set_card_name(form.card, text);
  else
    set_card_text(form.card, field.path, text);
}

void draw_field(OwnForm& form, Stack& stack, const OwnField& field) {
  if (field.ask == Ask::words) return draw_own_chips(form, stack, field);
  const bool wide_text = field.ask == Ask::text;
  const Box row = stack.take(row_height);
  // "thrives in" and "in the middle" go on from the row above.
  const bool goes_on = field.name[0] >= 'a' && field.name[0] <= 'z' && field.name[0] != 'p';
  Box name_row = row;
  if (goes_on) name_row.cut_left(14);
  const float width = wide_text ? std::max(control, row.w * 0.58f) : field.ask == Ask::range ? range_width : control;
  const std::string label = goes_on ? capital(field.name) : field.name;
  std::string shown = field.name;
  if (field.ask == Ask::range && !goes_on)
    if (const char* unit = Unit{form.look.measures, field.counts}.word(); *unit != 0) shown += ", " + std::string(unit);
  const Box box = sheet_row(form.ui, name_row, shown, width);
  switch (field.ask) {
    case Ask::text: draw_text_field(form, box, field); break;
    case Ask::word: draw_own_word(form, box, field); break;
    case Ask::ratio: draw_ratio(form, box, field); break;
    case Ask::range: draw_range(form, box, field, label); break;
    case Ask::yes: {
      const bool on = card_flag(form.card, field.path);
      constexpr std::string_view words[] = {"No", "Yes"};
      const int chosen = one_of(form.ui, spot_of(field), {box.right() - 88, box.y + 1}, words, on ? 1 : 0, 88);
      if (chosen >= 0 && (chosen == 1) != on) set_card_flag(form.card, field.path, chosen == 1);
      break;
    }
    case Ask::number: {
      std::optional<double> value = card_number(form.card, field.path);
      const Box narrow{box.right() - 96, box.y, 96, box.h};
      if (draw_number(form, spot_of(field), narrow, field, value, label)) set_card_number(form.card, field.path, value);
      break;
    }
    case Ask::words: break;
  }
}

}  // namespace

void draw_own_chapter(OwnForm& form, Stack& stack, const OwnChapter& chapter) {
  own_heading(form, stack, chapter.heading);
  for (const OwnField& field : chapter.fields) {
    draw_field(form, stack, field);
    draw_own_error(form, stack, field);
  }
  stack.skip(6);
}

}  // namespace shoalwright
