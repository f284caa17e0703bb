//! Acts folded on the page, in turns so short that it answers between them.

use std::cell::Cell;
use std::rc::Rc;
use std::vec::IntoIter;

use bench::{Action, Session, reduce};
use drill::Drill;
use gloo::timers::callback::Timeout;
use yew::Callback;

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
    turn(wanted.clone(), Session::begin(drill.job.clone()), actions.into_iter(), told);
    Folding(wanted)
}

fn turn(wanted: Rc<Cell<bool>>, mut session: Session, mut left: IntoIter<Action>, told: Callback<Session>) {
    let work = move || {
        let until = js_sys::Date::now() + TURN_MS;
        while wanted.get() && js_sys::Date::now() < until {
            let Some(action) = left.next() else { return told.emit(session) };
            session = reduce(&session, &action).0;
        }
        if wanted.get() {
            turn(wanted, session, left, told);
        }
    };
    Timeout::new(0, work).forget();
}
