//! Places with their ground-water temperatures.

use quantity::{Constant, Kelvins, Tag, Temperature, det};

use crate::named::named;

named! {
    /// Towns of our own invention, each with a plain climate.
    Climate {
        /// Cold winters, cold ground.
        NorthRidge = "north-ridge",
        /// Four seasons.
        MillValley = "mill-valley",
        /// Mild and damp.
        HarborBend = "harbor-bend",
        /// Hot and dry.
        SaltFlat = "salt-flat",
    }
}

impl Climate {
    /// Yearly mean of the outdoor air and the span between its warmest and coldest monthly mean. Invented.
    pub const fn air(self) -> (Temperature, Kelvins) {
        match self {
            Self::NorthRidge => NORTH_RIDGE.get(),
            Self::MillValley => MILL_VALLEY.get(),
            Self::HarborBend => HARBOR_BEND.get(),
            Self::SaltFlat => SALT_FLAT.get(),
        }
    }

    /// Temperature of the water main on a day of the year, 1 to 365.
    pub fn mains(self, day: u16) -> Temperature {
        let (mean, span) = self.air();
        mains_temperature(mean, span, day)
    }
}

/// Temperature of the water main on a day of the year, from the yearly mean of the air and the span of its
/// monthly means: an offset, and a damped and delayed yearly wave, never below freezing. Northern hemisphere.
pub fn mains_temperature(mean: Temperature, span: Kelvins, day: u16) -> Temperature {
    let over = mean.to_fahrenheit() - REFERENCE.get();
    let (damping, delay) = (DAMPING.get(), DELAY.get());
    let (ratio, days) = (damping.0 + damping.1 * over, delay.0 - delay.1 * over);
    let (turn, first, back) = WAVE.get();
    let degrees = turn * (f64::from(day) - first - days) - back;
    let wave = det::sin(degrees * core::f64::consts::PI / HALF_TURN.get());
    let f = mean.to_fahrenheit() + OFFSET.get() + ratio * span.to_fahrenheit() / 2.0 * wave;
    Temperature::fahrenheit(f.max(FREEZING.get()))
}

/// The document of the mains' yearly wave.
const BURCH: Tag = Tag::Published(
    "Burch and Christensen 2007, Towards development of an algorithm for mains water temperature; OSTI 981988",
);
/// Why the towns are as they are.
const TOWNS: Tag = Tag::Invented("a town that does not exist, with a plain climate");

quantity::constants! {
    /// Cold winters, cold ground.
    const NORTH_RIDGE: Constant<(Temperature, Kelvins)> = Constant::of(
        "North Ridge: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(44.0), Kelvins::fahrenheit(58.0)),
        TOWNS,
    );
    /// Four seasons.
    const MILL_VALLEY: Constant<(Temperature, Kelvins)> = Constant::of(
        "Mill Valley: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(52.0), Kelvins::fahrenheit(48.0)),
        TOWNS,
    );
    /// Mild and damp.
    const HARBOR_BEND: Constant<(Temperature, Kelvins)> = Constant::of(
        "Harbor Bend: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(58.0), Kelvins::fahrenheit(24.0)),
        TOWNS,
    );
    /// Hot and dry.
    const SALT_FLAT: Constant<(Temperature, Kelvins)> = Constant::of(
        "Salt Flat: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(70.0), Kelvins::fahrenheit(42.0)),
        TOWNS,
    );
    /// Mean of the air that damping and delay are counted from.
    const REFERENCE: Constant = Constant::new("mean of the air that the wave is counted from", 44.0, "°F", BURCH);
    /// Ratio of the wave in the main to that in the air: at the reference, and for each degree above it.
    const DAMPING: Constant<(f64, f64)> =
        Constant::new("wave in the main over that in the air, and its change by degree", (0.4, 0.01), "1, 1/°F", BURCH);
    /// Days by which the main lags: at the reference, and less for each degree above it.
    const DELAY: Constant<(f64, f64)> =
        Constant::new("lag of the main behind the air, and its change by degree", (35.0, 1.0), "d, d/°F", BURCH);
    /// Degrees of the wave in a day, the day counted from, and its phase.
    const WAVE: Constant<(f64, f64, f64)> = Constant::new(
        "degrees of the yearly wave in a day, day counted from, phase",
        (0.986, 15.0, 90.0),
        "°/d, d, °",
        BURCH,
    );
    /// Degrees of half a turn.
    const HALF_TURN: Constant = Constant::new("degrees of half a turn", 180.0, "°", Tag::Published("SI brochure, 9th edition, table 8"));
    /// The main's mean above the air's.
    const OFFSET: Constant = Constant::new("mean of the main above that of the air", 6.0, "°F", BURCH);
    /// No main is colder.
    const FREEZING: Constant = Constant::new("coldest water main", 32.0, "°F", BURCH);
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Check case 21 (trade sheet 12; formula published, values computed): mean 50 °F, span 50 °F.
    #[test]
    fn mains_follow_the_published_wave() {
        let at = |day| {
            mains_temperature(Temperature::fahrenheit(50.0), Kelvins::fahrenheit(50.0), day).to_fahrenheit()
        };
        assert!((at(44) - 44.5).abs() < 0.1, "{}", at(44));
        assert!((at(227) - 67.5).abs() < 0.1, "{}", at(227));
        assert!((1..=365).all(|day| at(day) >= 32.0));
    }
}
