//! US customary or SI on the screen. Display only: everything behind the screen is SI.

use quantity::{Ohms, Seconds, Volume};
use serde::{Deserialize, Serialize};

/// A system of units.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Units {
    /// Degrees Fahrenheit, gallons, pounds per square inch.
    #[default]
    Us,
    /// Degrees Celsius, litres, kilopascals.
    Si,
}

impl Units {
    /// The other one.
    pub const fn other(self) -> Self {
        match self {
            Self::Us => Self::Si,
            Self::Si => Self::Us,
        }
    }

    /// The same for the sentences.
    pub const fn words(self) -> words::Units {
        match self {
            Self::Us => words::Units::Customary,
            Self::Si => words::Units::Si,
        }
    }
}

/// A nominal size, without decimals.
pub fn size(volume: Volume, units: Units) -> String {
    match units {
        Units::Us => format!("{:.0} gal", volume.to_gallons()),
        Units::Si => format!("{:.0} L", volume.to_litres()),
    }
}

/// The number and the unit of a resistance, apart.
pub fn scaled(r: Ohms) -> (String, &'static str) {
    let r = r.get();
    if r < 1e3 {
        (format!("{r:.1}"), "Ω")
    } else if r < 1e6 {
        (format!("{:.2}", r / 1e3), "kΩ")
    } else {
        (format!("{:.2}", r / 1e6), "MΩ")
    }
}

/// A time of day on the wall clock, 24 hours.
pub fn clock(time: Seconds) -> String {
    words::Units::Si.clock(time)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_same_size_in_both_systems() {
        let v = Volume::gallons(50.0);
        assert_eq!((size(v, Units::Us), size(v, Units::Si)), ("50 gal".into(), "189 L".into()));
        assert_eq!(Units::Us.other().other(), Units::Us);
    }

    #[test]
    fn ohms_change_their_prefix() {
        assert_eq!(scaled(Ohms(12.84)), ("12.8".into(), "Ω"));
        assert_eq!(scaled(Ohms(2_200.0)), ("2.20".into(), "kΩ"));
        assert_eq!(scaled(Ohms(5.5e6)), ("5.50".into(), "MΩ"));
    }
}
