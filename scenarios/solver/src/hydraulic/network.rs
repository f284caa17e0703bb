//! The network: nodes, branches, stores, and what a step has moved.

use super::newton::{self, Frame};
use super::{Error, Law, Relief, Solution, Store};

/// A place with a pressure.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Node {
    /// A given pressure.
    Fixed {
        /// m above the datum.
        height: f64,
        /// Pa gauge.
        pressure: f64,
    },
    /// The open air: takes water, gives none.
    Air {
        /// m above the datum.
        height: f64,
    },
    /// A junction: what flows in flows out.
    Free {
        /// m above the datum.
        height: f64,
        /// Pa gauge after the last step; where the next iteration starts.
        pressure: f64,
    },
    /// A vessel.
    Store {
        /// Index into [`Network::stores`].
        store: u32,
    },
}

/// One end of a branch.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct End {
    /// Node.
    pub node: u32,
    /// Height of the opening above the datum, m. Matters at a vessel only: above the surface it passes no
    /// water outwards.
    pub height: f64,
}

/// A connection.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Branch {
    /// Upstream end.
    pub from: End,
    /// Downstream end.
    pub to: End,
    /// Law of flow.
    pub law: Law,
}

/// What a call of [`Network::advance`] moved.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Moved {
    /// Through each branch from upstream to downstream, m³.
    pub volumes: Vec<f64>,
    /// Highest pressure at the top of each store, Pa gauge.
    pub peaks: Vec<f64>,
    /// Seconds.
    pub elapsed: f64,
    /// Newton iterations.
    pub iterations: u32,
    /// Steps inside the call.
    pub steps: u32,
}

impl Moved {
    /// Volume through a branch, m³; nothing through one that is not there.
    pub fn volume(&self, branch: u32) -> f64 {
        self.volumes.get(branch as usize).copied().unwrap_or(0.0)
    }

    /// Mean flow through a branch, m³/s.
    pub fn flow(&self, branch: u32) -> f64 {
        if self.elapsed > 0.0 { self.volume(branch) / self.elapsed } else { 0.0 }
    }
}

/// The network. Add nodes and branches once, then change laws and pressures and advance.
#[derive(Clone, PartialEq, Debug)]
pub struct Network {
    /// Density for heights, kg/m³.
    pub density: f64,
    /// Nodes.
    pub nodes: Vec<Node>,
    /// Branches.
    pub branches: Vec<Branch>,
    /// Vessels.
    pub stores: Vec<Store>,
}

impl Network {
    /// An empty network of water with this density.
    pub fn new(density: f64) -> Self {
        Self { density, nodes: Vec::new(), branches: Vec::new(), stores: Vec::new() }
    }

    fn add(&mut self, node: Node) -> u32 {
        self.nodes.push(node);
        self.nodes.len() as u32 - 1
    }

    /// Adds a place of fixed pressure.
    pub fn fixed(&mut self, height: f64, pressure: f64) -> u32 {
        self.add(Node::Fixed { height, pressure })
    }

    /// Adds an outlet to the open air.
    pub fn air(&mut self, height: f64) -> u32 {
        self.add(Node::Air { height })
    }

    /// Adds a junction.
    pub fn free(&mut self, height: f64) -> u32 {
        self.add(Node::Free { height, pressure: 0.0 })
    }

    /// Adds a vessel.
    pub fn store(&mut self, store: Store) -> u32 {
        self.stores.push(store);
        self.add(Node::Store { store: self.stores.len() as u32 - 1 })
    }

    /// Adds a branch whose ends are under water in any vessel.
    pub fn branch(&mut self, from: u32, to: u32, law: Law) -> u32 {
        self.branch_between((from, f64::NEG_INFINITY), (to, f64::NEG_INFINITY), law)
    }

    /// Adds a branch between openings at given heights.
    pub fn branch_between(&mut self, from: (u32, f64), to: (u32, f64), law: Law) -> u32 {
        let end = |(node, height)| End { node, height };
        self.branches.push(Branch { from: end(from), to: end(to), law });
        self.branches.len() as u32 - 1
    }

    /// The law of a branch, to be changed.
    pub fn law_mut(&mut self, branch: u32) -> Option<&mut Law> {
        self.branches.get_mut(branch as usize).map(|b| &mut b.law)
    }

    /// The relief valve in a branch, to be changed.
    pub fn relief_mut(&mut self, branch: u32) -> Option<&mut Relief> {
        match self.law_mut(branch) {
            Some(Law::Relief(relief)) => Some(relief),
            _ => None,
        }
    }

    /// Changes a fixed pressure.
    pub fn set_pressure(&mut self, node: u32, to: f64) {
        if let Some(Node::Fixed { pressure, .. }) = self.nodes.get_mut(node as usize) {
            *pressure = to;
        }
    }

    /// Says where the search for a junction's pressure starts.
    pub fn guess(&mut self, node: u32, guess: f64) {
        if let Some(Node::Free { pressure, .. }) = self.nodes.get_mut(node as usize) {
            *pressure = guess;
        }
    }

    /// Starts the next search where this one ended.
    pub fn remember(&mut self, solution: &Solution) {
        for (node, found) in self.nodes.iter_mut().zip(&solution.pressures) {
            match node {
                Node::Free { pressure, .. } => *pressure = *found,
                Node::Store { store } => {
                    if let Some(store) = self.stores.get_mut(*store as usize) {
                        store.pressure = *found;
                    }
                }
                Node::Fixed { .. } | Node::Air { .. } => {}
            }
        }
    }

    /// Pressure at a node (at the top of a vessel) after the last step, Pa gauge.
    pub fn pressure(&self, node: u32) -> Option<f64> {
        match self.nodes.get(node as usize)? {
            Node::Fixed { pressure, .. } | Node::Free { pressure, .. } => Some(*pressure),
            Node::Air { .. } => Some(0.0),
            Node::Store { store } => self.stores.get(*store as usize).map(Store::pressure),
        }
    }

    /// Pressures and flows at the end of a step of `dt` seconds. Nothing changes: the caller moves the water
    /// and says in the stores how much is there.
    ///
    /// `surfaces` are the heights of the stores' surfaces above the datum, where openings change from wet to
    /// dry; `held` the pressures at the tops of those that stand open to the air. A relief valve stays as it
    /// is set.
    pub fn solve(&self, dt: f64, surfaces: &[f64], held: &[Option<f64>]) -> Result<Solution, Error> {
        let stores = self.stores.len();
        if !dt.is_finite() || dt <= 0.0 || surfaces.len() != stores || held.len() != stores {
            return Err(Error::Bad { field: "duration", value: dt });
        }
        self.check()?;
        newton::solve(self, &Frame { dt, surfaces, held })
    }

    /// Refuses numbers that are no numbers, and ends that are not there.
    pub(super) fn check(&self) -> Result<(), Error> {
        let fine = |field, value: f64, least: f64| {
            if value.is_finite() && value >= least { Ok(()) } else { Err(Error::Bad { field, value }) }
        };
        fine("density", self.density, 1.0)?;
        for (i, node) in self.nodes.iter().enumerate() {
            match *node {
                Node::Fixed { height, pressure } | Node::Free { height, pressure } => {
                    fine("height", height, f64::MIN)?;
                    fine("pressure", pressure, f64::MIN)?;
                }
                Node::Air { height } => fine("height", height, f64::MIN)?,
                Node::Store { store } if (store as usize) < self.stores.len() => {}
                Node::Store { .. } => return Err(Error::NoNode(i as u32)),
            }
        }
        for store in &self.stores {
            fine("volume", store.volume, 1e-9)?;
            fine("store height", store.height, 1e-6)?;
            fine("bottom", store.bottom, f64::MIN)?;
            fine("compliance", store.compliance, 0.0)?;
            fine("compressibility", store.compressibility, 1e-12)?;
            fine("water", store.water, 0.0)?;
            if let Some(cushion) = store.cushion {
                fine("cushion volume", cushion.volume, 0.0)?;
                fine("charge", cushion.charge, -1e5)?;
            }
        }
        for branch in &self.branches {
            for end in [branch.from, branch.to] {
                if end.node as usize >= self.nodes.len() {
                    return Err(Error::NoNode(end.node));
                }
                if end.height.is_nan() {
                    return Err(Error::Bad { field: "end height", value: end.height });
                }
            }
            for number in branch.law.numbers() {
                fine("law", number, 0.0)?;
            }
        }
        Ok(())
    }
}
