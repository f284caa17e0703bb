//! The insulation tester: 500 V direct current.

use quantity::{Constant, Tag};

use super::class::{Class, Range, Scale};

quantity::constants! {
    /// The test voltage.
    pub const TEST_VOLTS: Constant =
        Constant::new("insulation test voltage", 500.0, "V", Tag::Published("element makers' acceptance tests, 500 V DC"));
    /// What the standard lets the whole measurement be wrong by, in per cent: far wider than the class of a sound
    /// tester on the bench.
    pub const OPERATING_UNCERTAINTY: Constant = Constant::new(
        "operating uncertainty of an insulation tester",
        30.0,
        "%",
        Tag::Published("IEC 61557-2:2019, 6.2"),
    );
}

/// Insulation resistance.
pub const OHMS: Scale = Scale {
    name: "insulation",
    ranges: &[
        Range { unit: "MΩ", size: 1e6, top: 59.99, decimals: 2 },
        Range { unit: "MΩ", size: 1e6, top: 599.9, decimals: 1 },
        Range { unit: "MΩ", size: 1e6, top: 1000.0, decimals: 0 },
    ],
    class: Class { percent: 3.0, digits: 5.0, tag: Tag::CommonPractice },
    least: Constant::new("least insulation shown", 0.005e6, "ohm", Tag::CommonPractice),
    settles: Constant::new("insulation settles", 15.0, "s", Tag::CommonPractice),
};
