//! What went on inside while the learner worked: the acts folded again, with long waits in short steps.

use std::rc::Rc;

use bench::{Action, Entry, Job, Session, reduce};
use quantity::{Amps, Seconds, Temperature};

/// A wait longer than this is looked into.
const LOOK: Seconds = Seconds(120.0);
/// Most looks into one wait.
const MOST_LOOKS: f64 = 48.0;

/// The inside at a moment.
#[derive(Clone, PartialEq, Debug)]
pub struct Frame {
    /// Time into the job.
    pub at: Seconds,
    /// Water temperatures in equal slices of the height, bottom first; `None` where there is air.
    pub layers: Vec<Option<Temperature>>,
    /// Current of each leg of the branch cable.
    pub legs: [Amps; 2],
}

/// A whole job.
#[derive(Clone, Debug)]
pub struct Film {
    /// Moments, in order.
    pub frames: Vec<Frame>,
    /// The world before the first act and after each one.
    pub worlds: Vec<Rc<Session>>,
}

/// Worlds never change behind their pointers.
impl PartialEq for Film {
    fn eq(&self, other: &Self) -> bool {
        self.worlds.len() == other.worlds.len()
            && self.worlds.iter().zip(&other.worlds).all(|(a, b)| Rc::ptr_eq(a, b))
    }
}

impl Film {
    /// Folds the acts.
    pub fn take(job: Job, actions: &[Action]) -> Self {
        let begin = Rc::new(Session::begin(job));
        let mut film = Self { frames: vec![frame(&begin)], worlds: vec![begin] };
        actions.iter().for_each(|action| film.step(action));
        film
    }

    fn step(&mut self, action: &Action) {
        let Some(before) = self.worlds.last().cloned() else { return };
        let (after, outcome) = reduce(&before, action);
        if matches!(action, Action::Wait { .. } | Action::WaitForCutOut) {
            self.look_into(&before, outcome.took);
        }
        self.frames.push(frame(&after));
        self.worlds.push(Rc::new(after));
    }

    /// The same wait in short steps, for the picture only.
    fn look_into(&mut self, before: &Session, took: Seconds) {
        let looks = (took.get() / LOOK.get()).ceil().min(MOST_LOOKS);
        if looks < 2.0 {
            return;
        }
        let step = Action::Wait { minutes: took.to_minutes() / looks };
        let mut world = before.clone();
        for _ in 1..looks as u32 {
            let (next, outcome) = reduce(&world, &step);
            if outcome.took.get() <= 0.0 {
                return;
            }
            world = next;
            self.frames.push(frame(&world));
        }
    }

    /// The world at the end.
    pub fn last(&self) -> Option<&Rc<Session>> {
        self.worlds.last()
    }

    /// The acts with what came of them, in order.
    pub fn entries(&self) -> &[Rc<Entry>] {
        self.last().map_or(&[], |world| world.log.as_slice())
    }

    /// How long the job took.
    pub fn length(&self) -> Seconds {
        self.last().map_or(Seconds(0.0), |world| world.clock)
    }
}

fn frame(world: &Session) -> Frame {
    let inside = world.inside();
    Frame { at: world.clock, layers: inside.layers, legs: inside.legs }
}
