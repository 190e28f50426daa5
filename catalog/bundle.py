#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Packs the species files for the program, as core/units/packed_json.h lays out: bundle.py SPECIES_FOLDER DEMO.json OUT_FOLDER

Writes builtin_cards.cpp and cards.bin with all of them, and first_cards.cpp with those that the page's first look brings along:
the kinds of the demo, and the lowest codes.
"""
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


FIRST_CARDS = 24


def first_of(cards, demo):
    in_demo = {line["species"] for line in json.loads(demo.read_text())["stock"]}
    by_need = sorted(cards, key=lambda card: (card["id"] not in in_demo, card["code"]))
    return sorted(by_need[:FIRST_CARDS], key=lambda card: card["code"])


def as_source(function, data):
    lines = ["".join(f"\\{byte:03o}" for byte in data[i : i + 32]) for i in range(0, len(data), 32)]
    text = "\n".join(f'      "{line}"' for line in lines)
    return f"""// Made by catalog/bundle.py.
#include "catalog/builtin.h"

namespace shoalwright {{

std::string_view {function}() {{
  return {{
{text},
      {len(data)}}};
}}

}}  // namespace shoalwright
"""


def main():
    folder, demo, out = map(pathlib.Path, sys.argv[1:])
    cards = sorted((read(file) for file in folder.rglob("*.json")), key=lambda card: card["code"])
    for name, some in (("builtin_cards", cards), ("first_cards", first_of(cards, demo))):
        data = Packer().pack(some)
        (out / f"{name}.cpp").write_text(as_source(name, data))
        if some is cards:
            (out / "cards.bin").write_bytes(data)


main()
