//! Names of things from the closed lists.

use bench::{
    Cover, Fitting, Hearsay, Helper, KnownSource, Licence, MeterFunction, Mode, NewPart, Observation, Trap,
    Writing,
};
use plant::climate::Climate;
use plant::fault::{Advice, FaultId, PartKind, Stage};
use plant::heater::Rating;
use plant::household::{HouseholdKind, Question, Symptom};
use plant::{
    Circuit, ElementLength, End, Handle, HeaterModel, Level, Location, Mount, Place, Point, Screw, Tap, Wire,
};
use serde::Serialize;

use crate::Voice;

/// The name that serde writes for a plain variant, or the tag of one with fields.
pub(crate) fn kebab<T: Serialize>(value: &T) -> String {
    let written = drill::json::line(value);
    let name = written.strip_prefix('"').and_then(|rest| rest.strip_suffix('"'));
    name.unwrap_or_default().to_owned()
}

macro_rules! named {
    ($($(#[$doc:meta])* $method:ident($type:ty) = $prefix:literal;)*) => {
        impl Voice {
            $($(#[$doc])* pub fn $method(&self, of: $type) -> String {
                self.text(&format!(concat!($prefix, "-{}"), kebab(&of)))
            })*
        }
    };
}

named! {
    /// A place.
    place(Place) = "place";
    /// A household.
    household(HouseholdKind) = "household";
    /// Where the heater stands.
    location(Location) = "location";
    /// A climate.
    climate(Climate) = "climate";
    /// A fault, as a verdict: what is wrong.
    fault(FaultId) = "fault";
    /// How far a fault has gone.
    stage(Stage) = "atlas-stage";
    /// What puts a fault right.
    fault_remedy(FaultId) = "remedy";
    /// A part.
    part_kind(PartKind) = "part";
    /// Advice to the customer.
    advice(Advice) = "advice";
    /// An observation to report.
    observation(Observation) = "observation";
    /// What people have heard, as they say it.
    hearsay(Hearsay) = "hearsay";
    /// Somebody to call.
    helper(Helper) = "helper";
    /// A licence.
    licence(Licence) = "licence";
    /// A mode.
    mode(Mode) = "mode";
    /// How hard a fault is to tell.
    wish_level(drill::Level) = "wish-level";
    /// A family of faults.
    family(drill::Family) = "family";
    /// A trap.
    trap(Trap) = "trap";
    /// A circuit.
    circuit(Circuit) = "circuit";
    /// A handle's position.
    handle(Handle) = "handle";
    /// Upper or lower.
    level(Level) = "level";
    /// What holds an element.
    mount(Mount) = "mount";
    /// A tap.
    tap(Tap) = "tap";
    /// A cover.
    cover(Cover) = "cover";
    /// A fitting.
    fitting(Fitting) = "fitting";
    /// Something written.
    writing(Writing) = "writing";
    /// A meter function.
    meter_function(MeterFunction) = "meter";
    /// A known source.
    known_source(KnownSource) = "source";
    /// A wire.
    wire(Wire) = "wire";
    /// A question, as asked.
    question(Question) = "question";
    /// A class of complaint.
    symptom(Symptom) = "symptom";
}

impl Voice {
    /// A screw as the drawing names it; bare metal and bars by what they are.
    pub fn screw(&self, of: Screw) -> String {
        match of {
            Screw::Shell | Screw::Pipe | Screw::N | Screw::G => self.text(&format!("screw-{}", of.name())),
            other => other.name().to_owned(),
        }
    }

    /// The letter of an end that has lost its name by the time that is told of.
    pub fn letter(&self, of: End) -> Option<char> {
        let lost = self.lost.borrow();
        lost.iter().find(|one| one.end == of && one.since < self.at.get()).map(|one| one.letter)
    }

    /// The wire of an end, as far as it is known which it is.
    pub fn wire_of(&self, of: End) -> String {
        match self.letter(of) {
            Some(letter) => self.filled("wire-loose", &[("letter", letter.to_string().into())]),
            None => self.wire(of.wire),
        }
    }

    /// A wire's end.
    pub fn end(&self, of: End) -> String {
        if self.letter(of).is_some() {
            return self.wire_of(of);
        }
        self.filled(
            "wire-end",
            &[("wire", self.wire(of.wire).into()), ("screw", self.screw(of.home()).into())],
        )
    }

    /// A point for a lead or a hand.
    pub fn point(&self, of: Point) -> String {
        match of {
            Point::Screw(screw) => self.screw(screw),
            Point::End(end) => self.end(end),
        }
    }

    /// A heater model.
    pub fn heater(&self, of: HeaterModel) -> String {
        let size = self.units().size(of.plate().nominal);
        self.filled(&format!("heater-{}", kebab(&of)), &[("size", size.into())])
    }

    /// A rating.
    pub fn rating(&self, of: Rating) -> String {
        format!("{} W, {} V", of.watts.get().round(), of.volts.get().round())
    }

    /// What of an element has to suit the tank.
    pub fn element_fit(&self, rating: Rating, length: ElementLength, mount: Mount) -> String {
        let reach = self.units().length(length.reach(rating.watts));
        self.filled("element-fit", &[("length", reach.into()), ("mount", self.mount(mount).into())])
    }

    /// An element's rating and what of it has to suit the tank.
    pub fn element(&self, rating: Rating, length: ElementLength, mount: Mount) -> String {
        format!("{}, {}", self.rating(rating), self.element_fit(rating, length, mount))
    }

    /// A part from the van with what was chosen.
    pub fn new_part(&self, of: &NewPart) -> String {
        let kind = self.part_kind(of.kind());
        let u = self.units();
        let detail = match of {
            NewPart::Element { rating, length, mount, .. } => self.element(*rating, *length, *mount),
            NewPart::Breaker { rating } | NewPart::Fuse { rating } => format!("{} A", rating.get().round()),
            NewPart::ReliefValve { opens_at } => u.pressure(*opens_at),
            NewPart::Regulator { set } => u.pressure(*set),
            NewPart::MixingValve { set } => u.temperature(*set),
            NewPart::Cartridge { tap } => self.tap(*tap),
            NewPart::Anode { metal } => self.text(&format!("anode-{metal}")),
            NewPart::ExpansionTank { volume, charge } => {
                format!("{}, {}", u.volume(*volume), u.pressure(*charge))
            }
            NewPart::Thermostat { .. }
            | NewPart::Limit
            | NewPart::LowerLimit
            | NewPart::TimeSwitch
            | NewPart::Connectors
            | NewPart::DipTube
            | NewPart::Sensor { .. }
            | NewPart::Board
            | NewPart::DrainValve
            | NewPart::Nipples
            | NewPart::Connections
            | NewPart::HotLine
            | NewPart::PipeClips
            | NewPart::ReturnCheck
            | NewPart::PumpTimer
            | NewPart::Gasket { .. } => return kind,
        };
        self.filled("part-with", &[("part", kind.into()), ("detail", detail.into())])
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Units;

    #[test]
    fn every_name_has_its_words() {
        let v = Voice::english(Units::Customary);
        Place::ALL.iter().for_each(|x| drop(v.place(*x)));
        HeaterModel::ALL.iter().for_each(|x| drop(v.heater(*x)));
        Location::ALL.iter().for_each(|x| drop(v.location(*x)));
        HouseholdKind::ALL.iter().for_each(|x| drop(v.household(*x)));
        Climate::ALL.iter().for_each(|x| drop(v.climate(*x)));
        FaultId::ALL.iter().for_each(|x| drop((v.fault(*x), v.fault_remedy(*x))));
        plant::AnodeMetal::ALL.iter().for_each(|x| drop(v.text(&format!("anode-{x}"))));
        drill::Level::ALL.iter().for_each(|x| drop(v.wish_level(*x)));
        drill::Family::ALL.iter().for_each(|x| drop(v.family(*x)));
        PartKind::ALL.iter().for_each(|x| drop(v.part_kind(*x)));
        plant::BoxKind::ALL.iter().for_each(|x| drop(v.text(&format!("box-{x}"))));
        plant::Stab::ALL.iter().for_each(|x| drop(v.text(&format!("stab-{x}"))));
        Advice::ALL.iter().for_each(|x| drop(v.advice(*x)));
        Hearsay::ALL.iter().for_each(|x| drop(v.hearsay(*x)));
        Circuit::ALL.iter().for_each(|x| drop(v.circuit(*x)));
        Handle::ALL.iter().for_each(|x| drop(v.handle(*x)));
        Tap::ALL.iter().for_each(|x| drop(v.tap(*x)));
        Question::ALL.iter().for_each(|x| drop(v.question(*x)));
        Symptom::ALL.iter().for_each(|x| drop((v.symptom(*x), v.text(&format!("complaint-{x}")))));
        Screw::ALL.iter().for_each(|x| drop(v.screw(*x)));
        End::all().for_each(|x| drop(v.end(x)));
        assert_eq!(v.missing(), Vec::<String>::new());
    }
}
