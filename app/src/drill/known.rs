//! What the technician has perceived so far, folded from the log. The drawing shows this and nothing else of
//! what is not in plain view; a handle that somebody moved behind the technician's back stays as it was seen.

use bench::{Action, Entry, Fitting, Noticed, Session, Shown, Sight};
use plant::heater::{Plate, Rating};
use plant::{Circuit, Discharge, End, Handle, Level, Place};
use quantity::pairs::Pairs;
use quantity::{Amps, Seconds, Temperature};

/// Everything perceived.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Known {
    /// Handles of breakers as last seen, by slot.
    pub handles: Pairs<u32, Handle>,
    /// The directory as last read or corrected.
    pub labels: Vec<(Circuit, Amps)>,
    /// The rating plate.
    pub plate: Option<Plate>,
    /// The wiring diagram inside the cover.
    pub diagram: bool,
    /// Stamps of the elements.
    pub stamps: [Option<Rating>; 2],
    /// Both dials as last seen.
    pub dials: [Option<Temperature>; 2],
    /// A limit's button stands proud: the upper one, the lower one of an off-peak heater.
    pub buttons: [Option<bool>; 2],
    /// Joints seen charred and not made again since.
    pub charred: Vec<End>,
    /// Fittings seen wet or dry.
    pub wet: Pairs<Fitting, bool>,
    /// The last look at each place.
    pub looked: Pairs<Place, (Seconds, Vec<Sight>)>,
    /// The flag of the utility's relay as last seen: closed, or dropped open.
    pub relay: Option<bool>,
    /// An expansion tank, if one was looked for.
    pub expansion: Option<bool>,
    /// What else a look around found.
    pub found: Found,
}

/// What a look around finds that has no handle: how things were laid, and traces of old troubles.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Found {
    /// A return loop, whose pump hums or rests.
    pub pump: Option<bool>,
    /// The relief valve's pipe.
    pub discharge: Option<Discharge>,
    /// Lime at its end.
    pub lime: bool,
    /// The unions on top are dielectric, or not.
    pub dielectric: Option<bool>,
    /// A pan.
    pub pan: bool,
    /// A streak of rust.
    pub streak: bool,
    /// Old soot behind a cover.
    pub soot: Option<Level>,
    /// A line that is none of the heater's drips beside it.
    pub condensate: bool,
}

impl Found {
    fn see(&mut self, at: Place, sight: &Sight) {
        match sight {
            Sight::Loop { runs } => self.pump = Some(*runs),
            Sight::Discharge { pipe } => self.discharge = Some(*pipe),
            Sight::LimeCrust => self.lime = true,
            Sight::Dielectric { there } => self.dielectric = Some(*there),
            Sight::Pan { there } => self.pan = *there,
            Sight::RustStreak => self.streak = true,
            Sight::Condensate => self.condensate = true,
            Sight::OldSoot if at == Place::LowerCompartment => self.soot = Some(Level::Lower),
            Sight::OldSoot => self.soot = Some(Level::Upper),
            _ => {}
        }
    }
}

impl Known {
    /// From everything that was shown.
    pub fn of(session: &Session) -> Self {
        let mut known = Self::default();
        for entry in &session.log {
            known.learn(entry);
        }
        known
    }

    fn learn(&mut self, entry: &Entry) {
        for noticed in &entry.outcome.noticed {
            self.notice(noticed);
        }
        match &entry.outcome.shown {
            Shown::Refused { .. } | Shown::Stopped { .. } => return,
            Shown::Plate { plate } => self.plate = Some(*plate),
            Shown::Diagram => self.diagram = true,
            Shown::Stamp { level, rating, .. } => self.stamps[level.index()] = Some(*rating),
            Shown::Directory { labels } => self.labels.clone_from(labels),
            Shown::Dials { upper, lower } => self.dials = [Some(*upper), Some(*lower)],
            Shown::Sights { at, sights } => {
                if let Action::Look { .. } = entry.action {
                    self.looked.put(*at, (entry.at, sights.clone()));
                }
                for sight in sights {
                    self.see(sight);
                    self.found.see(*at, sight);
                }
            }
            Shown::DoneWith { sights } => sights.iter().for_each(|sight| self.see(sight)),
            _ => {}
        }
        self.did(&entry.action);
    }

    fn see(&mut self, sight: &Sight) {
        match sight {
            Sight::BreakerHandle { slot, handle, .. } => {
                self.handles.put(*slot, *handle);
            }
            Sight::Charred { end } => {
                self.charred.push(*end);
            }
            Sight::Button { proud } => self.buttons[0] = Some(*proud),
            Sight::LowerButton { proud } => self.buttons[1] = Some(*proud),
            Sight::Clicked => self.buttons[0] = Some(false),
            Sight::Wet { fitting, .. } => {
                self.wet.put(*fitting, true);
            }
            Sight::Dry { fitting } => {
                self.wet.put(*fitting, false);
            }
            Sight::OffPeakRelay { closed } => self.relay = Some(*closed),
            Sight::ExpansionTank { there } => self.expansion = Some(*there),
            _ => {}
        }
    }

    fn notice(&mut self, noticed: &Noticed) {
        match noticed {
            Noticed::BreakerTripped { slot } => {
                self.handles.put(*slot, Handle::Tripped);
            }
            Noticed::SomebodyReset { slot } => {
                self.handles.put(*slot, Handle::On);
            }
            _ => {}
        }
    }

    /// What an act of one's own tells: the handle is where the hand left it.
    fn did(&mut self, action: &Action) {
        match action {
            Action::Breaker { slot, on } => {
                self.handles.put(*slot, if *on { Handle::On } else { Handle::Off });
            }
            Action::Relabel { slot, feeds } => {
                if let Some(label) = self.labels.get_mut(*slot as usize) {
                    label.0 = *feeds;
                }
            }
            Action::Dial { level, to } => self.dials[level.index()] = Some(*to),
            Action::Remake { end, .. } => {
                self.charred.retain(|one| one != end);
            }
            Action::Wipe { fitting } => {
                self.wet.put(*fitting, false);
            }
            Action::Replace { part } => self.changed(part),
            Action::SetHeater { .. } => self.set_heater(),
            Action::JoinPipes { dielectric } => self.found.dielectric = Some(*dielectric),
            _ => {}
        }
    }

    fn changed(&mut self, part: &bench::NewPart) {
        use bench::NewPart;
        match part {
            NewPart::Element { level, rating, .. } => self.stamps[level.index()] = Some(*rating),
            NewPart::Thermostat { level } => {
                self.dials[level.index()] = Some(Temperature::fahrenheit(120.0));
            }
            NewPart::Limit => self.buttons[0] = Some(false),
            NewPart::LowerLimit => self.buttons[1] = Some(false),
            NewPart::ExpansionTank { .. } => self.expansion = Some(true),
            NewPart::ReliefValve { .. } => {
                self.found.discharge = None;
                self.found.lime = false;
            }
            _ => {}
        }
    }

    /// What was seen of the old heater is out of the house with it.
    fn set_heater(&mut self) {
        self.plate = None;
        self.stamps = [None; 2];
        self.dials = [None; 2];
        self.buttons = [None; 2];
        self.charred.clear();
        self.wet.clear();
        self.found.streak = false;
        self.found.soot = None;
    }

    /// A dial as last seen.
    pub fn dial(&self, level: Level) -> Option<Temperature> {
        self.dials[level.index()]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use bench::Outcome;

    fn entry(action: Action, shown: Shown, noticed: Vec<Noticed>) -> std::rc::Rc<Entry> {
        let outcome = Outcome { took: Seconds(60.0), shown, harms: Vec::new(), noticed, facts: Vec::new() };
        std::rc::Rc::new(Entry { at: Seconds(0.0), action, outcome })
    }

    #[test]
    fn only_what_was_perceived_is_known() {
        let mut session = Session::begin(crate::begin::example());
        assert!(Known::of(&session).handles.is_empty());
        let off = Action::Breaker { slot: 2, on: false };
        session.log.push(entry(off.clone(), Shown::Done, vec![]));
        assert_eq!(Known::of(&session).handles.get(&2), Some(&Handle::Off));
        // Somebody switches it on and nobody notices: it stays as it was seen.
        session.home.plant.panel.breakers[2].handle = Handle::On;
        assert_eq!(Known::of(&session).handles.get(&2), Some(&Handle::Off));
        let noticed = vec![Noticed::SomebodyReset { slot: 2 }];
        session.log.push(entry(Action::Wait { minutes: 5.0 }, Shown::Done, noticed));
        assert_eq!(Known::of(&session).handles.get(&2), Some(&Handle::On));
    }

    #[test]
    fn old_traces_are_known_once_looked_at() {
        let mut session = Session::begin(crate::begin::example());
        let sights = vec![Sight::OldSoot, Sight::Dielectric { there: false }];
        let at = Place::LowerCompartment;
        session.log.push(entry(Action::Look { at }, Shown::Sights { at, sights }, vec![]));
        let found = Known::of(&session).found;
        assert_eq!((found.soot, found.dielectric, found.pan), (Some(Level::Lower), Some(false), false));
    }

    #[test]
    fn a_refused_act_tells_nothing() {
        let mut session = Session::begin(crate::begin::example());
        let refused = Shown::Refused { why: bench::Refusal::Locked };
        session.log.push(entry(Action::Breaker { slot: 0, on: true }, refused, vec![]));
        assert!(Known::of(&session).handles.is_empty());
    }
}
