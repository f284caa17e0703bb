//! Thermostats and limit as they are now, with their contacts.

use quantity::{Constant, Kelvins, Ohms, Tag, Temperature};
use serde::{Deserialize, Serialize};

use super::Fickle;
use crate::named::named;

quantity::constants! {
    /// A part from the van.
    const NEW: Constant<Temperature> =
        Constant::of("a new control", Temperature::celsius(20.0), Tag::Model("room temperature"));
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

named! {
    /// The contacts of the heater's controls, by the screws they join.
    ContactAt {
        /// Upper thermostat, made while the top is cold.
        UpperCold = "U1-U2",
        /// Upper thermostat, made once the top is hot.
        UpperHot = "U1-U4",
        /// Lower thermostat.
        LowerCold = "D1-D2",
        /// Limit, pole of leg 1.
        LimitOne = "H1-H2",
        /// Limit, pole of leg 2.
        LimitTwo = "H3-H4",
    }
}

impl ContactAt {
    /// Its place in every table by contact.
    pub const fn index(self) -> usize {
        self as usize
    }
}

/// What its own heat has made of a contact.
#[derive(Clone, Copy, PartialEq, Debug, Default, Serialize, Deserialize)]
pub struct Spot {
    /// How far its own heat has brought it above the body of its control.
    pub rise: Kelvins,
    /// Browned or sooty: visible with the cover off.
    pub charred: bool,
    /// How often it has made.
    pub makes: u32,
}

/// A snap thermostat on the tank wall. The upper one changes over (U1 to U2 cold, U1 to U4 hot); the
/// lower one makes D1 to D2 while cold.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Thermostat {
    /// Where the dial stands.
    pub dial: Temperature,
    /// How far its true cut-out lies above the dial.
    pub offset: Kelvins,
    /// How much further each full cycle moves it: calibration drift.
    pub drift: Kelvins,
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
    /// The contact made while calling has a film on it, and makes only at times.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fickle: Option<Fickle>,
    /// What heat has made of the contact made while calling.
    pub cold_spot: Spot,
    /// What heat has made of the contact made while satisfied.
    pub hot_spot: Spot,
    /// Pressed flat against the tank.
    pub seated: bool,
    /// How flat, where it is seated at all: 1 all of its plate, 0 none of it.
    pub grip: f64,
}

impl Thermostat {
    /// A sound one with its dial at a setting.
    pub fn sound(dial: Temperature, differential: Kelvins) -> Self {
        Self {
            dial,
            offset: Kelvins(0.0),
            drift: Kelvins(0.0),
            differential,
            body: NEW.get(),
            calling: true,
            stuck: None,
            cold_contact: Contact::Sound,
            hot_contact: Contact::Sound,
            fickle: None,
            cold_spot: Spot::default(),
            hot_spot: Spot::default(),
            seated: true,
            grip: 1.0,
        }
    }

    /// Where the blade really is, welds considered.
    pub fn blade_calls(&self) -> bool {
        self.stuck.unwrap_or(self.calling)
    }

    /// It stands closed, and its contact does not make.
    pub fn misses(&self) -> bool {
        self.fickle.is_some_and(|contact| contact.misses)
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
    /// What heat has made of them.
    pub spots: [Spot; 2],
    /// A pole whose contact has welded and stays made when the limit trips.
    pub welded: [bool; 2],
    /// Pressed flat against the tank.
    pub seated: bool,
    /// How flat, where it is seated at all: 1 all of its plate, 0 none of it.
    pub grip: f64,
}

impl Limit {
    /// Whether a pole stands closed.
    pub fn closed(&self, pole: usize) -> bool {
        !self.tripped || self.welded.get(pole).copied().unwrap_or(false)
    }
}
