// SPDX-License-Identifier: MIT
#include "catalog/piece_kind.h"

#include <algorithm>

namespace shoalwright {

const PieceKind& piece_kind(std::string_view id) {
  static constexpr Spot corners[] = {{-0.5f, -0.5f}, {0.5f, -0.5f}, {0.5f, 0.5f}, {-0.5f, 0.5f}};
  static constexpr Prism box[] = {{.outline = corners}};
  static constexpr PieceKind unknown{.prisms = box};
  for (const PieceKind& kind : piece_kinds())
    if (kind.id == id) return kind;
  return unknown;
}

std::string called(std::string_view id) {
  std::string name(piece_kind(id).name);
  if (name.empty()) {
    name = id;
    std::replace(name.begin(), name.end(), '-', ' ');
    return name;
  }
  if (const std::size_t comma = name.find(", "); comma != std::string::npos)
    name = name.substr(comma + 2) + " " + name.substr(0, comma);
  for (char& letter : name)
    if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
  return name;
}

}  // namespace shoalwright
