//! Sloppy statements of the trade: each has a drill in which believing it costs something, and the debrief knows
//! which was believed.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a test")]

use bench::Session;
use drill::belief;
use drill::procedure::{self, Part, Step};
use drill::{Drill, Order, Rubric};
use serde::Deserialize;
use words::{Units, Voice};

const JOBS: &str = include_str!("jobs.json");

/// A job worked by somebody who believes it.
#[derive(Deserialize)]
struct Job {
    belief: String,
    drill: Order,
    job: Vec<Part>,
}

fn folded(order: &Order, steps: &[Step]) -> (Drill, Session) {
    let drill = drill::make(order).unwrap();
    let session = drill::replay(&drill, &procedure::acts(steps).concat());
    (drill, session)
}

#[test]
fn believing_costs_and_the_debrief_knows() {
    let all = procedure::all().unwrap();
    let jobs: Vec<Job> = serde_json::from_str(JOBS).unwrap();
    let mut wrong = Vec::new();
    for job in &jobs {
        let (drill, session) = folded(&job.drill, &procedure::flat(&job.job, &all).unwrap());
        let score = drill::judge(&drill, &session, &Rubric::plain());
        let held = belief::held(&drill, &session, &score);
        if !held.iter().any(|h| h.belief == job.belief) {
            let rules: Vec<_> =
                score.lines.iter().map(|l| (l.rule, serde_json::to_string(&l.detail).unwrap())).collect();
            wrong.push(format!("{}: held {held:?}, {rules:?}", job.belief));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    let listed: Vec<String> = belief::all().into_iter().map(|b| b.belief).collect();
    assert_eq!(jobs.into_iter().map(|j| j.belief).collect::<Vec<_>>(), listed);
}

/// Somebody who knows is told nothing: none of the proper jobs of the procedures shows one.
#[test]
fn a_proper_job_shows_none() {
    let all = procedure::all().unwrap();
    for procedure in &all {
        let (steps, _) = procedure.job(&all).unwrap();
        let (drill, session) = folded(&procedure.drill, &steps);
        let score = drill::judge(&drill, &session, &Rubric::plain());
        assert_eq!(belief::held(&drill, &session, &score), [], "{}", procedure.procedure);
    }
}

#[test]
fn each_is_told_in_words() {
    let voice = Voice::english(Units::Customary);
    for belief in belief::all() {
        assert!(!voice.belief(&belief.belief).is_empty() && !voice.belief_truth(&belief.belief).is_empty());
    }
    assert_eq!(voice.missing(), Vec::<String>::new());
}
