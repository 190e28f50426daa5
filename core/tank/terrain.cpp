// SPDX-License-Identifier: MIT
#include "tank/terrain.h"

#include <algorithm>
#include <cmath>

namespace shoalwright {

double rise_at(const std::vector<LinePoint>& line, double x_cm) {
  if (line.empty()) return 0;
  if (!(x_cm > line.front().x_cm)) return line.front().rise_cm;
  for (std::size_t i = 1; i < line.size(); ++i) {
    const LinePoint &p = line[i - 1], &q = line[i];
    if (x_cm < q.x_cm) return p.rise_cm + (q.rise_cm - p.rise_cm) * ((x_cm - p.x_cm) / (q.x_cm - p.x_cm));
  }
  return line.back().rise_cm;
}

std::vector<LinePoint> fitted(std::vector<LinePoint> line, double from_length_cm, double to_length_cm, double most_rise_cm) {
  if (!(most_rise_cm > 0)) return line;
  for (LinePoint& point : line) point.rise_cm = std::clamp(point.rise_cm, -most_rise_cm, most_rise_cm);
  if (line.empty() || line.back().x_cm <= to_length_cm || !(from_length_cm > 0 && to_length_cm > 0)) return line;
  std::vector<LinePoint> whole = line;
  for (LinePoint& point : line) point.x_cm = std::min(point.x_cm * (to_length_cm / from_length_cm), to_length_cm);
  // Tenths, as the hand draws them and links carry them in few letters; the last may stand at the pane itself.
  for (std::size_t i = 0; i < line.size(); ++i) whole[i].x_cm = std::min(std::round(line[i].x_cm * 10) / 10, to_length_cm);
  const auto meet = [](const LinePoint& p, const LinePoint& q) { return !(p.x_cm < q.x_cm); };
  return std::adjacent_find(whole.begin(), whole.end(), meet) == whole.end() ? whole : line;
}

std::vector<LinePoint> held_under(std::vector<LinePoint> line, double most_cm) {
  std::vector<LinePoint> out;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const LinePoint& q = line[i];
    if (i > 0 && (line[i - 1].rise_cm > most_cm) != (q.rise_cm > most_cm)) {
      const LinePoint& p = line[i - 1];
      const double x_cm = std::round((p.x_cm + (q.x_cm - p.x_cm) * (most_cm - p.rise_cm) / (q.rise_cm - p.rise_cm)) * 10) / 10;
      if (x_cm > out.back().x_cm && x_cm < q.x_cm) out.push_back({x_cm, most_cm});
    }
    if (i > 0 && i + 1 < line.size() && line[i - 1].rise_cm >= most_cm && q.rise_cm >= most_cm && line[i + 1].rise_cm >= most_cm)
      continue;
    out.push_back({q.x_cm, std::min(q.rise_cm, most_cm)});
  }
  return out;
}

std::vector<LinePoint> mirrored(const std::vector<LinePoint>& line, double length_cm) {
  std::vector<LinePoint> out;
  for (auto point = line.rbegin(); point != line.rend(); ++point) out.push_back({length_cm - point->x_cm, point->rise_cm});
  return out;
}

}  // namespace shoalwright
