//! Water, heat and pressure, and the one door through which time passes: [`Plant::advance`].
//!
//! The electrical network is solved again only when something switched; between, its powers and currents
//! stand. The layered tank runs with them until a control on its wall reaches the point where it jumps. The
//! flows are those of the house's piping as a hydraulic network (`ways`); the pressure is a state wherever something can give way.

mod advance;
mod books;
mod chemistry;
mod figures;
mod flows;
mod hot_line;
mod junctions;
mod lay;
mod noise;
mod plan;
mod pressure;
mod queries;
mod settle;
mod sweat;
#[cfg(test)]
mod tests;
mod vessel;
mod wall;
mod ways;

pub use advance::Fineness;
pub use queries::Leaks;
pub use sweat::Sweat;
pub(crate) use sweat::dew_point;
pub use vessel::standby_loss;
pub(crate) use vessel::vessel;

/// Tagged constants of these modules.
pub(crate) const SOURCES: &[&[quantity::Listed]] = &[
    advance::CONSTANTS,
    books::CONSTANTS,
    chemistry::CONSTANTS,
    figures::CONSTANTS,
    flows::CONSTANTS,
    hot_line::CONSTANTS,
    lay::CONSTANTS,
    noise::CONSTANTS,
    plan::CONSTANTS,
    pressure::CONSTANTS,
    queries::CONSTANTS,
    settle::CONSTANTS,
    sweat::CONSTANTS,
    vessel::CONSTANTS,
    wall::CONSTANTS,
    ways::CONSTANTS,
];
