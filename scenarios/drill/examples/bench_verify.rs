//! Times what an instructor waits for: a thousand attempts on thirty drills read, folded and judged, household
//! weeks included.
//!
//! usage: bench_verify [ATTEMPTS [DRILLS]]; prints one line of JSON.

#![allow(clippy::disallowed_methods)] // A benchmark reads the clock.

use std::collections::BTreeMap;
use std::time::Instant;

use bench::{Action, Mode};
use drill::{Attempt, Order, Rubric};
use quantity::Draw;

const MAKE_DEAD_AND_MEASURE: &str = include_str!("bench_verify.json");

fn main() {
    let mut args = std::env::args().skip(1).filter_map(|a| a.parse().ok());
    let attempts: u32 = args.next().unwrap_or(1000);
    let drills: u32 = args.next().unwrap_or(30);
    let acts: Vec<Action> = serde_json::from_str(MAKE_DEAD_AND_MEASURE).unwrap_or_default();
    let texts: Vec<String> = (0..attempts)
        .map(|i| {
            let mut attempt = Attempt::new(&format!("Learner {i}"), Order::chance(i % drills, Mode::Solo));
            attempt.actions = varied(&acts, i);
            attempt.write()
        })
        .collect();
    let rubric = Rubric::plain();
    let started = Instant::now();
    let mut made = BTreeMap::new();
    let (mut weeks, mut points, mut folded) = (0.0, 0.0, 0usize);
    for text in &texts {
        let Ok(attempt) = Attempt::read(text) else { continue };
        let before = Instant::now();
        let seed = attempt.order.seed;
        let drill = made.entry(seed).or_insert_with(|| drill::make(&attempt.order).ok());
        weeks += before.elapsed().as_secs_f64();
        let Some(drill) = drill else { continue };
        let session = drill::replay(drill, &attempt.actions);
        points += drill::judge(drill, &session, &rubric).total();
        folded += session.log.len();
    }
    println!(
        "{{\"attempts\": {attempts}, \"drills\": {drills}, \"acts\": {folded}, \"seconds\": {:.3}, \"of which drills\": {weeks:.3}, \"mean points\": {:.1}}}",
        started.elapsed().as_secs_f64(),
        points / f64::from(attempts.max(1)),
    );
}

/// Every learner does it a little differently: some acts left out, a wait of another length.
fn varied(acts: &[Action], learner: u32) -> Vec<Action> {
    let mut draw = Draw::new(u64::from(learner), "learners");
    let mut all: Vec<Action> = acts.iter().filter(|_| !draw.chance(0.05)).cloned().collect();
    all.insert(0, Action::Wait { minutes: 1.0 + draw.index(10) as f64 });
    all
}
