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
const OTHERS: &str = include_str!("others.json");

/// A job worked by somebody who believes it.
#[derive(Deserialize)]
struct Job {
    belief: String,
    drill: Order,
    job: Vec<Part>,
}

/// A job that costs the same line for another reason.
#[derive(Deserialize)]
struct Other {
    belief: String,
    why: String,
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

/// The same line for another reason: nobody is accused of what was not believed.
#[test]
fn another_slip_is_not_taken_for_a_belief() {
    let all = procedure::all().unwrap();
    let beliefs = belief::all();
    let others: Vec<Other> = serde_json::from_str(OTHERS).unwrap();
    for Other { belief, why, drill: order, job } in &others {
        let (drill, session) = folded(order, &procedure::flat(job, &all).unwrap());
        let score = drill::judge(&drill, &session, &Rubric::plain());
        let rule = &beliefs.iter().find(|b| b.belief == *belief).unwrap().costs["rule"];
        let costs = score.lines.iter().any(|line| serde_json::to_value(line.rule).unwrap() == *rule);
        assert!(costs, "{belief}: {why}: {:#?}", score.lines);
        let held = belief::held(&drill, &session, &score);
        assert!(!held.iter().any(|h| h.belief == *belief), "{belief}: {why}: {held:?}");
    }
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
