//! US customary or SI on the screen. Display only: everything behind the screen is SI.

use plant::heater::Rating;
use quantity::{Amps, Flow, Ohms, Pressure, Seconds, Temperature, Volts, Volume};
use serde::{Deserialize, Serialize};

/// A system of units.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Units {
    /// Degrees Fahrenheit, gallons, pounds per square inch.
    #[default]
    Us,
    /// Degrees Celsius, litres, kilopascals.
    Si,
}

impl Units {
    /// The other one.
    pub const fn other(self) -> Self {
        match self {
            Self::Us => Self::Si,
            Self::Si => Self::Us,
        }
    }

    /// A temperature to the degree.
    pub fn temperature(self, t: Temperature) -> String {
        match self {
            Self::Us => format!("{:.0} °F", t.to_fahrenheit()),
            Self::Si => format!("{:.0} °C", t.to_celsius()),
        }
    }

    /// A reading of the thermometer, to its last digit.
    pub fn thermometer(self, t: Temperature) -> String {
        match self {
            Self::Us => format!("{:.1} °F", t.to_fahrenheit()),
            Self::Si => format!("{:.1} °C", t.to_celsius()),
        }
    }

    /// A volume.
    pub fn volume(self, v: Volume) -> String {
        let (number, unit) = match self {
            Self::Us => (v.to_gallons(), "gal"),
            Self::Si => (v.to_litres(), "L"),
        };
        if number < 9.95 { format!("{number:.1} {unit}") } else { format!("{number:.0} {unit}") }
    }

    /// A nominal size, without decimals.
    pub fn size(self, v: Volume) -> String {
        match self {
            Self::Us => format!("{:.0} gal", v.to_gallons()),
            Self::Si => format!("{:.0} L", v.to_litres()),
        }
    }

    /// A flow.
    pub fn flow(self, f: Flow) -> String {
        match self {
            Self::Us => format!("{:.1} gpm", f.to_gpm()),
            Self::Si => format!("{:.1} L/min", f.to_litres_per_minute()),
        }
    }

    /// A gauge pressure.
    pub fn pressure(self, p: Pressure) -> String {
        match self {
            Self::Us => format!("{:.0} psi", p.to_psi()),
            Self::Si => format!("{:.0} kPa", p.get() / 1e3),
        }
    }
}

/// Volts.
pub fn volts(v: Volts) -> String {
    format!("{:.1} V", v.get())
}

/// A nominal voltage.
pub fn nominal(v: Volts) -> String {
    format!("{:.0} V", v.get())
}

/// Amperes.
pub fn amps(a: Amps) -> String {
    format!("{:.1} A", a.get())
}

/// Ohms, with the prefix a meter shows.
pub fn ohms(r: Ohms) -> String {
    let (number, unit) = scaled(r);
    format!("{number} {unit}")
}

/// The number and the unit of a resistance, apart.
pub fn scaled(r: Ohms) -> (String, &'static str) {
    let r = r.get();
    if r < 1e3 {
        (format!("{r:.1}"), "Ω")
    } else if r < 1e6 {
        (format!("{:.2}", r / 1e3), "kΩ")
    } else {
        (format!("{:.2}", r / 1e6), "MΩ")
    }
}

/// A rating as it is stamped.
pub fn rating(r: Rating) -> String {
    format!("{:.0} W {:.0} V", r.watts.get(), r.volts.get())
}

/// A time of day on the wall clock, 24 hours.
pub fn clock(time: Seconds) -> String {
    let minutes = (time.get() / 60.0).floor().max(0.0) as u64;
    format!("{:02}:{:02}", minutes / 60 % 24, minutes % 60)
}

/// A length of time.
pub fn duration(time: Seconds) -> String {
    let s = time.get();
    if s < 1.0 {
        format!("{s:.2} s")
    } else if s < 60.0 {
        format!("{s:.0} s")
    } else if s < 5400.0 {
        format!("{:.0} min", s / 60.0)
    } else {
        format!("{:.1} h", s / 3600.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_same_quantity_in_both_systems() {
        let t = Temperature::fahrenheit(120.0);
        assert_eq!((Units::Us.temperature(t), Units::Si.temperature(t)), ("120 °F".into(), "49 °C".into()));
        let v = Volume::gallons(50.0);
        assert_eq!((Units::Us.size(v), Units::Si.size(v)), ("50 gal".into(), "189 L".into()));
        assert_eq!(Units::Us.other().other(), Units::Us);
    }

    #[test]
    fn a_clock_turns_over_at_midnight() {
        assert_eq!(clock(Seconds::hours(25.5)), "01:30");
        assert_eq!(clock(Seconds(-1.0)), "00:00");
    }

    #[test]
    fn ohms_change_their_prefix() {
        assert_eq!(ohms(Ohms(12.84)), "12.8 Ω");
        assert_eq!(ohms(Ohms(2_200.0)), "2.20 kΩ");
        assert_eq!(ohms(Ohms(5.5e6)), "5.50 MΩ");
    }
}
