//! The tank as the layered solver takes it: its cylinder, its loss, its inlet, its heat sources.

use quantity::{Constant, Kelvins, Metres, Seconds, Tag};
use solver::tank::Tank;

use crate::heater::Plate;
use crate::parts::Level;
use crate::waterworks::DipTube;

/// Half the height over which the two legs of an element's coil lie, m.
pub(super) const HALF_COIL: f64 = COIL.get() / 2.0;

/// The cylinder of a heater.
pub(crate) fn vessel(plate: &Plate) -> Tank {
    Tank::of_volume(plate.content().get(), plate.height.get()).unwrap_or_default()
}

/// Standby loss of the full tank in W/K, from the energy factor and the load and temperatures of its test.
pub fn standby_loss(plate: &Plate) -> f64 {
    let ((load, water), air) = (TEST.get(), TEST_AIR.get());
    let day = Seconds::days(1.0).to_hours();
    let btu_per_hour_and_degree = load * (1.0 / plate.energy_factor - 1.0) / ((water - air) * day);
    btu_per_hour_and_degree * WATTS_PER_BTU_PER_HOUR.get() * Kelvins(1.0).to_fahrenheit()
}

/// Height at which cold water leaves the dip tube.
///
/// Whole: near the bottom. Broken: in the top third. Missing: at the nipple.
pub(super) fn inlet_height(plate: &Plate, tube: DipTube) -> Metres {
    match tube {
        DipTube::Whole => WHOLE_TUBE.get(),
        DipTube::Broken => plate.height * BROKEN_TUBE.get(),
        DipTube::Missing => plate.height * NIPPLE.get(),
    }
}

/// Height of an element.
pub(super) fn element_height(plate: &Plate, level: Level) -> f64 {
    match level {
        Level::Upper => plate.upper_element.get(),
        Level::Lower => plate.lower_element.get(),
    }
}

/// Height of a thermostat on the wall: beside the element's flange.
pub(super) fn control_height(plate: &Plate, level: Level) -> f64 {
    element_height(plate, level) + CONTROL_ABOVE.get().get()
}

/// Height of the limit: just above the upper thermostat.
pub(super) fn limit_height(plate: &Plate) -> f64 {
    control_height(plate, Level::Upper) + LIMIT_ABOVE.get().get()
}

/// Height of an off-peak circuit's limit: just above the lower thermostat.
pub(super) fn lower_limit_height(plate: &Plate) -> f64 {
    limit_height(plate) - plate.upper_element.get() + plate.lower_element.get()
}

/// Height of the relief valve's probe: in the top 6 in of the tank.
pub(super) fn relief_height(plate: &Plate) -> f64 {
    plate.height.get() - PROBE_BELOW.get().get()
}

quantity::constants! {
    /// Height over which the two legs of a coil lie.
    const COIL: Constant = Constant::new("height of an element's coil", 0.05, "m", Tag::Model("a loop of 2 in"));
    /// Daily load and water of the test behind an energy factor.
    const TEST: Constant<(f64, f64)> = Constant::new(
        "daily load and water of the energy factor's test",
        (41_094.0, 135.0),
        "Btu, °F",
        Tag::Published("Burch and Erickson 2004; Home Energy Saver documentation, LBNL, water heating"),
    );
    /// Air of that test.
    const TEST_AIR: Constant = Constant::new(
        "air of the energy factor's test",
        67.5,
        "°F",
        Tag::Published("Burch and Erickson 2004; 10 CFR 430 subpart B, appendix E"),
    );
    /// A British thermal unit an hour.
    const WATTS_PER_BTU_PER_HOUR: Constant =
        Constant::new("power of a Btu an hour", 0.293_071_07, "W", Tag::Published("NIST SP 811, appendix B"));
    /// End of a whole dip tube above the bottom.
    const WHOLE_TUBE: Constant<Metres> = Constant::of(
        "end of a whole dip tube above the bottom",
        Metres(0.178),
        Tag::CommonPractice,
    );
    /// End of a broken dip tube over the height of the tank.
    const BROKEN_TUBE: Constant =
        Constant::new("end of a broken dip tube, over the height", 0.92, "", Tag::Model("in the top third"));
    /// Inlet without a dip tube over the height of the tank.
    const NIPPLE: Constant =
        Constant::new("inlet without a dip tube, over the height", 0.99, "", Tag::Model("the nipple in the top"));
    /// Thermostat above the middle of its element.
    const CONTROL_ABOVE: Constant<Metres> =
        Constant::of("thermostat above its element", Metres(0.07), Tag::Model("beside the flange"));
    /// Limit above the upper thermostat.
    const LIMIT_ABOVE: Constant<Metres> =
        Constant::of("limit above the upper thermostat", Metres(0.04), Tag::Model("on the same bracket"));
    /// Middle of the relief valve's probe below the top.
    const PROBE_BELOW: Constant<Metres> = Constant::of(
        "relief valve's probe below the top of the tank",
        Metres(0.10),
        Tag::Published("IPC 504 and Chicago code text: the sensing element lies in the top 6 in"),
    );
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
