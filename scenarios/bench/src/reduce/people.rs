//! Talking to people, and what the technician wears.

use plant::household::Question;
use quantity::Seconds;

use super::Answered;
use super::turn::Turn;
use crate::shown::{Refusal, Shown};

/// Asks the customer.
pub(super) fn ask(turn: &mut Turn, question: Question, time: Seconds) -> Answered {
    let answer = turn.s.job.account.answer(question).ok_or(Refusal::NotHere)?;
    turn.pass(time);
    Ok(Shown::Said { answer })
}

/// Tells the household.
pub(super) fn tell_household(turn: &mut Turn, time: Seconds) -> Answered {
    if turn.s.me.household_told {
        return Err(Refusal::AlreadySo);
    }
    // The warning is the first thing said: what runs while the rest is told burns nobody who has heard it.
    turn.s.me.household_told = true;
    turn.pass(time);
    turn.s.me.hot_discharge = false;
    Ok(Shown::Done)
}

/// Names a sum and gets consent to it.
pub(super) fn agree_cost(turn: &mut Turn, time: Seconds) -> Answered {
    if turn.s.me.cost_agreed {
        return Err(Refusal::AlreadySo);
    }
    turn.pass(time);
    turn.s.me.cost_agreed = true;
    Ok(Shown::Done)
}

/// Says whether what they have heard is so. What has been said stays said.
pub(super) fn answer(turn: &mut Turn, so: bool, time: Seconds) -> Answered {
    if turn.s.me.answered.is_some() {
        return Err(Refusal::AlreadySo);
    }
    turn.pass(time);
    turn.s.me.answered = Some(so);
    Ok(Shown::Done)
}

/// Insulating gloves.
pub(super) fn gloves(turn: &mut Turn, on: bool, time: Seconds) -> Answered {
    if turn.s.me.gloves == on {
        return Err(Refusal::AlreadySo);
    }
    turn.pass(time);
    turn.s.me.gloves = on;
    Ok(Shown::Done)
}

/// Eye protection.
pub(super) fn eyes(turn: &mut Turn, on: bool, time: Seconds) -> Answered {
    if turn.s.me.eyes == on {
        return Err(Refusal::AlreadySo);
    }
    turn.pass(time);
    turn.s.me.eyes = on;
    Ok(Shown::Done)
}
