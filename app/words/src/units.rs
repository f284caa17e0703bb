//! Quantities as people read them.

use quantity::{
    Amps, Flow, Kelvins, Kilograms, Metres, Ohms, Pressure, Seconds, Temperature, Volts, Volume, Watts,
};

/// A pound in kilograms, by definition.
const POUND: f64 = 0.453_592_37;
/// An inch in metres, by definition.
const INCH: f64 = 0.0254;

/// Which units are shown. Computation never sees this.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Units {
    /// US customary: °F, psi, gallons.
    #[default]
    Customary,
    /// SI: °C, kPa, litres.
    Si,
}

impl Units {
    /// A temperature, to the degree (to half a degree in SI).
    pub fn temperature(self, t: Temperature) -> String {
        match self {
            Self::Customary => format!("{} °F", whole(t.to_fahrenheit())),
            Self::Si => format!("{:.1} °C", zero(t.to_celsius(), 1)),
        }
    }
    /// A temperature difference.
    pub fn rise(self, k: Kelvins) -> String {
        match self {
            Self::Customary => format!("{} °F", whole(k.to_fahrenheit())),
            Self::Si => format!("{:.1} K", zero(k.get(), 1)),
        }
    }
    /// A gauge pressure.
    pub fn pressure(self, p: Pressure) -> String {
        match self {
            Self::Customary => format!("{} psi", whole(p.to_psi())),
            Self::Si => format!("{} kPa", whole(p.to_bar() * 100.0)),
        }
    }
    /// A volume.
    pub fn volume(self, v: Volume) -> String {
        let (value, unit) = match self {
            Self::Customary => (v.to_gallons(), "gal"),
            Self::Si => (v.to_litres(), "L"),
        };
        if value.abs() >= 9.95 {
            format!("{} {unit}", whole(value))
        } else {
            format!("{:.1} {unit}", zero(value, 1))
        }
    }
    /// A nominal size, without decimals.
    pub fn size(self, v: Volume) -> String {
        match self {
            Self::Customary => format!("{} gal", whole(v.to_gallons())),
            Self::Si => format!("{} L", whole(v.to_litres())),
        }
    }
    /// A length of a part.
    pub fn length(self, l: Metres) -> String {
        match self {
            Self::Customary => format!("{} in", whole(l.get() / INCH)),
            Self::Si => format!("{} mm", whole(l.get() * 1e3)),
        }
    }
    /// A mass.
    pub fn mass(self, m: Kilograms) -> String {
        match self {
            Self::Customary => format!("{} lb", whole(m.get() / POUND)),
            Self::Si => format!("{} kg", whole(m.get())),
        }
    }
    /// A flow.
    pub fn flow(self, f: Flow) -> String {
        match self {
            Self::Customary => format!("{:.1} gpm", zero(f.to_gpm(), 1)),
            Self::Si => format!("{:.1} L/min", zero(f.to_litres_per_minute(), 1)),
        }
    }
    /// Volts as a meter shows them.
    pub fn volts(self, v: Volts) -> String {
        format!("{:.1} V", zero(v.get(), 1))
    }
    /// Amperes as a clamp shows them.
    pub fn amps(self, a: Amps) -> String {
        format!("{:.1} A", zero(a.get(), 1))
    }
    /// A small current through a body.
    pub fn milliamps(self, a: Amps) -> String {
        let ma = a.get() * 1e3;
        if ma.abs() >= 9.95 { format!("{} mA", whole(ma)) } else { format!("{:.1} mA", zero(ma, 1)) }
    }
    /// Power.
    pub fn watts(self, w: Watts) -> String {
        format!("{} W", whole(w.get()))
    }
    /// A resistance with a fitting prefix.
    pub fn ohms(self, o: Ohms) -> String {
        let r = o.get();
        match r.abs() {
            x if x < 99.95 => format!("{:.1} Ω", zero(r, 1)),
            x if x < 999.5 => format!("{} Ω", whole(r)),
            x if x < 999_500.0 => format!("{} kΩ", significant(r / 1e3)),
            x if x < 999_500_000.0 => format!("{} MΩ", significant(r / 1e6)),
            _ => format!("{} GΩ", significant(r / 1e9)),
        }
    }
    /// A length of time in words short enough for a log.
    pub fn duration(self, s: Seconds) -> String {
        let s = s.get();
        // A minute and an hour bear their own names, not sixty of the next.
        let sixty = |count: f64| (59.5..=60.5).contains(&count);
        if s < 1.0 {
            format!("{s:.2} s")
        } else if s < 90.0 && !sixty(s) {
            format!("{} s", whole(s))
        } else if s < 5400.0 && !sixty(s / 60.0) {
            format!("{} min", whole(s / 60.0))
        } else {
            let hours = format!("{:.1}", s / 3600.0);
            format!("{} h", hours.trim_end_matches(".0"))
        }
    }
    /// A time of day from seconds since midnight.
    pub fn clock(self, s: Seconds) -> String {
        let minutes = clock_minutes(s).rem_euclid(1440.0) as u32;
        format!("{:02}:{:02}", minutes / 60, minutes % 60)
    }
    /// The day of a time, 1 that of its midnight, to the minute that the clock shows.
    pub fn day(self, s: Seconds) -> u32 {
        (clock_minutes(s) / 1440.0) as u32 + 1
    }
}

/// Minutes since midnight that a clock shows.
fn clock_minutes(s: Seconds) -> f64 {
    (s.get() / 60.0 + 1e-6).floor()
}

/// Rounded, never "-0".
fn whole(x: f64) -> String {
    format!("{:.0}", zero(x, 0))
}

/// Drops the sign of what rounds to nothing at so many decimals.
fn zero(x: f64, decimals: u32) -> f64 {
    let half = [0.5, 0.05, 0.005].get(decimals as usize).copied().unwrap_or(0.0005);
    if x.abs() < half { 0.0 } else { x }
}

fn significant(x: f64) -> String {
    match x.abs() {
        a if a >= 99.95 => format!("{x:.0}"),
        a if a >= 9.995 => format!("{x:.1}"),
        _ => format!("{x:.2}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_look_as_on_an_instrument() {
        let u = Units::Customary;
        assert_eq!(u.volts(Volts(-0.01)), "0.0 V");
        assert_eq!(u.ohms(Ohms(12.84)), "12.8 Ω");
        assert_eq!(u.ohms(Ohms(20_130.0)), "20.1 kΩ");
        assert_eq!(u.ohms(Ohms(5.5e8)), "550 MΩ");
        assert_eq!(u.temperature(Temperature::fahrenheit(119.7)), "120 °F");
        assert_eq!(Units::Si.temperature(Temperature::celsius(48.94)), "48.9 °C");
        assert_eq!(u.size(Volume::gallons(50.0)), "50 gal");
        assert_eq!(Units::Si.size(Volume::gallons(50.0)), "189 L");
        assert_eq!(Units::Si.pressure(Pressure::psi(150.0)), "1034 kPa");
        let lasts = |seconds| u.duration(Seconds(seconds));
        assert_eq!([59.0, 60.0, 75.0, 90.0].map(lasts), ["59 s", "1 min", "75 s", "2 min"]);
        assert_eq!([3540.0, 3600.0, 4500.0].map(lasts), ["59 min", "1 h", "75 min"]);
        assert_eq!([5400.0, 7200.0, 86_400.0, 72_000.0].map(lasts), ["1.5 h", "2 h", "24 h", "20 h"]);
        assert_eq!(u.clock(Seconds(9.0 * 3600.0 + 24.0 * 60.0)), "09:24");
    }
}
