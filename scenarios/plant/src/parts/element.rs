//! A sheathed element as it is now: its stamp, its coil, what lies on it and what is in it.

use quantity::{Constant, Metres, Ohms, Seconds, Tag, Temperature};
use serde::{Deserialize, Serialize};

use super::{ElementLength, Parting};
use crate::heater::Rating;
use crate::named::named;

quantity::constants! {
    /// Resistance of a cold coil over that of a working one.
    pub const COLD_SHARE: Constant = Constant::new(
        "cold resistance of a coil, of its working resistance",
        0.98,
        "",
        Tag::Published("a sheathed-element maker's test page: hot/cold correction 0.98"),
    );
    /// A part from the van.
    const NEW: Constant<Temperature> =
        Constant::of("a new part", Temperature::celsius(20.0), Tag::Model("room temperature"));
    /// Surface loads by type, in the order of [`Density::ALL`].
    const SURFACE_LOADS: Constant<[f64; Density::ALL.len()]> = Constant::new(
        "surface loads: high, low, ultra-low density",
        [232_500.0, 120_100.0, 77_500.0],
        "W/m²",
        Tag::Memory("element makers' data: 150, 75-80 (here 77.5) and 50 W/in²"),
    );
    /// How well usual scale conducts.
    const SCALE_CONDUCTIVITY: Constant = Constant::new(
        "thermal conductivity of scale",
        1.0,
        "W/(m·K)",
        Tag::Memory("0.6 to 2.3 W/(m·K) for calcium carbonate deposits, boiler-scale tables"),
    );
}

named! {
    /// How much power each area of an element's sheath gives off.
    Density {
        /// Short element, copper sheath.
        High = "high",
        /// Folded back: about half.
        Low = "low",
        /// Folded back twice, nickel alloy: a third; stands scale and dry firing.
        UltraLow = "ultra-low",
    }
}

impl Density {
    /// Power of each area at the rated power, W/m².
    pub fn surface_load(self) -> f64 {
        SURFACE_LOADS.get().get(self as usize).copied().unwrap_or(SURFACE_LOADS.get()[0])
    }
}

/// What the water has left on a sheath.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Scale {
    /// Its thickness.
    pub thickness: Metres,
    /// How well it conducts heat, W/(m·K).
    pub conductivity: f64,
}

impl Scale {
    /// A layer of usual scale.
    pub const fn of(thickness: Metres) -> Self {
        Self { thickness, conductivity: SCALE_CONDUCTIVITY.get() }
    }
}

/// A current path from the coil to the sheath.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct SheathFault {
    /// Where along the coil, as a fraction of its resistance from the switched end (0 to 1).
    pub fraction: f64,
    /// Resistance of the path.
    pub resistance: Ohms,
}

/// A sheathed element.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Element {
    /// What its stamp says.
    pub stamp: Rating,
    /// How densely its sheath is loaded where it is of middle length.
    pub density: Density,
    /// Which of the lengths of its watts.
    pub length: ElementLength,
    /// Its true working resistance over the nominal one: 0.95 to 1.10.
    pub tolerance: f64,
    /// The coil is broken.
    pub open: bool,
    /// The coil is broken where its ends touch while they are cool.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub parting: Option<Parting>,
    /// A path from coil to sheath.
    pub leak: Option<SheathFault>,
    /// That path leads through a crack which only water makes conduct.
    pub leak_needs_water: bool,
    /// What the sheath is left with if it fires dry: a path from the coil, or nothing but an open coil.
    pub splits: Option<SheathFault>,
    /// What the water has left on it.
    pub scale: Scale,
    /// Moisture in its insulation: 0 dry, 1 as damp as it gets.
    pub damp: f64,
    /// How far its end seals let moisture in: 0 tight, 1 not at all.
    pub breathes: f64,
    /// Share of its life that is used up; at 1 the coil breaks.
    pub life: f64,
    /// Temperature of its sheath.
    pub sheath: Temperature,
    /// How long it has now been powered in air.
    pub in_air: Seconds,
    /// It once glowed in air: plating burnt off, blades sagged.
    pub scorched: bool,
    /// Its gasket.
    pub gasket: Gasket,
}

impl Element {
    /// A sound element of a rating and of middle length, at room temperature.
    pub fn sound(stamp: Rating) -> Self {
        Self {
            stamp,
            density: Density::High,
            length: ElementLength::Middle,
            tolerance: 1.0,
            open: false,
            parting: None,
            leak: None,
            leak_needs_water: false,
            splits: None,
            scale: Scale::of(Metres(0.0)),
            damp: 0.0,
            breathes: 0.0,
            life: 0.0,
            sheath: NEW.get(),
            in_air: Seconds(0.0),
            scorched: false,
            gasket: Gasket::sound(),
        }
    }

    /// No current finds a way through the coil now.
    pub fn is_broken(&self) -> bool {
        self.open || self.parting.is_some_and(|coil| coil.apart)
    }

    /// Resistance from screw to screw of an unbroken coil at work: what the stamp speaks of.
    pub fn coil(&self) -> Ohms {
        self.stamp.resistance() * self.tolerance
    }

    /// Resistance of the same coil while no current flows in it: what an ohmmeter meets.
    pub fn cold_coil(&self) -> Ohms {
        self.coil() * COLD_SHARE.get()
    }

    /// The path from coil to sheath that conducts now.
    pub fn conducting_leak(&self, wetted: bool) -> Option<SheathFault> {
        self.leak.filter(|_| wetted || !self.leak_needs_water)
    }
}

/// The flat gasket behind an element.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Gasket {
    /// Orifice of its leak as an equivalent diameter in metres; 0 when tight.
    pub leak_diameter: f64,
    /// Rust and old gasket left on its seat: a new gasket on it weeps again.
    pub seat_dirty: bool,
}

impl Gasket {
    /// Tight on a clean seat.
    pub const fn sound() -> Self {
        Self { leak_diameter: 0.0, seat_dirty: false }
    }
}
