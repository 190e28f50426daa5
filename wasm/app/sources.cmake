# SPDX-License-Identifier: MIT
# cmake -DSOURCES=<sources.json> -DOUT=<file.cpp> -P sources.cmake: author, year and title of each source of the catalogue as a C++ source.
cmake_minimum_required(VERSION 3.24)
file(READ ${SOURCES} json)
string(JSON count LENGTH "${json}")
math(EXPR last "${count} - 1")
set(rows "")
foreach(i RANGE ${last})
  string(JSON key MEMBER "${json}" ${i})
  string(JSON author ERROR_VARIABLE none GET "${json}" ${key} author)
  string(JSON year ERROR_VARIABLE none GET "${json}" ${key} year)
  string(JSON title ERROR_VARIABLE none GET "${json}" ${key} title)
  if(year)
    string(APPEND author " ${year}")
  endif()
  string(REGEX REPLACE "\\.$" "" author "${author}")
  string(APPEND rows "      {R\"s(${key})s\", R\"s(${author}. ${title})s\"},\n")
endforeach()
file(WRITE ${OUT} "// Made by wasm/app/sources.cmake.
#include \"app/rule_words.h\"

namespace shoalwright {

std::string_view citation(std::string_view key) {
  struct Row {
    std::string_view key, words;
  };
  static constexpr Row rows[] = {
${rows}  };
  for (const Row& row : rows)
    if (row.key == key) return row.words;
  return {};
}

}  // namespace shoalwright
")
