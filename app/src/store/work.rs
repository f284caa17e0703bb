//! The job under way and how it changes. The world's own door is `bench::reduce`; here it is only wired up.

use std::rc::Rc;

use ::drill::Drill;
use bench::{Action, Session, reduce};
use words::Language;
use yew::Reducible;

use super::{Desk, Head, Keeping, Lead, Setting, Standing, Tab, World};
use plant::{FaultId, Place, Point};

/// A job with its head.
#[derive(Clone, Debug)]
pub struct Running {
    /// What it is made from again.
    pub head: Head,
    /// The drill it is of.
    pub drill: Rc<Drill>,
    /// The world as it is now.
    pub session: World,
    /// Steps that were already there when the page was opened: not announced again.
    pub restored: usize,
    /// It was found on the device.
    pub found: bool,
}

/// A world never changes behind its pointer, so the pointer tells whether it is another one.
impl PartialEq for Running {
    fn eq(&self, other: &Self) -> bool {
        self.head == other.head && self.session == other.session
    }
}

/// Everything the page holds.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Work {
    /// The job, once one is taken.
    pub running: Option<Running>,
    /// The desk.
    pub desk: Desk,
    /// Whether the device keeps it.
    pub keeping: Keeping,
    /// The step whose entry in the journal could not be read.
    pub broken: Option<u32>,
    /// Why a job that the device keeps could not be opened.
    pub unopened: Option<String>,
    /// The language on the screen; its words are in `text`.
    pub language: Language,
    /// A job that the device keeps is being opened.
    pub opening: bool,
    /// Whether the rest of the book has come.
    pub rest: Rest,
}

/// Whether the rest of the book has come: what no drill needs before its first act.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Rest {
    /// Not yet.
    #[default]
    Coming,
    /// All of it is here.
    Here,
    /// It could not be had.
    Failed,
}

/// What changes it.
#[derive(Clone, PartialEq, Debug)]
pub enum Msg {
    /// A new job was taken.
    Begun(Head, Rc<Drill>),
    /// The job that the device keeps could not be opened.
    Unopened(String),
    /// Other acts took the place of what was done: the last one was taken back, or an earlier attempt goes on from one of
    /// its acts.
    Rewound(Running),
    /// It was folded again.
    Restored(Running, Desk, Option<u32>),
    /// The learner did something.
    Do(Action),
    /// Storage answered.
    Kept(Keeping),
    /// The learner went to a place, or back to the whole drawing.
    Go(Option<Place>),
    /// The learner turned to a section.
    Turn(Tab),
    /// The learner picked a point.
    Pick(Point),
    /// The learner took a lead in hand, or put both down.
    Arm(Option<Lead>),
    /// The learner put a lead on a point.
    Put(Lead, Point),
    /// The learner turned the meter's dial.
    Set(Setting),
    /// The learner put the clamp around something.
    Clamp(bench::Clamped),
    /// The learner ticked or unticked a step as evidence.
    Tick(u32),
    /// The learner moved a suspect; `None` drops it.
    Suspect(FaultId, Option<Standing>),
    /// The learner put the guide away, or brought it back.
    Guide {
        /// Away.
        away: bool,
    },
    /// The learner chose the other units.
    OtherUnits,
    /// The page speaks another language.
    Speak(Language),
    /// The rest of the book came, or did not.
    Rest(Rest),
    /// The learner left the job and cleared the device.
    Cleared,
}

impl Work {
    /// The world, if there is a job.
    pub fn session(&self) -> Option<&World> {
        self.running.as_ref().map(|running| &running.session)
    }

    fn act(&mut self, action: &Action) {
        let Some(running) = &mut self.running else { return };
        let (next, _) = reduce(&running.session, action);
        running.session = next.into();
        match action {
            Action::Finding { .. } => self.desk.ticks.clear(),
            Action::Meter { .. } => self.desk.fresh = true,
            _ => {}
        }
    }

    fn note(&mut self, msg: Msg) {
        let now = self.session().map(|session| session.clock).unwrap_or_default();
        let desk = &mut self.desk;
        match msg {
            Msg::Go(at) => {
                // Whoever stays where they are keeps the point under the hand.
                if desk.at != at {
                    desk.point = None;
                }
                desk.at = at;
            }
            Msg::Turn(tab) => desk.tab = tab,
            Msg::Pick(point) => desk.pick(point),
            Msg::Arm(lead) => {
                desk.armed = lead;
                desk.fresh = false;
            }
            Msg::Put(lead, point) => desk.put(lead, point),
            Msg::Set(setting) => desk.setting = setting,
            Msg::Clamp(around) => {
                desk.clamped = Some(around);
                desk.setting = Setting::Clamp;
            }
            Msg::Tick(step) => {
                if !desk.ticks.remove(&step) {
                    desk.ticks.insert(step);
                }
            }
            Msg::Suspect(fault, standing) => desk.suspect(fault, standing, now),
            Msg::Guide { away } => desk.guide_away = away,
            Msg::OtherUnits => desk.units = desk.units.other(),
            Msg::Begun(..)
            | Msg::Unopened(_)
            | Msg::Restored(..)
            | Msg::Rewound(_)
            | Msg::Do(_)
            | Msg::Kept(_)
            | Msg::Speak(_)
            | Msg::Rest(_)
            | Msg::Cleared => {}
        }
    }
}

impl Reducible for Work {
    type Action = Msg;

    fn reduce(self: Rc<Self>, msg: Msg) -> Rc<Self> {
        let mut next = (*self).clone();
        match msg {
            Msg::Begun(head, drill) => {
                let session = Session::begin(drill.job.clone()).into();
                next.running = Some(Running { head, drill, session, restored: 0, found: false });
                next.opening = false;
                next.desk = Desk { units: next.desk.units, ..Desk::default() };
                next.broken = None;
                next.unopened = None;
            }
            Msg::Unopened(why) => {
                next.opening = false;
                next.unopened = Some(why);
            }
            // Another job was taken meanwhile.
            Msg::Restored(..) if next.running.is_some() => {}
            Msg::Restored(running, desk, broken) => {
                next.opening = false;
                next.running = Some(running);
                next.desk = desk;
                next.broken = broken;
            }
            Msg::Rewound(running) => {
                let done = running.session.log.len() as u32;
                next.desk.ticks.retain(|step| *step <= done);
                next.running = Some(running);
                next.broken = None;
            }
            Msg::Do(action) => next.act(&action),
            Msg::Kept(keeping) => next.keeping = keeping,
            Msg::Speak(language) => next.language = language,
            Msg::Rest(rest) => next.rest = rest,
            Msg::Cleared => {
                let desk = Desk { units: next.desk.units, ..Desk::default() };
                next = Self { desk, language: next.language, rest: next.rest, ..Self::default() };
            }
            other => next.note(other),
        }
        if next == *self { self } else { Rc::new(next) }
    }
}
