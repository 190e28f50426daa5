// SPDX-License-Identifier: MIT
#include <cstdio>

#include "tool/commands.h"

int main(int count, char** values) {
  const shoalwright::Answer answer = shoalwright::run_command({values + 1, values + count});
  if (!answer.out.empty()) std::fprintf(stdout, "%s\n", answer.out.c_str());
  if (!answer.error.empty()) std::fprintf(stderr, "%s\n", answer.error.c_str());
  return answer.code;
}
