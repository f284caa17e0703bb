//! The present network as a netlist an outside program can solve, and our own solution of it.

use solver::network::spice::{self, SpiceError};

use super::Bridge;
use super::HERTZ;
use crate::Plant;

/// A netlist with our own solution beside it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Netlist {
    /// The netlist, with `.ac lin 1 60 60` in it; volts are RMS.
    pub netlist: String,
    /// One line for each node: name, real and imaginary part of its potential.
    pub solution: String,
}

impl Plant {
    /// Writes the network as it is, with bridges in place. Nodes have the names of the trade sheet,
    /// section 1; a wire end `feed-a@H1` is `feed_a_H1`; the transformer's neutral is `0`.
    pub fn netlist(&self, bridges: &[Bridge], title: &str) -> Result<Netlist, SpiceError> {
        let live = self.energise(bridges);
        let names = live.lowered.nodes.names();
        Ok(Netlist {
            netlist: spice::netlist(&live.lowered.network, &names, title, HERTZ)?,
            solution: spice::solution(&live.solution.volts, &names),
        })
    }
}
