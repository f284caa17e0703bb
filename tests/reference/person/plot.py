#!/usr/bin/env python3
"""Draws the person's curves beside the points their sources print, and counts the misses.

usage: plot.py PROGRAM [FOLDER]     PROGRAM: the built example `person_curves` of the crate `bench`

Burns: seconds in running water to a burn, against the 2nd to 3rd degree ranges of Moritz and Henriques 1947 as
printed by a maker of scald valves (published), the label table of an owner's manual (published), a full-thickness
fit (published), and the first-degree times of a memo of the Consumer Product Safety Commission of 15 September 1978 as
two manuals print them (published; ours lie within the factors stated beside them, see docs/sources/corrections.md). Body: impedance hand to hand of 5, 50 and 95 % of the population against IEC
60479-1:2005 (from memory) and IEC 479-1:1994 (published, a typed copy). Heart: c1 to c3 against IEC 60479-1,
figure 20 (40 mA at 5 s published by a page that reproduces it, the other points from memory).

Writes burn.png, body.png and heart.png into FOLDER (tests/out unless given) and fails when a curve leaves a range.
"""

import math
import subprocess
import sys
from pathlib import Path

import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt  # noqa: E402

MORITZ_HENRIQUES = [  # degrees C, seconds to 2nd and to 3rd degree
    (45, 7200, 10800), (47, 1200, 2700), (48, 900, 1200), (49, 480, 600), (51, 120, 252), (55, 17, 30), (60, 3, 5),
]
LABEL = [(125, 90, 120), (130, 24, 36), (135, 8, 12), (140, 4, 5), (145, 2, 3), (150, 1.2, 1.8), (155, 0.8, 1.2)]
MEMO = [  # degrees F, seconds to a first degree, ours over it from and to
    (116, 2100, 0.60, 0.67), (122, 60, 2.6, 2.8), (131, 5, 2.9, 3.2), (140, 2, 1.7, 1.9), (149, 1, 1.4, 1.55),
]
C1 = [(0.01, 500), (0.1, 400), (1, 50), (3, 40), (5, 40)]
VOLTS_2005 = [25, 50, 75, 100, 125, 150, 175, 200, 225, 400, 1000]
TABLE_2005 = {
    "5": [1750, 1375, 1125, 990, 900, 850, 825, 800, 775, 700, 575],
    "50": [3250, 2500, 2000, 1725, 1550, 1400, 1325, 1275, 1225, 950, 775],
    "95": [6100, 4600, 3600, 3125, 2675, 2350, 2175, 2050, 1900, 1275, 1050],
}
VOLTS_1994 = [25, 50, 75, 100, 125, 220, 700, 1000]
TABLE_1994 = {
    "5": [1750, 1450, 1250, 1200, 1125, 1000, 750, 700],
    "50": [3250, 2625, 2200, 1875, 1625, 1350, 1100, 1050],
    "95": [6100, 4375, 3500, 3200, 2875, 2125, 1550, 1500],
}
SHARES = {"5": "#5b1a18", "50": "#c1440e", "95": "#b58900"}


def between(points, x, log=True):
    """The curve at x, straight in y or in its logarithm."""
    for (x0, y0), (x1, y1) in zip(points, points[1:]):
        if x0 <= x <= x1:
            share = (x - x0) / (x1 - x0)
            return math.exp(math.log(y0) * (1 - share) + math.log(y1) * share) if log else y0 + (y1 - y0) * share
    return math.nan


def full_thickness(celsius):
    """8.3, valid from 51.3 to 71 degrees C."""
    if celsius >= 58.3:
        return 0.05322 * celsius**2 - 7.437 * celsius + 262.4
    if celsius >= 52.1:
        return 1.441 * celsius**2 - 168.2 * celsius + 4917
    return 2675 - 50 * celsius


def sheet(title, x, y):
    figure, axes = plt.subplots(figsize=(8, 5.6), dpi=110, layout="constrained")
    axes.set(title=title, xlabel=x, ylabel=y)
    axes.grid(True, which="both", color="#e4e4e4", linewidth=0.6)
    axes.set_axisbelow(True)
    return figure, axes


def save(figure, axes, path):
    axes.legend(fontsize=8.5, framealpha=1)
    # Without the date and the version inside, the same curves give the same bytes.
    figure.savefig(path, metadata={"Software": None})
    print(f"wrote {path}")


def burns(curves, folder):
    figure, axes = sheet("Bare skin of an adult in running water: time to a burn", "water, °C", "seconds")
    axes.set(yscale="log", xlim=(44, 70), ylim=(0.5, 30000))
    for name, colour in zip(("first", "second", "third"), reversed(SHARES.values())):
        axes.plot(*zip(*curves[name]), color=colour, label=f"computed, {name} degree")
    misses = 0
    for where, rows, colour in (
        ("2nd to 3rd degree, Moritz and Henriques 1947", MORITZ_HENRIQUES, "#1d4e89"),
        ("label table of an owner's manual", [((f - 32) / 1.8, a, b) for f, a, b in LABEL], "#2e8b57"),
    ):
        axes.vlines(*zip(*rows), color=colour, linewidth=5, alpha=0.75, label=where)
        for celsius, low, high in rows:
            found = between(curves["second"], celsius)
            if not low <= found <= high:
                misses += 1
                print(f"{celsius:.2f} °C: {found:.4g} s lies outside {low} to {high} s")
    axes.plot(
        [(f - 32) / 1.8 for f, *_ in MEMO], [seconds for _, seconds, *_ in MEMO], "D", color="#b58900", markersize=6,
        markeredgecolor="#333", label="first degree, CPSC memo of 1978",
    )
    for fahrenheit, seconds, low, high in MEMO:
        found = between(curves["first"], (fahrenheit - 32) / 1.8) / seconds
        if not low <= found <= high:
            misses += 1
            print(f"first degree, {fahrenheit} °F: {found:.3g} of {seconds} s, expected {low} to {high}")
    fit = [51.3 + 0.1 * i for i in range(198)]
    axes.plot(fit, [full_thickness(c) for c in fit], color="#666", linestyle=":", label="full-thickness fit, published")
    save(figure, axes, folder / "burn.png")
    return misses


def bodies(curves, folder):
    figure, axes = sheet("Impedance of the body, hand to hand, large contact, dry", "touch voltage, V", "ohms")
    axes.set(xscale="log", yscale="log", xlim=(23, 1100), ylim=(500, 7000))
    for axis, ticks in ((axes.xaxis, [25, 50, 100, 200, 400, 1000]), (axes.yaxis, [500, 1000, 2000, 4000, 6000])):
        axis.set_major_locator(matplotlib.ticker.FixedLocator(ticks))
        axis.set_major_formatter(matplotlib.ticker.FormatStrFormatter("%g"))
        axis.set_minor_formatter(matplotlib.ticker.NullFormatter())
    misses = 0
    for share, colour in SHARES.items():
        axes.plot(*zip(*curves[f"dry-{share}"]), color=colour, label=f"computed, {share} % have less")
        axes.plot(VOLTS_2005, TABLE_2005[share], "o", color=colour, markersize=5, markerfacecolor="none")
        axes.plot(VOLTS_1994, TABLE_1994[share], "x", color=colour, markersize=6)
        for volts, ohms, name in [
            *((v, o, f"dry-{share}") for v, o in zip(VOLTS_2005, TABLE_2005[share])),
            *((v, o, f"1994-{share}") for v, o in zip(VOLTS_1994, TABLE_1994[share])),
        ]:
            found = between(curves[name], volts, log=False)
            if abs(found / ohms - 1) > 1e-3:
                misses += 1
                print(f"{name} at {volts} V: {found:.4g} ohm, expected {ohms}")
    axes.plot(*zip(*curves["water-50"]), color=SHARES["50"], linestyle="--", linewidth=1, label="water-wet, 50 %")
    axes.plot(*zip(*curves["salt-50"]), color=SHARES["50"], linestyle=":", linewidth=1.2, label="salt-wet, 50 %")
    axes.plot([], [], "o", color="#444", markerfacecolor="none", label="IEC 60479-1:2005, table 1 (from memory)")
    axes.plot([], [], "x", color="#444", label="IEC 479-1:1994, table 1 (published)")
    save(figure, axes, folder / "body.png")
    return misses


def hearts(curves, folder):
    figure, axes = sheet("Current left hand to feet that endangers the heart", "seconds", "milliamperes")
    axes.set(xscale="log", yscale="log", xlim=(0.005, 12), ylim=(20, 1500))
    labels = ("c1: none known below", "c2: up to about 5 %", "c3: up to about 50 %")
    for name, label, colour in zip(("c1", "c2", "c3"), labels, reversed(SHARES.values())):
        axes.plot(*zip(*curves[name]), color=colour, label=f"computed, {label}")
    axes.plot(*zip(*C1), "o", color="#1d4e89", markerfacecolor="none", label="IEC 60479-1, figure 20 (40 mA at 5 s published)")
    misses = 0
    points = [(math.log(x), y) for x, y in curves["c1"]]
    for seconds, milliamperes in C1:
        found = between(points, math.log(seconds))
        if abs(found / milliamperes - 1) > 0.02:
            misses += 1
            print(f"{seconds} s: {found:.4g} mA, expected {milliamperes}")
    save(figure, axes, folder / "heart.png")
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
    misses = burns(curves, folder) + bodies(curves, folder) + hearts(curves, folder)
    compared = len(MORITZ_HENRIQUES) + len(LABEL) + len(MEMO) + 3 * (len(VOLTS_2005) + len(VOLTS_1994)) + len(C1)
    print(f"{compared - misses} passed, {misses} failed")
    sys.exit(1 if misses else 0)


if __name__ == "__main__":
    main()
