//! The thermometer: a thermocouple of type K on a handheld display, to a tenth of a degree.

use quantity::{Constant, Tag};

quantity::constants! {
    /// Its probe may be off by this much either way.
    pub const CLASS: Constant = Constant::new(
        "thermometer class",
        1.5,
        "K",
        Tag::Published("IEC 60584, type K, class 1: 1.5 K from -40 to 375 °C"),
    );
    /// Last digit, in degrees Fahrenheit.
    pub const DIGIT: Constant = Constant::new("thermometer digit", 0.1, "°F", Tag::CommonPractice);
    /// Until a probe in running water stands still.
    pub const SETTLES: Constant = Constant::new("thermometer settles", 20.0, "s", Tag::CommonPractice);
}
