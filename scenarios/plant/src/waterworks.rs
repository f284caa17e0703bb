//! The water side: vessel, valves, taps, relief and expansion.

use quantity::{Flow, Joules, Kilograms, Metres, Pressure, Temperature, Volume};
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

impl Tap {
    /// Its place in every table by tap.
    pub const fn index(self) -> usize {
        self as usize
    }

    /// Flow of hot water with the tap fully open, at 60 psi before it. A faucet gives 2.2 gpm (federal limit
    /// for faucets, from memory); tub, laundry and an older shower as is common practice, no source.
    pub const fn nominal(self) -> Flow {
        Flow::gpm(match self {
            Self::Laundry => 4.0,
            Self::Kitchen => 2.2,
            Self::Bath => 5.0,
            Self::Shower => 2.5,
        })
    }

    /// Height of its spout above the bottom of the tank, heater in the basement (invented house).
    pub const fn height(self) -> Metres {
        Metres(match self {
            Self::Laundry => 1.3,
            Self::Kitchen => 3.6,
            Self::Bath => 6.0,
            Self::Shower => 7.4,
        })
    }

    /// Volume of the hot line from the heater to the tap (invented house; half-inch pipe, about 0.15 L/m).
    pub const fn line(self) -> Volume {
        Volume::litres(match self {
            Self::Laundry => 0.6,
            Self::Kitchen => 1.0,
            Self::Bath => 1.8,
            Self::Shower => 2.0,
        })
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
    /// Air shut in at the top of the tank, as absolute pressure times volume.
    pub air: Joules,
    /// Air in each hot line, by `Tap::ALL`: makes the tap spit until it is carried out.
    pub line_air: [Volume; 4],
    /// Water between the cold valve and the tank: in the pipe, in the stretch of pipe and shell, and in the
    /// expansion tank.
    pub cold_side: Store,
    /// Sums since this plant was made.
    pub ledger: Ledger,
}

/// Water with the heat it holds above liquid at 0 °C.
#[derive(Clone, Copy, PartialEq, Debug, Default, Serialize, Deserialize)]
pub struct Store {
    /// Mass.
    pub mass: Kilograms,
    /// Enthalpy.
    pub heat: Joules,
}

impl Store {
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
    /// Hot water drawn, by `Tap::ALL`.
    pub taps: [Store; 4],
    /// From the drain valve.
    pub drain: Store,
    /// From the relief valve.
    pub relief: Store,
    /// From gaskets and through the shell.
    pub leaks: Store,
    /// Put in (or taken out, negative) with a part that was changed.
    pub parts: Store,
}

impl Ledger {
    /// Water that came in less water that went out.
    pub fn net_mass(&self) -> Kilograms {
        let out = self.taps.iter().map(|t| t.mass.0).sum::<f64>()
            + self.drain.mass.0
            + self.relief.mass.0
            + self.leaks.mass.0
            + self.back.mass.0;
        Kilograms(self.main.mass.0 + self.parts.mass.0 - out)
    }

    /// Heat that came in less heat that went out.
    pub fn net_heat(&self) -> Joules {
        let out = self.taps.iter().map(|t| t.heat.0).sum::<f64>()
            + self.drain.heat.0
            + self.relief.heat.0
            + self.leaks.heat.0
            + self.back.heat.0
            + self.lost.0;
        Joules(self.main.heat.0 + self.parts.heat.0 + self.electric.0 - self.dry.0 - out)
    }
}
