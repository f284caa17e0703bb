"""Integrates the heat balances with scipy's adaptive solvers and compares each printed value.

Ours are exact exponentials over each stretch of constant input (joints, contacts, breakers), a stepped balance
(sheath) and a body on the tank's wall (limit). The constants are written down here again, from the list of sources.
"""

import sys
from collections import defaultdict

import numpy as np
from scipy.integrate import solve_ivp

ROOM = 293.15  # the sheath's, K
BASEMENT = (68.0 - 32.0) / 1.8 + 273.15  # the simulated house's, K

# Greatest difference allowed, in the unit of the value.
TOLERANCE = {
    "joint": 2e-6,  # K; a rise under 0.01 K is set to nothing, see COLD
    "contact": 2e-6,  # K
    "breaker": 1e-7,  # of a trip
    "trip": 1e-6,  # s
    "sheath": 1.5,  # K of 1300: steps of 0.25 s with loss taken at their beginning, 10 s while cooling
    "limit": 0.8,  # K: a joint that warms by 0.9 K/s is followed in steps of 15 s, half a step late
}
COLD = 0.01


def integrate(rate, start, seconds, event=None):
    found = solve_ivp(rate, (0.0, seconds), [start], method="DOP853", rtol=1e-11, atol=1e-11, events=event)
    return found.y[0, -1], (found.t_events[0][0] if event and len(found.t_events[0]) else None)


def first_order(per_input, lag):
    return lambda given, _: (lambda _, y: [(per_input * given - y[0]) / lag])


def breaker(amps, _):
    settles = (abs(amps) / (1.25 * 30.0)) ** 3
    return lambda _, y: [(settles - y[0]) / 357.0]


def sheath(watts, _):
    area = 4500.0 / 232_500.0
    capacity = 15.5 * area * 450.0

    def rate(_, y):
        radiated = 0.8 * 5.670374419e-8 * (y[0] ** 4 - ROOM**4)
        return [(watts - area * (radiated + 12.0 * (y[0] - ROOM))) / capacity]

    return rate


RATES = {"joint": first_order(10.0, 400.0), "contact": first_order(10.0, 120.0), "breaker": breaker, "sheath": sheath}
STARTS = {"joint": 0.0, "contact": 0.0, "breaker": 0.0, "sheath": ROOM}

cases = defaultdict(list)
for line in sys.stdin:
    name, *numbers = line.strip().split(",")
    cases[name].append([float(n) for n in numbers])

worst = defaultdict(float)
passed = failed = trips = 0
for name, rows in cases.items():
    kind = name.split("-")[0]
    off = 0.0
    if kind == "limit":
        t = np.array([r[0] for r in rows])
        wall, heat = np.array([r[1] for r in rows]), np.array([r[2] for r in rows])

        def rate(s, y):
            settles = BASEMENT + 0.97 * (np.interp(s, t, wall) - BASEMENT) + np.interp(s, t, heat)
            return [(settles - y[0]) / 120.0]

        found = solve_ivp(rate, (0.0, t[-1]), [rows[0][3]], t_eval=t, rtol=1e-9, atol=1e-9, max_step=5.0)
        off = float(np.max(np.abs(found.y[0] - np.array([r[3] for r in rows]))))
    else:
        y, before = STARTS[kind], 0.0
        for at, given, second, value in rows:
            if kind == "breaker" and second == 1:
                crosses = lambda _, y: y[0] - 1.0
                crosses.terminal = True
                _, moment = integrate(breaker(given, 0), y, 1e4, crosses)
                late = abs(before + moment - at) if moment is not None else float("inf")
                worst["trip"] = max(worst["trip"], late)
                failed += int(late > TOLERANCE["trip"])
                trips += 1
                break
            y, _ = integrate(RATES[kind](given, second), y, at - before)
            before = at
            if value == 0.0 and y < COLD:
                y = 0.0
            off = max(off, abs(y - value))
    worst[kind] = max(worst[kind], off)
    if off > TOLERANCE[kind]:
        failed += 1
        print(f"{name}: off by {off:.3g}, allowed {TOLERANCE[kind]}")
    else:
        passed += 1

if trips < 8 or len(cases) < 36:
    print(f"too little to compare: {len(cases)} histories, {trips} trips")
    failed += 1
for kind, off in worst.items():
    print(f"{kind}: worst {off:.2e}, allowed {TOLERANCE[kind]:.0e}")
print(f"{passed} passed, {failed} failed")
sys.exit(1 if failed else 0)
