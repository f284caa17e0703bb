//! The job under way and how it changes. The world's own door is `bench::reduce`; here it is only wired up.

use std::ops::ControlFlow::{Break, Continue};
use std::rc::Rc;

use ::drill::Drill;
use bench::{Action, Entry, Outcome, Session, Shown};
use words::Language;
use yew::Reducible;

use super::{Desk, Head, Keeping, Lead, Ongoing, Setting, Standing, Tab, World};
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
    /// A wait that is under way.
    pub ongoing: Option<Ongoing>,
    /// What was asked for during the wait, to be done after it, in this order.
    pub then: Vec<Action>,
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
    /// The learner did something, or several things one after another: the rest of them as long as each is done.
    Do(Vec<Action>),
    /// The wait that was under way is over.
    Waited(World),
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

    /// Does something, or keeps it for after the wait that is under way.
    fn act(&mut self, action: Action) {
        if self.ongoing.is_some() {
            self.then.push(action);
            return;
        }
        let Some(running) = &mut self.running else { return };
        let before = running.session.clock;
        running.session = match Ongoing::begin(&running.session, &action) {
            Continue(ongoing) => {
                self.ongoing = Some(ongoing);
                return;
            }
            Break(session) => session.into(),
        };
        match action {
            Action::Finding { .. } => self.desk.ticks.clear(),
            Action::Meter { .. } => self.desk.fresh = true,
            Action::Lift { .. } => self.desk.let_go(&running.session.lost(), before),
            _ => {}
        }
    }

    /// Does one thing after another, as long as each is done and nobody is hurt by it.
    fn act_all(&mut self, actions: Vec<Action>) {
        for action in actions {
            self.act(action);
            let went_wrong = |entry: &Rc<Entry>| {
                let Outcome { shown, harms, .. } = &entry.outcome;
                matches!(shown, Shown::Refused { .. } | Shown::Stopped { .. }) || !harms.is_empty()
            };
            // What waits for the end of a wait is tried then, each by itself.
            let last =
                self.session().filter(|_| self.ongoing.is_none()).and_then(|session| session.log.last());
            if last.is_some_and(went_wrong) {
                return;
            }
        }
    }

    /// The wait is over: what was asked for meanwhile follows.
    fn waited(&mut self, session: World) {
        self.ongoing = None;
        if let Some(running) = &mut self.running {
            running.session = session;
        }
        for action in std::mem::take(&mut self.then) {
            self.act(action);
        }
    }

    /// Another job, or another past of this one: no wait goes on.
    fn nothing_goes_on(&mut self) {
        self.ongoing = None;
        self.then.clear();
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
            | Msg::Waited(_)
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
                next.nothing_goes_on();
                next.desk = Desk { units: next.desk.units, ..Desk::default() };
                next.broken = None;
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
                next.nothing_goes_on();
                next.broken = None;
            }
            Msg::Do(actions) => next.act_all(actions),
            Msg::Waited(session) => next.waited(session),
            // Once another job is kept, what could not be opened is set aside.
            Msg::Kept(keeping) => {
                next.keeping = keeping;
                next.unopened = None;
            }
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

#[cfg(test)]
mod tests {
    use super::*;
    use bench::{Cover, Waiting};

    fn taken() -> Rc<Work> {
        let order = r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "coached"}"#;
        let drill = ::drill::make(&crate::compose::read_drill(order).unwrap()).unwrap();
        Rc::new(Work::default()).reduce(Msg::Begun(Head::default(), Rc::new(drill)))
    }

    fn log(work: &Work) -> Vec<Action> {
        work.session().unwrap().log.iter().map(|entry| entry.action.clone()).collect()
    }

    #[test]
    fn a_short_wait_is_over_at_once_and_a_long_one_goes_on() {
        let (hour, four) = (Action::Wait { minutes: 60.0 }, Action::Wait { minutes: 240.0 });
        let work = taken().reduce(Msg::Do(vec![hour.clone()]));
        assert!(work.ongoing.is_none());
        assert_eq!(log(&work), std::slice::from_ref(&hour));
        let long = work.clone().reduce(Msg::Do(vec![four.clone()]));
        let ongoing = long.ongoing.clone().unwrap();
        assert_eq!(log(&long).len(), 1);
        assert!(ongoing.go_on(|| false).is_none());
        let (clock, share) = ongoing.seen().unwrap();
        assert!((clock / 60.0 - 130.0).abs() < 0.01 && share < 0.4, "{clock} {share}");
        // Whoever does something meanwhile does it after the wait.
        let after =
            long.clone().reduce(Msg::Do(vec![Action::TellHousehold])).reduce(Msg::Do(vec![four.clone()]));
        assert!(ongoing.seen().is_some());
        assert_eq!(log(&after).len(), 1);
        let after = after.reduce(Msg::Waited(ongoing.go_on(|| true).unwrap().into()));
        assert_eq!(log(&after), [hour, four.clone(), Action::TellHousehold]);
        let session = after.ongoing.clone().unwrap().go_on(|| true).unwrap();
        let after = after.reduce(Msg::Waited(session.into()));
        assert!(after.ongoing.is_none() && after.then.is_empty());
        assert_eq!(log(&after).last(), Some(&four));
    }

    #[test]
    fn a_wait_that_is_stopped_is_a_shorter_one() {
        let work = taken();
        let long = work.clone().reduce(Msg::Do(vec![Action::Wait { minutes: 240.0 }]));
        let ongoing = long.ongoing.clone().unwrap();
        ongoing.stop();
        let session = ongoing.go_on(|| false).unwrap();
        let done = long.reduce(Msg::Waited(session.into()));
        assert!(done.ongoing.is_none());
        assert_eq!(log(&done), [Action::Wait { minutes: 60.0 }]);
        let short = work.clone().reduce(Msg::Do(vec![Action::Wait { minutes: 60.0 }]));
        assert!(**done.session().unwrap() == **short.session().unwrap());
        assert!(Waiting::begin(work.session().unwrap(), &Action::TryStart).is_none());
    }

    #[test]
    fn of_several_acts_the_rest_is_left_once_one_is_not_done() {
        let off = |which| Action::Cover { which, off: true };
        let [cover, insulation, shield] = [Cover::Upper, Cover::UpperInsulation, Cover::UpperShield].map(off);
        let all = vec![cover.clone(), insulation.clone(), shield.clone()];
        let bare = taken().reduce(Msg::Do(all.clone()));
        assert_eq!(log(&bare), all);
        // The insulation is behind the cover: refused, and the shield is not tried.
        let refused = taken().reduce(Msg::Do(vec![insulation.clone(), shield]));
        assert_eq!(log(&refused), [insulation]);
    }
}
