//! Finds the pressures at which every junction balances and every store takes up what flows into it.

use super::{End, Error, Law, Network, Node};
use crate::water::{ATMOSPHERE, GRAVITY};

/// What holds during the solution: the length of the step, and for each store its surface (m above the
/// datum; openings above it are dry) and whether its top is at atmospheric pressure.
pub(super) struct Frame<'a> {
    pub dt: f64,
    pub surfaces: &'a [f64],
    pub at_air: &'a [bool],
}

/// Pressures by node (at the top of a store) and flows by branch.
#[derive(Clone, Default)]
pub(super) struct Solution {
    pub pressures: Vec<f64>,
    pub flows: Vec<f64>,
    pub iterations: u32,
}

/// Imbalance that counts as none, m³/s.
const TOLERANCE: f64 = 1e-15;
/// Give of a junction's piping, m³/Pa: 40 mg at 4 bar. Keeps the pressure of a shut-in junction defined.
const GIVE: f64 = 1e-13;

pub(super) fn solve(net: &Network, frame: &Frame<'_>) -> Result<Solution, Error> {
    let mut problem = Problem::new(net, frame);
    let mut x: Vec<f64> = problem.start.clone();
    let mut residual = problem.residual(&x);
    let mut iterations = 0;
    for _round in 0..4 {
        for _ in 0..60 {
            if problem.good(&residual) {
                break;
            }
            iterations += 1;
            let Some(step) = problem.newton_step(&x, &residual) else { break };
            if !problem.search(&mut x, &mut residual, &step) {
                break;
            }
        }
        if problem.good(&residual) {
            return Ok(Solution { flows: problem.flows(&x), pressures: problem.all(&x), iterations });
        }
        // Each balance rises with its own pressure: sweeping them one by one always comes nearer.
        for _ in 0..8 {
            problem.sweep(&mut x);
        }
        residual = problem.residual(&x);
    }
    let worst = residual.iter().fold(0.0_f64, |w, r| w.max(r.abs()));
    // A balance that rounding keeps from the strict limit is still good to a milligram a second.
    if worst < 1e-9 {
        return Ok(Solution { flows: problem.flows(&x), pressures: problem.all(&x), iterations });
    }
    Err(Error::NotConverged { residual: worst })
}

/// Head at one end of a branch, as a pressure.
struct Head {
    /// Part that is height.
    height: f64,
    /// Part that is pressure.
    pressure: f64,
    /// Growth of the whole with the node's pressure.
    slope: f64,
    /// Whether there is air at the opening.
    dry: bool,
}

impl Head {
    fn total(&self) -> f64 {
        self.height + self.pressure
    }
}

struct Problem<'a> {
    net: &'a Network,
    frame: &'a Frame<'a>,
    /// Node of each unknown.
    nodes: Vec<usize>,
    /// Unknown of each node.
    unknown: Vec<Option<usize>>,
    start: Vec<f64>,
    scale: f64,
}

impl<'a> Problem<'a> {
    fn new(net: &'a Network, frame: &'a Frame<'a>) -> Self {
        let mut p =
            Self { net, frame, nodes: Vec::new(), unknown: Vec::new(), start: Vec::new(), scale: 0.0 };
        for (i, node) in net.nodes.iter().enumerate() {
            let start = match *node {
                Node::Fixed { .. } | Node::Air { .. } => None,
                Node::Free { pressure, .. } => Some(pressure),
                Node::Store { store } if frame.at_air[store as usize] => None,
                Node::Store { store } => Some(net.stores[store as usize].pressure),
            };
            p.unknown.push(start.map(|_| p.nodes.len()));
            if let Some(start) = start {
                p.nodes.push(i);
                p.start.push(start);
            }
        }
        p
    }

    fn good(&self, residual: &[f64]) -> bool {
        residual.iter().all(|r| r.abs() <= TOLERANCE + 1e-11 * self.scale)
    }

    /// Pressure of a node under a guess.
    fn pressure(&self, node: usize, x: &[f64]) -> f64 {
        match self.unknown[node] {
            Some(i) => x[i],
            None => match self.net.nodes[node] {
                Node::Fixed { pressure, .. } | Node::Free { pressure, .. } => pressure,
                Node::Store { .. } | Node::Air { .. } => 0.0,
            },
        }
    }

    /// Head at an end under a guess.
    fn head(&self, end: End, x: &[f64]) -> Head {
        let weight = self.net.density * GRAVITY;
        let node = end.node as usize;
        let pressure = self.pressure(node, x);
        match self.net.nodes[node] {
            Node::Fixed { height, .. } | Node::Free { height, .. } => {
                Head { height: weight * height, pressure, slope: 1.0, dry: false }
            }
            Node::Air { height } => Head { height: weight * height, pressure, slope: 1.0, dry: true },
            Node::Store { store } => {
                let index = store as usize;
                let bottom = self.net.stores[index].bottom;
                let mouth = end.height.max(bottom);
                let dry = mouth > self.frame.surfaces[index];
                // Trapped air shrinks as the pressure rises, and the surface rises with it.
                let (surface, slope) = if self.frame.at_air[index] {
                    (self.frame.surfaces[index], 0.0)
                } else {
                    self.net.stores[index].surface(pressure)
                };
                if dry {
                    Head { height: weight * mouth, pressure, slope: 1.0, dry }
                } else {
                    Head { height: weight * surface, pressure, slope: 1.0 + weight * slope, dry }
                }
            }
        }
    }

    /// Flow through a branch and its slopes with the two nodes' pressures.
    fn branch(&self, index: usize, x: &[f64]) -> (f64, f64, f64) {
        let b = &self.net.branches[index];
        let (up, down) = (self.head(b.from, x), self.head(b.to, x));
        let (q, rise, fall) = b.law.flow(up.total(), down.total(), down.height);
        // Out of a dry opening, and in from the open, comes air and not water.
        if (up.dry && q > 0.0) || (down.dry && q < 0.0) {
            (0.0, 0.0, 0.0)
        } else {
            (q, rise * up.slope, fall * down.slope)
        }
    }

    /// What each unknown node takes up or loses beyond what flows in. Rises with its own pressure.
    fn residual(&mut self, x: &[f64]) -> Vec<f64> {
        let mut r: Vec<f64> = (0..x.len()).map(|i| self.own(i, x[i]).0).collect();
        self.scale = 0.0;
        for (index, b) in self.net.branches.iter().enumerate() {
            let (q, _, _) = self.branch(index, x);
            self.scale = self.scale.max(q.abs());
            if let Some(i) = self.unknown[b.from.node as usize] {
                r[i] += q;
            }
            if let Some(i) = self.unknown[b.to.node as usize] {
                r[i] -= q;
            }
        }
        r
    }

    /// Storage of an unknown node as a flow, and its slope.
    fn own(&self, i: usize, pressure: f64) -> (f64, f64) {
        match self.net.nodes[self.nodes[i]] {
            Node::Store { store } => {
                let store = &self.net.stores[store as usize];
                let (capacity, slope) = store.capacity(pressure);
                ((capacity - store.water) / self.frame.dt, slope / self.frame.dt)
            }
            _ => (GIVE * (pressure - self.start[i]) / self.frame.dt, GIVE / self.frame.dt),
        }
    }

    fn newton_step(&self, x: &[f64], residual: &[f64]) -> Option<Vec<f64>> {
        let n = x.len();
        let mut rows: Vec<Vec<f64>> = (0..n)
            .map(|i| {
                let mut row = vec![0.0; n + 1];
                row[i] = self.own(i, x[i]).1;
                row[n] = -residual[i];
                row
            })
            .collect();
        for (index, b) in self.net.branches.iter().enumerate() {
            let (_, up, down) = self.branch(index, x);
            let (i, j) = (self.unknown[b.from.node as usize], self.unknown[b.to.node as usize]);
            if let Some(i) = i {
                rows[i][i] += up;
            }
            if let Some(j) = j {
                rows[j][j] += down;
            }
            if let (Some(i), Some(j)) = (i, j) {
                rows[i][j] -= down;
                rows[j][i] -= up;
            }
        }
        eliminate(rows)
    }

    /// Goes along a step, halving it until the imbalance falls. Whether it did.
    fn search(&mut self, x: &mut Vec<f64>, residual: &mut Vec<f64>, step: &[f64]) -> bool {
        let norm = |r: &[f64]| r.iter().map(|v| v * v).sum::<f64>();
        let before = norm(residual);
        let mut share = 1.0;
        for _ in 0..40 {
            let trial: Vec<f64> = x
                .iter()
                .zip(step)
                .enumerate()
                .map(|(i, (a, s))| self.bounded(i, *a, a + share * s))
                .collect();
            let found = self.residual(&trial);
            if norm(&found) < before * (1.0 - 1e-4 * share) {
                *x = trial;
                *residual = found;
                return true;
            }
            share *= 0.5;
        }
        *residual = self.residual(x);
        false
    }

    /// A store's pressure stays above vacuum: at most nine tenths of the way there in one go.
    fn bounded(&self, i: usize, from: f64, to: f64) -> f64 {
        match self.net.nodes[self.nodes[i]] {
            Node::Store { .. } => to.max(0.1 * (from + ATMOSPHERE) - ATMOSPHERE),
            _ => to,
        }
    }

    /// Balances each unknown in turn by bisection.
    fn sweep(&mut self, x: &mut [f64]) {
        for i in 0..x.len() {
            let start = x[i];
            let at = |this: &mut Self, x: &mut [f64], value: f64| {
                x[i] = value;
                this.residual(x)[i]
            };
            let vessel = matches!(self.net.nodes[self.nodes[i]], Node::Store { .. });
            let floor = if vessel { -ATMOSPHERE * (1.0 - 1e-12) } else { -1e9 };
            let (mut low, mut high, mut reach) = (start, start, 10.0);
            while low > floor && at(self, x, low) > 0.0 {
                low = (low - reach).max(floor);
                reach *= 4.0;
            }
            reach = 10.0;
            while high < 1e9 && at(self, x, high) < 0.0 {
                high = (high + reach).min(1e9);
                reach *= 4.0;
            }
            for _ in 0..100 {
                let middle = 0.5 * (low + high);
                if at(self, x, middle) > 0.0 {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            x[i] = 0.5 * (low + high);
        }
    }

    fn flows(&self, x: &[f64]) -> Vec<f64> {
        (0..self.net.branches.len()).map(|i| self.branch(i, x).0).collect()
    }

    fn all(&self, x: &[f64]) -> Vec<f64> {
        (0..self.net.nodes.len()).map(|i| self.pressure(i, x)).collect()
    }
}

/// Gauss elimination with row exchange; nothing if singular.
fn eliminate(mut rows: Vec<Vec<f64>>) -> Option<Vec<f64>> {
    let n = rows.len();
    for col in 0..n {
        let best = (col..n).max_by(|&a, &b| rows[a][col].abs().total_cmp(&rows[b][col].abs()))?;
        rows.swap(col, best);
        let pivot = rows[col][col];
        if pivot == 0.0 || !pivot.is_finite() {
            return None;
        }
        let (head, tail) = rows.split_at_mut(col + 1);
        let lead = &head[col];
        for row in tail {
            let factor = row[col] / pivot;
            if factor != 0.0 {
                for k in col..=n {
                    row[k] -= factor * lead[k];
                }
            }
        }
    }
    let mut x = vec![0.0; n];
    for i in (0..n).rev() {
        let known: f64 = (i + 1..n).map(|k| rows[i][k] * x[k]).sum();
        x[i] = (rows[i][n] - known) / rows[i][i];
    }
    x.iter().all(|v| v.is_finite()).then_some(x)
}

/// The pressure difference that a relief valve in a branch feels.
pub(super) fn across(net: &Network, frame: &Frame<'_>, solution: &Solution, index: usize) -> f64 {
    let problem = Problem::new(net, frame);
    let Some(b) = net.branches.get(index) else { return 0.0 };
    let x: Vec<f64> = problem.nodes.iter().map(|&n| solution.pressures[n]).collect();
    problem.head(b.from, &x).total() - problem.head(b.to, &x).total()
}

/// Whether a law is a relief valve.
pub(super) fn is_relief(law: &Law) -> bool {
    matches!(law, Law::Relief(_))
}
