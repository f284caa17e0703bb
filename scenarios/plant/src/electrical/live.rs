//! A solved network, asked in the words of the plant.

use quantity::{Amps, Volts, Watts};
use solver::network::{Branch, Complex, Solution};

use super::lower::{Lowered, Place};
use super::nodes::NEUTRAL;
use crate::{ContactAt, End, Level, Point, Screw, Wire};

/// A solution of the network at one moment, at 60 Hz.
#[derive(Clone, Debug)]
pub struct Live {
    pub(super) lowered: Lowered,
    pub(super) solution: Solution,
}

impl Live {
    /// Voltage between two points.
    pub fn volts(&self, a: Point, b: Point) -> Volts {
        Volts(self.volts_phasor(a, b).norm())
    }

    /// Voltage of `a` against `b` with its phase; leg 1 of the service is at zero degrees. A point that is
    /// not there has none.
    pub fn volts_phasor(&self, a: Point, b: Point) -> Complex {
        match (self.lowered.nodes.point(a), self.lowered.nodes.point(b)) {
            (Some(a), Some(b)) => self.solution.between(a, b),
            _ => Complex::ZERO,
        }
    }

    /// Voltage of the tank's bare metal against the neutral point of the transformer: remote earth.
    pub fn shell(&self) -> Volts {
        let shell = self.lowered.nodes.screw(Screw::Shell);
        Volts(shell.map_or(0.0, |shell| self.solution.between(shell, NEUTRAL).norm()))
    }

    /// Current in a wire.
    pub fn amps(&self, wire: Wire) -> Amps {
        Amps(self.amps_phasor(wire).norm())
    }

    /// Current in a wire with its phase, counted away from the end nearer the source.
    pub fn amps_phasor(&self, wire: Wire) -> Complex {
        self.current(self.lowered.wires.get(wire.index()).copied().flatten())
    }

    /// Current that a clamp around several wires shows: the length of their phasor sum.
    pub fn clamp(&self, wires: &[Wire]) -> Amps {
        Amps(wires.iter().fold(Complex::ZERO, |sum, wire| sum + self.amps_phasor(*wire)).norm())
    }

    /// Current that a clamp around both legs of the branch cable shows: their phasor sum.
    pub fn both_legs(&self) -> Amps {
        self.clamp(&[Wire::CableA, Wire::CableB, Wire::CableN, Wire::WhipA, Wire::WhipB])
    }

    /// Current that the heater's breakers take from a leg of the bus: 0 for leg 1, 1 for leg 2.
    pub fn leg_current(&self, leg: usize) -> Amps {
        let poles = self.lowered.feeding.iter().filter(|(on, _)| *on == leg);
        Amps(poles.fold(Complex::ZERO, |sum, (_, place)| sum + self.current(*place)).norm())
    }

    /// Current through a breaker's pole, by its slot.
    pub fn pole_amps(&self, slot: usize, pole: usize) -> Amps {
        let place = self.lowered.poles.get(slot).and_then(|poles| poles.get(pole)).copied().flatten();
        Amps(self.current(place).norm())
    }

    /// Heat in the joint at a wire's end.
    pub fn joint_watts(&self, end: End) -> Watts {
        let place = self.lowered.joints.get(end.wire.index());
        let place = place.and_then(|pair| pair.get(usize::from(end.side & 1))).copied().flatten();
        Watts(self.power(place))
    }

    /// Heat in a contact of the heater's controls.
    pub fn contact_watts(&self, at: ContactAt) -> Watts {
        Watts(self.power(self.lowered.contacts.get(at.index()).copied().flatten()))
    }

    /// Current through a contact of the heater's controls.
    pub fn contact_amps(&self, at: ContactAt) -> Amps {
        Amps(self.current(self.lowered.contacts.get(at.index()).copied().flatten()).norm())
    }

    /// Current through a bridge, by its place in the list.
    pub fn bridge_amps(&self, index: usize) -> Amps {
        Amps(self.current(self.lowered.bridges.get(index).copied().flatten()).norm())
    }

    /// Heat an element gives, all its parts together: coil and the fault to its sheath.
    pub fn element_watts(&self, level: Level) -> Watts {
        let parts = self.lowered.elements.get(level.index()).into_iter().flatten();
        Watts(parts.map(|place| self.power(*place)).sum())
    }

    /// Current from an element's coil into its sheath.
    pub fn sheath_amps(&self, level: Level) -> Amps {
        let place = self.lowered.elements.get(level.index()).and_then(|parts| parts.get(2));
        Amps(self.current(place.copied().flatten()).norm())
    }

    fn branch(&self, place: Place) -> Option<&Branch> {
        self.lowered.network.branches.get(place?)
    }

    fn current(&self, place: Place) -> Complex {
        self.branch(place).map_or(Complex::ZERO, |branch| self.solution.current(branch))
    }

    fn power(&self, place: Place) -> f64 {
        self.branch(place).map_or(0.0, |branch| self.solution.power(branch))
    }
}
