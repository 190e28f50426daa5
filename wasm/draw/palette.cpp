// SPDX-License-Identifier: MIT
#include "draw/palette.h"

#include <algorithm>
#include <cmath>
#include <cstring>

namespace shoalwright {

namespace {

constexpr Palette light_palette = {
    .ground = rgb(0xE6ECEB),
    .panel = rgb(0xF6F9F8),
    .raised = rgb(0xFFFFFF),
    .sunk = rgb(0xDDE6E5),
    .line = rgb(0xC6D2D1),
    .edge = rgb(0x6B8085),
    .ink = rgb(0x10272E),
    .ink2 = rgb(0x3A5259),
    .ink3 = rgb(0x506469),
    .act = rgb(0x0E5A70),
    .onAct = rgb(0xFFFFFF),
    .actSoft = rgb(0xD0E4E8),
    .focus = rgb(0x0E5A70),
    .call = rgb(0x93311A),
    .callSoft = rgb(0xF5E2DB),
    .onCall = rgb(0xFFFFFF),
    .crowd = rgb(0x74296D),
    .crowdSoft = rgb(0xEAD9E8),
    .band = rgb(0xC4E0DB),
    .bandEdge = rgb(0x1C6B65),
    .core = rgb(0x10272E),
    .ghost = rgb(0x0E5A70),
    .s1 = rgb(0xA44A17),
    .s2 = rgb(0x3B4BA3),
    .s3 = rgb(0x0A6C68),
    .s4 = rgb(0x6B5800),
    .s5 = rgb(0x8A2F6B),
    .s6 = rgb(0x40566B),
    .onKey = rgb(0xFFFFFF),
    .waterTop = rgb(0xD6EDEC),
    .waterMid = rgb(0xB2D9DC),
    .waterBot = rgb(0x86BAC2),
    .ray = rgb(0xFFFFFF),
    .glass = rgb(0x7FA3A8),
    .glassEdge = rgb(0x2F555E),
    .wall = rgb(0xEEF2F0),
    .lamp = rgb(0x22424B),
    .sandF = rgb(0xCBB48F),
    .sandFd = rgb(0xA68B62),
    .sandR = rgb(0xB59C75),
    .grain1 = rgb(0x8B7350),
    .grain2 = rgb(0xE6D6B8),
    .wood = rgb(0x6A4A33),
    .woodHi = rgb(0x94704F),
    .woodLo = rgb(0x46301F),
    .stone1 = rgb(0x8D989B),
    .stone2 = rgb(0x6C797D),
    .stone3 = rgb(0xAEB8B9),
    .stone4 = rgb(0x525F63),
    .leafA = rgb(0x3C7A4A),
    .leafB = rgb(0x5E9C5B),
    .leafC = rgb(0x2A5A3C),
    .leafR = rgb(0xA2563F),
    .carpA = rgb(0x4E8C4A),
    .carpB = rgb(0x78AF62),
    .floating = rgb(0x6FA65A),
    .floatD = rgb(0x477C3F),
    .root = rgb(0x7D8F6C),
};

constexpr Palette dark_palette = {
    .ground = rgb(0x0A161A),
    .panel = rgb(0x102229),
    .raised = rgb(0x182F38),
    .sunk = rgb(0x0B1A20),
    .line = rgb(0x26404A),
    .edge = rgb(0x67878F),
    .ink = rgb(0xE6F0EF),
    .ink2 = rgb(0xB7CACC),
    .ink3 = rgb(0x97AEB2),
    .act = rgb(0x74C7D9),
    .onAct = rgb(0x05212A),
    .actSoft = rgb(0x183F4A),
    .focus = rgb(0x74C7D9),
    .call = rgb(0xF3A48D),
    .callSoft = rgb(0x3A221B),
    .onCall = rgb(0x2A0E06),
    .crowd = rgb(0xDDA2D4),
    .crowdSoft = rgb(0x3A2438),
    .band = rgb(0x1B4A4A),
    .bandEdge = rgb(0x6FC7BC),
    .core = rgb(0xE6F0EF),
    .ghost = rgb(0x74C7D9),
    .s1 = rgb(0xF0A06C),
    .s2 = rgb(0xA7B4F5),
    .s3 = rgb(0x5CCBC2),
    .s4 = rgb(0xD9C04A),
    .s5 = rgb(0xE59AC6),
    .s6 = rgb(0xA9C0D4),
    .onKey = rgb(0x0A161A),
    .waterTop = rgb(0x2C6470),
    .waterMid = rgb(0x1B4855),
    .waterBot = rgb(0x0F2E39),
    .ray = rgb(0xBDF0F0),
    .glass = rgb(0x3D646D),
    .glassEdge = rgb(0x8FB7BE),
    .wall = rgb(0x0C1A1F),
    .lamp = rgb(0x5D7F87),
    .sandF = rgb(0x7C6A4F),
    .sandFd = rgb(0x564731),
    .sandR = rgb(0x5E4F39),
    .grain1 = rgb(0x3C3222),
    .grain2 = rgb(0xA8926D),
    .wood = rgb(0x5B4230),
    .woodHi = rgb(0x8A6A4C),
    .woodLo = rgb(0x2B1D13),
    .stone1 = rgb(0x5C696D),
    .stone2 = rgb(0x434F53),
    .stone3 = rgb(0x7F8C8F),
    .stone4 = rgb(0x2C3639),
    .leafA = rgb(0x2F6A43),
    .leafB = rgb(0x579458),
    .leafC = rgb(0x1C4530),
    .leafR = rgb(0x96543F),
    .carpA = rgb(0x3B7440),
    .carpB = rgb(0x6BA35A),
    .floating = rgb(0x6BA158),
    .floatD = rgb(0x3D6B38),
    .root = rgb(0x78896A),
};

int channel(ImU32 colour, int shift) { return static_cast<int>((colour >> shift) & 255); }

int hex_digit(char c) {
  if (c >= '0' && c <= '9') return c - '0';
  if (c >= 'a' && c <= 'f') return c - 'a' + 10;
  if (c >= 'A' && c <= 'F') return c - 'A' + 10;
  return -1;
}

}  // namespace

const Palette& palette(Theme theme) {
  switch (theme) {
    case Theme::light: return light_palette;
    case Theme::dark: return dark_palette;
  }
  return light_palette;
}

ImU32 key_colour(const Palette& colours, int key) {
  const ImU32 keys[6] = {colours.s1, colours.s2, colours.s3, colours.s4, colours.s5, colours.s6};
  return keys[key < 1 ? 0 : (key - 1) % 6];
}

ImU32 mix(ImU32 a, ImU32 b, float t) {
  t = std::clamp(t, 0.0f, 1.0f);
  ImU32 out = 0;
  for (int shift = 0; shift < 32; shift += 8) {
    const float value = static_cast<float>(channel(a, shift)) * (1 - t) + static_cast<float>(channel(b, shift)) * t;
    out |= static_cast<ImU32>(value + 0.5f) << shift;
  }
  return out;
}

ImU32 with_alpha(ImU32 colour, float alpha) {
  const auto value = static_cast<ImU32>(std::clamp(alpha, 0.0f, 1.0f) * 255.0f + 0.5f);
  return (colour & ~IM_COL32_A_MASK) | (value << IM_COL32_A_SHIFT);
}

ImU32 scale_alpha(ImU32 colour, float factor) {
  return with_alpha(colour, static_cast<float>(channel(colour, IM_COL32_A_SHIFT)) / 255.0f * std::max(factor, 0.0f));
}

ImU32 colour_from_text(const char* text, ImU32 otherwise) {
  if (text == nullptr || text[0] != '#') return otherwise;
  const size_t digits = std::strlen(text + 1);
  if (digits != 3 && digits != 6 && digits != 8) return otherwise;
  int value[8] = {0, 0, 0, 0, 0, 0, 15, 15};
  for (size_t i = 0; i < digits; ++i) {
    const int digit = hex_digit(text[1 + i]);
    if (digit < 0) return otherwise;
    if (digits == 3) {
      value[2 * i] = value[2 * i + 1] = digit;
    } else {
      value[i] = digit;
    }
  }
  return IM_COL32(value[0] * 16 + value[1], value[2] * 16 + value[3], value[4] * 16 + value[5], value[6] * 16 + value[7]);
}

float luminance(ImU32 colour) {
  const auto linear = [](int value) {
    const float v = static_cast<float>(value) / 255.0f;
    return v <= 0.04045f ? v / 12.92f : std::pow((v + 0.055f) / 1.055f, 2.4f);
  };
  return 0.2126f * linear(channel(colour, IM_COL32_R_SHIFT)) + 0.7152f * linear(channel(colour, IM_COL32_G_SHIFT)) +
         0.0722f * linear(channel(colour, IM_COL32_B_SHIFT));
}

}  // namespace shoalwright
