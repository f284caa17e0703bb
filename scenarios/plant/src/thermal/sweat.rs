//! Condensation: cold metal below the dew point of the air around the heater.

use quantity::{Constant, Kelvins, Tag, Temperature, det};

use crate::Plant;
use crate::climate::Climate;

quantity::constants! {
    /// Magnus' formula over water: 17.62 and 243.12 °C.
    const MAGNUS: Constant<[f64; 2]> =
        Constant::new("Magnus' coefficients", [17.62, 243.12], "1, C", Tag::Memory("WMO Guide No. 8"));
    /// Moisture that people add to the air of a house, as a rise of its dew point.
    const HOUSEHOLD: Constant =
        Constant::new("rise of the dew point indoors", 3.0, "K", Tag::Model("cooking, washing, breathing"));
    /// The coldest day of the year.
    const COLDEST_DAY: Constant = Constant::new("coldest day of the year", 15.0, "d", Tag::Model("mid January"));
    /// Days of the year.
    const YEAR: Constant = Constant::new("days of a year", 365.0, "d", Tag::Computed("calendar"));
    /// A jacketed tank sweats at its bare rim and flanges when the water behind them is this far below the dew point.
    const BARE: Constant =
        Constant::new("water below the dew point that wets bare metal", 1.0, "K", Tag::Model("a film"));
    /// Height of the bottom layer that is felt at the rim, as a share.
    const RIM: Constant = Constant::new("height of the rim", 0.05, "", Tag::Model("an inch or two"));
    /// Relative humidity of the outdoor air by `Climate::ALL`.
    const HUMIDITY: Constant<[f64; Climate::ALL.len()]> =
        Constant::new(
            "relative humidity by town",
            [0.72, 0.70, 0.80, 0.28, 0.68, 0.55, 0.50, 0.33, 0.74, 0.74],
            "",
            Tag::Invented("towns of our own"),
        );
}

/// Dew point of the air around the heater: the outdoor air's on that day, and what the household adds.
pub(crate) fn dew_point(climate: Climate, day: u16) -> Temperature {
    let (mean, span) = climate.air();
    let angle = 2.0 * core::f64::consts::PI * (f64::from(day) - COLDEST_DAY.get()) / YEAR.get();
    let outdoors = mean.to_celsius() - span.get() * det::cos(angle) / 2.0;
    dew(outdoors, HUMIDITY.get()[climate as usize]).plus(Kelvins(HOUSEHOLD.get()))
}

/// Dew point of air at a temperature in °C and a relative humidity.
fn dew(celsius: f64, humidity: f64) -> Temperature {
    let [a, b] = MAGNUS.get();
    let x = det::ln(humidity) + a * celsius / (b + celsius);
    Temperature::celsius(b * x / (a - x))
}

/// Where it sweats.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct Sweat {
    /// The cold pipe.
    pub pipe: bool,
    /// Rim, flanges and fittings of the tank.
    pub shell: bool,
}

impl Plant {
    /// Metal that is below the dew point now.
    pub fn sweats(&self) -> Sweat {
        let below = |metal: Temperature| self.plumbing.dew_point.above(metal) > Kelvins(BARE.get());
        let rim = self.tank.temperature_at(self.plate.height.get() * RIM.get());
        Sweat { pipe: below(self.cold_pipe()), shell: rim.is_some_and(|t| below(Temperature::celsius(t))) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// 20 °C at 50 %: 9.3 °C; 30 °C at 70 %: 23.9 °C (psychrometric tables, from memory).
    #[test]
    fn dew_points_agree_with_the_tables() {
        for (air, share, point) in [(20.0, 0.5, 9.3), (30.0, 0.7, 23.9), (20.0, 1.0, 20.0)] {
            assert!((dew(air, share).to_celsius() - point).abs() < 0.1);
        }
        assert!(dew_point(Climate::SaltFlat, 200) < dew_point(Climate::HarborBend, 200));
    }
}
