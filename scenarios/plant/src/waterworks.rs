//! The water side: vessel, valves, taps, relief and expansion.

use quantity::{Pressure, Temperature, Volume};
use serde::{Deserialize, Serialize};

use crate::named::named;

named! {
    /// Hot taps of the house, lowest first.
    Tap {
        /// Laundry tub, in the basement.
        Laundry = "laundry",
        /// Kitchen sink, nearest the heater.
        Kitchen = "kitchen",
        /// Bathtub.
        Bath = "bath",
        /// Shower, highest.
        Shower = "shower",
    }
}

named! {
    /// The tube that carries cold water down inside the tank.
    DipTube {
        /// Whole: ends near the bottom.
        Whole = "whole",
        /// Broken off near the top.
        Broken = "broken",
        /// Not there.
        Missing = "missing",
    }
}

/// The vessel itself, beyond its layers of water.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Vessel {
    /// The dip tube.
    pub dip_tube: DipTube,
    /// Orifice of a hole rusted through the shell near the bottom, equivalent diameter in metres; 0 when sound.
    pub shell_hole: f64,
    /// Sediment over the bottom, as a volume of lost water space.
    pub sediment: Volume,
}

/// Temperature and pressure relief valve.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct ReliefValve {
    /// Opens at this pressure.
    pub opens_at: Pressure,
    /// Opens at this water temperature near the top.
    pub opens_hot: Temperature,
    /// Now open by itself.
    pub open: bool,
    /// The lever is held up.
    pub lever: bool,
    /// Seat leak as an equivalent diameter in metres; 0 when it seals.
    pub weep: f64,
}

/// An expansion tank on the cold pipe.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct ExpansionTank {
    /// Its whole volume.
    pub volume: Volume,
    /// Air charge with the water side empty.
    pub charge: Pressure,
    /// The bladder is burst and the air is gone.
    pub waterlogged: bool,
}

/// Valves, taps and pressures.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Plumbing {
    /// Static pressure of the street main or of the regulator behind it.
    pub main: Pressure,
    /// A check valve or regulator keeps expanded water from flowing back to the street.
    pub closed: bool,
    /// Inlet temperature on the day of the call.
    pub inlet: Temperature,
    /// Opening of the heater's cold valve, 0 to 1.
    pub cold_valve: f64,
    /// Opening of each hot tap by `Tap::ALL`, 0 to 1.
    pub taps: [f64; 4],
    /// Opening of the drain valve, 0 to 1.
    pub drain_valve: f64,
    /// A hose leads from the drain to a safe place.
    pub hose: bool,
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
}
