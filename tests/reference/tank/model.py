"""An independent model of the layered tank, for comparison: method of lines on a fixed fine grid.

Written from the equations in docs/tank.md. Unlike the program it is compared with, it stands still and lets the
water move: equal cells of fixed place, a flux-limited upwind scheme for what flows through them (van Albada's
limiter), buoyancy as a projection of the rates of change onto those that keep the profile stable, everything
integrated together by scipy's adaptive Runge-Kutta pair of orders 3 and 2, and switching found as events on the
solution's own interpolant. Water properties are iapws's IAPWS-97, tabulated here.

Unknowns: heat per volume e = rho*h of each cell, the temperature of each body on the wall, and mass and heat drawn. The flow through each face follows from continuity with
rho(T), so the water's growth by heat pushes water out of the inlet.
"""

import numpy as np
from iapws import IAPWS97
from scipy.integrate import solve_ivp
from scipy.interpolate import CubicSpline
from scipy.optimize import isotonic_regression

ATMOSPHERE = 0.101325


def _properties():
    kelvin = 273.15 + np.linspace(0.2, 99.5, 200)
    states = [IAPWS97(T=t, P=ATMOSPHERE) for t in kelvin]
    rho = np.array([s.rho for s in states])
    h = 1e3 * np.array([s.h for s in states])
    celsius = kelvin - 273.15
    return celsius, rho, h


_C, _RHO, _H = _properties()
_E = _RHO * _H
# Even in e, fine, and linear between: cheap, and good to 1e-5 K.
_GRID = np.linspace(_E[0], _E[-1], 20001)
_celsius_of = CubicSpline(_E, _C)(_GRID)
_rho_of = CubicSpline(_E, _RHO)(_GRID)
_slope_of = CubicSpline(_E, _RHO).derivative()(_GRID)
density = CubicSpline(_C, _RHO)
enthalpy = CubicSpline(_C, _H)


temperature = CubicSpline(_H, _C)


def heat_per_volume(celsius):
    return density(celsius) * enthalpy(celsius)


def _look(table, e):
    x = (e - _GRID[0]) * ((len(_GRID) - 1) / (_GRID[-1] - _GRID[0]))
    i = np.clip(x.astype(int), 0, len(_GRID) - 2)
    f = x - i
    return table[i] * (1.0 - f) + table[i + 1] * f


def celsius_at(e):
    return _look(_celsius_of, np.asarray(e))


# Cells this alike, J/m3 (0.002 K), count as neutral, and even out within this many seconds.
NEUTRAL = 8e3
EVEN = 20.0


def overturn(e, rates):
    """Rates with buoyancy: where neighbours are neutral, no cell may warm faster than the one above it.

    The stable profiles are a convex cone, and what buoyancy leaves of the rates is their nearest point that does not
    lead out of it: isotonic regression within each neutral stretch. What little the steps leave inverted is evened
    out towards the stretch's own sorted means.
    """
    new = np.diff(e) > NEUTRAL
    stretch = np.concatenate([[0], np.cumsum(new)])
    if stretch[-1] == len(e) - 1:
        return rates
    step = 4.0 * (np.abs(rates).max() + 1.0)
    out = isotonic_regression(rates + step * stretch).x - step * stretch
    if np.any(e[1:] < e[:-1]):
        out = out + (isotonic_regression(e).x - e) / EVEN
    return out


class Tank:
    """A cylinder, its loss, its conduction, its inlet; SI units, Celsius."""

    def __init__(self, case, cells=240):
        self.case = case
        self.n = cells
        self.height = case["height"]
        self.area = case["volume"] / case["height"]
        self.dz = self.height / cells
        self.cell = self.area * self.dz
        self.middle = (np.arange(cells) + 0.5) * self.dz
        self.faces = np.arange(1, cells) * self.dz
        self.ua = case["loss"] / cells
        self.ambient = case["ambient"]
        self.k = case["conductivity"]
        self.bodies = case["bodies"]
        self.inlet = min(int(case["inlet_height"] / self.dz), cells - 1)
        # Shape of the eddy that the jet stirs up.
        away = np.abs(self.faces - case["inlet_height"])
        self.eddy = case["mixing_strength"] * np.exp(-away / case["mixing_decay"])
        self.e_in = float(heat_per_volume(case["inlet_celsius"]))
        self.shares = []
        for s in case["sources"]:
            low, high = s["centre"] - 0.5 * s["spread"], s["centre"] + 0.5 * s["spread"]
            edges = np.arange(cells + 1) * self.dz
            over = np.clip(np.minimum(edges[1:], high) - np.maximum(edges[:-1], low), 0.0, None)
            self.shares.append(over / over.sum())
        # Linear interpolation of the water beside each body.
        self.beside = []
        for b in self.bodies:
            x = np.clip(b["height"] / self.dz - 0.5, 0, cells - 1.000001)
            i = int(x)
            self.beside.append((i, x - i))
        # Places in the vector of unknowns: each body right after the cell beside it.
        order = [(i, 0, i) for i in range(cells)] + [(c, 1 + j, cells + j) for j, (c, _) in enumerate(self.beside)]
        place = {what: where for where, (_, _, what) in enumerate(sorted(order))}
        self.at = np.array([place[i] for i in range(cells)])
        self.body_at = np.array([place[cells + j] for j in range(len(self.bodies))])
        self.sums_at = np.array([cells + len(self.bodies), cells + len(self.bodies) + 1])

    def start(self, celsius):
        layers = np.asarray(celsius, dtype=float)
        i = np.minimum((self.middle / self.height * len(layers)).astype(int), len(layers) - 1)
        y = np.zeros(self.n + len(self.bodies) + 2)
        y[self.at] = heat_per_volume(layers[i])
        y[self.body_at] = [b["celsius"] for b in self.bodies]
        return y

    def settled(self, water, body):
        return self.ambient + body["coupling"] * (water - self.ambient)

    def celsius(self, y):
        return celsius_at(y[self.at])

    def rates(self, y, draw, watts):
        n = self.n
        e = y[self.at]
        x = (e - _GRID[0]) * ((len(_GRID) - 1) / (_GRID[-1] - _GRID[0]))
        i = np.clip(x.astype(int), 0, len(_GRID) - 2)
        f = x - i
        t = _celsius_of[i] * (1.0 - f) + _celsius_of[i + 1] * f
        rho = _rho_of[i] * (1.0 - f) + _rho_of[i + 1] * f
        slope = _slope_of[i] * (1.0 - f) + _slope_of[i + 1] * f

        # Heat into each cell other than by flow, W/m3.
        q = self.ua * (self.ambient - t)
        for share, w in zip(self.shares, watts):
            if w:
                q = q + w * share
        rise = np.diff(t)
        conduct = self.k
        if draw > 0.0:
            conduct = conduct + 4.17e6 * draw * self.eddy
        up = -conduct * rise * (self.area / self.dz)
        q = q.copy()
        q[:-1] -= up
        q[1:] += up
        q /= self.cell

        # Volume flows through faces 0..n from continuity, m3/s: nothing through the bottom, the draw at the top.
        # In a cell with no inlet: the volume that its water gains by heat leaves it.
        # drho = slope*de closes mass and heat together; with face values near the cell's own the bracket is -rho+slope*e.
        grows = q * self.cell * (-slope) / (rho - slope * e)
        w = np.zeros(n + 1)
        w[1:] = np.cumsum(grows)
        k = self.inlet
        # Above the inlet the flow is what is drawn less what grows between there and the top.
        total = w[n]
        inlet = draw - total
        w[k + 1 :] += inlet
        # Face values: upwind with van Albada's limiter, by the sign of the flow.
        d = np.diff(e)
        a, b = d[:-1], d[1:]
        limited = np.zeros(n)
        both = a * b
        limited[1:-1] = np.where(both > 0.0, both * (a + b) / (a * a + b * b + 1e3), 0.0)
        if 0 < k < n - 1:
            limited[k] = 0.0
        inner = w[1:n]
        face = np.where(inner >= 0.0, e[:-1] + 0.5 * limited[:-1], e[1:] - 0.5 * limited[1:])
        flux = np.zeros(n + 1)
        flux[1:n] = inner * face
        top = e[-1]
        flux[n] = draw * top
        de = (flux[:-1] - flux[1:]) / self.cell + q
        heat_in = inlet * (self.e_in if inlet >= 0.0 else e[k])
        de[k] += heat_in / self.cell
        de = overturn(e, de)

        dy = np.empty_like(y)
        dy[self.at] = de
        for at, b, (cell, part) in zip(self.body_at, self.bodies, self.beside):
            water = t[cell] * (1.0 - part) + t[cell + 1] * part
            dy[at] = (self.settled(water, b) - y[at]) / b["lag"]
        dy[self.sums_at] = (draw * rho[-1], draw * top)
        return dy


class Run:
    """Goes through time with switching bodies; the wiring decides which source a calling body may feed."""

    def __init__(self, case, cells=240, rtol=1e-5):
        self.case = case
        self.tank = Tank(case, cells)
        self.rtol = rtol
        self.y = self.tank.start(case["start"])
        self.calling = [bool(b["calling"]) for b in case["bodies"]]
        self.now = 0.0
        self.electric = 0.0
        self.switches = []
        self.evaluations = 0
        self.energy0, self.mass0 = self.stored()

    def stored(self):
        e = self.y[self.tank.at]
        return float(e.sum() * self.tank.cell), float(_look(_rho_of, e).sum() * self.tank.cell)

    def drawn(self):
        return self.y[self.tank.sums_at]

    def watts(self):
        power = [s["watts"] for s in self.case["sources"]]
        if self.case["wiring"] == "simultaneous":
            return [w if c else 0.0 for w, c in zip(power, self.calling)]
        out = [0.0] * len(power)
        for i, c in enumerate(self.calling):
            if c:
                out[i] = power[i]
                break
        return out

    def go(self, until, draw, window=None, at_switch=False):
        """Integrates to a time, switching on the way. Returns the drawn kg and J at each window's end.

        With `at_switch` it stops at the first switching.
        """
        tank = self.tank
        marks = []
        edges = np.arange(self.now, until - 1e-6, window)[1:] if window else np.array([])
        edges = np.append(edges, until)
        while self.now < until - 1e-9:
            watts = self.watts()
            events = []
            for j, b in enumerate(self.case["bodies"]):
                level = b["cut_out"] if self.calling[j] else b["cut_in"]

                def event(_, y, at=tank.body_at[j], level=level):
                    return y[at] - level

                event.terminal = True
                event.direction = 1 if self.calling[j] else -1
                events.append(event)
            scale = np.full(len(self.y), 2e3)
            scale[tank.body_at] = 1e-4
            scale[tank.sums_at] = (1e-3, 1e2)
            ask = edges[edges > self.now + 1e-9]
            got = solve_ivp(
                lambda _, y: tank.rates(y, draw, watts),
                (self.now, until),
                self.y,
                method="RK23",
                rtol=self.rtol,
                atol=scale,
                events=events,
                t_eval=ask,
                first_step=min(1e-2, until - self.now),
                max_step=300.0,
            )
            if got.status < 0:
                raise RuntimeError(got.message)
            self.evaluations += got.nfev
            marks += [(t, *got.y[tank.sums_at, i]) for i, t in enumerate(got.t)]
            hits = [(te[-1], j, ye[-1]) for j, (te, ye) in enumerate(zip(got.t_events, got.y_events)) if len(te)]
            end, j, y = min(hits, key=lambda h: h[0]) if hits else (until, None, got.y[:, -1])
            self.electric += sum(watts) * (end - self.now)
            self.now, self.y = float(end), np.array(y)
            if j is not None:
                self.calling[j] = not self.calling[j]
                self.switches.append((self.now, j, self.calling[j]))
                if at_switch:
                    break
        return marks

    def pattern(self):
        outlet = []
        for start, end, flow in self.case["draws"]:
            self.go(start, 0.0)
            before = (start, *self.drawn())
            for mark in self.go(end, flow, self.case["window"]):
                outlet.append((mark[0], mark[1] - before[1], mark[2] - before[2]))
                before = mark
        self.go(self.case["duration"], 0.0)
        return outlet

    def first_hour(self):
        outlet = []
        flow, fall = 3.0 * 3.785411784e-3 / 60.0, 15.0 / 1.8
        while self.now < 3600.0:
            highest = -1e9
            while True:
                before = self.drawn()
                self.go(self.now + self.case["window"], flow)
                kg, joule = self.drawn() - before
                outlet.append((self.now, kg, joule))
                last = float(temperature(joule / kg))
                highest = max(highest, last)
                if last <= highest - fall:
                    break
            while self.now < 3600.0:
                count = len(self.switches)
                self.go(3600.0, 0.0, at_switch=True)
                if len(self.switches) > count and not self.switches[-1][2]:
                    break
        return outlet
