//! Low impedance: the meter's own low-impedance volts, which pull stray voltages down to nothing.
//!
//! A two-pole tester (IEC 61243-3) rests on the same effect; the kit has the function, not a second tester.

use quantity::{Constant, Tag};

quantity::constants! {
    /// Input of the low-impedance volts function.
    pub const INPUT: Constant =
        Constant::new("low-impedance input", 3e3, "ohm", Tag::Published("support pages of two makers on ghost voltages"));
}
