//! Findings, words to people, and the ways a job ends.

use plant::fault::{Advice, FaultId};
use quantity::{Constant, Seconds, Tag, Temperature};

use super::Answered;
use super::turn::Turn;
use crate::action::{Helper, Observation};
use crate::person::Harm;
use crate::session::Finding;
use crate::shown::{Ending, Refusal, Shown};

quantity::constants! {
    /// Stored below this, Legionella grow.
    const LUKEWARM: Constant<Temperature> = Constant::of("storage in which Legionella grow", Temperature::celsius(45.0), Tag::Published("public-health guidance: growth from 25 to 45 °C"));
}

/// Writes a finding down with the steps that show it.
pub(super) fn finding(turn: &mut Turn, fault: Option<FaultId>, evidence: &[u32], time: Seconds) -> Answered {
    if let Some(step) = evidence.iter().find(|step| **step == 0 || **step >= turn.step) {
        return Err(Refusal::NoSuchStep { step: *step });
    }
    turn.pass(time);
    turn.s.me.findings.push(Finding { step: turn.step, fault, evidence: evidence.to_vec() });
    Ok(Shown::Done)
}

/// Advises the customer.
pub(super) fn advise(turn: &mut Turn, advice: Advice, time: Seconds) -> Answered {
    turn.pass(time);
    turn.s.me.advised.insert(advice);
    Ok(Shown::Done)
}

/// Reports something seen.
pub(super) fn report(turn: &mut Turn, what: Observation, time: Seconds) -> Answered {
    turn.pass(time);
    turn.s.me.reported.insert(what);
    Ok(Shown::Done)
}

/// Stops and calls somebody.
pub(super) fn call(turn: &mut Turn, whom: Helper) -> Answered {
    turn.end(Ending::Called { whom });
    Ok(Shown::Done)
}

/// Tells the customer what was found and done.
pub(super) fn tell_result(turn: &mut Turn, time: Seconds) -> Answered {
    if turn.s.me.result_told {
        return Err(Refusal::AlreadySo);
    }
    turn.pass(time);
    turn.s.me.result_told = true;
    Ok(Shown::Done)
}

/// Hands the job over.
pub(super) fn hand_over(turn: &mut Turn) -> Answered {
    let dial = turn.s.home.plant.thermostats.iter().map(|t| t.dial.get()).fold(f64::INFINITY, f64::min);
    if dial < LUKEWARM.get().get() {
        turn.harms.push(Harm::TankLukewarm { temperature: Temperature(dial) });
    }
    turn.end(Ending::HandedOver);
    Ok(Shown::Done)
}

/// The page's clock ran out.
pub(super) fn time_up(turn: &mut Turn, allowed: f64) -> Answered {
    if !(allowed.is_finite() && allowed >= 0.0) {
        return Err(Refusal::OutOfRange);
    }
    turn.end(Ending::ClockOut);
    Ok(Shown::Done)
}
