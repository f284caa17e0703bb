//! What two terminals of a network look like from outside, all its sources at zero.

use super::elimination::{Elimination, Tie};
use super::{Complex, Network, NetworkError};

/// A network as seen from two of its nodes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum TwoTerminal {
    /// No admittance over any path.
    Open,
    /// The same node, or both held by ideal sources: nothing between them.
    Short,
    /// This admittance, siemens.
    Admittance(Complex),
}

impl TwoTerminal {
    /// Resistance in ohms of a direct-current network: infinite when open, zero when short.
    pub fn ohms(self) -> f64 {
        match self {
            Self::Open => f64::INFINITY,
            Self::Short => 0.0,
            Self::Admittance(y) => y.reciprocal_or_zero().re,
        }
    }
}

/// Reduces a network to the one admittance between two nodes. Ideal voltage sources become wires to their
/// common reference, ideal current sources are left out.
///
/// For resistances pass a network without capacitances. The admittance comes out of the star-mesh
/// transformation directly, not as a difference of potentials, so that 1 mΩ and 1e12 Ω keep the same
/// relative accuracy.
pub fn two_terminal(network: &Network, a: u32, b: u32) -> Result<TwoTerminal, NetworkError> {
    network.check()?;
    let nodes = network.nodes;
    if let Some(node) = [a, b].into_iter().find(|node| *node >= nodes) {
        return Err(NetworkError::NoSuchNode { node, nodes });
    }
    // Every held node is one and the same node now; the first of them stands for all.
    let mut merged: Vec<u32> = (0..nodes).collect();
    for source in &network.fixed {
        if let (Some(entry), Some(first)) = (merged.get_mut(source.node as usize), network.fixed.first()) {
            *entry = first.node;
        }
    }
    let alias = |node: u32| merged.get(node as usize).copied().unwrap_or(node);
    let (a, b) = (alias(a), alias(b));
    if a == b {
        return Ok(TwoTerminal::Short);
    }
    let pairs: Vec<(u32, u32)> = network.branches.iter().map(|e| (alias(e.a), alias(e.b))).collect();
    let free: Vec<u32> =
        (0..).zip(&merged).filter_map(|(i, n)| (i == *n && i != a && i != b).then_some(i)).collect();
    let elimination = Elimination::plan(&free, &[a, b], &pairs);
    let mut place = vec![u32::MAX; nodes as usize];
    for (at, node) in (0..).zip(&elimination.order) {
        if let Some(entry) = place.get_mut(*node as usize) {
            *entry = at;
        }
    }
    let slot = |a: u32, b: u32| {
        elimination.slot(*place.get(a as usize)?, *place.get(b as usize)?).map(|slot| slot as usize)
    };
    let mut slots = vec![Complex::ZERO; elimination.slots()];
    for (&(from, to), branch) in pairs.iter().zip(&network.branches) {
        if let Some(y) = slot(from, to).and_then(|slot| slots.get_mut(slot)) {
            *y += branch.admittance;
        }
    }
    let mut ties = vec![Tie::default(); elimination.order.len()];
    elimination.remove(&mut slots, &mut ties);
    let between = slot(a, b).and_then(|slot| slots.get(slot)).copied().unwrap_or_default();
    Ok(if between == Complex::ZERO { TwoTerminal::Open } else { TwoTerminal::Admittance(between) })
}
