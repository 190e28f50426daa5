// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <string>
#include <vector>

#include "share/detail/link_coder.h"
#include "share/detail/link_tables.h"

namespace shoalwright {

struct PointerModels {
  std::array<Chance, link_pointers.size()> in;
  Chance in_order = zero_in(2), into_list = zero_in(20), into_stock = zero_in(50);
  Magnitude others{0}, index{2};
  WordModel key;
  TextModel text{1};
  explicit PointerModels(int absent_percent) { in.fill(zero_in(absent_percent)); }
};

/// A set of pointers: those of the table by one bit each, then the others. A list that is no set (made in memory) as it is.
void code_pointers(LinkCoder& coder, std::vector<std::string>& pointers, PointerModels& models);

}  // namespace shoalwright
