// SPDX-License-Identifier: MIT
#include "plan/plan.h"

namespace shoalwright {

namespace {

bool covers(const std::vector<std::string>& pointers, const std::string& pointer) {
  for (const std::string& p : pointers)
    if (pointer == p || (pointer.size() > p.size() && pointer.compare(0, p.size(), p) == 0 && pointer[p.size()] == '/'))
      return true;
  return false;
}

}  // namespace

bool is_assumed(const Plan& plan, const std::string& pointer) { return covers(plan.assumed, pointer); }

bool is_fixed(const Plan& plan, const std::string& pointer) { return covers(plan.fixed, pointer); }

}  // namespace shoalwright
