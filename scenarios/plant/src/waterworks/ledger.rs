//! The books of water and heat.

use quantity::{Joules, Kilograms};
use serde::{Deserialize, Serialize};

use super::TAPS;

/// Water with the heat it holds above liquid at 0 °C.
#[derive(Clone, Copy, PartialEq, Debug, Default, Serialize, Deserialize)]
pub struct Store {
    /// Mass.
    pub mass: Kilograms,
    /// Enthalpy.
    pub heat: Joules,
}

impl Store {
    /// So much water with so much heat.
    pub(crate) const fn of(mass: f64, heat: f64) -> Self {
        Self { mass: Kilograms(mass), heat: Joules(heat) }
    }

    /// Both together.
    pub(crate) fn and(self, other: Self) -> Self {
        Self::of(self.mass.get() + other.mass.get(), self.heat.get() + other.heat.get())
    }

    /// Adds what another held.
    pub(crate) fn take(&mut self, other: Self) {
        self.add(other.mass.get(), other.heat.get());
    }

    /// Gives away what another now holds.
    pub(crate) fn give(&mut self, other: Self) {
        self.add(-other.mass.get(), -other.heat.get());
    }

    /// Adds water, or takes it away when `mass` is negative.
    pub(crate) fn add(&mut self, mass: f64, heat: f64) {
        self.mass.0 += mass;
        self.heat.0 += heat;
    }
}

/// Books of water and heat. What came in, less what went out, is what the tank and its pipe hold more.
#[derive(Clone, Copy, PartialEq, Debug, Default, Serialize, Deserialize)]
pub struct Ledger {
    /// Heat the elements gave, in water or in air.
    pub electric: Joules,
    /// The part of it that met no water.
    pub dry: Joules,
    /// Heat lost through the insulation.
    pub lost: Joules,
    /// Water from the main.
    pub main: Store,
    /// Water pushed back into the main.
    pub back: Store,
    /// Heat that pipes lost to the room, less what they took up from it.
    pub pipes: Joules,
    /// Water drawn, hot and cold together, by `Tap::ALL`.
    pub taps: [Store; TAPS],
    /// From the hot line behind the wall or under the slab.
    pub hidden: Store,
    /// From the drain valve.
    pub drain: Store,
    /// From the relief valve.
    pub relief: Store,
    /// From gaskets, nipples and through the shell: what the floor gets without the drain.
    pub leaks: Store,
    /// Put in (or taken out, negative) with a part that was changed.
    pub parts: Store,
}

impl Ledger {
    /// Water that came in less water that went out.
    pub fn net_mass(&self) -> Kilograms {
        let out = self.taps.iter().map(|t| t.mass.0).sum::<f64>()
            + self.hidden.mass.0
            + self.drain.mass.0
            + self.relief.mass.0
            + self.leaks.mass.0
            + self.back.mass.0;
        Kilograms(self.main.mass.0 + self.parts.mass.0 - out)
    }

    /// Heat that came in less heat that went out.
    pub fn net_heat(&self) -> Joules {
        let out = self.taps.iter().map(|t| t.heat.0).sum::<f64>()
            + self.hidden.heat.0
            + self.drain.heat.0
            + self.relief.heat.0
            + self.leaks.heat.0
            + self.back.heat.0
            + self.pipes.0
            + self.lost.0;
        Joules(self.main.heat.0 + self.parts.heat.0 + self.electric.0 - self.dry.0 - out)
    }
}
