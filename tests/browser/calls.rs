//! The service call that the browser's runs work through: an attempt file, shared by mouse, keyboard and touch.

use bench::{Action, Cover, MeterFunction, Session};
use drill::{Attempt, Drill, Rubric, Score};

/// A call with its drill.
pub struct Call {
    /// The learner, the drill and every act.
    pub attempt: Attempt,
    /// The drill, made.
    pub drill: Drill,
}

impl Call {
    /// The attempt folded to its end.
    pub fn session(&self) -> Session {
        drill::replay(&self.drill, &self.attempt.actions)
    }

    /// What the attempt amounts to.
    pub fn score(&self) -> Score {
        drill::judge(&self.drill, &self.session(), &Rubric::plain())
    }
}

/// The whole call on a heater with an open lower element.
pub fn whole() -> Call {
    read(include_str!("calls/whole-call.json"))
}

/// The same call by somebody in a hurry: nobody told, nothing proved dead, no hose, no evidence, covers left off.
pub fn careless() -> Call {
    let mut call = whole();
    let mut ends: u32 = 0;
    let left_out = |action: &Action| match action {
        Action::Cover { which, off } => {
            !off && matches!(which, Cover::Upper | Cover::UpperShield | Cover::UpperInsulation)
        }
        Action::Meter { function, .. } => *function == MeterFunction::LowVolts,
        Action::TellHousehold | Action::Hose { .. } | Action::ReliefLever { .. } => true,
        Action::Label { .. } | Action::ProveMeter { .. } => true,
        _ => false,
    };
    call.attempt.actions.retain(|action| !left_out(action));
    for action in &mut call.attempt.actions {
        match action {
            Action::Finding { evidence, .. } => evidence.clear(),
            Action::Land { torqued, .. } => {
                ends += 1;
                *torqued = ends > 1;
            }
            _ => {}
        }
    }
    call
}

/// A call from the text of its attempt file.
pub fn read(text: &str) -> Call {
    let attempt = Attempt::read(text).expect("the call can be read");
    let drill = drill::make(&attempt.order).expect("the drill can be made");
    Call { attempt, drill }
}

#[test]
fn the_careless_call_loses_points_in_every_account() {
    let score = careless().score();
    assert!(score.reached.iter().zip(score.of).all(|(got, of)| *got < of), "{score:#?}");
}

#[test]
fn the_whole_call_loses_no_point() {
    let score = whole().score();
    assert!(score.cured && score.lines.is_empty() && score.total() == 100.0, "{score:#?}");
}
