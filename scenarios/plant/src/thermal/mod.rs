//! Water, heat and pressure, and the one door through which time passes: [`Plant::advance`].
//!
//! The electrical network is solved again only when something switched; between, its powers and currents
//! stand. The layered tank runs with them until a control on its wall reaches the point where it jumps. The
//! flows are quasi-steady orifice flows; the pressure is a state wherever something can give way.

mod advance;
mod books;
mod plan;
mod pressure;
mod queries;
mod settle;
#[cfg(test)]
mod tests;
mod vessel;
mod wall;
mod ways;

pub use advance::Fineness;
pub use queries::Leaks;
pub use vessel::standby_loss;
pub(crate) use vessel::vessel;
