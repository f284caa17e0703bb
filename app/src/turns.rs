//! Work on the page in turns so short that it answers between them.

use std::cell::Cell;
use std::rc::Rc;

use gloo::timers::callback::Timeout;

/// Longest turn before the page gets its own, in milliseconds; a piece more may be done after it.
const TURN_MS: f64 = 8.0;

/// One turn at the work.
#[derive(Clone, Copy, Debug)]
pub struct Turn {
    until: f64,
}

impl Turn {
    /// Whether there is time for another piece.
    pub fn has_time(self) -> bool {
        js_sys::Date::now() < self.until
    }
}

/// Work under way. When it is dropped it ends at the next turn.
#[derive(Debug)]
pub struct Turns(Rc<Cell<bool>>);

impl Drop for Turns {
    fn drop(&mut self) {
        self.0.set(false);
    }
}

impl Turns {
    /// Begins after so many milliseconds. `work` does a piece, or several while the turn has time, and says whether there
    /// is more.
    pub fn after(wait: u32, work: impl FnMut(Turn) -> bool + 'static) -> Self {
        let wanted = Rc::new(Cell::new(true));
        turn(wait, wanted.clone(), work);
        Self(wanted)
    }
}

fn turn(wait: u32, wanted: Rc<Cell<bool>>, mut work: impl FnMut(Turn) -> bool + 'static) {
    let pieces = move || {
        let now = Turn { until: js_sys::Date::now() + TURN_MS };
        while wanted.get() {
            if !work(now) {
                return;
            }
            if !now.has_time() {
                return turn(0, wanted, work);
            }
        }
    };
    Timeout::new(wait, pieces).forget();
}
