//! Heat in skin and the burn it makes: a one-dimensional slab with the integral of Henriques.
//!
//! The slab is cut into vertex-centred cells that grow with depth, heated through a film by a fluid that
//! is either endless or a thin layer with its own heat capacity, and stepped with a two-stage L-stable
//! method (second order) whose step doubles as the profile smooths out. Damage is integrated as if the
//! temperature ran straight over a step, which is exact for the exponent.

use quantity::{Metres, Seconds, Temperature, det};

/// Nodes of the slab; the fluid has one more, before them.
const NODES: usize = 32;
/// Nodes down to the basal layer: the cells above it are equal.
const TO_BASAL: usize = 4;
/// First step after the fluid changes, in seconds; the surface cell answers within about 7 ms.
const FIRST_STEP: f64 = 2e-3;
/// Steps between two doublings of the step.
const STEPS_PER_DOUBLING: u32 = 4;
/// Longest step in seconds.
const LONGEST_STEP: f64 = 60.0;
/// No piece lasts longer: about twelve days, so that no input runs for ever.
const LONGEST_PIECE: f64 = 1e6;
/// 1 - 1/sqrt 2: makes the two-stage method L-stable.
const GAMMA: f64 = 1.0 - std::f64::consts::FRAC_1_SQRT_2;

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
                let left = duration - elapsed;
                // Two equal steps at the end rather than a long one and a sliver.
                let dt = if left <= step { left } else { step.min(left * 0.5 + FIRST_STEP * 1e-3) };
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

/// Temperatures, capacities and conductances on an area: index 0 is the fluid, 1 the surface.
struct Slab {
    kelvin: [f64; NODES + 1],
    capacity: [f64; NODES + 1],
    /// Conductance from a node to the next, W/(m2 K).
    link: [f64; NODES + 1],
    /// The factors of the last step's matrix: what is eliminated, and inverse pivots.
    lower: [f64; NODES + 1],
    inverse: [f64; NODES + 1],
    factored_for: f64,
}

impl Slab {
    fn new(skin: &Skin) -> Self {
        let depths = depths(skin.basal.get(), skin.depth.get());
        let mut slab = Self {
            kelvin: [0.0; NODES + 1],
            capacity: [0.0; NODES + 1],
            link: [0.0; NODES + 1],
            lower: [0.0; NODES + 1],
            inverse: [0.0; NODES + 1],
            factored_for: 0.0,
        };
        let rise = (skin.core.get() - skin.surface.get()) / skin.depth.get();
        let nodes = slab.kelvin.iter_mut().zip(&mut slab.capacity).zip(&mut slab.link).skip(1);
        let mut above = 0.0;
        for (((kelvin, capacity), link), pair) in nodes.zip(depths.windows(2)) {
            let [here, next] = *pair else { continue };
            *kelvin = skin.surface.get() + rise * here;
            let below = next - here;
            *capacity = skin.heat_capacity * 0.5 * (above + below);
            *link = if below > 0.0 { skin.conductivity / below } else { 0.0 };
            above = below;
        }
        slab
    }

    fn basal(&self) -> f64 {
        self.kelvin[1 + TO_BASAL]
    }

    fn cover(&mut self, piece: &Piece) {
        self.kelvin[0] = piece.fluid.get();
        self.link[0] = piece.film;
        // An endless fluid has an infinite capacity: its inverse pivot is 0 and its change nil.
        self.capacity[0] = piece.layer.unwrap_or(f64::INFINITY);
        self.factored_for = 0.0;
    }

    /// One step of the two-stage method.
    fn step(&mut self, dt: f64) {
        if self.factored_for.to_bits() != dt.to_bits() {
            self.factor(GAMMA * dt);
            self.factored_for = dt;
        }
        // Stage increments are solved for, so that an endless fluid simply has an increment of nil.
        let first = self.increment(&self.kelvin);
        let mut start = self.kelvin;
        let share = (1.0 - GAMMA) / GAMMA;
        for (value, change) in start.iter_mut().zip(&first) {
            *value += share * change;
        }
        let second = self.increment(&start);
        for ((value, from), change) in self.kelvin.iter_mut().zip(&start).zip(&second) {
            *value = from + change;
        }
    }

    /// Factors capacity/h + conduction for a stage of length h.
    fn factor(&mut self, h: f64) {
        let (mut above, mut carried) = (0.0, 0.0);
        for i in 0..=NODES {
            let diagonal = self.capacity[i] / h + above + self.link[i];
            self.lower[i] = carried;
            self.inverse[i] = 1.0 / (diagonal - carried * above);
            carried = self.link[i] * self.inverse[i];
            above = self.link[i];
        }
    }

    /// Solves (capacity/h + conduction) x = heat flow into each node at the given temperatures.
    fn increment(&self, at: &[f64; NODES + 1]) -> [f64; NODES + 1] {
        let mut x = [0.0; NODES + 1];
        let (mut inflow, mut before) = (0.0, 0.0);
        for i in 0..=NODES {
            let outflow = if i < NODES { self.link[i] * (at[i] - at[i + 1]) } else { 0.0 };
            x[i] = inflow - outflow + self.lower[i] * before;
            before = x[i];
            inflow = outflow;
        }
        let mut after = 0.0;
        for i in (0..=NODES).rev() {
            x[i] = (x[i] + self.link[i] * after) * self.inverse[i];
            after = x[i];
        }
        x
    }
}

/// Node depths, with the last one twice: equal to the basal layer, then growing by one ratio.
fn depths(basal: f64, depth: f64) -> [f64; NODES + 1] {
    let first = basal / TO_BASAL as f64;
    let grown = NODES - 1 - TO_BASAL;
    // The ratio that makes the growing cells fill the rest, by halving.
    let reach = |ratio: f64| (0..grown).fold((0.0, first), |(sum, d), _| (sum + d * ratio, d * ratio)).0;
    let (mut low, mut high) = (1.0, 4.0);
    for _ in 0..60 {
        let ratio = 0.5 * (low + high);
        if reach(ratio) < depth - basal { low = ratio } else { high = ratio }
    }
    let mut depths = [depth; NODES + 1];
    let (mut here, mut size) = (0.0, first);
    for (i, d) in depths.iter_mut().take(NODES - 1).enumerate() {
        *d = here;
        if i >= TO_BASAL {
            size *= low;
        }
        here += size;
    }
    depths
}

#[cfg(test)]
mod tests;
