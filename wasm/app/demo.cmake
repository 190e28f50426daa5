# SPDX-License-Identifier: MIT
# cmake -DPLANS=<dir> -DFRESH=<file> -DOUT=<file.cpp> -P demo.cmake: the demo and the fresh plan as text in a C++ source.
cmake_minimum_required(VERSION 3.24)
file(READ ${PLANS}/riverbank.json demo)
file(READ ${FRESH} fresh)
file(CONFIGURE OUTPUT ${OUT} @ONLY CONTENT [[// Made by wasm/app/demo.cmake.
#include "app/builtin_demo.h"

namespace shoalwright {

std::string_view builtin_demo_plan() { return R"plan(@demo@)plan"; }
std::string_view builtin_fresh_plan() { return R"plan(@fresh@)plan"; }

}  // namespace shoalwright
]])
