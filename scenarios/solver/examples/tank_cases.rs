//! Runs the cases that an independent model repeats, and prints each as one line of JSON: first what the case
//! is, then what came of it. Names may be given to run only those, and `--layers N` or `--steps F` before them
//! for another grid or for steps scaled by a factor.
#![allow(clippy::unwrap_used, dead_code, reason = "a program for checks")]

#[path = "../tests/tank/household.rs"]
mod household;

use household::{HIGH, LOW, MEDIUM, VERY_SMALL};
use solver::tank::{Cross, Filling, Inputs, Probe, Source, State, Stop, Tank};

const GALLON: f64 = 3.785_411_784e-3;
/// Seconds over which the outlet is averaged.
const WINDOW: f64 = 10.0;
const HEIGHTS: [f64; 2] = [0.767, 0.167];
const ABOVE: f64 = 0.07;
const SPREAD: f64 = 0.05;

struct Case {
    name: &'static str,
    gallons: f64,
    height: f64,
    loss: f64,
    watts: f64,
    start: Vec<f64>,
    inlet: f64,
    broken: bool,
    together: bool,
    draws: Vec<(f64, f64, f64)>,
    hours: f64,
    /// Draws follow the rule of the first-hour test instead of a list.
    first_hour: bool,
}

fn fahrenheit(f: f64) -> f64 {
    (f - 32.0) / 1.8
}

fn cases() -> Vec<Case> {
    let plain = || Case {
        name: "",
        gallons: 45.0,
        height: 1.22,
        loss: 1.42,
        watts: 4500.0,
        start: vec![fahrenheit(125.0)],
        inlet: fahrenheit(58.0),
        broken: false,
        together: false,
        draws: Vec::new(),
        hours: 24.0,
        first_hour: false,
    };
    let list = |draws: &[(f64, f64, f64)]| draws.to_vec();
    vec![
        Case {
            name: "very-small",
            gallons: 18.0,
            height: 0.72,
            loss: 1.0,
            watts: 3500.0,
            draws: list(VERY_SMALL),
            ..plain()
        },
        Case { name: "low", gallons: 36.0, height: 1.1, loss: 1.21, draws: list(LOW), ..plain() },
        Case { name: "medium", draws: list(MEDIUM), ..plain() },
        Case {
            name: "high",
            gallons: 72.0,
            height: 1.32,
            loss: 2.1,
            watts: 5500.0,
            draws: list(HIGH),
            ..plain()
        },
        Case { name: "first-hour", hours: 1.0, first_hour: true, ..plain() },
        Case {
            name: "first-hour-40",
            gallons: 36.0,
            height: 1.1,
            loss: 1.21,
            hours: 1.0,
            first_hour: true,
            ..plain()
        },
        Case { name: "recovery", start: vec![fahrenheit(58.0)], hours: 3.0, ..plain() },
        Case { name: "standby", start: vec![fahrenheit(120.0)], watts: 0.0, hours: 72.0, ..plain() },
        Case { name: "dip-tube-broken", broken: true, draws: list(MEDIUM), ..plain() },
        Case { name: "both-elements", together: true, draws: list(HIGH), ..plain() },
        Case { name: "run-cold", draws: vec![(10.0, 60.0, 3.0), (240.0, 45.0, 5.0)], hours: 8.0, ..plain() },
    ]
}

struct Run {
    tank: Tank,
    state: State,
    inputs: Inputs,
    calling: [bool; 2],
    together: bool,
    watts: f64,
    now: f64,
    cut: [(f64, f64); 2],
    drawn: (f64, f64),
    electric: f64,
    lost: f64,
    switches: Vec<(f64, usize, bool)>,
    outlet: Vec<(f64, f64)>,
    /// Draws that were made: from, to, m³/s.
    draws: Vec<(f64, f64, f64)>,
}

impl Run {
    fn new(case: &Case, layers: u32, steps: f64) -> Self {
        let tank = Tank::of_volume(case.gallons * GALLON, case.height).unwrap().refined(layers, steps);
        let mut state = tank.layered(&case.start);
        let mut inputs = Inputs::idle(0.18, fahrenheit(67.5), case.loss);
        inputs.inlet_celsius = case.inlet;
        if case.broken {
            inputs.inlet_height = 0.92 * case.height;
            inputs.mixing = solver::tank::Mixing { strength: 1.5, decay: 0.25 };
        }
        for share in HEIGHTS {
            let mut probe =
                Probe { height: share * case.height + ABOVE, lag: 90.0, coupling: 0.95, celsius: 0.0 };
            probe.celsius = probe.target(state.temperature_at(probe.height), inputs.ambient);
            state.probes.push(probe);
        }
        let out = fahrenheit(122.0);
        let cut = [(out - 15.0 / 1.8, out), (out - 10.0 / 1.8, out)];
        let calling = [0, 1].map(|i: usize| state.probes[i].celsius <= cut[i].0);
        Self {
            tank,
            state,
            inputs,
            calling,
            together: case.together,
            watts: case.watts,
            now: 0.0,
            cut,
            drawn: (0.0, 0.0),
            electric: 0.0,
            lost: 0.0,
            switches: Vec::new(),
            outlet: Vec::new(),
            draws: Vec::new(),
        }
    }

    /// Goes on to a time; stops early at a switching if asked to.
    fn go(&mut self, until: f64, draw: f64, until_switch: bool) -> bool {
        self.inputs.draw = draw;
        // The window under way: its end, and what came in it.
        let mut edge = until.min(self.now + WINDOW);
        let mut mean = (0.0, 0.0);
        while self.now < until {
            let height = self.tank.height();
            let on = [self.calling[0], self.calling[1] && (self.together || !self.calling[0])];
            self.inputs.sources.clear();
            for (share, on) in HEIGHTS.iter().zip(on) {
                if on {
                    let source = Source { centre: share * height, spread: SPREAD, watts: self.watts };
                    self.inputs.sources.push(source);
                }
            }
            let watch = [0, 1].map(|i: usize| {
                let (low, high) = self.cut[i];
                Cross {
                    probe: i as u32,
                    rising: self.calling[i].then_some(high),
                    falling: (!self.calling[i]).then_some(low),
                }
            });
            let next = if draw > 0.0 { edge } else { until };
            let part = self.tank.advance(&mut self.state, &self.inputs, next - self.now, &watch).unwrap();
            mean = (mean.0 + part.drawn, mean.1 + part.drawn_energy);
            self.drawn = (self.drawn.0 + part.drawn, self.drawn.1 + part.drawn_energy);
            self.electric += part.heated;
            self.lost += part.lost;
            self.now = if part.stop == Stop::Duration { next } else { self.now + part.elapsed };
            if draw > 0.0 && part.stop == Stop::Duration {
                self.outlet.push((self.now, solver::water::temperature(mean.1 / mean.0)));
                mean = (0.0, 0.0);
                edge = until.min(self.now + WINDOW);
            }
            if let Stop::Crossed { probe, rising } = part.stop {
                self.calling[probe as usize] = !rising;
                self.switches.push((self.now, probe as usize, !rising));
                if until_switch {
                    return true;
                }
            }
        }
        false
    }

    fn pattern(&mut self, case: &Case) {
        for &(minute, gallons, gpm) in &case.draws {
            self.go(minute * 60.0, 0.0, false);
            self.go((minute + gallons / gpm) * 60.0, gpm * GALLON / 60.0, false);
            self.draws.push((minute * 60.0, self.now, self.inputs.draw));
        }
        self.go(case.hours * 3600.0, 0.0, false);
    }

    /// Draws at 3 gpm until the outlet is 15 °F below the draw's highest; again at each cut-out; for an hour.
    fn first_hour(&mut self) {
        let flow = 3.0 * GALLON / 60.0;
        let fall = 15.0 / 1.8;
        while self.now < 3600.0 {
            let mut highest = f64::MIN;
            let start = self.now;
            loop {
                self.go(self.now + WINDOW, flow, false);
                let last = self.outlet.last().map_or(0.0, |o| o.1);
                highest = highest.max(last);
                if last <= highest - fall {
                    break;
                }
            }
            self.draws.push((start, self.now, flow));
            loop {
                let switched = self.go(3600.0_f64.max(self.now), 0.0, true);
                if !switched || self.switches.last().is_some_and(|s| !s.2) {
                    break;
                }
            }
        }
    }
}

fn list(values: impl Iterator<Item = String>) -> String {
    format!("[{}]", values.collect::<Vec<_>>().join(","))
}

fn main() {
    let mut wanted: Vec<String> = std::env::args().skip(1).collect();
    let (mut layers, mut steps) = (solver::tank::LAYERS, 1.0);
    while wanted.len() >= 2 && wanted[0].starts_with("--") {
        match wanted[0].as_str() {
            "--layers" => layers = wanted[1].parse().unwrap(),
            _ => steps = wanted[1].parse().unwrap(),
        }
        wanted.drain(..2);
    }
    for case in cases() {
        if !wanted.is_empty() && !wanted.iter().any(|w| w == case.name) {
            continue;
        }
        let mut run = Run::new(&case, layers, steps);
        assert_eq!(run.inputs.filling, Filling::KeepFull);
        let bodies: Vec<(Probe, bool)> = run.state.probes.iter().copied().zip(run.calling).collect();
        let (energy, mass) = (run.state.energy(), run.state.mass());
        if case.first_hour {
            run.first_hour()
        } else {
            run.pattern(&case)
        }
        let inputs = &run.inputs;
        let bodies = list(bodies.iter().zip(run.cut).map(|((b, calling), (low, high))| {
            format!(
                r#"{{"height":{},"lag":{},"coupling":{},"celsius":{},"calling":{calling},"cut_in":{low},"cut_out":{high}}}"#,
                b.height, b.lag, b.coupling, b.celsius
            )
        }));
        let sources = list(HEIGHTS.iter().map(|share| {
            format!(r#"{{"centre":{},"spread":{SPREAD},"watts":{}}}"#, share * case.height, case.watts)
        }));
        let draws = list(run.draws.iter().map(|d| format!("[{},{},{}]", d.0, d.1, d.2)));
        println!(
            r#"{{"name":"{}","volume":{},"height":{},"loss":{},"ambient":{},"conductivity":{},"inlet_height":{},"inlet_celsius":{},"mixing_strength":{},"mixing_decay":{},"start":{:?},"wiring":"{}","first_hour":{},"duration":{},"window":{WINDOW},"bodies":{bodies},"sources":{sources},"draws":{draws},"outlet":{},"switches":{},"drawn":{},"drawn_energy":{},"electric":{},"lost":{},"gained":{},"mass_gained":{},"layers":{:?}}}"#,
            case.name,
            case.gallons * GALLON,
            case.height,
            inputs.loss,
            inputs.ambient,
            inputs.conductivity,
            inputs.inlet_height,
            inputs.inlet_celsius,
            inputs.mixing.strength,
            inputs.mixing.decay,
            case.start,
            if case.together { "simultaneous" } else { "one at a time" },
            case.first_hour,
            run.now,
            list(run.outlet.iter().map(|o| format!("[{},{}]", o.0, o.1))),
            list(run.switches.iter().map(|s| format!("[{},{},{}]", s.0, s.1, s.2))),
            run.drawn.0,
            run.drawn.1,
            run.electric,
            run.lost,
            run.state.energy() - energy,
            run.state.mass() - mass,
            run.state.layers(&run.tank, 12).into_iter().flatten().collect::<Vec<_>>(),
        );
    }
}
