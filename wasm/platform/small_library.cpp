// SPDX-License-Identifier: MIT
// What the page has in place of parts of the C library that are large.
//
// The browser reads decimal numbers for us, correctly rounded as the C library reads them (ECMA-262, StringToNumber): the
// library's own reading, with the long double arithmetic that it needs, would be 6 KB of the download. Only what JSON calls a
// number is read (RFC 8259 section 6); nothing else asks.
#include <cstdarg>
#include <cstring>

#include "imgui_internal.h"

extern "C" {

double browser_number(const char* text, int bytes);  // browser.js

double strtod(const char* text, char** end) {
  const std::size_t bytes = std::strspn(text, "+-.0123456789eE");
  if (end) *end = const_cast<char*>(text) + bytes;
  return browser_number(text, static_cast<int>(bytes));
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
