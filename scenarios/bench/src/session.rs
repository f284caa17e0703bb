//! One job under way: the house as found, the technician, what has been done so far.

use std::collections::{BTreeMap, BTreeSet};

use plant::fault::{Advice, FaultId};
use plant::home::Home;
use plant::household::Account;
use plant::{Happening, Point, Screw};
use quantity::{Draw, Pressure, Seconds, Temperature, Volume};
use serde::{Deserialize, Serialize};

use crate::Hearsay;
use crate::action::{Action, Cover, Fitting, Jack, Observation};
use crate::instrument::{Kit, multimeter};
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
    /// What the people have heard, and ask.
    pub hearsay: Hearsay,
    /// The instruments in the kit, each with its own error.
    pub kit: Kit,
    /// Time of day at the start.
    pub starts_at: Seconds,
    /// Weekday of that day, 0 for Monday.
    #[serde(default)]
    pub weekday: u16,
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

impl Licence {
    /// All of them, in the order they are offered; drill codes count by it.
    pub const ALL: [Self; 4] = [Self::Plumber, Self::Electrician, Self::Maintenance, Self::SupervisedLearner];
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

impl Mode {
    /// All of them, in the order they are offered; drill codes count by it.
    pub const ALL: [Self; 3] = [Self::Coached, Self::Solo, Self::Exam];
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
    /// One of the meter's leads makes contact only now and then.
    WornLead,
    /// The last user left the red lead in the amperes jack.
    WrongJack,
    /// The meter's battery is nearly flat.
    WeakBattery,
}

impl Trap {
    /// All of them, in the order they are offered; drill codes count by it.
    pub const ALL: [Self; 8] = [
        Self::BrokenLead,
        Self::MislabelledBreaker,
        Self::SecondSource,
        Self::GhostVolts,
        Self::SomebodyResets,
        Self::WornLead,
        Self::WrongJack,
        Self::WeakBattery,
    ];
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
    /// A lead makes contact only now and then.
    pub lead_worn: bool,
    /// The meter's fuse is blown.
    pub fuse_blown: bool,
    /// Where the meter's red lead is plugged in.
    pub jack: Jack,
    /// Use left in the meter's battery.
    pub battery: Seconds,
    /// When the meter last read a known source right, as a step number.
    pub meter_proved: Option<u32>,
    /// Points read at 0 V since, each with the step that did it.
    pub read_dead: BTreeMap<Point, u32>,
    /// The same against a ground that was not proved yet, with that ground: they count once it is.
    pub read_to: Vec<(Point, Screw, u32)>,
    /// When leg to leg was last read at 0 V, all sources locked, as a step number.
    pub legs_dead: [Option<u32>; 2],
    /// Grounds proved good: a live leg read 120 V to them, or they had continuity to the panel's ground.
    pub grounds: BTreeSet<Screw>,
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
    /// A hot tap has been run solid since air was last let in; true on arrival.
    pub purged: bool,
    /// How long a hot tap has run with the tank full since air was last let in.
    pub solid_for: Seconds,
    /// Cost of parts so far, in dollars.
    pub cost: f64,
    /// When each breaker was last switched off by the technician, by slot.
    pub off_since: BTreeMap<u32, Seconds>,
    /// Findings written down, in order.
    pub findings: Vec<Finding>,
    /// Windows were opened and flames kept away.
    pub ventilated: bool,
    /// The customer knows what it will cost, and agreed.
    pub cost_agreed: bool,
    /// What was answered to what they had heard.
    #[serde(default)]
    pub answered: Option<bool>,
    /// Advice given.
    pub advised: BTreeSet<Advice>,
    /// Things reported beyond the fault.
    pub reported: BTreeSet<Observation>,
    /// Water the technician let out where it does damage.
    pub spilled: Volume,
    /// Times the coach stopped an act that would have hurt.
    pub stops: u32,
    /// Water hot enough to burn runs somewhere with nobody warned.
    pub hot_discharge: bool,
}

impl Technician {
    /// Gloves and eye protection on.
    pub const fn protected(&self) -> bool {
        self.gloves && self.eyes
    }

    /// As the technician arrives.
    pub fn arriving(job: &Job) -> Self {
        Self {
            gloves: false,
            eyes: false,
            leads_zeroed: false,
            lead_broken: job.traps.contains(&Trap::BrokenLead),
            lead_worn: job.traps.contains(&Trap::WornLead),
            fuse_blown: false,
            jack: if job.traps.contains(&Trap::WrongJack) { Jack::Amps } else { Jack::Volts },
            battery: if job.traps.contains(&Trap::WeakBattery) {
                Seconds(multimeter::LOW_BATTERY.get())
            } else {
                Seconds(multimeter::BATTERY.get())
            },
            meter_proved: None,
            read_dead: BTreeMap::new(),
            read_to: Vec::new(),
            legs_dead: [None; 2],
            grounds: BTreeSet::new(),
            proved_dead: None,
            household_told: false,
            result_told: false,
            gauge: false,
            wiped: BTreeMap::new(),
            purged: true,
            solid_for: Seconds(0.0),
            cost: 0.0,
            off_since: BTreeMap::new(),
            findings: Vec::new(),
            ventilated: false,
            cost_agreed: false,
            answered: None,
            advised: BTreeSet::new(),
            reported: BTreeSet::new(),
            spilled: Volume(0.0),
            stops: 0,
            hot_discharge: false,
        }
    }

    /// The meter's low-battery sign stands; on a flat battery nothing does.
    pub fn low_battery(&self) -> bool {
        self.battery.get() > 0.0 && self.battery.get() <= multimeter::LOW_BATTERY.get()
    }

    /// Whether the leads pass anything at a step: a worn one does now and then, by the kit's own seed.
    pub(crate) fn lead_passes(&self, kit: &Kit, step: u32) -> bool {
        let contact = || Draw::new(kit.seed, &format!("worn lead {step}")).chance(multimeter::CONTACT.get());
        !self.lead_broken && (!self.lead_worn || contact())
    }
}

/// A finding as written down.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
pub struct Finding {
    /// The step it was written at.
    pub step: u32,
    /// The one thing wrong; `None` for nothing wrong.
    pub fault: Option<FaultId>,
    /// Steps that show it.
    pub evidence: Vec<u32>,
}

/// Which covers are off.
#[derive(Clone, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
pub struct Access {
    /// Covers taken off.
    pub off: BTreeSet<Cover>,
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
