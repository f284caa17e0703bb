//! Plain numerics: networks, water properties, a layered tank. Bare f64, SI, plain indices, no trade words.

pub mod network;
pub mod tank;
pub mod water;
