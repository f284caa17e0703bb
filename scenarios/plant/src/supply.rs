//! The service and the load center.

use quantity::{Amps, Ohms, Volts};
use serde::{Deserialize, Serialize};

use crate::named::named;
use crate::parts::Contact;

named! {
    /// How the building is fed.
    ServiceKind {
        /// 120/240 V, one transformer winding with its middle grounded.
        Split240 = "split-240",
        /// Two legs of a 208Y/120 V wye.
        Wye208 = "wye-208",
    }
}

/// The utility's side.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Service {
    /// How the legs stand to each other.
    pub kind: ServiceKind,
    /// Each leg to neutral, unloaded.
    pub leg: Volts,
    /// Impedance of each leg up to the bus, taken as resistive.
    pub impedance: Ohms,
}

named! {
    /// The handle of a breaker.
    Handle {
        /// On.
        On = "on",
        /// Off.
        Off = "off",
        /// In the middle, after a trip; must go to off before on.
        Tripped = "tripped",
    }
}

named! {
    /// What a two-pole breaker of the load center feeds.
    Circuit {
        /// The heater, by `cable-a` and `cable-b`.
        Heater = "heater",
        /// The heater again, by the second cable.
        SecondSource = "second-source",
        /// The range.
        Range = "range",
        /// The dryer.
        Dryer = "dryer",
    }
}

/// A two-pole breaker in the load center.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Breaker {
    /// What it feeds in truth.
    pub feeds: Circuit,
    /// What the directory says it feeds.
    pub label: Circuit,
    /// Its rating.
    pub rating: Amps,
    /// Its handle.
    pub handle: Handle,
    /// Its two poles.
    pub poles: [Contact; 2],
    /// Heat stored in each pole's bimetal, as a fraction of what trips it (0 to 1).
    pub heat: [f64; 2],
    /// Somebody's lock holds it off.
    pub locked: bool,
    /// A tag hangs on it.
    pub tagged: bool,
}

/// The load center: its breakers in the order of their spaces.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Panel {
    /// Two-pole breakers; the slot of an action is an index here.
    pub breakers: Vec<Breaker>,
}

impl Panel {
    /// The slot of the first breaker that truly feeds a circuit.
    pub fn slot_of(&self, circuit: Circuit) -> Option<usize> {
        self.breakers.iter().position(|b| b.feeds == circuit)
    }

    /// The breaker that truly feeds a circuit.
    pub fn feeding(&self, circuit: Circuit) -> Option<&Breaker> {
        self.breakers.iter().find(|b| b.feeds == circuit)
    }
}
