//! A wait that is under way: it passes a few pieces a turn, so that it can be watched and stopped.

use std::cell::RefCell;
use std::fmt;
use std::ops::ControlFlow::{self, Break, Continue};
use std::rc::Rc;

use bench::{Action, Session, Waiting, reduce};

/// Pieces that pass at once: an hour by the clock.
const AT_ONCE: usize = 6;

/// A wait under way; empty once somebody has ended it.
#[derive(Clone)]
pub struct Ongoing(Rc<RefCell<Option<Waiting>>>);

impl Ongoing {
    /// Begins an act: a long wait goes on, anything else is over at once.
    pub fn begin(session: &Session, action: &Action) -> ControlFlow<Session, Self> {
        let Some(mut waiting) = Waiting::begin(session, action) else {
            return Break(reduce(session, action).0);
        };
        let more = (0..AT_ONCE).all(|_| waiting.go_on());
        if more { Continue(Self(Rc::new(RefCell::new(Some(waiting))))) } else { Break(waiting.end().0) }
    }

    /// Waits on while there is time for it. What came of it once it is over.
    pub fn go_on(&self, mut while_time: impl FnMut() -> bool) -> Option<Session> {
        let mut held = self.0.borrow_mut();
        while held.as_mut()?.go_on() {
            if !while_time() {
                return None;
            }
        }
        held.take().map(|waiting| waiting.end().0)
    }

    /// Stops it where it is.
    pub fn stop(&self) {
        self.0.replace_with(|waiting| waiting.take().and_then(Waiting::stopped));
    }

    /// What the clock of the job shows by now, and how much of the wait is over.
    pub fn seen(&self) -> Option<(f64, f64)> {
        self.0.borrow().as_ref().map(|waiting| (waiting.clock().get(), waiting.share()))
    }
}

impl PartialEq for Ongoing {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

impl fmt::Debug for Ongoing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("Ongoing").field(&self.seen()).finish()
    }
}
