//! US customary or SI on the screen. Display only: everything behind the screen is SI.

use quantity::{Seconds, Volume};
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
    units.words().size(volume)
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
}
