// SPDX-License-Identifier: MIT
#include "draw/text.h"

#include <cfloat>
#include <cmath>

namespace shoalwright {
namespace {

/// Glyphs are baked this many times wider than tall and set at as many steps in a pixel, so that each texel lands on a pixel.
constexpr int steps_across = 4;

unsigned big_endian_16(std::string_view b, size_t at) {
  if (!(at + 2 <= b.size())) return 0;
  return static_cast<unsigned>(static_cast<unsigned char>(b[at])) << 8 | static_cast<unsigned char>(b[at + 1]);
}

unsigned big_endian_32(std::string_view b, size_t at) { return big_endian_16(b, at) << 16 | big_endian_16(b, at + 2); }

/// Where a table of the font begins (OpenType 1.9, "Organization of an OpenType Font"); 0 when it has none.
size_t table_offset(std::string_view b, std::string_view tag) {
  const unsigned tables = big_endian_16(b, 4);
  for (unsigned i = 0; i < tables; ++i) {
    const size_t record = 12 + 16 * static_cast<size_t>(i);
    if (record + 16 <= b.size() && b.substr(record, 4) == tag) return big_endian_32(b, record + 8);
  }
  return 0;
}

/// The next character of UTF-8 text; a broken byte counts as U+FFFD. Moves `at` past it.
unsigned next_character(std::string_view text, size_t& at) {
  const auto byte = [&](size_t i) { return static_cast<unsigned>(static_cast<unsigned char>(text[i])); };
  const unsigned first = byte(at);
  const int more = first < 0x80 ? 0 : first >= 0xf0 ? 3 : first >= 0xe0 ? 2 : first >= 0xc2 ? 1 : -1;
  if (more == 0) return ++at, first;
  if (more < 0 || at + static_cast<size_t>(more) >= text.size()) return ++at, 0xfffdu;
  unsigned c = first & (0x3fu >> more);
  for (int i = 1; i <= more; ++i) {
    if ((byte(at + static_cast<size_t>(i)) & 0xc0) != 0x80) return ++at, 0xfffdu;
    c = c << 6 | (byte(at + static_cast<size_t>(i)) & 0x3f);
  }
  at += static_cast<size_t>(more) + 1;
  return c;
}

int index_of(Type t) { return static_cast<int>(t.face); }

ImFontBaked* baked(const Pen& pen, Type t) { return pen.faces->font[index_of(t)]->GetFontBaked(t.size, pen.device_scale); }

/// First character at which a line of at most `width` must end, counted from `from`.
size_t fitting_end(const Pen& pen, Type t, std::string_view text, size_t from, float width) {
  ImFontBaked* glyphs = baked(pen, t);
  float x = 0;
  size_t at = from;
  while (at < text.size()) {
    size_t next = at;
    x += glyphs->GetCharAdvance(static_cast<ImWchar>(next_character(text, next)));
    if (x > width + 0.01f) break;
    at = next;
  }
  return at;
}

}  // namespace

bool load_faces(ImFontAtlas& atlas, const std::string_view (&bytes)[4], Faces& faces) {
  Faces loaded;
  for (int i = 0; i < 4; ++i) {
    const size_t head = table_offset(bytes[i], "head"), hhea = table_offset(bytes[i], "hhea");
    const float em = static_cast<float>(big_endian_16(bytes[i], head + 18));
    if (!(head > 0 && hhea > 0 && em > 0)) return false;
    const float ascender = static_cast<float>(static_cast<short>(big_endian_16(bytes[i], hhea + 4)));
    const float descender = static_cast<float>(static_cast<short>(big_endian_16(bytes[i], hhea + 6)));
    if (!(ascender > descender)) return false;
    loaded.box_per_em[i] = (ascender - descender) / em;
    loaded.ascent_per_em[i] = ascender / em;
  }
  for (int i = 0; i < 4; ++i) {
    ImFontConfig config;
    config.FontDataOwnedByAtlas = false;
    config.OversampleH = steps_across;
    config.OversampleV = 1;
    // Below zero means that sizes are counted by the em, as in a style sheet, not from ascender to descender. Dear ImGui then
    // scales the limits of an advance by a factor below zero as well, so "no limit" has to be below zero too.
    config.SizePixels = -16;
    config.GlyphMaxAdvanceX = -FLT_MAX;
    loaded.font[i] =
        atlas.AddFontFromMemoryTTF(const_cast<char*>(bytes[i].data()), static_cast<int>(bytes[i].size()), 0, &config);
    if (!loaded.font[i]) return false;
    if (i == index_of({Face::regular})) continue;
    config.MergeMode = true;  // into the font just added: letters that it lacks
    const std::string_view regular = bytes[index_of({Face::regular})];
    if (!atlas.AddFontFromMemoryTTF(const_cast<char*>(regular.data()), static_cast<int>(regular.size()), 0, &config))
      return false;
  }
  faces = loaded;
  return true;
}

float snapped(const Pen& pen, float v) { return std::floor(v * pen.device_scale + 0.5f) / pen.device_scale; }
ImVec2 snapped(const Pen& pen, ImVec2 p) { return {snapped(pen, p.x), snapped(pen, p.y)}; }
float snapped_to_middle(const Pen& pen, float v) { return (std::floor(v * pen.device_scale) + 0.5f) / pen.device_scale; }

float box_height(const Pen& pen, Type t) { return t.size * pen.faces->box_per_em[index_of(t)]; }

float text_width(const Pen& pen, Type t, std::string_view text) {
  ImFontBaked* glyphs = baked(pen, t);
  float x = 0;
  for (size_t at = 0; at < text.size();) x += glyphs->GetCharAdvance(static_cast<ImWchar>(next_character(text, at)));
  return x;
}

float draw_text_on(const Pen& pen, Type t, ImVec2 at, ImU32 colour, std::string_view text, Align align) {
  ImFontBaked* glyphs = baked(pen, t);
  // Baking may move the atlas to a new texture, which starts a new draw command: bake all before the first vertex.
  float width = 0;
  int visible = 0;
  for (size_t i = 0; i < text.size();) {
    const ImFontGlyph* g = glyphs->FindGlyph(static_cast<ImWchar>(next_character(text, i)));
    width += g->AdvanceX;
    visible += static_cast<int>(g->Visible);
  }
  const ImVec4 sight = pen.dl->_CmdHeader.ClipRect;
  if (at.y + t.size < sight.y || at.y - 2 * t.size > sight.w) return width;
  if (align == Align::centre) at.x -= width / 2;
  if (align == Align::right) at.x -= width;
  at = snapped(pen, at);
  const float step = pen.device_scale * steps_across;
  const float rise = std::floor(glyphs->Ascent + 0.5f);
  // The baked offset of half the filter's width is in device pixels, not in CSS pixels.
  const float filter_shift = (steps_across - 1) / (2.0f * steps_across) * (1 - 1 / pen.device_scale);
  float x = at.x;
  pen.dl->PrimReserve(6 * visible, 4 * visible);
  for (size_t i = 0; i < text.size();) {
    const ImFontGlyph* g = glyphs->FindGlyph(static_cast<ImWchar>(next_character(text, i)));
    if (g->Visible) {
      const float gx = std::floor(x * step + 0.5f) / step + filter_shift, gy = at.y - rise;
      pen.dl->PrimRectUV({gx + g->X0, gy + g->Y0}, {gx + g->X1, gy + g->Y1}, {g->U0, g->V0}, {g->U1, g->V1}, colour);
    }
    x += g->AdvanceX;
  }
  return width;
}

float draw_text(const Pen& pen, Type t, ImVec2 at, ImU32 colour, std::string_view text, Align align) {
  const int i = index_of(t);
  const float half_leading = (t.line - t.size * pen.faces->box_per_em[i]) / 2;
  return draw_text_on(pen, t, {at.x, at.y + half_leading + t.size * pen.faces->ascent_per_em[i]}, colour, text, align);
}

std::string elided(const Pen& pen, Type t, std::string_view text, float width) {
  if (text_width(pen, t, text) <= width + 0.01f) return std::string(text);
  size_t end = fitting_end(pen, t, text, 0, width - text_width(pen, t, "…"));
  while (end > 0 && text[end - 1] == ' ') --end;
  return std::string(text.substr(0, end)) + "…";
}

std::vector<std::string_view> wrapped(const Pen& pen, Type t, std::string_view text, float width) {
  std::vector<std::string_view> lines;
  size_t from = 0;
  while (from < text.size()) {
    const size_t feed = text.find('\n', from);
    const size_t stop = feed == std::string_view::npos ? text.size() : feed;
    size_t end = fitting_end(pen, t, text.substr(0, stop), from, width);
    size_t next = end;
    if (end < stop) {
      const size_t space = text.rfind(' ', end);
      if (space != std::string_view::npos && space > from) {
        end = space;
        next = space + 1;
      } else if (end == from) {
        next_character(text, end);  // narrower than one letter: one letter a line, so that it ends
        next = end;
      }
    } else if (feed != std::string_view::npos) {
      next = stop + 1;
    }
    lines.push_back(text.substr(from, end - from));
    from = next;
  }
  return lines;
}

float draw_wrapped(const Pen& pen, Type t, ImVec2 at, float width, ImU32 colour, std::string_view text, int most_lines) {
  const std::vector<std::string_view> lines = wrapped(pen, t, text, width);
  const int count = static_cast<int>(lines.size());
  for (int i = 0; i < count && i < most_lines; ++i) {
    const std::string_view line = lines[static_cast<size_t>(i)];
    const ImVec2 line_at{at.x, at.y + t.line * static_cast<float>(i)};
    if (i + 1 == most_lines && i + 1 < count) {
      const std::string_view rest = text.substr(static_cast<size_t>(line.data() - text.data()));
      draw_text(pen, t, line_at, colour, elided(pen, t, rest, width));
    } else {
      draw_text(pen, t, line_at, colour, line);
    }
  }
  return t.line * static_cast<float>(count < most_lines ? count : most_lines);
}

float wrapped_height(const Pen& pen, Type t, std::string_view text, float width, int most_lines) {
  const int count = static_cast<int>(wrapped(pen, t, text, width).size());
  return t.line * static_cast<float>(count < most_lines ? count : most_lines);
}

}  // namespace shoalwright
