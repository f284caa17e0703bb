//! The coach's hint: the next thing a careful technician would see to, from what the learner has done. It
//! never looks at what is wrong with the heater.

use bench::{Action, Session};

use crate::text;

/// What the coach would see to next.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Step {
    /// Nobody has been asked anything.
    Ask,
    /// The plate has not been read.
    Plate,
    /// Nothing has been looked at or measured.
    Watch,
    /// The household does not know.
    Tell,
    /// Work has begun and no lock is on.
    Lock,
    /// The meter has not been proved.
    Prove,
    /// Dead has not been shown.
    Dead,
    /// Nothing was found yet.
    Find,
    /// A finding stands and nothing was done about it.
    Repair,
    /// Water first, then power.
    Refill,
    /// The repair has not been shown to hold.
    Show,
    /// The customer does not know the result.
    Result,
    /// All there is to do is to hand over.
    HandOver,
}

/// The hint in words.
pub fn hint(session: &Session) -> text::Label {
    text::hint(step(session))
}

fn step(session: &Session) -> Step {
    let did = |test: fn(&Action) -> bool| session.log.iter().any(|entry| test(&entry.action));
    let me = &session.me;
    let plumbing = &session.home.plant.plumbing;
    let locked = did(|a| matches!(a, Action::Lock { on: true, .. } | Action::BoxLock { on: true }));
    let repaired = did(|a| {
        matches!(
            a,
            Action::Replace { .. }
                | Action::Remake { .. }
                | Action::PressReset
                | Action::SetClock
                | Action::Dial { .. }
                | Action::Advise { .. }
        )
    });
    match () {
        () if !did(|a| matches!(a, Action::Ask { .. })) => Step::Ask,
        () if !did(|a| matches!(a, Action::Read { .. })) => Step::Plate,
        () if !did(|a| matches!(a, Action::Look { .. } | Action::Meter { .. } | Action::Bucket { .. })) => {
            Step::Watch
        }
        () if !me.household_told => Step::Tell,
        () if !locked => Step::Lock,
        () if me.proved_dead.is_none() && me.meter_proved.is_none() => Step::Prove,
        () if me.proved_dead.is_none() && me.findings.is_empty() => Step::Dead,
        () if me.findings.is_empty() => Step::Find,
        () if !repaired => Step::Repair,
        () if plumbing.cold_valve <= 0.0 || !me.purged => Step::Refill,
        () if !did(|a| matches!(a, Action::WaitForCutOut | Action::Clamp { .. })) => Step::Show,
        () if !me.result_told => Step::Result,
        () => Step::HandOver,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_hint_is_to_ask() {
        assert_eq!(step(&Session::begin(crate::begin::example())), Step::Ask);
    }
}
