//! The acts of a job in order: when, how long, what for, what they told, what they cost.

use std::collections::BTreeSet;

use bench::{Action, Session, Shown};
use plant::fault::{FaultCase, FaultId};
use quantity::Seconds;
use quantity::pairs::Pairs;
use serde::{Deserialize, Serialize};

use crate::make::Drill;
use crate::score::Score;

/// What an act was for.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
pub enum Phase {
    /// Talking with people.
    Talk,
    /// Looking and reading what is written.
    Look,
    /// Making dead, proving, protecting.
    MakeSafe,
    /// Measuring.
    Measure,
    /// Changing and making again.
    Repair,
    /// Draining, filling, valves and taps.
    Water,
    /// Waiting.
    Wait,
}

impl Phase {
    /// All of them, in order.
    pub const ALL: [Self; 7] =
        [Self::Talk, Self::Look, Self::MakeSafe, Self::Measure, Self::Repair, Self::Water, Self::Wait];

    /// What an act is for.
    pub const fn of(action: &Action) -> Self {
        match action {
            Action::Ask { .. }
            | Action::TellHousehold
            | Action::Finding { .. }
            | Action::Advise { .. }
            | Action::Report { .. }
            | Action::StopAndCall { .. }
            | Action::TellResult
            | Action::AgreeCost
            | Action::Answer { .. }
            | Action::HandOver => Self::Talk,
            Action::Read { .. }
            | Action::Look { .. }
            | Action::Listen { .. }
            | Action::Smell { .. }
            | Action::Touch { .. }
            | Action::Wipe { .. }
            | Action::Cover { .. } => Self::Look,
            Action::Gloves { .. }
            | Action::EyeProtection { .. }
            | Action::Breaker { .. }
            | Action::TryStart
            | Action::Lock { .. }
            | Action::BoxHandle { .. }
            | Action::BoxLock { .. }
            | Action::Relabel { .. }
            | Action::ProveMeter { .. } => Self::MakeSafe,
            Action::Meter { .. }
            | Action::TestFuse { .. }
            | Action::PortableHeater { .. }
            | Action::ZeroLeads
            | Action::SpareLeads
            | Action::Jack { .. }
            | Action::ChangeBattery
            | Action::NonContact { .. }
            | Action::Clamp { .. }
            | Action::Thermometer { .. }
            | Action::Gauge { .. }
            | Action::Plug { .. }
            | Action::Stops { .. }
            | Action::Sample { .. }
            | Action::LookAtAnode
            | Action::ReadWaterMeter
            | Action::ReadGauge
            | Action::TankCharge
            | Action::Bucket { .. } => Self::Measure,
            Action::PressReset
            | Action::Lift { .. }
            | Action::Label { .. }
            | Action::Land { .. }
            | Action::Remake { .. }
            | Action::Dial { .. }
            | Action::Seat { .. }
            | Action::PullFuse { .. }
            | Action::SetClock
            | Action::MoveBreaker { .. }
            | Action::PartPipes
            | Action::CarryOut { .. }
            | Action::SetHeater { .. }
            | Action::JoinPipes { .. }
            | Action::ReuseRelief
            | Action::Replace { .. } => Self::Repair,
            Action::MainValve { .. }
            | Action::ColdValve { .. }
            | Action::ReturnValve { .. }
            | Action::Ventilate
            | Action::Thaw
            | Action::Tap { .. }
            | Action::Hose { .. }
            | Action::Drain { .. }
            | Action::ReliefLever { .. } => Self::Water,
            Action::Wait { .. }
            | Action::WaitForCutOut
            | Action::LetThemUse { .. }
            | Action::TimeUp { .. } => Self::Wait,
        }
    }
}

/// What a step told about the fault.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
pub enum Told {
    /// It is no reading, or was refused.
    NoReading,
    /// Every suspect still open would have shown the same. Reported, never charged.
    NothingNew,
    /// It ruled suspects out.
    New {
        /// Which.
        ruled_out: BTreeSet<FaultId>,
    },
}

/// One act of the timeline.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Moment {
    /// Its number, 1 the first.
    pub step: u32,
    /// Its letter on the drawing.
    pub letter: String,
    /// Time into the job when it began.
    pub at: Seconds,
    /// Time of day when it began.
    pub of_day: Seconds,
    /// How long it took.
    pub took: Seconds,
    /// What it was for.
    pub phase: Phase,
    /// What it told.
    pub told: Told,
    /// Lines of the score that it caused, as indices.
    pub lines: Vec<usize>,
}

/// The letter of a step: a to z, then aa, ab and on.
pub fn letter(step: u32) -> String {
    let mut n = step.max(1);
    let mut letters = Vec::new();
    while n > 0 {
        n -= 1;
        letters.push(char::from(b'a' + (n % 26) as u8));
        n /= 26;
    }
    letters.iter().rev().collect()
}

pub(super) fn moments(drill: &Drill, end: &Session, score: &Score) -> Vec<Moment> {
    let ruled_out = ruled_out_by(drill, end);
    let lines_of = |step: u32| {
        score.lines.iter().enumerate().filter(|(_, l)| l.step == Some(step)).map(|(i, _)| i).collect()
    };
    let steps = end.log.iter().zip(1_u32..).zip(ruled_out);
    steps
        .map(|((entry, step), out)| Moment {
            step,
            letter: letter(step),
            at: entry.at,
            of_day: Seconds((drill.job.starts_at + entry.at).0 % 86_400.0),
            took: entry.outcome.took,
            phase: Phase::of(&entry.action),
            told: match &entry.outcome.shown {
                shown if !is_reading(shown) => Told::NoReading,
                _ if out.is_empty() => Told::NothingNew,
                _ => Told::New { ruled_out: out },
            },
            lines: lines_of(step),
        })
        .collect()
}

/// Something was read, seen, heard or felt.
const fn is_reading(shown: &Shown) -> bool {
    matches!(
        shown,
        Shown::Meter { .. }
            | Shown::Clamp { .. }
            | Shown::Temperature { .. }
            | Shown::Bucket(_)
            | Shown::Pressure { .. }
            | Shown::Charge { .. }
            | Shown::Sights { .. }
            | Shown::Dials { .. }
            | Shown::Stamp { .. }
            | Shown::DoneWith { .. }
    )
}

/// For each step, the suspects that fell at it: every one of a fault's variants had by then shown something
/// else than was seen.
fn ruled_out_by(drill: &Drill, end: &Session) -> Vec<BTreeSet<FaultId>> {
    let mut fell: Pairs<FaultId, Option<usize>> = Pairs::default();
    // Of two things wrong each is told from the rest in houses that have the other.
    for (_, other) in drill.each_beside() {
        for suspect in diagnosis::suspects(&drill.job.home) {
            if drill.has(&[suspect.fault]) {
                continue;
            }
            let at = first_difference(drill, end, &suspect, other);
            // A fault stands while one of its variants does: the last to fall decides.
            let last = fell.get(&suspect.fault).copied().unwrap_or(Some(0));
            fell.put(suspect.fault, last.zip(at).map(|(a, b)| a.max(b)));
        }
    }
    let mut all = vec![BTreeSet::new(); end.log.len()];
    for (fault, at) in fell.iter() {
        if let Some(set) = at.and_then(|i| all.get_mut(i)) {
            set.insert(*fault);
        }
    }
    all
}

/// The first step at which a suspect's world reads otherwise; none if it never does.
fn first_difference(
    drill: &Drill,
    end: &Session,
    suspect: &diagnosis::Suspect,
    other: Option<&FaultCase>,
) -> Option<usize> {
    let mut session = Session::begin(diagnosis::world_beside(&drill.job, suspect, other));
    end.log.iter().position(|entry| {
        let outcome = session.step(&entry.action);
        is_reading(&entry.outcome.shown) && !diagnosis::reads_alike(&entry.outcome.shown, &outcome.shown)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_go_on_after_z() {
        let letters = [1, 26, 27, 52, 53, 702, 703].map(letter);
        assert_eq!(letters, ["a", "z", "aa", "az", "ba", "zz", "aaa"]);
    }
}
