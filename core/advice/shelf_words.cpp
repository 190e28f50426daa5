// SPDX-License-Identifier: MIT
#include "advice/shelf.h"
#include "notebook/say.h"

namespace shoalwright {

namespace {

using Measure = ShelfLimit::Measure;

// More than anybody counts on a shelf row.
constexpr int countless = 1000;

std::string number(int n) { return std::to_string(n); }

std::string length(double cm) { return amount(cm, cm < 10 ? 1 : 0, "cm"); }

std::string plates(const ShelfLimit& limit) {
  std::vector<std::string> numbers;
  for (const int plate : limit.with) numbers.push_back(number(plate));
  return joined(numbers);
}

std::string no_room(const std::string& rule) {
  if (rule == "crowding-top") return "No room at the surface";
  if (rule == "crowding-mid") return "No room in the middle";
  if (rule == "crowding-bottom") return "No room on the floor";
  if (rule == "territory") return "No ground left to hold";
  if (rule == "load") return "More waste than changes carry";
  return "Nitrate too high for it";
}

std::string said(const ShelfLimit& limit, int least) {
  switch (limit.measure) {
    case Measure::lane: return "Lane " + length(limit.amount) + " short";
    case Measure::tank_length: return "Tank " + length(limit.amount) + " too short";
    case Measure::tank_width: return "Tank " + length(limit.amount) + " too narrow";
    case Measure::water_height: return "Water " + length(limit.amount) + " too low";
    case Measure::tank_volume: return "Tank " + amount(limit.amount, 0, "L") + " too small";
    case Measure::temperature: return amount(limit.amount, 1, "°C") + (limit.too_high ? " too warm" : " too cold");
    case Measure::ph: return "pH " + amount(limit.amount, 1, "") + (limit.too_high ? " too high" : " too low");
    case Measure::gh: return "GH " + amount(limit.amount, 1, "") + (limit.too_high ? " too hard" : " too soft");
    case Measure::kh: return "KH " + amount(limit.amount, 1, "") + (limit.too_high ? " too high" : " too low");
    case Measure::count:
      if (limit.amount > 0)
        return "Only " + amount(limit.amount, 0, "") + (limit.amount > 1 ? " fit" : " fits") + ", least is " + number(least);
      return no_room(limit.rule);
    case Measure::none: break;
  }
  if (limit.rule == "lid") return "Jumps, and there is no lid";
  if (limit.rule.compare(0, 6, "water-") == 0 && !limit.with.empty()) return limit.text + " with " + plates(limit);
  return limit.text;
}

// "Lane 9 cm short" within a sentence is "lane 9 cm short"; GH, KH and pH stay as they are.
std::string inside(std::string words) {
  if (words.size() > 1 && words[1] >= 'a' && words[1] <= 'z' && words[0] >= 'A' && words[0] <= 'Z')
    words[0] = static_cast<char>(words[0] - 'A' + 'a');
  return words;
}

std::string then(const ShelfAnswer& answer) {
  if (answer.keep_lid_on) return "; jumps, keep the lid on";
  if (answer.then_at_most_c) return ", then " + amount(*answer.then_at_most_c, 1, "°C") + " at most";
  if (answer.then_at_least_c) return ", then " + amount(*answer.then_at_least_c, 1, "°C") + " at least";
  return "";
}

std::string many(int n) { return n < countless ? number(n) : number(countless) + " and more"; }

}  // namespace

std::string shelf_words(const ShelfAnswer& answer) {
  const std::string first = answer.first ? said(*answer.first, answer.least) : "Does not fit";
  if (answer.in_plan > 0) {
    const std::string here = "In the plan: " + number(answer.in_plan);
    if (!answer.room_for) return here;
    if (answer.largest == 0) return here + "; " + inside(first);
    if (*answer.room_for < 0) return here + ", " + number(-*answer.room_for) + " too many";
    return *answer.room_for == 0 ? here + ", no more" : here + ", room for " + many(*answer.room_for) + " more";
  }
  switch (answer.fit) {
    case ShelfFit::unknown:
      return answer.waits_for_kind ? "Not known: a kind in the plan is not" : "Not known: planting is not given";
    case ShelfFit::over: return first;
    case ShelfFit::spare: return "Room for " + many(*answer.room_for) + then(answer);
    case ShelfFit::just: break;
  }
  const int most = *answer.room_for;
  if (most < answer.least) return number(most) + (most == 1 ? " fits, " : " fit, ") + number(answer.least) + " is the least";
  if (most > answer.least) return number(most) + " fit, " + number(answer.good) + " are better";
  return "Just " + number(most) + ", no more";
}

}  // namespace shoalwright
