// SPDX-License-Identifier: MIT
#include "views/notice_view.h"

#include <algorithm>

#include "draw/buttons.h"
#include "draw/panels.h"

namespace shoalwright {

bool draw_notice(Ui& ui, const Box& window, std::string_view heading, std::string_view sentence) {
  constexpr float air = 16;
  const float width = std::min(420.0f, window.w - 2 * air);
  const float text_height = wrapped_height(pen_of(ui), type::body, sentence, width - 2 * air);
  const Box card{window.x + (window.w - width) / 2, window.y + window.h * 0.3f, width, air + 22 + text_height + 12 + 30 + air};
  // A window of its own, so that it lies over everything drawn before it, for the pointer as well.
  ImGui::SetCursorScreenPos(card.min());
  ImGui::BeginChild("notice", {card.w, card.h}, ImGuiChildFlags_NavFlattened, ImGuiWindowFlags_NoScrollbar);
  const Pen pen = pen_of(ui);
  draw_panel(pen, card, pen.palette->raised, pen.palette->edge, 6);
  add_spot(ui, "notice", card, heading);
  draw_text(pen, semibold(type::lead), {card.x + air, card.y + air}, pen.palette->ink, heading);
  draw_wrapped(pen, type::body, {card.x + air, card.y + air + 22}, width - 2 * air, pen.palette->ink2, sentence);
  const bool pressed =
      button(ui, "notice/back", {card.x + air, card.bottom() - air - 30}, "Back to my plan", {.kind = ButtonKind::remedy})
          .pressed;
  ImGui::EndChild();
  return pressed || ImGui::IsKeyPressed(ImGuiKey_Escape);
}

}  // namespace shoalwright
