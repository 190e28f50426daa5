// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <string>

#include "views/meetings_view.h"

namespace shoalwright {

namespace {

constexpr float lane_height = 40, capsule_height = 26, line_height = 30, gap = 6, between_lanes = 12;
constexpr float dot_step = 7, before_dots = 26, after_dots = 5;
constexpr std::size_t rows = 7;

/// On a lane, or on the line between two where the group uses both.
std::size_t row_of(const MeetingGroup& group) {
  std::size_t first = rows, last = 0;
  for (std::size_t level = 0; level < 4; ++level) {
    if (!group.levels[level]) continue;
    first = std::min(first, 2 * level);
    last = 2 * level;
  }
  return first == rows ? 4 : (first + last) / 2;
}

Capsule capsule_of(const Pen& pen, const MeetingGroup& group, float width) {
  Capsule capsule;
  capsule.row = row_of(group);
  const int most = std::max(static_cast<int>((width * 0.55f - before_dots) / dot_step), 3);
  capsule.dots = std::min(group.count, most);
  capsule.more = group.count - capsule.dots;
  const float words = capsule.more > 0 ? text_width(pen, type::axis, "+" + std::to_string(capsule.more)) + 2 : 0;
  capsule.box.w = before_dots + static_cast<float>(capsule.dots) * dot_step + words + after_dots;
  capsule.box.h = capsule_height;
  return capsule;
}

using Line = std::vector<Capsule*>;

float width_of(const Line& line) {
  float sum = 0;
  for (const Capsule* capsule : line) sum += capsule->box.w;
  return sum;
}

std::vector<Line> lines_of(std::vector<Capsule>& all, std::size_t row, float width) {
  std::vector<Line> lines;
  for (Capsule& capsule : all) {
    if (capsule.row != row) continue;
    if (lines.empty() || width_of(lines.back()) + capsule.box.w + static_cast<float>(lines.back().size()) * gap > width)
      lines.emplace_back();
    lines.back().push_back(&capsule);
  }
  return lines;
}

/// What is left of a line is shared out unevenly, so that those of different rows do not stand in one column.
void spread_out(const Line& line, std::size_t turn, float x, float width, float middle) {
  const float each = (width - width_of(line)) / static_cast<float>(line.size());
  float at = x + each * std::fmod(0.15f + 0.4f * static_cast<float>(turn), 1.0f);
  for (Capsule* capsule : line) {
    capsule->box.x = std::floor(at);
    capsule->box.y = std::floor(middle - capsule_height / 2);
    at += capsule->box.w + each;
  }
}

}  // namespace

MeetingsLayout meetings_layout(const Pen& pen, const std::vector<MeetingGroup>& groups, ImVec2 at, float width) {
  MeetingsLayout out;
  for (const MeetingGroup& group : groups) out.capsules.push_back(capsule_of(pen, group, width));
  std::size_t turn = 0;
  float y = at.y;
  for (std::size_t row = 0; row < rows; ++row) {
    const std::vector<Line> lines = lines_of(out.capsules, row, width - 2 * gap);
    const float all = line_height * static_cast<float>(lines.size());
    const bool is_lane = row % 2 == 0;
    // On the line between two lanes a capsule reaches into both.
    const float high = is_lane ? std::max(all + lane_height - line_height, lane_height) : std::max(all - 2 * gap, between_lanes);
    for (std::size_t i = 0; i < lines.size(); ++i)
      spread_out(lines[i], turn++, at.x + gap, width - 2 * gap,
                 y + (high - all) / 2 + line_height * (static_cast<float>(i) + 0.5f));
    if (is_lane) out.lanes[row / 2] = {at.x, y, width, high};
    y += high;
  }
  out.height = y - at.y;
  return out;
}

}  // namespace shoalwright
