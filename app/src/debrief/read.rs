//! From an attempt to its debrief: make the drill again, fold the acts, judge them, put it into words.

use std::rc::Rc;

use bench::{Action, Session};
use drill::{Attempt, Rubric};
use gloo::timers::callback::Timeout;
use words::Voice;
use yew::prelude::*;

use super::endings::{customer_words, ending_words, right_end_words};
use super::judged::accounts;
use super::phase::stretches;
use super::sheet::{self, Saying, Sheet, Verdict};
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
    let work = use_work();
    let (units, language) = (work.desk.units, work.language);
    let reading = use_state(|| Reading::Folding);
    let set = reading.setter();
    use_effect_with((attempt, units, language), move |(attempt, units, _)| {
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
    let made = drill::make(&attempt.order).map_err(|error| voice.order_error(&error))?;
    let computed = drill::debrief(&made, &attempt.actions, &Rubric::plain());
    let session = Rc::new(drill::replay(&made, &attempt.actions));
    Ok(Sheet {
        fault: made.fault.id,
        second: made.second.clone(),
        starts_at: made.job.starts_at,
        steps: sheet::steps(voice, &session.log, &computed.moments),
        stretches: stretches(&computed.moments),
        accounts: accounts(voice, &computed.score),
        sayings: sayings(voice, &computed),
        verdict: verdict(voice, &computed, &session, &attempt),
        picture: computed.picture,
        session,
        attempt,
    })
}

fn sayings(voice: &Voice, computed: &drill::Debrief) -> Vec<Saying> {
    let saying = |held: &drill::belief::Held| Saying {
        said: voice.belief(&held.belief),
        truth: voice.belief_truth(&held.belief),
        step: held.step.unwrap_or(0),
    };
    computed.beliefs.iter().map(saying).collect()
}

fn verdict(voice: &Voice, computed: &drill::Debrief, session: &Session, attempt: &Attempt) -> Verdict {
    let fault = voice.fault(computed.fault.id);
    let ending = ending_words(voice, session.ended);
    let title = computed.title;
    let headline = voice.filled(
        "debrief-headline",
        &[
            ("call", title.call.into()),
            ("street", format!("{} {}", title.house, title.street_name()).into()),
            ("fault", fault.clone().into()),
            ("ending", words::letters::small(&ending).into()),
        ],
    );
    Verdict {
        headline,
        remedy: right_end_words(voice, computed.right_end, computed.fault.id),
        finding: written(voice, &attempt.actions),
        customer: customer_words(voice, session, computed),
        fault,
        second: computed.second.as_ref().map(|case| voice.fault(case.id)),
        ending,
    }
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
