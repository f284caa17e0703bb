//! Acts folded on the page, in turns so short that it answers between them.

use std::ops::ControlFlow::{Break, Continue};
use std::vec::IntoIter;

use bench::{Action, Session};
use drill::Drill;
use yew::Callback;

use crate::store::Ongoing;
use crate::turns::Turns;

/// Folds what was done in a drill; the end of it comes later. Dropped, it ends at the next turn.
pub fn fold(drill: &Drill, actions: Vec<Action>, told: Callback<Session>) -> Turns {
    let mut fold =
        Fold { session: Session::begin(drill.job.clone()), left: actions.into_iter(), ongoing: None };
    Turns::after(0, move |turn| {
        let more = fold.go_on(|| turn.has_time());
        if !more {
            told.emit(fold.session.clone());
        }
        more
    })
}

struct Fold {
    session: Session,
    left: IntoIter<Action>,
    ongoing: Option<Ongoing>,
}

impl Fold {
    /// An act more, or as much of a wait as there is time for. Whether there was any.
    fn go_on(&mut self, while_time: impl FnMut() -> bool) -> bool {
        if let Some(ongoing) = &self.ongoing {
            if let Some(session) = ongoing.go_on(while_time) {
                (self.session, self.ongoing) = (session, None);
            }
            return true;
        }
        let Some(action) = self.left.next() else { return false };
        match Ongoing::begin(&self.session, &action) {
            Continue(ongoing) => self.ongoing = Some(ongoing),
            Break(session) => self.session = session,
        }
        true
    }
}
