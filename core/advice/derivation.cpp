// SPDX-License-Identifier: MIT
#include "advice/derivation.h"

#include "notebook/say.h"
#include "plan/words.h"
#include "stocking/burden.h"
#include "stocking/gas_transfer.h"
#include "stocking/limits.h"
#include "stocking/load.h"
#include "stocking/oxygen_use.h"
#include "stocking/plant_growth.h"
#include "stocking/ration.h"
#include "stocking/stock.h"
#include "stocking/top_off.h"
#include "tank/heat.h"
#include "units/text.h"
#include "water/carbonate.h"
#include "water/media.h"

namespace shoalwright {

namespace {

struct Teller {
  const Plan& plan;
  const Assessment& assessment;
  const std::vector<Kept>& stock;
  Derivation told;

  void input(std::string name, double value, int decimals, std::string_view unit) {
    told.inputs.push_back({std::move(name), amount(value, decimals, unit)});
  }
  void input(std::string name, const std::optional<double>& value, int decimals, std::string_view unit) {
    if (value) input(std::move(name), *value, decimals, unit);
  }
  void word(std::string name, std::string value) { told.inputs.push_back({std::move(name), std::move(value)}); }
  void temperature() { input("Water", assessment.water.temperature_c.now, 1, "°C"); }
  void net_volume() { input("Water in the tank", assessment.volume.net_l, 0, "L"); }
};

void tell_net_volume(Teller& t) {
  const Volume& volume = t.assessment.volume;
  t.told.formula = "floor × depth of water − grains of the substrate − solids of the pieces";
  t.input("Inside, to the rim", volume.gross_l, 0, "L");
  t.input("Substrate with its pores", volume.substrate_l, 1, "L");
  t.input("Pieces", volume.pieces_l, 1, "L");
  t.told.source = "Geometry. How much of a substrate is pores: published ranges; see the tank’s sheet.";
  t.told.validity = "As exact as the measures. Pores hold water, so that they count.";
}

void tell_co2(Teller& t) {
  t.told.formula = "CO2 = (alkalinity − OH + H) ÷ (K1 ÷ H + 2 K1 K2 ÷ H²), with activities";
  t.input("pH", t.assessment.water.ph.now, 1, "");
  t.input("KH", t.assessment.water.kh_dkh.now, 1, "°dH");
  t.input("GH", t.assessment.water.gh_dgh.now, 1, "°dH");
  t.temperature();
  if (t.assessment.water.ph.now && t.assessment.water.kh_dkh.now)
    t.input("The trade’s short cut says", co2_by_trade_rule_mg_l(*t.assessment.water.kh_dkh.now, *t.assessment.water.ph.now), 1,
            "mg/L");
  t.told.source =
      "Plummer & Busenberg 1982, Geochimica et Cosmochimica Acta 46: 1011-1040 (constants); Davies’ equation "
      "(activities, from memory).";
  t.told.validity =
      "pH within 0.01 of a geochemistry code from pH 5 to 9. Wood, peat and phosphate are not carbonate: with them "
      "too much CO2 is told.";
}

void tell_feed(Teller& t) {
  t.told.formula = "sum of animals × mass × ration × warmth × (7 − fasting days) ÷ 7";
  t.word("Animals", "at the size that they grow to");
  t.input("Ration at 1 g of fish", ration_at_1_g_pct, 1, "% a day");
  if (t.plan.feeding) {
    t.input("Your ration, " + std::string(word_of(t.plan.feeding->ration)), ration_factor(t.plan.feeding->ration), 2, "×");
    t.input("Fasting days a week", t.plan.feeding->fasting_days, 0, "");
  }
  if (t.assessment.water.temperature_c.now) t.input("Warmth", appetite_factor(*t.assessment.water.temperature_c.now), 2, "×");
  t.told.source =
      "Mass by length: Froese, Thorson & Reyes 2014, Journal of Applied Ichthyology 30: 78-85. Ration falls as "
      "mass^-0.25, between Sales & Janssens 2003 and Clarke & Johnston 1999; its level is common practice.";
  t.told.validity = "Within a factor of two: keepers differ as much.";
}

void tell_tan(Teller& t) {
  t.told.formula = "food × protein × 0.092";
  t.input("Dry food", t.assessment.load.feed_g_d, 2, "g a day");
  t.input("Protein of dry food", dry_food_protein_share * 100, 0, "%");
  t.told.source = "Timmons & Ebeling 2007, Recirculating Aquaculture (the factor is from memory).";
  t.told.validity = "Food that is eaten. What rots gives more at once.";
}

void tell_plants(Teller& t) {
  t.told.formula = "dry plants × 0.03 a day × 26.5 mg/g, at most half of the nitrogen";
  t.input("Dry plants", plants_dry_g(t.plan), 0, "g");
  t.input("Ammonia nitrogen", t.assessment.load.tan_mg_d, 0, "mg a day");
  t.told.source = "Growth: Nielsen & Sand-Jensen 1991, Aquatic Botany. Nitrogen in plants: Hill 1979. Half: common practice.";
  if (const std::optional<double> peak = nitrate_peak_with_plants(t.plan, t.assessment.load, t.assessment.volume))
    t.input("Nitrate before a change would then be", *peak, 0, "mg/L");
  t.told.validity =
      "Only what is cut and taken out has left the tank; in little light plants take nothing, and dying leaves give it back. "
      "So no verdict counts on it.";
}

void tell_saw_tooth(Teller& t, bool needed) {
  t.told.formula = needed ? "rise in a day × days ÷ (ceiling − tap)" : "tap + rise in a day × days ÷ share changed";
  t.input("Rise in a day", nitrate_rise_mg_l_d(t.assessment.load, t.assessment.volume), 2, "mg/L");
  if (t.plan.upkeep) {
    t.input("Days between changes", t.plan.upkeep->every_days, 1, "");
    if (!needed) t.word("Share changed", percent(t.plan.upkeep->change_fraction));
  }
  t.input("Tap", t.plan.source.nitrate_mg_l, 0, "mg/L");
  if (needed) t.input("Ceiling", nitrate_limit_mg_l(t.plan), 0, "mg/L");
  t.told.source = "Balance of mass. Nitrate from nitrogen: 4.43 by weight.";
  t.told.validity =
      "Once settled, after some ten changes. All ammonia is taken to become nitrate: what plants take makes it less.";
}

void tell_kh_drift(Teller& t) {
  t.told.formula = "nitrogen turned over in a week ÷ water ÷ 14 ÷ 0.357";
  t.input("Ammonia nitrogen", t.assessment.load.tan_mg_d, 0, "mg a day");
  t.net_volume();
  t.told.source =
      "Stoichiometry: turning ammonia into nitrate takes two equivalents of alkalinity, becoming ammonia from food "
      "has given one.";
  t.told.validity = "Lime in stones and gravel brings some back; growing bacteria and plants take a little more.";
}

void tell_media(Teller& t) {
  t.told.formula = "nitrogen ÷ (uptake of a film × 0.5 for mud × warmth) ÷ surface of a litre";
  t.input("Ammonia nitrogen", t.assessment.load.tan_mg_d, 0, "mg a day");
  t.input("Held at", film_target_tan_mg_l, 1, "mg/L");
  t.input("Surface of media", media_unnamed_m2_m3 / 1000, 1, "m² a litre");
  t.temperature();
  t.told.source =
      "Zhu & Chen 1999, Aquacultural Engineering 20: 245-259; mud: Michaud et al. 2006. Surface of media that are "
      "not named: common practice.";
  t.told.validity = "The most that is needed: glass, gravel, plants and wood turn ammonia over too.";
}

void tell_ammonia(Teller& t) {
  t.told.formula = "measured × 1.216 ÷ (1 + 10^(pKa − pH)), pKa = 0.09018 + 2729.92 ÷ K";
  if (t.plan.measured) {
    t.input("Ammonia measured, as nitrogen", t.plan.measured->ammonia_mg_l, 2, "mg/L");
    t.input("pH", t.plan.measured->ph ? t.plan.measured->ph : t.assessment.water.ph.now, 1, "");
    t.input("Water", t.plan.measured->temperature_c ? t.plan.measured->temperature_c : t.assessment.water.temperature_c.now, 1,
            "°C");
  }
  t.told.source = "Emerson, Russo, Lund & Thurston 1975, Journal of the Fisheries Research Board of Canada 32: 2379-2383.";
  t.told.validity = "0 to 50 °C, pH 6 to 10; up to a tenth too much in hard water, on the safe side.";
}

void tell_saturation(Teller& t) {
  t.told.formula = "what water holds in balance with air at sea level";
  t.temperature();
  t.told.source = "Benson & Krause 1984, Limnology and Oceanography 29: 620-632.";
  t.told.validity = "0 to 40 °C. At 1000 m of height an eighth less.";
}

void tell_night_use(Teller& t) {
  t.told.formula = "animals asleep + 4.57 × nitrogen ÷ 24 + a quarter of the food ÷ 24 + plants in the dark";
  if (const std::optional<double>& water_c = t.assessment.water.temperature_c.now)
    if (const std::optional<OxygenUse> use = night_oxygen_use(t.plan, t.stock, *water_c)) {
      t.input("Animals", use->fish_mg_h, 0, "mg an hour");
      t.input("Bacteria on ammonia", use->nitrification_mg_h, 0, "mg an hour");
      t.input("Bacteria on food and faeces", use->decay_mg_h, 0, "mg an hour");
      t.input("Plants", use->plants_mg_h, 0, "mg an hour");
    }
  t.told.source =
      "Animals: Clarke & Johnston 1999, Journal of Animal Ecology 68: 893-905. Bacteria: stoichiometry. Decay: common "
      "practice. Plants: from memory.";
  t.told.validity = "Fish use half to one and a half times as much.";
}

void tell_dawn(Teller& t) {
  t.told.formula = "what water can hold − use in the dark ÷ (open surface × transfer)";
  t.input("Water can hold", t.assessment.air.saturation_mg_l, 1, "mg/L");
  t.input("Used in the dark", t.assessment.air.demand_mg_h, 0, "mg an hour");
  t.input("Open surface", open_surface_cm2(t.plan, t.assessment.volume), 0, "cm²");
  const std::optional<double> k600 = k600_of(t.plan, t.assessment.volume);
  if (k600 && t.assessment.water.temperature_c.now)
    t.input("Transfer", oxygen_transfer_cm_h(*k600, *t.assessment.water.temperature_c.now), 1, "cm an hour");
  t.told.source =
      "Balance of mass. Transfer by the surface: Cole & Caraco 1998, Cole et al. 2010, O’Connor & Dobbins 1958 (from "
      "memory), common practice; with temperature: Wanninkhof 1992.";
  t.told.validity =
      "A night that is long enough to settle, which errs on the safe side. A film of protein can halve the transfer.";
}

void tell_heat(Teller& t, bool heater) {
  t.told.formula = heater ? "1.5 × heat lost, up to the next size that is sold; two from 200 W on"
                          : "walls and bottom × their transfer × difference + top + vapour";
  if (heater) t.input("Heat lost", t.assessment.heat.loss_w, 0, "W");
  t.temperature();
  t.input("Room", t.plan.place.temperature_c, 1, "°C");
  if (!heater) {
    t.input("Glass", t.plan.tank.glass_mm, 0, "mm");
    if (t.plan.tank.lid) t.word("Lid", *t.plan.tank.lid ? "yes" : "no");
    t.input("Turns to vapour", t.assessment.heat.evaporation_l_d, 2, "L a day");
  }
  t.told.source = heater ? "Common practice: half as much again for cold nights and cold new water."
                         : "Resistance of still air: ISO 6946. Glass: EN ISO 10077-2. Vapour: Smith, Loef & Jones 1998, ASHRAE "
                           "Transactions 104.";
  t.told.validity =
      heater ? "Pumps and lamps warm too: they are not counted." : "A tank on foam and board, air at half of its damp.";
}

void tell_evaporation(Teller& t) {
  t.told.formula = "surface × (vapour over the water − vapour in the room) × cover";
  t.temperature();
  t.input("Room", t.plan.place.temperature_c, 1, "°C");
  if (t.plan.tank.lid) t.word("Lid", *t.plan.tank.lid ? "yes: a tenth of an open surface" : "no");
  t.told.source = "Smith, Loef & Jones 1998, ASHRAE Transactions 104; vapour: Alduchov & Eskridge 1996 (constants from memory).";
  t.told.validity = "Air at half of its damp, hardly moving. A gap in the lid lets out more.";
}

std::optional<TopOff> top_off_of(const Plan& plan, const Assessment& a) {
  return top_off(plan, a.volume.net_l, a.heat.evaporation_l_d);
}

void tell_top_off(Teller& t) {
  t.told.formula = "GH of the tap × vapour of 30 days ÷ water";
  t.input("Turns to vapour", t.assessment.heat.evaporation_l_d, 2, "L a day");
  t.net_volume();
  t.input("GH of the tap", t.plan.source.gh_dgh, 1, "°dH");
  const std::optional<TopOff> adds = top_off_of(t.plan, t.assessment);
  t.input("KH that it adds", adds->kh_dkh_month, 1, "°dH");
  if (adds->nitrate_mg_l_month) t.input("Nitrate that it adds", *adds->nitrate_mg_l_month, 1, "mg/L");
  t.input("GH with tap water changed too, at most", adds->settles_gh_dgh, 1, "°dH");
  t.told.source = "Balance of mass: vapour leaves behind what was dissolved in it. Vapour: see there.";
  t.told.validity = "Topped up with tap water. RO or rain water adds nothing; changes take out what has come together.";
}

/// The number itself, to see whether there is one.
std::optional<double> value_of(Number number, const Plan& plan, const Assessment& a) {
  switch (number) {
    case Number::net_volume: return a.volume.net_l;
    case Number::co2: return a.water.co2_mg_l;
    case Number::feed: return a.load.feed_g_d;
    case Number::tan:
    case Number::plants: return a.load.tan_mg_d;
    case Number::nitrate_peak: return a.load.nitrate_peak_mg_l;
    case Number::change_needed: return a.load.change_needed_fraction;
    case Number::kh_drift: return a.load.kh_drift_dkh_week;
    case Number::media_needed: return a.load.media_needed_l;
    case Number::free_ammonia: return a.load.ammonia_nh3_mg_l;
    case Number::saturation: return a.air.saturation_mg_l;
    case Number::night_use: return a.air.demand_mg_h;
    case Number::dawn: return a.air.dawn_mg_l;
    case Number::heat_loss: return a.heat.loss_w;
    case Number::heater: return a.heat.heater_needed_w;
    case Number::evaporation: return a.heat.evaporation_l_d;
    case Number::top_off: {
      const std::optional<TopOff> adds = top_off_of(plan, a);
      return adds ? adds->gh_dgh_month : std::nullopt;
    }
  }
  return std::nullopt;
}

}  // namespace

std::optional<Derivation> derivation_of(Number number, const Plan& plan, const Catalog& catalog, const Assessment& assessment) {
  if (!value_of(number, plan, assessment)) return std::nullopt;
  const std::vector<Kept> stock = resolve_stock(plan, catalog);
  Teller t{plan, assessment, stock, {}};
  switch (number) {
    case Number::net_volume: tell_net_volume(t); break;
    case Number::co2: tell_co2(t); break;
    case Number::feed: tell_feed(t); break;
    case Number::tan: tell_tan(t); break;
    case Number::plants: tell_plants(t); break;
    case Number::nitrate_peak: tell_saw_tooth(t, false); break;
    case Number::change_needed: tell_saw_tooth(t, true); break;
    case Number::kh_drift: tell_kh_drift(t); break;
    case Number::media_needed: tell_media(t); break;
    case Number::free_ammonia: tell_ammonia(t); break;
    case Number::saturation: tell_saturation(t); break;
    case Number::night_use: tell_night_use(t); break;
    case Number::dawn: tell_dawn(t); break;
    case Number::heat_loss: tell_heat(t, false); break;
    case Number::heater: tell_heat(t, true); break;
    case Number::evaporation: tell_evaporation(t); break;
    case Number::top_off: tell_top_off(t); break;
  }
  return std::move(t.told);
}

}  // namespace shoalwright
