//! A wiring made ready for solving many times.

use super::elimination::{Elimination, Removal, Tie};
use super::{Complex, Network, NetworkError, Solution, bounded, passive};

/// The order of work for one wiring: which nodes exist, which are held, and between which nodes the
/// branches and injections lie. Admittances, potentials and currents may change between solutions.
#[derive(Clone, Debug)]
pub struct Plan {
    nodes: u32,
    elimination: Elimination,
    branches: Vec<Stamp>,
    fixed: Vec<u32>,
    injections: Vec<Ends>,
}

/// Working memory of a solution. It holds no state: any scratch serves any plan.
#[derive(Clone, Debug, Default)]
pub struct Scratch {
    slots: Vec<Complex>,
    ties: Vec<Tie>,
}

/// Where a node is found.
#[derive(Clone, Copy, Debug)]
enum Seat {
    /// At a place of the elimination.
    Place(u32),
    /// In the list of fixed potentials.
    Fixed(u32),
}

/// A branch of the wiring and where its admittance goes.
#[derive(Clone, Copy, Debug)]
struct Stamp {
    a: u32,
    b: u32,
    target: Target,
}

/// Where an admittance goes.
#[derive(Clone, Copy, Debug)]
enum Target {
    /// Between two unknown nodes.
    Slot(u32),
    /// Between an unknown node and a fixed potential.
    Tie { place: u32, fixed: u32 },
    /// Nowhere: both ends are held, or are the same.
    Nothing,
}

/// An injection of the wiring.
#[derive(Clone, Copy, Debug)]
struct Ends {
    from: (u32, Seat),
    to: (u32, Seat),
}

impl Plan {
    /// Plans for the wiring of a network.
    pub fn new(network: &Network) -> Result<Self, NetworkError> {
        network.check()?;
        let mut seats: Vec<Option<Seat>> = vec![None; network.nodes as usize];
        for (fixed, source) in (0..).zip(&network.fixed) {
            if let Some(seat) = seats.get_mut(source.node as usize) {
                *seat = Some(Seat::Fixed(fixed));
            }
        }
        let free: Vec<u32> =
            (0..).zip(&seats).filter_map(|(node, seat)| seat.is_none().then_some(node)).collect();
        let pairs: Vec<(u32, u32)> = network.branches.iter().map(|b| (b.a, b.b)).collect();
        let elimination = Elimination::plan(&free, &[], &pairs);
        for (place, node) in (0..).zip(&elimination.order) {
            if let Some(seat) = seats.get_mut(*node as usize) {
                *seat = Some(Seat::Place(place));
            }
        }
        let seat = |node: u32| seats.get(node as usize).copied().flatten().unwrap_or(Seat::Place(u32::MAX));
        let target = |a: u32, b: u32| match (seat(a), seat(b)) {
            (Seat::Place(a), Seat::Place(b)) => elimination.slot(a, b).map_or(Target::Nothing, Target::Slot),
            (Seat::Place(place), Seat::Fixed(fixed)) | (Seat::Fixed(fixed), Seat::Place(place)) => {
                Target::Tie { place, fixed }
            }
            (Seat::Fixed(_), Seat::Fixed(_)) => Target::Nothing,
        };
        Ok(Self {
            nodes: network.nodes,
            branches: pairs.iter().map(|&(a, b)| Stamp { a, b, target: target(a, b) }).collect(),
            fixed: network.fixed.iter().map(|f| f.node).collect(),
            injections: network
                .injections
                .iter()
                .map(|i| Ends { from: (i.from, seat(i.from)), to: (i.to, seat(i.to)) })
                .collect(),
            elimination,
        })
    }

    /// Solves a network of the planned wiring.
    pub fn solve(&self, network: &Network) -> Result<Solution, NetworkError> {
        let mut solution = Solution::default();
        self.solve_into(network, &mut Scratch::default(), &mut solution)?;
        Ok(solution)
    }

    /// Solves a network of the planned wiring. Once `scratch` and `solution` have grown to its size this
    /// allocates nothing, unless a node floats. After an error `solution` is as it was before.
    pub fn solve_into(
        &self,
        network: &Network,
        scratch: &mut Scratch,
        solution: &mut Solution,
    ) -> Result<(), NetworkError> {
        let Scratch { slots, ties } = scratch;
        self.stamp(network, slots, ties)?;
        let removal = self.elimination.remove(slots, ties);
        let loose = if removal.loose == 0 {
            Vec::new()
        } else {
            self.check_return(network, removal)?;
            self.elimination.loose_places(slots, ties)
        };
        self.elimination.walk_back(slots, ties);
        solution.volts.resize(self.nodes as usize, Complex::ZERO);
        solution.floating.clear();
        solution.floating.resize(self.nodes as usize, false);
        for source in &network.fixed {
            put(&mut solution.volts, source.node, source.volts);
        }
        for (node, tie) in self.elimination.order.iter().zip(&*ties) {
            put(&mut solution.volts, *node, tie.drive);
        }
        for (node, loose) in self.elimination.order.iter().zip(loose) {
            put(&mut solution.floating, *node, loose);
        }
        Ok(())
    }

    /// Lays the network's values out in the order of removal, checking that it is the planned wiring and
    /// that every value is one we take.
    fn stamp(
        &self,
        network: &Network,
        slots: &mut Vec<Complex>,
        ties: &mut Vec<Tie>,
    ) -> Result<(), NetworkError> {
        slots.clear();
        slots.resize(self.elimination.slots(), Complex::ZERO);
        ties.clear();
        ties.resize(self.elimination.order.len(), Tie::default());
        let mut same = self.nodes == network.nodes
            && self.branches.len() == network.branches.len()
            && self.fixed.len() == network.fixed.len()
            && self.injections.len() == network.injections.len();
        let mut sound = true;
        for (node, source) in self.fixed.iter().zip(&network.fixed) {
            same &= *node == source.node;
            sound &= bounded(source.volts);
        }
        for (stamp, branch) in self.branches.iter().zip(&network.branches) {
            same &= stamp.a == branch.a && stamp.b == branch.b;
            sound &= passive(branch.admittance);
            match stamp.target {
                Target::Slot(slot) => {
                    if let Some(y) = slots.get_mut(slot as usize) {
                        *y += branch.admittance;
                    }
                }
                Target::Tie { place, fixed } => {
                    if let (Some(tie), Some(source)) =
                        (ties.get_mut(place as usize), network.fixed.get(fixed as usize))
                    {
                        tie.hold += branch.admittance;
                        tie.drive += branch.admittance * source.volts;
                    }
                }
                Target::Nothing => {}
            }
        }
        for (ends, source) in self.injections.iter().zip(&network.injections) {
            same &= ends.from.0 == source.from && ends.to.0 == source.to;
            sound &= bounded(source.amps);
            for (seat, amps) in [(ends.from.1, -source.amps), (ends.to.1, source.amps)] {
                if let Seat::Place(place) = seat
                    && let Some(tie) = ties.get_mut(place as usize)
                {
                    tie.drive += amps;
                }
            }
        }
        match (same, sound) {
            (true, true) => Ok(()),
            (true, false) => Err(network.check().err().unwrap_or(NetworkError::OtherWiring)),
            (false, _) => Err(NetworkError::OtherWiring),
        }
    }

    /// Refuses injections into a part that nothing holds, unless they come out of the same part again.
    #[cold]
    fn check_return(&self, network: &Network, removal: Removal) -> Result<(), NetworkError> {
        let (squared, place) = removal.stranded;
        let largest = network.injections.iter().map(|i| i.amps.norm_squared()).fold(0.0, f64::max);
        // Rounding of a current that does come back leaves some 1e-16 of it: a billionth tells them apart.
        if squared > 1e-18 * largest {
            let node = self.elimination.order.get(place as usize).copied().unwrap_or_default();
            return Err(NetworkError::NoReturn { node });
        }
        Ok(())
    }
}

/// Writes one entry of a list that is known to be long enough.
#[inline]
fn put<T>(list: &mut [T], at: u32, value: T) {
    if let Some(entry) = list.get_mut(at as usize) {
        *entry = value;
    }
}
