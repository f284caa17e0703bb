//! Places with their ground-water temperatures.

use quantity::{Constant, Kelvins, Tag, Temperature, det};

use crate::named::named;

named! {
    /// Towns of our own invention, each with the climate of a real weather station.
    Climate {
        /// Cold winters, cold ground.
        NorthRidge = "north-ridge",
        /// Four seasons.
        MillValley = "mill-valley",
        /// Mild and damp.
        HarborBend = "harbor-bend",
        /// Hot and dry.
        SaltFlat = "salt-flat",
        /// Far north: long deep frost, ground that barely thaws.
        FrostLanding = "frost-landing",
        /// A high mountain basin: cold nights all year.
        LoftyBasin = "lofty-basin",
        /// A dry plain at the foot of mountains.
        CopperPlain = "copper-plain",
        /// Desert: hotter than any other, ground as well.
        EmberWells = "ember-wells",
        /// Hot and damp, hardly any winter.
        MangrovePoint = "mangrove-point",
        /// Damp summers, short winters.
        CottonBayou = "cotton-bayou",
    }
}

impl Climate {
    /// Yearly mean of the outdoor air and the span between its warmest and coldest monthly mean.
    pub const fn air(self) -> (Temperature, Kelvins) {
        match self {
            Self::NorthRidge => NORTH_RIDGE.get(),
            Self::MillValley => MILL_VALLEY.get(),
            Self::HarborBend => HARBOR_BEND.get(),
            Self::SaltFlat => SALT_FLAT.get(),
            Self::FrostLanding => FROST_LANDING.get(),
            Self::LoftyBasin => LOFTY_BASIN.get(),
            Self::CopperPlain => COPPER_PLAIN.get(),
            Self::EmberWells => EMBER_WELLS.get(),
            Self::MangrovePoint => MANGROVE_POINT.get(),
            Self::CottonBayou => COTTON_BAYOU.get(),
        }
    }

    /// Mean temperature of the outdoor air on a day of the year, 1 to 365: the yearly wave that the main lags behind.
    pub fn outdoors(self, day: u16) -> Temperature {
        let (mean, span) = self.air();
        let (turn, first, back) = WAVE.get();
        let degrees = turn * (f64::from(day) - first) - back;
        let wave = det::sin(degrees * core::f64::consts::PI / HALF_TURN.get());
        mean.plus(Kelvins(span.get() / 2.0 * wave))
    }

    /// Mean of the coldest month.
    pub fn coldest(self) -> Temperature {
        let (mean, span) = self.air();
        mean.plus(Kelvins(-span.get() / 2.0))
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
/// The document of the towns' climates; the towns themselves do not exist.
macro_rules! normals {
    ($station:literal) => {
        Tag::Memory(concat!(
            "NOAA NCEI, U.S. Climate Normals 1991-2020, normal mean temperatures by month, station ",
            $station,
            "; the town is invented"
        ))
    };
}

quantity::constants! {
    /// Cold winters, cold ground.
    const NORTH_RIDGE: Constant<(Temperature, Kelvins)> = Constant::of(
        "North Ridge: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(46.2), Kelvins::fahrenheit(57.9)),
        normals!("USW00014922"),
    );
    /// Four seasons.
    const MILL_VALLEY: Constant<(Temperature, Kelvins)> = Constant::of(
        "Mill Valley: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(52.0), Kelvins::fahrenheit(44.3)),
        normals!("USW00094823"),
    );
    /// Mild and damp.
    const HARBOR_BEND: Constant<(Temperature, Kelvins)> = Constant::of(
        "Harbor Bend: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(53.1), Kelvins::fahrenheit(25.0)),
        normals!("USW00024233"),
    );
    /// Hot and dry.
    const SALT_FLAT: Constant<(Temperature, Kelvins)> = Constant::of(
        "Salt Flat: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(70.1), Kelvins::fahrenheit(45.8)),
        normals!("USW00023169"),
    );
    /// Far north.
    const FROST_LANDING: Constant<(Temperature, Kelvins)> = Constant::of(
        "Frost Landing: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(28.3), Kelvins::fahrenheit(71.2)),
        normals!("USW00026411"),
    );
    /// A high mountain basin.
    const LOFTY_BASIN: Constant<(Temperature, Kelvins)> = Constant::of(
        "Lofty Basin: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(36.3), Kelvins::fahrenheit(38.0)),
        normals!("a mountain station above 9,900 ft"),
    );
    /// A dry plain at the foot of mountains.
    const COPPER_PLAIN: Constant<(Temperature, Kelvins)> = Constant::of(
        "Copper Plain: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(51.1), Kelvins::fahrenheit(43.5)),
        normals!("USW00003017"),
    );
    /// Desert.
    const EMBER_WELLS: Constant<(Temperature, Kelvins)> = Constant::of(
        "Ember Wells: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(75.6), Kelvins::fahrenheit(40.0)),
        normals!("USW00023183"),
    );
    /// Hot and damp.
    const MANGROVE_POINT: Constant<(Temperature, Kelvins)> = Constant::of(
        "Mangrove Point: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(77.4), Kelvins::fahrenheit(15.6)),
        normals!("USW00012839"),
    );
    /// Damp summers, short winters.
    const COTTON_BAYOU: Constant<(Temperature, Kelvins)> = Constant::of(
        "Cotton Bayou: yearly mean of the air and span of its monthly means",
        (Temperature::fahrenheit(70.8), Kelvins::fahrenheit(31.2)),
        normals!("USW00012960"),
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

    #[test]
    fn towns_cover_cold_hot_dry_and_high() {
        for &town in Climate::ALL {
            let days = || (1..=365).map(|day| town.outdoors(day).to_fahrenheit());
            let (mean, span) = town.air();
            assert!((days().sum::<f64>() / 365.0 - mean.to_fahrenheit()).abs() < 0.2, "{town}");
            let (low, high) = (days().fold(f64::MAX, f64::min), days().fold(f64::MIN, f64::max));
            assert!((high - low - span.to_fahrenheit()).abs() < 0.1, "{town}");
            assert!((town.coldest().to_fahrenheit() - low).abs() < 0.1, "{town}");
            // The main is damped: its span is below the air's.
            let mains = || (1..=365).map(|day| town.mains(day).to_fahrenheit());
            assert!(mains().fold(f64::MIN, f64::max) - mains().fold(f64::MAX, f64::min) < high - low);
        }
        assert!(Climate::FrostLanding.coldest() < Temperature::fahrenheit(0.0));
        assert!(Climate::EmberWells.outdoors(200) > Temperature::fahrenheit(90.0));
    }
}
