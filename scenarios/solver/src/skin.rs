//! Heat in skin and the burn it makes: a one-dimensional slab with the integral of Henriques.
//!
//! The slab is cut into vertex-centred cells that grow with depth, heated through a film by a fluid that
//! is either endless or a thin layer with its own heat capacity, and stepped with a two-stage L-stable
//! method (second order) whose step doubles as the profile smooths out. Damage is integrated as if the
//! temperature ran straight over a step, which is exact for the exponent.

mod slab;

use quantity::{Metres, Seconds, Temperature, det};

use slab::Slab;

/// First step after the fluid changes, in seconds; the surface cell answers within about 7 ms.
const FIRST_STEP: f64 = 2e-3;
/// Steps between two doublings of the step.
const STEPS_PER_DOUBLING: u32 = 4;
/// Longest step in seconds.
const LONGEST_STEP: f64 = 240.0;
/// No piece lasts longer: about twelve days, so that no input runs for ever.
const LONGEST_PIECE: f64 = 1e6;

/// Skin as a slab of one material.
///
/// [`Skin::adult`] holds the values validated in the trade sheet, 8.5 (computed there against the
/// time-temperature table of Moritz and Henriques, 1947).
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Skin {
    /// Thermal conductivity, W/(m K).
    pub conductivity: f64,
    /// Heat capacity of a volume, J/(m3 K).
    pub heat_capacity: f64,
    /// Depth of the basal layer.
    pub basal: Metres,
    /// Depth of the insulated back.
    pub depth: Metres,
    /// Temperature of the surface at the start.
    pub surface: Temperature,
    /// Temperature of the back at the start; straight between.
    pub core: Temperature,
    /// Damage rate factor of Henriques, 1/s.
    pub frequency: f64,
    /// Activation temperature of Henriques, K.
    pub activation: f64,
    /// No damage is counted below this temperature.
    pub threshold: Temperature,
}

/// A stretch of time during which one fluid lies on the skin.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Piece {
    /// For how long.
    pub duration: Seconds,
    /// Temperature of the fluid, at the start if it is a layer.
    pub fluid: Temperature,
    /// Film coefficient between fluid and skin, W/(m2 K).
    pub film: f64,
    /// Heat capacity of the fluid on an area, J/(m2 K), if it is a thin layer that cools.
    pub layer: Option<f64>,
}

/// What an exposure came to.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Outcome {
    /// Burn integral at the basal layer.
    pub omega: f64,
    /// Highest temperature of the basal layer.
    pub peak: Temperature,
    /// When the asked integral was reached, if one was asked and it was.
    pub reached: Option<Seconds>,
    /// Steps taken.
    pub steps: u32,
}

impl Skin {
    /// An adult's: k 0.37 W/(m K), 3.7 MJ/(m3 K), basal layer at 80 um, 12 mm deep, 33 to 36.5 °C,
    /// A 3.1e98 1/s, 75 000 K, from 44 °C (trade sheet 8.4 from memory of Henriques 1947, 8.5 computed).
    pub const fn adult() -> Self {
        Self {
            conductivity: 0.37,
            heat_capacity: 3.7e6,
            basal: Metres(80e-6),
            depth: Metres(12e-3),
            surface: Temperature::celsius(33.0),
            core: Temperature::celsius(36.5),
            frequency: 3.1e98,
            activation: 75_000.0,
            threshold: Temperature::celsius(44.0),
        }
    }

    /// The burn integral and highest basal temperature of a series of pieces.
    pub fn exposure(&self, pieces: &[Piece]) -> Outcome {
        self.run(pieces, f64::INFINITY)
    }

    /// The same, ended as soon as the burn integral reaches `omega`.
    pub fn until(&self, pieces: &[Piece], omega: f64) -> Outcome {
        self.run(pieces, omega)
    }

    fn run(&self, pieces: &[Piece], target: f64) -> Outcome {
        let mut slab = Slab::new(self);
        let mut damage = Damage { skin: self, omega: 0.0, rate: 0.0, basal: 0.0 };
        damage.start(slab.basal());
        let mut out = Outcome { omega: 0.0, peak: Temperature(slab.basal()), reached: None, steps: 0 };
        let mut clock = 0.0;
        for piece in pieces {
            slab.cover(piece);
            let duration = longest(piece.duration.get());
            let (mut elapsed, mut step, mut since) = (0.0, FIRST_STEP, 0);
            while elapsed < duration {
                // The steps do not depend on the duration except for the last, so that a longer exposure
                // repeats the shorter one and can only add to it.
                let dt = step.min(duration - elapsed);
                slab.step(dt);
                out.steps += 1;
                let before = damage.omega;
                let share = damage.advance(slab.basal(), dt, target);
                out.peak = Temperature(out.peak.get().max(slab.basal()));
                if damage.omega >= target && before < target {
                    out.omega = target;
                    out.reached = Some(Seconds(clock + elapsed + share * dt));
                    return out;
                }
                elapsed += dt;
                since += 1;
                if since == STEPS_PER_DOUBLING {
                    since = 0;
                    step = (step * 2.0).min(LONGEST_STEP);
                }
            }
            clock += elapsed;
        }
        out.omega = damage.omega;
        out
    }
}

/// A duration cut to the longest piece; one that is not a number is none.
fn longest(seconds: f64) -> f64 {
    if seconds.is_nan() { 0.0 } else { seconds.min(LONGEST_PIECE) }
}

/// The burn integral as it grows.
struct Damage<'a> {
    skin: &'a Skin,
    omega: f64,
    rate: f64,
    basal: f64,
}

impl Damage<'_> {
    fn start(&mut self, basal: f64) {
        self.basal = basal;
        self.rate = self.rate_at(basal);
    }

    fn rate_at(&self, kelvin: f64) -> f64 {
        self.skin.frequency * det::exp(-self.skin.activation / kelvin)
    }

    /// Goes over a step to a new basal temperature; gives the share of the step after which the target
    /// was reached (1 if it was not).
    fn advance(&mut self, basal: f64, dt: f64, target: f64) -> f64 {
        let (from, to) = (self.basal, basal);
        let rate = self.rate_at(to);
        let threshold = self.skin.threshold.get();
        // Only the part of the step above the threshold counts.
        let (enter, leave) = match (from >= threshold, to >= threshold) {
            (true, true) => (0.0, 1.0),
            (false, false) => (0.0, 0.0),
            (false, true) => ((threshold - from) / (to - from), 1.0),
            (true, false) => (0.0, (threshold - from) / (to - from)),
        };
        let limit = if enter > 0.0 || leave < 1.0 { self.rate_at(threshold) } else { 0.0 };
        let first = if enter > 0.0 { limit } else { self.rate };
        let last = if leave < 1.0 { limit } else { rate };
        let time = dt * (leave - enter);
        let growth = det::ln(last / first);
        let whole = if time <= 0.0 {
            0.0
        } else if growth.abs() < 1e-6 {
            time * 0.5 * (first + last)
        } else {
            time * (last - first) / growth
        };
        let missing = target - self.omega;
        self.omega += whole;
        self.rate = rate;
        self.basal = to;
        if whole < missing || whole <= 0.0 {
            return 1.0;
        }
        // Inverts the integral of a rate that grows exponentially.
        let part = if growth.abs() < 1e-6 {
            missing / whole
        } else {
            det::ln(1.0 + missing / whole * (det::exp(growth) - 1.0)) / growth
        };
        enter + (leave - enter) * part
    }
}

#[cfg(test)]
mod tests;
