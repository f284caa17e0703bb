//! Pressures and flows of a small water network with storage: quasi-steady branches, implicit storage.
//!
//! Nodes are fixed pressures (a main, the open air), free junctions, or stores: vessels with a springy shell,
//! springy water, perhaps a gas cushion and perhaps a pocket of air above the water. Branches are laws of
//! flow against pressure difference. One call of [`Network::advance`] steps storage implicitly, so any step
//! length is stable: a long step gives the settled flow.
//!
//! Units: SI; pressures in Pa gauge; heights in m above any one datum; flows in m³/s; volumes in m³ of water
//! at zero gauge pressure and its own temperature. What a step moves through a branch is booked in the stores
//! exactly, so water is neither made nor lost.
//!
//! A caller that keeps the vessels' water itself (in layers, say) asks [`Network::solve`] for the pressures and
//! flows at the end of a step and moves the water on its own.
//!
//! A vessel heated while shut: put the grown volume of its water into [`Store::water`] and advance.
//!
//! ```
//! use solver::hydraulic::{Law, Network, Shell, Store, orifice};
//!
//! let mut net = Network::new(998.0);
//! let main = net.fixed(0.0, 414e3);
//! let air = net.air(0.0);
//! let shell = Shell { diameter: 0.457, wall: 1.8e-3, youngs: 200e9, poisson: 0.3 };
//! let vessel = net.store(Store::full(0.17, 1.22, 0.1, shell.compliance(), 414e3));
//! net.branch(main, vessel, Law::Check { k: 1e-6, cracking: 3e3 });
//! let tap = net.branch_between((vessel, 1.32), (air, 0.0), Law::Orifice { k: orifice(0.6, 2e-5, 998.0) });
//! let moved = net.advance(10.0).expect("converges");
//! assert!(moved.volume(tap) > 2e-3);
//! ```

mod law;
mod network;
mod newton;
mod step;
mod store;

/// The lists of this folder.
pub(crate) const SOURCES: &[&[quantity::Listed]] = &[law::CONSTANTS, store::CONSTANTS];
#[cfg(test)]
mod tests;

pub use law::{Law, Relief};
pub use network::{Branch, End, Moved, Network, Node};
pub use newton::Solution;
pub use store::{Cushion, Shell, Store};

use crate::water::{ATMOSPHERE, GRAVITY};

/// What cannot be computed.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Error {
    /// A number that is not finite, or negative where it cannot be.
    Bad {
        /// The name of the field.
        field: &'static str,
        /// Its value.
        value: f64,
    },
    /// A branch names a node, or a node a store, that is not there.
    NoNode(u32),
    /// More nodes of unknown pressure than are provided for.
    TooMany {
        /// Most there may be.
        unknowns: u32,
    },
    /// The iteration ended with this much flow unaccounted for, m³/s.
    NotConverged {
        /// Largest imbalance of a node, m³/s.
        residual: f64,
    },
}

impl core::fmt::Display for Error {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::Bad { field, value } => write!(f, "{field} cannot be {value}"),
            Self::TooMany { unknowns } => write!(f, "more than {unknowns} pressures to be found"),
            Self::NoNode(node) => write!(f, "there is no node {node}"),
            Self::NotConverged { residual } => write!(f, "{residual} m³/s do not balance"),
        }
    }
}

impl core::error::Error for Error {}

/// Coefficient k of Q = k·√Δp for an opening: Cd·A·√(2/ρ), so that a head h gives Cd·A·√(2gh).
pub fn orifice(discharge: f64, area: f64, density: f64) -> f64 {
    discharge * area * (2.0 / density).sqrt()
}

/// Volume a gas cushion needs to take up `expansion` m³ between two gauge pressures, its charge being the
/// first (R. W. Griffith PE, 2015): V = Ve / (1 − (p1 + pa)/(p2 + pa)).
pub fn cushion_size(expansion: f64, start: f64, end: f64) -> f64 {
    expansion / (1.0 - (start + ATMOSPHERE) / (end + ATMOSPHERE))
}

/// Vacuum that holds up a column of water, Pa: ρgh.
pub fn column(density: f64, height: f64) -> f64 {
    density * GRAVITY * height
}
