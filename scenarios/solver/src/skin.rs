//! Heat in skin and the burn it makes: a one-dimensional slab with the integral of Henriques.
//!
//! The slab is cut into vertex-centred cells that grow with depth, heated through a film by a fluid that
//! is either endless or a thin layer with its own heat capacity, and stepped with a two-stage L-stable
//! method (second order) whose step doubles as the profile smooths out. Damage is integrated as if the
//! temperature ran straight over a step, which is exact for the exponent.

mod slab;

use quantity::{Constant, Metres, Seconds, Tag, Temperature, det};

use slab::Slab;

/// With these the burn times agree with the table of Moritz and Henriques 1947.
const RECALLED: Tag = Tag::Memory("one-dimensional models of skin that apply the integral of Henriques 1947");

quantity::constants! {
    /// First step after the fluid changes; the surface cell answers within about 7 ms.
    const FIRST_STEP: Constant =
        Constant::new("first step after the fluid changes", 2e-3, "s", Tag::Model("the surface answers within 7 ms"));
    /// Steps between two doublings of the step.
    const STEPS_PER_DOUBLING: Constant<u32> =
        Constant::new("steps between two doublings", 4, "", Tag::Model("the profile smooths out as fast"));
    /// Longest step.
    const LONGEST_STEP: Constant = Constant::new("longest step", 240.0, "s", Tag::Model("far below the slab's own time"));
    /// No piece lasts longer, so that no input runs for ever.
    const LONGEST_PIECE: Constant =
        Constant::new("longest stretch of heat", 1e6, "s", Tag::Model("about twelve days; no input runs for ever"));
    /// Conductivity of skin.
    const CONDUCTIVITY: Constant = Constant::new("conductivity of skin", 0.37, "W/(m·K)", RECALLED);
    /// Heat capacity of skin by volume.
    const HEAT_CAPACITY: Constant = Constant::new("heat capacity of skin", 3.7e6, "J/(m³·K)", RECALLED);
    /// Depth of the basal layer.
    const BASAL: Constant<Metres> = Constant::of("depth of the basal layer", Metres(80e-6), Tag::Memory("Henriques 1947, Studies of thermal injury V"));
    /// Depth of the insulated back.
    const DEPTH: Constant<Metres> = Constant::of("depth of the slab of skin", Metres(12e-3), Tag::Computed("10 to 30 mm give the same burn times within 4 %"));
    /// Surface at the start.
    const SURFACE: Constant<Temperature> = Constant::of("surface of skin at the start", Temperature::celsius(33.0), RECALLED);
    /// Back of the slab at the start.
    const CORE: Constant<Temperature> = Constant::of("back of the slab at the start", Temperature::celsius(36.5), RECALLED);
    /// Damage rate factor.
    const FREQUENCY: Constant =
        Constant::new("damage rate factor", 3.1e98, "1/s", Tag::Memory("Henriques 1947, Studies of thermal injury V"));
    /// Activation temperature of the damage.
    const ACTIVATION: Constant = Constant::new(
        "activation temperature of the damage",
        75_000.0,
        "K",
        Tag::Memory("Henriques 1947, Studies of thermal injury V: 150 000 cal/mol with R of about 2"),
    );
    /// No damage is counted below this.
    const THRESHOLD: Constant<Temperature> = Constant::of(
        "temperature from which damage is counted",
        Temperature::celsius(44.0),
        Tag::Published("Moritz and Henriques 1947: 44 °C for about 6 h does lasting harm"),
    );
}

/// Skin as a slab of one material.
///
/// [`Skin::adult`] holds values that agree with the time-temperature table of Moritz and Henriques, 1947.
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
    /// An adult's.
    pub const fn adult() -> Self {
        Self {
            conductivity: CONDUCTIVITY.get(),
            heat_capacity: HEAT_CAPACITY.get(),
            basal: BASAL.get(),
            depth: DEPTH.get(),
            surface: SURFACE.get(),
            core: CORE.get(),
            frequency: FREQUENCY.get(),
            activation: ACTIVATION.get(),
            threshold: THRESHOLD.get(),
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
            let (mut elapsed, mut step, mut since) = (0.0, FIRST_STEP.get(), 0);
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
                if since == STEPS_PER_DOUBLING.get() {
                    since = 0;
                    step = (step * 2.0).min(LONGEST_STEP.get());
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
    if seconds.is_nan() { 0.0 } else { seconds.min(LONGEST_PIECE.get()) }
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
