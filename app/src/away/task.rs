//! What can be asked for, and what comes back.

use drill::attempt::Seal;
use drill::{Attempt, Findings, Grader, Lived, Rubric};
use serde::{Deserialize, Serialize};

use crate::compose::read_drill;

/// Something to compute.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub enum Task {
    /// The days before a drill, from its code or the text of its file.
    Live(String),
    /// The debrief of an attempt file.
    Debrief(String),
    /// The row in a class of an attempt: its file's name, its text, and what its digests said.
    Grade(String, String, Seal),
}

/// What came of it: only what takes long; the rest follows from it on the page.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub enum Answer {
    /// The household's days.
    Lived(Box<Lived>),
    /// The household's days, and what folding and judging found.
    Debriefed(Box<(Lived, Findings)>),
    /// The row.
    Graded(Box<drill::Row>),
    /// It cannot be made.
    Failed(String),
}

impl Task {
    /// Why it cannot be computed, where that is seen at once: told on the page, whose language the worker does not
    /// speak.
    pub fn refused(&self) -> Option<String> {
        let order = match self {
            Self::Live(drill) => read_drill(drill),
            Self::Debrief(attempt) | Self::Grade(_, attempt, _) => read(attempt).map(|attempt| attempt.order),
        };
        let settled =
            order.and_then(|order| drill::settle(&order).map_err(|error| crate::text::order_error(&error)));
        settled.err()
    }

    /// Computes it. Drills that several attempts worked are made once.
    pub fn perform(&self, grader: &mut Grader) -> Answer {
        self.result(grader).unwrap_or_else(Answer::Failed)
    }

    fn result(&self, grader: &mut Grader) -> Result<Answer, String> {
        Ok(match self {
            Self::Live(drill) => {
                let lived = Lived::through(&read_drill(drill)?).map_err(|error| error.to_string())?;
                Answer::Lived(Box::new(lived))
            }
            Self::Debrief(attempt) => {
                let (drill, found) =
                    grader.findings(&read(attempt)?, &Rubric::plain()).map_err(|error| error.to_string())?;
                let lived = Lived { home: drill.job.home.clone(), week: drill.week.clone() };
                Answer::Debriefed(Box::new((lived, found)))
            }
            Self::Grade(file, attempt, seal) => {
                let attempt = Attempt { seal: *seal, ..read(attempt)? };
                let row = grader.row(file, &attempt, &Rubric::plain()).map_err(|error| error.to_string())?;
                Answer::Graded(Box::new(row))
            }
        })
    }
}

fn read(attempt: &str) -> Result<Attempt, String> {
    Attempt::read(attempt).map_err(|error| error.to_string())
}

#[cfg(test)]
mod tests {
    use bench::{Action, Mode};
    use drill::{Drill, Order};
    use plant::{FaultId, HeaterModel};

    use super::*;
    use crate::away::pack::pack;
    use crate::away::unpack::unpack;

    fn through_bytes(task: &Task) -> (Answer, Answer) {
        assert_eq!(unpack::<Task>(&pack(task).unwrap()).as_ref(), Ok(task));
        let answer = task.perform(&mut Grader::new());
        let back = unpack(&pack(&answer).unwrap()).unwrap_or_else(|error| panic!("{task:?}: {error}"));
        (answer, back)
    }

    #[test]
    fn a_drill_of_any_heater_comes_back_exactly() {
        for (at, &model) in HeaterModel::ALL.iter().enumerate() {
            for seed in [at as u32, 1000 + at as u32] {
                let order = Order { heater: Some(model), ..Order::chance(seed, Mode::Solo) };
                let (made, back) = through_bytes(&Task::Live(order.write()));
                assert!(made == back, "{model} {seed}");
                let Answer::Lived(lived) = back else { panic!("{back:?}") };
                assert!(Drill::after(&order, *lived) == drill::make(&order), "{model} {seed}");
            }
        }
    }

    #[test]
    fn a_debrief_and_a_row_come_back_exactly() {
        let order = Order { fault: drill::Wanted::One(FaultId::F01), ..Order::chance(9, Mode::Solo) };
        let mut attempt = Attempt::new("Bench 4", order);
        let finding = |fault| Action::Finding { fault, evidence: vec![1] };
        attempt.actions.push(Action::Breaker { slot: 2, on: false });
        attempt.actions.push(Action::Wait { minutes: 5.0 });
        for fault in [Some(FaultId::F02), None] {
            attempt.actions.push(finding(fault));
            for task in [
                Task::Debrief(attempt.write()),
                Task::Grade("a.json".into(), attempt.write(), Seal::Unsealed),
            ] {
                let (made, back) = through_bytes(&task);
                assert!(!matches!(made, Answer::Failed(_)), "{made:?}");
                assert!(made == back, "{task:?}");
                if let Answer::Debriefed(back) = back {
                    let (lived, found) = *back;
                    let drill = Drill::after(&attempt.order, lived).unwrap();
                    let whole = drill::debrief(&drill, &attempt.actions, &Rubric::plain());
                    assert!(drill::Debrief::of(&drill, found) == whole);
                }
            }
        }
    }

    #[test]
    fn bytes_that_are_cut_or_spoilt_are_refused() {
        let order = Order::chance(3, Mode::Solo);
        let bytes = pack(&Task::Live(order.write()).perform(&mut Grader::new())).unwrap();
        for cut in [0, 1, bytes.len() / 2, bytes.len() - 1] {
            assert!(unpack::<Answer>(&bytes[..cut]).is_err());
        }
        assert!(unpack::<Answer>(&[bytes.as_slice(), &[0]].concat()).is_err());
    }

    #[test]
    fn what_cannot_be_dealt_is_refused_on_the_page() {
        let pair = r#"{"seed": 1, "fault": "F47", "heater": "plain-40"}"#;
        assert_eq!(Task::Live(Order::chance(1, Mode::Solo).write()).refused(), None);
        assert!(Task::Live("{".into()).refused().is_some());
        let refused = Task::Live(pair.into()).refused();
        assert_eq!(refused.is_some(), drill::make(&read_drill(pair).unwrap()).is_err());
    }
}
