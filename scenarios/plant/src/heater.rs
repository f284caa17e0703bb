//! The heater as its rating plate describes it, and the models there are.

use quantity::{Metres, Ohms, Pressure, Volts, Volume, Watts};
use serde::{Deserialize, Serialize};

use crate::named::named;

named! {
    /// The heaters of the practice yard. Invented; sizes and ratings are those of the trade.
    HeaterModel {
        /// 30 gallons, short, 3500 W at 240 V.
        Short30 = "short-30",
        /// 40 gallons, 4500 W at 240 V.
        Plain40 = "plain-40",
        /// 50 gallons, tall, 4500 W at 208 V.
        Tall50At208 = "tall-50-208",
        /// 80 gallons, 5500 W at 240 V.
        Wide80 = "wide-80",
    }
}

/// A rated power at a rated voltage, as stamped on a plate or an element.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Rating {
    /// Rated power.
    pub watts: Watts,
    /// Rated voltage.
    pub volts: Volts,
}

impl Rating {
    /// Nominal resistance, V²/P.
    pub fn resistance(self) -> Ohms {
        Ohms(self.volts.get() * self.volts.get() / self.watts.get())
    }
}

/// What the rating plate says, with the dimensions a ruler would give.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Plate {
    /// The model.
    pub model: HeaterModel,
    /// Nominal storage.
    pub nominal: Volume,
    /// Both elements carry this rating.
    pub element: Rating,
    /// Working pressure.
    pub working_pressure: Pressure,
    /// Height of the water space.
    pub height: Metres,
    /// Height of the upper element above the bottom of the water space.
    pub upper_element: Metres,
    /// Height of the lower element.
    pub lower_element: Metres,
    /// Energy factor, from which the standby loss follows.
    pub energy_factor: f64,
}

impl HeaterModel {
    /// Its rating plate. Element heights at 0.767 and 0.167 of the height (trade sheet 4.13, published);
    /// energy factor 0.97 - 0.00132 V (4.10, published); 150 psi (5.2, from memory).
    pub fn plate(self) -> Plate {
        let (gallons, watts, volts, height) = match self {
            Self::Short30 => (30.0, 3500.0, 240.0, 0.72),
            Self::Plain40 => (40.0, 4500.0, 240.0, 1.10),
            Self::Tall50At208 => (50.0, 4500.0, 208.0, 1.22),
            Self::Wide80 => (80.0, 5500.0, 240.0, 1.32),
        };
        Plate {
            model: self,
            nominal: Volume::gallons(gallons),
            element: Rating { watts: Watts(watts), volts: Volts(volts) },
            working_pressure: Pressure::psi(150.0),
            height: Metres(height),
            upper_element: Metres(height * 0.767),
            lower_element: Metres(height * 0.167),
            energy_factor: 0.97 - 0.00132 * gallons,
        }
    }
}

impl Plate {
    /// True water content, 0.90 of the nominal (trade sheet 4.4, published).
    pub fn content(&self) -> Volume {
        self.nominal * 0.90
    }
}
