// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

/// Whether a row of the shelf has a small spot at its lower right that opens the page of its kind: under the pointer, with the
/// keyboard on it, always for a finger. It takes 32 px from the row's last line.
bool species_more_shown(const Ui& ui, const Look& look, const Box& row, const Item& of);

/// Draws it where it is `shown`; the key I does the same while the row has the keyboard. Spot: `shelf.more/<species>`.
void species_more(Ui& ui, const Look& look, const Box& row, const Species& species, const Item& of, bool shown, Actions& out);

/// "Your own kind", "Your own values" over a kind of the catalogue; empty for a card of the catalogue.
std::string own_words(const Species& species);

/// The key I on an item that has the keyboard.
bool asks_for_species(const Item& of);

}  // namespace shoalwright
