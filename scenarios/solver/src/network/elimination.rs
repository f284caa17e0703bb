//! The order in which nodes are removed, the branches that appear on the way, and the removal itself.

use std::collections::BTreeSet;

use super::Complex;

/// The removal of nodes from a graph, as positions in flat lists.
///
/// Nodes are renumbered by their place in the order. Each place owns a run of slots, one for each
/// neighbour that is removed later, ascending.
#[derive(Clone, Debug)]
pub(super) struct Elimination {
    /// Node at each place; those that are kept come last.
    pub order: Vec<u32>,
    /// How many nodes are removed.
    removed: usize,
    /// Number of slots of each place.
    degree: Vec<u32>,
    /// Place of the neighbour behind each slot.
    neighbour: Vec<u32>,
    /// For each removed place and each pair of its slots, the slot that gains the new branch, counted
    /// from the end of the place's own run.
    gain: Vec<u32>,
    /// First slot of each place.
    start: Vec<u32>,
}

/// What is known of a node besides its branches to other nodes of the graph.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Tie {
    /// Sum of the admittances to fixed potentials.
    pub hold: Complex,
    /// Current that those potentials and the injections would drive into the node at 0 V.
    pub drive: Complex,
}

/// What a removal met on its way.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Removal {
    /// How many nodes had no admittance left when their turn came.
    pub loose: u32,
    /// The largest squared current that such a node could not pass on, and the place of that node.
    pub stranded: (f64, u32),
}

impl Removal {
    /// Notes a node that nothing holds.
    #[cold]
    fn note(&mut self, place: u32, drive: Complex) {
        self.loose += 1;
        if drive.norm_squared() > self.stranded.0 {
            self.stranded = (drive.norm_squared(), place);
        }
    }
}

impl Elimination {
    /// Plans the removal of the nodes in `free`, the one with the fewest neighbours first and the lowest
    /// number among equals. The nodes in `keep` are not removed and come last, in their order. Pairs with
    /// a node of neither list are left aside.
    pub fn plan(free: &[u32], keep: &[u32], pairs: &[(u32, u32)]) -> Self {
        let mut around: Around = free.iter().chain(keep).map(|node| (*node, BTreeSet::new())).collect();
        for &(a, b) in pairs.iter().filter(|(a, b)| a != b) {
            if of(&mut around, a).is_some() && of(&mut around, b).is_some() {
                for (one, other) in [(a, b), (b, a)] {
                    if let Some(near) = of(&mut around, one) {
                        near.insert(other);
                    }
                }
            }
        }
        let mut order = Vec::new();
        let mut rows = Vec::new();
        let next = |around: &Around| {
            let free = around.iter().filter(|(i, _)| !keep.contains(i));
            free.min_by_key(|(i, near)| (near.len(), *i)).map(|(i, _)| *i)
        };
        while let Some(node) = next(&around) {
            let near = remove(&mut around, node);
            for &i in &near {
                if let Some(of_i) = of(&mut around, i) {
                    of_i.extend(near.iter().filter(|j| **j != i));
                }
            }
            order.push(node);
            rows.push(near);
        }
        let removed = order.len();
        for node in keep.iter().copied() {
            let near = remove(&mut around, node);
            order.push(node);
            rows.push(near);
        }
        Self::lay_out(order, removed, &rows)
    }

    /// The place of a node in the order.
    fn place(&self, node: u32) -> Option<u32> {
        self.order.iter().rposition(|one| *one == node).map(|at| at as u32)
    }

    /// Turns the rows of later neighbours into flat lists.
    fn lay_out(order: Vec<u32>, removed: usize, rows: &[BTreeSet<u32>]) -> Self {
        let mut this = Self {
            order,
            removed,
            degree: Vec::new(),
            neighbour: Vec::new(),
            gain: Vec::new(),
            start: Vec::new(),
        };
        for row in rows {
            let mut later: Vec<u32> = row.iter().filter_map(|node| this.place(*node)).collect();
            later.sort_unstable();
            this.start.push(this.neighbour.len() as u32);
            this.degree.push(later.len() as u32);
            this.neighbour.extend(later);
        }
        for place in 0..removed {
            let row = this.row(place);
            let end = row.end as u32;
            let later = this.neighbour.get(row).unwrap_or_default().to_vec();
            for (i, a) in later.iter().enumerate() {
                for b in later.iter().skip(i + 1) {
                    this.gain.push(this.slot(*a, *b).map_or(u32::MAX, |slot| slot - end));
                }
            }
        }
        this
    }

    /// The slots of a place.
    fn row(&self, place: usize) -> std::ops::Range<usize> {
        let start = self.start.get(place).copied().unwrap_or_default() as usize;
        start..start + self.degree.get(place).copied().unwrap_or_default() as usize
    }

    /// The slot of the branch between two places, if they are or become neighbours.
    pub fn slot(&self, a: u32, b: u32) -> Option<u32> {
        let row = self.row(a.min(b) as usize);
        let start = row.start as u32;
        let found = self.neighbour.get(row)?.binary_search(&a.max(b)).ok()?;
        Some(start + found as u32)
    }

    /// How many slots there are.
    pub fn slots(&self) -> usize {
        self.neighbour.len()
    }

    /// Removes the nodes. On return each slot of a removed place holds the share its neighbour has in
    /// the node's voltage, and the tie's `drive` the voltage with all neighbours at 0 V.
    ///
    /// `slots` holds the admittances by slot, `ties` the rest by place; both are changed.
    pub fn remove(&self, slots: &mut [Complex], ties: &mut [Tie]) -> Removal {
        let mut result = Removal::default();
        let (mut slots, mut neighbour, mut gain) = (slots, &*self.neighbour, &*self.gain);
        let mut ties = ties;
        for (place, degree) in self.degree.iter().enumerate().take(self.removed) {
            let degree = *degree as usize;
            let (Some((tie, later_ties)), Some((near, later_neighbour))) =
                (ties.split_first_mut(), neighbour.split_at_checked(degree))
            else {
                break;
            };
            let Some((row, later_slots)) = slots.split_at_mut_checked(degree) else { break };
            let total = row.iter().fold(tie.hold, |sum, y| sum + *y);
            let inverse = total.reciprocal_or_zero();
            if inverse == Complex::ZERO {
                result.note(place as u32, tie.drive);
            }
            let base = place as u32 + 1;
            for (i, a) in near.iter().enumerate() {
                let Some((share, others)) = row.get_mut(i..).and_then(<[Complex]>::split_first_mut) else {
                    break;
                };
                *share = *share * inverse;
                if let Some(other) = later_ties.get_mut((a - base) as usize) {
                    other.hold += *share * tie.hold;
                    other.drive += *share * tie.drive;
                }
                let (targets, rest) = gain.split_at_checked(others.len()).unwrap_or((gain, &[]));
                for (target, y) in targets.iter().zip(others.iter()) {
                    if let Some(slot) = later_slots.get_mut(*target as usize) {
                        *slot += *share * *y;
                    }
                }
                gain = rest;
            }
            tie.drive = tie.drive * inverse;
            (slots, ties, neighbour) = (later_slots, later_ties, later_neighbour);
        }
        result
    }

    /// Walks back from the last removed place to the first, leaving each node's voltage in its tie's
    /// `drive`. `slots` and `ties` are as [`Self::remove`] left them.
    pub fn walk_back(&self, slots: &[Complex], ties: &mut [Tie]) {
        let mut end = self.row(self.removed.wrapping_sub(1)).end;
        for place in (0..self.removed).rev() {
            let start = self.start.get(place).copied().unwrap_or_default() as usize;
            let shares = slots.get(start..end).unwrap_or_default();
            let near = self.neighbour.get(start..end).unwrap_or_default();
            let Some((known, later)) = ties.get_mut(place..).and_then(<[Tie]>::split_first_mut) else {
                break;
            };
            let base = place as u32 + 1;
            for (share, a) in shares.iter().zip(near) {
                if let Some(other) = later.get((a - base) as usize) {
                    known.drive += *share * other.drive;
                }
            }
            end = start;
        }
    }

    /// Which places had nothing that holds them, after a removal that found some.
    pub fn loose_places(&self, slots: &[Complex], ties: &[Tie]) -> Vec<bool> {
        let mut loose = vec![false; self.order.len()];
        for place in (0..self.removed).rev() {
            let row = self.row(place);
            let near = self.neighbour.get(row.clone()).unwrap_or_default();
            let mut shares = slots.get(row).unwrap_or_default().iter().zip(near);
            let held = ties.get(place).is_some_and(|tie| tie.hold != Complex::ZERO)
                || shares
                    .any(|(y, a)| *y != Complex::ZERO && !loose.get(*a as usize).copied().unwrap_or(true));
            if let Some(flag) = loose.get_mut(place) {
                *flag = !held;
            }
        }
        loose
    }
}

/// The neighbours of each node. Some dozens: a list finds one as soon as a tree would.
type Around = Vec<(u32, BTreeSet<u32>)>;

fn of(around: &mut Around, node: u32) -> Option<&mut BTreeSet<u32>> {
    around.iter_mut().find(|(one, _)| *one == node).map(|(_, near)| near)
}

/// Takes a node and all mention of it out of the graph and returns its neighbours.
fn remove(around: &mut Around, node: u32) -> BTreeSet<u32> {
    let Some(at) = around.iter().position(|(one, _)| *one == node) else { return BTreeSet::new() };
    let (_, near) = around.swap_remove(at);
    for i in &near {
        if let Some(of_i) = of(around, *i) {
            of_i.remove(&node);
        }
    }
    near
}
