// SPDX-License-Identifier: MIT
// What an assessment says, put into the words of the screen and the keeper's units: shared by the views and the plan as text.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/look.h"
#include "stocking/stock.h"

namespace shoalwright {

enum class Section { water, room, load, air, company };

/// "water", "room", "load", "air", "company": ids of their headings on the screen.
const char* id_of(Section section);
/// Where a finding is shown. What is not about water, room, load or air is company's.
Section section_of(const Finding& finding);
/// Section that tells more about a margin.
Section section_of_margin(std::string_view margin);

/// A plan with its assessment and its stock resolved, to talk about.
struct Told {
  const Look& look;
  const Plan& plan;
  const Assessment& assessment;
  const MarginTable& margins;
  std::vector<Kept> stock;
};
/// As it is shown; as it is now.
Told told_shown(const Look& look);
Told told_now(const Look& look);

/// Plate numbers of these groups, rising. Species that are not in the stock have none.
std::vector<int> plates_of(const Told& told, const std::vector<std::string>& species);
/// "1, 3" and "1 and 3".
std::string plates_text(const std::vector<int>& plates);
/// "2 harlequin rasboras"; `shortened`: "2 rasboras".
std::string animals_text(const Told& told, const std::string& species, int count, bool shortened = false);

/// One margin as the screen says it: "KH", "2", "°dH over"; "12 cm down", "2", "more harlequin rasboras", "0.5 L/cm".
struct MarginWords {
  std::string margin;  ///< key of FORMATS section 3, or "company"
  std::string name;
  std::string number, words;      ///< animals first where they are counted, else the amount with its unit
  std::string short_words;        ///< the same with the kind's last word alone
  std::string amount;             ///< figure in the keeper's unit, without sign and unit
  std::string state;              ///< "spare", "over", "under", "short", "apart"
  std::string detail;             ///< of margins counted in animals: the amount with its unit
  std::vector<int> plates;        ///< who sets it
  std::optional<Severity> grade;  ///< where it is over: of the finding that says so
  double value = 0;
};
MarginWords margin_words(const Told& told, const Tightest& margin);

/// The margins to list, most pressing first: what is over by grade, then smallest spare for its scale. A company that has
/// something to fix or a strain comes as one of them. What is over but only a note comes last. At most `most`.
std::vector<MarginWords> first_margins(const Told& told, std::size_t most = 6);

/// How many findings of a severity a section has, those marked as known not counted.
int count_of(const Told& told, Section section, Severity severity);
/// Whether the keeper has answered a finding with "I know".
bool is_known(const Plan& plan, const Finding& finding);

}  // namespace shoalwright
