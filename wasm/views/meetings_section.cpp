// SPDX-License-Identifier: MIT
// Who meets whom: the levels of the tank as lanes, each group a capsule with one dot for each animal, an arc between two of whom
// there is something to say, and the same below in words.
#include <algorithm>
#include <cmath>
#include <string>

#include "app/retold.h"
#include "draw/buttons.h"
#include "draw/geometry.h"
#include "draw/marks.h"
#include "draw/panels.h"
#include "platform/platform.h"
#include "views/pane.h"

namespace shoalwright {

namespace {

constexpr float names_width = 50, number_radius = 8.5f;

void look_again(const Look& look, MeetingsDesk& desk) {
  if (desk.of && *desk.of == look.shown) return;
  BodyRooms bodies = look.shown_bodies;
  desk.of = look.shown;
  desk.found = meetings_of(look.shown, look.catalog, bodies);
}

ImVec2 disc_of(const Capsule& capsule) { return {capsule.box.x + 13, capsule.box.y + capsule.box.h / 2}; }

void draw_capsule(const Pen& pen, const Look& look, const MeetingGroup& group, const Capsule& capsule, float strength) {
  const Palette& p = *pen.palette;
  const int plate = plate_of(look, group.species);
  const bool held = look.held && look.held->species->id == group.species;
  const float round = capsule.box.h / 2;
  pen.dl->AddRectFilled(capsule.box.min(), capsule.box.max(), p.raised, round);
  const ImU32 edge = with_alpha(held ? p.act : p.edge, strength);
  if (held) {
    const ImVec2 a = capsule.box.min(), b = capsule.box.max();
    for (const float y : {a.y, b.y}) {
      const ImVec2 side[] = {{a.x + round, y}, {b.x - round, y}};
      dashed_line(pen.dl, side, dash_ghost_outline(), edge, 1.5f);
    }
    for (const float x : {a.x + round, b.x - round}) {
      const float from = x < (a.x + b.x) / 2 ? 1.5708f : -1.5708f;
      pen.dl->PathArcTo({x, a.y + round}, round, from, from + 3.1416f);
      pen.dl->PathStroke(edge, 0, 1.5f);
    }
  } else {
    pen.dl->AddRect(capsule.box.min(), capsule.box.max(), edge, round);
  }
  draw_plate(pen, plate, disc_of(capsule));
  const ImU32 key = with_alpha(key_colour(p, plate), strength);
  float x = capsule.box.x + 29;
  for (int i = 0; i < capsule.dots; ++i, x += 7) pen.dl->AddCircleFilled({x, disc_of(capsule).y}, 2.4f, key);
  if (capsule.more > 0)
    draw_text(pen, type::axis, {x, capsule.box.y + 6}, with_alpha(p.ink2, strength), "+" + std::to_string(capsule.more));
}

/// The way from one capsule to another: from edge to edge, bent so that it leaves and arrives upright.
struct Arc {
  ImVec2 from, from_bend, to_bend, to;
  ImVec2 at(float t) const {
    const float u = 1 - t, a = u * u * u, b = 3 * u * u * t, c = 3 * u * t * t, d = t * t * t;
    return {a * from.x + b * from_bend.x + c * to_bend.x + d * to.x, a * from.y + b * from_bend.y + c * to_bend.y + d * to.y};
  }
};

/// Ends of several arcs at one capsule stand side by side.
Arc arc_between(const Capsule& a, const Capsule& b, int nth_at_a, int nth_at_b) {
  const auto end = [](const Capsule& one, int nth) {
    const float x = disc_of(one).x + 7 * static_cast<float>(nth);
    return std::min(x, one.box.right() - 8);
  };
  Arc arc;
  if (a.row == b.row && std::abs(a.box.y - b.box.y) < 1) {
    const float y = a.box.bottom();
    arc = {{end(a, nth_at_a), y}, {end(a, nth_at_a), y + 26}, {end(b, nth_at_b), y + 26}, {end(b, nth_at_b), y}};
  } else {
    const bool down = a.box.y < b.box.y;
    const float from_y = down ? a.box.bottom() : a.box.y, to_y = down ? b.box.y : b.box.bottom();
    const float bend = std::max(std::abs(to_y - from_y) * 0.6f, 14.0f) * (down ? 1.0f : -1.0f);
    arc = {
        {end(a, nth_at_a), from_y}, {end(a, nth_at_a), from_y + bend}, {end(b, nth_at_b), to_y - bend}, {end(b, nth_at_b), to_y}};
  }
  return arc;
}

void draw_arc(const Pen& pen, const Arc& arc, Severity severity, bool pointed, float strength) {
  const Palette& p = *pen.palette;
  const ImU32 colour = with_alpha(loud(severity) ? p.call : p.ink2, strength);
  const float stroke = (loud(severity) ? 2.6f : 1.4f) + (pointed ? 1.0f : 0.0f);
  if (severity != Severity::note) {
    pen.dl->AddBezierCubic(arc.from, arc.from_bend, arc.to_bend, arc.to, colour, stroke);
    return;
  }
  std::vector<ImVec2> way;
  for (int i = 0; i <= 24; ++i) way.push_back(arc.at(static_cast<float>(i) / 24));
  dashed_line(pen.dl, way, dash_edge_drop(), colour, stroke);
}

/// Where its number stands: near the middle, beside the arc where it must, clear of capsules and of other numbers.
ImVec2 number_place(const Arc& arc, const MeetingsLayout& layout, std::vector<ImVec2>& taken) {
  const auto clear_at = [&](ImVec2 at) {
    float clear = 100;
    for (const ImVec2& other : taken) clear = std::min(clear, std::hypot(other.x - at.x, other.y - at.y) - 2 * number_radius);
    for (const Capsule& capsule : layout.capsules) {
      const float dx = std::max({capsule.box.x - at.x, at.x - capsule.box.right(), 0.0f}),
                  dy = std::max({capsule.box.y - at.y, at.y - capsule.box.bottom(), 0.0f});
      clear = std::min(clear, std::hypot(dx, dy) - number_radius);
    }
    return clear;
  };
  ImVec2 best = arc.at(0.5f);
  float best_clear = -100;
  for (const float off : {0.0f, -9.0f, 9.0f, -16.0f, 16.0f}) {
    for (const float t : {0.5f, 0.43f, 0.57f, 0.36f, 0.64f, 0.29f, 0.71f, 0.22f, 0.78f, 0.15f, 0.85f}) {
      const ImVec2 on = arc.at(t), at{on.x, on.y + off};
      const float clear = clear_at(at);
      if (clear > best_clear) best = at, best_clear = clear;
      if (best_clear >= 1) break;
    }
    if (best_clear >= 1) break;
  }
  taken.push_back(best);
  return best;
}

void draw_number(const Pen& pen, ImVec2 at, std::size_t number, Severity severity, bool pointed) {
  const Palette& p = *pen.palette;
  const ImU32 ink = loud(severity) ? p.call : p.ink2;
  pen.dl->AddCircleFilled(at, number_radius, pointed ? p.actSoft : p.raised);
  pen.dl->AddCircle(at, number_radius, ink, 0, 1.5f);
  draw_text(pen, semibold(type::axis), {at.x, at.y - 7}, p.ink, std::to_string(number), Align::centre);
}

std::string heading_of(const Pane& pane, const Finding& finding) {
  return retold(pane.look.measures, finding.text, about_of(finding.rule));
}

void draw_lanes(Pane& pane, const MeetingsLayout& layout, int& pointed) {
  constexpr const char* names[] = {"Surface", "Upper", "Middle", "Floor"};
  const Pen pen = pen_of(pane.ui);
  const Palette& p = *pane.ui.palette;
  const Meetings& all = pane.mine.meetings.found;
  const int before = pane.mine.meetings.pointed;
  for (std::size_t i = 0; i < 4; ++i) {
    const Box& lane = layout.lanes[i];
    draw_panel(pen, lane, i % 2 == 0 ? p.raised : p.sunk, p.line, 3);
    draw_text(pen, type::small, {lane.x - 6, lane.y + lane.h / 2 - 8}, p.ink2, names[i], Align::right);
  }
  const auto among = [&](std::size_t group) {
    return before < 0 || all.meetings[static_cast<std::size_t>(before)].a == group ||
           all.meetings[static_cast<std::size_t>(before)].b == group;
  };
  std::vector<int> ends(all.groups.size(), 0);
  std::vector<Arc> arcs;
  for (const Meeting& meeting : all.meetings)
    arcs.push_back(arc_between(layout.capsules[meeting.a], layout.capsules[meeting.b], ends[meeting.a]++, ends[meeting.b]++));
  for (std::size_t i = arcs.size(); i-- > 0;) {
    const bool on = before == static_cast<int>(i);
    draw_arc(pen, arcs[i], all.meetings[i].findings.front().severity, on, before < 0 || on ? 1.0f : 0.25f);
  }
  for (std::size_t i = 0; i < all.groups.size(); ++i)
    draw_capsule(pen, pane.look, all.groups[i], layout.capsules[i], among(i) ? 1.0f : 0.35f);
  std::vector<ImVec2> taken;
  for (std::size_t i = 0; i < arcs.size(); ++i) {
    const Finding& worst = all.meetings[i].findings.front();
    const ImVec2 at = number_place(arcs[i], layout, taken);
    const Box box{at.x - 10, at.y - 10, 20, 20};
    const std::string id = "meetings/" + std::to_string(i) + "/arc";
    const Item of = item(pane.ui, id, box, heading_of(pane, worst), {.rounding = 10, .exact = true, .pointer_only = true});
    if (of.hovered) pointed = static_cast<int>(i);
    draw_number(pen, at, i + 1, worst.severity, before == static_cast<int>(i));
  }
}

/// The number, the grade, who, and what there is to say of the two.
void draw_meeting(Pane& pane, std::size_t nth, int& pointed) {
  const Pen pen = pen_of(pane.ui);
  const Palette& p = *pane.ui.palette;
  const Meetings& all = pane.mine.meetings.found;
  const Meeting& meeting = all.meetings[nth];
  const float indent = 26, room = pane.w - indent, top = pane.y;
  const bool on = pane.mine.meetings.pointed == static_cast<int>(nth);
  float height = 8;
  for (const Finding& finding : meeting.findings)
    height += 20 + wrapped_height(pen, medium(type::body), heading_of(pane, finding), room);
  const Box box{pane.x, top, pane.w, height};
  const std::string id = "meetings/" + std::to_string(nth);
  const Item of = item(pane.ui, id, box, heading_of(pane, meeting.findings.front()), {.ring = Ring::inside, .exact = true});
  if (of.hovered || of.ring) pointed = static_cast<int>(nth);
  if (on) draw_panel(pen, box, p.actSoft, 0, 3);
  draw_rule(pen, pane.x, top, pane.x + pane.w, p.line);
  draw_number(pen, {pane.x + 11, top + 16}, nth + 1, meeting.findings.front().severity, on);
  float y = top + 6;
  for (const Finding& finding : meeting.findings) {
    float x = pane.x + indent;
    draw_grade(pen, finding.severity, {x + 7, y + 10});
    x += 20;
    x += draw_text(pen, semibold(type::body), {x, y + 1}, loud(finding.severity) ? p.call : p.ink, grade_word(finding.severity)) +
         6;
    for (const std::size_t group : {meeting.a, meeting.b}) {
      draw_plate(pen, plate_of(pane.look, all.groups[group].species), {snapped(pen, x) + 8, y + 10});
      x += 22;
    }
    y += 20;
    y += draw_wrapped(pen, medium(type::body), {pane.x + indent, y}, room, p.ink, heading_of(pane, finding));
  }
  if (of.ring) draw_ring(pane.ui, box, {.ring = Ring::inside});
  pane.y = top + height;
}

}  // namespace

void draw_meetings(Pane& pane) {
  MeetingsDesk& desk = pane.mine.meetings;
  const ButtonLook look{.kind = ButtonKind::secondary, .small = true};
  pane.y += 6;
  if (button(pane.ui, "meetings", pane.at(), desk.open ? "Close who meets whom" : "Who meets whom", look).pressed) {
    desk.open = !desk.open;
    platform::wake(2);
  }
  pane.y += 34;
  if (!desk.open) return;
  look_again(pane.look, desk);
  const Meetings& all = desk.found;
  if (desk.pointed >= static_cast<int>(all.meetings.size())) desk.pointed = -1;
  const std::size_t said = all.meetings.size();
  draw_note(pane, std::to_string(all.pairs) + (all.pairs == 1 ? " pair" : " pairs") + " looked at, " +
                      (said == 0 ? "nothing to say of any" : std::to_string(said) + " with something to say"));
  pane.y += 2;
  const MeetingsLayout layout =
      meetings_layout(pen_of(pane.ui), all.groups, {pane.x + names_width, pane.y}, pane.w - names_width);
  int pointed = -1;
  draw_lanes(pane, layout, pointed);
  add_spot(pane.ui, "meetings.lanes", {pane.x, pane.y, pane.w, layout.height}, "Who swims at which level");
  const bool below = std::any_of(all.meetings.begin(), all.meetings.end(), [&](const Meeting& one) {
    return layout.capsules[one.a].row == 6 && layout.capsules[one.b].row == 6;
  });
  pane.y += layout.height + (below ? 26 : 8);
  for (std::size_t i = 0; i < said; ++i) draw_meeting(pane, i, pointed);
  if (pointed != desk.pointed) platform::wake(1);
  desk.pointed = pointed;
}

}  // namespace shoalwright
