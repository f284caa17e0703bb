//! Water, heat and pressure, and the one door through which time passes: [`Plant::advance`].

use quantity::{Flow, Seconds, Temperature};

use crate::{Happening, Level, Plant, Tap};

impl Plant {
    /// Lets time pass: currents, heat, switching, water, pressure. Returns what happened, each with its
    /// moment counted from the start of this call.
    pub fn advance(&mut self, time: Seconds) -> Vec<(Seconds, Happening)> {
        self.clock += time;
        Vec::new()
    }

    /// Flow from a hot tap as it stands now.
    pub fn tap_flow(&self, tap: Tap) -> Flow {
        let _ = tap;
        Flow(0.0)
    }

    /// Flow from the drain as it stands now.
    pub fn drain_flow(&self) -> Flow {
        Flow(0.0)
    }

    /// Temperature of the water that leaves at the top.
    pub fn outlet(&self) -> Temperature {
        self.room
    }

    /// Temperature of the tank's wall beside a control.
    pub fn wall(&self, level: Level) -> Temperature {
        let _ = level;
        self.room
    }

    /// How full the tank is, 0 to 1.
    pub fn fill(&self) -> f64 {
        1.0
    }
}
