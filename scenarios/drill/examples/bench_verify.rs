//! Times what an instructor waits for: a thousand attempts on thirty drills read, folded and judged, household
//! weeks included.
//!
//! Two of three learners write the true fault, with the bucket and every reading on their side: those are judged in
//! every suspect's house. On one core; with a folder named, the attempts are also written there, for `tankwright grade`.
//!
//! usage: bench_verify [ATTEMPTS [DRILLS [FOLDER]]]; prints one line of JSON.

#![allow(clippy::disallowed_methods)] // A benchmark reads the clock.

use std::time::Instant;

use bench::{Action, Mode};
use drill::{Attempt, Grader, Order, Rubric};
use plant::fault::FaultId;
use quantity::Draw;

const MAKE_DEAD_AND_MEASURE: &str = include_str!("bench_verify.json");

fn main() {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let number = |i: usize, or: u32| args.get(i).and_then(|a| a.parse().ok()).unwrap_or(or);
    let (attempts, drills) = (number(0, 1000), number(1, 30));
    let acts: Vec<Action> = serde_json::from_str(MAKE_DEAD_AND_MEASURE).unwrap_or_default();
    let orders: Vec<Order> = (0..drills).map(|seed| Order::chance(seed, Mode::Solo)).collect();
    let started = Instant::now();
    let truths: Vec<_> = orders.iter().map(|order| drill::make(order).ok().map(|d| d.fault.id)).collect();
    let weeks = started.elapsed().as_secs_f64();
    let texts: Vec<String> = (0..attempts)
        .map(|i| {
            let which = (i % drills) as usize;
            let mut attempt = Attempt::new(&format!("Learner {i}"), orders[which].clone());
            attempt.actions = varied(&acts, i);
            if i % 3 > 0 {
                find(&mut attempt.actions, truths[which]);
            }
            attempt.write()
        })
        .collect();
    if let Some(folder) = args.get(2) {
        for (i, text) in texts.iter().enumerate() {
            let _ = std::fs::write(format!("{folder}/{i:04}.json"), text);
        }
    }
    let rubric = Rubric::plain();
    let started = Instant::now();
    let mut grader = Grader::new();
    let (mut points, mut folded, mut right) = (0.0, 0usize, 0u32);
    for text in &texts {
        let Ok(attempt) = Attempt::read(text) else { continue };
        let Ok(graded) = grader.grade(&attempt, &rubric) else { continue };
        points += graded.score.total();
        right += u32::from(graded.score.right);
        folded += graded.session.log.len();
    }
    println!(
        "{{\"attempts\": {attempts}, \"drills\": {drills}, \"acts\": {folded}, \"right findings\": {right}, \"seconds\": {:.3}, \"of which drills\": {weeks:.3}, \"mean points\": {:.1}}}",
        started.elapsed().as_secs_f64(),
        points / f64::from(attempts.max(1)),
    );
}

/// Writes the true fault, with the bucket and every reading before it as evidence.
fn find(acts: &mut [Action], truth: Option<FaultId>) {
    let Some(at) = acts.iter().position(|a| matches!(a, Action::Finding { .. })) else { return };
    let reads = |a: &Action| matches!(a, Action::Bucket { .. } | Action::Meter { .. });
    let read: Vec<u32> = (1..).zip(&acts[..at]).filter(|(_, a)| reads(a)).map(|(step, _)| step).collect();
    if let Some(Action::Finding { fault, evidence }) = acts.get_mut(at) {
        (*fault, *evidence) = (truth, read);
    }
}

/// Every learner does it a little differently: some acts left out, a wait of another length.
fn varied(acts: &[Action], learner: u32) -> Vec<Action> {
    let mut draw = Draw::new(u64::from(learner), "learners");
    let mut all: Vec<Action> = acts.iter().filter(|_| !draw.chance(0.05)).cloned().collect();
    all.insert(0, Action::Wait { minutes: 1.0 + draw.index(10) as f64 });
    all
}
