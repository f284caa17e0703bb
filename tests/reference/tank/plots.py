"""The pictures of docs/tank.md."""

import json
import pathlib
import subprocess

import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt
import numpy as np

INK, OTHER = "#1b2a41", "#c1440e"


def outlets(results, folder):
    """Outlet temperatures over the volume drawn, ours as a line and the independent model's as points."""
    folder = pathlib.Path(folder)
    folder.mkdir(parents=True, exist_ok=True)
    drawn = [r for r in results if len(r["ours"])]
    rows = (len(drawn) + 2) // 3
    figure, axes = plt.subplots(rows, 3, figsize=(12, 2.9 * rows), layout="constrained")
    for axis, r in zip(axes.flat, drawn):
        axis.plot(r["theirs"][:, 1], ".", color=OTHER, ms=3, label="independent model")
        axis.plot(r["ours"][:, 1], "-", color=INK, lw=1, label="simulator")
        axis.set_title(f"{r['name']}: {r['rms']:.2f} K RMS, heat {100 * r['heat']:.2f} %", fontsize=10)
        axis.set_xlabel("ten-second windows of draw", fontsize=8)
        axis.set_ylabel("outlet, °C", fontsize=8)
        axis.grid(alpha=0.3)
    for axis in axes.flat[len(drawn) :]:
        axis.axis("off")
    axes.flat[0].legend(fontsize=8)
    figure.savefig(folder / "outlets.svg", metadata={"Date": None})
    convergence(folder)


def _case(name, *options):
    said = subprocess.run(
        ["cargo", "run", "--quiet", "--release", "--package", "solver", "--example", "tank_cases", "--", *options, name],
        check=True,
        capture_output=True,
        text=True,
    )
    return json.loads(said.stdout)


def convergence(folder):
    """Outlet error over layers and over step length, against the finest of each."""
    figure, (left, right) = plt.subplots(1, 2, figsize=(10, 3.6), layout="constrained")
    for name, mark in (("high", "o"), ("run-cold", "s"), ("dip-tube-broken", "^")):
        for axis, option, values, finest in (
            (left, "--layers", [12, 24, 48, 96, 192], "768"),
            (right, "--steps", [1.0, 0.5, 0.25, 0.125], "0.02"),
        ):
            best = dict(_case(name, option, finest)["outlet"])
            errors = []
            for value in values:
                outlet = _case(name, option, str(value))["outlet"]
                errors.append(np.sqrt(np.mean([(c - best[t]) ** 2 for t, c in outlet if t in best])))
            axis.loglog(values, errors, mark + "-", color=INK, ms=5, mfc="white", lw=1, label=name)
    left.axvline(48, color=OTHER, lw=1, ls=":")
    right.axvline(1.0, color=OTHER, lw=1, ls=":")
    left.set_xlabel("layers (ordinary: 48)")
    right.set_xlabel("length of steps (ordinary: 1)")
    for axis in (left, right):
        axis.set_ylabel("outlet, K RMS from the finest")
        axis.grid(alpha=0.3, which="both")
        axis.legend(fontsize=8)
    figure.savefig(folder / "convergence.svg", metadata={"Date": None})
