//! Vessel, valves and fittings between the street and the hot line.

use quantity::{Constant, Kilograms, Pressure, Tag, Temperature, Volume};
use serde::{Deserialize, Serialize};

use super::{Anode, AnodeMetal};
use crate::named::named;

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
    /// The anode rod.
    pub anode: Anode,
    /// Steel that the lining leaves bare, m².
    pub bare: f64,
    /// Iron in the water.
    pub iron: Kilograms,
    /// Activity of sulphate-reducing bacteria in tank and pipes; 0 for none, 1 for many.
    pub bacteria: f64,
    /// Hydrogen sulphide in the water.
    pub sulphide: Kilograms,
}

quantity::constants! {
    /// Sediment that the drain shows.
    pub(crate) const SETTLED: Constant<Volume> =
        Constant::of("sediment that the drain shows", Volume::litres(0.5), Tag::CommonPractice);
    /// Bare steel of a sound shell.
    const FLAWS: Constant =
        Constant::new("flaws of a sound lining", 0.001, "m²", Tag::Model("some square centimetres at fittings and seams"));
    /// What is left of the rod in an ordinary house.
    const HALF_WORN: Constant =
        Constant::new("what is left of a sound house's anode", 0.7, "", Tag::Invented("a year and a half old"));
}

impl Vessel {
    /// A sound one, its rod a year and a half old.
    pub const fn sound() -> Self {
        Self {
            dip_tube: DipTube::Whole,
            shell_hole: 0.0,
            sediment: Volume(0.0),
            anode: Anode { metal: AnodeMetal::Magnesium, left: HALF_WORN.get() },
            bare: FLAWS.get(),
            iron: Kilograms(0.0),
            bacteria: 0.0,
            sulphide: Kilograms(0.0),
        }
    }
}

impl Vessel {
    /// The rod is worn, or it feeds bacteria that another metal would not.
    pub fn anode_needed(&self) -> bool {
        self.anode.is_worn() || self.feeds_bacteria()
    }

    /// Bacteria live on the rod's hydrogen.
    pub fn feeds_bacteria(&self) -> bool {
        self.bacteria > 0.0 && self.anode.metal == AnodeMetal::Magnesium
    }
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
    /// It stood lifted, by itself or by the lever, when time last passed.
    pub lifted: bool,
    /// Seat leak as an equivalent diameter in metres; 0 when it seals.
    pub weep: f64,
    /// Deposit around its probe that the next opening washes onto the seat, as the diameter of the leak it then
    /// leaves. One more flush carries it away.
    pub deposit: f64,
    /// What lies on the seat now, as the diameter of its leak.
    pub grit: f64,
    /// Seized or capped: nothing gets out.
    pub blocked: bool,
    /// There is none: its port stands open.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub missing: bool,
}

impl ReliefValve {
    /// A sound, shut one.
    pub const fn sound(opens_at: Pressure, opens_hot: Temperature) -> Self {
        Self {
            opens_at,
            opens_hot,
            open: false,
            lever: false,
            lifted: false,
            weep: 0.0,
            deposit: 0.0,
            grit: 0.0,
            blocked: false,
            missing: false,
        }
    }
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

/// A pressure regulator behind the meter.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Regulator {
    /// Pressure it holds with nothing flowing.
    pub set: Pressure,
    /// Leak of its seat as an equivalent diameter in metres: the house creeps up to the street's pressure while
    /// nothing is drawn; 0 when it shuts tight.
    pub creep: f64,
    /// Its seat is gone: it holds nothing back.
    pub stuck_open: bool,
    /// A bypass lets expanded water back to the street while the street is lower.
    pub bypass: bool,
}

impl Regulator {
    /// A sound one, without bypass.
    pub const fn sound(set: Pressure) -> Self {
        Self { set, creep: 0.0, stuck_open: false, bypass: false }
    }
}

/// The heat traps in the heater's two nipples.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct HeatTraps {
    /// They are there; without them hot water rises into the pipes by itself.
    pub fitted: bool,
    /// Free share of the inlet nipple's bore, 1 as made: less where a ball is stuck or the bore has scaled up.
    pub inlet_free: f64,
    /// The same at the outlet nipple.
    pub outlet_free: f64,
}

impl HeatTraps {
    /// As made.
    pub const SOUND: Self = Self { fitted: true, inlet_free: 1.0, outlet_free: 1.0 };
}

/// A thermostatic mixing valve at the heater's outlet, fed cold from behind the heater's cold valve.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct MixingValve {
    /// What it is set to deliver.
    pub set: Temperature,
    /// Seized with this share of its opening on the hot side.
    pub seized: Option<f64>,
}

/// A loop that brings hot water from the far end of the hot line back to the heater's cold pipe.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Recirculation {
    /// The pump runs.
    pub pump: bool,
    /// Its check valve closes; if not, warm water rises through it with the pump off, and cold water goes up the
    /// return while somebody draws.
    pub check: bool,
    /// Opening of the valve in the return, 0 to 1.
    pub valve: f64,
}
