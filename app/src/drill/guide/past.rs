//! What the log says of the past: which acts were done, in which order, and what the elements read.

use std::rc::Rc;

use bench::{Action, Display, Entry, Fact, MeterFunction, NewPart, Session, Shown};
use plant::{End, Level, Point, Screw};

/// Share below and above what volts and watts of the plate ask for within which an element passes (trade sheet 2.2,
/// common practice).
const PASSES: (f64, f64) = (0.9, 1.12);

/// A contact that makes reads less, in ohms. Common practice, no source.
const MAKES: f64 = 1.0;

/// What an element read from end to end, its wires lifted and the circuit proved dead.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Verdict {
    /// Over range.
    Open,
    /// As volts and watts of the plate ask for.
    Sound,
    /// Something else.
    Odd,
}

/// The number of an act in the log, 1 the first.
pub type Step = u32;

/// Whether an act was done, rather than refused or stopped.
pub fn was_done(entry: &Entry) -> bool {
    !matches!(entry.outcome.shown, Shown::Refused { .. } | Shown::Stopped { .. })
}

/// Acts that were done, with their numbers.
pub fn done(session: &Session) -> impl DoubleEndedIterator<Item = (Step, &Rc<Entry>)> {
    let number = |(at, entry)| (u32::try_from(at).unwrap_or(u32::MAX).saturating_add(1), entry);
    session.log.iter().enumerate().map(number).filter(|(_, entry)| was_done(entry))
}

/// The last act of a kind that was done; 0 for none.
pub fn last(session: &Session, is: impl Fn(&Action) -> bool) -> Step {
    done(session).rev().find(|(_, entry)| is(&entry.action)).map_or(0, |(step, _)| step)
}

/// The two screws of an element.
pub const fn screws(level: Level) -> [Screw; 2] {
    match level {
        Level::Upper => [Screw::UEa, Screw::UEb],
        Level::Lower => [Screw::LEa, Screw::LEb],
    }
}

/// The wire ends that belong on an element's screws.
pub fn ends(session: &Session, level: Level) -> impl Iterator<Item = End> {
    let wiring = &session.home.plant.wiring;
    End::all().filter(move |end| screws(level).contains(&end.home()) && wiring.exists(end.wire))
}

fn between(red: Point, black: Point, [a, b]: [Screw; 2]) -> bool {
    let (a, b) = (Point::Screw(a), Point::Screw(b));
    (red, black) == (a, b) || (red, black) == (b, a)
}

/// Readings of ohms between two screws that are to be believed, newest first. The heater's wires were off where
/// `lifted` says so.
fn ohms(session: &Session, pair: [Screw; 2], lifted: Option<Level>) -> Vec<(Step, Display)> {
    let mut off: Vec<End> = Vec::new();
    let mut all = Vec::new();
    for (step, entry) in done(session) {
        match &entry.action {
            Action::Lift { end } => off.push(*end),
            Action::Land { end, .. } => off.retain(|one| one != end),
            Action::Meter { function: MeterFunction::Ohms, red, black } if between(*red, *black, pair) => {
                let free = lifted.is_none_or(|level| ends(session, level).any(|end| off.contains(&end)));
                let unproved = entry.outcome.facts.iter().any(|one| matches!(one, Fact::OhmsUnproved { .. }));
                if let (true, false, Shown::Meter { display }) = (free, unproved, &entry.outcome.shown) {
                    all.push((step, *display));
                }
            }
            _ => {}
        }
    }
    all.reverse();
    all
}

/// What a reading says of an element of the plate's volts and watts.
fn verdict(session: &Session, display: Display) -> Verdict {
    let rating = session.home.plant.plate.element;
    let asked = rating.volts.get() * rating.volts.get() / rating.watts.get();
    match display {
        Display::Over => Verdict::Open,
        Display::Ohms { ohms } if (PASSES.0 * asked..=PASSES.1 * asked).contains(&ohms.get()) => {
            Verdict::Sound
        }
        _ => Verdict::Odd,
    }
}

/// What an element last read from end to end.
pub fn end_to_end(session: &Session, level: Level) -> Option<(Step, Verdict)> {
    let (step, display) = *ohms(session, screws(level), Some(level)).first()?;
    Some((step, verdict(session, display)))
}

/// The screws between which the lower element answers from the upper compartment: from the upper thermostat's
/// transfer contact through the lower thermostat, which is closed while it is cold, to the permanent leg.
pub const LOWER_PATH: [Screw; 2] = [Screw::U4, Screw::H4];

/// What the lower element last read through its thermostat.
pub fn lower_path(session: &Session) -> Option<(Step, Verdict)> {
    let (step, display) = *ohms(session, LOWER_PATH, None).first()?;
    Some((step, verdict(session, display)))
}

/// When a pole of the limit was last read, and whether it makes.
pub fn pole(session: &Session, pair: [Screw; 2]) -> Option<(Step, bool)> {
    let (step, display) = *ohms(session, pair, None).first()?;
    Some((step, matches!(display, Display::Ohms { ohms } if ohms.get() < MAKES)))
}

/// When a screw was last read against the shell, its wires off; 0 for never.
pub fn to_shell(session: &Session, level: Level, screw: Screw) -> Step {
    ohms(session, [screw, Screw::Shell], Some(level)).first().map_or(0, |(step, _)| *step)
}

/// When power last came on, and when it last came on before the tank was full; 0 for never.
pub fn power_on(session: &Session) -> (Step, Step) {
    let mut on = (0, 0);
    for (step, entry) in done(session) {
        for fact in &entry.outcome.facts {
            if let Fact::Energised { full, .. } = fact {
                on = (step, if *full { on.1 } else { step });
            }
        }
    }
    on
}

/// When an element was last changed, and whether for what the plate asks for; step 0 for never.
pub fn changed(session: &Session, of: Level) -> (Step, bool) {
    let plate = &session.home.plant.plate;
    let fitted = done(session).rev().find_map(|(step, entry)| match &entry.action {
        Action::Replace { part: NewPart::Element { level, rating, length, .. } } if *level == of => {
            Some((step, *rating == plate.element && *length == plate.length))
        }
        _ => None,
    });
    fitted.unwrap_or((0, false))
}
