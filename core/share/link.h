// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "catalog/catalog.h"
#include "plan/plan.h"
#include "units/result.h"

namespace shoalwright {

/// "#p=" and the whole plan (FORMATS section 5). Equal plans give equal links. `log` travels only with `with_log`.
[[gnu::noinline]] std::string encode_link(const Plan& plan, const Catalog& catalog, bool with_log = false);

/// The plan of a link: a whole address, "#p=…" or what follows. Total: any text gives either the plan or one clear sentence.
[[gnu::noinline]] Result<Plan> decode_link(std::string_view text, const Catalog& catalog);

}  // namespace shoalwright
