//! Steady state of a small alternating-current network of conductances and capacitances.
//!
//! Conductors of 5 mΩ stand beside stray capacitances of a few picofarads and leakages of 1e-12 S:
//! fourteen decades in one network. Ordinary nodal analysis forms each diagonal as a sum and then takes
//! nearly all of it away again, and a node that floats keeps few correct digits. Here unknown nodes are
//! removed one by one by the star-mesh transformation: the node disappears, and each pair of its
//! neighbours gains the branch y_i y_j / Y, where Y is the plain sum of the node's branches. Nothing is
//! ever subtracted to form a pivot, so each admittance keeps its own relative accuracy (the idea of
//! Grassmann, Taksar and Heyman for Markov chains, 1985, carried over to admittances in the first
//! quadrant).
//!
//! The order of removal depends only on the wiring and is planned once ([`Plan`]); solving again with
//! other admittances, potentials or currents reuses it and allocates nothing.

mod complex;
mod elimination;
mod error;
mod plan;
mod solution;
pub mod spice;
mod terminals;

pub use complex::Complex;
pub use error::NetworkError;
pub use plan::{Plan, Scratch};
pub use solution::Solution;
pub use terminals::{TwoTerminal, two_terminal};

/// An admittance between two nodes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Branch {
    /// One end.
    pub a: u32,
    /// The other end.
    pub b: u32,
    /// Conductance (real part) and susceptance of a capacitance (imaginary part) in siemens, neither
    /// negative. Zero is an open circuit.
    pub admittance: Complex,
}

/// An ideal source that holds a node at a potential against the common reference.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fixed {
    /// The node held.
    pub node: u32,
    /// Its potential, volts RMS.
    pub volts: Complex,
}

/// An ideal current source between two nodes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Injection {
    /// The node the current is taken from.
    pub from: u32,
    /// The node it is driven into.
    pub to: u32,
    /// The current, amperes RMS.
    pub amps: Complex,
}

/// Branches and sources over nodes numbered from zero.
///
/// The reference of the potentials is not a node by itself: a node at 0 V is a fixed one.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Network {
    /// How many nodes there are.
    pub nodes: u32,
    /// Admittances. Several between the same two nodes add up; one from a node to itself does nothing.
    pub branches: Vec<Branch>,
    /// Ideal voltage sources.
    pub fixed: Vec<Fixed>,
    /// Ideal current sources.
    pub injections: Vec<Injection>,
}

impl Network {
    /// A network of so many nodes with nothing in it.
    pub fn new(nodes: u32) -> Self {
        Self { nodes, ..Self::default() }
    }

    /// Adds an admittance and returns its position in the list of branches.
    pub fn connect(&mut self, a: u32, b: u32, admittance: Complex) -> usize {
        self.branches.push(Branch { a, b, admittance });
        self.branches.len() - 1
    }

    /// Holds a node at a potential.
    pub fn fix(&mut self, node: u32, volts: Complex) {
        self.fixed.push(Fixed { node, volts });
    }

    /// Drives a current into `to` and takes it from `from`.
    pub fn inject(&mut self, from: u32, to: u32, amps: Complex) {
        self.injections.push(Injection { from, to, amps });
    }

    /// Checks everything a solution relies on.
    pub fn check(&self) -> Result<(), NetworkError> {
        let nodes = self.nodes;
        let known =
            |node: u32| if node < nodes { Ok(()) } else { Err(NetworkError::NoSuchNode { node, nodes }) };
        for (branch, part) in (0..).zip(&self.branches) {
            known(part.a).and(known(part.b))?;
            if !passive(part.admittance) {
                return Err(NetworkError::Admittance { branch });
            }
        }
        for (fixed, source) in (0..).zip(&self.fixed) {
            known(source.node)?;
            if !bounded(source.volts) {
                return Err(NetworkError::Potential { fixed });
            }
        }
        for (injection, source) in (0..).zip(&self.injections) {
            known(source.from).and(known(source.to))?;
            if !bounded(source.amps) {
                return Err(NetworkError::Current { injection });
            }
        }
        let mut held: Vec<u32> = self.fixed.iter().map(|f| f.node).collect();
        held.sort_unstable();
        match held.windows(2).find_map(|pair| (pair.first() == pair.last()).then(|| pair.first().copied())) {
            Some(Some(node)) => Err(NetworkError::FixedTwice { node }),
            _ => Ok(()),
        }
    }
}

/// Largest value taken for a siemens, a volt or an ampere: far beyond any network, and small enough that
/// products of three of them stay finite.
const LARGEST: f64 = 1e30;

/// Whether conductances and capacitances can make this admittance.
#[inline]
fn passive(y: Complex) -> bool {
    y.re >= 0.0 && y.im >= 0.0 && y.re <= LARGEST && y.im <= LARGEST
}

/// Whether this is a source value we take.
#[inline]
fn bounded(value: Complex) -> bool {
    value.re.abs() <= LARGEST && value.im.abs() <= LARGEST
}

/// Plans and solves in one go.
pub fn solve(network: &Network) -> Result<Solution, NetworkError> {
    Plan::new(network)?.solve(network)
}

#[cfg(test)]
mod tests;
