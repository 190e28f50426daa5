// SPDX-License-Identifier: MIT
// What Dear ImGui would bring along that the page has no use for.
//
// The page has no Dear ImGui tables, columns or tab bars and keeps no settings of windows. In place of imgui_tables.cpp (about 7
// KB of the download) stand the functions of it that the rest of Dear ImGui calls; without a table or columns none of them has
// anything to do.
#include <cstdarg>

#include "imgui.h"
#include "imgui_internal.h"

namespace ImGui {
void EndNoTabBar();
}
extern "C" int nothing_scanned(const char*, const char*, ...);

void ImGui::EndColumns() {}
void ImGui::EndTable() {}
void ImGui::PopColumnsBackground() {}
void ImGui::PushColumnsBackground() {}
void ImGui::TableEndCell(ImGuiTable*) {}
void ImGui::TableEndRow(ImGuiTable*) {}
void ImGui::TableGcCompactSettings() {}
void ImGui::TableGcCompactTransientBuffers(ImGuiTable*) {}
void ImGui::TableGcCompactTransientBuffers(ImGuiTableTempData*) {}
void ImGui::TablePopBackgroundChannel() {}
void ImGui::TablePopColumnChannel() {}
void ImGui::TablePushBackgroundChannel() {}
void ImGui::TablePushColumnChannel(int) {}
void ImGui::TableSettingsAddSettingsHandler() {}

// What imgui.cpp calls instead of EndTabBar and sscanf (CMakeLists.txt): the first would bring the layout of tab bars along, the
// second the reading of formatted numbers.
void ImGui::EndNoTabBar() {}
extern "C" int nothing_scanned(const char*, const char*, ...) { return 0; }

// Dear ImGui puts together names of windows and nothing else here, for which the whole of printf (4 KB) is too much
// (IMGUI_DISABLE_DEFAULT_FORMAT_FUNCTIONS): %s, %.*s, %d, %u, %x, %X and %c, with zeros in front and a width.
int ImFormatStringV(char* buf, size_t buf_size, const char* fmt, va_list args) {
  std::size_t length = 0;
  const auto put = [&](char letter) {
    if (buf && length + 1 < buf_size) buf[length] = letter;
    ++length;
  };
  for (; *fmt; ++fmt) {
    if (*fmt != '%') {
      put(*fmt);
      continue;
    }
    int width = 0, most = -1;
    while (*++fmt >= '0' && *fmt <= '9') width = width * 10 + (*fmt - '0');
    if (*fmt == '.' && fmt[1] == '*') {
      most = va_arg(args, int);
      fmt += 2;
    }
    if (*fmt == 's') {
      const char* text = va_arg(args, const char*);
      for (int i = 0; i != most && text[i]; ++i) put(text[i]);
    } else if (*fmt == 'c') {
      put(static_cast<char>(va_arg(args, int)));
    } else if (*fmt == 'd' || *fmt == 'u' || *fmt == 'x' || *fmt == 'X') {
      const unsigned given = va_arg(args, unsigned);
      const bool below = *fmt == 'd' && static_cast<int>(given) < 0;
      const unsigned base = *fmt == 'd' || *fmt == 'u' ? 10 : 16;
      char digits[12];
      int count = 0;
      for (unsigned rest = below ? 0 - given : given; rest || count == 0; rest /= base)
        digits[count++] = (*fmt == 'x' ? "0123456789abcdef" : "0123456789ABCDEF")[rest % base];
      if (below) put('-');
      for (int i = count + below; i < width; ++i) put('0');
      while (count > 0) put(digits[--count]);
    } else {
      put(*fmt);
    }
  }
  if (buf && buf_size > 0) buf[length < buf_size ? length : buf_size - 1] = 0;
  return static_cast<int>(buf && length >= buf_size ? buf_size - 1 : length);
}

int ImFormatString(char* buf, size_t buf_size, const char* fmt, ...) {
  va_list args;
  va_start(args, fmt);
  const int length = ImFormatStringV(buf, buf_size, fmt, args);
  va_end(args);
  return length;
}
