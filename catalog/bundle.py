#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Packs the species files for the program, as core/units/packed_json.h lays out: bundle.py SPECIES_FOLDER PACKED.cpp"""
import decimal
import json
import pathlib
import sys


def varint(number):
    out = bytearray()
    while number > 127:
        out.append(number & 127 | 128)
        number >>= 7
    out.append(number)
    return bytes(out)


class Packer:
    def __init__(self):
        self.texts = {}

    def text(self, text):
        return varint(self.texts.setdefault(text, len(self.texts)))

    def number(self, number):
        sign, digits, exponent = decimal.Decimal(number).as_tuple()
        size = int("".join(map(str, digits))) * 10 ** max(exponent, 0)
        decimals = max(-exponent, 0)
        if size >= 2**30 or decimals > 8:
            sys.exit(f"bundle.py: {number} has more digits than a card may give")
        return varint(size << 1 | sign) + varint(decimals)

    def value(self, value):
        if value is None or isinstance(value, bool):
            return {None: b"\0", False: b"\1", True: b"\2"}[value]
        if isinstance(value, (int, decimal.Decimal)):
            return b"\3" + self.number(value)
        if isinstance(value, str):
            return b"\4" + self.text(value)
        if isinstance(value, list):
            return b"\5" + varint(len(value)) + b"".join(map(self.value, value))
        return b"\6" + varint(len(value)) + b"".join(self.text(key) + self.value(item) for key, item in value.items())

    def pack(self, value):
        body = self.value(value)
        texts = [text.encode() for text in self.texts]
        return varint(len(texts)) + b"".join(varint(len(text)) + text for text in texts) + body


def no_key_twice(pairs):
    if len(dict(pairs)) != len(pairs):
        raise ValueError("a key stands twice in one object")
    return dict(pairs)


def read(file):
    try:
        return json.loads(file.read_text(), parse_float=decimal.Decimal, object_pairs_hook=no_key_twice)
    except ValueError as error:
        sys.exit(f"bundle.py: {file}: {error}")


def main():
    folder, packed = map(pathlib.Path, sys.argv[1:])
    data = Packer().pack([read(file) for file in sorted(folder.rglob("*.json"))])
    lines = ["".join(f"\\{byte:03o}" for byte in data[i : i + 32]) for i in range(0, len(data), 32)]
    text = "\n".join(f'      "{line}"' for line in lines)
    packed.write_text(f"""// Made by catalog/bundle.py.
#include "catalog/builtin.h"

namespace shoalwright {{

std::string_view builtin_cards() {{
  return {{
{text},
      {len(data)}}};
}}

}}  // namespace shoalwright
""")


main()
