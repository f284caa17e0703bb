//! The slab itself: cells, conductances and one step of the two-stage method.

use super::{Piece, Skin};

/// Nodes of the slab; the fluid has one more, before them.
const NODES: usize = 32;
/// Nodes down to the basal layer: the cells above it are equal.
const TO_BASAL: usize = 4;
/// 1 - 1/sqrt 2: makes the two-stage method L-stable.
const GAMMA: f64 = 1.0 - std::f64::consts::FRAC_1_SQRT_2;

/// Temperatures, capacities and conductances on an area: index 0 is the fluid, 1 the surface.
pub(super) struct Slab {
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
    pub(super) fn new(skin: &Skin) -> Self {
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

    pub(super) fn basal(&self) -> f64 {
        self.kelvin[1 + TO_BASAL]
    }

    pub(super) fn cover(&mut self, piece: &Piece) {
        self.kelvin[0] = piece.fluid.get();
        self.link[0] = piece.film;
        // An endless fluid has an infinite capacity: its inverse pivot is 0 and its change nil.
        self.capacity[0] = piece.layer.unwrap_or(f64::INFINITY);
        self.factored_for = 0.0;
    }

    /// One step of the two-stage method.
    pub(super) fn step(&mut self, dt: f64) {
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
    for _ in 0..24 {
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
