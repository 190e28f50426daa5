#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Our distance transform against scipy's on the same grids, turn about in one run: distance_ratio.py DISTANCE_BENCH

The grids are those of tests/scape/box_grid.h; that both find the same squared distances is what tests/scape/distance_test.cpp checks.
"""
import re
import subprocess
import sys
import time

import numpy
from scipy import ndimage

BUDGET = 0.2


def boxes(width, depth, height, count, state):
    taken = numpy.zeros((height, depth, width), bool)

    def below(n):
        nonlocal state
        state = (state * 1664525 + 1013904223) & 0xFFFFFFFF
        return (state * n) >> 32

    for _ in range(count):
        w, d, h = 2 + below(width // 8), 2 + below(depth // 5), 2 + below(height // 3)
        x, y, z = below(width - w), below(depth - d), below(height - h)
        taken[z : z + h, y : y + d, x : x + w] = True
    return taken


def scipy_ms(free):
    times = []
    for _ in range(7):
        start = time.perf_counter()
        ndimage.distance_transform_edt(free)
        times.append((time.perf_counter() - start) * 1000)
    return sorted(times)[3]


def main():
    grids = {name: ~boxes(*map(int, name.split("x")), 24, 20260101) for name in ("120x50x50", "240x100x100")}
    ratios = {name: [] for name in grids}
    for _ in range(5):
        ours = dict(re.findall(r"^(\S+): ([\d.]+) ms$", subprocess.run(sys.argv[1:], capture_output=True, text=True, check=True).stdout, re.M))
        for name, free in grids.items():
            ratios[name].append(float(ours[name]) / scipy_ms(free))
    over = False
    for name, values in ratios.items():
        ratio = sorted(values)[2]
        over |= ratio > BUDGET
        print(f"distance transform over scipy's, {name}: {ratio:.2f}, {BUDGET}, {'ok' if ratio <= BUDGET else 'over'}")
    sys.exit(over)


main()
