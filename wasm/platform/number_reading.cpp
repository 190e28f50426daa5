// SPDX-License-Identifier: MIT
// The browser reads decimal numbers for us, correctly rounded as the C library reads them (ECMA-262, StringToNumber): the
// library's own reading, with the long double arithmetic that it needs, would be 6 KB of the download. Only what JSON calls a
// number is read (RFC 8259 section 6); nothing else asks.
#include <cstring>

extern "C" {

double browser_number(const char* text, int bytes);  // browser.js

double strtod(const char* text, char** end) {
  const std::size_t bytes = std::strspn(text, "+-.0123456789eE");
  if (end) *end = const_cast<char*>(text) + bytes;
  return browser_number(text, static_cast<int>(bytes));
}

// The library has its three readings in one piece: who brings one along brings all.
float strtof(const char* text, char** end) { return static_cast<float>(strtod(text, end)); }
long double strtold(const char* text, char** end) { return static_cast<long double>(strtod(text, end)); }
}
