//! Acts folded on the page, in turns so short that it answers between them.

use std::cell::Cell;
use std::rc::Rc;
use std::vec::IntoIter;

use bench::{Action, Session, reduce};
use drill::Drill;
use gloo::timers::callback::Timeout;
use yew::Callback;

use crate::store::Ongoing;

/// Longest turn before the page gets its own, in milliseconds; an act more may be folded after it.
const TURN_MS: f64 = 8.0;

/// Folding under way. When it is dropped it ends at the next turn.
#[derive(Debug)]
pub struct Folding(Rc<Cell<bool>>);

impl Drop for Folding {
    fn drop(&mut self) {
        self.0.set(false);
    }
}

/// Folds what was done in a drill; the end of it comes later.
pub fn fold(drill: &Drill, actions: Vec<Action>, told: Callback<Session>) -> Folding {
    let wanted = Rc::new(Cell::new(true));
    let fold = Fold { session: Session::begin(drill.job.clone()), left: actions.into_iter(), ongoing: None };
    turn(wanted.clone(), fold, told);
    Folding(wanted)
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
            Some(Ok(ongoing)) => self.ongoing = Some(ongoing),
            Some(Err(session)) => self.session = session,
            None => self.session = reduce(&self.session, &action).0,
        }
        true
    }
}

fn turn(wanted: Rc<Cell<bool>>, mut fold: Fold, told: Callback<Session>) {
    let work = move || {
        let until = js_sys::Date::now() + TURN_MS;
        let time = || js_sys::Date::now() < until;
        while wanted.get() && time() {
            if !fold.go_on(time) {
                return told.emit(fold.session);
            }
        }
        if wanted.get() {
            turn(wanted, fold, told);
        }
    };
    Timeout::new(0, work).forget();
}
