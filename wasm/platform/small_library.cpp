// SPDX-License-Identifier: MIT
// What the page has in place of parts of the C library that are large.
//
// The browser reads decimal numbers for us, correctly rounded as the C library reads them (ECMA-262, StringToNumber): the
// library's own reading, with the long double arithmetic that it needs, would be 6 KB of the download.
#include <cstdarg>
#include <cstring>

#include "imgui_internal.h"

extern "C" {

double browser_number(const char* text, int bytes);  // browser.js

// A decimal number at the start of the text, after spaces; other notations of C are not read. Without one: 0, and `end` at
// `text`.
double strtod(const char* text, char** end) {
  const auto digits = [](const char* at) { return at + std::strspn(at, "0123456789"); };
  const char* from = text + std::strspn(text, " ");
  const char* whole = from + (*from == '-' || *from == '+');
  const char* to = digits(whole);
  std::size_t figures = static_cast<std::size_t>(to - whole);
  if (*to == '.') {
    const char* part = digits(to + 1);
    figures += static_cast<std::size_t>(part - to - 1);
    to = part;
  }
  if (figures > 0 && (*to == 'e' || *to == 'E')) {
    const char* power = to + 1 + (to[1] == '-' || to[1] == '+');
    if (digits(power) > power) to = digits(power);
  }
  if (end) *end = const_cast<char*>(figures > 0 ? to : text);
  return figures > 0 ? browser_number(from, static_cast<int>(to - from)) : 0;
}

// Who still asks for printf is the JSON reader, for a sentence that nobody sees: what windows' names are put together by will do.
int snprintf(char* text, std::size_t size, const char* format, ...) {
  va_list args;
  va_start(args, format);
  const int length = ImFormatStringV(text, size, format, args);
  va_end(args);
  return length;
}

// The library has its three readings in one piece: who brings one along brings all.
float strtof(const char* text, char** end) { return static_cast<float>(strtod(text, end)); }
long double strtold(const char* text, char** end) { return static_cast<long double>(strtod(text, end)); }
}
