//! A day of draws on a tank with two sources, only one of which is on at a time.

use solver::tank::*;

const GALLON: f64 = 3.785_411_784e-3;

/// Start in minutes, gallons, gallons per minute.
pub type Draw = (f64, f64, f64);

/// 10 CFR 430 subpart B appendix E tables III.1 to III.4, from memory; the sums check to 10, 38, 55 and 84 gal.
pub const VERY_SMALL: &[Draw] = &[
    (0.0, 2.0, 1.0),
    (60.0, 1.0, 1.0),
    (65.0, 0.5, 1.0),
    (70.0, 0.5, 1.0),
    (75.0, 0.5, 1.0),
    (480.0, 1.0, 1.0),
    (495.0, 2.0, 1.0),
    (540.0, 1.5, 1.0),
    (555.0, 1.0, 1.0),
];
pub const LOW: &[Draw] = &[
    (0.0, 15.0, 1.7),
    (30.0, 2.0, 1.0),
    (60.0, 1.0, 1.0),
    (630.0, 6.0, 1.7),
    (690.0, 4.0, 1.7),
    (720.0, 1.0, 1.0),
    (765.0, 1.0, 1.0),
    (770.0, 1.0, 1.0),
    (975.0, 2.0, 1.0),
    (1005.0, 2.0, 1.7),
    (1020.0, 3.0, 1.7),
];
pub const MEDIUM: &[Draw] = &[
    (0.0, 15.0, 1.7),
    (30.0, 2.0, 1.0),
    (100.0, 9.0, 1.7),
    (630.0, 9.0, 1.7),
    (690.0, 5.0, 1.7),
    (720.0, 1.0, 1.0),
    (765.0, 1.0, 1.0),
    (770.0, 1.0, 1.0),
    (960.0, 1.0, 1.0),
    (975.0, 2.0, 1.0),
    (1005.0, 2.0, 1.7),
    (1020.0, 7.0, 1.7),
];
pub const HIGH: &[Draw] = &[
    (0.0, 27.0, 3.0),
    (30.0, 2.0, 1.0),
    (40.0, 1.0, 1.0),
    (100.0, 9.0, 1.7),
    (630.0, 15.0, 3.0),
    (690.0, 5.0, 1.7),
    (720.0, 1.0, 1.0),
    (765.0, 1.0, 1.0),
    (770.0, 1.0, 1.0),
    (960.0, 2.0, 1.0),
    (975.0, 2.0, 1.0),
    (990.0, 2.0, 1.7),
    (1005.0, 2.0, 1.7),
    (1020.0, 14.0, 3.0),
];

/// Two on-off controllers with a differential; the upper one has the first say.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Control {
    upper: bool,
    lower: bool,
}

/// What a day leaves behind.
#[derive(Default, Debug)]
pub struct Day {
    pub report: Report,
    /// Time, which probe, upwards.
    pub switches: Vec<(f64, u32, bool)>,
    /// Ten-second means of the outlet, in order.
    pub outlet: Vec<f64>,
    /// Layer temperatures at fixed times.
    pub layers: Vec<Vec<f64>>,
    pub gained: f64,
    pub gained_mass: f64,
}

pub const CUT_OUT: f64 = 51.7;
pub const CUT_IN: f64 = 46.1;

pub fn tank() -> Tank {
    Tank::of_volume(45.0 * GALLON, 1.22).unwrap()
}

/// Runs a day. `broken` puts the inlet in the top third.
pub fn day(tank: &Tank, draws: &[Draw], broken: bool) -> Day {
    day_in(10.0, tank, draws, broken)
}

/// The same with the outlet averaged over other windows than ten seconds.
pub fn day_in(window: f64, tank: &Tank, draws: &[Draw], broken: bool) -> Day {
    let mut state = tank.full_at(51.0);
    for height in [0.767 * 1.22, 0.167 * 1.22] {
        let height = height + 0.05;
        state.probes.push(Probe { height, lag: 90.0, coupling: 0.95, celsius: 50.0 });
    }
    let (energy, mass) = (state.energy(), state.mass());
    let mut control = Control { upper: false, lower: false };
    let mut inputs = Inputs::idle(0.18, 19.7, 1.42);
    inputs.inlet_celsius = 14.4;
    inputs.inlet_height = if broken { 1.0 } else { 0.18 };
    let mut day = Day::default();
    let mut events: Vec<(f64, f64)> = vec![(0.0, 0.0)];
    for &(minute, gallons, gpm) in draws {
        events.push((minute * 60.0, gpm * GALLON / 60.0));
        events.push(((minute + gallons / gpm) * 60.0, 0.0));
    }
    // Every quarter of an hour the layers are looked at.
    for i in 1..=96 {
        events.push((f64::from(i) * 900.0, -1.0));
    }
    events.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut now = 0.0;
    for (i, &(_, flow)) in events.iter().enumerate() {
        if flow >= 0.0 {
            inputs.draw = flow;
        } else {
            day.layers.push(state.layers(tank, 24).into_iter().flatten().collect());
        }
        let end = events.get(i + 1).map_or(86_400.0, |e| e.0);
        while now < end {
            let top = Source { centre: 0.767 * 1.22, spread: 0.03, watts: 4500.0 };
            let bottom = Source { centre: 0.167 * 1.22, spread: 0.03, watts: 4500.0 };
            inputs.sources = match control {
                Control { upper: true, .. } => vec![top],
                Control { lower: true, .. } => vec![bottom],
                _ => Vec::new(),
            };
            let watch = [0, 1].map(|probe| Cross { probe, rising: Some(CUT_OUT), falling: Some(CUT_IN) });
            let next = if inputs.draw > 0.0 { end.min(now + window) } else { end };
            let part = tank.advance(&mut state, &inputs, next - now, &watch).unwrap();
            now = if part.stop == Stop::Duration { next } else { now + part.elapsed };
            if inputs.draw > 0.0 && part.stop == Stop::Duration {
                day.outlet.extend(part.outlet());
            }
            day.report.absorb(&part);
            if let Stop::Crossed { probe, rising } = part.stop {
                let on = if probe == 0 { &mut control.upper } else { &mut control.lower };
                if *on == rising {
                    *on = !rising;
                    day.switches.push((now, probe, rising));
                }
            }
        }
    }
    day.gained = state.energy() - energy;
    day.gained_mass = state.mass() - mass;
    day
}
