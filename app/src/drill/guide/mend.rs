//! Changing the element, water before power, and the proof that the repair holds.

use bench::{Action, Clamped, Cover, MeterFunction, NewPart, Session, Shown};
use plant::fault::FaultId;
use plant::{Level, Place, Tap, Wire};
use quantity::Volume;

use super::next::{Next, is_locked, is_off, slot};
use super::past::{self, Verdict, last};
use super::prove::place;
use super::stage::Stage;
use crate::drill::known::Known;

/// The tap that is run.
const TAP: Tap = Tap::Kitchen;
/// How long to wait at a time, in minutes.
const WHILE: f64 = 10.0;
/// A bucket that shows whether the water is hot.
const BUCKET: Volume = Volume::gallons(5.0);
/// Current by which something heats, in amperes.
const HEATS: f64 = 1.0;

/// An open element as a finding names it.
pub const fn open(level: Level) -> FaultId {
    match level {
        Level::Upper => FaultId::F02,
        Level::Lower => FaultId::F01,
    }
}

/// A new element is in, it has not been run dry since, and nothing read says that it is open.
pub fn is_changed(session: &Session, level: Level) -> bool {
    let (changed, right) = past::changed(session, level);
    let dry = past::power_on(session).1;
    let read = past::end_to_end(session, level);
    let after = |than: u32| read.filter(|(step, _)| *step > than).map(|(_, verdict)| verdict);
    changed > 0
        && right
        && after(changed) != Some(Verdict::Open)
        && (dry < changed || after(dry) == Some(Verdict::Sound))
}

fn step(stage: Stage, say: &'static str, at: Place, action: Action) -> Option<Next> {
    Some(Next::at(stage, say, at, action))
}

/// The way to a new element.
pub fn change(session: &Session, level: Level) -> Next {
    let part = NewPart::asked_by(&session.home.plant.plate, level);
    agreed(session)
        .or_else(|| emptied(session))
        .unwrap_or_else(|| Next::at(Stage::Changed, "guide-change", Place::Van, Action::Replace { part }))
}

/// The cost, until the customer agrees to it.
pub fn agreed(session: &Session) -> Option<Next> {
    let ask = || Next::at(Stage::Changed, "guide-cost", Place::Customer, Action::AgreeCost);
    (!session.me.cost_agreed).then(ask)
}

/// The way to a tank that is low enough.
fn emptied(session: &Session) -> Option<Next> {
    let at = |say, at, act| step(Stage::Changed, say, at, act);
    let pipes = &session.home.plant.plumbing;
    if pipes.cold_valve > 0.0 {
        return at("guide-cold-off", Place::HeaterTop, Action::ColdValve { opening: 0.0 });
    }
    if pipes.taps.iter().all(|tap| *tap <= 0.0) {
        return at("guide-air", Place::Taps, Action::Tap { tap: TAP, opening: 1.0 });
    }
    if !pipes.hose {
        return at("guide-hose", Place::Drain, Action::Hose { on: true });
    }
    if pipes.drain_valve <= 0.0 {
        return at("guide-drain", Place::Drain, Action::Drain { opening: 1.0 });
    }
    let waited = last(session, |act| matches!(act, Action::Wait { .. }));
    let opened = last(session, |act| matches!(act, Action::Drain { .. }));
    if waited < opened {
        return Some(Next::kit(Stage::Changed, "guide-drain-wait", Action::Wait { minutes: WHILE }));
    }
    None
}

/// From the new part to the end of the job.
pub fn finish(session: &Session, known: &Known, level: Level) -> Next {
    landed(session, level)
        .or_else(|| refilled(session, level))
        .or_else(|| powered(session, known, level))
        .or_else(|| proved(session))
        .unwrap_or_else(|| hand_over(session))
}

fn landed(session: &Session, level: Level) -> Option<Next> {
    let wiring = &session.home.plant.wiring;
    let end = past::ends(session, level).find(|end| wiring.joint(*end).on.is_none())?;
    let (changed, _) = past::changed(session, level);
    let read = past::end_to_end(session, level).map_or(0, |(step, _)| step);
    if read < changed && session.me.proved_dead.is_some() {
        let points = past::screws(level);
        return Some(Next::reading(
            Stage::Changed,
            "guide-new-ohms",
            place(level),
            MeterFunction::Ohms,
            points,
        ));
    }
    // The guide knows no more of it than the learner does.
    if session.loose(end).is_some() {
        return Some(Next {
            stage: Stage::Changed,
            say: "guide-loose",
            action: None,
            at: Some(place(level)),
        });
    }
    step(Stage::Changed, "guide-land", place(level), Action::Land { end, screw: end.home(), torqued: true })
}

fn refilled(session: &Session, level: Level) -> Option<Next> {
    let at = |say, at, act| step(Stage::Refilled, say, at, act);
    let pipes = &session.home.plant.plumbing;
    if pipes.drain_valve > 0.0 {
        return at("guide-drain-shut", Place::Drain, Action::Drain { opening: 0.0 });
    }
    if pipes.hose {
        return at("guide-hose-off", Place::Drain, Action::Hose { on: false });
    }
    if !session.me.purged && pipes.taps.iter().all(|tap| *tap <= 0.0) {
        return at("guide-air-out", Place::Taps, Action::Tap { tap: TAP, opening: 1.0 });
    }
    if pipes.cold_valve < 1.0 {
        return at("guide-cold-on", Place::HeaterTop, Action::ColdValve { opening: 1.0 });
    }
    if !session.me.purged {
        return Some(Next::kit(Stage::Refilled, "guide-fill-wait", Action::Wait { minutes: WHILE }));
    }
    let drained = last(session, |act| matches!(act, Action::Drain { opening } if *opening > 0.0));
    if pipes.relief.lever {
        return at("guide-lever-down", Place::Relief, Action::ReliefLever { up: false });
    }
    if last(session, |act| matches!(act, Action::ReliefLever { up: true })) < drained {
        return at("guide-lever", Place::Relief, Action::ReliefLever { up: true });
    }
    if let Some((&tap, _)) = Tap::ALL.iter().zip(pipes.taps).find(|(_, opening)| *opening > 0.0) {
        return at("guide-tap-shut", Place::Taps, Action::Tap { tap, opening: 0.0 });
    }
    let looked = |act: &Action| matches!(act, Action::Look { at } if *at == place(level));
    let outer_off = Cover::over(level).first().is_some_and(|outer| session.access.off.contains(outer));
    if last(session, looked) < drained && outer_off {
        return at("guide-leak", place(level), Action::Look { at: place(level) });
    }
    None
}

/// The innermost cover that is off, of those given from the outside in.
fn to_close(session: &Session, covers: &[Cover]) -> Option<Cover> {
    covers.iter().copied().rev().find(|cover| session.access.off.contains(cover))
}

fn powered(session: &Session, known: &Known, level: Level) -> Option<Next> {
    let at = |say, at, act| step(Stage::On, say, at, act);
    for one in [level, Level::Upper, Level::Lower] {
        if let Some(which) = to_close(session, Cover::over(one)) {
            return at("guide-close", place(one), Action::Cover { which, off: false });
        }
    }
    let slot = slot(known)?;
    if !is_off(known, slot) {
        return None;
    }
    // The leads of the heater are laid bare for the clamp while the lock is still on.
    if !session.access.off.contains(&Cover::JunctionBox) {
        let act = Action::Cover { which: Cover::JunctionBox, off: true };
        return at("guide-box", Place::JunctionBox, act);
    }
    if is_locked(session, slot) {
        return at("guide-unlock", Place::LoadCenter, Action::Lock { slot, on: false });
    }
    at("guide-on", Place::LoadCenter, Action::Breaker { slot, on: true })
}

/// When the clamp last showed current, or none, after a step; 0 for never.
fn clamped(session: &Session, after: u32, current: bool) -> u32 {
    let shows = |shown: &Shown| matches!(shown, Shown::Clamp { amps } if (amps.get() > HEATS) == current);
    let one = |act: &Action| matches!(act, Action::Clamp { around: Clamped::Wire { .. } });
    past::done(session)
        .rfind(|(step, entry)| *step > after && one(&entry.action) && shows(&entry.outcome.shown))
        .map_or(0, |(step, _)| step)
}

fn proved(session: &Session) -> Option<Next> {
    let at = |say, at, act| step(Stage::Proved, say, at, act);
    let on = past::power_on(session).0;
    let clamp = Action::Clamp { around: Clamped::Wire { wire: Wire::FeedA } };
    let cut_out = last(session, |act| matches!(act, Action::WaitForCutOut));
    let heats = clamped(session, on, true);
    let rests = clamped(session, cut_out.max(on), false);
    let box_open = session.access.off.contains(&Cover::JunctionBox);
    let needed = heats == 0 || cut_out < on || rests == 0;
    if needed && !box_open {
        let act = Action::Cover { which: Cover::JunctionBox, off: true };
        return at("guide-box", Place::JunctionBox, act);
    }
    if cut_out < on && heats == 0 {
        return at("guide-amps", Place::JunctionBox, clamp);
    }
    if cut_out < on {
        return Some(Next::kit(Stage::Proved, "guide-cut-out", Action::WaitForCutOut));
    }
    if rests == 0 {
        return at("guide-no-amps", Place::JunctionBox, clamp);
    }
    if box_open {
        let act = Action::Cover { which: Cover::JunctionBox, off: false };
        return at("guide-box-shut", Place::JunctionBox, act);
    }
    if last(session, |act| matches!(act, Action::Bucket { .. })) < on {
        return at("guide-hot", Place::Taps, Action::Bucket { tap: TAP, volume: BUCKET });
    }
    None
}

fn hand_over(session: &Session) -> Next {
    if !session.me.result_told {
        return Next::at(Stage::Over, "guide-result", Place::Customer, Action::TellResult);
    }
    Next::kit(Stage::Over, "guide-hand-over", Action::HandOver)
}
