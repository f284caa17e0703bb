//! A box in the line between breaker and heater: a fused switch, a timer's contacts, a utility's relay.

use serde::{Deserialize, Serialize};

use crate::Plant;
use crate::named::named;
use crate::parts::Contact;

named! {
    /// What stands in the line.
    BoxKind {
        /// A switch with two blades and two fuses; its handle can be locked off.
        FusedSwitch = "fused-switch",
        /// Contacts of a time switch: a control, never an isolation.
        Timer = "timer",
        /// Contacts of the utility's load control: a control, never an isolation.
        UtilityRelay = "utility-relay",
    }
}

/// The box and its contacts, X1 to X3 and X2 to X4.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct InLineBox {
    /// What it is.
    pub kind: BoxKind,
    /// Handle or contacts closed.
    pub closed: bool,
    /// Blades or contacts, one to a leg.
    pub poles: [Contact; 2],
    /// Links of its fuses, in series with the blades; always whole where it has none.
    pub fuses: [Contact; 2],
    /// Somebody's lock holds it open.
    pub locked: bool,
    /// A tag hangs on it.
    pub tagged: bool,
}

impl InLineBox {
    /// A sound one, closed.
    pub const fn sound(kind: BoxKind) -> Self {
        Self {
            kind,
            closed: true,
            poles: [Contact::Sound; 2],
            fuses: [Contact::Sound; 2],
            locked: false,
            tagged: false,
        }
    }

    /// Whether it isolates what lies behind it: an open switch under lock and tag (trade sheet 6.8: control devices
    /// are never isolation, published).
    pub fn isolates(&self) -> bool {
        self.kind == BoxKind::FusedSwitch && !self.closed && self.locked && self.tagged
    }
}

impl Plant {
    /// Puts a box in the line: the branch cable ends in it and a whip goes on to the heater.
    pub fn put_in_line(&mut self, fitted: InLineBox) {
        self.wiring.boxed = true;
        self.in_line = Some(fitted);
    }
}
