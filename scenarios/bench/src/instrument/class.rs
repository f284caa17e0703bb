//! What is common to all displays: ranges with a last digit, an accuracy class, a largest and a least reading.

use quantity::{Constant, Seconds, Tag};

/// An accuracy class as data sheets print it: plus or minus so many per cent of the reading and so many of the
/// last digit.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Class {
    /// Per cent of the reading.
    pub percent: f64,
    /// Steps of the last digit.
    pub digits: f64,
    /// Where it comes from.
    pub tag: Tag,
}

/// One range of a display.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Range {
    /// Unit as printed beside the figures.
    pub unit: &'static str,
    /// That unit in SI.
    pub size: f64,
    /// Largest figure, in that unit.
    pub top: f64,
    /// Figures behind the point.
    pub decimals: u8,
}

impl Range {
    /// Value of the last digit, in SI.
    pub const fn step(&self) -> f64 {
        let mut step = self.size;
        let mut left = self.decimals;
        while left > 0 {
            step /= 10.0;
            left -= 1;
        }
        step
    }
}

/// A function of an instrument: its ranges, smallest first, and its class.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Scale {
    /// What it measures.
    pub name: &'static str,
    /// Ranges, smallest first.
    pub ranges: &'static [Range],
    /// Accuracy class.
    pub class: Class,
    /// Readings below this are shown as nothing, in SI.
    pub least: Constant,
    /// Time until the display stands still. Every act that reads it takes longer than this.
    pub settles: Constant,
}

/// Figures on a display.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Figures {
    /// The number with all its digits.
    pub number: String,
    /// The unit beside it.
    pub unit: &'static str,
}

quantity::constants! {
    /// A calibrated specimen lies within this share of its class: what is left is kept for ageing and the season.
    pub const GUARD: Constant =
        Constant::new("share of the class a calibrated specimen uses", 0.7, "1", Tag::CommonPractice);
}

impl Scale {
    /// The range that shows a value, and the value as it shows it. `None` is beyond the last range.
    fn fit(&self, value: f64) -> Option<(&'static Range, f64)> {
        let size = value.abs();
        self.ranges.iter().find_map(|range| {
            let shown = to_digit(value, range.step());
            // The figure has to fit after it is rounded: 5.9996 on a range that ends at 5.999 goes up one.
            let most = (range.top + 0.5 * range.step() / range.size) * range.size;
            (size <= most && shown.abs() <= most).then_some((range, shown))
        })
    }

    /// What a specimen shows of a true value; `None` is over-range. `error` is its place within its class,
    /// -1 to 1.
    pub fn read(&self, value: f64, error: f64) -> Option<f64> {
        if value.abs() < self.least.get() {
            return Some(0.0);
        }
        self.fit(value * (1.0 + error * self.class.percent / 100.0)).map(|(_, shown)| shown)
    }

    /// A reading in figures, on the range that shows it.
    pub fn figures(&self, reading: f64) -> Option<Figures> {
        let (range, shown) = self.fit(reading)?;
        let number = format!("{:.*}", usize::from(range.decimals), shown / range.size);
        Some(Figures { number, unit: range.unit })
    }

    /// How far a reading may be from the truth by the class.
    pub fn uncertainty(&self, reading: f64) -> f64 {
        let step = self.fit(reading).map_or(0.0, |(range, _)| range.step());
        reading.abs() * self.class.percent / 100.0 + self.class.digits * step
    }

    /// The difference of two readings of one specimen that its class leaves open: its own error is in both and
    /// cancels, so one width of the class is enough.
    pub fn leaves_open(&self, a: f64, b: f64) -> f64 {
        self.uncertainty(a).max(self.uncertainty(b))
    }

    /// The end of its last range, in SI.
    pub fn top(&self) -> f64 {
        self.ranges.last().map_or(0.0, |range| range.top * range.size)
    }

    /// The longest this function takes to stand still.
    pub const fn settling(&self) -> Seconds {
        Seconds(self.settles.get())
    }
}

/// Rounds to a step of the display. Never a negative zero.
pub fn to_digit(value: f64, step: f64) -> f64 {
    let steps = (value / step).round();
    // Dividing by a whole number keeps decimal steps tidy: 128 / 10 is 12.8, 128 * 0.1 is not.
    let per = (1.0 / step).round();
    let rounded = if per >= 1.0 && (per * step - 1.0).abs() < 1e-9 { steps / per } else { steps * step };
    rounded + 0.0
}

#[cfg(test)]
mod tests {
    use super::*;

    const SCALE: Scale = Scale {
        name: "test",
        ranges: &[
            Range { unit: "V", size: 1.0, top: 5.999, decimals: 3 },
            Range { unit: "V", size: 1.0, top: 59.99, decimals: 2 },
            Range { unit: "kV", size: 1e3, top: 5.999, decimals: 3 },
        ],
        class: Class { percent: 1.0, digits: 3.0, tag: Tag::CommonPractice },
        least: Constant::new("least", 0.01, "V", Tag::CommonPractice),
        settles: Constant::new("settles", 1.0, "s", Tag::CommonPractice),
    };

    #[test]
    fn the_display_ranges_itself() {
        let shown =
            |v: f64| SCALE.read(v, 0.0).and_then(|r| SCALE.figures(r)).map(|f| f.number + " " + f.unit);
        assert_eq!(shown(1.23449).as_deref(), Some("1.234 V"));
        assert_eq!(shown(5.9996).as_deref(), Some("6.00 V"));
        assert_eq!(shown(240.04).as_deref(), Some("0.240 kV"));
        assert_eq!(shown(0.004).as_deref(), Some("0.000 V"));
        assert_eq!(shown(6000.0), None);
        assert_eq!(SCALE.read(-0.004, 0.0).map(f64::to_bits), Some(0.0f64.to_bits()));
    }

    /// Whatever a range shows, the figures of that reading are on the same range: nothing jumps.
    #[test]
    fn a_reading_stands_on_its_own_range() {
        for i in 0..60_000 {
            let value = f64::from(i) * 0.0997;
            let Some(reading) = SCALE.read(value, 0.37) else { continue };
            assert_eq!(SCALE.read(reading, 0.0), Some(reading), "{value}");
        }
    }

    #[test]
    fn a_specimen_stays_within_its_class() {
        for i in 1..600 {
            let value = f64::from(i) * 0.1;
            for error in [-1.0, -0.5, 0.0, 1.0] {
                let Some(reading) = SCALE.read(value, error) else { continue };
                assert!((reading - value).abs() <= SCALE.uncertainty(reading) * 1.02 + 1e-9, "{value}");
            }
        }
    }
}
