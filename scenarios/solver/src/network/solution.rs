//! Potentials of a solved network and what follows from them.

use super::{Branch, Complex, Network};

/// Potentials of every node.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Solution {
    /// Potential of each node, volts RMS.
    pub volts: Vec<Complex>,
    /// Whether nothing at all holds the node: no admittance, over any path, to a fixed potential. Such a
    /// node is given as 0 V. A node held by a picofarad is not floating in this strict sense.
    pub floating: Vec<bool>,
}

impl Solution {
    /// Potential of a node; 0 V for one that does not exist.
    pub fn volt(&self, node: u32) -> Complex {
        self.volts.get(node as usize).copied().unwrap_or_default()
    }

    /// Potential of `a` against `b`.
    pub fn between(&self, a: u32, b: u32) -> Complex {
        self.volt(a) - self.volt(b)
    }

    /// Whether nothing holds the node; true for one that does not exist.
    pub fn is_floating(&self, node: u32) -> bool {
        self.floating.get(node as usize).copied().unwrap_or(true)
    }

    /// Current through a branch from `a` to `b`, amperes RMS.
    pub fn current(&self, branch: &Branch) -> Complex {
        branch.admittance * self.between(branch.a, branch.b)
    }

    /// Real power that a branch turns into heat, watts.
    pub fn power(&self, branch: &Branch) -> f64 {
        branch.admittance.re * self.between(branch.a, branch.b).norm_squared()
    }

    /// Current that flows out of a node through its branches, amperes RMS: what the source of a fixed
    /// node delivers, and what is injected at any other.
    pub fn outflow(&self, network: &Network, node: u32) -> Complex {
        network.branches.iter().filter(|b| b.a != b.b).fold(Complex::ZERO, |sum, branch| {
            match (branch.a == node, branch.b == node) {
                (true, _) => sum + self.current(branch),
                (_, true) => sum - self.current(branch),
                _ => sum,
            }
        })
    }
}
