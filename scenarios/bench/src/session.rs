//! One job under way: the house as found, the technician, what has been done so far.

use std::collections::BTreeMap;

use plant::home::Home;
use plant::household::Account;
use plant::{Happening, Point};
use quantity::{Pressure, Seconds, Temperature};
use serde::{Deserialize, Serialize};

use crate::action::{Action, Cover, Fitting};
use crate::shown::{Ending, Outcome};

/// What a drill hands to the bench.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Job {
    /// The house as it is when the technician rings.
    pub home: Home,
    /// What the people can tell: made from their simulated week.
    pub account: Account,
    /// Whose licence the learner holds.
    pub licence: Licence,
    /// How the drill is run.
    pub mode: Mode,
    /// Traps laid.
    pub traps: Vec<Trap>,
    /// Time of day at the start.
    pub starts_at: Seconds,
    /// Limit in simulated minutes, where there is one.
    pub limit_minutes: Option<f64>,
}

/// What the learner is licensed to do.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Licence {
    /// Plumber.
    Plumber,
    /// Electrician.
    Electrician,
    /// Maintenance person.
    Maintenance,
    /// Learner under supervision.
    SupervisedLearner,
}

/// How a drill is run.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Mode {
    /// Hints on asking; harm is stopped, explained and counted.
    Coached,
    /// Alone, debrief at the end.
    Solo,
    /// No hints, no debrief until the instructor opens it.
    Exam,
}

/// A trap.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Trap {
    /// One of the meter's leads is broken inside.
    BrokenLead,
    /// The directory names the wrong breaker.
    MislabelledBreaker,
    /// A second breaker feeds the heater too.
    SecondSource,
    /// The dead cable shows ghost volts.
    GhostVolts,
    /// Somebody switches an unlocked breaker on.
    SomebodyResets,
}

/// One step of the log.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Entry {
    /// Time into the job when it began.
    pub at: Seconds,
    /// What was done.
    pub action: Action,
    /// What came of it.
    pub outcome: Outcome,
}

/// The technician's side of the world.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Technician {
    /// Insulating gloves on.
    pub gloves: bool,
    /// Eye protection on.
    pub eyes: bool,
    /// The meter's leads: zeroed for ohms.
    pub leads_zeroed: bool,
    /// A lead is broken inside.
    pub lead_broken: bool,
    /// The meter's fuse is blown.
    pub fuse_blown: bool,
    /// When the meter last read a known source right, as a step number.
    pub meter_proved: Option<u32>,
    /// Points read at 0 V since, each with the step that did it.
    pub read_dead: BTreeMap<Point, u32>,
    /// Points that were read live against a ground while power was on: a ground proved good.
    pub ground_proved: bool,
    /// Dead by the whole procedure, and since which step.
    pub proved_dead: Option<u32>,
    /// Household told.
    pub household_told: bool,
    /// Result told.
    pub result_told: bool,
    /// The gauge is on.
    pub gauge: bool,
    /// Fittings wiped dry, with the time.
    pub wiped: BTreeMap<Fitting, Seconds>,
    /// A hot tap has been run solid since the last refill.
    pub purged: bool,
    /// Cost of parts so far, in dollars.
    pub cost: f64,
}

impl Technician {
    /// As the technician arrives.
    pub fn arriving(job: &Job) -> Self {
        Self {
            gloves: false,
            eyes: false,
            leads_zeroed: false,
            lead_broken: job.traps.contains(&Trap::BrokenLead),
            fuse_blown: false,
            meter_proved: None,
            read_dead: BTreeMap::new(),
            ground_proved: false,
            proved_dead: None,
            household_told: false,
            result_told: false,
            gauge: false,
            wiped: BTreeMap::new(),
            purged: false,
            cost: 0.0,
        }
    }
}

/// Which covers are off.
#[derive(Clone, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
pub struct Access {
    /// Covers taken off.
    pub off: std::collections::BTreeSet<Cover>,
}

/// A job under way. `reduce` makes the next one from it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Session {
    /// What was handed to the bench.
    pub job: std::rc::Rc<Job>,
    /// The house now.
    pub home: Home,
    /// The technician now.
    pub me: Technician,
    /// Covers.
    pub access: Access,
    /// Time into the job.
    pub clock: Seconds,
    /// Steps so far.
    pub log: Vec<std::rc::Rc<Entry>>,
    /// How it ended, once it has.
    pub ended: Option<Ending>,
    /// What happened by itself, with the time, noticed or not.
    pub happenings: Vec<(Seconds, Happening)>,
    /// Water temperature at the top and pressure when the job began, for the debrief's picture.
    pub began: (Temperature, Pressure),
}
