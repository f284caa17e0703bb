//! The one door: an act on a session gives the next session and what it showed.
//!
//! An act is tried on a copy. Where the coach watches and somebody would be hurt, the copy is dropped and
//! only the log grows; so a stopped act is the same fold as any other.

mod arc;
mod behind;
mod board;
mod clamp;
mod closing;
mod covers;
mod dials;
mod exchange;
mod fit;
mod gas;
mod hands;
mod in_line;
mod judge;
mod living;
mod looks;
mod meter;
mod non_contact;
mod people;
mod portable;
mod prove;
mod reach;
mod replace;
mod scald;
pub(crate) mod senses;
mod supply;
mod turn;
mod waiting;
mod water;
mod wires;

#[cfg(test)]
mod tests;

use std::rc::Rc;

use quantity::Seconds;

use crate::action::Action;
use crate::person::Severity;
use crate::session::{Entry, Job, Mode, Session, Technician};
use crate::shown::{Outcome, Refusal, Shown};
use turn::Turn;

/// The lists of this folder.
pub(crate) const SOURCES: &[&[quantity::Listed]] = &[
    arc::CONSTANTS,
    behind::CONSTANTS,
    board::CONSTANTS,
    closing::CONSTANTS,
    dials::CONSTANTS,
    exchange::CONSTANTS,
    fit::CONSTANTS,
    gas::CONSTANTS,
    hands::CONSTANTS,
    in_line::CONSTANTS,
    living::CONSTANTS,
    judge::CONSTANTS,
    looks::CONSTANTS,
    meter::CONSTANTS,
    portable::CONSTANTS,
    prove::CONSTANTS,
    replace::CONSTANTS,
    scald::CONSTANTS,
    senses::CONSTANTS,
    supply::CONSTANTS,
    turn::CONSTANTS,
    waiting::CONSTANTS,
    water::CONSTANTS,
    wires::CONSTANTS,
];
pub use waiting::Waiting;

/// What an act answers, or why it is not done.
type Answered = Result<Shown, Refusal>;

impl Session {
    /// A job at the moment the technician rings.
    pub fn begin(job: Job) -> Self {
        let home = job.home.clone();
        let began = (home.plant.outlet(), home.plant.plumbing.pressure);
        Self {
            me: Technician::arriving(&job),
            job: Rc::new(job),
            home,
            access: Default::default(),
            clock: Seconds(0.0),
            log: Vec::new(),
            ended: None,
            happenings: Vec::new(),
            began,
        }
    }

    /// Does one act here.
    pub fn step(&mut self, action: &Action) -> Outcome {
        let (next, outcome) = reduce(self, action);
        *self = next;
        outcome
    }

    /// A job with acts done in order: the fold behind every reload, replay and proof.
    pub fn replay(job: Job, actions: &[Action]) -> Self {
        let mut session = Self::begin(job);
        for action in actions {
            session.step(action);
        }
        session
    }

    /// The number the next act will have, 1 the first.
    pub fn next_step(&self) -> u32 {
        u32::try_from(self.log.len()).unwrap_or(u32::MAX).saturating_add(1)
    }
}

/// Does one act. Pure, deterministic and total: every act in every state answers with a reading, a change,
/// a reason why not, or a harm.
pub fn reduce(session: &Session, action: &Action) -> (Session, Outcome) {
    let (next, outcome) = if session.ended.is_some() {
        (session.clone(), still(Shown::Refused { why: Refusal::Over }))
    } else {
        attempt(session, action)
    };
    log(session, next, action, outcome)
}

/// Why an act would not be done now, without doing it: no time passes. Acts that are nothing but time, or that watch
/// running water, say so only when they are done.
pub fn refusal(session: &Session, action: &Action) -> Option<Refusal> {
    if session.ended.is_some() {
        return Some(Refusal::Over);
    }
    if matches!(
        action,
        Action::Wait { .. } | Action::WaitForCutOut | Action::LetThemUse { .. } | Action::Bucket { .. }
    ) {
        return None;
    }
    let mut turn = Turn::new(session);
    turn.asking = true;
    match perform(&mut turn, action) {
        Err(why) | Ok(Shown::Refused { why }) => Some(why),
        Ok(_) => None,
    }
}

fn attempt(session: &Session, action: &Action) -> (Session, Outcome) {
    let mut turn = Turn::new(session);
    let shown = match perform(&mut turn, action) {
        Ok(shown) => shown,
        Err(why) => return (session.clone(), still(Shown::Refused { why })),
    };
    settle(session, turn, shown)
}

/// What is left of an act that was done: all of it, or what the coach lets be.
fn settle(session: &Session, turn: Turn, shown: Shown) -> (Session, Outcome) {
    let (next, outcome) = turn.finish(shown);
    let worst = outcome.harms.iter().copied().max_by_key(|harm| harm.severity());
    match worst {
        Some(harm) if session.job.mode == Mode::Coached && harm.severity() >= Severity::Injury => {
            let mut same = session.clone();
            same.me.stops = same.me.stops.saturating_add(1);
            (same, still(Shown::Stopped { harm }))
        }
        _ => (next, outcome),
    }
}

/// An outcome with nothing but what it shows.
fn still(shown: Shown) -> Outcome {
    Outcome { took: Seconds(0.0), shown, harms: Vec::new(), noticed: Vec::new(), facts: Vec::new() }
}

fn log(before: &Session, mut next: Session, action: &Action, outcome: Outcome) -> (Session, Outcome) {
    let entry = Entry { at: before.clock, action: action.clone(), outcome: outcome.clone() };
    next.log.push(Rc::new(entry));
    (next, outcome)
}

/// Sends an act to its family.
fn perform(turn: &mut Turn, action: &Action) -> Answered {
    let time = crate::minutes::of(action);
    if exchange::went_with_it(&turn.s.home.plant, action) {
        return Err(Refusal::NotHere);
    }
    match action {
        Action::Ask { question } => people::ask(turn, *question, time),
        Action::TellHousehold => people::tell_household(turn, time),
        Action::Read { what } => looks::read(turn, *what, time),
        Action::Look { at } => looks::look(turn, *at, time),
        Action::Listen { at } => looks::listen(turn, *at, time),
        Action::Smell { at } => looks::smell(turn, *at, time),
        Action::Touch { at } => hands::feel(turn, at, time),
        Action::Wipe { fitting } => looks::wipe(turn, *fitting, time),
        Action::Gloves { on } => people::gloves(turn, *on, time),
        Action::EyeProtection { on } => people::eyes(turn, *on, time),
        Action::Breaker { slot, on } => supply::breaker(turn, *slot, *on, time),
        Action::TryStart => supply::try_start(turn, time),
        Action::Lock { slot, on } => supply::lock(turn, *slot, *on, time),
        Action::MoveBreaker { slot } => supply::shift(turn, *slot, time),
        Action::BoxHandle { closed } => in_line::throw(turn, *closed, time),
        Action::BoxLock { on } => in_line::lock(turn, *on, time),
        Action::PullFuse { leg, out } => in_line::pull(turn, *leg, *out, time),
        Action::TestFuse { leg } => in_line::test(turn, *leg, time),
        Action::SetClock => in_line::set_clock(turn, time),
        Action::PortableHeater { leg, on } => portable::plug(turn, *leg, *on, time),
        Action::Relabel { slot, feeds } => supply::relabel(turn, *slot, *feeds, time),
        Action::Cover { which, off } => covers::cover(turn, *which, *off, time),
        Action::Meter { function, red, black } => meter::meter(turn, *function, *red, *black, time),
        Action::ZeroLeads => meter::zero(turn, time),
        Action::ProveMeter { on } => prove::meter(turn, *on, time),
        Action::SpareLeads => meter::spare(turn, time),
        Action::Jack { jack } => meter::jack(turn, *jack, time),
        Action::ChangeBattery => meter::change_battery(turn, time),
        Action::NonContact { at } => non_contact::hold(turn, *at, time),
        Action::Clamp { around } => clamp::clamp(turn, *around, time),
        Action::PressReset => dials::press_reset(turn, time),
        Action::Lift { end } => wires::lift(turn, *end, time),
        Action::Label { end } => wires::label(turn, *end, time),
        Action::Land { end, screw, torqued } => wires::land(turn, *end, *screw, *torqued, time),
        Action::Remake { end, torqued } => wires::remake(turn, *end, *torqued, time),
        Action::Dial { level, to } => dials::dial(turn, *level, *to, time),
        Action::Seat { level } => dials::seat(turn, *level, time),
        Action::MainValve { opening } => water::valve(turn, |pipes| &mut pipes.main_valve, *opening, time),
        Action::ColdValve { opening } => water::valve(turn, |pipes| &mut pipes.cold_valve, *opening, time),
        Action::Tap { tap, opening } => water::tap(turn, *tap, *opening, time),
        Action::Plug { level, fitted } => dials::plug(turn, *level, *fitted, time),
        Action::ReturnValve { opening } => water::return_valve(turn, *opening, time),
        Action::Ventilate => water::ventilate(turn, time),
        Action::Thaw => water::thaw(turn, time),
        Action::Stops { tap, shut } => water::stops(turn, *tap, *shut, time),
        Action::Sample { tap, hot } => water::sample(turn, *tap, *hot, time),
        Action::LookAtAnode => water::look_at_anode(turn, time),
        Action::ReadWaterMeter => water::read_meter(turn, time),
        Action::Bucket { tap, volume } => water::bucket(turn, *tap, *volume, time),
        Action::Hose { on } => water::hose(turn, *on, time),
        Action::Drain { opening } => water::drain(turn, *opening, time),
        Action::ReliefLever { up } => water::lever(turn, *up, time),
        Action::Wait { .. } | Action::WaitForCutOut | Action::LetThemUse { .. } => {
            waiting::wait(turn, action)
        }
        Action::Thermometer { at } => looks::thermometer(turn, at, time),
        Action::Gauge { on } => water::gauge(turn, *on, time),
        Action::ReadGauge => water::read_gauge(turn, time),
        Action::TankCharge => water::tank_charge(turn, time),
        Action::Replace { part } => replace::replace(turn, part, time),
        Action::PartPipes => exchange::part_pipes(turn, time),
        Action::CarryOut { helped } => exchange::carry_out(turn, *helped, time),
        Action::SetHeater { nominal, rating } => exchange::set_heater(turn, *nominal, *rating, time),
        Action::JoinPipes { dielectric } => exchange::join_pipes(turn, *dielectric, time),
        Action::ReuseRelief => exchange::reuse_relief(turn, time),
        Action::Finding { fault, evidence } => closing::finding(turn, *fault, evidence, time),
        Action::Advise { advice } => closing::advise(turn, *advice, time),
        Action::Report { what } => closing::report(turn, *what, time),
        Action::StopAndCall { whom } => closing::call(turn, *whom),
        Action::AgreeCost => people::agree_cost(turn, time),
        Action::Answer { so } => people::answer(turn, *so, time),
        Action::TellResult => closing::tell_result(turn, time),
        Action::HandOver => closing::hand_over(turn),
        Action::TimeUp { allowed } => closing::time_up(turn, *allowed),
    }
}

/// Bare metal of a place can be reached.
pub(crate) fn reachable(session: &Session, place: plant::Place) -> bool {
    reach::place(session, place).is_ok()
}

/// A place can be seen into.
pub(crate) fn sees(session: &Session, place: plant::Place) -> bool {
    reach::sight(session, place).is_ok()
}
