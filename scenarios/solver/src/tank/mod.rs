//! A layered (stratified) vertical cylinder of water: heat sources, flows, losses, mixing, a free surface.
//!
//! The water is a stack of slugs, bottom first, each with its mass and its specific enthalpy. Flow moves
//! whole slugs, so a temperature front travels through the tank without being smeared by the numerics; what
//! smears it is conduction, the eddy at the inlet and buoyancy. Mass and energy are the conserved quantities
//! of every operation, so both balances close to rounding.
//!
//! Units: SI, temperatures in °C, heights in m above the inner bottom, flows in m³/s, specific enthalpy in
//! J/kg above liquid at 0 °C.
//!
//! ```
//! use solver::tank::{Cross, Inputs, Probe, Source, Stop, Tank};
//!
//! let tank = Tank::new(0.42, 1.22).expect("positive sizes");
//! let mut state = tank.full_at(20.0);
//! // A body on the wall, 90 s behind the water at its height, 95 % coupled to it.
//! state.probes.push(Probe { height: 0.94, lag: 90.0, coupling: 0.95, celsius: 20.0 });
//! let inputs = Inputs {
//!     sources: vec![Source { centre: 0.94, spread: 0.04, watts: 4500.0 }],
//!     ..Inputs::idle(0.18, 20.0, 1.4)
//! };
//! let watch = [Cross { probe: 0, rising: Some(51.0), falling: None }];
//! let report = tank.advance(&mut state, &inputs, 7200.0, &watch).expect("finite inputs");
//! assert!(matches!(report.stop, Stop::Crossed { probe: 0, rising: true }));
//! assert!(report.elapsed > 600.0 && state.temperature_at(1.1).expect("wet") > 50.0);
//! ```
//!
//! The caller switches its sources and calls `advance` again; a crossing is hit within
//! [`Tank::resolution`] seconds.

mod advance;
mod buoyancy;
mod conduction;
mod flow;
mod heat;
mod inputs;
mod probe;
mod regrid;
mod report;
mod rough;
mod state;
mod step;

/// The lists of this folder.
pub(crate) const SOURCES: &[&[quantity::Listed]] = &[inputs::CONSTANTS, rough::CONSTANTS];
#[cfg(test)]
mod tests;

pub use inputs::{Cross, Filling, Inputs, Mixing, PORTS, Port, Source};
pub use probe::{Fading, Probe, Warming, lag};
pub use report::{Moved, Report, Stop};
pub use state::{Slug, State};

/// What cannot be computed with.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Error {
    /// A number that is not finite, or not positive where it has to be.
    Bad {
        /// The name of the field.
        field: &'static str,
        /// Its value.
        value: f64,
    },
    /// A crossing names a probe that is not there.
    NoProbe(u32),
}

impl core::fmt::Display for Error {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::Bad { field, value } => write!(f, "{field} cannot be {value}"),
            Self::NoProbe(probe) => write!(f, "there is no probe {probe}"),
        }
    }
}

impl core::error::Error for Error {}

/// Checks that a number is finite and at least `least`.
fn check(field: &'static str, value: f64, least: f64) -> Result<(), Error> {
    if value.is_finite() && value >= least { Ok(()) } else { Err(Error::Bad { field, value }) }
}

/// Layers of [`Tank::new`].
pub const LAYERS: u32 = 48;

/// The cylinder and how finely it is computed. Never changes while a state of it is advanced.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Tank {
    diameter: f64,
    height: f64,
    layers: u32,
    step_scale: f64,
}

impl Default for Tank {
    /// A household tank of 36 gallons and 1.1 m.
    fn default() -> Self {
        Self { diameter: 0.397, height: 1.1, layers: LAYERS, step_scale: 1.0 }
    }
}

impl Tank {
    /// A cylinder of inner `diameter` and `height` in m, with [`LAYERS`] layers and ordinary steps.
    pub fn new(diameter: f64, height: f64) -> Result<Self, Error> {
        check("diameter", diameter, 1e-3)?;
        check("height", height, 1e-3)?;
        Ok(Self { diameter, height, layers: LAYERS, step_scale: 1.0 })
    }

    /// A cylinder of a volume in m³ and a height in m.
    pub fn of_volume(volume: f64, height: f64) -> Result<Self, Error> {
        check("volume", volume, 1e-6)?;
        check("height", height, 1e-3)?;
        Self::new((4.0 * volume / (height * core::f64::consts::PI)).sqrt(), height)
    }

    /// The same with another number of layers (at least 4) and steps scaled by a factor (0.001 to 1).
    pub fn refined(self, layers: u32, step_scale: f64) -> Self {
        Self { layers: layers.max(4), step_scale: step_scale.clamp(1e-3, 1.0), ..self }
    }

    /// Inner height, m.
    pub fn height(&self) -> f64 {
        self.height
    }

    /// Cross-section, m².
    pub fn area(&self) -> f64 {
        core::f64::consts::FRAC_PI_4 * self.diameter * self.diameter
    }

    /// Volume of the empty cylinder, m³.
    pub fn volume(&self) -> f64 {
        self.area() * self.height
    }

    /// Seconds within which a crossing is located.
    pub fn resolution(&self) -> f64 {
        0.5 * self.step_scale
    }

    /// Volume of a layer, m³.
    fn layer(&self) -> f64 {
        self.volume() / f64::from(self.layers)
    }
}
