// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "search/search.h"
#include "units/result.h"

namespace shoalwright {

/// A problem in the format "choose-groups-1": `N` species with `min`, `max`, `present`, `perFish`, what one fish takes of the
/// capacities (`zone`, a list; `waste`; `oxygen`) and the water it lives in (`lo` and `hi`, a number an axis); `caps` with the
/// same three names; the axes `water` with `lo` and `hi`; pairs `conflicts`; at most `K` species. Capacities and axes come in
/// this order. Other keys are passed over.
Result<StockProblem> read_stock_problem(std::string_view text);

/// FORMATS section 6: `{"optimum":x,"proven":true,"chosen":{"position":count},"seconds":x}`, of the first stock; both are null
/// when there is none.
std::string fill_instance_json(const StocksFound& found, double seconds);

}  // namespace shoalwright
