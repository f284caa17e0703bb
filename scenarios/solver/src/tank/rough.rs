//! Heat capacities that only steer: the books are kept in enthalpy.

use quantity::{Constant, Tag};

quantity::constants! {
    /// Heat capacity of water by volume, for what an eddy carries.
    pub(super) const STIRRED_HEAT: Constant = Constant::new(
        "heat capacity of water by volume, in an eddy",
        4.17e6,
        "J/(m³·K)",
        Tag::Computed("IAPWS-97 at 25 °C"),
    );
    /// By powers of °C, for the implicit prediction of conduction.
    const ROUGH: Constant<[f64; 3]> = Constant::new(
        "heat capacity of water, rough, by powers of °C",
        [4_207.54, -1.235_2, 0.013_323],
        "J/(kg·K)",
        Tag::Computed("a fit of IAPWS-97 within 0.3 %"),
    );
}

/// Heat capacity within 0.3 %, J/(kg·K).
pub(super) fn heat_capacity(celsius: f64) -> f64 {
    let [constant, slope, bend] = ROUGH.get();
    constant + celsius * (slope + celsius * bend)
}
