//! The parts of the heater as they are now: elements, thermostats, limit, wire joints.

use quantity::{Kelvins, Metres, Ohms, Seconds, Temperature};
use serde::{Deserialize, Serialize};

use crate::heater::Rating;
use crate::named::named;
use crate::points::{End, Screw};

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

/// A current path from the coil to the sheath.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct SheathFault {
    /// Where along the coil, as a fraction of its resistance from the switched end (0 to 1).
    pub fraction: f64,
    /// Resistance of the path.
    pub resistance: Ohms,
}

/// A screw-in sheathed element.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Element {
    /// What its stamp says.
    pub stamp: Rating,
    /// Its true cold resistance over the nominal one: 0.95 to 1.10.
    pub tolerance: f64,
    /// The coil is broken.
    pub open: bool,
    /// A path from coil to sheath.
    pub leak: Option<SheathFault>,
    /// Sheath temperature while it stands in air; follows the water while wetted.
    pub sheath: Temperature,
    /// How long it has now been powered in air.
    pub in_air: Seconds,
    /// It once glowed in air: plating burnt off, blades sagged.
    pub scorched: bool,
    /// Its gasket.
    pub gasket: Gasket,
}

impl Element {
    /// A sound element of a rating, at room temperature.
    pub fn sound(stamp: Rating) -> Self {
        Self {
            stamp,
            tolerance: 1.0,
            open: false,
            leak: None,
            sheath: Temperature::celsius(20.0),
            in_air: Seconds(0.0),
            scorched: false,
            gasket: Gasket::sound(),
        }
    }

    /// Resistance from screw to screw of an unbroken coil.
    pub fn coil(&self) -> Ohms {
        self.stamp.resistance() * self.tolerance
    }
}

/// The flat gasket behind an element.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Gasket {
    /// Orifice of its leak as an equivalent diameter in metres; 0 when tight.
    pub leak_diameter: f64,
    /// Rust and old gasket left on its seat: a new gasket on it weeps again.
    pub seat_dirty: bool,
}

impl Gasket {
    /// Tight on a clean seat.
    pub const fn sound() -> Self {
        Self { leak_diameter: 0.0, seat_dirty: false }
    }
}

/// How a contact is.
#[derive(Clone, Copy, PartialEq, Debug, Default, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Contact {
    /// Makes and breaks, about 5 milliohms closed.
    #[default]
    Sound,
    /// Makes, with this much resistance.
    Worn(Ohms),
    /// Burnt away: never makes.
    Open,
}

/// A snap thermostat on the tank wall. The upper one changes over (U1 to U2 cold, U1 to U4 hot); the
/// lower one makes D1 to D2 while cold.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Thermostat {
    /// Where the dial stands.
    pub dial: Temperature,
    /// How far its true cut-out lies above the dial.
    pub offset: Kelvins,
    /// Cut-out minus cut-in.
    pub differential: Kelvins,
    /// Temperature of its bimetal.
    pub body: Temperature,
    /// The blade calls for heat (cold position).
    pub calling: bool,
    /// The blade cannot leave a position: `Some(true)` welded calling, `Some(false)` stuck satisfied.
    pub stuck: Option<bool>,
    /// Contact made while calling (U1-U2, or D1-D2).
    pub cold_contact: Contact,
    /// Contact made while satisfied (U1-U4); the lower thermostat has none.
    pub hot_contact: Contact,
    /// Pressed flat against the tank.
    pub seated: bool,
}

impl Thermostat {
    /// A sound one with its dial at a setting.
    pub fn sound(dial: Temperature, differential: Kelvins) -> Self {
        Self {
            dial,
            offset: Kelvins(0.0),
            differential,
            body: Temperature::celsius(20.0),
            calling: true,
            stuck: None,
            cold_contact: Contact::Sound,
            hot_contact: Contact::Sound,
            seated: true,
        }
    }

    /// Where the blade really is, welds considered.
    pub fn blade_calls(&self) -> bool {
        self.stuck.unwrap_or(self.calling)
    }
}

/// The double-pole, manual-reset, trip-free high limit beside the upper thermostat.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Limit {
    /// Trips at this body temperature.
    pub trip: Temperature,
    /// Latches again only below this body temperature.
    pub reset_below: Temperature,
    /// Temperature of its bimetal.
    pub body: Temperature,
    /// Tripped: both poles open.
    pub tripped: bool,
    /// Its two poles, H1-H2 and H3-H4.
    pub poles: [Contact; 2],
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
    /// Whether the second cable (`second-a`, `second-b`) exists.
    pub second_source: bool,
}

impl Wiring {
    /// As the factory and a careful installer left it.
    pub fn factory(second_source: bool) -> Self {
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
        Self { joints, lengths, second_source }
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

    /// Whether a wire is there at all.
    pub fn exists(&self, wire: crate::Wire) -> bool {
        self.second_source || !matches!(wire, crate::Wire::SecondA | crate::Wire::SecondB)
    }

    /// The joint at a wire's end, to change it.
    pub fn joint_mut(&mut self, end: End) -> &mut Joint {
        &mut self.joints[end.wire.index()][(end.side & 1) as usize]
    }
}

/// Resistance of a sound joint: 1 milliohm (model; well below the 5 milliohms of a sound contact).
pub const SOUND_JOINT: Ohms = Ohms(0.001);

/// Resistance left in a joint that has burnt off: an open gap with a trace of char (model).
pub const BURNT_OFF: Ohms = Ohms(1e9);
