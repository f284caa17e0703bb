//! The person as physics: what a current, hot water or a flood does to someone.
//!
//! Everything here defers to the standards it names. A simulated figure never tells anybody that a real
//! touch would be harmless.

pub mod body;
pub mod burn;
pub mod harm;
pub mod shock;

use quantity::Listed;

/// The lists of this folder.
pub(crate) const SOURCES: &[&[Listed]] =
    &[body::CONSTANTS, body::TABLES, burn::CONSTANTS, harm::CONSTANTS, shock::CONSTANTS];

pub use body::{Area, Footing, Glove, Percentile, Settled, Touch, Wetness, settle};
pub use burn::{Degree, Exposure, Source};
pub use harm::{Burn, Harm, Severity, Shock, Who};
pub use shock::{Curve, Judged, Path, ShockZone, contact_time, gfci_opens, shock};
