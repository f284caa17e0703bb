//! Wire ends that nobody can tell apart any more: two or more of a heater's leads that hung off together without labels.
//!
//! Folded from the log and kept nowhere: acts, physics and the record go on knowing each end. Whoever shows a job
//! under way calls these by their letters, hanging or landed since, until a new heater brings new leads.

use plant::{End, Wire};
use quantity::{Draw, Seconds};

use crate::action::Action;
use crate::session::Session;
use crate::shown::Shown;

/// A wire end that lost its name.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Lost {
    /// Which it is in truth.
    pub end: End,
    /// What it is called instead.
    pub letter: char,
    /// Time into the job when the act began that mixed it up; what is told of later acts has the letter.
    pub since: Seconds,
}

/// Whether a wire looks like others once it hangs. Cables of the house come each out of a jacket of their own, black,
/// white and bare, and the bond is green: those say what they are. A strap is no wire. A heater's leads differ by a
/// colour at most, which stays in sight and says no screw.
const fn alike(wire: Wire) -> bool {
    !wire.is_cable() && !matches!(wire, Wire::Bond | Wire::Strap)
}

impl Session {
    /// The ends that lost their names, in the order of their letters.
    pub fn lost(&self) -> Vec<Lost> {
        let wiring = &self.job.home.plant.wiring;
        let mut all: Vec<End> = End::all().filter(|end| alike(end.wire) && wiring.exists(end.wire)).collect();
        let joint = |end: &End| wiring.joint(*end);
        let mut labelled: Vec<End> = all.iter().copied().filter(|end| joint(end).labelled).collect();
        let mut hang: Vec<End> = all.iter().copied().filter(|end| joint(end).on.is_none()).collect();
        let mut lost: Vec<(End, Seconds)> = Vec::new();
        let refused = |shown: &Shown| matches!(shown, Shown::Refused { .. } | Shown::Stopped { .. });
        for entry in self.log.iter().filter(|entry| !refused(&entry.outcome.shown)) {
            match entry.action {
                Action::Label { end } => labelled.push(end),
                Action::Land { end, .. } => hang.retain(|one| *one != end),
                Action::Lift { end } if all.contains(&end) => {
                    hang.push(end);
                    let beside =
                        |one: &&End| one.home().place() == end.home().place() && !labelled.contains(*one);
                    let together: Vec<End> = hang.iter().filter(beside).copied().collect();
                    for one in together.iter().filter(|_| together.len() > 1) {
                        if lost.iter().all(|(was, _)| was != one) {
                            lost.push((*one, entry.at));
                        }
                    }
                }
                // Its leads are told by where the maker left them.
                Action::SetHeater { .. } => (hang, lost) = (Vec::new(), Vec::new()),
                _ => {}
            }
        }
        if lost.is_empty() {
            return Vec::new();
        }
        // One row of letters for the whole heater, so that none stands for two ends; shuffled over all of its leads, or
        // a late letter would be a lead that was lifted late.
        let mut draw = Draw::new(self.job.kit.seed, "letters of loose wires");
        for left in (2..=all.len()).rev() {
            all.swap(left - 1, draw.index(left));
        }
        let letters = all.into_iter().zip('A'..);
        letters
            .filter_map(|(end, letter)| {
                let (_, since) = lost.iter().find(|(one, _)| *one == end)?;
                Some(Lost { end, letter, since: *since })
            })
            .collect()
    }

    /// The letter of an end that lost its name.
    pub fn loose(&self, end: End) -> Option<char> {
        self.lost().into_iter().find(|one| one.end == end).map(|one| one.letter)
    }
}
