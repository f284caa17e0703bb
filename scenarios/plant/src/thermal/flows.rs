//! The flows of one moment, read from the network's solution.

use quantity::{Constant, Tag};
use solver::hydraulic::Solution;

use crate::waterworks::TAPS;

quantity::constants! {
    /// A flow that counts as rest for the layers.
    const SEEP: Constant =
        Constant::new("flow that counts as seepage", 1e-5, "m3/s", Tag::Model("0.16 gpm: fronts creep"));
}

/// Where each pipe stands in the network; nothing where it is shut.
#[derive(Clone, Copy, Default, Debug)]
pub(super) struct Branches {
    pub supply: Option<u32>,
    pub creep: Option<u32>,
    pub heater: Option<u32>,
    pub fill: Option<u32>,
    pub nipple: Option<u32>,
    pub mixer: Option<u32>,
    pub open: Option<u32>,
    pub circuit: Option<u32>,
    pub hot: [Option<u32>; TAPS],
    pub cold: [Option<u32>; TAPS],
    pub cross: [Option<u32>; TAPS],
    pub hidden: Option<u32>,
    pub drain: Option<u32>,
    pub drip: Option<u32>,
    pub relief: Option<u32>,
    pub weep: Option<u32>,
    pub union: Option<u32>,
    pub gaskets: [Option<u32>; 2],
    pub hole: Option<u32>,
}

/// Pressure at the top of the tank, Pa gauge, and the flows.
#[derive(Clone, Copy, Debug)]
pub(super) struct Moment {
    pub pressure: f64,
    pub flows: Flows,
}

/// Flows at one moment, m³/s. Those of the piping may run backwards.
#[derive(Clone, Copy, Default, Debug, PartialEq)]
pub(super) struct Flows {
    /// From the street into the house.
    pub supply: f64,
    /// From the house through the heater's cold valve.
    pub heater: f64,
    /// From the tank into the hot line.
    pub nipple: f64,
    /// From the cold pipe into the mixing valve.
    pub mixer: f64,
    /// Out of the cold pipe where it is off its nipple.
    pub open: f64,
    /// Round the loop: from the hot line into the cold pipe.
    pub circuit: f64,
    /// Hot side of each tap.
    pub hot: [f64; TAPS],
    /// Cold side of each tap.
    pub cold: [f64; TAPS],
    /// From the house's cold to its hot line, through fixtures.
    pub cross: f64,
    /// Out of the hot line behind the wall.
    pub hidden: f64,
    pub drain: f64,
    pub drip: f64,
    /// Relief valve, lifted or weeping.
    pub relief: f64,
    /// A union or nipple on top, or an opening there.
    pub union: f64,
    pub gaskets: [f64; 2],
    pub hole: f64,
}

impl Flows {
    pub fn read(on: &Branches, solution: &Solution) -> Self {
        let at = |branch: Option<u32>| branch.map_or(0.0, |b| solution.flow(b));
        let out = |branch: Option<u32>| at(branch).max(0.0);
        Self {
            supply: at(on.supply) + at(on.creep),
            heater: at(on.heater),
            nipple: at(on.nipple),
            mixer: out(on.mixer),
            open: out(on.open),
            circuit: at(on.circuit),
            hot: on.hot.map(out),
            cold: on.cold.map(out),
            cross: on.cross.iter().map(|b| at(*b)).sum(),
            hidden: out(on.hidden),
            drain: out(on.drain),
            drip: out(on.drip),
            relief: out(on.relief) + out(on.weep),
            union: out(on.union),
            gaskets: on.gaskets.map(out),
            hole: out(on.hole),
        }
    }

    /// From the tank into the hot line, and the other way.
    pub fn drawn_off(&self) -> f64 {
        self.nipple.max(0.0)
    }

    /// From the hot line into the top of the tank.
    pub fn pushed_back(&self) -> f64 {
        (-self.nipple).max(0.0)
    }

    /// Out at the top of the water but for the hot line.
    pub fn vents(&self) -> f64 {
        self.relief + self.union + self.gaskets[0]
    }

    /// Out at the bottom of the water.
    pub fn bottom(&self) -> f64 {
        self.drain + self.drip + self.gaskets[1] + self.hole
    }

    /// Out of the tank by whatever way.
    pub fn out(&self) -> f64 {
        self.drawn_off() + self.vents() + self.bottom()
    }

    /// Into the tank through its inlet nipple: what the cold pipe does not give to others.
    pub fn fill(&self) -> f64 {
        self.heater + self.circuit - self.mixer
    }

    /// Into the tank by whatever way; negative where water is pushed back.
    pub fn inflow(&self) -> f64 {
        self.fill() + self.pushed_back()
    }
}

/// How what leaves the tank is handed to its layers: draws and drains as such, seepage by ports, which cost no
/// short steps.
#[derive(Clone, Copy, Debug)]
pub(super) struct WaysOut {
    /// Into the hot line, as a draw.
    pub draw: f64,
    /// Into the hot line, as seepage.
    pub line: f64,
    /// Out at the bottom, through the drain.
    pub drain: f64,
    /// Out at the bottom, as seepage.
    pub bottom: f64,
}

impl WaysOut {
    pub fn of(flows: &Flows) -> Self {
        let split = |flow: f64| if flow > SEEP.get() { (flow, 0.0) } else { (0.0, flow) };
        let ((draw, line), (drain, bottom)) = (split(flows.drawn_off()), split(flows.bottom()));
        Self { draw, line, drain, bottom }
    }
}
