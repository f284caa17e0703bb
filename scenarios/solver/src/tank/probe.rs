//! Bodies that follow a temperature with a first-order lag.

use quantity::det;
use serde::{Deserialize, Serialize};

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
    let slope = (to - from) / dt;
    // On a ramp the body trails by slope·lag once its start is forgotten.
    let fade = det::exp(-dt / lag);
    (to - slope * lag) + (value - (from - slope * lag)) * fade
}

/// A body on the wall that follows the water at its height.
///
/// Its target is `ambient + coupling·(water − ambient) + bias`; at a dry height the water's place is taken
/// by the surroundings.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Probe {
    /// Height, m.
    pub height: f64,
    /// Time constant, s.
    pub lag: f64,
    /// Share of the difference between water and surroundings that reaches it, 0 to 1.
    pub coupling: f64,
    /// Added to the target, K.
    pub bias: f64,
    /// Its temperature, °C.
    pub celsius: f64,
}

impl Probe {
    /// What it would settle at.
    pub fn target(&self, water: Option<f64>, ambient: f64) -> f64 {
        ambient + self.coupling * (water.unwrap_or(ambient) - ambient) + self.bias
    }
}
