//! Newtypes for the quantities that cross a public edge.

use serde::Serialize;

mod written;

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident $(, $unit:literal = $scale:expr, $offset:expr)* $(,)?) => {
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, PartialOrd, Debug, Default, Serialize)]
        #[serde(transparent)]
        pub struct $name(pub f64);

        impl<'de> serde::Deserialize<'de> for $name {
            /// A bare number in the SI unit, or text with a unit such as `"120 F"`.
            fn deserialize<D: serde::Deserializer<'de>>(d: D) -> Result<Self, D::Error> {
                let written = written::Written { what: stringify!($name), units: &[$(($unit, $scale, $offset)),*] };
                written.read(d).map(Self)
            }
        }

        impl $name {
            /// The bare number, in the SI unit of the type.
            pub const fn get(self) -> f64 {
                self.0
            }
            /// Whether two values lie within a tolerance of each other.
            pub fn near(self, other: Self, tolerance: Self) -> bool {
                (self.0 - other.0).abs() <= tolerance.0
            }
            /// The value without its sign.
            #[must_use]
            pub fn abs(self) -> Self {
                Self(self.0.abs())
            }
        }
        impl std::ops::Add for $name {
            type Output = Self;
            fn add(self, rhs: Self) -> Self { Self(self.0 + rhs.0) }
        }
        impl std::ops::Sub for $name {
            type Output = Self;
            fn sub(self, rhs: Self) -> Self { Self(self.0 - rhs.0) }
        }
        impl std::ops::AddAssign for $name {
            fn add_assign(&mut self, rhs: Self) { self.0 += rhs.0 }
        }
        impl std::ops::SubAssign for $name {
            fn sub_assign(&mut self, rhs: Self) { self.0 -= rhs.0 }
        }
        impl std::ops::Mul<f64> for $name {
            type Output = Self;
            fn mul(self, rhs: f64) -> Self { Self(self.0 * rhs) }
        }
        impl std::ops::Div<f64> for $name {
            type Output = Self;
            fn div(self, rhs: f64) -> Self { Self(self.0 / rhs) }
        }
        impl std::ops::Div<$name> for $name {
            type Output = f64;
            fn div(self, rhs: Self) -> f64 { self.0 / rhs.0 }
        }
    };
}

quantity!(/** Electric potential difference in volts, RMS where it alternates. */ Volts, "V" = 1.0, 0.0);
quantity!(/** Current in amperes, RMS where it alternates. */ Amps, "A" = 1.0, 0.0);
quantity!(/** Resistance in ohms. */ Ohms, "ohm" = 1.0, 0.0);
quantity!(/** Capacitance in farads. */ Farads);
quantity!(/** Power in watts. */ Watts, "W" = 1.0, 0.0, "kW" = 1e3, 0.0);
quantity!(/** Energy in joules. */ Joules);
quantity!(/** Absolute temperature in kelvin. */ Temperature, "K" = 1.0, 0.0, "C" = 1.0, ZERO_CELSIUS, "F" = 1.0 / 1.8, ZERO_CELSIUS - 32.0 / 1.8);
quantity!(/** Temperature difference in kelvin. */ Kelvins, "K" = 1.0, 0.0, "F" = 1.0 / 1.8, 0.0);
quantity!(/** Volume in cubic metres. */ Volume, "m3" = 1.0, 0.0, "L" = 1e-3, 0.0, "gal" = GALLON, 0.0);
quantity!(/** Volume flow in cubic metres a second. */ Flow, "m3/s" = 1.0, 0.0, "L/min" = 1e-3 / 60.0, 0.0, "gpm" = GALLON / 60.0, 0.0);
quantity!(/** Gauge pressure in pascals. */ Pressure, "Pa" = 1.0, 0.0, "bar" = 1e5, 0.0, "psi" = PSI, 0.0);
quantity!(/** Length or height in metres. */ Metres, "m" = 1.0, 0.0);
quantity!(/** Mass in kilograms. */ Kilograms);
quantity!(/** Time in seconds. */ Seconds, "s" = 1.0, 0.0, "min" = 60.0, 0.0, "h" = 3600.0, 0.0);

/// 0 °C in kelvin (definition, BIPM SI brochure, 9th edition).
const ZERO_CELSIUS: f64 = 273.15;
/// One US gallon in cubic metres (NIST SP 811, appendix B).
const GALLON: f64 = 3.785_411_784e-3;
/// One pound-force per square inch in pascals (NIST SP 811, appendix B).
const PSI: f64 = 6_894.757_293_168;

impl Temperature {
    /// From degrees Celsius.
    pub const fn celsius(c: f64) -> Self {
        Self(c + ZERO_CELSIUS)
    }
    /// From degrees Fahrenheit.
    pub const fn fahrenheit(f: f64) -> Self {
        Self::celsius((f - 32.0) / 1.8)
    }
    /// In degrees Celsius.
    pub const fn to_celsius(self) -> f64 {
        self.0 - ZERO_CELSIUS
    }
    /// In degrees Fahrenheit.
    pub const fn to_fahrenheit(self) -> f64 {
        self.to_celsius() * 1.8 + 32.0
    }
    /// This temperature raised by a difference.
    #[must_use]
    pub const fn plus(self, rise: Kelvins) -> Self {
        Self(self.0 + rise.0)
    }
    /// How far this lies above another.
    pub const fn above(self, other: Self) -> Kelvins {
        Kelvins(self.0 - other.0)
    }
}

impl Kelvins {
    /// From a difference in degrees Fahrenheit.
    pub const fn fahrenheit(f: f64) -> Self {
        Self(f / 1.8)
    }
    /// As a difference in degrees Fahrenheit.
    pub const fn to_fahrenheit(self) -> f64 {
        self.0 * 1.8
    }
}

impl Volume {
    /// From US gallons.
    pub const fn gallons(g: f64) -> Self {
        Self(g * GALLON)
    }
    /// In US gallons.
    pub const fn to_gallons(self) -> f64 {
        self.0 / GALLON
    }
    /// From litres.
    pub const fn litres(l: f64) -> Self {
        Self(l * 1e-3)
    }
    /// In litres.
    pub const fn to_litres(self) -> f64 {
        self.0 * 1e3
    }
}

impl Flow {
    /// From US gallons a minute.
    pub const fn gpm(g: f64) -> Self {
        Self(g * GALLON / 60.0)
    }
    /// In US gallons a minute.
    pub const fn to_gpm(self) -> f64 {
        self.0 * 60.0 / GALLON
    }
    /// In litres a minute.
    pub const fn to_litres_per_minute(self) -> f64 {
        self.0 * 6e4
    }
}

impl Pressure {
    /// From pounds per square inch, gauge.
    pub const fn psi(p: f64) -> Self {
        Self(p * PSI)
    }
    /// In pounds per square inch, gauge.
    pub const fn to_psi(self) -> f64 {
        self.0 / PSI
    }
    /// In bar, gauge.
    pub const fn to_bar(self) -> f64 {
        self.0 * 1e-5
    }
}

impl Seconds {
    /// From minutes.
    pub const fn minutes(m: f64) -> Self {
        Self(m * 60.0)
    }
    /// In minutes.
    pub const fn to_minutes(self) -> f64 {
        self.0 / 60.0
    }
    /// From hours.
    pub const fn hours(h: f64) -> Self {
        Self(h * 3600.0)
    }
    /// In hours.
    pub const fn to_hours(self) -> f64 {
        self.0 / 3600.0
    }
    /// From days.
    pub const fn days(d: f64) -> Self {
        Self(d * 86_400.0)
    }
    /// In days.
    pub const fn to_days(self) -> f64 {
        self.0 / 86_400.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn files_may_name_their_unit() {
        let read = |text: &str| serde_json::from_str::<Temperature>(text);
        assert_eq!(read("300.5").unwrap(), Temperature(300.5));
        assert!(read("\"120 F\"").unwrap().near(Temperature::fahrenheit(120.0), Temperature(1e-9)));
        assert!(read("\"120°F\"").unwrap().near(Temperature::fahrenheit(120.0), Temperature(1e-9)));
        assert_eq!(serde_json::from_str::<Volume>("\"5 gal\"").unwrap(), Volume::gallons(5.0));
        assert!(read("\"120 psi\"").is_err() && read("\"F\"").is_err() && read("\"1e999 F\"").is_err());
    }

    #[test]
    fn scales_agree_where_they_meet() {
        assert!((Temperature::fahrenheit(120.0).to_celsius() - 48.888_888_888_888_9).abs() < 1e-9);
        assert!((Temperature::celsius(-40.0).to_fahrenheit() + 40.0).abs() < 1e-9);
        assert!((Volume::gallons(50.0).to_litres() - 189.270_589_2).abs() < 1e-7);
        assert!((Pressure::psi(150.0).to_bar() - 10.342_135_9).abs() < 1e-6);
    }
}
