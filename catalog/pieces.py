#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Writes the kinds of pieces as constant data of the program (core/catalog/piece_kind.h): pieces.py PIECES.json OUT.cpp"""
import json
import pathlib
import sys

SHELVES = ["wood", "stone", "caves", "plants", "devices"]
DRAWINGS = ["branch", "facets", "dome", "stem_thicket", "rosette", "fern", "carpet", "moss", "floating_cover", "litter"]
MATERIALS = ["wood", "stone", "slate", "limestone", "clay", "leaf", "litter", "device"]
SHARES = {"gap_cm": (0, 20), "filled": (0, 1), "displaces": (0, 1), "density_kg_l": (0, 8), "shelter": (0, 1), "shade": (0, 1)}
FLAGS = ["lime", "leaf", "floats"]


def check(good, sentence):
    if not good:
        sys.exit(f"pieces.py: {sentence}")


def number(value):
    text = repr(float(value))
    return text + "f"


def row(values):
    return "{" + ", ".join(values) + "}"


def one_of(words, kind, key):
    check(kind.get(key) in words, f"{kind['id']}: {key} must be one of {', '.join(words)}")
    return kind[key]


def outline_rows(outlines):
    for name, spots in outlines.items():
        check(all(abs(u) <= 0.5 and abs(v) <= 0.5 for u, v in spots), f"outline {name} leaves its unit square")
        yield f"constexpr Spot {symbol('outline', name)}[] = {row(row(map(number, spot)) for spot in spots)};"


def symbol(what, name):
    return what + "_" + name.replace("-", "_")


def prism(kind, p, outlines):
    check(p["outline"] in outlines, f"{kind['id']}: there is no outline {p['outline']}")
    check(0 <= p["from"] < p["to"] <= 1, f"{kind['id']}: a prism runs from 0 to 1 of the height, upward")
    lean, top = p.get("lean", [0, 0]), p.get("top", 1)
    for scale, (lu, lv) in ((1, (0, 0)), (top, lean)):
        for at, off, size in zip(p["at"], (lu, lv), p["size"]):
            check(abs(at + off) + size * scale / 2 <= 0.501, f"{kind['id']}: a prism leaves the box of the piece")
    numbers = [*p["at"], *p["size"], p["from"], p["to"], top, *lean]
    return row([symbol("outline", p["outline"]), *map(number, numbers)])


def kind_rows(kind, outlines):
    name, lines, spans = kind["id"], [], []
    prisms, limbs = kind.get("prisms", []), kind.get("limbs", [])
    check(prisms or limbs, f"{name} has no solids")
    if prisms:
        lines.append(f"constexpr Prism {symbol('prisms', name)}[] = {row(prism(kind, p, outlines) for p in prisms)};")
        spans.append(f".prisms = {symbol('prisms', name)}")
    for i, limb in enumerate(limbs):
        points = row(row(map(number, point)) for point in limb["points"])
        lines.append(f"constexpr LimbPoint {symbol('limb', name)}_{i}[] = {points};")
    if limbs:
        rows = [row([f"{symbol('limb', name)}_{i}", *map(number, limb["radius"])]) for i, limb in enumerate(limbs)]
        lines.append(f"constexpr Limb {symbol('limbs', name)}[] = {row(rows)};")
        spans.append(f".limbs = {symbol('limbs', name)}")
    fields = [f'.id = "{name}"', f'.name = "{kind["name"]}"', f".shelf = PieceShelf::{one_of(SHELVES, kind, 'shelf')}"]
    fields.append(f".drawing = PieceDrawing::{one_of(DRAWINGS, kind, 'drawing')}")
    fields.append(f".material = Material::{one_of(MATERIALS, kind, 'material')}")
    fields += [f".{axis}_cm = {number(size)}" for axis, size in zip(("length", "depth", "height"), kind["usual_cm"])]
    for key, (low, high) in SHARES.items():
        if key in kind:
            check(low <= kind[key] <= high, f"{name}: {key} must lie within {low} and {high}")
            fields.append(f".{key} = {number(kind[key])}")
    if "hides" in kind:
        fields.append(f".hides = {int(kind['hides'])}")
    fields += [f".{flag} = true" for flag in FLAGS if kind.get(flag)]
    known = {"id", "name", "shelf", "drawing", "material", "usual_cm", "hides", "prisms", "limbs", *SHARES, *FLAGS}
    check(not set(kind) - known, f"{name}: unknown keys {sorted(set(kind) - known)}")
    return lines, "    {" + ", ".join(fields + spans) + "},"


def main():
    source, out = map(pathlib.Path, sys.argv[1:])
    data = json.loads(source.read_text())
    lines, rows = list(outline_rows(data["outlines"])), []
    for kind in data["kinds"]:
        own, entry = kind_rows(kind, data["outlines"])
        lines += own
        rows.append(entry)
    check(len({kind["id"] for kind in data["kinds"]}) == len(rows), "an id stands twice")
    body = "\n".join(lines)
    table = "\n".join(rows)
    out.write_text(f"""// Made by catalog/pieces.py.
#include "catalog/piece_kind.h"

namespace shoalwright {{

namespace {{

{body}

constexpr PieceKind kinds[] = {{
{table}
}};

}}  // namespace

std::span<const PieceKind> piece_kinds() {{ return kinds; }}

}}  // namespace shoalwright
""")


main()
