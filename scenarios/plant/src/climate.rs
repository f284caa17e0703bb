//! Places with their ground-water temperatures.

use quantity::{Kelvins, Temperature, det};

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
        let (mean, span) = match self {
            Self::NorthRidge => (44.0, 58.0),
            Self::MillValley => (52.0, 48.0),
            Self::HarborBend => (58.0, 24.0),
            Self::SaltFlat => (70.0, 42.0),
        };
        (Temperature::fahrenheit(mean), Kelvins::fahrenheit(span))
    }

    /// Temperature of the water main on a day of the year, 1 to 365.
    pub fn mains(self, day: u16) -> Temperature {
        let (mean, span) = self.air();
        mains_temperature(mean, span, day)
    }
}

/// Temperature of the water main on a day of the year, from the yearly mean of the air and the span of its
/// monthly means.
///
/// Burch and Christensen 2007, as published with OSTI 981988 (trade sheet 4.16): an offset of 6 °F, a damped
/// and delayed yearly wave, never below freezing. Northern hemisphere.
pub fn mains_temperature(mean: Temperature, span: Kelvins, day: u16) -> Temperature {
    let over = mean.to_fahrenheit() - 44.0;
    let (ratio, delay) = (0.4 + 0.01 * over, 35.0 - over);
    let degrees = 0.986 * (f64::from(day) - 15.0 - delay) - 90.0;
    let wave = det::sin(degrees * core::f64::consts::PI / 180.0);
    let f = mean.to_fahrenheit() + 6.0 + ratio * 0.5 * span.to_fahrenheit() * wave;
    Temperature::fahrenheit(f.max(32.0))
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
