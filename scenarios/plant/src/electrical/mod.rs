//! The heater as a network: lowered from the wiring as it is, solved with whatever bridges it.

pub mod constants;
mod fingerprint;
#[cfg(test)]
pub(crate) mod fixtures;
mod live;
mod lower;
mod memo;
mod nodes;
mod plans;
pub mod spice;
#[cfg(test)]
mod tests;

pub use live::Live;

use quantity::{Constant, Listed, Ohms, Tag};

use crate::{Plant, Point};
use lower::{Supply, lower};

quantity::constants! {
    /// Frequency of the supply.
    const FREQUENCY: Constant =
        Constant::new("frequency of the supply", 60.0, "Hz", Tag::Published("ANSI C84.1: 60 Hz systems"));
    /// Resistance taken for no path at all.
    const NO_PATH: Constant = Constant::new(
        "resistance taken for no path",
        1e11,
        "Ω",
        Tag::Model("beyond every insulation tester, below surface leakage"),
    );
}

/// The lists of this folder.
pub(crate) const SOURCES: &[&[Listed]] = &[
    CONSTANTS,
    constants::CONSTANTS,
    fingerprint::CONSTANTS,
    lower::CONSTANTS,
    memo::CONSTANTS,
    plans::CONSTANTS,
];

/// Frequency of the supply, Hz.
pub const HERTZ: f64 = FREQUENCY.get();

/// Something set across two points for the moment: a meter with its leads, a person.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Bridge {
    /// One side.
    pub a: Point,
    /// The other.
    pub b: Point,
    /// What it puts between them.
    pub resistance: Ohms,
    /// Farads beside that resistance: an instrument's input and its leads.
    pub capacitance: f64,
}

impl Bridge {
    /// A resistance and nothing beside it.
    pub const fn ohms(a: Point, b: Point, resistance: Ohms) -> Self {
        Self { a, b, resistance, capacitance: 0.0 }
    }
}

impl Plant {
    /// Solves the network with bridges in place.
    pub fn energise(&self, bridges: &[Bridge]) -> Live {
        let lowered = lower(self, bridges, Supply::Alternating);
        // The lowering makes only networks that have a solution; a dead one stands in all the same.
        let solution = plans::solve(&lowered.network).unwrap_or_default();
        Live { lowered, solution }
    }

    /// What [`Plant::resistance`] answers, worked out.
    fn path(&self, a: Point, b: Point) -> Option<Ohms> {
        let lowered = lower(self, &[], Supply::Direct);
        let (a, b) = (lowered.nodes.point(a)?, lowered.nodes.point(b)?);
        let ohms = solver::network::two_terminal(&lowered.network, a, b).ok()?.ohms();
        (ohms < NO_PATH.get()).then_some(Ohms(ohms))
    }
}
