// SPDX-License-Identifier: MIT
#include "water/salts.h"

#include <array>

#include "units/convert.h"
#include "water/constants.h"

namespace shoalwright {

namespace {

constexpr std::array salts{
    Salt{.id = "calcium-sulphate-dihydrate",
         .name = "calcium sulphate dihydrate (gypsum)",
         .calcium = 1,
         .sulphate = 1,
         .water = 2},
    Salt{.id = "calcium-chloride", .name = "calcium chloride, anhydrous", .calcium = 1, .chloride = 2},
    Salt{.id = "calcium-chloride-dihydrate", .name = "calcium chloride dihydrate", .calcium = 1, .chloride = 2, .water = 2},
    Salt{.id = "magnesium-sulphate-heptahydrate",
         .name = "magnesium sulphate heptahydrate (Epsom salt)",
         .magnesium = 1,
         .sulphate = 1,
         .water = 7},
    Salt{.id = "magnesium-chloride-hexahydrate",
         .name = "magnesium chloride hexahydrate",
         .magnesium = 1,
         .chloride = 2,
         .water = 6},
    Salt{.id = "sodium-bicarbonate", .name = "sodium bicarbonate", .sodium = 1, .bicarbonate = 1},
    Salt{.id = "potassium-bicarbonate", .name = "potassium bicarbonate", .potassium = 1, .bicarbonate = 1},
    Salt{.id = "calcium-carbonate", .name = "calcium carbonate", .calcium = 1, .carbonate = 1, .needs_co2 = true},
};

constexpr double sulphate_g_mol = molar_s + 4 * molar_o, carbonate_g_mol = molar_c + 3 * molar_o;

int divalent(const Salt& salt) { return salt.calcium + salt.magnesium; }
int equivalents(const Salt& salt) { return salt.bicarbonate + 2 * salt.carbonate; }

std::optional<double> grams(const std::optional<double>& mg_l_per_degree, double rise, double water_l) {
  if (!(mg_l_per_degree && rise >= 0 && water_l >= 0)) return std::nullopt;
  return *mg_l_per_degree * rise * water_l / 1000;
}

}  // namespace

std::span<const Salt> known_salts() { return salts; }

const Salt* find_salt(std::string_view id) {
  for (const Salt& salt : salts)
    if (salt.id == id) return &salt;
  return nullptr;
}

double salt_g_mol(const Salt& salt) {
  return salt.calcium * molar_ca + salt.magnesium * molar_mg + salt.sodium * molar_na + salt.potassium * molar_k +
         salt.sulphate * sulphate_g_mol + salt.chloride * molar_cl + salt.bicarbonate * (molar_h + carbonate_g_mol) +
         salt.carbonate * carbonate_g_mol + salt.water * (2 * molar_h + molar_o);
}

std::optional<double> salt_mg_l_per_dgh(const Salt& salt) {
  if (divalent(salt) < 1) return std::nullopt;
  return mmol_l_per_degree / divalent(salt) * salt_g_mol(salt);
}

std::optional<double> salt_mg_l_per_dkh(const Salt& salt) {
  if (equivalents(salt) < 1) return std::nullopt;
  return meq_l_per_degree / equivalents(salt) * salt_g_mol(salt);
}

std::optional<double> salt_g_for_dgh(const Salt& salt, double rise_dgh, double water_l) {
  return grams(salt_mg_l_per_dgh(salt), rise_dgh, water_l);
}

std::optional<double> salt_g_for_dkh(const Salt& salt, double rise_dkh, double water_l) {
  return grams(salt_mg_l_per_dkh(salt), rise_dkh, water_l);
}

SaltBrings salt_brings(const Salt& salt, double mg_l) {
  const double mmol_l = mg_l > 0 ? mg_l / salt_g_mol(salt) : 0;
  return {.gh_dgh = degrees_from_mmol_l(mmol_l * divalent(salt)),
          .kh_dkh = degrees_from_meq_l(mmol_l * equivalents(salt)),
          .sodium_mg_l = mmol_l * salt.sodium * molar_na,
          .potassium_mg_l = mmol_l * salt.potassium * molar_k,
          .sulphate_mg_l = mmol_l * salt.sulphate * sulphate_g_mol,
          .chloride_mg_l = mmol_l * salt.chloride * molar_cl};
}

}  // namespace shoalwright
