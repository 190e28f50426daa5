// SPDX-License-Identifier: MIT
#include "units/packed_json.h"

#include <cstdint>

namespace shoalwright {

namespace {

class Unpacker {
 public:
  explicit Unpacker(std::string_view bytes) : rest_(bytes) {
    texts_.resize(number());
    for (std::string_view& text : texts_) {
      const std::size_t length = number();
      text = rest_.substr(0, length);
      rest_.remove_prefix(length);
    }
  }

  void value(Json& into) {
    enum : std::uint8_t { null, no, yes, number_kind, text_kind, list, object };
    const auto kind = static_cast<std::uint8_t>(rest_.front());
    rest_.remove_prefix(1);
    switch (kind) {
      case null: return;
      case no:
      case yes:
        into.kind = Json::Kind::boolean;
        into.boolean = kind == yes;
        return;
      case number_kind: {
        into.kind = Json::Kind::number;
        const std::size_t zigzag = number();
        const auto size = static_cast<double>(zigzag >> 1);
        // Both are exact, so the quotient is the double nearest to the decimal number.
        static constexpr double power[] = {1, 10, 100, 1000, 10000, 100000, 1000000, 10000000, 100000000};
        into.number = (zigzag & 1 ? -size : size) / power[number()];
        return;
      }
      case text_kind:
        into.kind = Json::Kind::text;
        into.text = texts_[number()];
        return;
      case list:
        into.kind = Json::Kind::list;
        into.items.resize(number());
        for (Json& item : into.items) value(item);
        return;
      case object:
        into.kind = Json::Kind::object;
        into.members.resize(number());
        for (JsonMember& member : into.members) {
          member.key = texts_[number()];
          value(member.value);
        }
        return;
    }
  }

 private:
  std::string_view rest_;
  std::vector<std::string_view> texts_;

  std::size_t number() {
    std::size_t result = 0;
    for (int shift = 0;; shift += 7) {
      const auto byte = static_cast<std::uint8_t>(rest_.front());
      rest_.remove_prefix(1);
      result |= static_cast<std::size_t>(byte & 127) << shift;
      if (byte < 128) return result;
    }
  }
};

}  // namespace

Json unpack_json(std::string_view bytes) {
  Json root;
  Unpacker(bytes).value(root);
  return root;
}

}  // namespace shoalwright
