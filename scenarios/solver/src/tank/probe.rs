//! Bodies that follow a temperature with a first-order lag.

use quantity::det;
use serde::{Deserialize, Serialize};

use super::{Error, check};

/// Exact answer of a first-order body after `dt` seconds while its target goes evenly from `from` to `to`.
///
/// Any step length is stable; with `from == to` it is the plain exponential. A lag of zero follows at once.
pub fn lag(value: f64, from: f64, to: f64, lag: f64, dt: f64) -> f64 {
    if lag <= 0.0 {
        return to;
    }
    if dt <= 0.0 {
        return value;
    }
    on_ramp(value, (from, to), lag, dt, det::exp(-dt / lag))
}

/// The same with what is left of the start given.
fn on_ramp(value: f64, (from, to): (f64, f64), lag: f64, dt: f64, fade: f64) -> f64 {
    let slope = (to - from) / dt;
    // On a ramp the body trails by slope·lag once its start is forgotten.
    (to - slope * lag) + (value - (from - slope * lag)) * fade
}

/// Lags of several bodies over one stretch: those with the time constant of the one before fade as it does.
pub(super) struct Lags {
    dt: f64,
    /// The last time constant and what it leaves.
    last: (f64, f64),
}

impl Lags {
    pub fn over(dt: f64) -> Self {
        Self { dt, last: (0.0, 0.0) }
    }

    /// As [`lag`] has it.
    pub fn follow(&mut self, probe: &Probe, from: f64, to: f64) -> f64 {
        if probe.lag <= 0.0 || self.dt <= 0.0 {
            return lag(probe.celsius, from, to, probe.lag, self.dt);
        }
        if self.last.0 != probe.lag {
            self.last = (probe.lag, det::exp(-self.dt / probe.lag));
        }
        on_ramp(probe.celsius, (from, to), probe.lag, self.dt, self.last.1)
    }
}

/// A body on the wall that follows the water at its height.
///
/// Its target is `ambient + coupling·(water − ambient)`; at a dry height the water's place is taken by the
/// surroundings.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Probe {
    /// Height, m.
    pub height: f64,
    /// Time constant, s.
    pub lag: f64,
    /// Share of the difference between water and surroundings that reaches it, 0 to 1.
    pub coupling: f64,
    /// Its temperature, °C.
    pub celsius: f64,
}

/// What warms one body beside the water while the same currents stand: some of it for good, some coming or going with
/// time constants of its own. Followed exactly, whatever the step.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Warming {
    /// The body, by its place in the list.
    pub probe: u32,
    /// Added to its target in the end, K.
    pub settles: f64,
    /// What is beyond that at the start of the call.
    pub fading: [Fading; 2],
}

/// A part that fades.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Fading {
    /// At the start of the call, K; negative while it is still to come.
    pub amount: f64,
    /// Time constant, s.
    pub lag: f64,
}

/// Time constants this near are one: what follows and what it follows fade alike.
const SAME: f64 = 1e-6;

impl Warming {
    pub(super) fn check(&self) -> Result<(), Error> {
        check("warming", self.settles, f64::MIN)?;
        for part in &self.fading {
            check("warming that fades", part.amount, f64::MIN)?;
            check("its time constant", part.lag, f64::MIN_POSITIVE)?;
        }
        Ok(())
    }

    /// What it adds to a body of a time constant over `dt` seconds that begin `at` seconds into the call.
    pub(super) fn adds(&self, lag: f64, at: f64, dt: f64) -> f64 {
        let left = if lag > 0.0 { det::exp(-dt / lag) } else { 0.0 };
        self.fading.iter().filter(|part| part.amount != 0.0).fold(self.settles * (1.0 - left), |sum, part| {
            let (start, apart) = (part.amount * det::exp(-at / part.lag), part.lag - lag);
            sum + if apart.abs() < SAME * lag {
                start * left * dt / lag
            } else {
                start * (det::exp(-dt / part.lag) - left) * part.lag / apart
            }
        })
    }
}

impl Probe {
    /// What it would settle at.
    pub fn target(&self, water: Option<f64>, ambient: f64) -> f64 {
        ambient + self.coupling * (water.unwrap_or(ambient) - ambient)
    }
}
