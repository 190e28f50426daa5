// SPDX-License-Identifier: MIT
#pragma once

#include <utility>
#include <vector>

namespace shoalwright {

/// True when `*a` goes before `*b`; `less` is the caller's comparison.
using GoesBefore = bool (*)(const void* less, const void* a, const void* b);

/// Sorts pointers by what they point at; equal ones keep their order.
void order_pointers(std::vector<const void*>& items, const void* less, GoesBefore before);

/// Sorts items by `less`; equal ones keep their order. The sorting is compiled once for all types, where std::stable_sort would
/// be compiled for each: every visitor downloads it. For short lists; where speed counts, use std::sort.
template <class T, class Less>
void sort_stable(std::vector<T>& items, const Less& less) {
  std::vector<const void*> order;
  order.reserve(items.size());
  for (const T& item : items) order.push_back(&item);
  order_pointers(order, &less, [](const void* by, const void* a, const void* b) {
    return (*static_cast<const Less*>(by))(*static_cast<const T*>(a), *static_cast<const T*>(b));
  });
  std::vector<T> sorted;
  sorted.reserve(items.size());
  for (const void* item : order) sorted.push_back(std::move(*static_cast<T*>(const_cast<void*>(item))));
  items = std::move(sorted);
}

}  // namespace shoalwright
