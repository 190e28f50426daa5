// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <numbers>

#include "plan/check.h"
#include "plan/detail/checker.h"

namespace shoalwright {

namespace {

constexpr double most_cm = 2000;  // larger than any vessel that a keeper looks into
constexpr double most_glass_mm = 100;

double cross(Point origin, Point a, Point b) {
  return (a.x_cm - origin.x_cm) * (b.z_cm - origin.z_cm) - (a.z_cm - origin.z_cm) * (b.x_cm - origin.x_cm);
}

int side(double turn) { return turn > 0 ? 1 : turn < 0 ? -1 : 0; }

bool between(double low, double high, double value) {
  return low <= high ? low <= value && value <= high : high <= value && value <= low;
}

bool on_segment(Point a, Point b, Point p) {
  return side(cross(a, b, p)) == 0 && between(a.x_cm, b.x_cm, p.x_cm) && between(a.z_cm, b.z_cm, p.z_cm);
}

bool meet(Point a, Point b, Point c, Point d) {
  if (on_segment(a, b, c) || on_segment(a, b, d) || on_segment(c, d, a) || on_segment(c, d, b)) return true;
  return side(cross(a, b, c)) * side(cross(a, b, d)) < 0 && side(cross(c, d, a)) * side(cross(c, d, b)) < 0;
}

/// No two sides meet but neighbours, and those only in their corner.
bool is_simple(const std::vector<Point>& outline) {
  const std::size_t n = outline.size();
  for (std::size_t i = 0; i < n; ++i) {
    const Point a = outline[i], b = outline[(i + 1) % n];
    if (a == b || on_segment(a, b, outline[(i + 2) % n]) || on_segment(b, outline[(i + 2) % n], a)) return false;
    for (std::size_t j = i + 2; j < n; ++j)
      if ((j + 1) % n != i && meet(a, b, outline[j], outline[(j + 1) % n])) return false;
  }
  return true;
}

void check_outline(Checker& checker, const std::vector<Point>& outline) {
  const std::string place = "/tank/outline_cm";
  if (!(outline.size() >= 3 && outline.size() <= most_outline_points)) {
    checker.fail(place, "Expected 3 to " + std::to_string(most_outline_points) + " corners at " + place + ", found " +
                            std::to_string(outline.size()) + ".");
    return;
  }
  for (std::size_t i = 0; i < outline.size(); ++i) {
    checker.within(outline[i].x_cm, 0, most_cm, place + "/" + std::to_string(i) + "/0");
    checker.within(outline[i].z_cm, 0, most_cm, place + "/" + std::to_string(i) + "/1");
  }
  if (!checker.error && !is_simple(outline))
    checker.fail(place, "Expected corners in order round the tank at " + place + ", found sides that cross.");
}

/// The measures of the tank's shape are there and those of other shapes are not.
void check_measures(Checker& checker, const Tank& tank) {
  bool length = false, width = false, bow = false, diameter = false, side_length = false, front = false, outline = false;
  switch (tank.shape) {
    case Shape::rectangular: length = width = true; break;
    case Shape::bow_front: length = width = bow = true; break;
    case Shape::cylinder:
    case Shape::half_cylinder:
    case Shape::quarter_cylinder: diameter = true; break;
    case Shape::hexagon: side_length = true; break;
    case Shape::pentagon_corner: side_length = front = true; break;
    case Shape::prism: outline = true; break;
  }
  const auto measure = [&](bool counts, double value, const std::string& place) {
    if (counts)
      checker.above_zero(value, most_cm, place);
    else if (!(value == 0))
      checker.fail(place, "Expected nothing at " + place + ", which this shape of tank does not have.");
  };
  measure(length, tank.length_cm, "/tank/length_cm");
  measure(width, tank.width_cm, "/tank/width_cm");
  measure(bow, tank.bow_cm, "/tank/bow_cm");
  measure(diameter, tank.diameter_cm, "/tank/diameter_cm");
  measure(side_length, tank.side_cm, "/tank/side_cm");
  measure(front, tank.front_cm, "/tank/front_cm");
  measure(true, tank.height_cm, "/tank/height_cm");
  if (bow && !(tank.bow_cm <= tank.length_cm / 2))
    checker.fail("/tank/bow_cm",
                 "Expected a bow of at most half the length at /tank/bow_cm, since a front cannot bulge further.");
  if (front && !(tank.front_cm < tank.side_cm))
    checker.fail("/tank/front_cm", "Expected a side shorter than side_cm at /tank/front_cm.");
  if (outline)
    check_outline(checker, tank.outline_cm);
  else if (!tank.outline_cm.empty())
    checker.fail("/tank/outline_cm", "Expected nothing at /tank/outline_cm, which this shape of tank does not have.");
}

}  // namespace

void check_tank(Checker& checker, const Tank& tank) {
  check_measures(checker, tank);
  checker.above_zero(tank.glass_mm, most_glass_mm, "/tank/glass_mm");
  checker.above_zero(tank.fill_cm, most_cm, "/tank/fill_cm");
  if (!(tank.fill_cm <= tank.height_cm))
    checker.fail("/tank/fill_cm", "Expected a water line no higher than height_cm at /tank/fill_cm.");
  checker.text(tank.other_keys, "/tank");
}

std::optional<Error> check_tank(const Tank& tank) {
  Checker checker;
  check_tank(checker, tank);
  return checker.error;
}

double line_length_cm(const Tank& tank) {
  switch (tank.shape) {
    case Shape::rectangular:
    case Shape::bow_front: return tank.length_cm;
    case Shape::cylinder: return tank.diameter_cm;
    case Shape::half_cylinder: {  // its flat pane stands across the middle of the circle
      const double radius = tank.diameter_cm / 2, pane = tank.glass_mm / 10;
      return 2 * std::sqrt(std::max(0.0, radius * radius - pane * pane));
    }
    case Shape::quarter_cylinder: {  // across the corner, from flat pane to flat pane
      const double radius = tank.diameter_cm / 2, pane = tank.glass_mm / 10;
      return std::numbers::sqrt2 * std::max(0.0, std::sqrt(std::max(0.0, radius * radius - pane * pane)) - pane);
    }
    case Shape::hexagon: return 2 * tank.side_cm;
    case Shape::pentagon_corner: return std::numbers::sqrt2 * tank.side_cm;
    case Shape::prism: break;
  }
  if (tank.outline_cm.empty()) return 0;
  const auto [left, right] = std::minmax_element(tank.outline_cm.begin(), tank.outline_cm.end(),
                                                 [](const Point& p, const Point& q) { return p.x_cm < q.x_cm; });
  return right->x_cm - left->x_cm;
}

}  // namespace shoalwright
