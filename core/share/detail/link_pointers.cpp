// SPDX-License-Identifier: MIT
#include "share/detail/link_pointers.h"

#include <algorithm>
#include <functional>
#include <iterator>

#include "plan/check.h"

namespace shoalwright {

namespace {

/// "/stock/12/count": the list, the entry, the key.
void code_pointer(LinkCoder& coder, PointerModels& models, std::string& pointer) {
  constexpr std::string_view stock = "/stock/", pieces = "/pieces/";
  const bool of_stock = pointer.rfind(stock, 0) == 0, of_pieces = pointer.rfind(pieces, 0) == 0;
  const std::size_t start = of_stock ? stock.size() : pieces.size();
  int index = 0;
  std::size_t end = start;
  for (; (of_stock || of_pieces) && end < pointer.size() && end < start + 6 && pointer[end] >= '0' && pointer[end] <= '9'; ++end)
    index = index * 10 + (pointer[end] - '0');
  const bool plain = end > start && pointer.substr(start, end - start) == std::to_string(index) &&
                     (end == pointer.size() || pointer[end] == '/');
  if (coder.bit(models.into_list, !plain && !coder.reading())) return coder.text(models.text, pointer);
  const bool in_stock = coder.bit(models.into_stock, of_stock);
  std::string key = plain ? pointer.substr(end) : "";
  coder.whole(models.index, index);
  coder.word(models.key, link_entry_keys, key);
  pointer = std::string(in_stock ? stock : pieces) + std::to_string(index) + key;
}

}  // namespace

void code_pointers(LinkCoder& coder, std::vector<std::string>& pointers, PointerModels& models) {
  const auto in_table = [](const std::string& p) {
    return std::binary_search(link_pointers.begin(), link_pointers.end(), std::string_view(p));
  };
  const bool set = std::adjacent_find(pointers.begin(), pointers.end(), std::greater_equal<>()) == pointers.end();
  std::vector<std::string> others, out;
  if (coder.bit(models.in_order, set)) {
    for (std::size_t i = 0; i < link_pointers.size(); ++i)
      if (coder.bit(models.in[i], std::binary_search(pointers.begin(), pointers.end(), std::string(link_pointers[i]))))
        out.emplace_back(link_pointers[i]);
    std::copy_if(pointers.begin(), pointers.end(), std::back_inserter(others),
                 [&](const std::string& p) { return !in_table(p); });
  } else {
    others = pointers;
  }
  others.resize(coder.count(models.others, others.size(), most_pointers));
  for (std::string& other : others) code_pointer(coder, models, other);
  const std::size_t known = out.size();
  out.insert(out.end(), others.begin(), others.end());
  if (known > 0) std::inplace_merge(out.begin(), out.begin() + known, out.end());
  pointers = std::move(out);
}

}  // namespace shoalwright
