//! The instruments as data, one file each: ranges, last digits, accuracy classes, what they load a circuit
//! with, and how they mislead.
//!
//! A class is a limit that holds for every specimen. The specimen in the kit has one fixed error within its
//! class, drawn from the drill's seed ([`Kit`]): the same instrument reads the same thing the same way all day,
//! and two readings on it may be compared more closely than its class alone would allow.

pub mod clamp;
pub mod class;
pub mod gauge;
pub mod insulation;
mod kit;
pub mod low_impedance;
pub mod multimeter;
pub mod non_contact;
pub mod thermometer;

use quantity::Listed;

/// The lists of this folder.
pub(crate) const SOURCES: &[&[Listed]] = &[
    class::CONSTANTS,
    clamp::CONSTANTS,
    gauge::CONSTANTS,
    insulation::CONSTANTS,
    low_impedance::CONSTANTS,
    multimeter::CONSTANTS,
    non_contact::CONSTANTS,
    thermometer::CONSTANTS,
];

pub use class::{Class, Figures, Range, Scale};
pub use kit::Kit;
