#!/usr/bin/env python3
"""Draws the person's two curves beside the points their sources print, as SVG, and counts the misses.

usage: plot.py PROGRAM [FOLDER]     PROGRAM: the built example `person_curves` of the crate `bench`

Burns: seconds in water until the burn integral reaches 1, against the 2nd to 3rd degree ranges of Moritz
and Henriques 1947 as printed by a maker of scald valves (published) and the label table of an owner's
manual (published). Shock: the c1 curve against IEC 60479-1, figure 20 (40 mA at 5 s published by a page
that reproduces it, the other points from memory). Writes FOLDER/burn.svg and FOLDER/shock.svg (FOLDER is
tests/out unless given). Ends with failure when a curve leaves a range.
"""

import math
import subprocess
import sys
from pathlib import Path

MORITZ_HENRIQUES = [  # degrees C, seconds to 2nd and to 3rd degree
    (45, 7200, 10800), (47, 1200, 2700), (48, 900, 1200), (49, 480, 600), (51, 120, 252), (55, 17, 30), (60, 3, 5),
]
LABEL = [(125, 90, 120), (130, 24, 36), (135, 8, 12), (140, 4, 5), (145, 2, 3), (150, 1.2, 1.8), (155, 0.8, 1.2)]
C1 = [(0.01, 500), (0.1, 400), (1, 50), (3, 40), (5, 40)]
COLOURS = {"first": "#b58900", "second": "#c1440e", "third": "#5b1a18", "c1": "#c1440e"}
WIDTH, HEIGHT, EDGE = 720, 520, 70


class Sheet:
    """A graph whose axes are each straight or logarithmic."""

    def __init__(self, title, x, y):
        self.x, self.y, self.parts = x, y, []
        self.text(WIDTH / 2, 30, title, "middle", 16)
        for axis, place in ((x, self.tick_x), (y, self.tick_y)):
            for mark in axis["marks"]:
                place(mark)
        self.text(WIDTH / 2, HEIGHT - 15, x["name"], "middle")
        self.parts.append(f'<text transform="translate(18 {HEIGHT / 2}) rotate(-90)" text-anchor="middle">{y["name"]}</text>')

    @staticmethod
    def share(axis, value):
        low, high = axis["range"]
        if axis["log"]:
            low, high, value = math.log(low), math.log(high), math.log(value)
        return min(max((value - low) / (high - low), 0), 1)

    def at(self, x, y):
        return (EDGE + self.share(self.x, x) * (WIDTH - 2 * EDGE), HEIGHT - EDGE - self.share(self.y, y) * (HEIGHT - 2 * EDGE))

    def text(self, x, y, words, anchor="start", size=12, colour="#222"):
        self.parts.append(f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}" font-size="{size}" fill="{colour}">{words}</text>')

    def line(self, points, colour, width=1.0):
        text = " ".join(f"{x:.1f},{y:.1f}" for x, y in points)
        self.parts.append(f'<polyline points="{text}" fill="none" stroke="{colour}" stroke-width="{width}"/>')

    def tick_x(self, mark):
        low, high = self.y["range"]
        self.line([self.at(mark, low), self.at(mark, high)], "#ddd")
        self.text(self.at(mark, low)[0], HEIGHT - EDGE + 18, f"{mark:g}", "middle")

    def tick_y(self, mark):
        low, high = self.x["range"]
        self.line([self.at(low, mark), self.at(high, mark)], "#ddd")
        self.text(EDGE - 8, self.at(low, mark)[1] + 4, f"{mark:g}", "end")

    def curve(self, points, colour):
        (x0, x1), (y0, y1) = self.x["range"], self.y["range"]
        self.line([self.at(x, y) for x, y in points if x0 <= x <= x1 and y0 <= y <= y1], colour, 2)

    def span(self, x, low, high, colour):
        self.line([self.at(x, low), self.at(x, high)], colour, 5)

    def dot(self, x, y):
        px, py = self.at(x, y)
        self.parts.append(f'<circle cx="{px:.1f}" cy="{py:.1f}" r="5" fill="none" stroke="#1d4e89" stroke-width="2"/>')

    def save(self, path):
        body = "\n".join(self.parts)
        path.write_text(f'<svg xmlns="http://www.w3.org/2000/svg" width="{WIDTH}" height="{HEIGHT}" '
                        f'font-family="sans-serif" font-size="12"><rect width="100%" height="100%" fill="white"/>\n{body}\n</svg>\n')
        print(f"wrote {path}")


def between(points, x):
    """The curve at x, straight in the logarithm of y."""
    for (x0, y0), (x1, y1) in zip(points, points[1:]):
        if x0 <= x <= x1:
            return math.exp(math.log(y0) + (math.log(y1) - math.log(y0)) * (x - x0) / (x1 - x0))
    return math.nan


def burns(curves, folder):
    sheet = Sheet("Bare skin in running water: time to a burn",
                  {"name": "water, °C", "range": (44, 70), "log": False, "marks": range(44, 71, 2)},
                  {"name": "seconds", "range": (0.5, 30000), "log": True, "marks": [1, 3, 10, 30, 100, 300, 1000, 3000, 10000]})
    misses = 0
    ranges = [(c, low, high, "#1d4e89") for c, low, high in MORITZ_HENRIQUES]
    ranges += [((f - 32) / 1.8, low, high, "#2e8b57") for f, low, high in LABEL]
    for celsius, low, high, colour in ranges:
        sheet.span(celsius, low, high, colour)
        found = between(curves["second"], celsius)
        if not low <= found <= high:
            misses += 1
            print(f"{celsius:.2f} °C: {found:.4g} s lies outside {low} to {high} s")
    for row, name in enumerate(("first", "second", "third")):
        sheet.curve(curves[name], COLOURS[name])
        sheet.text(WIDTH - 300, 80 + 18 * row, f"computed, {name} degree", colour=COLOURS[name])
    sheet.text(WIDTH - 300, 134, "2nd to 3rd degree, Moritz and Henriques 1947", colour="#1d4e89")
    sheet.text(WIDTH - 300, 152, "label table of an owner's manual", colour="#2e8b57")
    sheet.save(folder / "burn.svg")
    return misses


def shocks(curves, folder):
    sheet = Sheet("Current left hand to feet at which the heart is in danger (c1)",
                  {"name": "seconds", "range": (0.005, 12), "log": True, "marks": [0.01, 0.03, 0.1, 0.3, 1, 3, 10]},
                  {"name": "milliamperes", "range": (20, 1000), "log": True, "marks": [20, 50, 100, 200, 500, 1000]})
    sheet.curve(curves["c1"], COLOURS["c1"])
    misses = 0
    for seconds, milliamperes in C1:
        sheet.dot(seconds, milliamperes)
        found = between([(math.log(x), y) for x, y in curves["c1"]], math.log(seconds))
        if abs(found / milliamperes - 1) > 0.02:
            misses += 1
            print(f"{seconds} s: {found:.4g} mA, expected {milliamperes}")
    sheet.save(folder / "shock.svg")
    return misses


def main():
    if len(sys.argv) not in (2, 3):
        sys.exit(__doc__)
    folder = Path(sys.argv[2] if len(sys.argv) == 3 else Path(__file__).parents[2] / "out")
    folder.mkdir(parents=True, exist_ok=True)
    curves = {}
    for line in subprocess.run([sys.argv[1]], capture_output=True, text=True, check=True).stdout.splitlines():
        name, x, y = line.split(",")
        curves.setdefault(name, []).append((float(x), float(y)))
    misses = burns(curves, folder) + shocks(curves, folder)
    print(f"{misses} misses")
    sys.exit(1 if misses else 0)


if __name__ == "__main__":
    main()
