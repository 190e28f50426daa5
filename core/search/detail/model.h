// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <vector>

#include "search/problem.h"

namespace shoalwright::search_detail {

/// A square of bits.
struct BitRows {
  int words = 0;
  std::vector<std::uint64_t> bits;
  explicit BitRows(int size = 0) : words((size + 63) / 64), bits(static_cast<std::size_t>(size) * ((size + 63) / 64)) {}
  bool has(int row, int column) const { return bits[at(row, column)] >> (column & 63) & 1; }
  void set(int row, int column) { bits[at(row, column)] |= std::uint64_t{1} << (column & 63); }

 private:
  std::size_t at(int row, int column) const {
    return static_cast<std::size_t>(row) * words + static_cast<std::size_t>(column >> 6);
  }
};

/// A problem as the search sees it: only species that could stand in the tank alone, capacities of size 1.
struct Model {
  int species = 0, capacities = 0, most_species = 0;
  std::vector<int> origin;            ///< position in the problem
  std::vector<int> least, most;       ///< `most` as far as the species fits alone
  std::vector<double> present, each;  ///< scores
  std::vector<double> shares;         ///< species by capacities: what an animal takes, as a share of the capacity
  BitRows apart;                      ///< who cannot live together, by conflict or by water
  std::vector<int> musts;             ///< in every stock
  bool impossible = false;            ///< a species that must be there cannot
  double step = 0;                    ///< all scores are whole multiples of this; 0 when of none
  const double* share(int i) const { return shares.data() + static_cast<std::size_t>(i) * capacities; }
};

Model model_of(const StockProblem& problem);

/// What fits into `room` (shares left, tolerance included) of an animal that takes `share`: whole animals, `most` at most.
int fitting(const double* room, const double* share, int capacities, int most);

}  // namespace shoalwright::search_detail
