// SPDX-License-Identifier: MIT
#include "tank/sizes.h"

#include <array>

#include "tank/glass.h"
#include "units/convert.h"

namespace shoalwright {

namespace {

constexpr UsualSize metric(const char* name, double length_cm, double width_cm, double height_cm, double glass_mm) {
  return {name, length_cm, width_cm, height_cm, glass_mm, false};
}

constexpr UsualSize us(const char* name, double length_in, double width_in, double height_in, double glass_mm) {
  return {name, cm_from_in(length_in), cm_from_in(width_in), cm_from_in(height_in), glass_mm, true};
}

constexpr std::array sizes{
    metric("20 L", 40, 20, 25, 4),          metric("27 L cube", 30, 30, 30, 4),     metric("54 L", 60, 30, 30, 5),
    metric("64 L cube", 40, 40, 40, 6),     metric("84 L", 60, 35, 40, 6),          metric("112 L", 80, 35, 40, 6),
    metric("125 L", 80, 35, 45, 6),         metric("160 L", 100, 40, 40, 8),        metric("180 L", 100, 40, 45, 8),
    metric("182 L", 90, 45, 45, 8),         metric("200 L", 100, 40, 50, 8),        metric("240 L", 120, 40, 50, 8),
    metric("300 L", 120, 50, 50, 10),       metric("360 L", 120, 50, 60, 10),       metric("375 L", 150, 50, 50, 10),
    metric("450 L", 150, 50, 60, 12),       metric("540 L", 150, 60, 60, 12),       metric("720 L", 200, 60, 60, 12),
    us("5.5 gallon", 16, 8, 10, 4),         us("10 gallon", 20, 10, 12, 4),         us("15 gallon", 24, 12, 12, 5),
    us("20 gallon high", 24, 12, 16, 5),    us("20 gallon long", 30, 12, 12, 5),    us("29 gallon", 30, 12, 18, 5),
    us("30 gallon breeder", 36, 18, 12, 6), us("40 gallon breeder", 36, 18, 16, 6), us("55 gallon", 48, 13, 21, 8),
    us("75 gallon", 48, 18, 21, 10),        us("90 gallon", 48, 18, 24, 10),        us("125 gallon", 72, 18, 21, 10),
    us("180 gallon", 72, 24, 24, 12),
};

}  // namespace

std::span<const UsualSize> usual_sizes() { return sizes; }

Tank box_tank(double length_cm, double width_cm, double height_cm, double glass_mm) {
  Tank outside;
  outside.length_cm = length_cm;
  outside.width_cm = width_cm;
  outside.height_cm = height_cm;
  outside.glass_mm = glass_mm;
  return inside_of(outside);
}

Tank tank_of(const UsualSize& size) { return box_tank(size.length_cm, size.width_cm, size.height_cm, size.glass_mm); }

}  // namespace shoalwright
