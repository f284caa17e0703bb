//! From an attempt to its debrief: make the drill again, fold the acts, judge them, put it into words.

use std::cell::RefCell;
use std::rc::Rc;

use bench::{Action, Session};
use drill::{Attempt, Debrief, Drill};
use gloo::timers::callback::Timeout;
use plant::Installation;
use plant::fault::FaultCase;
use words::Voice;
use yew::prelude::*;

use super::endings::{customer_words, ending_words, right_end_words};
use super::judged::accounts;
use super::phase::stretches;
use super::sheet::{self, Saying, Sheet, Verdict};
use crate::away::{self, Answer, Task};
use crate::said::{Speech, use_speech};
use crate::shell::Busy;
use crate::store::World;
use crate::text::voice;
use crate::turns::Turns;

/// How far the debrief is.
#[derive(Clone, PartialEq, Debug)]
pub enum Reading {
    /// Being computed; emits to stop.
    Folding(Callback<()>),
    /// Stopped; emits to go on.
    Stopped(Callback<MouseEvent>),
    /// The drill cannot be made.
    Failed(String),
    /// There.
    Ready(Rc<Sheet>),
}

impl Reading {
    /// Shows how far it is, and the debrief once it is there.
    pub fn show(self, voice: &Voice, ready: impl FnOnce(Rc<Sheet>) -> Html) -> Html {
        match self {
            Self::Folding(onstop) => html! { <Busy said={voice.text("debrief-folding")} {onstop} /> },
            Self::Stopped(onagain) => html! {
                <div class="busy">
                    <p role="status">{ voice.text("page-stopped") }</p>
                    <button type="button" data-act="go-on" onclick={onagain}>{ voice.text("page-go-on") }</button>
                </div>
            },
            Self::Failed(why) => html! { <p class="warn" role="alert">{ why }</p> },
            Self::Ready(sheet) => ready(sheet),
        }
    }
}

/// A drill with the end of a job and its debrief.
#[derive(Clone)]
struct Judged {
    drill: Rc<Drill>,
    session: World,
    debrief: Rc<Debrief>,
}

/// Nothing changes behind the pointers, so one of them tells whether it is another job.
impl PartialEq for Judged {
    fn eq(&self, other: &Self) -> bool {
        self.session == other.session
    }
}

/// The debrief of an attempt, whose end may be at hand, as the page speaks now. It is computed once, and put into words
/// for each language and units.
#[hook]
pub fn use_sheet(attempt: Rc<Attempt>, ended: Option<World>) -> Reading {
    let speech = use_speech();
    let judged = use_state(|| None::<Result<Judged, String>>);
    let stopped = use_state(|| false);
    {
        let set = judged.setter();
        use_effect_with((attempt.clone(), *stopped), move |(attempt, stopped)| {
            let (asked, folding) = (Rc::new(RefCell::new(None)), Rc::new(RefCell::new(None)));
            let told = judge(attempt.clone(), ended, set, folding.clone());
            // In a turn of its own: the page has just changed.
            let asking = (!stopped).then(|| {
                let (asked, attempt) = (asked.clone(), attempt.clone());
                Turns::after(0, move |_| {
                    asked.replace(Some(away::ask(Task::Debrief(attempt.write()), told.clone())));
                    false
                })
            });
            move || drop((asking, asked.take(), folding.take()))
        });
    }
    let sheet = use_memo(((*judged).clone(), speech, attempt), |(judged, speech, attempt)| {
        let judged = judged.as_ref()?;
        Some(judged.clone().map(|judged| Rc::new(sheet_of(*speech, &judged, attempt.clone()))))
    });
    let set = |to: bool| {
        let stopped = stopped.setter();
        move || stopped.set(to)
    };
    match (&*sheet, *stopped) {
        (Some(Ok(sheet)), _) => Reading::Ready(sheet.clone()),
        (Some(Err(why)), _) => Reading::Failed(why.clone()),
        (None, true) => {
            let go_on = set(false);
            Reading::Stopped(Callback::from(move |_| go_on()))
        }
        (None, false) => {
            let stop = set(true);
            Reading::Folding(Callback::from(move |()| stop()))
        }
    }
}

/// Takes what was found, and folds the job on the page for its end where that is not at hand.
fn judge(
    attempt: Rc<Attempt>,
    ended: Option<World>,
    set: UseStateSetter<Option<Result<Judged, String>>>,
    folding: Rc<RefCell<Option<Turns>>>,
) -> Callback<Answer> {
    Callback::from(move |answer| {
        let (lived, found) = match answer {
            Answer::Debriefed(found) => *found,
            Answer::Failed(why) => return set.set(Some(Err(why))),
            // Only a debrief answers this question.
            _ => return,
        };
        let drill = match Drill::after(&attempt.order, lived) {
            Ok(drill) => Rc::new(drill),
            Err(error) => return set.set(Some(Err(crate::text::order_error(&error)))),
        };
        let (ended, set, attempt, folding) = (ended.clone(), set.clone(), attempt.clone(), folding.clone());
        // What follows from it, and then its words and drawings, are made in turns of their own.
        let turn = Timeout::new(0, move || {
            let debrief = Rc::new(Debrief::of(&drill, found));
            let made = drill.clone();
            let judged = move |session: World| {
                let (drill, debrief) = (made.clone(), debrief.clone());
                set.set(Some(Ok(Judged { drill, session, debrief })));
            };
            match ended {
                Some(session) => drop(Timeout::new(0, move || judged(session)).forget()),
                None => {
                    let judged = Callback::from(move |session: Session| judged(session.into()));
                    *folding.borrow_mut() = Some(away::fold(&drill, attempt.actions.clone(), judged));
                }
            }
        });
        turn.forget();
    })
}

/// Puts what was computed into words.
fn sheet_of(speech: Speech, judged: &Judged, attempt: Rc<Attempt>) -> Sheet {
    crate::text::about(&judged.drill.job.home.plant);
    let voice = &*voice(speech.units);
    let (made, computed) = (&judged.drill, &judged.debrief);
    let session = judged.session.clone();
    Sheet {
        fault: made.fault.id,
        second: made.second.clone(),
        starts_at: made.job.starts_at,
        steps: sheet::steps(voice, &session.log, &computed.moments),
        stretches: stretches(&computed.moments),
        accounts: accounts(voice, &computed.score),
        sayings: sayings(voice, computed),
        verdict: verdict(voice, computed, &session, &attempt),
        picture: computed.picture.clone(),
        session,
        attempt,
        speech,
    }
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
    let street = format!("{} {}", title.house, title.street_name());
    let call = voice.filled(
        "debrief-call-at",
        &[
            ("call", title.call.into()),
            ("street", street.clone().into()),
            ("town", voice.climate(title.town).into()),
        ],
    );
    let headline = voice.filled(
        "debrief-headline",
        &[
            ("call", title.call.into()),
            ("street", street.into()),
            ("fault", fault.into()),
            ("ending", words::letters::small(&ending).into()),
        ],
    );
    let mut remedy = right_end_words(voice, computed.right_end, computed.fault.id);
    if let Some(second) = &computed.second {
        remedy.push(' ');
        remedy += &voice.fault_remedy(second.id);
    }
    Verdict {
        call,
        headline,
        remedy,
        finding: written(voice, &attempt.actions),
        customer: customer_words(voice, session, computed),
        traces: traces(voice, &session.job.home.installation),
        fault: at_stage(voice, &computed.fault),
        second: computed.second.as_ref().map(|case| at_stage(voice, case)),
        ending,
    }
}

/// What an eye could have taken for a sign, and was none.
fn traces(voice: &Voice, of: &Installation) -> Vec<String> {
    let all = [
        (of.streak, "trace-streak"),
        (of.soot.is_some(), "trace-soot"),
        (of.lime, "trace-lime"),
        (of.condensate, "trace-condensate"),
    ];
    all.into_iter().filter(|(there, _)| *there).map(|(_, name)| voice.text(name)).collect()
}

/// A fault, and how far it had gone where it knows stages.
fn at_stage(voice: &Voice, case: &FaultCase) -> String {
    let fault = voice.fault(case.id);
    match case.id.fault().stage(&case.parameters) {
        Some(stage) => {
            let stage = words::letters::small(&voice.stage(stage));
            voice.filled("debrief-fault-at", &[("fault", fault.into()), ("stage", stage.into())])
        }
        None => fault,
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
        None => voice.text("debrief-no-finding"),
    }
}
