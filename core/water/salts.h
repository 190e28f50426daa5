// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string_view>

namespace shoalwright {

/// A salt that raises hardness, by the number of each part in its formula.
struct Salt {
  std::string_view id;    ///< as in Plan::salts
  std::string_view name;  ///< with its water of crystallisation
  int calcium = 0, magnesium = 0, sodium = 0, potassium = 0;
  int sulphate = 0, chloride = 0, bicarbonate = 0, carbonate = 0;
  int water = 0;
  bool needs_co2 = false;  ///< dissolves slowly and only as far as there is CO2
};

/// Those that are known. What is sold as calcium or magnesium chloride varies in its water: the label says which it is.
std::span<const Salt> known_salts();

/// Null where no salt has that id.
const Salt* find_salt(std::string_view id);

/// Molar mass, g/mol. IUPAC abridged standard atomic weights (from memory).
double salt_g_mol(const Salt& salt);

/// mg in a litre that raise general or carbonate hardness by one degree; empty where the salt does not raise it. Calcium
/// carbonate raises both at once. Stoichiometry: one degree is 10 mg CaO in a litre by definition.
std::optional<double> salt_mg_l_per_dgh(const Salt& salt);
std::optional<double> salt_mg_l_per_dkh(const Salt& salt);

/// Grams that raise so much water by so many degrees. Empty where the salt does not raise it, for a fall and for negative water.
std::optional<double> salt_g_for_dgh(const Salt& salt, double rise_dgh, double water_l);
std::optional<double> salt_g_for_dkh(const Salt& salt, double rise_dkh, double water_l);

/// What a salt brings besides.
struct SaltBrings {
  double gh_dgh = 0, kh_dkh = 0;
  double sodium_mg_l = 0, potassium_mg_l = 0, sulphate_mg_l = 0, chloride_mg_l = 0;
};

/// Of so much in a litre, once all of it is dissolved; nothing for less than nothing.
SaltBrings salt_brings(const Salt& salt, double mg_l);

}  // namespace shoalwright
