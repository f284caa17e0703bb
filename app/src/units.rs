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

/// A time of day on the wall clock, 24 hours; with the day from the second one on.
pub fn clock(time: Seconds) -> String {
    let bare = words::Units::Si.clock(time);
    match words::Units::Si.day(time) {
        1 => bare,
        day => crate::text::filled("clock-day", &[("day", day.into()), ("time", bare.into())]),
    }
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
    fn the_clock_names_the_day_from_the_second_one_on() {
        let said = [23.99, 24.0, 50.25].map(|hours| clock(Seconds::hours(hours)));
        assert_eq!(said, ["23:59", "day 2 00:00", "day 3 02:15"]);
    }
}
