# SPDX-License-Identifier: MIT
# cmake -DSPECIES=<dir> -DOUT=<file.cpp> -P bundle.cmake: one C++ source that holds all species files as a JSON array.
# A script rather than a helper program: under Emscripten a helper would have to be built a second time for this machine.
cmake_minimum_required(VERSION 3.24)
file(GLOB_RECURSE files LIST_DIRECTORIES false ${SPECIES}/*.json)
list(SORT files)
set(text "// Made by catalog/bundle.cmake.\n#include \"catalog/builtin.h\"\n\nnamespace shoalwright {\n\nstd::string_view builtin_catalog_json() {\n  return R\"card([\n")
set(comma "")
foreach(file IN LISTS files)
  file(READ ${file} entry)
  if(entry MATCHES "\\)card\"")
    message(FATAL_ERROR "${file}: holds the end mark of the bundle")
  endif()
  # Indentation is for people; it need not travel.
  string(REGEX REPLACE "\n[ \t]+" "\n" entry "${entry}")
  string(APPEND text "${comma}" "${entry}")
  set(comma ",\n")
endforeach()
string(APPEND text "])card\";\n}\n\n}  // namespace shoalwright\n")
file(CONFIGURE OUTPUT ${OUT} CONTENT "@text@" @ONLY)
