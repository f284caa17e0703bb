//! Values a tagged constant can hold, and how they are written down.

use crate::{
    Amps, Farads, Flow, Joules, Kelvins, Kilograms, Metres, Ohms, Pressure, Seconds, Temperature, Volts,
    Volume, Watts,
};

/// A number, a quantity, or a small table of them.
pub trait Figure: Copy + Sync + 'static {
    /// Its SI unit; empty for a bare number and for a row whose parts differ.
    const UNIT: &'static str;

    /// The value without its unit, to six significant figures.
    fn si(&self) -> String;

    /// The value with the units people read, where they are not the SI unit.
    fn usual(&self) -> Option<String> {
        None
    }

    /// The value with its unit, if it has one.
    fn with_unit(&self) -> String {
        if Self::UNIT.is_empty() { self.si() } else { format!("{} {}", self.si(), Self::UNIT) }
    }
}

/// Six significant figures, without the noughts that add nothing; powers of ten outside 1e-3 to 1e7.
fn six(value: f64) -> String {
    if value == 0.0 || !value.is_finite() {
        return format!("{value}");
    }
    let scientific = format!("{value:.5e}");
    let (digits, power) = scientific.split_once('e').unwrap_or((&scientific, "0"));
    let power: i32 = power.parse().unwrap_or(0);
    if !(-3..7).contains(&power) {
        return format!("{} × 10{}", trimmed(digits), raised(power));
    }
    trimmed(&format!("{value:.*}", usize::try_from(5 - power).unwrap_or(0))).to_owned()
}

/// A power of ten as it is written.
fn raised(power: i32) -> String {
    let digit = |c: char| match c {
        '-' => '⁻',
        '1' => '¹',
        '2' => '²',
        '3' => '³',
        // The others follow each other in the character set.
        other => other.to_digit(10).and_then(|d| char::from_u32(0x2070 + d)).unwrap_or(other),
    };
    power.to_string().chars().map(digit).collect()
}

fn trimmed(digits: &str) -> &str {
    if digits.contains('.') { digits.trim_end_matches('0').trim_end_matches('.') } else { digits }
}

macro_rules! whole {
    ($($kind:ty),*) => { $(
        impl Figure for $kind {
            const UNIT: &'static str = "";
            fn si(&self) -> String { self.to_string() }
        }
    )* };
}
whole!(u8, u16, u32, u64, usize, i32, i64, bool);

impl Figure for f64 {
    const UNIT: &'static str = "";
    fn si(&self) -> String {
        six(*self)
    }
}

macro_rules! quantities {
    ($($kind:ident = $unit:literal $(, $usual:expr)?;)*) => { $(
        impl Figure for $kind {
            const UNIT: &'static str = $unit;
            fn si(&self) -> String { six(self.get()) }
            $(fn usual(&self) -> Option<String> { let usual: fn(&Self) -> String = $usual; Some(usual(self)) })?
        }
    )* };
}

quantities! {
    Volts = "V";
    Amps = "A";
    Ohms = "Ω";
    Farads = "F";
    Watts = "W";
    Joules = "J";
    Metres = "m";
    Kilograms = "kg";
    Temperature = "K", |t| format!("{} °C = {} °F", six(t.to_celsius()), six(t.to_fahrenheit()));
    Kelvins = "K", |k| format!("{} °F", six(k.to_fahrenheit()));
    Volume = "m³", |v| format!("{} L = {} gal", six(v.to_litres()), six(v.to_gallons()));
    Flow = "m³/s", |q| format!("{} L/min = {} gpm", six(q.to_litres_per_minute()), six(q.to_gpm()));
    Pressure = "Pa", |p| format!("{} bar = {} psi", six(p.to_bar()), six(p.to_psi()));
}

impl Figure for Seconds {
    const UNIT: &'static str = "s";
    fn si(&self) -> String {
        six(self.get())
    }
    fn usual(&self) -> Option<String> {
        let minutes = self.to_minutes();
        if minutes < 2.0 {
            None
        } else if minutes < 120.0 {
            Some(format!("{} min", six(minutes)))
        } else {
            Some(format!("{} h", six(minutes / 60.0)))
        }
    }
}

impl<T: Figure, const N: usize> Figure for [T; N] {
    const UNIT: &'static str = T::UNIT;
    fn si(&self) -> String {
        self.as_slice().iter().map(Figure::si).collect::<Vec<_>>().join("; ")
    }
    fn usual(&self) -> Option<String> {
        usual_of(self)
    }
}

impl<T: Figure> Figure for &'static [T] {
    const UNIT: &'static str = T::UNIT;
    fn si(&self) -> String {
        self.iter().map(Figure::si).collect::<Vec<_>>().join("; ")
    }
    fn usual(&self) -> Option<String> {
        usual_of(self)
    }
}

fn usual_of<T: Figure>(values: &[T]) -> Option<String> {
    values.iter().map(Figure::usual).collect::<Option<Vec<_>>>().map(|all| all.join("; "))
}

/// A table inside a row is told apart from the rows of the table around it.
fn inner(text: &str) -> String {
    text.replace("; ", " / ")
}

macro_rules! rows {
    ($($($part:ident)*;)*) => { $(
        impl<$($part: Figure),*> Figure for ($($part,)*) {
            const UNIT: &'static str = "";
            fn si(&self) -> String {
                #[allow(non_snake_case)]
                let ($($part,)*) = self;
                [$(inner(&$part.with_unit())),*].join(", ")
            }
            fn usual(&self) -> Option<String> {
                #[allow(non_snake_case)]
                let ($($part,)*) = self;
                let differ = [$($part.usual().is_some()),*].contains(&true);
                differ.then(|| [$($part.usual().unwrap_or_else(|| $part.with_unit())),*].join(", "))
            }
        }
    )* };
}

rows! {
    A B;
    A B C;
    A B C D;
    A B C D E;
    A B C D E F;
    A B C D E F G;
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_short_and_keep_six_figures() {
        let cases = [
            (0.0, "0"),
            (1.0, "1"),
            (-0.5, "-0.5"),
            (0.97, "0.97"),
            (413_685.4, "413685"),
            (2.5e-9, "2.5 × 10⁻⁹"),
            (0.00132, "0.00132"),
            (10e6, "1 × 10⁷"),
            (6_894.757_293, "6894.76"),
            (1000.0, "1000"),
            (6.02e23, "6.02 × 10²³"),
            (999_999.96, "1000000"),
        ];
        for (value, written) in cases {
            assert_eq!(six(value), written);
        }
    }

    #[test]
    fn quantities_are_told_as_people_read_them() {
        assert_eq!(Temperature::fahrenheit(120.0).usual().as_deref(), Some("48.8889 °C = 120 °F"));
        assert_eq!(Volume::litres(0.5).usual().as_deref(), Some("0.5 L = 0.132086 gal"));
        assert_eq!(Seconds::hours(3.0).usual().as_deref(), Some("3 h"));
        assert_eq!(Seconds(30.0).usual(), None);
        assert_eq!([Kelvins(1.0), Kelvins(2.0)].usual().as_deref(), Some("1.8 °F; 3.6 °F"));
        assert_eq!((Kelvins(5.0), 3_u16).usual().as_deref(), Some("9 °F, 3"));
    }
}
