//! The clamp: current by the field around a conductor. Around two it shows the length of their phasor sum.

use quantity::{Constant, Tag};

use super::class::{Class, Range, Scale};

quantity::constants! {
    /// Where the display ends.
    pub const END: Constant = Constant::new("end of the clamp", 1000.0, "A", Tag::CommonPractice);
}

/// Amperes by clamp.
pub const AMPS: Scale = Scale {
    name: "clamp",
    ranges: &[
        Range { unit: "A", size: 1.0, top: 599.9, decimals: 1 },
        Range { unit: "A", size: 1.0, top: 1000.0, decimals: 0 },
    ],
    class: Class { percent: 2.0, digits: 5.0, tag: Tag::CommonPractice },
    least: Constant::new("least amperes on the clamp", 0.05, "A", Tag::CommonPractice),
    settles: Constant::new("clamp settles", 1.0, "s", Tag::CommonPractice),
};
