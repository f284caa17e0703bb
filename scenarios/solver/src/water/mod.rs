//! Properties of liquid water, 0 to 110 °C, 0.1 to 1.1 MPa: polynomials in plain arithmetic.
//!
//! Fitted to IAPWS-97 region 1 (the industrial formulation of the International Association for the
//! Properties of Water and Steam) at 101 325 Pa, extended as metastable liquid above 100 °C, with a linear
//! correction for pressure. Measured against it by `tests/reference/water/check.py`: density within
//! 0.003 kg/m³, heat capacity within 0.01 %, saturation temperature as the standard's own equation.
//!
//! Temperatures are °C, pressures Pa absolute, everything else SI. Outside the range the argument is held
//! at the nearer end, so that no caller can leave the fit; NaN stays NaN.

#[cfg(test)]
mod tests;

use quantity::{Constant, Tag};

/// Where the fits come from.
const FIT: Tag = Tag::Computed(
    "least squares on IAPWS-97 region 1 at one atmosphere; checked against it in tests/reference/water",
);

quantity::constants! {
    /// Standard atmosphere.
    const STANDARD_ATMOSPHERE: Constant =
        Constant::new("standard atmosphere", 101_325.0, "Pa", Tag::Published("ISO 2533, definition"));
    /// Standard acceleration of free fall.
    const FREE_FALL: Constant = Constant::new(
        "standard acceleration of free fall",
        9.806_65,
        "m/s²",
        Tag::Published("third CGPM, 1901, definition"),
    );
    /// Ends of the fits.
    const FITTED: Constant<(f64, f64)> =
        Constant::new("ends of the fits of water", (0.0, 112.0), "°C", Tag::Model("what a heater's water can be"));
    /// Heat capacity past the range.
    const BEYOND: Constant = Constant::new(
        "heat capacity of water past the fits",
        4_220.0,
        "J/(kg·K)",
        Tag::Model("a straight line, so that enthalpy can always be turned back"),
    );
    /// Density of water, by powers of hundreds of °c.
    const DENSITY_FIT: Constant<[f64; 8]> = Constant::new(
        "density of water, by powers of hundreds of °C",
        [
            999.844_982_159_479_4,
            6.682_237_918_375_554,
            -89.548_914_388_557_58,
            93.593_168_795_978_1,
            -103.451_056_239_286_8,
            81.580_682_844_491_21,
            -37.981_264_262_773_18,
            7.634_609_695_510_928,
        ],
        "kg/m³",
        FIT,
    );
    /// Heat capacity of water, by powers of hundreds of °c.
    const HEAT_CAPACITY_FIT: Constant<[f64; 7]> = Constant::new(
        "heat capacity of water, by powers of hundreds of °C",
        [
            4_219.208_902_896_689,
            -334.772_702_521_710_9,
            1_193.465_483_643_115,
            -2_450.753_314_880_545_5,
            2_988.179_172_615_94,
            -1_864.237_133_822_35,
            465.529_957_459_944_3,
        ],
        "J/(kg·K)",
        FIT,
    );
    /// Slope of the heat capacity with pressure, 1e-10/Pa.
    const HEAT_CAPACITY_SLOPE_FIT: Constant<[f64; 4]> = Constant::new(
        "slope of the heat capacity with pressure, by powers of hundreds of °C",
        [-11.453_441_547_938_679, 24.935_964_274_323_776, -31.486_021_031_535_728, 12.409_756_737_485_68],
        "1e-10/Pa",
        FIT,
    );
    /// °C from the enthalpy in units of 100 kJ/kg; undoes [`enthalpy`] within 2e-5 K.
    const TEMPERATURE_FIT: Constant<[f64; 8]> = Constant::new(
        "temperature from enthalpy, by powers of 100 kJ/kg",
        [
            1.345_434_097_605_019_7e-5,
            23.700_685_810_710_517,
            0.225_266_002_881_026_86,
            -0.126_654_374_349_216_97,
            0.046_266_173_576_419_996,
            -0.010_749_487_712_666_522,
            0.001_332_132_496_887_299_7,
            -6.789_395_815_622_97e-5,
        ],
        "°C",
        FIT,
    );
    /// Litres per kilogram from the enthalpy in units of 100 kJ/kg; agrees with [`density`] within 3e-7.
    const SPECIFIC_VOLUME_FIT: Constant<[f64; 8]> = Constant::new(
        "volume of a kilogram, by powers of 100 kJ/kg",
        [
            1.000_155_245_767_223_1,
            -0.001_590_299_183_222_886_2,
            0.005_049_084_056_536_836,
            -0.001_216_739_683_387_606_6,
            0.000_324_021_412_718_543,
            -6.016_423_646_453_739e-5,
            6.607_010_421_524_43e-6,
            -3.133_615_599_605_802e-7,
        ],
        "L/kg",
        FIT,
    );
    /// Isothermal compressibility, 1e-10/Pa.
    const COMPRESSIBILITY_FIT: Constant<[f64; 5]> = Constant::new(
        "compressibility of water, by powers of hundreds of °C",
        [
            5.077_645_574_181_527,
            -3.562_647_884_384_425_3,
            6.080_015_388_088_569,
            -4.005_012_543_131_456,
            1.291_946_119_866_539_4,
        ],
        "1e-10/Pa",
        FIT,
    );
    /// IAPWS-97 table 34: n1 to n10.
    const SATURATION_FIT: Constant<[f64; 10]> = Constant::new(
        "coefficients n1 to n10 of the saturation line",
        [
            0.116_705_214_527_67e4,
            -0.724_213_167_032_06e6,
            -0.170_738_469_400_92e2,
            0.120_208_247_024_70e5,
            -0.323_255_503_223_33e7,
            0.149_151_086_135_30e2,
            -0.482_326_573_615_91e4,
            0.405_113_405_420_57e6,
            -0.238_555_575_678_49,
            0.650_175_348_447_98e3,
        ],
        "1",
        Tag::Published("IAPWS-97, table 34"),
    );
}

/// Standard atmosphere, Pa.
pub const ATMOSPHERE: f64 = STANDARD_ATMOSPHERE.get();
/// Standard acceleration of free fall, m/s².
pub const GRAVITY: f64 = FREE_FALL.get();
/// Lower and upper end of the fits, °C.
pub const RANGE: (f64, f64) = FITTED.get();

const DENSITY: [f64; 8] = DENSITY_FIT.get();
const HEAT_CAPACITY: [f64; 7] = HEAT_CAPACITY_FIT.get();
/// Slope of the heat capacity with pressure, 1e-10/Pa.
const HEAT_CAPACITY_SLOPE: [f64; 4] = HEAT_CAPACITY_SLOPE_FIT.get();
/// °C from the enthalpy in units of 100 kJ/kg; undoes [`enthalpy`] within 2e-5 K.
const TEMPERATURE: [f64; 8] = TEMPERATURE_FIT.get();
/// Litres per kilogram from the enthalpy in units of 100 kJ/kg; agrees with [`density`] within 3e-7.
const SPECIFIC_VOLUME: [f64; 8] = SPECIFIC_VOLUME_FIT.get();
/// Enthalpy of liquid at the upper end of the fits, J/kg.
const TOP: f64 = 469_736.0;

/// Isothermal compressibility, 1e-10/Pa.
const COMPRESSIBILITY: [f64; 5] = COMPRESSIBILITY_FIT.get();

fn poly<const N: usize>(coefficients: &[f64; N], x: f64) -> f64 {
    coefficients.iter().rev().fold(0.0, |sum, c| sum * x + c)
}

/// Celsius to hundreds of degrees, held inside the range of the fits.
fn hundreds(celsius: f64) -> f64 {
    celsius.clamp(RANGE.0, RANGE.1) * 0.01
}

/// Density at one atmosphere, kg/m³.
pub fn density(celsius: f64) -> f64 {
    poly(&DENSITY, hundreds(celsius))
}

/// Density at a pressure in Pa absolute, kg/m³.
pub fn density_at(celsius: f64, pascal: f64) -> f64 {
    density(celsius) * (1.0 + compressibility(celsius) * (pascal - ATMOSPHERE))
}

/// Isothermal compressibility, 1/Pa.
pub fn compressibility(celsius: f64) -> f64 {
    poly(&COMPRESSIBILITY, hundreds(celsius)) * 1e-10
}

/// Volume by which a litre at `cold` grows on its way to `hot`, as a fraction: ρc/ρh − 1.
pub fn expansion(cold: f64, hot: f64) -> f64 {
    density(cold) / density(hot) - 1.0
}

/// Specific heat capacity at one atmosphere, J/(kg·K).
pub fn heat_capacity(celsius: f64) -> f64 {
    poly(&HEAT_CAPACITY, hundreds(celsius))
}

/// Specific heat capacity at a pressure in Pa absolute, J/(kg·K).
pub fn heat_capacity_at(celsius: f64, pascal: f64) -> f64 {
    heat_capacity(celsius)
        * (1.0 + poly(&HEAT_CAPACITY_SLOPE, hundreds(celsius)) * 1e-10 * (pascal - ATMOSPHERE))
}

/// Specific enthalpy above liquid at 0 °C, at one atmosphere, J/kg: the integral of [`heat_capacity`].
///
/// Past the range it goes on in a straight line, so that it can always be turned back.
pub fn enthalpy(celsius: f64) -> f64 {
    let x = hundreds(celsius);
    let inside =
        HEAT_CAPACITY.iter().enumerate().rev().fold(0.0, |sum, (i, c)| sum * x + c / (i as f64 + 1.0));
    inside * x * 100.0 + (celsius - celsius.clamp(RANGE.0, RANGE.1)) * BEYOND.get()
}

/// Temperature in °C of liquid with this specific enthalpy in J/kg: the inverse of [`enthalpy`].
pub fn temperature(enthalpy: f64) -> f64 {
    let inside = enthalpy.clamp(0.0, TOP);
    poly(&TEMPERATURE, inside * 1e-5) + beyond(enthalpy, inside)
}

/// What an enthalpy outside the fits adds to the temperature at their end, K.
#[inline]
fn beyond(enthalpy: f64, inside: f64) -> f64 {
    // No division for what lies inside.
    if enthalpy == inside { 0.0 } else { (enthalpy - inside) / BEYOND.get() }
}

/// Volume in m³ of a kilogram of liquid with this specific enthalpy in J/kg, at one atmosphere.
pub fn specific_volume(enthalpy: f64) -> f64 {
    poly(&SPECIFIC_VOLUME, enthalpy.clamp(0.0, TOP) * 1e-5) * 1e-3
}

/// Temperatures in °C and volumes in m³ of a kilogram for several enthalpies in J/kg, to the bit as [`temperature`] and
/// [`specific_volume`] give them. Side by side they need not wait for each other's sums.
#[inline]
pub fn liquids<const N: usize>(enthalpies: [f64; N]) -> ([f64; N], [f64; N]) {
    let inside = enthalpies.map(|h| h.clamp(0.0, TOP));
    let x = inside.map(|h| h * 1e-5);
    let (mut celsius, mut volume) = ([0.0; N], [0.0; N]);
    for (t, v) in TEMPERATURE.iter().zip(&SPECIFIC_VOLUME).rev() {
        for ((celsius, volume), x) in celsius.iter_mut().zip(&mut volume).zip(&x) {
            *celsius = *celsius * x + t;
            *volume = *volume * x + v;
        }
    }
    for ((celsius, enthalpy), inside) in celsius.iter_mut().zip(&enthalpies).zip(&inside) {
        *celsius += (enthalpy - inside) / BEYOND.get();
    }
    (celsius, volume.map(|v| v * 1e-3))
}

/// Boiling temperature in °C at a pressure in Pa absolute (IAPWS-97 region 4, equation 31).
pub fn saturation_temperature(pascal: f64) -> f64 {
    let beta = (pascal.clamp(611.213, 2.0e6) * 1e-6).sqrt().sqrt();
    let e = beta * beta + SATURATION[2] * beta + SATURATION[5];
    let f = SATURATION[0] * beta * beta + SATURATION[3] * beta + SATURATION[6];
    let g = SATURATION[1] * beta * beta + SATURATION[4] * beta + SATURATION[7];
    let d = 2.0 * g / (-f - (f * f - 4.0 * e * g).sqrt());
    let s = SATURATION[9] + d;
    (s - (s * s - 4.0 * (SATURATION[8] + SATURATION[9] * d)).sqrt()) / 2.0 - 273.15
}

/// Vapour pressure in Pa absolute at a temperature in °C (IAPWS-97 region 4, equation 30).
pub fn saturation_pressure(celsius: f64) -> f64 {
    let kelvin = celsius.clamp(0.0, 210.0) + 273.15;
    let theta = kelvin + SATURATION[8] / (kelvin - SATURATION[9]);
    let a = theta * theta + SATURATION[0] * theta + SATURATION[1];
    let b = SATURATION[2] * theta * theta + SATURATION[3] * theta + SATURATION[4];
    let c = SATURATION[5] * theta * theta + SATURATION[6] * theta + SATURATION[7];
    let root = 2.0 * c / (-b + (b * b - 4.0 * a * c).sqrt());
    root * root * root * root * 1e6
}

/// IAPWS-97 table 34: n1 to n10.
const SATURATION: [f64; 10] = SATURATION_FIT.get();
