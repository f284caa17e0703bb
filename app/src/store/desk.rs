//! The learner's desk: where they stand, where the leads are, their own notes. Nothing here is physics.

use std::collections::BTreeSet;

use bench::{Action, Clamped, Lost, MeterFunction};
use plant::{FaultId, Place, Point, Screw};
use quantity::Seconds;
use serde::{Deserialize, Serialize};

use crate::units::Units;

/// A section of the page, one at a time on a phone.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
pub enum Tab {
    /// The customer.
    #[default]
    Call,
    /// The drawing.
    Heater,
    /// The meter and what it is set on.
    Meter,
    /// Kit and parts.
    Kit,
    /// Log and notes.
    Log,
}

impl Tab {
    /// All of them, in order.
    pub const ALL: [Self; 5] = [Self::Call, Self::Heater, Self::Meter, Self::Kit, Self::Log];

    /// Its name in marks of the page, whatever the language.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Call => "Call",
            Self::Heater => "Heater",
            Self::Meter => "Meter",
            Self::Kit => "Kit",
            Self::Log => "Log",
        }
    }
}

/// One of the meter's leads.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
pub enum Lead {
    /// Red.
    Red,
    /// Black.
    Black,
}

impl Lead {
    /// Its name in marks of the page, whatever the language.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Red => "red",
            Self::Black => "black",
        }
    }

    /// The other one.
    pub const fn other(self) -> Self {
        match self {
            Self::Red => Self::Black,
            Self::Black => Self::Red,
        }
    }
}

/// What the meter's dial is set to.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
pub enum Setting {
    /// A function of the two leads.
    Leads(MeterFunction),
    /// The clamp.
    Clamp,
}

impl Setting {
    /// Its name in marks of the page, whatever the language.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Leads(MeterFunction::Volts) => "volts",
            Self::Leads(MeterFunction::LowVolts) => "low-volts",
            Self::Leads(MeterFunction::Ohms) => "ohms",
            Self::Leads(MeterFunction::Continuity) => "continuity",
            Self::Leads(MeterFunction::Insulation) => "insulation",
            Self::Leads(MeterFunction::Amps) => "amps",
            Self::Clamp => "clamp",
        }
    }
}

/// How a suspect stands in the learner's own notes.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
pub enum Standing {
    /// Not decided.
    Open,
    /// Likely.
    Likely,
    /// Out.
    Out,
}

impl Standing {
    /// Its name in marks of the page, whatever the language.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Open => "open",
            Self::Likely => "likely",
            Self::Out => "out",
        }
    }

    /// The next one, round and round.
    pub const fn next(self) -> Self {
        match self {
            Self::Open => Self::Likely,
            Self::Likely => Self::Out,
            Self::Out => Self::Open,
        }
    }
}

/// A suspect in the learner's own notes.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Suspect {
    /// Which fault.
    pub fault: FaultId,
    /// How it stands.
    pub standing: Standing,
    /// Time into the job when it was last moved.
    pub since: Seconds,
}

/// The desk. Kept beside the journal; losing it loses no step of the attempt.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(default)]
pub struct Desk {
    /// Where the technician stands; `None` before the whole drawing.
    pub at: Option<Place>,
    /// The point under the hand.
    pub point: Option<Point>,
    /// The section shown on a phone.
    pub tab: Tab,
    /// The lead that goes to the next point picked.
    pub armed: Option<Lead>,
    /// A reading was taken since: the next point picked begins another one.
    pub fresh: bool,
    /// Where the red lead is.
    pub red: Option<Point>,
    /// Where the black lead is.
    pub black: Option<Point>,
    /// What the meter is set to.
    pub setting: Setting,
    /// What the clamp is around.
    pub clamped: Option<Clamped>,
    /// Steps ticked as evidence, 1 the first.
    pub ticks: BTreeSet<u32>,
    /// The learner's suspects.
    pub suspects: Vec<Suspect>,
    /// Units on the screen.
    pub units: Units,
    /// The guide of the first call was put away.
    pub guide_away: bool,
}

impl Default for Desk {
    fn default() -> Self {
        Self {
            at: None,
            point: None,
            tab: Tab::Call,
            armed: Some(Lead::Red),
            fresh: false,
            red: None,
            black: None,
            setting: Setting::Leads(MeterFunction::Volts),
            clamped: None,
            ticks: BTreeSet::new(),
            suspects: Vec::new(),
            units: Units::Us,
            guide_away: false,
        }
    }
}

impl Desk {
    /// Picks a point: the lead in hand goes there, and then the other one is in hand.
    pub fn pick(&mut self, point: Point) {
        self.point = Some(point);
        if let Some(lead) = self.lead_for(point) {
            self.put(lead, point);
            self.armed = Some(lead.other());
        }
        self.fresh = false;
    }

    /// The lead that a point would get if it were picked. After a reading, the black one stays at its ground while the
    /// red one goes on to the next point, as one does at the heater.
    pub fn lead_for(&self, point: Point) -> Option<Lead> {
        let ground = matches!(point, Point::Screw(Screw::Shell | Screw::Pipe | Screw::G | Screw::N));
        match self.armed {
            Some(_) if self.fresh => Some(if ground { Lead::Black } else { Lead::Red }),
            armed => armed,
        }
    }

    /// Puts a lead on a point; the clamp makes room for the leads.
    pub fn put(&mut self, lead: Lead, point: Point) {
        match lead {
            Lead::Red => self.red = Some(point),
            Lead::Black => self.black = Some(point),
        }
    }

    /// Hand and leads come off wire ends that lose their names, or they would mark them.
    pub fn let_go(&mut self, lost: &[Lost], since: Seconds) {
        for point in [&mut self.point, &mut self.red, &mut self.black] {
            *point =
                point.filter(|at| !lost.iter().any(|one| Point::End(one.end) == *at && one.since >= since));
        }
    }

    /// The act that the meter would now do.
    pub fn reading(&self) -> Option<Action> {
        match self.setting {
            Setting::Leads(function) => Some(Action::Meter { function, red: self.red?, black: self.black? }),
            Setting::Clamp => Some(Action::Clamp { around: self.clamped? }),
        }
    }

    /// Moves a suspect on, or takes it up.
    pub fn suspect(&mut self, fault: FaultId, standing: Option<Standing>, now: Seconds) {
        self.suspects.retain(|one| one.fault != fault || standing.is_some());
        let Some(standing) = standing else { return };
        match self.suspects.iter_mut().find(|one| one.fault == fault) {
            Some(one) => (one.standing, one.since) = (standing, now),
            None => self.suspects.push(Suspect { fault, standing, since: now }),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_two_points_take_red_and_black() {
        let mut desk = Desk::default();
        desk.pick(Screw::H1.into());
        assert_eq!(desk.reading(), None);
        desk.pick(Screw::H3.into());
        let function = MeterFunction::Volts;
        let (red, black) = (Screw::H1.into(), Screw::H3.into());
        assert_eq!(desk.reading(), Some(Action::Meter { function, red, black }));
        desk.armed = Some(Lead::Red);
        desk.pick(Screw::H2.into());
        assert_eq!((desk.red, desk.black), (Some(Screw::H2.into()), Some(black)));
    }

    #[test]
    fn after_a_reading_the_red_lead_goes_on_and_the_black_one_goes_to_a_ground() {
        let mut desk = Desk::default();
        let read = |desk: &mut Desk, picks: &[Screw]| {
            picks.iter().for_each(|screw| desk.pick((*screw).into()));
            desk.fresh = true;
            (desk.red, desk.black)
        };
        let at = |red: Screw, black: Screw| (Some(red.into()), Some(black.into()));
        assert_eq!(read(&mut desk, &[Screw::H1, Screw::H3]), at(Screw::H1, Screw::H3));
        assert_eq!(read(&mut desk, &[Screw::Shell]), at(Screw::H1, Screw::Shell));
        assert_eq!(read(&mut desk, &[Screw::H3]), at(Screw::H3, Screw::Shell));
        assert_eq!(read(&mut desk, &[Screw::UEa, Screw::UEb]), at(Screw::UEa, Screw::UEb));
        desk.armed = Some(Lead::Black);
        desk.fresh = false;
        assert_eq!(read(&mut desk, &[Screw::H1]), at(Screw::UEa, Screw::H1));
    }

    #[test]
    fn a_suspect_is_taken_up_moved_and_dropped() {
        let mut desk = Desk::default();
        desk.suspect(FaultId::F01, Some(Standing::Open), Seconds(0.0));
        desk.suspect(FaultId::F01, Some(Standing::Out), Seconds(60.0));
        assert_eq!(desk.suspects.len(), 1);
        assert_eq!(desk.suspects[0].since, Seconds(60.0));
        desk.suspect(FaultId::F01, None, Seconds(61.0));
        assert!(desk.suspects.is_empty());
    }
}
