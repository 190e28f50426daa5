# SPDX-License-Identifier: MIT
# Copies the page and the program into one folder, the scripts with short names inside, and writes the program's size into the page, so
# that loading can show progress.
cmake_minimum_required(VERSION 3.24)

function(put_script from to)
  if(NOT ${from} IS_NEWER_THAN ${to})
    return()
  endif()
  execute_process(COMMAND terser ${from} --output ${to} ${ARGN} COMMAND_ERROR_IS_FATAL ANY)
endfunction()

foreach(file IN LISTS FILES)
  if(file MATCHES "\\.js$")
    put_script(${FROM}/${file} ${TO}/${file} --module --compress --mangle)
  else()
    file(COPY_FILE ${FROM}/${file} ${TO}/${file} ONLY_IF_DIFFERENT)
  endif()
endforeach()
# The page reaches into the program by these two names.
put_script(${PROGRAM}/planner.js ${TO}/planner.js
           --mangle "toplevel,reserved=['Module','UTF8ToString']" --compress "toplevel,top_retain=['Module','UTF8ToString']")
# A second round of the optimiser finds 3 KB that the linker's one leaves.
find_program(WASM_OPT wasm-opt REQUIRED)
if(${PROGRAM}/planner.wasm IS_NEWER_THAN ${TO}/planner.wasm)
  execute_process(COMMAND ${WASM_OPT} -Oz --converge --enable-simd --enable-bulk-memory --enable-nontrapping-float-to-int --enable-sign-ext
                          --enable-mutable-globals ${PROGRAM}/planner.wasm -o ${TO}/planner.wasm COMMAND_ERROR_IS_FATAL ANY)
endif()
file(SIZE ${TO}/planner.wasm PROGRAM_BYTES)
configure_file(${FROM}/index.html ${TO}/index.html @ONLY)
