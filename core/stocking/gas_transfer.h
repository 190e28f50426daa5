// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "plan/plan.h"
#include "tank/volume.h"

namespace shoalwright {

// How fast oxygen passes between air and water. Transfer velocity: the depth of water, cm, whose gap to saturation is closed in
// an hour. k600 is that of a gas with Schmidt number 600, by which surfaces are compared.

/// k600 for a word of the plan, cm/h. Still: the low end of small calm lakes, 0.35 m a day (Cole, J.J., Bade, D.L., Bastviken,
/// D., Pace, M.L. & Van de Bogert, M. 2010. Limnology and Oceanography: Methods 8: 285-293). Quiet: a lake without wind, below.
/// Gentle and rippled: by a surface that drifts at 2 and 10 cm/s, river_transfer_cm_h(). Vigorous (10 to 25): common practice, no
/// source.
double k600_cm_h(SurfaceMotion surface);

/// k600 of a lake under wind of that speed at 10 m height, m/s from 0, cm/h. Cole, J.J. & Caraco, N.F. 1998. Atmospheric exchange
/// of carbon dioxide in a low-wind oligotrophic lake measured by the addition of SF6. Limnology and Oceanography 43: 647-656.
double k600_from_wind_cm_h(double wind_m_s);

/// k600 where only the flow of the filter is known: from a quiet surface up, never more than a vigorous one. Five volumes an hour
/// over 30 cm of water make it rippled. Common practice, no source.
double k600_from_flow_cm_h(double flow_l_h, double surface_cm2);

/// Schmidt number of oxygen in fresh water, 0 to 32 degrees C (held there). Wanninkhof, R. 1992. Relationship between wind speed
/// and gas exchange over the ocean. Journal of Geophysical Research 97: 7373-7382.
double oxygen_schmidt(double temperature_c);

/// Powers of the Schmidt number over a moving and over a glassy surface; at 25 degrees C they differ by less than 7 %.
inline constexpr double moving_surface_power = 0.5, glassy_surface_power = 2.0 / 3;

/// Transfer velocity of oxygen, cm/h.
double oxygen_transfer_cm_h(double k600_cm_h, double temperature_c, double power = moving_surface_power);

/// Transfer velocity of oxygen in a river of that speed and depth, near 20 degrees C, cm/h; 0 without depth. O'Connor, D.J. &
/// Dobbins, W.E. 1958. Mechanism of reaeration in natural streams. Transactions of the American Society of Civil Engineers 123:
/// 641-684 (from memory). For rivers deeper than 0.3 m and faster than 0.15 m/s: in a tank it gives the order only.
double river_transfer_cm_h(double speed_m_s, double depth_m);

/// Water brought to saturation in an hour by that much open surface, L.
double oxygen_supply_l_h(double transfer_cm_h, double surface_cm2);

/// Where oxygen settles, mg/L, when surface and use come to balance. Empty where use exceeds what can come in.
std::optional<double> settled_oxygen_mg_l(double saturation_mg_l, double supply_l_h, double use_mg_h);

/// The use, mg/h, at which oxygen settles at `target_mg_l`; below 0 for a target above saturation.
double largest_oxygen_use_mg_h(double saturation_mg_l, double supply_l_h, double target_mg_l);

/// A film of protein halves the transfer; not reckoned with, since a plan does not say. Under a lid with its usual gaps air is
/// renewed a little later, and floating plants leave half of what they cover open between their leaves: parts of the surface that
/// count. Common practice, no source.
inline constexpr double open_under_lid = 0.98, open_under_leaves = 0.5;

/// Surface that gas passes through, cm2: the water's less what lid and floating pieces close. A lid that nobody knows of counts
/// as one that is there.
double open_surface_cm2(const Plan& plan, const Volume& volume);

/// The plan's own word for its surface, else by its filter; still without one. Empty where neither is known. cm/h.
std::optional<double> k600_of(const Plan& plan, const Volume& volume);

/// Water brought to saturation in an hour, L. Empty without a surface or where nothing is known of its motion.
std::optional<double> oxygen_supply_l_h(const Plan& plan, const Volume& volume, double temperature_c);

}  // namespace shoalwright
