// SPDX-License-Identifier: MIT
#include "draw/fish/kinds.h"

namespace shoalwright {

namespace {

constexpr const char* form_words[form_count] = {"slim-tetra",
                                                "deep-tetra",
                                                "hatchet",
                                                "rasbora",
                                                "danio",
                                                "barb",
                                                "goldfish-fancy",
                                                "goldfish-long",
                                                "livebearer",
                                                "molly",
                                                "corydoras",
                                                "sucker",
                                                "pleco",
                                                "eel-loach",
                                                "deep-loach",
                                                "labyrinth",
                                                "fighter",
                                                "dwarf-cichlid",
                                                "angelfish",
                                                "mbuna",
                                                "rainbow-thread",
                                                "killi",
                                                "puffer",
                                                "goby",
                                                "shrimp",
                                                "snail",
                                                "frog",
                                                "rainbowfish",
                                                "blue-eye",
                                                "ricefish",
                                                "four-eyes",
                                                "halfbeak",
                                                "gar",
                                                "pipefish",
                                                "whisker-catfish",
                                                "squeaker",
                                                "shovelnose",
                                                "shark-catfish",
                                                "glass-catfish",
                                                "banjo-catfish",
                                                "talking-catfish",
                                                "eel-catfish",
                                                "electric-catfish",
                                                "hoplo",
                                                "whiptail",
                                                "twig-catfish",
                                                "knifefish",
                                                "featherback",
                                                "elephantnose",
                                                "bichir",
                                                "ropefish",
                                                "lungfish",
                                                "spiny-eel",
                                                "sturgeon",
                                                "arowana",
                                                "butterflyfish",
                                                "archerfish",
                                                "moonfish",
                                                "sunfish",
                                                "leaffish",
                                                "bush-fish",
                                                "paradise-fish",
                                                "wild-betta",
                                                "snakehead",
                                                "mudskipper",
                                                "dragon-goby",
                                                "large-cichlid",
                                                "hump-cichlid",
                                                "parrot-cichlid",
                                                "discus",
                                                "eartheater",
                                                "hap",
                                                "slim-cichlid",
                                                "sardine-cichlid",
                                                "shell-dweller",
                                                "shark-minnow",
                                                "torpedo-barb",
                                                "algae-eater",
                                                "hillstream",
                                                "pacu",
                                                "headstander",
                                                "prochilodus",
                                                "pencilfish",
                                                "stingray",
                                                "long-arm-shrimp",
                                                "fan-shrimp",
                                                "crayfish",
                                                "crab",
                                                "cone-snail",
                                                "ramshorn",
                                                "apple-snail",
                                                "nerite",
                                                "horned-nerite",
                                                "limpet",
                                                "mid-tetra",
                                                "bristlenose"};

constexpr const char* mark_words[mark_count] = {
    "lateral-stripe", "half-stripe-red", "wedge",        "bars",          "tiger-bars",    "bands",      "dots",
    "spots",          "reticulate",      "eye-band",     "tail-spot",     "dorsal-spot",   "dark-band",  "fin-edges",
    "shell-stripes",  "honeycomb",       "glow-stripe",  "front-stripe",  "double-stripe", "stripes",    "back-stripe",
    "hockey-stripe",  "slant-stripe",    "oblique-bars", "saddles",       "blotches",      "patches",    "maze",
    "marbling",       "spangles",        "ocelli",       "tail-eye",      "shoulder-spot", "mid-spot",   "heart-spot",
    "cheek-stripe",   "head-patch",      "throat",       "belly-patch",   "rear-half",     "collar",     "tail-colour",
    "tail-edge",      "tail-tips",       "flag-tail",    "coloured-fins", "clear-fins",    "dark-edges", "pale-edges",
    "pale-tips",      "fin-dots",        "dark-dorsal",  "bright-eye",    "no-eye",        "glass"};

}  // namespace

const char* word_of(Form form) { return form_words[static_cast<int>(form)]; }

const char* word_of(Mark mark) { return mark_words[static_cast<int>(mark)]; }

bool form_from_word(const std::string& word, Form& form) {
  for (int i = 0; i < form_count; ++i) {
    if (word == form_words[i]) {
      form = static_cast<Form>(i);
      return true;
    }
  }
  return false;
}

bool mark_from_word(const std::string& word, Mark& mark) {
  for (int i = 0; i < mark_count; ++i) {
    if (word == mark_words[i]) {
      mark = static_cast<Mark>(i);
      return true;
    }
  }
  return false;
}

Build build_of(Form form) {
  switch (form) {
    case Form::shrimp:
    case Form::long_arm_shrimp:
    case Form::fan_shrimp: return Build::shrimp;
    case Form::crayfish: return Build::crayfish;
    case Form::crab: return Build::crab;
    case Form::snail:
    case Form::cone_snail:
    case Form::ramshorn:
    case Form::apple_snail:
    case Form::nerite:
    case Form::horned_nerite:
    case Form::limpet: return Build::snail;
    case Form::frog: return Build::frog;
    case Form::stingray: return Build::ray;
    default: return Build::fish;
  }
}

}  // namespace shoalwright
