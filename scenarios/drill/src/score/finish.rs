//! Finish: refilled, purged, energised in order, measured, set, covered, leak-checked, told.

use bench::{Action, Clamped, Ending, Fact, Session};
use plant::{Circuit, Handle, Level, Place};

use super::{Case, Detail, Ledger, hurt, steps};
use crate::left;
use crate::rubric::RuleId;

/// Dials may stand this far apart or above 120 °F by reading error. Common practice, no source.
const DIAL_SLACK_F: f64 = 3.0;
/// A wait this long after power on shows the heater working; shorter ones do not. Common practice, no source.
const LONG_WAIT_MINUTES: f64 = 20.0;

pub(super) fn judge(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    match case.session.ended {
        // Handed back with nothing found and nothing cured: given up, whatever was left tidy.
        Some(Ending::HandedOver) if case.session.me.findings.is_empty() && !case.cured => {
            ledger.charge(RuleId::NotFinished, None, Detail::Plain);
        }
        Some(Ending::HandedOver) => handed_over(case, ledger),
        Some(Ending::Called { .. }) if hurt::ambulance_called(case.session) => {
            if !left::harmless(case.session) {
                ledger.charge(RuleId::LeftUnsafe, None, Detail::Plain);
            }
        }
        Some(Ending::Called { .. }) => called(case, ledger),
        _ => ledger.charge(RuleId::NotFinished, None, Detail::Plain),
    }
    order(case, ledger);
    labels(case, ledger);
}

/// What the order of things was when power came back.
fn order(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    for (step, entry) in steps::done(case.session) {
        for fact in &entry.outcome.facts {
            if let Fact::Energised { full, purged, .. } = *fact {
                if !full {
                    ledger.charge_once(RuleId::EnergisedNotFull, Some(step), Detail::Plain);
                } else if !purged {
                    ledger.charge_once(RuleId::NotPurged, Some(step), Detail::Plain);
                }
            }
        }
    }
}

fn handed_over(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    let session = case.session;
    let energised = steps::last(session, |e| steps::has(e, |f| matches!(f, Fact::Energised { .. })));
    let drained = steps::last(session, |e| matches!(e.action, Action::Drain { opening } if opening > 0.0));
    if let Some(drained) = drained {
        if !steps::after(session, drained, |a| matches!(a, Action::ReliefLever { up: true })) {
            ledger.charge(RuleId::ReliefNotLifted, None, Detail::Plain);
        }
        if !steps::after(session, drained, looks_for_leak) {
            ledger.charge(RuleId::LeakNotLookedFor, None, Detail::Plain);
        }
    }
    if let Some(on) = energised {
        if !steps::after(session, on, |a| matches!(a, Action::Clamp { around } if shows_a_leg(around))) {
            ledger.charge(RuleId::NotMeasured, None, Detail::Plain);
        }
        if !steps::after(session, on, runs_on) {
            ledger.charge(RuleId::NotRunToCutOut, None, Detail::Plain);
        }
    }
    state(case, ledger);
    if !session.me.result_told {
        ledger.charge(RuleId::CustomerNotTold, None, Detail::Plain);
    }
}

fn shows_a_leg(around: &Clamped) -> bool {
    matches!(around, Clamped::Wire { .. })
}

fn runs_on(act: &Action) -> bool {
    match act {
        Action::WaitForCutOut => true,
        Action::Wait { minutes } | Action::LetThemUse { minutes } => *minutes >= LONG_WAIT_MINUTES,
        _ => false,
    }
}

fn looks_for_leak(act: &Action) -> bool {
    match act {
        Action::Look { at } => !matches!(at, Place::Customer | Place::LoadCenter | Place::Van | Place::Taps),
        Action::Wipe { .. } => true,
        _ => false,
    }
}

/// How everything was left.
fn state(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    let session = case.session;
    let plant = &session.home.plant;
    // A heater of one element has one dial.
    let dials = Level::ALL.iter().zip(&plant.thermostats).filter(|(level, _)| plant.plate.has(**level));
    let (low, high) = dials.fold((f64::INFINITY, 0.0_f64), |(low, high), (_, t)| {
        (low.min(t.dial.to_fahrenheit()), high.max(t.dial.to_fahrenheit()))
    });
    if high - low > DIAL_SLACK_F || high > 120.0 + DIAL_SLACK_F {
        ledger.charge(RuleId::DialsLeft, steps::dial_turned(session), Detail::Plain);
    }
    // A line for how something was left names the last act that left it so.
    let by = |act: &dyn Fn(&Action) -> bool| steps::last(session, |entry| act(&entry.action));
    let off = &session.access.off;
    if !off.is_empty() {
        let uncovers =
            |act: &Action| matches!(act, Action::Cover { which, off: true } if off.contains(which));
        ledger.charge(RuleId::CoversOff, by(&uncovers), Detail::Plain);
    }
    let broken = |b: &plant::Breaker| b.handle != Handle::On;
    if plant.panel.feeding(Circuit::Heater).is_some_and(broken)
        || plant.in_line.is_some_and(|b| b.open_amiss())
    {
        ledger.charge(RuleId::PowerLeftOff, by(&cuts), Detail::Plain);
    }
    if plant.panel.breakers.iter().any(|b| b.locked) || plant.in_line.is_some_and(|one| one.locked) {
        let locks =
            |act: &Action| matches!(act, Action::Lock { on: true, .. } | Action::BoxLock { on: true });
        ledger.charge(RuleId::LockLeftOn, by(&locks), Detail::Plain);
    }
    let open = open_ways(session);
    if open.iter().any(|(is_open, _)| *is_open) {
        let step = open.iter().filter(|(is_open, _)| *is_open).filter_map(|(_, opens)| by(opens)).max();
        ledger.charge(RuleId::LeftOpen, step, Detail::Plain);
    }
}

/// Takes the power away from the heater.
fn cuts(act: &Action) -> bool {
    matches!(
        act,
        Action::Breaker { on: false, .. }
            | Action::MoveBreaker { .. }
            | Action::BoxHandle { closed: false }
            | Action::PullFuse { out: true, .. }
    )
}

/// A way for water: whether it is not as it should be left, and what act leaves it so.
type Way = (bool, fn(&Action) -> bool);

/// Taps, valves, the hose, the lever and the gauge.
fn open_ways(session: &Session) -> [Way; 7] {
    let p = &session.home.plant.plumbing;
    [
        (p.taps.iter().any(|t| *t > 0.0), |act| matches!(act, Action::Tap { opening, .. } if *opening > 0.0)),
        (p.main_valve < 0.99, |act| matches!(act, Action::MainValve { .. })),
        (p.cold_valve < 0.99, |act| matches!(act, Action::ColdValve { .. })),
        (p.drain_valve > 0.0, |act| matches!(act, Action::Drain { opening } if *opening > 0.0)),
        (p.hose, |act| matches!(act, Action::Hose { on: true })),
        (p.relief.lever, |act| matches!(act, Action::ReliefLever { up: true })),
        (session.me.gauge, |act| matches!(act, Action::Gauge { on: true })),
    ]
}

/// Stopped and called: the house left safe, the customer told.
fn called(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    let session = case.session;
    if !case.truths.iter().all(|truth| left::safe(session, truth.case)) {
        ledger.charge(RuleId::LeftUnsafe, None, Detail::Plain);
    }
    if !session.me.result_told {
        ledger.charge(RuleId::CustomerNotTold, None, Detail::Plain);
    }
}

/// Each wire end lifted before it carried a label. What goes with the old heater needs none.
fn labels(case: &Case<'_>, ledger: &mut Ledger<'_>) {
    let mut labelled = Vec::new();
    let carried = steps::last(case.session, |e| matches!(e.action, Action::CarryOut { .. }));
    for (step, entry) in steps::done(case.session) {
        match entry.action {
            Action::Label { end } => labelled.push(end),
            Action::Lift { end } if carried.is_some_and(|out| step < out) && !end.wire.is_cable() => {}
            Action::Lift { end } if !labelled.contains(&end) => {
                ledger.charge(RuleId::WiresUnlabelled, Some(step), Detail::At { end });
            }
            _ => {}
        }
    }
}
