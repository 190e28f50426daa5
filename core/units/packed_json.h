// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "units/json.h"

namespace shoalwright {

/// The JSON value that catalog/bundle.py packed; numbers come without their text. Reading it takes a small part of the time that
/// JSON text takes, and all species are read at every start. The bytes are trusted: they are part of the program.
///
/// Layout, every count and number a varint (7 bits a byte, the lowest first): how many texts there are; each one's length and
/// bytes; then the value. A value is its kind (one byte) and what follows: null, false, true: nothing; number: digits (zigzag)
/// and decimals, meaning digits / 10^decimals; text: which one; list: how many, then the values; object: how many, then which
/// text is the key and the value, in turn.
Json unpack_json(std::string_view bytes);

}  // namespace shoalwright
