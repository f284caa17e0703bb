//! The noise of a hot pipe that slips in its straps.

use quantity::{Constant, Tag};

use crate::Plant;

quantity::constants! {
    /// Growth of copper pipe.
    const COPPER: Constant = Constant::new(
        "thermal expansion of copper",
        16.5e-6,
        "1/K",
        Tag::Memory("engineering tables: copper, 20 to 100 °C"),
    );
    /// Growth that makes a strapped pipe slip.
    const SLIPS: Constant = Constant::new(
        "growth at which a strapped pipe slips",
        0.5e-3,
        "m",
        Tag::Model("half a millimetre: what the strap gives before it lets go"),
    );
}

impl Plant {
    /// A hot pipe held tight would slip in its straps as it warms to what the tank gives.
    pub fn would_tick(&self) -> bool {
        let rise = self.outlet().above(self.room).get();
        COPPER.get() * self.plumbing.tight.get() * rise > SLIPS.get()
    }

    /// It ticks now: hot water runs through it.
    pub fn ticks(&self) -> bool {
        self.would_tick() && self.moment().flows.hot.iter().any(|flow| *flow > 0.0)
    }
}
