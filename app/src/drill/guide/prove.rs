//! Proving dead, and reading the element: in the order of the trade, each step because of what is not so yet.

use bench::{Action, Cover, KnownSource, MeterFunction, Session};
use plant::{Level, Place, Point, Screw};

use super::next::Next;
use super::past::{self, Verdict, last};
use super::stage::Stage;

/// Where an element's screws are.
pub const fn place(level: Level) -> Place {
    match level {
        Level::Upper => Place::UpperCompartment,
        Level::Lower => Place::LowerCompartment,
    }
}

fn open(session: &Session, level: Level) -> Option<Next> {
    let which = Cover::over(level).iter().copied().find(|cover| !session.access.off.contains(cover))?;
    let act = Action::Cover { which, off: true };
    Some(Next::at(Stage::Dead, "guide-open", place(level), act))
}

/// Every screw that a hand or a lead comes near where an element is looked for.
pub const fn screws(level: Level) -> [Screw; 6] {
    let [a, b] = past::screws(level);
    let [c, d] = past::LOWER_PATH;
    [Screw::H1, Screw::H3, a, b, c, d]
}

/// The next step to a circuit that is proved dead, every one of `screws` included; none once it is.
pub fn dead(session: &Session, level: Level, screws: &[Screw]) -> Option<Next> {
    let me = &session.me;
    let kit = |say, act| Some(Next::kit(Stage::Dead, say, act));
    let read = |say, at, function, points| Some(Next::reading(Stage::Dead, say, at, function, points));
    let upper = Place::UpperCompartment;
    if !me.gloves {
        return kit("guide-protect", Action::Gloves { on: true });
    }
    if !me.eyes {
        return kit("guide-protect", Action::EyeProtection { on: true });
    }
    // The legs are read at the limit, behind the upper cover.
    if let Some(next) = open(session, Level::Upper).or_else(|| open(session, level)) {
        return Some(next);
    }
    let thrown = last(session, |act| matches!(act, Action::Breaker { on: false, .. }));
    if last(session, |act| matches!(act, Action::TryStart)) < thrown {
        return Some(Next::at(Stage::Dead, "guide-try", upper, Action::TryStart));
    }
    let prove = Action::ProveMeter { on: KnownSource::Receptacle };
    let Some(proved) = me.meter_proved else { return kit("guide-meter", prove) };
    if !me.leads_zeroed {
        return kit("guide-zero", Action::ZeroLeads);
    }
    if !me.grounds.contains(&Screw::Shell) {
        return read("guide-ground", upper, MeterFunction::Ohms, [Screw::Shell, Screw::Pipe]);
    }
    if me.legs_dead[0].is_none() {
        return read("guide-legs", upper, MeterFunction::LowVolts, [Screw::H1, Screw::H3]);
    }
    let read_dead = |screw: &Screw| me.read_dead.get(&Point::Screw(*screw));
    if let Some(&screw) = screws.iter().find(|screw| read_dead(screw).is_none()) {
        return read("guide-to-ground", screw.place(), MeterFunction::LowVolts, [screw, Screw::Shell]);
    }
    let after = screws.iter().filter_map(read_dead).any(|step| *step > proved);
    if me.proved_dead.is_none() || after {
        return kit("guide-again", prove);
    }
    None
}

/// The next step to an element that is read and named; none once it is.
pub fn element(session: &Session, level: Level, evidence: Option<Verdict>) -> Option<Next> {
    let [a, b] = past::screws(level);
    let at = |say, act| Some(Next::at(Stage::Read, say, place(level), act));
    let read = |say, points| Some(Next::reading(Stage::Read, say, place(level), MeterFunction::Ohms, points));
    let wiring = &session.home.plant.wiring;
    let fresh = past::changed(session, level).0.max(past::power_on(session).1);
    let step = past::end_to_end(session, level).map_or(0, |(step, _)| step);
    if step <= fresh {
        if let Some(end) = past::ends(session, level).find(|end| wiring.joint(*end).on.is_some()) {
            return match wiring.joint(end).labelled {
                true => at("guide-lift", Action::Lift { end }),
                false => at("guide-label", Action::Label { end }),
            };
        }
        return read("guide-ohms", [a, b]);
    }
    let unread = [a, b].into_iter().find(|screw| past::to_shell(session, level, *screw) <= fresh);
    if let Some(screw) = unread.filter(|_| session.me.findings.is_empty()) {
        return read("guide-shell", [screw, Screw::Shell]);
    }
    let other = past::lower_path(session).filter(|_| level == Level::Upper);
    if level == Level::Upper && other.is_none() {
        return read("guide-lower", past::LOWER_PATH);
    }
    let alone = other.is_none_or(|(_, verdict)| verdict == Verdict::Sound);
    let Some(Verdict::Open) = evidence.filter(|_| alone) else {
        return Some(Next::unclear());
    };
    let fault = Some(super::mend::open(level));
    if session.me.findings.last().is_none_or(|last| last.fault != fault) {
        let shell = [a, b].map(|screw| past::to_shell(session, level, screw));
        let other = other.map(|(step, _)| step);
        let evidence = std::iter::once(step).chain(shell).chain(other).filter(|step| *step > 0).collect();
        return Some(Next::kit(Stage::Named, "guide-name", Action::Finding { fault, evidence }));
    }
    None
}
