//! How the time was spent: acts that belong together, for the bar under the drawing.

use bench::{Action, Entry};
use quantity::Seconds;

/// What a stretch of time was for.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Phase {
    /// With the people.
    People,
    /// Looking, reading, listening.
    Look,
    /// Power off, lock, covers, proving.
    Safe,
    /// Readings.
    Measure,
    /// Wires and parts.
    Repair,
    /// Draining, filling, running taps.
    Water,
    /// Waiting.
    Wait,
}

impl Phase {
    /// Its name in the book.
    pub const fn name(self) -> &'static str {
        match self {
            Self::People => "people",
            Self::Look => "look",
            Self::Safe => "safe",
            Self::Measure => "measure",
            Self::Repair => "repair",
            Self::Water => "water",
            Self::Wait => "wait",
        }
    }

    /// What an act is for.
    pub const fn of(action: &Action) -> Self {
        match action {
            Action::Ask { .. }
            | Action::TellHousehold
            | Action::TellResult
            | Action::Advise { .. }
            | Action::Report { .. }
            | Action::Finding { .. }
            | Action::StopAndCall { .. }
            | Action::HandOver
            | Action::TimeUp { .. } => Self::People,
            Action::Read { .. }
            | Action::Look { .. }
            | Action::Listen { .. }
            | Action::Smell { .. }
            | Action::Touch { .. }
            | Action::Wipe { .. } => Self::Look,
            Action::Gloves { .. }
            | Action::EyeProtection { .. }
            | Action::Breaker { .. }
            | Action::Lock { .. }
            | Action::Relabel { .. }
            | Action::Cover { .. }
            | Action::ProveMeter { .. } => Self::Safe,
            Action::TryStart
            | Action::Meter { .. }
            | Action::ZeroLeads
            | Action::SpareLeads
            | Action::Clamp { .. }
            | Action::Thermometer { .. }
            | Action::Gauge { .. }
            | Action::ReadGauge
            | Action::TankCharge => Self::Measure,
            Action::PressReset
            | Action::Lift { .. }
            | Action::Label { .. }
            | Action::Land { .. }
            | Action::Remake { .. }
            | Action::Dial { .. }
            | Action::Seat { .. }
            | Action::Replace { .. } => Self::Repair,
            Action::ColdValve { .. }
            | Action::Tap { .. }
            | Action::Bucket { .. }
            | Action::Hose { .. }
            | Action::Drain { .. }
            | Action::ReliefLever { .. } => Self::Water,
            Action::Wait { .. } | Action::WaitForCutOut => Self::Wait,
        }
    }
}

/// A stretch of one phase.
#[derive(Clone, PartialEq, Debug)]
pub struct Stretch {
    /// What for.
    pub phase: Phase,
    /// From.
    pub from: Seconds,
    /// To.
    pub to: Seconds,
    /// First and last step in it.
    pub steps: (u32, u32),
}

/// The stretches of a job. Acts that took no time join what surrounds them.
pub fn stretches<'a>(entries: impl IntoIterator<Item = &'a Entry>) -> Vec<Stretch> {
    let mut all: Vec<Stretch> = Vec::new();
    for (entry, step) in entries.into_iter().zip(1u32..) {
        let phase = Phase::of(&entry.action);
        let to = entry.at + entry.outcome.took;
        match all.last_mut() {
            Some(last) if last.phase == phase || entry.outcome.took.get() <= 0.0 => {
                last.to = to;
                last.steps.1 = step;
            }
            _ => all.push(Stretch { phase, from: entry.at, to, steps: (step, step) }),
        }
    }
    all
}
