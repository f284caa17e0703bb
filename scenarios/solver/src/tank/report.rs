//! What a stretch of simulated time took in, gave out and lost.

use super::PORTS;

/// Why `advance` returned.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Stop {
    /// The whole duration has passed.
    #[default]
    Duration,
    /// A watched probe passed its threshold.
    Crossed {
        /// Which probe.
        probe: u32,
        /// Upwards or downwards.
        rising: bool,
    },
}

/// Water that moved, kg and J above liquid at 0 °C: positive into the tank.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Moved {
    /// kg.
    pub mass: f64,
    /// J.
    pub energy: f64,
}

impl Moved {
    /// Mean temperature of what moved, °C.
    pub fn celsius(&self) -> Option<f64> {
        (self.mass != 0.0).then(|| crate::water::temperature(self.energy / self.mass))
    }
}

/// Sums over the time that passed: kg and J (enthalpy above liquid at 0 °C).
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Report {
    /// Time that passed, s.
    pub elapsed: f64,
    /// Why it ended.
    pub stop: Stop,
    /// Steps taken.
    pub steps: u32,
    /// Water out at the top, kg.
    pub drawn: f64,
    /// Its enthalpy, J.
    pub drawn_energy: f64,
    /// Water in at the inlet, kg.
    pub filled: f64,
    /// Its enthalpy, J.
    pub filled_energy: f64,
    /// Water out at the inlet, pushed by expansion or by a negative flow, kg.
    pub expelled: f64,
    /// Its enthalpy, J.
    pub expelled_energy: f64,
    /// Water out at the bottom, kg.
    pub drained: f64,
    /// Its enthalpy, J.
    pub drained_energy: f64,
    /// Heat from the sources into the water, J.
    pub heated: f64,
    /// Heat of the sources that did not meet water, J: the dry part's share.
    pub dry: f64,
    /// Heat lost to the surroundings, J.
    pub lost: f64,
    /// What moved through each of [`super::Inputs::ports`], in their order.
    pub ports: [Moved; PORTS],
    /// Water was asked for that was no longer there, m³.
    pub missing: f64,
}

impl Report {
    /// Temperature of the water drawn, averaged over its mass, °C.
    pub fn outlet(&self) -> Option<f64> {
        (self.drawn > 0.0).then(|| crate::water::temperature(self.drawn_energy / self.drawn))
    }

    /// Temperature of the water drained, averaged over its mass, °C.
    pub fn drain(&self) -> Option<f64> {
        (self.drained > 0.0).then(|| crate::water::temperature(self.drained_energy / self.drained))
    }

    /// Energy the water should have gained, J.
    pub fn gained(&self) -> f64 {
        self.filled_energy + self.heated
            - self.drawn_energy
            - self.expelled_energy
            - self.drained_energy
            - self.lost
            + self.ports.iter().map(|p| p.energy).sum::<f64>()
    }

    /// Mass the tank should have gained, kg.
    pub fn mass_gained(&self) -> f64 {
        self.filled - self.drawn - self.expelled - self.drained
            + self.ports.iter().map(|p| p.mass).sum::<f64>()
    }

    /// Adds a later stretch; the reason to stop is the later one's.
    pub fn absorb(&mut self, later: &Self) {
        self.elapsed += later.elapsed;
        self.stop = later.stop;
        self.steps += later.steps;
        self.drawn += later.drawn;
        self.drawn_energy += later.drawn_energy;
        self.filled += later.filled;
        self.filled_energy += later.filled_energy;
        self.expelled += later.expelled;
        self.expelled_energy += later.expelled_energy;
        self.drained += later.drained;
        self.drained_energy += later.drained_energy;
        self.heated += later.heated;
        self.dry += later.dry;
        self.lost += later.lost;
        for (sum, more) in self.ports.iter_mut().zip(&later.ports) {
            sum.mass += more.mass;
            sum.energy += more.energy;
        }
        self.missing += later.missing;
    }
}
