//! Names of places, screws, wires, covers and settings.

use bench::{Clamped, Cover, Fitting, KnownSource, Licence, MeterFunction, Mode, Probe, Touchable, Writing};
use plant::{Circuit, End, Handle, Level, Place, Point, Screw, Tap, Wire};

/// A place.
pub const fn place(place: Place) -> &'static str {
    match place {
        Place::Customer => "Customer",
        Place::LoadCenter => "Load center",
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
        Screw::Ja => "junction box, splice of leg 1",
        Screw::Jb => "junction box, splice of leg 2",
        Screw::Jg => "junction box, ground screw",
        Screw::H1 => "limit, line screw of leg 1",
        Screw::H2 => "limit, load screw of leg 1",
        Screw::H3 => "limit, line screw of leg 2",
        Screw::H4 => "limit, load screw of leg 2",
        Screw::U1 => "upper thermostat, common",
        Screw::U2 => "upper thermostat, to the upper element",
        Screw::U4 => "upper thermostat, to the lower thermostat",
        Screw::D1 => "lower thermostat, line",
        Screw::D2 => "lower thermostat, to the lower element",
        Screw::UEa => "upper element, switched screw",
        Screw::UEb => "upper element, permanent screw",
        Screw::LEa => "lower element, switched screw",
        Screw::LEb => "lower element, permanent screw",
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

/// A point in full, for a list or a screen reader.
pub fn point(point: Point) -> String {
    match point {
        Point::Screw(which) => format!("{}, {}", which.name(), screw(which)),
        Point::End(which) => format!("bare end of {}", end(which)),
    }
}

/// A wire.
pub const fn wire(wire: Wire) -> &'static str {
    match wire {
        Wire::CableA => "branch cable, leg 1",
        Wire::CableB => "branch cable, leg 2",
        Wire::CableG => "branch cable, ground",
        Wire::SecondA => "second cable, leg 1",
        Wire::SecondB => "second cable, leg 2",
        Wire::FeedA => "heater lead, leg 1",
        Wire::FeedB => "heater lead, leg 2",
        Wire::Bond => "bond to the tank",
        Wire::Strap => "strap, limit to upper thermostat",
        Wire::UpperSwitched => "upper element, switched wire",
        Wire::UpperPermanent => "upper element, permanent wire",
        Wire::Transfer => "wire, upper to lower thermostat",
        Wire::LowerSwitched => "lower element, switched wire",
        Wire::LowerPermanent => "lower element, permanent wire",
    }
}

/// A wire end.
pub fn end(end: End) -> String {
    format!("{}, at {}", wire(end.wire), end.home().name())
}

/// Upper or lower.
pub const fn level(level: Level) -> &'static str {
    match level {
        Level::Upper => "upper",
        Level::Lower => "lower",
    }
}

/// A cover.
pub const fn cover(cover: Cover) -> &'static str {
    match cover {
        Cover::PanelFront => "dead front of the load center",
        Cover::JunctionBox => "lid of the junction box",
        Cover::Upper => "upper cover plate",
        Cover::Lower => "lower cover plate",
        Cover::UpperInsulation => "upper insulation",
        Cover::LowerInsulation => "lower insulation",
        Cover::UpperShield => "upper shield",
        Cover::LowerShield => "lower shield",
    }
}

/// A fitting.
pub const fn fitting(fitting: Fitting) -> &'static str {
    match fitting {
        Fitting::UpperElement => "upper element flange",
        Fitting::LowerElement => "lower element flange",
        Fitting::Nipples => "nipples on top",
        Fitting::DrainValve => "drain valve",
        Fitting::ReliefValve => "relief valve and its outlet",
        Fitting::BottomRim => "bottom rim of the jacket",
    }
}

/// Something written.
pub const fn writing(writing: Writing) -> &'static str {
    match writing {
        Writing::Plate => "rating plate",
        Writing::Diagram => "wiring diagram",
        Writing::StampUpper => "stamp of the upper element",
        Writing::StampLower => "stamp of the lower element",
        Writing::Directory => "directory of the load center",
        Writing::Dials => "both dials",
    }
}

/// A function of the meter.
pub const fn function(function: MeterFunction) -> &'static str {
    match function {
        MeterFunction::Volts => "V AC",
        MeterFunction::LowVolts => "V AC low imp.",
        MeterFunction::Ohms => "Ohms",
        MeterFunction::Continuity => "Continuity",
        MeterFunction::Insulation => "Insul. 500 V",
    }
}

/// A known live source.
pub const fn source(source: KnownSource) -> &'static str {
    match source {
        KnownSource::Receptacle => "known live receptacle",
        KnownSource::ProvingUnit => "proving unit",
    }
}

/// What a clamp goes around.
pub const fn clamped(around: Clamped) -> &'static str {
    match around {
        Clamped::Wire { wire: which } => wire(which),
        Clamped::BothLegs => "both legs of the branch cable",
    }
}

/// Where the thermometer goes.
pub fn probe(at: Probe) -> String {
    match at {
        Probe::Tap { tap: which } => format!("water at the {}", tap(which)),
        Probe::Shell { level: which } => format!("tank wall beside the {} control", level(which)),
        Probe::Metal { point: at } => mark(at),
        Probe::ColdPipe => "cold pipe".into(),
        Probe::ReliefPipe => "relief valve's pipe".into(),
        Probe::Drain => "water from the drain".into(),
    }
}

/// What a hand is put on.
pub fn touchable(at: Touchable) -> String {
    match at {
        Touchable::Metal { point: at } => mark(at),
        Touchable::Water { tap: which } => format!("water at the {}", tap(which)),
        Touchable::Fitting { fitting: which } => fitting(which).into(),
        Touchable::ReliefPipe => "relief valve's pipe".into(),
    }
}

/// A tap.
pub const fn tap(tap: Tap) -> &'static str {
    match tap {
        Tap::Laundry => "laundry tap",
        Tap::Kitchen => "kitchen tap",
        Tap::Bath => "bath tap",
        Tap::Shower => "shower",
    }
}

/// What a breaker feeds.
pub const fn circuit(circuit: Circuit) -> &'static str {
    match circuit {
        Circuit::Heater => "Water heater",
        Circuit::SecondSource => "Water heater, second feed",
        Circuit::Range => "Range",
        Circuit::Dryer => "Dryer",
    }
}

/// A handle's position.
pub const fn handle(handle: Handle) -> &'static str {
    match handle {
        Handle::On => "on",
        Handle::Off => "off",
        Handle::Tripped => "tripped",
    }
}

/// A breaker by its slot.
pub fn slot(slot: u32) -> String {
    format!("breaker {}", slot + 1)
}

/// An opening of a valve.
pub fn opening(opening: f64) -> String {
    if opening <= 0.0 {
        "shut".into()
    } else if opening >= 1.0 {
        "fully open".into()
    } else {
        format!("{:.0} % open", opening * 100.0)
    }
}

/// A licence.
pub const fn licence(licence: Licence) -> &'static str {
    match licence {
        Licence::Plumber => "Plumber",
        Licence::Electrician => "Electrician",
        Licence::Maintenance => "Maintenance",
        Licence::SupervisedLearner => "Learner under supervision",
    }
}

/// A mode.
pub const fn mode(mode: Mode) -> &'static str {
    match mode {
        Mode::Coached => "Coached drill",
        Mode::Solo => "Solo drill",
        Mode::Exam => "Exam",
    }
}
