//! Sloppy statements of the trade: each has a drill in which believing it costs something, and the debrief knows
//! which was believed.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a test")]

use std::collections::BTreeMap;
use std::ops::RangeInclusive;

use bench::{Action, Session};
use drill::belief;
use drill::procedure::{self, Doing, Part, Procedure, Step};
use drill::{Order, Rubric};
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

fn steps(parts: &[Part], all: &[Procedure]) -> Vec<Step> {
    let mut steps = Vec::new();
    for part in parts {
        match part {
            Part::Own(step) => steps.push(step.clone()),
            Part::Procedure { procedure, without } => {
                let called = all.iter().find(|p| p.procedure == *procedure).unwrap();
                steps.extend(called.steps.iter().filter(|s| !without.contains(&s.step)).cloned());
            }
        }
    }
    steps
}

fn folded(order: &Order, steps: &[Step]) -> (drill::Drill, Session) {
    let drill = drill::make(order).unwrap();
    let mut session = Session::begin(drill.job.clone());
    let mut done: BTreeMap<&str, RangeInclusive<u32>> = BTreeMap::new();
    for step in steps {
        let before = session.log.len() as u32 + 1;
        for doing in &step.acts {
            let act = match doing {
                Doing::Act(action) => action.clone(),
                Doing::Finds { finds, by } => {
                    let evidence =
                        by.iter().filter_map(|s| done.get(s.as_str()).cloned()).flatten().collect();
                    Action::Finding { fault: Some(*finds), evidence }
                }
            };
            session.step(&act);
        }
        done.insert(&step.step, before..=session.log.len() as u32);
    }
    (drill, session)
}

#[test]
fn believing_costs_and_the_debrief_knows() {
    let all = procedure::all().unwrap();
    let jobs: Vec<Job> = serde_json::from_str(JOBS).unwrap();
    let mut wrong = Vec::new();
    for job in &jobs {
        let (drill, session) = folded(&job.drill, &steps(&job.job, &all));
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
