//! The service call that the browser's runs work through: an attempt file, shared by mouse, keyboard and touch.

use drill::{Attempt, Drill};

/// A call with its drill.
pub struct Call {
    /// The learner, the drill and every act.
    pub attempt: Attempt,
    /// The drill, made.
    pub drill: Drill,
}

/// The whole call on a heater with an open lower element.
pub fn whole() -> Call {
    let attempt = Attempt::read(include_str!("calls/whole-call.json")).expect("the call can be read");
    let drill = drill::make(&attempt.order).expect("the drill can be made");
    Call { attempt, drill }
}

#[test]
fn the_whole_call_costs_nothing() {
    let call = whole();
    let mut session = bench::Session::begin(call.drill.job.clone());
    for (at, action) in call.attempt.actions.iter().enumerate() {
        let outcome = session.step(action);
        println!("{} {action:?}\n      {:?} {:?} {:?} {:?}", at + 1, outcome.shown, outcome.noticed, outcome.harms, outcome.facts);
    }
    let cure = drill::cure::judge(&call.drill, &session);
    println!("{cure:?}");
    let case = drill::Case { job: &call.drill.job, fault: call.drill.fault.id, session: &session, cured: cure.is_right() };
    let score = drill::score::score(&case, &drill::Rubric::plain());
    println!("{score:#?}");
}
