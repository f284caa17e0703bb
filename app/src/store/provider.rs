//! Hands the work to every component, restores it when the page opens, keeps it after every act.

use std::cell::RefCell;
use std::rc::Rc;

use ::drill::Drill;
use bench::Session;
use gloo::timers::callback::Timeout;
use yew::prelude::*;

use super::journal::{self, Saved, Unreadable};
use super::work::Running;
use super::{Desk, Head, Msg, Rest, Work};
use crate::away::{self, Answer, Task};
use crate::begin;
use crate::said::Speech;

/// What components hold to read the work and to change it.
pub type WorkHandle = UseReducerHandle<Work>;

/// The way to change the work, always the same one.
pub type Changes = UseReducerDispatcher<Work>;

/// What seldom changes.
#[derive(Clone, PartialEq, Debug)]
pub struct Steady {
    /// How the page speaks.
    pub speech: Speech,
    /// The way to change the work.
    pub changes: Changes,
}

/// Children that may call [`use_work`].
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The page.
    pub children: Html,
}

/// Holds the work for the page.
#[component]
pub fn WorkProvider(props: &Props) -> Html {
    let work = use_reducer(first);
    use_restored(&work);
    use_rest(&work);
    use_journal(&work);
    html! { <Held {work}>{ props.children.clone() }</Held> }
}

/// The work and those who may read it.
#[derive(Properties, PartialEq)]
pub struct HeldProps {
    /// The work.
    pub work: WorkHandle,
    /// Who reads it.
    pub children: Html,
}

/// Hands out the work, and by themselves what few changes touch: the way to change it, which is always the same, and
/// how the page speaks. Whoever needs no more than these is not drawn again at each change.
#[component]
pub fn Held(props: &HeldProps) -> Html {
    let HeldProps { work, children } = props;
    let speech = Speech { language: work.language, units: work.desk.units, rest: work.rest };
    let steady = Steady { speech, changes: work.dispatcher() };
    html! {
        <ContextProvider<Steady> context={steady}>
            <ContextProvider<WorkHandle> context={work.clone()}>{ children.clone() }</ContextProvider<WorkHandle>>
        </ContextProvider<Steady>>
    }
}

/// The work, from inside the page.
#[hook]
pub fn use_work() -> WorkHandle {
    match use_context::<WorkHandle>() {
        Some(work) => work,
        // Every component of the page stands inside the provider.
        None => unreachable!("a component stands outside the provider"),
    }
}

/// What seldom changes, from inside the page, for who need not read the work.
#[hook]
pub fn use_steady() -> Steady {
    match use_context::<Steady>() {
        Some(steady) => steady,
        // Every component of the page stands inside the provider.
        None => unreachable!("a component stands outside the provider"),
    }
}

/// The work before anything is folded: whether the device keeps a job, and in which units it is read.
fn first() -> Work {
    let (opening, desk) = journal::kept();
    Work {
        opening,
        desk: Desk { units: desk.units, ..Desk::default() },
        language: crate::text::language(),
        ..Work::default()
    }
}

/// Fetches the rest of the book once the page stands.
#[hook]
fn use_rest(work: &WorkHandle) {
    let work = work.dispatcher();
    use_effect_with((), move |()| {
        yew::platform::spawn_local(async move {
            let rest = if crate::text::fetch_rest().await { Rest::Here } else { Rest::Failed };
            if let Some(root) = gloo::utils::document().document_element() {
                // For whoever waits for it from outside; setting a plain attribute cannot fail.
                let _ = root.set_attribute("data-book", if rest == Rest::Here { "whole" } else { "part" });
            }
            work.dispatch(Msg::Rest(rest));
        });
    });
}

/// Asks for the drill that the device keeps, and folds what was done.
#[hook]
fn use_restored(work: &WorkHandle) {
    let work = work.dispatcher();
    use_effect_with((), move |()| {
        let folding = Rc::new(RefCell::new(None));
        let slot = folding.clone();
        let found = journal::load();
        if let Some(Err(Unreadable)) = &found {
            work.dispatch(Msg::Unopened(crate::text::unreadable()));
        }
        let asked = found.and_then(Result::ok).map(|Saved { head, actions, desk, broken }| {
            let task = Task::Live(head.drill.clone());
            let told = move |answer| {
                let made = match answer {
                    Answer::Lived(lived) => begin::dealt(&head.drill, *lived),
                    Answer::Failed(why) => Err(why),
                    // Only days answer this question.
                    _ => return,
                };
                match made {
                    Ok(drill) => {
                        let restored = restored(&work, (&head, &drill), &desk, broken);
                        *slot.borrow_mut() = Some(away::fold(&drill, actions.clone(), restored));
                    }
                    Err(why) => work.dispatch(Msg::Unopened(why)),
                }
            };
            away::ask(task, Callback::from(told))
        });
        move || drop((asked, folding.take()))
    });
}

/// Puts the job on the page once it is folded.
fn restored(
    work: &UseReducerDispatcher<Work>,
    (head, drill): (&Head, &Rc<Drill>),
    desk: &Desk,
    broken: Option<u32>,
) -> Callback<Session> {
    let (work, head, drill, desk) = (work.clone(), head.clone(), drill.clone(), desk.clone());
    Callback::from(move |session: Session| {
        let (restored, session) = (session.log.len(), session.into());
        let running = Running { head: head.clone(), drill: drill.clone(), session, restored, found: true };
        work.dispatch(Msg::Restored(running, desk.clone(), broken));
    })
}

/// Appends what was done since the last time, and keeps the desk: in a turn of its own, right after the page answered.
#[hook]
fn use_journal(work: &WorkHandle) {
    let written = use_mut_ref(|| work.session().map_or(0, |session| session.log.len()));
    let attempt = use_mut_ref(|| work.running.as_ref().map(|running| running.head.clone()));
    {
        let work = work.clone();
        let running = work.running.clone();
        use_effect_with(running, move |running| {
            let turn = running.clone().map(|running| {
                Timeout::new(0, move || {
                    let unopened = work.unopened.is_some();
                    let keeping =
                        write(&running, unopened, &mut written.borrow_mut(), &mut attempt.borrow_mut());
                    if keeping.is_some_and(|keeping| unopened || keeping != work.keeping) {
                        work.dispatch(Msg::Kept(keeping.unwrap_or_default()));
                    }
                })
            });
            move || drop(turn)
        });
    }
    let work = work.clone();
    use_effect_with(work.desk.clone(), move |desk| {
        let desk = work.running.is_some().then(|| desk.clone());
        let turn = desk.map(|desk| {
            Timeout::new(0, move || {
                journal::keep_desk(&desk);
            })
        });
        move || drop(turn)
    });
}

/// Writes the steps that are not yet written; `None` when there was nothing to write.
fn write(
    running: &Running,
    unopened: bool,
    written: &mut usize,
    attempt: &mut Option<Head>,
) -> Option<super::Keeping> {
    let mut keeping = None;
    if attempt.as_ref() != Some(&running.head) {
        // What was found on the device stays as it is; all else is written anew.
        *written = if running.found { running.restored } else { 0 };
        if !running.found {
            let answer = journal::begin(&running.head, unopened);
            keeping = Some(answer);
            if answer != super::Keeping::Kept {
                // Tried again after the next act.
                return keeping;
            }
        }
        *attempt = Some(running.head.clone());
    }
    for (at, entry) in running.session.log.iter().enumerate().skip(*written) {
        let answer = journal::append(&running.head, at + 1, &entry.action);
        keeping = Some(answer);
        if answer != super::Keeping::Kept {
            return keeping;
        }
        *written = at + 1;
    }
    keeping
}
