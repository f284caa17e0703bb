//! The water side: vessel, valves, taps, relief and expansion.

mod anode;
mod ledger;
mod stand;
mod tap;
mod valves;

use quantity::{Joules, Metres, Pressure, Temperature, Volume};
use serde::{Deserialize, Serialize};

pub use anode::{Anode, AnodeMetal};
pub use ledger::{Ledger, Store};
pub use stand::Stand;
pub use tap::{Fixture, TAPS, Tap};
pub(crate) use valves::SETTLED;
pub use valves::{
    DipTube, ExpansionTank, HeatTraps, MixingValve, Recirculation, Regulator, ReliefValve, Vessel,
};

/// Tagged constants of these modules.
pub(crate) const SOURCES: &[&[quantity::Listed]] = &[anode::CONSTANTS, tap::CONSTANTS, valves::CONSTANTS];

fn full() -> f64 {
    1.0
}

/// Valves, taps and pressures.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Plumbing {
    /// Static pressure of the street main.
    pub main: Pressure,
    /// Opening of the house's main valve at the meter, 0 to 1.
    #[serde(default = "full")]
    pub main_valve: f64,
    /// A pressure regulator behind the meter.
    pub regulator: Option<Regulator>,
    /// A check valve or backflow preventer keeps expanded water from flowing back to the street.
    pub closed: bool,
    /// Inlet temperature on the day of the call.
    pub inlet: Temperature,
    /// Opening of the heater's cold valve, 0 to 1.
    pub cold_valve: f64,
    /// Ice stops the pipe between the valve and the tank.
    pub frozen: bool,
    /// The nipples' heat traps.
    pub traps: HeatTraps,
    /// Cold pipe on the outlet nipple, hot pipe on the dip tube.
    pub reversed: bool,
    /// Mixing valve at the heater.
    pub mixing: Option<MixingValve>,
    /// Recirculation loop.
    pub recirculation: Option<Recirculation>,
    /// Length of hot pipe held tight in its straps: it ticks as it grows and shrinks.
    pub tight: Metres,
    /// Opening of each tap's hot side by `Tap::ALL`, 0 to 1.
    pub taps: [f64; TAPS],
    /// Opening of each tap's cold side.
    pub cold_taps: [f64; TAPS],
    /// What is particular about each.
    pub fixtures: [Fixture; TAPS],
    /// Opening of the drain valve, 0 to 1.
    pub drain_valve: f64,
    /// The tank has run out over the drain's lip, and no water to speak of has come in since.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub run_out: bool,
    /// A hose leads from the drain to a safe place.
    pub hose: bool,
    /// Grit lodged in the drain valve: share of its bore that it fills, 0 to 1. A burst of cold water under
    /// pressure carries it out.
    pub drain_grit: f64,
    /// Leak of the drain valve's seat, equivalent diameter in metres; a cap stops it.
    pub drain_drip: f64,
    /// Leak at a nipple, union or dielectric on top, equivalent diameter in metres.
    pub nipple_leak: f64,
    /// Leak of the hot line behind a wall or under the slab, equivalent diameter in metres. Its water is not seen.
    pub hot_leak: f64,
    /// Relief valve.
    pub relief: ReliefValve,
    /// Expansion tank, where there is one.
    pub expansion: Option<ExpansionTank>,
    /// Pressure at the tank now.
    pub pressure: Pressure,
    /// Highest pressure since the lazy hand was set down.
    pub peak: Pressure,
    /// Water on the floor since the call began.
    pub on_floor: Volume,
    /// Air shut in at the top of the tank, as absolute pressure times volume.
    pub air: Joules,
    /// Air in each hot line, by `Tap::ALL`: makes the tap spit until it is carried out.
    pub line_air: [Volume; TAPS],
    /// Hydrogen that the anode has set free since hot water last ran, at room pressure.
    pub hydrogen: Volume,
    /// Dew point of the air around the heater.
    pub dew_point: Temperature,
    /// Water between the cold valve and the tank: in the pipe, in the stretch of pipe and shell, and in the
    /// expansion tank.
    pub cold_side: Store,
    /// Sums since this plant was made.
    pub ledger: Ledger,
    /// How far the heater is in its place.
    #[serde(default)]
    pub stand: Stand,
}

impl Plumbing {
    /// Pressure in the house with nothing flowing and nothing wrong with the regulator.
    pub fn static_pressure(&self) -> Pressure {
        match self.regulator {
            Some(regulator) if !regulator.stuck_open && regulator.set < self.main => regulator.set,
            _ => self.main,
        }
    }

    /// The tank stands open at its top: pipes off, or no relief valve in its port.
    pub const fn is_open_on_top(&self) -> bool {
        self.relief.missing || !self.stand.is_piped()
    }

    /// The street's water gets to the heater: the main valve and the heater's own both stand open.
    pub fn is_fed(&self) -> bool {
        self.main_valve > 0.0 && self.cold_valve > 0.0
    }

    /// Water runs from the open end of the cold pipe.
    pub fn runs_open(&self) -> bool {
        self.is_fed() && !self.stand.is_piped()
    }

    /// Expanded water cannot go back to the street.
    pub fn is_closed(&self) -> bool {
        self.closed || self.regulator.is_some_and(|r| !r.bypass && !r.stuck_open)
    }

    /// A fixture's stops are shut.
    pub fn is_shut(&self, at: usize) -> bool {
        self.fixtures.get(at).is_some_and(|fixture| fixture.shut)
    }

    /// Opening of a tap's hot side, its stop considered.
    pub fn hot_opening(&self, at: usize) -> f64 {
        if self.is_shut(at) { 0.0 } else { self.taps.get(at).copied().unwrap_or_default() }
    }

    /// Opening between the cold and the hot side of a fixture, its stops considered.
    pub fn crossover(&self, at: usize) -> f64 {
        if self.is_shut(at) { 0.0 } else { self.fixtures.get(at).map_or(0.0, |fixture| fixture.crossover) }
    }

    /// Opening of a tap's cold side, its limit stop considered.
    pub fn cold_opening(&self, tap: Tap) -> f64 {
        let at = |side: &[f64; TAPS]| side.get(tap.index()).copied().unwrap_or_default();
        if self.is_shut(tap.index()) {
            return 0.0;
        }
        let stop = self.fixtures.get(tap.index()).map_or(0.0, |f| f.limit_stop);
        at(&self.cold_taps).max(at(&self.taps) * stop)
    }
}
