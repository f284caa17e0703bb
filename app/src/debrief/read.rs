//! From an attempt to its debrief: make the drill again, fold the acts, judge them, put it into words.

use std::rc::Rc;

use bench::Action;
use drill::{Attempt, Rubric};
use gloo::timers::callback::Timeout;
use words::Voice;
use yew::prelude::*;

use super::endings::{customer_words, ending_words};
use super::film::Film;
use super::judged::accounts;
use super::letters::letters;
use super::sheet::{self, Sheet, Verdict};
use crate::store::use_work;
use crate::text::voice;

/// The page says that it is at work before it is.
const AFTER_MS: u32 = 40;

/// How far the debrief is.
#[derive(Clone, PartialEq, Debug)]
pub enum Reading {
    /// Being computed.
    Folding,
    /// The drill cannot be made.
    Failed(String),
    /// There.
    Ready(Rc<Sheet>),
}

/// The debrief of an attempt, in the units chosen on the page.
#[hook]
pub fn use_sheet(attempt: Rc<Attempt>) -> Reading {
    let units = use_work().desk.units;
    let reading = use_state(|| Reading::Folding);
    let set = reading.setter();
    use_effect_with((attempt, units), move |(attempt, units)| {
        let (attempt, units) = (attempt.clone(), *units);
        let timer = Timeout::new(AFTER_MS, move || {
            set.set(match read(&voice(units), attempt) {
                Ok(sheet) => Reading::Ready(Rc::new(sheet)),
                Err(why) => Reading::Failed(why),
            });
        });
        move || drop(timer)
    });
    (*reading).clone()
}

/// Computes it.
pub fn read(voice: &Voice, attempt: Rc<Attempt>) -> Result<Sheet, String> {
    let made = drill::make(&attempt.order).map_err(|error| error.to_string())?;
    let film = Film::take(made.job.clone(), &attempt.actions);
    let Some(session) = film.last().cloned() else { return Err(voice.text("debrief-no-acts")) };
    let right = drill::cure::judge(&made, &session).is_right();
    let accounts = accounts(voice, &drill::judge(&made, &session, &Rubric::plain()));
    let mut steps = sheet::steps(voice, film.entries());
    let named = accounts.iter().flat_map(|account| &account.lines).map(|line| line.step);
    let marks =
        film.entries().iter().zip(1u32..).filter(|(entry, _)| is_mark(&entry.action)).map(|(_, at)| at);
    let letters = letters(named.chain(marks));
    for step in &mut steps {
        step.letter = letters.get(&step.number).cloned();
    }
    let fault = voice.fault(made.fault.id);
    let ending = ending_words(voice, session.ended);
    let verdict = Verdict {
        headline: voice.filled(
            "debrief-headline",
            &[("fault", fault.clone().into()), ("ending", ending.to_lowercase().into())],
        ),
        fault,
        remedy: voice.fault_remedy(made.fault.id),
        finding: written(voice, &attempt.actions),
        ending,
        customer: customer_words(voice, &session, right),
    };
    let (starts_at, stretches) = (made.job.starts_at, sheet::time_spent(film.entries()));
    Ok(Sheet { attempt, fault: made.fault.id, film, starts_at, steps, stretches, accounts, verdict })
}

/// Acts that are lettered even when nothing was charged for them: where the job turned.
const fn is_mark(action: &Action) -> bool {
    matches!(
        action,
        Action::Finding { .. } | Action::Replace { .. } | Action::Breaker { .. } | Action::StopAndCall { .. }
    )
}

/// The last finding written.
fn written(voice: &Voice, actions: &[Action]) -> String {
    let last = actions.iter().rev().find_map(|action| match action {
        Action::Finding { fault, .. } => Some(*fault),
        _ => None,
    });
    match last {
        Some(Some(fault)) => voice.fault(fault),
        Some(None) => voice.text("fault-none"),
        None => String::new(),
    }
}
