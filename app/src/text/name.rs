//! Headings and short names of places, screws and settings.

use bench::{Clamped, MeterFunction, Mode};
use plant::{Layout, Level, Place, Point, Screw};

use super::voice;

/// A place, as a heading.
pub const fn place(place: Place) -> &'static str {
    match place {
        Place::Customer => "Customer",
        Place::LoadCenter => "Load center",
        Place::InLineBox => "Box in the line",
        Place::JunctionBox => "Junction box",
        Place::HeaterTop => "Heater, top",
        Place::UpperCompartment => "Upper compartment",
        Place::LowerCompartment => "Lower compartment",
        Place::Relief => "Relief valve",
        Place::Drain => "Drain and floor",
        Place::Taps => "Taps",
        Place::Van => "Parts van",
    }
}

/// What a screw is, in words.
pub const fn screw(screw: Screw) -> &'static str {
    match screw {
        Screw::M1 => "bus, leg 1",
        Screw::M2 => "bus, leg 2",
        Screw::N => "neutral bar",
        Screw::G => "ground bar",
        Screw::B1 => "heater breaker, load screw of pole 1",
        Screw::B2 => "heater breaker, load screw of pole 2",
        Screw::S1 => "second breaker, load screw of pole 1",
        Screw::S2 => "second breaker, load screw of pole 2",
        Screw::X1 => "box in the line, line screw of leg 1",
        Screw::X2 => "box in the line, line screw of leg 2",
        Screw::X3 => "box in the line, load screw of leg 1",
        Screw::X4 => "box in the line, load screw of leg 2",
        Screw::Ja => "junction box, splice of leg 1",
        Screw::Jb => "junction box, splice of leg 2",
        Screw::Jc => "junction box, off-peak splice of leg 1",
        Screw::Jd => "junction box, off-peak splice of leg 2",
        Screw::Jg => "junction box, ground screw",
        Screw::H1 => "limit, line screw of leg 1",
        Screw::H2 => "limit, load screw of leg 1",
        Screw::H3 => "limit, line screw of leg 2",
        Screw::H4 => "limit, load screw of leg 2",
        Screw::H5 => "lower limit, line screw of leg 1",
        Screw::H6 => "lower limit, load screw of leg 1",
        Screw::H7 => "lower limit, line screw of leg 2",
        Screw::H8 => "lower limit, load screw of leg 2",
        Screw::U1 => "upper thermostat, common",
        Screw::U2 => "upper thermostat, to the upper element",
        Screw::U3 => "upper thermostat, line of the interlock",
        Screw::U4 => "upper thermostat, to the lower thermostat",
        Screw::D1 => "lower thermostat, line",
        Screw::D2 => "lower thermostat, to the lower element",
        Screw::UEa => "upper element, switched screw",
        Screw::UEb => "upper element, permanent screw",
        Screw::LEa => "lower element, switched screw",
        Screw::LEb => "lower element, permanent screw",
        Screw::K1 => "control board, line",
        Screw::K2 => "control board, return",
        Screw::K3 => "control board, to the upper element",
        Screw::K4 => "control board, to the lower element",
        Screw::T1 => "plug of the upper sensor, pin 1",
        Screw::T2 => "plug of the upper sensor, pin 2",
        Screw::T3 => "plug of the lower sensor, pin 1",
        Screw::T4 => "plug of the lower sensor, pin 2",
        Screw::Shell => "bare metal of the tank",
        Screw::Pipe => "bare cold water pipe",
    }
}

/// A point as the drawing marks it: short.
pub fn mark(point: Point) -> String {
    match point {
        Point::Screw(screw) => screw.name().to_owned(),
        Point::End(end) => format!("wire at {}", end.home().name()),
    }
}

/// A point in full, whatever heater it belongs to.
pub fn any_point(point: Point) -> String {
    match point {
        Point::Screw(which) => format!("{}, {}", which.name(), screw(which)),
        Point::End(which) => format!("bare end of {}", voice::end(which)),
    }
}

/// A function of the meter, as its dial has it.
pub const fn function(function: MeterFunction) -> &'static str {
    match function {
        MeterFunction::Volts => "V AC",
        MeterFunction::LowVolts => "V AC low imp.",
        MeterFunction::Ohms => "Ohms",
        MeterFunction::Continuity => "Continuity",
        MeterFunction::Insulation => "Insul. 500 V",
        MeterFunction::Amps => "A AC",
    }
}

/// What a clamp goes around.
pub fn clamped(around: Clamped) -> String {
    match around {
        Clamped::Wire { wire: which } => voice::wire(which),
        Clamped::BothLegs => "both legs of the branch cable".into(),
        Clamped::Pair { first, second } => format!("{} and {}", voice::wire(first), voice::wire(second)),
    }
}

/// An opening of a valve.
pub fn opening(opening: f64) -> String {
    if opening <= 0.0 {
        "shut".into()
    } else if opening >= 1.0 {
        "open".into()
    } else {
        format!("{:.0} % open", opening * 100.0)
    }
}

/// A mode, as the header's tag.
pub const fn mode(mode: Mode) -> &'static str {
    match mode {
        Mode::Coached => "Coached drill",
        Mode::Solo => "Solo drill",
        Mode::Exam => "Exam",
    }
}

/// A cover's name under it.
pub const fn cover_short(level: Level, layout: Layout) -> &'static str {
    match level {
        Level::Upper if !layout.has(Level::Lower) => "Cover",
        Level::Upper => "Upper cover",
        Level::Lower => "Lower cover",
    }
}
