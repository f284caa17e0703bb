#!/usr/bin/env python3
"""Compares solved networks with ngspice and with a solution in 50 digits.

usage: check.py FOLDER...      every pair NAME.cir + NAME.sol in the folders

NAME.cir is a SPICE netlist of V, I, R and C elements, every V from a node to 0, with one `.ac` line of
one frequency. NAME.sol is our solution: lines `node real imaginary`, volts RMS.

A node is held when a path of branches of at least HELD siemens leads from it to a source or to the
reference; the others float: only strays, leakages and instruments hold them. Limits, as parts of the
largest source voltage of the state:
  held nodes      against ngspice           1e-9
  floating nodes  against 50 digits         1e-4
  held nodes      against 50 digits         1e-9   (says which side is wrong when ngspice differs)
ngspice itself is compared with the 50 digits on floating nodes for information only: double precision
loses them where a diagonal sum of 200 S hides a picofarad. Where it gives a floating node more than ten times the
supply (a shorted pair that hangs on a teraohm), its held nodes carry that error too: such a state is held to the 50
digits alone, and counted. More than one in fifty of them fails.

Needs ngspice on the path and the Python package mpmath.
"""

import array
import re
import subprocess
import sys
import tempfile
from pathlib import Path

from mpmath import mp, mpc, mpf

mp.dps = 50
HELD = 1e-2  # siemens: 100 ohms and less. Metal, contacts and elements; a meter or a person holds no conductor
LIMIT_HELD = 1e-9
LIMIT_FLOATING = 1e-4


class Wrong(Exception):
    """A file that cannot be used, or a tool that gave no answer."""


def read_netlist(path):
    """Elements [(kind, a, b, values)] and the frequency, numbers kept as their decimal text."""
    elements, hertz = [], None
    for number, line in enumerate(path.read_text().splitlines(), 1):
        words = line.split()
        if number == 1 or not words or words[0].startswith("*"):
            continue
        kind = words[0][0].upper()
        if words[0].lower() == ".ac":
            if words[1].lower() != "lin" or mpf(words[3]) != mpf(words[4]):
                raise Wrong(f"{path}:{number}: one frequency expected: {line}")
            hertz = mpf(words[3])
        elif kind == ".":
            continue
        elif kind in "RC" and len(words) == 4:
            elements.append((kind, words[1].lower(), words[2].lower(), [mpf(words[3])]))
        elif kind in "VI" and [w.lower() for w in words[3:6]] == ["dc", "0", "ac"] and len(words) == 8:
            elements.append((kind, words[1].lower(), words[2].lower(), [mpf(w) for w in words[6:8]]))
        else:
            raise Wrong(f"{path}:{number}: not understood: {line}")
    if hertz is None or not hertz > 0:
        raise Wrong(f"{path}: no .ac line")
    return elements, hertz


def read_solution(path):
    """Our potentials by node."""
    volts = {}
    for number, line in enumerate(path.read_text().splitlines(), 1):
        words = line.split()
        if not words or words[0].startswith(("#", "*")):
            continue
        if len(words) != 3:
            raise Wrong(f"{path}:{number}: `node real imaginary` expected: {line}")
        if words[0].lower() in volts:
            raise Wrong(f"{path}:{number}: node {words[0]} twice")
        volts[words[0].lower()] = complex(float(words[1]), float(words[2]))
    volts.setdefault("0", 0j)  # a file need not list the reference
    return volts


def phasor(magnitude, degrees):
    """A source value."""
    angle = mp.pi * degrees / 180
    return mpc(magnitude * mp.cos(angle), magnitude * mp.sin(angle))


class State:
    """One netlist: sources, branches, and which nodes are held."""

    def __init__(self, path):
        elements, hertz = read_netlist(path)
        self.fixed = {"0": mpc(0)}
        self.branches, self.currents, nodes = [], [], {"0"}
        for kind, a, b, values in elements:
            nodes |= {a, b}
            if kind == "V":
                if b != "0" or a in self.fixed:
                    raise Wrong(f"{path}: source at {a}: one source from a node to 0 expected")
                self.fixed[a] = phasor(*values)
            elif kind == "I":
                self.currents.append((a, b, phasor(*values)))
            elif kind == "R":
                self.branches.append((a, b, mpc(1 / values[0])))
            else:
                self.branches.append((a, b, mpc(0, 2 * mp.pi * hertz * values[0])))
        self.nodes = sorted(nodes)
        self.supply = float(max(abs(v) for v in self.fixed.values()))
        if self.supply == 0:
            raise Wrong(f"{path}: no supply")
        self.held = self.reach(HELD)
        if self.reach(0) != set(self.nodes):
            raise Wrong(f"{path}: {sorted(set(self.nodes) - self.reach(0))} hang on nothing at all")

    def reach(self, least):
        """Nodes with a path of branches of at least this admittance to a fixed potential."""
        near = {}
        for a, b, y in self.branches:
            if abs(y) >= least:
                near.setdefault(a, []).append(b)
                near.setdefault(b, []).append(a)
        found, todo = set(self.fixed), list(self.fixed)
        while todo:
            for other in near.get(todo.pop(), []):
                if other not in found:
                    found.add(other)
                    todo.append(other)
        return found

    def exact(self):
        """Potentials in 50 digits: nodal equations, Gaussian elimination, the sparsest row first."""
        rows, right = {}, {}
        for node in self.nodes:
            if node not in self.fixed:
                rows[node], right[node] = {node: mpc(0)}, mpc(0)
        for a, b, y in self.branches:
            for node, other in ((a, b), (b, a)):
                if node in self.fixed or a == b:
                    continue
                rows[node][node] += y
                if other in self.fixed:
                    right[node] += y * self.fixed[other]
                else:
                    rows[node][other] = rows[node].get(other, mpc(0)) - y
        for a, b, amps in self.currents:
            if a in right:
                right[a] -= amps
            if b in right:
                right[b] += amps
        original = {node: dict(row) for node, row in rows.items()}
        source, order, volts = dict(right), [], dict(self.fixed)
        left = set(rows)
        while left:
            pivot = min(left, key=lambda n: (len(rows[n]), n))
            left.remove(pivot)
            order.append(pivot)
            for other in [n for n in rows[pivot] if n in left]:
                factor = rows[other].pop(pivot) / rows[pivot][pivot]
                for column, value in rows[pivot].items():
                    if column in left:
                        rows[other][column] = rows[other].get(column, mpc(0)) - factor * value
                right[other] -= factor * right[pivot]
        for node in reversed(order):
            rest = sum((y * volts[n] for n, y in rows[node].items() if n != node and n in volts), mpc(0))
            volts[node] = (right[node] - rest) / rows[node][node]
        for node, row in original.items():
            residual = abs(sum((y * volts[n] for n, y in row.items()), mpc(0)) - source[node])
            if residual > mpf(10) ** -35:
                raise Wrong(f"the 50-digit solution leaves {mp.nstr(residual, 3)} A at {node}")
        return {node: complex(v) for node, v in volts.items()}


def run_ngspice(path):
    """Potentials by node, as ngspice writes them in a binary raw file: all digits of a double."""
    with tempfile.TemporaryDirectory() as folder:
        raw = Path(folder, "out.raw")
        done = subprocess.run(
            ["ngspice", "-b", "-r", str(raw), str(path)], capture_output=True, text=True, check=False
        )
        if done.returncode != 0 or not raw.exists():
            raise Wrong(f"{path}: ngspice failed:\n{done.stdout[-1000:]}{done.stderr[-1000:]}")
        data = raw.read_bytes()
    head, _, body = data.partition(b"Binary:\n")
    head = head.decode()
    count = int(re.search(r"No\. Variables: (\d+)", head)[1])
    points = int(re.search(r"No\. Points: (\d+)", head)[1])
    if "complex" not in re.search(r"Flags: (.*)", head)[1] or points != 1:
        raise Wrong(f"{path}: ngspice gave {points} points, one complex one expected")
    values = array.array("d")
    values.frombytes(body[: 16 * count])
    volts = {"0": 0j}
    for index, name in re.findall(r"^\s*(\d+)\t(\S+)\tvoltage", head, re.MULTILINE):
        node = re.fullmatch(r"v\((.*)\)", name)
        at = 2 * int(index)
        volts[node[1] if node else name] = complex(values[at], values[at + 1])
    return volts


class Worst:
    """The largest difference of one comparison, and where it was."""

    def __init__(self, title, limit=None):
        self.title, self.limit, self.value, self.place, self.count = title, limit, 0.0, "-", 0

    def add(self, difference, supply, place):
        part = difference / supply
        self.count += 1
        if not part <= self.value:
            self.value, self.place = part, place
        return self.limit is None or part <= self.limit

    def __str__(self):
        limit = "" if self.limit is None else f", limit {self.limit:g}"
        return f"  {self.title}: {self.count} nodes, worst {self.value:.1e} at {self.place}{limit}"


# Parts of the supply from which ngspice has lost a state, and the most of the states it may lose.
LOST, MOST_LOST = 10.0, 0.02


def main(folders):
    pairs = sorted(p for folder in folders for p in Path(folder).glob("*.cir"))
    if not pairs:
        print("no netlists found", file=sys.stderr)
        return 1
    held = Worst("held, ours against ngspice", LIMIT_HELD)
    held_exact = Worst("held, ours against 50 digits", LIMIT_HELD)
    floating = Worst("floating, ours against 50 digits", LIMIT_FLOATING)
    theirs = Worst("floating, ngspice against 50 digits (for information)")
    wrong, lost = 0, []
    for path in pairs:
        try:
            ours = read_solution(path.with_suffix(".sol"))
            state = State(path)
            exact, spice = state.exact(), run_ngspice(path)
            missing = [n for n in state.nodes if n not in ours or n not in spice]
            if missing:
                raise Wrong(f"{path}: no solution for {missing}")
        except (Wrong, OSError, ValueError) as error:
            print(error, file=sys.stderr)
            wrong += 1
            continue
        sound = True
        free = [node for node in state.nodes if node not in state.held]
        astray = any(abs(spice[node] - exact[node]) > LOST * state.supply for node in free)
        if astray:
            lost.append(path.stem)
        for node in state.nodes:
            place = f"{path.stem} {node}"
            if node in state.held:
                if not astray:
                    sound &= held.add(abs(ours[node] - spice[node]), state.supply, place)
                sound &= held_exact.add(abs(ours[node] - exact[node]), state.supply, place)
            else:
                sound &= floating.add(abs(ours[node] - exact[node]), state.supply, place)
                theirs.add(abs(spice[node] - exact[node]), state.supply, place)
        if not sound:
            print(f"{path}: beyond the limit", file=sys.stderr)
            wrong += 1
    print(f"{len(pairs)} states; differences as parts of the supply voltage")
    print(held, held_exact, floating, theirs, sep="\n")
    print(f"  lost by ngspice, held to 50 digits alone: {len(lost)} {' '.join(lost)}".rstrip())
    if len(lost) > MOST_LOST * len(pairs):
        wrong += len(lost)
    print("agree" if wrong == 0 else f"{wrong} of {len(pairs)} states do not agree")
    return 0 if wrong == 0 else 1


if __name__ == "__main__":
    if len(sys.argv) < 2:
        print(__doc__, file=sys.stderr)
        sys.exit(2)
    sys.exit(main(sys.argv[1:]))
