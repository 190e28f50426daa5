// SPDX-License-Identifier: MIT
#pragma once

#include "imgui.h"

namespace shoalwright {

enum class Theme { light, dark };

/// Every colour of the look, named as in its tokens. s1 to s6 are the plate keys.
struct Palette {
  ImU32 ground;     ///< app background
  ImU32 panel;      ///< side columns, strips
  ImU32 raised;     ///< fields, buttons, tips, cards
  ImU32 sunk;       ///< tracks and plot wells
  ImU32 line;       ///< hairlines between rows (decorative)
  ImU32 edge;       ///< borders of controls, axis ticks
  ImU32 ink;        ///< main text and marks
  ImU32 ink2;       ///< supporting text
  ImU32 ink3;       ///< axis figures, scientific names, placeholder
  ImU32 act;        ///< actions, selected tab, sliders
  ImU32 onAct;      ///< text on act
  ImU32 actSoft;    ///< selected and preview backgrounds
  ImU32 focus;      ///< keyboard focus ring
  ImU32 call;       ///< Fix and Strain: their marks, numbers and hatching, nothing else
  ImU32 callSoft;   ///< optional ground behind a fix finding
  ImU32 onCall;     ///< text on call
  ImU32 crowd;      ///< crowding field, contours, hatch
  ImU32 crowdSoft;  ///< optional ground behind crowding notes
  ImU32 band;       ///< shared window, room there is
  ImU32 bandEdge;   ///< edge of the shared window or of the room there is
  ImU32 core;       ///< marker on the band
  ImU32 ghost;      ///< drop preview outlines
  ImU32 s1;         ///< plate key 1
  ImU32 s2;         ///< plate key 2
  ImU32 s3;         ///< plate key 3
  ImU32 s4;         ///< plate key 4
  ImU32 s5;         ///< plate key 5
  ImU32 s6;         ///< plate key 6
  ImU32 onKey;      ///< numeral on a plate key
  ImU32 waterTop;
  ImU32 waterMid;
  ImU32 waterBot;
  ImU32 ray;
  ImU32 glass;
  ImU32 glassEdge;
  ImU32 wall;
  ImU32 lamp;
  ImU32 sandF;
  ImU32 sandFd;
  ImU32 sandR;
  ImU32 grain1;
  ImU32 grain2;
  ImU32 wood;
  ImU32 woodHi;
  ImU32 woodLo;
  ImU32 stone1;
  ImU32 stone2;
  ImU32 stone3;
  ImU32 stone4;
  ImU32 leafA;
  ImU32 leafB;
  ImU32 leafC;
  ImU32 leafR;
  ImU32 carpA;
  ImU32 carpB;
  ImU32 floating;  ///< token "float", a word of the language
  ImU32 floatD;
  ImU32 root;
};

const Palette& palette(Theme theme);

/// Plate key colour of a group, counted from 1; keys beyond 6 use s1 to s6 again, below 1 the first.
ImU32 key_colour(const Palette& colours, int key);

/// A colour from its six hexadecimal figures, 0xRRGGBB, opaque.
constexpr ImU32 rgb(unsigned hex) { return IM_COL32((hex >> 16) & 255, (hex >> 8) & 255, hex & 255, 255); }

/// From a (t 0) to b (t 1), every channel on its own, alpha too; t outside is held to 0 to 1.
ImU32 mix(ImU32 a, ImU32 b, float t);

/// The same colour with its alpha set to 0 to 1, or scaled by a factor of 0 or more (held to opaque).
ImU32 with_alpha(ImU32 colour, float alpha);
ImU32 scale_alpha(ImU32 colour, float factor);

/// Reads "#rgb", "#rrggbb" or "#rrggbbaa"; `otherwise` when the text is none of them.
ImU32 colour_from_text(const char* text, ImU32 otherwise);

/// Relative luminance 0 to 1 by WCAG 2.2; alpha is ignored.
float luminance(ImU32 colour);

}  // namespace shoalwright
