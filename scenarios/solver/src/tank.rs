//! Placeholder for the stratified tank until it lands.

use serde::{Deserialize, Serialize};

/// Layers.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Tank {
    /// Kelvin.
    pub layers: Vec<f64>,
}
