// SPDX-License-Identifier: MIT
#include "mend/mend_json.h"

#include "share/json_out.h"
#include "share/patch.h"

namespace shoalwright {

std::string mends_json(const Mends& mends) {
  JsonOut out;
  out.begin_object().key("mends").begin_list();
  for (const Mend& one : mends.mends) {
    out.begin_object().member("cost", one.cost).key("edits").json(steps_json(one.edits));
    out.member("says", one.says).member("left", one.left).end_object();
  }
  out.end_list().member_or_null("why_none", mends.why_none).end_object();
  return out.text();
}

}  // namespace shoalwright
