"""Lays the tank beside the independent model of model.py, case by case, read as JSON lines from the first argument.

Bounds: outlet within 0.2 K RMS while water is drawn; heat delivered, corrected for what is stored, within 0.3 %.
With --plot DIR also draws the outlets.
"""

import argparse
import json
import sys
import time

import numpy as np

from model import Run, temperature, enthalpy

OUTLET = 0.2
HEAT = 0.003
# Share of the instants at which both sides have an outlet: the rest is not compared.
MATCHED = 0.9
# Volume of the first-hour test: its draws end at the end of a window of ten seconds, half a gallon each.
VOLUME = 0.025


def apart(pair):
    return abs(pair[0] - pair[1]) / abs(pair[1])


def compare(case, cells, rtol):
    began = time.monotonic()
    run = Run(case, cells, rtol)
    marks = run.pattern()
    gallons = (0.0, 0.0)
    if case["first_hour"]:
        # The draws above were the other's; its own, by the rule of the test, give its own volume.
        own = Run(case, cells, rtol)
        own.first_hour()
        gallons = tuple(kg / 3.755 for kg in (case["drawn"], float(own.drawn()[0])))
    e1, m1 = run.stored()
    kg, joule = run.drawn()
    theirs = np.array([(t, float(temperature(j / k))) for t, k, j in marks if k > 0.0]).reshape(-1, 2)
    ours = np.array(case["outlet"]).reshape(-1, 2)
    cold = float(enthalpy(case["inlet_celsius"]))
    # Heat above the inlet's: delivered, and put in less what is stored more at the end. The two differ by the loss.
    delivered = np.array([case["drawn_energy"] - case["drawn"] * cold, joule - kg * cold])
    stored = np.array([case["gained"] - case["mass_gained"] * cold, e1 - run.energy0 - (m1 - run.mass0) * cold])
    spent = np.array([case["electric"], run.electric])
    if kg > 0.0:
        heat = max(apart(delivered), apart(spent - stored))
    else:
        # Nothing drawn: what is stored by the end.
        heat = apart(stored)
    at = {round(t): c for t, c in theirs}
    pairs = [(c, at[round(t)]) for t, c in ours if round(t) in at]
    rms = float(np.sqrt(np.mean([(a - b) ** 2 for a, b in pairs]))) if pairs else 0.0
    worst = max((abs(a - b) for a, b in pairs), default=0.0)
    stood = [np.mean(run.tank.celsius(run.y)[i : i + cells // 12]) for i in range(0, cells, cells // 12)]
    return {
        "name": case["name"],
        "rms": rms,
        "worst": worst,
        # Nothing drawn leaves nothing to compare.
        "matched": len(pairs) / max(len(ours), len(theirs)) if len(ours) + len(theirs) else 1.0,
        "heat": heat,
        "drawn": abs(case["drawn"] - kg) / max(kg, 1.0),
        "electric": (case["electric"], run.electric),
        "switches": (len(case["switches"]), len(run.switches)),
        "late": max((abs(a[0] - b[0]) for a, b in zip(case["switches"], run.switches)), default=0.0),
        "layers": max(abs(a - b) for a, b in zip(case["layers"], stood)),
        "seconds": time.monotonic() - began,
        "evaluations": run.evaluations,
        "theirs": theirs,
        "ours": ours,
        "gallons": gallons,
    }


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("cases")
    parser.add_argument("--cells", type=int, default=240)
    parser.add_argument("--rtol", type=float, default=1e-5)
    parser.add_argument("--plot")
    args = parser.parse_args()
    failed = passed = 0
    results = []
    with open(args.cases) as lines:
        for line in lines:
            r = compare(json.loads(line), args.cells, args.rtol)
            results.append(r)
            ours, theirs = r["gallons"]
            ok = r["rms"] <= OUTLET and r["matched"] >= MATCHED and r["heat"] <= HEAT and abs(ours - theirs) <= VOLUME * theirs
            passed, failed = passed + ok, failed + (not ok)
            print(
                f"{r['name']:16} outlet {r['rms']:.3f} K RMS, {r['worst']:.2f} at worst; heat {100 * r['heat']:.3f} %; "
                f"switchings {r['switches'][0]}/{r['switches'][1]}, {r['late']:.0f} s apart at most; "
                f"at the end {r['layers']:.2f} K; drawn {100 * r['drawn']:.2f} %; matched {100 * r['matched']:.0f} %"
                f"{f'; first hour {ours:.1f} and {theirs:.1f} gal' if theirs else ''} "
                f"({r['seconds']:.0f} s, {r['evaluations']} evaluations){'' if ok else '  <-- outside the bounds'}",
                flush=True,
            )
    if args.plot:
        from plots import outlets

        outlets(results, args.plot)
    print(f"{passed} passed, {failed} failed")
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
