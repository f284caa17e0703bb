//! The heater as a network: lowered from the wiring as it is, solved with whatever bridges it.

use quantity::{Amps, Ohms, Volts, Watts};

use crate::{Level, Plant, Point, Wire};

/// Something set across two points for the moment: a meter with its leads, a person.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Bridge {
    /// One side.
    pub a: Point,
    /// The other.
    pub b: Point,
    /// What it puts between them.
    pub resistance: Ohms,
}

/// A solution of the network at one moment, at 60 Hz.
#[derive(Clone, Debug)]
pub struct Live {}

impl Plant {
    /// Solves the network with bridges in place.
    pub fn energise(&self, bridges: &[Bridge]) -> Live {
        let _ = bridges;
        Live {}
    }

    /// Resistance between two points with every source at zero, for direct current; `None` without a path.
    pub fn resistance(&self, a: Point, b: Point) -> Option<Ohms> {
        let _ = (a, b);
        None
    }
}

impl Live {
    /// Voltage between two points.
    pub fn volts(&self, a: Point, b: Point) -> Volts {
        let _ = (a, b);
        Volts(0.0)
    }

    /// Current in a wire.
    pub fn amps(&self, wire: Wire) -> Amps {
        let _ = wire;
        Amps(0.0)
    }

    /// Current that a clamp around both legs of the branch cable shows: their phasor sum.
    pub fn both_legs(&self) -> Amps {
        Amps(0.0)
    }

    /// Current through a bridge, by its place in the list.
    pub fn bridge_amps(&self, index: usize) -> Amps {
        let _ = index;
        Amps(0.0)
    }

    /// Heat an element gives, all its parts together.
    pub fn element_watts(&self, level: Level) -> Watts {
        let _ = level;
        Watts(0.0)
    }
}
