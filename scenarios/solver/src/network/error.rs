//! What can be wrong with a network that is handed in.

/// Why a network has no solution. Indices are positions in the lists of the network.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum NetworkError {
    /// A branch, a source or a question names a node that does not exist.
    #[error("node {node} does not exist: there are {nodes}")]
    NoSuchNode {
        /// The node named.
        node: u32,
        /// How many there are.
        nodes: u32,
    },
    /// A conductance or capacitance is negative, not a number, infinite or beyond 1e30 S.
    #[error("branch {branch} has an admittance that no conductor or capacitor has")]
    Admittance {
        /// Position in the list of branches.
        branch: u32,
    },
    /// A fixed potential is not a number, infinite or beyond 1e30 V.
    #[error("fixed potential {fixed} is not a voltage")]
    Potential {
        /// Position in the list of fixed potentials.
        fixed: u32,
    },
    /// An injected current is not a number, infinite or beyond 1e30 A.
    #[error("injection {injection} is not a current")]
    Current {
        /// Position in the list of injections.
        injection: u32,
    },
    /// Two ideal sources hold the same node.
    #[error("node {node} is held by two ideal sources")]
    FixedTwice {
        /// The node held twice.
        node: u32,
    },
    /// An injected current has no way back to where it is taken from.
    #[error("a current injected near node {node} has no way back")]
    NoReturn {
        /// A node of the part that the current cannot leave.
        node: u32,
    },
    /// The network is wired otherwise than the one the plan was made for.
    #[error("the plan was made for another wiring")]
    OtherWiring,
}
