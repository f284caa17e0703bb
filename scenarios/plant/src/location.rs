//! Where the heater stands: the air around it, and what a leak does there.

use quantity::{Constant, Kelvins, Tag, Temperature, Volume};

use crate::climate::Climate;
use crate::named::named;

named! {
    /// Where a heater is installed.
    #[derive(Default)]
    Location {
        /// A basement with a floor drain.
        #[default]
        Basement = "basement",
        /// A closet in the living space.
        Closet = "closet",
        /// An attached garage, on a stand.
        Garage = "garage",
        /// An attic, in a pan with a drain of its own.
        Attic = "attic",
        /// Outdoors in a cabinet against the wall.
        Outdoors = "outdoors",
    }
}

quantity::constants! {
    /// Air in a basement.
    const BASEMENT: Constant<Temperature> = Constant::of(
        "air in a basement",
        Temperature::fahrenheit(68.0),
        Tag::Invented("a basement; the rating test of 10 CFR 430 appendix E takes 67.5 °F"),
    );
    /// Air in the living space.
    const LIVING: Constant<Temperature> =
        Constant::of("air in the living space", Temperature::fahrenheit(72.0), Tag::CommonPractice);
    /// How far the garage follows the weather.
    const GARAGE: Constant = Constant::new(
        "share of the way from the living space to outdoors that a garage takes",
        0.6,
        "",
        Tag::Model("attached, not heated, one wall shared"),
    );
    /// How far the sun warms an attic above the outdoor air, over the day.
    const SUN: Constant<Kelvins> =
        Constant::of("attic over the outdoor air, mean of the day", Kelvins::fahrenheit(12.0), Tag::Model("a vented roof"));
    /// No place with water in it is left to get colder.
    const FROST: Constant<Temperature> = Constant::of(
        "coldest air around a heater",
        Temperature::fahrenheit(40.0),
        Tag::Memory("the plumbing codes ask that water pipes be kept from freezing: a cabinet with a small heater"),
    );
    /// Coldest month in which somebody still puts a heater outdoors or under the roof.
    const MILD: Constant<Temperature> = Constant::of(
        "coldest month where heaters stand outdoors or under the roof",
        Temperature::fahrenheit(40.0),
        Tag::CommonPractice,
    );
    /// Water a day that people notice, by place.
    const NOTICED: Constant<[Volume; Location::ALL.len()]> = Constant::of(
        "leak in a day that people notice, by place",
        [
            Volume::litres(0.5),
            Volume::litres(0.3),
            Volume::litres(1.0),
            Volume::litres(3.0),
            Volume::litres(2.0),
        ],
        Tag::Model("a puddle; boards that swell; a wet slab; the pan's drain at the eaves; a wet wall"),
    );
}

impl Location {
    /// Mean temperature of the air around the heater on a day of the year, 1 to 365.
    pub fn air(self, climate: Climate, day: u16) -> Temperature {
        let outdoors = climate.outdoors(day);
        let living = LIVING.get();
        let air = match self {
            Self::Basement => BASEMENT.get(),
            Self::Closet => living,
            Self::Garage => living.plus(Kelvins(GARAGE.get() * outdoors.above(living).get())),
            Self::Attic => outdoors.plus(SUN.get()),
            Self::Outdoors => outdoors,
        };
        if air < FROST.get() { FROST.get() } else { air }
    }

    /// Somebody would put a heater there in this climate.
    pub fn usual_in(self, climate: Climate) -> bool {
        !matches!(self, Self::Attic | Self::Outdoors) || climate.coldest() >= MILD.get()
    }

    /// Water a day that people notice there: a pan hides a leak, a closet's boards show it.
    pub fn noticed_leak(self) -> Volume {
        NOTICED.get()[self as usize]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_air_follows_the_weather_as_far_as_the_place_lets_it() {
        let f = |place: Location, climate, day| place.air(climate, day).to_fahrenheit();
        for &climate in Climate::ALL {
            assert_eq!(f(Location::Basement, climate, 20), f(Location::Basement, climate, 200));
            assert!(f(Location::Garage, climate, 20) < f(Location::Garage, climate, 200));
            assert!(Location::ALL.iter().all(|place| (1..=365).all(|day| f(*place, climate, day) > 39.9)));
        }
        assert!(f(Location::Attic, Climate::EmberWells, 200) > 100.0);
        assert!(!Location::Outdoors.usual_in(Climate::FrostLanding));
        assert!(Location::Attic.usual_in(Climate::MangrovePoint));
        assert!(Location::Attic.noticed_leak() > Location::Closet.noticed_leak());
    }
}
