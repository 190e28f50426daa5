// SPDX-License-Identifier: MIT
// What a catalogue costs as it grows: `catalog_bench CARDS` times packed cards (catalog/bundle.py), each figure beside its
// budget. tests/bench/catalog_bench.mjs makes the cards of a thousand kinds and calls it.
#include <fstream>
#include <sstream>

#include "advice/shelf_list.h"
#include "catalog/builtin.h"
#include "catalog/label.h"
#include "timing.h"

namespace shoalwright {
namespace {

int run(const char* file) {
  std::ifstream in(file, std::ios::binary);
  std::stringstream text;
  text << in.rdbuf();
  const std::string packed = text.str();
  const Catalog catalog = packed_catalog(packed);
  if (catalog.species.size() < 1000) {
    std::printf("%s holds %zu kinds\n", file, catalog.species.size());
    return 1;
  }
  std::size_t sum = 0;  // so that nothing is optimised away
  bool ok =
      print("read the cards of 1,000 kinds", median_ms(31, [&](int) { sum += packed_catalog(packed).species.size(); }), 100);
  const Plan plan = bench_plan();
  if (plan.stock.empty()) return 1;
  ShelfSearch search(plan, catalog);
  const double row_ms = median_ms(static_cast<int>(catalog.species.size()), [&](int i) {
    sum += search.answer(catalog.species[static_cast<std::size_t>(i)]).species.size();
  });
  // A budget of 60 ms for 300 rows.
  ok &= print("one row of the shelf, in the bench plan", row_ms, 60.0 / 300);
  ok &= print("search 1,000 kinds for one word",
              median_ms(31, [&](int) { sum += find_on_shelf(plan, catalog, "rasbora").size(); }), 16);
  const std::vector<const Species*> kinds = shelf_kinds(plan, catalog);
  ok &= print("look for what is sold under a word", median_ms(31, [&](int) { sum += label_of(kinds, "molly") ? 1 : 2; }), 16);
  return ok && sum > 0 ? 0 : 1;
}

}  // namespace
}  // namespace shoalwright

int main(int argc, char** argv) {
  if (argc == 2) return shoalwright::run(argv[1]);
  std::printf("catalog_bench CARDS.bin\n");
  return 2;
}
