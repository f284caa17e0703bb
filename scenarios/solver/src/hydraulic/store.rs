//! A vessel: how much water it holds at a pressure.

use quantity::{Constant, Tag};

use crate::water::ATMOSPHERE;

/// A thin cylinder with closed ends.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Shell {
    /// m.
    pub diameter: f64,
    /// m.
    pub wall: f64,
    /// Young's modulus, Pa (steel 200 GPa).
    pub youngs: f64,
    /// Poisson's ratio (steel 0.3).
    pub poisson: f64,
}

impl Shell {
    /// Growth of the enclosed volume per Pa: D/(2tE)·(5/2 − 2ν).
    pub fn compliance(&self) -> f64 {
        self.diameter / (2.0 * self.wall * self.youngs) * (2.5 - 2.0 * self.poisson)
    }
}

/// A gas cushion behind a membrane. One that is waterlogged is no cushion: leave it away.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Cushion {
    /// Gas volume without water, m³.
    pub volume: f64,
    /// Gas pressure without water, Pa gauge.
    pub charge: f64,
}

impl Cushion {
    /// Water taken in at a pressure, m³ (isothermal gas), and its slope.
    pub fn water(&self, pressure: f64) -> (f64, f64) {
        if pressure <= self.charge {
            return (0.0, 0.0);
        }
        let absolute = pressure + ATMOSPHERE;
        let gas = self.volume * (self.charge + ATMOSPHERE) / absolute;
        (self.volume - gas, gas / absolute)
    }
}

quantity::constants! {
    /// Compressibility of water where nobody says better.
    const COMPRESSIBILITY: Constant =
        Constant::new("compressibility of water, unless said otherwise", 4.4e-10, "1/Pa", Tag::Computed("IAPWS-97 at 50 °C"));
}

/// Air that always remains, J (absolute pressure times volume): a tenth of a cubic millimetre. It keeps the
/// pressure finite when a full vessel is emptied with no way for air.
const BUBBLE: f64 = 1e-5;

/// A pressure that nothing reaches: no vapour.
const NEVER: f64 = -1e9;
/// Give of vapour, m³/Pa: a cubic centimetre for each pascal.
const VAPOUR: f64 = 1e-6;

/// A vessel and its water.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Store {
    /// Inner volume at zero gauge pressure, m³. The caller lets it grow with temperature if that matters.
    pub volume: f64,
    /// Inner height, m.
    pub height: f64,
    /// Height of the inner bottom above the datum, m.
    pub bottom: f64,
    /// Growth of the shell per Pa ([`Shell::compliance`]), and whatever else gives way, such as piping.
    pub compliance: f64,
    /// Compressibility of the water, 1/Pa.
    pub compressibility: f64,
    /// Gas cushion connected to it.
    pub cushion: Option<Cushion>,
    /// Water in it and its cushion, m³ at zero gauge pressure.
    pub water: f64,
    /// Pressure at which its water boils, Pa gauge: below it vapour gives way at once. Far below vacuum for none.
    pub boils: f64,
    /// Whether air can pass freely between its top and the outside.
    pub vented: bool,
    /// Air above the water: absolute pressure times volume, J.
    pub(super) air: f64,
    /// Pressure at its top (at the surface when there is air), Pa gauge.
    pub(super) pressure: f64,
}

impl Store {
    /// Full of water at a gauge pressure at its top.
    pub fn full(volume: f64, height: f64, bottom: f64, compliance: f64, pressure: f64) -> Self {
        let mut store = Self {
            volume,
            height,
            bottom,
            compliance,
            compressibility: COMPRESSIBILITY.get(),
            cushion: None,
            water: volume,
            boils: NEVER,
            vented: false,
            air: BUBBLE,
            pressure,
        };
        store.water = store.capacity(pressure).0;
        store
    }

    /// With a cushion, which takes in the water that its pressure asks for.
    pub fn with_cushion(mut self, cushion: Cushion) -> Self {
        self.water += cushion.water(self.pressure).0;
        self.cushion = Some(cushion);
        self
    }

    /// Partly filled, air at atmospheric pressure above the water.
    pub fn partly_filled(mut self, water: f64) -> Self {
        self.water = water.clamp(0.0, self.volume);
        self.pressure = 0.0;
        self.air = (ATMOSPHERE * (self.volume - self.water)).max(BUBBLE);
        self
    }

    /// With this much air above the water (absolute pressure times volume, J), at a pressure at its top; the
    /// water is the caller's affair.
    pub fn with_air(mut self, joules: f64, pressure: f64) -> Self {
        self.pressure = pressure;
        self.air = joules.max(BUBBLE);
        self
    }

    /// Pressure at its top, Pa gauge, after the last step.
    pub fn pressure(&self) -> f64 {
        self.pressure
    }

    /// Air in it at its pressure, m³.
    pub fn air_volume(&self) -> f64 {
        self.air / (self.pressure + ATMOSPHERE).max(1.0)
    }

    /// Whether its top is under water.
    pub fn is_full(&self) -> bool {
        self.air_volume() <= 1e-6 * self.volume
    }

    /// Height of the surface above its bottom, m.
    pub fn level(&self) -> f64 {
        if self.is_full() {
            return self.height;
        }
        (self.height * (1.0 - self.air_volume() / self.volume)).clamp(0.0, self.height)
    }

    /// Lets air in or out until it stands at atmospheric pressure.
    pub fn open_to_air(&mut self) {
        self.pressure = 0.0;
        self.air = (ATMOSPHERE * (self.volume - self.water)).max(BUBBLE);
    }

    /// Pressure that belongs to the water and air now in it, for a vessel shut on all sides.
    pub fn rest_pressure(&self) -> f64 {
        // Rising and smooth: bracket, then halve.
        let (mut low, mut high) = (-ATMOSPHERE * (1.0 - 1e-9), 1e5);
        for _ in 0..40 {
            if self.capacity(high).0 >= self.water {
                break;
            }
            high *= 2.0;
        }
        for _ in 0..80 {
            let before = (low, high);
            let middle = 0.5 * (low + high);
            if self.capacity(middle).0 < self.water {
                low = middle;
            } else {
                high = middle;
            }
            // Neighbouring numbers: nothing moves any more.
            if before == (low, high) {
                break;
            }
        }
        0.5 * (low + high)
    }

    /// Sets the pressure to the one that belongs to its water.
    pub fn settle(&mut self) {
        self.pressure = self.rest_pressure();
    }

    /// Water it holds at a pressure, m³ at zero gauge, and the slope. Rises with pressure everywhere.
    pub fn capacity(&self, pressure: f64) -> (f64, f64) {
        let give = self.volume * (self.compliance + self.compressibility);
        let absolute = (pressure + ATMOSPHERE).max(1e-6);
        let air = self.air / absolute;
        let (cushion, slope) = self.cushion.map_or((0.0, 0.0), |c| c.water(pressure));
        let (vapour, softer) =
            if pressure < self.boils { (VAPOUR * (self.boils - pressure), VAPOUR) } else { (0.0, 0.0) };
        (self.volume + give * pressure - air + cushion - vapour, give + air / absolute + slope + softer)
    }

    /// Height of the surface above the datum with its present air at a pressure, and the slope.
    pub(super) fn surface(&self, pressure: f64) -> (f64, f64) {
        let absolute = (pressure + ATMOSPHERE).max(1e-6);
        let share = self.air / absolute / self.volume;
        if share >= 1.0 {
            return (self.bottom, 0.0);
        }
        (self.bottom + self.height * (1.0 - share), self.height * share / absolute)
    }

    pub(super) fn set_air(&mut self, air: f64) {
        self.air = air.max(BUBBLE);
    }
}
