//! Numerical cores over plain indices: no trade word, no fault, no screen.

pub mod hydraulic;
pub mod network;
pub mod skin;
pub mod tank;
pub mod water;

/// Every tagged constant of the solvers.
pub fn sources() -> Vec<quantity::Listed> {
    [hydraulic::SOURCES, &[skin::CONSTANTS], tank::SOURCES, &[water::CONSTANTS]].concat().concat()
}
