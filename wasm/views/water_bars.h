// SPDX-License-Identifier: MIT
// What the water bars of the assessment column and of the Water page have in common: the four quantities, one row a kind, the
// axis.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "app/measures.h"
#include "catalog/species.h"
#include "draw/bars.h"
#include "plan/plan.h"
#include "stocking/stock.h"
#include "water/window.h"

namespace shoalwright {

/// One quantity of the water, and where it is found in everything that has one.
struct BarQuantity {
  const char *id, *name, *margin, *rule;
  Window Windows::*window;
  Need Species::WaterNeeds::*need;
  std::optional<double> WaterAim::*aim;
  std::optional<double> SourceWater::*source;
  double from, to;  ///< axis where nothing lives
};

/// Temperature, pH, GH, KH.
std::span<const BarQuantity> bar_quantities();
bool is_temperature(const BarQuantity& q);
/// Which hardness it is; empty where it is none.
std::optional<Hardness> hardness_of(const BarQuantity& q);

/// A value in the keeper's unit and back, a difference of two, the unit (empty for pH; short beside a bar of little width), the
/// value as text without it.
double bar_out(const Measures& measures, const BarQuantity& q, double value);
double bar_in(const Measures& measures, const BarQuantity& q, double shown);
std::string bar_figure(const Measures& measures, const BarQuantity& q, double value);
std::string bar_difference(const Measures& measures, const BarQuantity& q, double by);
/// What a mark that is drawn along the bar goes by, in the keeper's unit.
double bar_step(const Measures& measures, const BarQuantity& q);
std::string bar_unit(const Measures& measures, const BarQuantity& q, float width = 1000);

/// One row a kind that says something about the quantity, in the keeper's unit, numbered as on its plate.
std::vector<WaterBarRow> bar_rows(const std::vector<Kept>& stock, const BarQuantity& q, const Measures& measures);
/// Height of a row where there are so many.
float bar_row_height(std::size_t rows);

/// What a kind of the stock tolerates; null where it is not there or says nothing.
const Range* tolerated_of(const std::vector<Kept>& stock, const BarQuantity& q, const std::string& id);
/// Kinds whose own range ends at `edge`, at its low or high end.
std::vector<std::string> edge_set_by(const std::vector<Kept>& stock, const BarQuantity& q, double edge, bool low);

/// Ends that hold every range and mark, and ticks at round numbers between them, as many as their figures leave room for.
void set_axis(WaterBar& bar, double from, double to);

}  // namespace shoalwright
