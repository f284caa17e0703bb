//! The tank as the layered solver takes it: its cylinder, its loss, its inlet, its heat sources.

use quantity::Metres;
use solver::tank::Tank;

use crate::heater::Plate;
use crate::parts::Level;
use crate::waterworks::DipTube;

/// Half the height over which the two legs of an element's coil lie: 25 mm (model; a loop of 2 in).
pub(super) const HALF_COIL: f64 = 0.025;

/// The cylinder of a heater.
pub(crate) fn vessel(plate: &Plate) -> Tank {
    Tank::of_volume(plate.content().get(), plate.height.get()).unwrap_or_default()
}

/// Standby loss of the full tank in W/K, from the energy factor (Burch and Erickson 2004; trade sheet 4.9,
/// published): the daily load of 41 094 Btu of the test, its 135 °F in 67.5 °F air.
pub fn standby_loss(plate: &Plate) -> f64 {
    const WATTS_PER_BTU_PER_HOUR: f64 = 0.293_071_07;
    let btu_per_hour_and_degree = 41_094.0 * (1.0 / plate.energy_factor - 1.0) / ((135.0 - 67.5) * 24.0);
    btu_per_hour_and_degree * WATTS_PER_BTU_PER_HOUR * 1.8
}

/// Height at which cold water leaves the dip tube.
///
/// Whole: 7 in above the bottom (trade sheet 4.15). Broken near the top: in the top third (4.15), here at
/// 0.92 of the height (model). Missing: at the nipple.
pub(super) fn inlet_height(plate: &Plate, tube: DipTube) -> Metres {
    match tube {
        DipTube::Whole => Metres(0.178),
        DipTube::Broken => plate.height * 0.92,
        DipTube::Missing => plate.height * 0.99,
    }
}

/// Height of an element.
pub(super) fn element_height(plate: &Plate, level: Level) -> f64 {
    match level {
        Level::Upper => plate.upper_element.get(),
        Level::Lower => plate.lower_element.get(),
    }
}

/// Height of a thermostat on the wall: beside the element's flange, 70 mm above its middle (model).
pub(super) fn control_height(plate: &Plate, level: Level) -> f64 {
    element_height(plate, level) + 0.07
}

/// Height of the limit: just above the upper thermostat.
pub(super) fn limit_height(plate: &Plate) -> f64 {
    control_height(plate, Level::Upper) + 0.04
}

/// Height of an off-peak circuit's limit: just above the lower thermostat.
pub(super) fn lower_limit_height(plate: &Plate) -> f64 {
    limit_height(plate) - plate.upper_element.get() + plate.lower_element.get()
}

/// Height of the relief valve's probe: in the top 6 in of the tank (trade sheet 5.1, published).
pub(super) fn relief_height(plate: &Plate) -> f64 {
    plate.height.get() - 0.10
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::HeaterModel;

    /// Check case 17 (trade sheet 4.10, computed from the published formula): 50 gal, EF 0.904.
    #[test]
    fn loss_follows_the_energy_factor() {
        let plate = HeaterModel::Tall50At208.plate();
        assert!((plate.energy_factor - 0.904).abs() < 1e-9);
        assert!((standby_loss(&plate) - 1.42).abs() < 0.01, "{}", standby_loss(&plate));
        assert!((standby_loss(&plate) / 0.527_528 - 2.69).abs() < 0.02);
    }
}
