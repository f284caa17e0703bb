//! The tank and the current over the time of a job, sampled for a drawing.

use bench::{Action, Session};
use plant::home::Home;
use plant::{Screw, Wire};
use quantity::{Amps, Pressure, Seconds, Temperature};

/// Layers drawn, from the bottom up.
pub const LAYERS: u32 = 24;
/// Longest time between two samples while something goes on.
const APART: Seconds = Seconds(120.0);
/// Most samples within one act.
const MOST: f64 = 120.0;

/// The house at one moment.
#[derive(Clone, PartialEq, Debug)]
pub struct Sample {
    /// Time into the job.
    pub at: Seconds,
    /// Water of each layer, bottom first; nothing where it is dry.
    pub layers: Vec<Option<Temperature>>,
    /// Current in each heater lead, `feed-a` and `feed-b`.
    pub legs: [Amps; 2],
    /// Pressure at the tank.
    pub pressure: Pressure,
    /// Power reaches the limit's line screws.
    pub live: bool,
}

/// The whole job.
#[derive(Clone, PartialEq, Debug)]
pub struct Picture {
    /// Samples in order of time.
    pub samples: Vec<Sample>,
}

/// Samples the states on the way. A long act is let run again in slices on a copy, for the picture alone.
pub(super) fn picture(states: &[Session]) -> Picture {
    let mut samples = Vec::new();
    if let Some(first) = states.first() {
        samples.push(sample(&first.home, first.clock));
    }
    for pair in states.windows(2) {
        let [before, after] = pair else { continue };
        let took = after.clock - before.clock;
        if took.0 <= 0.0 {
            continue;
        }
        if after.log.last().is_some_and(|e| only_waits(&e.action)) {
            between(&mut samples, before, took);
        }
        samples.push(sample(&after.home, after.clock));
    }
    Picture { samples }
}

fn between(samples: &mut Vec<Sample>, before: &Session, took: Seconds) {
    let slices = (took / APART).ceil().clamp(1.0, MOST);
    let slice = took / slices;
    let mut home = before.home.clone();
    for i in 1..slices as u32 {
        home.plant.advance(slice);
        samples.push(sample(&home, before.clock + slice * f64::from(i)));
    }
}

/// Nothing but time passes. Other acts change the house at a moment of their own.
const fn only_waits(action: &Action) -> bool {
    matches!(action, Action::Wait { .. } | Action::WaitForCutOut)
}

fn sample(home: &Home, at: Seconds) -> Sample {
    let live = home.plant.energise(&[]);
    Sample {
        at,
        layers: home.plant.layers(LAYERS),
        legs: [live.amps(Wire::FeedA), live.amps(Wire::FeedB)],
        pressure: home.plant.plumbing.pressure,
        live: live.volts(Screw::H1.into(), Screw::G.into()).0 > 50.0
            || live.volts(Screw::H3.into(), Screw::G.into()).0 > 50.0,
    }
}
