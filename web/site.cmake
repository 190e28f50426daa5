# SPDX-License-Identifier: MIT
# Copies the page and the program into one folder and writes the program's size into the page, so that loading can show progress.
cmake_minimum_required(VERSION 3.24)
foreach(file IN LISTS FILES)
  file(COPY_FILE ${FROM}/${file} ${TO}/${file} ONLY_IF_DIFFERENT)
endforeach()
foreach(file planner.js planner.wasm)
  file(COPY_FILE ${PROGRAM}/${file} ${TO}/${file} ONLY_IF_DIFFERENT)
endforeach()
file(SIZE ${TO}/planner.wasm PROGRAM_BYTES)
configure_file(${FROM}/index.html ${TO}/index.html @ONLY)
