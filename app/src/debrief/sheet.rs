//! Everything the debrief shows of one attempt, put into words once.

use std::rc::Rc;

use bench::{Action, Entry, Shown};
use drill::Attempt;
use drill::debrief::{Moment, Picture, Told};
use plant::fault::{FaultCase, FaultId};
use plant::{Level, Plant};
use quantity::Seconds;
use words::Voice;

use super::phase::Stretch;
use crate::said::Speech;
use crate::store::World;

/// A line of an account.
#[derive(Clone, PartialEq, Debug)]
pub struct Line {
    /// Points; negative ones were lost.
    pub points: f64,
    /// The act that caused it, 1 the first; 0 for something that was never done.
    pub step: u32,
    /// It ends the job, whatever else was done.
    pub gate: bool,
    /// What happened.
    pub text: String,
    /// Why it matters.
    pub why: String,
    /// What would have been right.
    pub right: String,
}

impl Line {
    /// Whether it cost anything or ended the job.
    pub fn weighs(&self) -> bool {
        self.points < 0.0 || self.gate
    }
}

/// One of the four accounts.
#[derive(Clone, PartialEq, Debug)]
pub struct Account {
    /// What it is called in files and in the book.
    pub id: &'static str,
    /// Its name.
    pub name: String,
    /// Points kept.
    pub got: f64,
    /// Points there were.
    pub of: f64,
    /// Its lines.
    pub lines: Vec<Line>,
}

/// One act.
#[derive(Clone, PartialEq, Debug)]
pub struct Step {
    /// Its number, 1 the first.
    pub number: u32,
    /// Its letter.
    pub letter: String,
    /// The drawing shows it: a line of the accounts names it, or the job turned there.
    pub marked: bool,
    /// Time into the job when it was over: what it showed and the drawings are of that moment.
    pub at: Seconds,
    /// What was done.
    pub what: String,
    /// The figure an instrument showed; empty when none.
    pub reading: String,
    /// What else it showed and what was noticed meanwhile.
    pub showed: Vec<String>,
    /// What it hurt.
    pub harms: Vec<String>,
    /// It hurt somebody or spoilt something.
    pub grave: bool,
    /// What it told about the fault; empty for what is no reading.
    pub told: String,
}

/// How it came out, in words.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Verdict {
    /// The number of the service call and the house.
    pub call: String,
    /// One line: what was wrong, and how the job ended.
    pub headline: String,
    /// What was wrong.
    pub fault: String,
    /// What was wrong besides.
    pub second: Option<String>,
    /// What puts it right, the second fault too.
    pub remedy: String,
    /// What the learner wrote down last, or that it was nothing.
    pub finding: String,
    /// How the job ended.
    pub ending: String,
    /// What the customer is left with.
    pub customer: Vec<String>,
    /// Traces of old troubles, and what only stood beside: none of it wrong.
    pub traces: Vec<String>,
}

/// A common saying that cost something here.
#[derive(Clone, PartialEq, Debug)]
pub struct Saying {
    /// As one hears it.
    pub said: String,
    /// What is true.
    pub truth: String,
    /// The act that cost for it; 0 for something never done.
    pub step: u32,
}

/// The debrief of one attempt.
#[derive(Clone, Debug)]
pub struct Sheet {
    /// The attempt.
    pub attempt: Rc<Attempt>,
    /// The job folded to its end.
    pub session: World,
    /// What went on inside.
    pub picture: Picture,
    /// Time of day at the start.
    pub starts_at: Seconds,
    /// The acts.
    pub steps: Vec<Step>,
    /// The time, by what it was spent on.
    pub stretches: Vec<Stretch>,
    /// The accounts.
    pub accounts: Vec<Account>,
    /// Sayings that the job acted on.
    pub sayings: Vec<Saying>,
    /// How it came out.
    pub verdict: Verdict,
    /// What was wrong.
    pub fault: FaultId,
    /// What was wrong besides.
    pub second: Option<FaultCase>,
    /// The language and units of its words.
    pub speech: Speech,
}

/// A sheet is made once for an attempt and a way to speak, and never changes.
impl PartialEq for Sheet {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.attempt, &other.attempt)
            && self.session == other.session
            && self.speech == other.speech
    }
}

impl Sheet {
    /// How long the job took.
    pub fn length(&self) -> Seconds {
        self.session.clock
    }

    /// A step by its number.
    pub fn step(&self, number: u32) -> Option<&Step> {
        self.steps.get((number as usize).checked_sub(1)?)
    }

    /// What was done at a step; of step 0, that nothing was yet.
    pub fn what(&self, voice: &Voice, number: u32) -> String {
        self.step(number).map_or_else(|| voice.text("debrief-arrival"), |step| step.what.clone())
    }

    /// The letter of a step; none of step 0.
    pub fn letter(&self, number: u32) -> String {
        self.step(number).map(|step| step.letter.clone()).unwrap_or_default()
    }

    /// Where the heater has an element.
    pub fn levels(&self) -> &'static [Level] {
        levels(&self.session.home.plant)
    }

    /// An element in one word: which of two, or that it is the only one.
    pub fn which(&self, voice: &Voice, level: Level) -> String {
        if self.levels().len() > 1 { voice.level(level) } else { voice.text("debrief-only-element") }
    }

    /// The name of a rail: leg 1, leg 2 or the neutral.
    pub fn rail(&self, voice: &Voice, leg: usize) -> String {
        match (leg, self.session.home.plant.wiring.hot_neutral) {
            (1, true) => voice.text("debrief-neutral"),
            (leg, _) => voice.filled("debrief-leg", &[("leg", (leg as u32 + 1).into())]),
        }
    }

    /// A text without "upper" where nothing is lower.
    pub fn fit(&self, voice: &Voice, id: &str) -> String {
        crate::text::fit(voice.text(id), self.session.home.plant.wiring.layout)
    }

    /// Lines that name a step.
    pub fn lines_of(&self, number: u32) -> impl Iterator<Item = &Line> {
        self.accounts.iter().flat_map(|account| &account.lines).filter(move |line| line.step == number)
    }

    /// The step to open with: the one that cost most, else the last finding, else the first.
    pub fn opening_step(&self) -> u32 {
        let lines = self.accounts.iter().flat_map(|account| &account.lines);
        let worst = lines.filter(|line| line.weighs() && line.step > 0).min_by(|a, b| {
            (!a.gate, a.points).partial_cmp(&(!b.gate, b.points)).unwrap_or(std::cmp::Ordering::Equal)
        });
        let finding =
            || self.session.log.iter().rposition(|entry| matches!(entry.action, Action::Finding { .. }));
        worst.map(|line| line.step).or_else(|| finding().map(|at| at as u32 + 1)).unwrap_or(1)
    }

    /// Heights of the upper and the lower element as fractions of the tank's.
    pub fn element_heights(&self) -> [f64; 2] {
        let plate = self.session.home.plant.plate;
        [plate.upper_element, plate.lower_element].map(|at| at.get() / plate.height.get())
    }
}

/// Where a heater has an element.
pub fn levels(plant: &Plant) -> &'static [Level] {
    let all = Level::ALL;
    if plant.wiring.layout.has(Level::Lower) { all } else { all.get(..1).unwrap_or(all) }
}

/// The acts in words.
pub fn steps(voice: &Voice, entries: &[Rc<Entry>], moments: &[Moment]) -> Vec<Step> {
    entries.iter().zip(moments).map(|(entry, moment)| step(voice, entry, moment)).collect()
}

fn step(voice: &Voice, entry: &Entry, moment: &Moment) -> Step {
    let outcome = &entry.outcome;
    let shown = voice.showed(&entry.action, outcome);
    let figure = is_figure(&outcome.shown);
    let mut showed: Vec<String> = if figure || shown.is_empty() { Vec::new() } else { vec![shown.clone()] };
    showed.extend(crate::text::noticed(voice, &outcome.noticed));
    Step {
        number: moment.step,
        letter: moment.letter.clone(),
        marked: !moment.lines.is_empty() || turns(&entry.action),
        at: moment.at + moment.took,
        what: voice.action(&entry.action),
        reading: if figure { shown } else { String::new() },
        showed,
        harms: outcome.harms.iter().map(|one| voice.harm(one)).collect(),
        grave: !outcome.harms.is_empty(),
        told: told(voice, &moment.told),
    }
}

/// More suspects than this are counted, not named; the table under the act names them all.
const NAMED: usize = 3;

fn told(voice: &Voice, told: &Told) -> String {
    match told {
        Told::NoReading => String::new(),
        Told::NothingNew => voice.text("debrief-nothing-new"),
        Told::New { ruled_out } => {
            let count = ruled_out.len();
            if count > NAMED {
                return voice.filled("debrief-ruled-out-many", &[("count", (count as u32).into())]);
            }
            let names: Vec<String> = ruled_out.iter().map(|fault| voice.fault(*fault)).collect();
            voice.filled("debrief-ruled-out", &[("faults", names.join("; ").into())])
        }
    }
}

/// Acts that the drawing marks even when nothing was charged for them.
const fn turns(action: &Action) -> bool {
    matches!(
        action,
        Action::Finding { .. } | Action::Replace { .. } | Action::Breaker { .. } | Action::StopAndCall { .. }
    )
}

/// Whether it is a figure on an instrument, to be read large.
const fn is_figure(shown: &Shown) -> bool {
    matches!(shown, Shown::Meter { .. } | Shown::Clamp { .. } | Shown::Temperature { .. })
}
