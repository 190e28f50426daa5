// SPDX-License-Identifier: MIT
#include "share/advice_json.h"

#include "share/assessment_json.h"

namespace shoalwright {

namespace {

const char* name_of(SuggestedFit fit) {
  switch (fit) {
    case SuggestedFit::fits: return "fits";
    case SuggestedFit::close: return "close";
    case SuggestedFit::no: break;
  }
  return "no";
}

}  // namespace

std::string suggestions_json(const std::vector<Suggestion>& suggestions) {
  JsonOut out;
  out.begin_list();
  for (const Suggestion& one : suggestions) {
    out.begin_object().member("species", one.answer.species).member("count", one.count).member("fit", name_of(one.fit));
    out.key("first");
    if (one.first)
      write(out, *one.first);
    else
      out.null();
    out.member("findings", one.findings).end_object();
  }
  out.end_list();
  return out.text();
}

std::string least_tanks_json(const TanksFor& found) {
  JsonOut out;
  out.begin_object().key("tanks").begin_list();
  for (const TankFor& tank : found.tanks) {
    out.begin_object().member("length_cm", tank.length_cm).member("width_cm", tank.width_cm);
    out.member("height_cm", tank.height_cm).member("volume_l", tank.volume_l).member_or_null("name", tank.name);
    out.key("set_by").begin_object().member_or_null("length", tank.length_set_by);
    out.member_or_null("width", tank.width_set_by).member_or_null("height", tank.height_set_by).end_object().end_object();
  }
  out.end_list().member_or_null("why_none", found.why_none).end_object();
  return out.text();
}

}  // namespace shoalwright
