//! Covers, insulation and shields.

use plant::Level;
use quantity::Seconds;

use super::turn::Turn;
use super::{Answered, reach};
use crate::action::Cover;
use crate::shown::{Refusal, Shown};

/// Takes a cover off or puts it back. What is in front of it has to be off either way; leaving something
/// out behind it is possible, as it is on the job.
pub(super) fn cover(turn: &mut Turn, which: Cover, off: bool, time: Seconds) -> Answered {
    let lower = matches!(which, Cover::Lower | Cover::LowerInsulation | Cover::LowerShield);
    if which == Cover::BoxDoor && turn.s.home.plant.in_line.is_none() {
        return Err(Refusal::NotHere);
    }
    if lower && !turn.s.home.plant.plate.has(Level::Lower) {
        return Err(Refusal::NotHere);
    }
    if turn.s.access.off.contains(&which) == off {
        return Err(Refusal::AlreadySo);
    }
    if let Some(front) = reach::in_front(which).iter().find(|c| !turn.s.access.off.contains(c)) {
        return Err(Refusal::OrderOfCovers { cover: *front });
    }
    if off {
        turn.s.access.off.insert(which);
    } else {
        turn.s.access.off = turn.s.access.off.iter().copied().filter(|one| *one != which).collect();
    }
    let level = match which {
        Cover::UpperInsulation => Some(Level::Upper),
        Cover::LowerInsulation => Some(Level::Lower),
        _ => None,
    };
    if let Some(there) = level.and_then(|l| turn.s.home.plant.insulated.get_mut(l.index())) {
        *there = !off;
    }
    turn.pass(time);
    Ok(Shown::Done)
}
