//! Headings and short names of places, screws and settings.

use bench::{Clamped, MeterFunction, Mode};
use plant::{End, Level, Place, Point, Screw};

use super::{Label, filled, text, voice};

/// A place, as a heading.
pub fn place(place: Place) -> String {
    text(&format!("title-{}", place))
}

/// A screw as the drawing marks it; bare metal by what it is.
fn short(screw: Screw) -> String {
    match screw {
        Screw::Shell => text("mark-shell"),
        Screw::Pipe => text("mark-pipe"),
        other => other.name().to_owned(),
    }
}

/// A screw with what it is, by the name of that in the book.
fn full(screw: Screw, what: &str) -> String {
    filled("point-full", &[("mark", short(screw).into()), ("what", text(what).into())])
}

/// The letter of a wire end that lost its name in the job under way.
pub fn letter(end: End) -> Option<char> {
    super::say(crate::units::Units::Us, |voice| voice.letter(end))
}

/// A point as the drawing marks it: short.
pub fn mark(point: Point) -> String {
    match point {
        Point::Screw(screw) => short(screw),
        Point::End(end) => match letter(end) {
            Some(letter) => letter.into(),
            None => filled("mark-wire", &[("screw", end.home().name().into())]),
        },
    }
}

/// A point in full, whatever heater it belongs to.
pub fn any_point(point: Point) -> String {
    match point {
        Point::Screw(which) => full(which, &format!("point-{}", which.name())),
        Point::End(which) => filled("point-end", &[("end", voice::end(which).into())]),
    }
}

/// A function of the meter, as its dial has it.
pub const fn function(function: MeterFunction) -> Label {
    Label(match function {
        MeterFunction::Volts => "dial-volts",
        MeterFunction::LowVolts => "dial-low-volts",
        MeterFunction::Ohms => "dial-ohms",
        MeterFunction::Continuity => "dial-continuity",
        MeterFunction::Insulation => "dial-insulation",
        MeterFunction::Amps => "dial-amps",
    })
}

/// What a clamp goes around.
pub fn clamped(around: Clamped) -> String {
    match around {
        Clamped::Wire { wire: which } => voice::wire(which),
        Clamped::BothLegs => text("clamp-both-legs"),
        Clamped::Pair { first, second } => filled(
            "clamp-pair",
            &[("first", voice::wire(first).into()), ("second", voice::wire(second).into())],
        ),
    }
}

/// An opening of a valve.
pub fn opening(opening: f64) -> String {
    if opening <= 0.0 {
        text("sheet-shut")
    } else if opening >= 1.0 {
        text("sheet-open")
    } else {
        filled("sheet-part-open", &[("percent", format!("{:.0}", opening * 100.0).into())])
    }
}

/// A mode, as the header's tag.
pub fn mode(mode: Mode) -> String {
    super::say(crate::units::Units::Us, |voice| voice.mode(mode))
}

/// A cover's name under it.
pub const fn cover_short(level: Level) -> Label {
    Label(match level {
        Level::Upper => "sheet-upper-cover",
        Level::Lower => "sheet-lower-cover",
    })
}
