// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "catalog/species.h"
#include "units/json.h"

namespace shoalwright {

/// What a card says besides the values that are reckoned with: read when a page of the kind is opened, not at every start.
struct RestOfCard {
  struct Breeding {
    std::string mode, first_food, note;              ///< words of the closed lists; empty: not known
    std::optional<Range> temperature_c, ph, gh_dgh;  ///< water for breeding on purpose
    std::optional<Range> hatch_hours;
    std::optional<double> hatch_at_c;
    std::optional<Range> gestation_days, free_swimming_days, brood;
    bool operator==(const Breeding&) const = default;
  } breeding;
  std::optional<Range> published_temperature_c, published_ph;  ///< as the named source prints them
  /// Colours of a sex that looks unlike the card's picture, in the order of Species::Look; empty: as the picture.
  std::vector<std::string> male_colours, female_colours;
  bool operator==(const RestOfCard&) const = default;
};

/// The card as it was written, after catalog/schema/species.json: of a keeper's own entry its `whole_json`, else that of
/// the packed cards (catalog/builtin.h), by its id. Null where there is none. Numbers of packed cards come without their text.
Json whole_card(const Species& species, std::string_view packed);

/// The same, read. Empty where neither knows the kind.
RestOfCard rest_of_card(const Species& species, std::string_view packed);

}  // namespace shoalwright
