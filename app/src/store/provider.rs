//! Hands the work to every component, restores it when the page opens, keeps it after every act.

use std::rc::Rc;

use yew::prelude::*;

use super::work::Running;
use super::{Msg, Saved, Work, journal};
use crate::begin;

/// What components hold to read the work and to change it.
pub type WorkHandle = UseReducerHandle<Work>;

/// Children that may call [`use_work`].
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The page.
    pub children: Html,
}

/// Holds the work for the page.
#[component]
pub fn WorkProvider(props: &Props) -> Html {
    let work = use_reducer(restore);
    use_journal(&work);
    html! {
        <ContextProvider<WorkHandle> context={work}>{ props.children.clone() }</ContextProvider<WorkHandle>>
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

/// The work as the device has it: the journal folded again.
fn restore() -> Work {
    let blank = Work { language: crate::text::language(), ..Work::default() };
    let Some(saved) = journal::load() else { return blank };
    let Saved { head, actions, desk, broken } = saved;
    let drill = match begin::deal(&head.drill) {
        Ok(drill) => drill,
        Err(why) => return Work { unopened: Some(why), ..blank },
    };
    let session = Rc::new(::drill::replay(&drill, &actions));
    let restored = session.log.len();
    let running = Running { head, drill, session, restored };
    Rc::new(blank).reduce(Msg::Restored(running, desk, broken)).as_ref().clone()
}

/// Appends what was done since the last time, and keeps the desk.
#[hook]
fn use_journal(work: &WorkHandle) {
    let written = use_mut_ref(|| work.session().map_or(0, |session| session.log.len()));
    let attempt = use_mut_ref(|| work.running.as_ref().map(|running| running.head.clone()));
    {
        let work = work.clone();
        let running = work.running.clone();
        use_effect_with(running, move |running| {
            if let Some(running) = running {
                let keeping = write(running, &mut written.borrow_mut(), &mut attempt.borrow_mut());
                if keeping.is_some_and(|keeping| keeping != work.keeping) {
                    work.dispatch(Msg::Kept(keeping.unwrap_or_default()));
                }
            }
        });
    }
    let work = work.clone();
    use_effect_with(work.desk.clone(), move |desk| {
        if work.running.is_some() {
            journal::keep_desk(desk);
        }
    });
}

/// Writes the steps that are not yet written; `None` when there was nothing to write.
fn write(
    running: &Running,
    written: &mut usize,
    attempt: &mut Option<super::Head>,
) -> Option<super::Keeping> {
    let mut keeping = None;
    if attempt.as_ref() != Some(&running.head) {
        keeping = Some(journal::begin(&running.head));
        *attempt = Some(running.head.clone());
        *written = 0;
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
