// SPDX-License-Identifier: MIT
#include "share/detail/deflate.h"

#include <zlib.h>

namespace shoalwright {

namespace {

constexpr int raw_window = -15;  // 32 KiB, no header and no checksum of its own

Bytef* bytes(std::string_view text) { return reinterpret_cast<Bytef*>(const_cast<char*>(text.data())); }

}  // namespace

std::string deflate_text(std::string_view text) {
  z_stream stream{};
  if (deflateInit2(&stream, Z_BEST_COMPRESSION, Z_DEFLATED, raw_window, 9, Z_DEFAULT_STRATEGY) != Z_OK) return "";
  deflateSetDictionary(&stream, bytes(dictionary_v1()), static_cast<uInt>(dictionary_v1().size()));
  std::string packed(deflateBound(&stream, static_cast<uLong>(text.size())), '\0');
  stream.next_in = bytes(text);
  stream.avail_in = static_cast<uInt>(text.size());
  stream.next_out = bytes(packed);
  stream.avail_out = static_cast<uInt>(packed.size());
  deflate(&stream, Z_FINISH);
  packed.resize(stream.total_out);
  deflateEnd(&stream);
  return packed;
}

std::optional<std::string> inflate_text(std::string_view packed, std::size_t size) {
  z_stream stream{};
  if (inflateInit2(&stream, raw_window) != Z_OK) return std::nullopt;
  inflateSetDictionary(&stream, bytes(dictionary_v1()), static_cast<uInt>(dictionary_v1().size()));
  std::string text(size + 1, '\0');  // one byte more than there may be, to notice that there is more
  stream.next_in = bytes(packed);
  stream.avail_in = static_cast<uInt>(packed.size());
  stream.next_out = bytes(text);
  stream.avail_out = static_cast<uInt>(text.size());
  const int state = inflate(&stream, Z_FINISH);
  const bool exact = state == Z_STREAM_END && stream.total_out == size && stream.avail_in == 0;
  inflateEnd(&stream);
  if (!exact) return std::nullopt;
  text.resize(size);
  return text;
}

std::uint32_t crc32_of(std::string_view text) {
  return static_cast<std::uint32_t>(crc32(crc32(0, nullptr, 0), bytes(text), static_cast<uInt>(text.size())));
}

}  // namespace shoalwright
