// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "catalog/species.h"

namespace shoalwright {

// What grazers need of surfaces that are grown over. Common practice, no source.

/// Grown surface that one animal lives on, body lengths squared: grazers and invertebrates; 0 for other life styles.
double grazed_bl2(Style style);

/// Grown surface that a group lives on, cm2.
double grazed_cm2(double count, double grazed_bl2, double length_cm);

/// Share of a tank's surfaces that is grown over: nothing before four weeks, all from twelve on.
double grown_share(double running_weeks);

/// Grown surface wanted over what there is; above 1 they need to be fed by hand. Empty where nothing is grown over: they always
/// do.
std::optional<double> grazing_index(double wanted_cm2, double grown_share, double surface_cm2);

}  // namespace shoalwright
