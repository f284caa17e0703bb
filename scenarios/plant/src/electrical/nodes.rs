//! Which node of the network is which point, and what each is called in a netlist.

use crate::supply::Circuit;
use crate::{End, Level, Plant, Point, Screw, Wire};

/// The transformer's neutral: the reference.
pub(super) const NEUTRAL: u32 = 0;
/// The transformer's legs, unloaded.
pub(super) const LEGS: [u32; 2] = [1, 2];
/// No such node.
const NONE: u32 = u32::MAX;

/// Nodes by point. What is not there has none.
#[derive(Clone, Debug)]
pub(super) struct Nodes {
    screws: [u32; Screw::ALL.len()],
    ends: [[u32; 2]; Wire::ALL.len()],
    taps: [u32; 2],
    /// How many nodes there are.
    pub count: u32,
}

impl Nodes {
    /// Numbers the nodes of a plant.
    pub fn of(plant: &Plant) -> Self {
        let mut count = 1 + LEGS.len() as u32;
        let mut next = |there: bool| {
            if there {
                count += 1;
                count - 1
            } else {
                NONE
            }
        };
        // A breaker, or a wire landed on its screws, may have outlived the second cable.
        let second = plant.panel.slot_of(Circuit::SecondSource).is_some()
            || End::all().any(|end| matches!(plant.wiring.joint(end).on, Some(Screw::S1 | Screw::S2)));
        let mut screws = [NONE; Screw::ALL.len()];
        for (node, screw) in screws.iter_mut().zip(Screw::ALL) {
            let there = plant.wiring.has_screw(*screw);
            *node = next(there || (second && matches!(screw, Screw::S1 | Screw::S2)));
        }
        let mut ends = [[NONE; 2]; Wire::ALL.len()];
        for (pair, wire) in ends.iter_mut().zip(Wire::ALL) {
            let there = plant.wiring.exists(*wire);
            *pair = [next(there), next(there)];
        }
        let taps = [Level::Upper, Level::Lower]
            .map(|level| next(plant.elements.get(level.index()).is_some_and(|e| e.leak.is_some())));
        Self { screws, ends, taps, count }
    }

    /// The node of a screw.
    pub fn screw(&self, screw: Screw) -> Option<u32> {
        present(self.screws.get(screw.index()).copied())
    }

    /// The node of a wire's end.
    pub fn end(&self, end: End) -> Option<u32> {
        let pair = self.ends.get(end.wire.index())?;
        present(pair.get(usize::from(end.side & 1)).copied())
    }

    /// The node of a point.
    pub fn point(&self, point: Point) -> Option<u32> {
        match point {
            Point::Screw(screw) => self.screw(screw),
            Point::End(end) => self.end(end),
        }
    }

    /// The node inside an element where its sheath fault sits.
    pub fn tap(&self, level: Level) -> Option<u32> {
        present(self.taps.get(level.index()).copied())
    }

    /// A name for every node, of letters, digits and underscores: screws keep theirs, `feed-a@H1` becomes
    /// `feed_a_H1`, the service is `0`, `L1`, `L2`, the place of a sheath fault `UEx` or `LEx`.
    pub fn names(&self) -> Vec<String> {
        let mut names = vec![String::new(); self.count as usize];
        let mut put = |node: Option<u32>, name: String| {
            if let Some(place) = node.and_then(|node| names.get_mut(node as usize)) {
                *place = name;
            }
        };
        put(Some(NEUTRAL), "0".to_owned());
        LEGS.iter().zip(["L1", "L2"]).for_each(|(leg, name)| put(Some(*leg), name.to_owned()));
        Screw::ALL.iter().for_each(|screw| put(self.screw(*screw), screw.name().to_owned()));
        End::all().for_each(|end| put(self.end(end), end.to_string().replace(['-', '@'], "_")));
        put(self.tap(Level::Upper), "UEx".to_owned());
        put(self.tap(Level::Lower), "LEx".to_owned());
        names
    }
}

fn present(node: Option<u32>) -> Option<u32> {
    node.filter(|node| *node != NONE)
}
