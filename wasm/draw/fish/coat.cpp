// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/fish/shape.h"

namespace shoalwright {

namespace {

constexpr ImU32 black = rgb(0x0B0F12), white = rgb(0xFFFFFF);

}  // namespace

bool wears(const AnimalLook& look, Mark mark) {
  return std::find(look.marks.begin(), look.marks.end(), mark) != look.marks.end();
}

bool is_dark(ImU32 colour) {
  for (const int shift : {IM_COL32_R_SHIFT, IM_COL32_G_SHIFT, IM_COL32_B_SHIFT}) {
    if (((colour >> shift) & 255) >= 0x60) return false;
  }
  return true;
}

Coat coat_of(const AnimalLook& look) {
  const bool fish = build_of(look.form) == Build::fish;
  const float share = fish ? fish_shape(look.form).fin_accent : 0.3f, alpha = fish ? fish_shape(look.form).fin_alpha : 0.8f;
  Coat coat;
  coat.back = look.back;
  coat.flank = look.flank;
  coat.belly = look.belly;
  coat.rim_top = mix(look.back, black, 0.22f);
  coat.rim_bottom = mix(look.belly, mix(look.back, black, 0.3f), 0.32f);
  if (wears(look, Mark::glass)) {
    // Seen through: bones and gut show, the rest is a veil.
    for (ImU32* one : {&coat.back, &coat.flank, &coat.belly}) *one = with_alpha(*one, 0.5f);
    coat.rim_top = with_alpha(coat.rim_top, 0.75f);
    coat.rim_bottom = with_alpha(coat.rim_bottom, 0.75f);
  }
  // Clear fins are a pale tone of the flank.
  const ImU32 clear = mix(mix(look.flank, look.belly, 0.6f), look.back, 0.15f);
  const bool dark_fins = fish && fish_shape(look.form).dark_fins;
  const bool all = wears(look, Mark::coloured_fins), none = wears(look, Mark::clear_fins);
  const bool edged = wears(look, Mark::fin_edges) || wears(look, Mark::dark_edges) || wears(look, Mark::pale_edges);
  const ImU32 worn = is_dark(look.accent) && !dark_fins && !all ? mix(look.flank, look.back, 0.2f) : look.accent;
  // An edge in the accent shows only on fins that carry little of it.
  const float amount = all ? 0.92f : none ? 0.0f : wears(look, Mark::fin_edges) ? share * 0.35f : share;
  const float cover = all ? std::max(alpha, 0.88f) : alpha;
  const ImU32 fin = mix(clear, worn, amount);
  coat.fin = with_alpha(fin, cover);
  coat.fin_root = with_alpha(mix(fin, look.flank, 0.35f), std::min(1.0f, cover + 0.2f));
  coat.fin_edge = coat.fin;
  if (wears(look, Mark::fin_edges)) coat.fin_edge = with_alpha(look.accent, 0.95f);
  if (wears(look, Mark::dark_edges)) coat.fin_edge = with_alpha(look.mark, 0.95f);
  if (wears(look, Mark::pale_edges)) coat.fin_edge = with_alpha(mix(look.belly, white, 0.75f), 0.95f);
  if (!edged && look.fins == Fins::fan) {
    coat.fin_edge = with_alpha(mix(fin, mix(black, look.back, 0.5f), 0.45f), std::min(1.0f, cover + 0.05f));
  }
  coat.dorsal = wears(look, Mark::dark_dorsal) ? with_alpha(look.mark, 0.95f) : coat.fin;
  coat.tail = wears(look, Mark::tail_colour) ? with_alpha(look.accent, 0.92f) : coat.fin;
  coat.tail_edge = wears(look, Mark::tail_edge)     ? with_alpha(look.mark, 0.95f)
                   : wears(look, Mark::tail_colour) ? coat.tail
                                                    : coat.fin_edge;
  coat.tip = wears(look, Mark::pale_tips) ? with_alpha(white, 0.95f) : 0;
  coat.mark = look.mark;
  coat.bright = look.accent;
  coat.red = rgb(0xCF3A2B);
  coat.pale = mix(look.belly, white, 0.4f);
  coat.eye = wears(look, Mark::bright_eye) ? look.accent : rgb(0xF4EFE2);
  coat.pupil = rgb(0x14110F);
  coat.line = with_alpha(mix(look.back, black, 0.5f), 0.3f);
  return coat;
}

Coat silhouette_coat() {
  const auto ink = [](int amount) { return IM_COL32(amount, 0, 0, 255); };
  Coat coat;
  coat.back = coat.flank = coat.belly = coat.rim_top = coat.rim_bottom = ink(255);
  coat.fin = coat.fin_root = coat.fin_edge = coat.dorsal = coat.tail = coat.tail_edge = ink(158);
  coat.tip = 0;
  coat.mark = coat.bright = coat.red = coat.pale = ink(112);
  coat.eye = ink(0);
  coat.pupil = coat.line = ink(255);
  coat.flat = true;
  return coat;
}

}  // namespace shoalwright
