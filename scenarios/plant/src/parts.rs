//! The parts of the heater as they are now: elements, thermostats, limit, wire joints.

mod contacts;
mod element;
mod fickle;
mod film;
mod mount;

use quantity::{Constant, Kelvins, Metres, Ohms, Tag};
use serde::{Deserialize, Serialize};

use crate::conductor::Conductor;
use crate::layout::Layout;
use crate::named::named;
use crate::points::{End, Screw};

/// The tagged constants of the parts.
pub(crate) const SOURCES: &[&[quantity::Listed]] = &[
    CONSTANTS,
    contacts::CONSTANTS,
    element::CONSTANTS,
    fickle::CONSTANTS,
    film::CONSTANTS,
    mount::CONSTANTS,
];

pub use contacts::{Contact, ContactAt, Limit, Spot, Thermostat};
pub use element::{Density, Element, Gasket, Scale, SheathFault};
pub use fickle::{Fickle, Parting};
pub use film::Film;
pub use mount::{ElementLength, Mount};

quantity::constants! {
    /// Resistance of a sound joint.
    const SOUND: Constant<Ohms> = Constant::of(
        "sound joint",
        Ohms(0.001),
        Tag::Model("well below the 5 milliohms of a sound contact"),
    );
    /// Resistance left in a joint that has burnt off.
    const BURNT: Constant<Ohms> =
        Constant::of("burnt-off joint", Ohms(1e9), Tag::Model("an open gap with a trace of char"));
}

/// Resistance of a sound joint.
pub const SOUND_JOINT: Ohms = SOUND.get();
/// Resistance left in a joint that has burnt off.
pub const BURNT_OFF: Ohms = BURNT.get();

named! {
    /// Upper or lower: which of two like parts.
    Level {
        /// The upper one.
        Upper = "upper",
        /// The lower one.
        Lower = "lower",
    }
}

impl Level {
    /// 0 for the upper, 1 for the lower: its place in every pair.
    pub const fn index(self) -> usize {
        self as usize
    }
}

/// One end of a wire: what it sits on, and how well.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Joint {
    /// The screw it is landed on; `None` while lifted.
    pub on: Option<Screw>,
    /// Resistance of the joint.
    pub resistance: Ohms,
    /// How far its own heat has brought it above the air around it.
    pub rise: Kelvins,
    /// Tightened to the marked torque.
    pub torqued: bool,
    /// Browned insulation, blued copper: visible with the cover off.
    pub charred: bool,
    /// Carries the technician's label.
    pub labelled: bool,
}

/// Every wire end, by wire and side.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Wiring {
    joints: Vec<[Joint; 2]>,
    lengths: Vec<Metres>,
    conductors: Vec<Conductor>,
    /// How the heater is wired inside.
    pub layout: Layout,
    /// One leg and the neutral feed it: `cable-n` in place of `cable-b`.
    pub hot_neutral: bool,
    /// A box stands in the line: `to-box-*` and `whip-*` in place of `cable-a` and `cable-b`.
    pub boxed: bool,
    /// Whether the second cable (`second-a`, `second-b`) exists.
    pub second_source: bool,
}

impl Wiring {
    /// As the factory and a careful installer left it.
    pub fn factory(layout: Layout, hot_neutral: bool) -> Self {
        let joints = crate::Wire::ALL
            .iter()
            .map(|wire| {
                wire.home().map(|screw| Joint {
                    on: Some(screw),
                    resistance: SOUND_JOINT,
                    rise: Kelvins(0.0),
                    torqued: true,
                    charred: false,
                    labelled: false,
                })
            })
            .collect();
        let lengths = crate::Wire::ALL.iter().map(|wire| wire.usual_length()).collect();
        let conductors = crate::Wire::ALL.iter().map(|wire| Conductor::usual(*wire)).collect();
        Self { joints, lengths, conductors, layout, hot_neutral, boxed: false, second_source: false }
    }

    /// The joint at a wire's end.
    pub fn joint(&self, end: End) -> &Joint {
        &self.joints[end.wire.index()][(end.side & 1) as usize]
    }

    /// How long a wire is.
    pub fn length(&self, wire: crate::Wire) -> Metres {
        self.lengths.get(wire.index()).copied().unwrap_or_default()
    }

    /// How long a wire is, to change it.
    pub fn length_mut(&mut self, wire: crate::Wire) -> &mut Metres {
        &mut self.lengths[wire.index()]
    }

    /// A wire's conductor.
    pub fn conductor(&self, wire: crate::Wire) -> &Conductor {
        &self.conductors[wire.index()]
    }

    /// A wire's conductor, to change it.
    pub fn conductor_mut(&mut self, wire: crate::Wire) -> &mut Conductor {
        &mut self.conductors[wire.index()]
    }

    /// Whether a wire is there at all.
    pub fn exists(&self, wire: crate::Wire) -> bool {
        use crate::Wire;
        match wire {
            Wire::CableA => !self.boxed,
            Wire::CableB => !self.boxed && !self.hot_neutral,
            Wire::CableN => self.hot_neutral,
            Wire::CableG => true,
            Wire::BoxA | Wire::WhipA => self.boxed,
            Wire::BoxB | Wire::WhipB => self.boxed && !self.hot_neutral,
            Wire::SecondA => self.second_source,
            Wire::SecondB => self.second_source && !self.hot_neutral,
            Wire::OffPeakA | Wire::OffPeakB => self.layout == Layout::OffPeak,
            _ => self.layout.has_lead(wire),
        }
    }

    /// Whether a screw is there at all.
    pub fn has_screw(&self, screw: Screw) -> bool {
        match screw {
            Screw::S1 => self.second_source || self.layout == Layout::OffPeak,
            Screw::S2 => (self.second_source || self.layout == Layout::OffPeak) && !self.hot_neutral,
            Screw::B2 => !self.hot_neutral,
            Screw::X1 | Screw::X3 => self.boxed,
            Screw::X2 | Screw::X4 => self.boxed && !self.hot_neutral,
            _ => self.layout.has_screw(screw),
        }
    }

    /// Whether a point is there at all.
    pub fn has(&self, point: crate::Point) -> bool {
        match point {
            crate::Point::Screw(screw) => self.has_screw(screw),
            crate::Point::End(end) => self.exists(end.wire),
        }
    }

    /// The wires that carry the heater's main circuit into its junction box.
    pub fn feeders(&self) -> [crate::Wire; 2] {
        use crate::Wire;
        match (self.boxed, self.hot_neutral) {
            (false, false) => [Wire::CableA, Wire::CableB],
            (false, true) => [Wire::CableA, Wire::CableN],
            (true, false) => [Wire::WhipA, Wire::WhipB],
            (true, true) => [Wire::WhipA, Wire::CableN],
        }
    }

    /// The joint at a wire's end, to change it.
    pub fn joint_mut(&mut self, end: End) -> &mut Joint {
        &mut self.joints[end.wire.index()][(end.side & 1) as usize]
    }
}
