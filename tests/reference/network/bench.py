#!/usr/bin/env python3
"""Times our solution of the benchmark network against ngspice on the same netlist, in the same run.

usage: bench.py PROGRAM [POINTS]      PROGRAM: the built example `bench_network` of the crate `solver`

ngspice sweeps one source over as many points, once by `.dc` (real numbers, strays open: the easier work)
and once by `.ac` (complex numbers, as ours). Its own "Total analysis time" is taken, best of the rounds;
only one voltage is saved, so that storing results costs it nothing. Rounds of the programs alternate, so
that a busy machine slows all of them. Ends with failure when ours takes more than 0.4 of the faster one.
"""

import re
import subprocess
import sys
import tempfile
from pathlib import Path

LIMIT = 0.4
ROUNDS = 5


def ngspice(netlist, analysis, folder):
    """Seconds that ngspice says an analysis of the netlist took."""
    text = re.sub(r"^\.ac .*$", f"{analysis}\n.save v(m1)", netlist, flags=re.MULTILINE)
    path = Path(folder, "timed.cir")
    path.write_text(text)
    done = subprocess.run(
        ["ngspice", "-b", "-r", str(Path(folder, "out.raw")), str(path)],
        capture_output=True, text=True, check=True,
    )
    rows = re.search(r"No\. of Data Rows : (\d+)", done.stdout)
    seconds = re.search(r"Total analysis time \(seconds\) = ([\d.e+-]+)", done.stdout)
    return int(rows[1]), float(seconds[1])


def main(program, points):
    times = {"ours": [], ".dc": [], ".ac": []}
    step = 120 / (points - 1)
    analyses = {".dc": f".dc V1 0 120 {step:.15g}", ".ac": f".ac lin {points} 60 61"}
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder, "benchmark.cir")
        for _ in range(ROUNDS):
            done = subprocess.run([program, str(points), str(path)], capture_output=True, text=True, check=True)
            times["ours"].append(float(done.stdout.split()[1]))
            netlist = path.read_text()
            for name, analysis in analyses.items():
                rows, seconds = ngspice(netlist, analysis, folder)
                if abs(rows - points) > 1:
                    print(f"ngspice {name} gave {rows} of {points} points", file=sys.stderr)
                    return 1
                times[name].append(seconds / rows)
    best = {name: min(list_) for name, list_ in times.items()}
    ours = best["ours"]
    print(f"network of 25 nodes, {points} points, best of {ROUNDS} rounds")
    print(f"  ours         {ours * 1e6:6.2f} us a point")
    for name in analyses:
        print(f"  ngspice {name}  {best[name] * 1e6:6.2f} us a point, ours takes {ours / best[name]:.2f} of it")
    ratio = ours / min(best[".dc"], best[".ac"])
    print(f"ratio {ratio:.3f}, limit {LIMIT}")
    return 0 if ratio <= LIMIT else 1


if __name__ == "__main__":
    if len(sys.argv) < 2:
        print(__doc__, file=sys.stderr)
        sys.exit(2)
    sys.exit(main(sys.argv[1], int(sys.argv[2]) if len(sys.argv) > 2 else 100_001))
