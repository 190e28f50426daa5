// SPDX-License-Identifier: MIT
#include "fill/fill_plan_json.h"

#include "share/json_out.h"
#include "stocking/stock.h"

namespace shoalwright {

std::string filled_json(const Plan& plan, const Catalog& catalog, const Filled& filled, double seconds) {
  JsonOut out;
  out.begin_object().key("stocks").begin_list();
  for (const FilledStock& list : filled.stocks) {
    out.begin_object().member("score", list.score).key("stock").begin_list();
    for (const Kept& kept : resolve_stock(with_stock(plan, list), catalog))
      out.begin_object().member("species", kept.id).member("count", kept.count).end_object();
    out.end_list().end_object();
  }
  out.end_list().member("proven", filled.proven).member("seconds", seconds).member_or_null("why_none", filled.why_none);
  out.end_object();
  return out.text();
}

}  // namespace shoalwright
