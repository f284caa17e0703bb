//! Finds the pressures at which every junction balances and every store takes up what flows into it.
//!
//! Everything that does not change during the solution is worked out once ([`Ends`]); the iteration itself
//! works on arrays of fixed size and asks nothing of the allocator.

use super::{End, Error, Law, Network, Node};
use crate::water::{ATMOSPHERE, GRAVITY};

/// Most nodes of unknown pressure.
pub(super) const MOST: usize = 12;

/// What holds during the solution: the length of the step, and for each store its surface (m above the
/// datum; openings above it are dry) and the pressure its top is held at, where it is held.
pub(super) struct Frame<'a> {
    pub dt: f64,
    pub surfaces: &'a [f64],
    pub held: &'a [Option<f64>],
}

/// Pressures by node (at the top of a store) and flows by branch.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Solution {
    /// Pa gauge.
    pub pressures: Vec<f64>,
    /// m³/s from upstream to downstream.
    pub flows: Vec<f64>,
    /// Newton iterations.
    pub iterations: u32,
}

impl Solution {
    /// Pressure of a node, Pa gauge; 0 of one that is not there.
    pub fn pressure(&self, node: u32) -> f64 {
        self.pressures.get(node as usize).copied().unwrap_or(0.0)
    }

    /// Flow through a branch, m³/s; nothing through one that is not there.
    pub fn flow(&self, branch: u32) -> f64 {
        self.flows.get(branch as usize).copied().unwrap_or(0.0)
    }
}

/// Imbalance that counts as none, m³/s.
const TOLERANCE: f64 = 1e-15;
/// Give of a junction's piping, m³/Pa: 40 mg at 4 bar. Keeps the pressure of a shut-in junction defined.
const GIVE: f64 = 1e-13;

type Vector = [f64; MOST];
type Matrix = [Vector; MOST];

pub(super) fn solve(net: &Network, frame: &Frame<'_>) -> Result<Solution, Error> {
    let problem = Problem::new(net, frame)?;
    let mut at = Point::new(&problem, problem.start);
    let mut iterations = 0;
    for _round in 0..4 {
        for _ in 0..60 {
            if problem.good(&at) {
                break;
            }
            iterations += 1;
            let Some(step) = eliminate(problem.count, &at.slopes, &at.residual) else { break };
            if !problem.search(&mut at, &step) {
                break;
            }
        }
        if problem.good(&at) {
            return Ok(problem.solution(&at, iterations));
        }
        // Each balance rises with its own pressure: sweeping them one by one always comes nearer.
        for _ in 0..8 {
            problem.sweep(&mut at);
        }
    }
    let worst = at.residual.iter().fold(0.0_f64, |w, r| w.max(r.abs()));
    // A balance that rounding keeps from the strict limit is still good to a milligram a second.
    if worst < 1e-9 {
        return Ok(problem.solution(&at, iterations));
    }
    Err(Error::NotConverged { residual: worst })
}

/// A guess and what comes of it.
struct Point {
    x: Vector,
    residual: Vector,
    slopes: Matrix,
    scale: f64,
}

impl Point {
    fn new(problem: &Problem<'_>, x: Vector) -> Self {
        let mut point = Self { x, residual: [0.0; MOST], slopes: [[0.0; MOST]; MOST], scale: 0.0 };
        problem.evaluate(&mut point);
        point
    }

    fn norm(&self) -> f64 {
        self.residual.iter().map(|r| r * r).sum()
    }
}

/// One end of a branch as the iteration sees it.
#[derive(Clone, Copy)]
struct Ends {
    /// Unknown pressure, or the known one.
    unknown: Option<usize>,
    pressure: f64,
    /// Height as a pressure, where no moving surface decides it.
    height: f64,
    /// Store whose surface moves with its pressure.
    store: Option<usize>,
    /// There is air at the opening.
    dry: bool,
}

/// Head at one end, its part that is height, and its growth with the node's pressure.
struct Head {
    total: f64,
    height: f64,
    slope: f64,
}

struct Problem<'a> {
    net: &'a Network,
    frame: &'a Frame<'a>,
    count: usize,
    /// Node of each unknown.
    nodes: [usize; MOST],
    /// Unknown of each node.
    unknown: Vec<Option<usize>>,
    ends: Vec<[Ends; 2]>,
    start: Vector,
    weight: f64,
}

impl<'a> Problem<'a> {
    fn new(net: &'a Network, frame: &'a Frame<'a>) -> Result<Self, Error> {
        let (mut nodes, mut start, mut count) = ([0; MOST], [0.0; MOST], 0);
        let mut unknown = Vec::with_capacity(net.nodes.len());
        for (i, node) in net.nodes.iter().enumerate() {
            let first = match *node {
                Node::Fixed { .. } | Node::Air { .. } => None,
                Node::Free { pressure, .. } => Some(pressure),
                Node::Store { store } if frame.held[store as usize].is_some() => None,
                Node::Store { store } => Some(net.stores[store as usize].pressure),
            };
            unknown.push(first.map(|_| count));
            if let Some(first) = first {
                if count == MOST {
                    return Err(Error::TooMany { unknowns: MOST as u32 });
                }
                nodes[count] = i;
                start[count] = first;
                count += 1;
            }
        }
        let weight = net.density * GRAVITY;
        let mut problem = Self {
            net,
            frame,
            count,
            nodes,
            unknown,
            ends: Vec::with_capacity(net.branches.len()),
            start,
            weight,
        };
        for b in &net.branches {
            let ends = [problem.end(b.from), problem.end(b.to)];
            problem.ends.push(ends);
        }
        Ok(problem)
    }

    fn end(&self, end: End) -> Ends {
        let node = end.node as usize;
        let unknown = self.unknown[node];
        match self.net.nodes[node] {
            Node::Fixed { height, pressure } | Node::Free { height, pressure } => {
                Ends { unknown, pressure, height: self.weight * height, store: None, dry: false }
            }
            Node::Air { height } => {
                Ends { unknown, pressure: 0.0, height: self.weight * height, store: None, dry: true }
            }
            Node::Store { store } => {
                let index = store as usize;
                let surface = self.frame.surfaces[index];
                let mouth = end.height.max(self.net.stores[index].bottom);
                let dry = mouth > surface;
                let held = self.frame.held[index];
                Ends {
                    unknown,
                    pressure: held.unwrap_or(0.0),
                    height: self.weight * if dry { mouth } else { surface },
                    // Trapped air shrinks as the pressure rises, and the surface rises with it.
                    store: (!dry && held.is_none()).then_some(index),
                    dry,
                }
            }
        }
    }

    fn head(&self, end: &Ends, x: &Vector) -> Head {
        let pressure = end.unknown.map_or(end.pressure, |i| x[i]);
        let (height, slope) = match end.store {
            Some(index) => {
                let (surface, slope) = self.net.stores[index].surface(pressure);
                (self.weight * surface, 1.0 + self.weight * slope)
            }
            None => (end.height, 1.0),
        };
        Head { total: height + pressure, height, slope }
    }

    /// Flow through a branch and its slopes with the two nodes' pressures.
    fn branch(&self, law: &Law, [from, to]: &[Ends; 2], x: &Vector) -> (f64, f64, f64) {
        let (up, down) = (self.head(from, x), self.head(to, x));
        let (q, rise, fall) = law.flow(up.total, down.total, down.height);
        // Out of a dry opening, and in from the open, comes air and not water.
        if (from.dry && q > 0.0) || (to.dry && q < 0.0) {
            (0.0, 0.0, 0.0)
        } else {
            (q, rise * up.slope, fall * down.slope)
        }
    }

    /// What each unknown node takes up or loses beyond what flows in, and its slopes. It rises with the
    /// node's own pressure.
    fn evaluate(&self, at: &mut Point) {
        at.residual = [0.0; MOST];
        at.slopes = [[0.0; MOST]; MOST];
        at.scale = 0.0;
        for i in 0..self.count {
            let (taken, slope) = self.own(i, at.x[i]);
            at.residual[i] = taken;
            at.slopes[i][i] = slope;
        }
        for (b, ends) in self.net.branches.iter().zip(&self.ends) {
            let (q, up, down) = self.branch(&b.law, ends, &at.x);
            at.scale = at.scale.max(q.abs());
            let (i, j) = (ends[0].unknown, ends[1].unknown);
            if let Some(i) = i {
                at.residual[i] += q;
                at.slopes[i][i] += up;
            }
            if let Some(j) = j {
                at.residual[j] -= q;
                at.slopes[j][j] += down;
            }
            if let (Some(i), Some(j)) = (i, j) {
                at.slopes[i][j] -= down;
                at.slopes[j][i] -= up;
            }
        }
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

    fn good(&self, at: &Point) -> bool {
        at.residual.iter().all(|r| r.abs() <= TOLERANCE + 1e-11 * at.scale)
    }

    /// Goes along a step, halving it until the imbalance falls. Whether it did.
    fn search(&self, at: &mut Point, step: &Vector) -> bool {
        let before = at.norm();
        let mut share = 1.0;
        for _ in 0..40 {
            let mut x = at.x;
            for i in 0..self.count {
                x[i] = self.bounded(i, at.x[i], at.x[i] + share * step[i]);
            }
            let trial = Point::new(self, x);
            if trial.norm() < before * (1.0 - 1e-4 * share) {
                *at = trial;
                return true;
            }
            share *= 0.5;
        }
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
    fn sweep(&self, at: &mut Point) {
        for i in 0..self.count {
            let vessel = matches!(self.net.nodes[self.nodes[i]], Node::Store { .. });
            let floor = if vessel { -ATMOSPHERE * (1.0 - 1e-12) } else { -1e9 };
            let (mut low, mut high, mut reach) = (at.x[i], at.x[i], 10.0);
            while low > floor && self.balance(at, i, low) > 0.0 {
                low = (low - reach).max(floor);
                reach *= 4.0;
            }
            reach = 10.0;
            while high < 1e9 && self.balance(at, i, high) < 0.0 {
                high = (high + reach).min(1e9);
                reach *= 4.0;
            }
            for _ in 0..100 {
                let middle = 0.5 * (low + high);
                if self.balance(at, i, middle) > 0.0 {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            at.x[i] = 0.5 * (low + high);
        }
        self.evaluate(at);
    }

    fn balance(&self, at: &mut Point, i: usize, value: f64) -> f64 {
        at.x[i] = value;
        self.evaluate(at);
        at.residual[i]
    }

    fn solution(&self, at: &Point, iterations: u32) -> Solution {
        let flow = |(b, ends): (&super::Branch, &[Ends; 2])| self.branch(&b.law, ends, &at.x).0;
        let flows = self.net.branches.iter().zip(&self.ends).map(flow).collect();
        let pressure = |(i, node): (usize, &Node)| match (self.unknown[i], node) {
            (Some(k), _) => at.x[k],
            (None, Node::Fixed { pressure, .. } | Node::Free { pressure, .. }) => *pressure,
            (None, Node::Store { store }) => self.frame.held[*store as usize].unwrap_or(0.0),
            (None, Node::Air { .. }) => 0.0,
        };
        let pressures = self.net.nodes.iter().enumerate().map(pressure).collect();
        Solution { pressures, flows, iterations }
    }
}

/// Gauss elimination with row exchange of `slopes · step = -residual`; nothing if singular.
fn eliminate(n: usize, slopes: &Matrix, residual: &Vector) -> Option<Vector> {
    let mut rows = *slopes;
    let mut x = residual.map(|r| -r);
    for col in 0..n {
        let best = (col..n).max_by(|&a, &b| rows[a][col].abs().total_cmp(&rows[b][col].abs()))?;
        rows.swap(col, best);
        x.swap(col, best);
        let lead = rows[col];
        if lead[col] == 0.0 || !lead[col].is_finite() {
            return None;
        }
        for row in col + 1..n {
            let factor = rows[row][col] / lead[col];
            if factor != 0.0 {
                for k in col..n {
                    rows[row][k] -= factor * lead[k];
                }
                x[row] -= factor * x[col];
            }
        }
    }
    for i in (0..n).rev() {
        let known: f64 = (i + 1..n).map(|k| rows[i][k] * x[k]).sum();
        x[i] = (x[i] - known) / rows[i][i];
    }
    x.iter().all(|v| v.is_finite()).then_some(x)
}

/// The pressure difference that a relief valve in a branch feels.
pub(super) fn across(net: &Network, frame: &Frame<'_>, solution: &Solution, index: usize) -> f64 {
    let (Ok(problem), Some(b)) = (Problem::new(net, frame), net.branches.get(index)) else { return 0.0 };
    let mut x = [0.0; MOST];
    for (slot, node) in x.iter_mut().zip(problem.nodes).take(problem.count) {
        *slot = solution.pressures[node];
    }
    problem.head(&problem.end(b.from), &x).total - problem.head(&problem.end(b.to), &x).total
}

/// Whether a law is a relief valve.
pub(super) fn is_relief(law: &Law) -> bool {
    matches!(law, Law::Relief(_))
}
