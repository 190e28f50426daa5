// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "catalog/species.h"
#include "units/json.h"

namespace shoalwright {

// A keeper's own card while it is being written: JSON after catalog/schema/species.json without `code`, so that fields that no
// form asks for are kept. Fields go by their path, "size.adult_tl_cm". What is emptied is taken out: not known. A value that
// changes is the keeper's from then on (evidence `keeper`); the others keep the evidence that they came with.

/// A card to begin with: a peaceful fish of the middle in a shoal, with a look; without a name, a length and ranges of water,
/// which nobody else can know.
Json new_card();

/// The card of a kind as a keeper's own entry (`packed`: cards of the catalogue, catalog/builtin.h): with the same id it
/// overrides the kind, as `own_copy` it stands beside it.
Json card_to_edit(const Species& species, std::string_view packed);
/// The same with an id of its own and without the names that lead to the kind that it was copied from.
Json own_copy(const Species& species, const std::vector<Species>& own, std::string_view packed);

/// "own--blue-thing" of "Blue thing": lower case, hyphens, with a number behind it where `own` has it already.
std::string own_id(std::string_view name, const std::vector<Species>& own);

/// Values; empty, false or without items where the card has none of that type.
std::optional<double> card_number(const Json& card, std::string_view path);
std::string card_text(const Json& card, std::string_view path);
bool card_flag(const Json& card, std::string_view path);
std::vector<std::string> card_texts(const Json& card, std::string_view path);
/// Low and high end of a list of two numbers, each empty while it is not written.
std::pair<std::optional<double>, std::optional<double>> card_range(const Json& card, std::string_view path);
/// The first common name.
std::string card_name(const Json& card);

void set_card_number(Json& card, std::string_view path, std::optional<double> value);
void set_card_text(Json& card, std::string_view path, const std::string& value);
void set_card_flag(Json& card, std::string_view path, bool value);
void set_card_texts(Json& card, std::string_view path, const std::vector<std::string>& values);
void set_card_range(Json& card, std::string_view path, std::optional<double> low, std::optional<double> high);
void set_card_name(Json& card, const std::string& name);

/// All that read_species() has against the card, each once with its place: what it names first is set right for it, and it reads
/// again. Empty: it is a species.
std::vector<Error> card_errors(const Json& card);

/// What an error of the reader expects, after the name of the field: "has to be 0.01 to 60".
std::string expectation_of(const Error& error);

}  // namespace shoalwright
