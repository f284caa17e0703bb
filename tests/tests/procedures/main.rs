//! The trade's procedures, folded: beside each step stands what follows where it is left out, or done after the
//! next one; the fold has to find just that.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a test")]

mod document;
mod follow;

use std::collections::BTreeSet;

use drill::procedure::{self, Follows, Procedure, Step};
use tankwright_tests::cores;

use follow::{Fold, follows};

/// One way to go wrong, and what is written beside it.
struct Slip {
    name: String,
    steps: Vec<Step>,
    written: BTreeSet<Follows>,
}

/// Every step left out, done after the next, and done otherwise.
fn slips(procedure: &Procedure, all: &[Procedure]) -> Vec<Slip> {
    let (job, own) = procedure.job(all).unwrap();
    let mut slips = Vec::new();
    for at in own.clone() {
        let step = &job[at];
        let name = format!("{}: {}", procedure.procedure, step.step);
        let mut without = job.clone();
        without.remove(at);
        slips.push(Slip { name: format!("{name} left out"), steps: without, written: set(&step.left_out) });
        if at + 1 < own.end {
            let mut late = job.clone();
            late.swap(at, at + 1);
            slips.push(Slip {
                name: format!("{name} after the next"),
                steps: late,
                written: set(&step.after_next),
            });
        }
        for amiss in &step.amiss {
            let mut other = job.clone();
            other[at].acts = amiss.acts.clone();
            let name = format!("{name} {}", amiss.how);
            slips.push(Slip { name, steps: other, written: set(&amiss.follows) });
        }
    }
    slips
}

fn set(follows: &[Follows]) -> BTreeSet<Follows> {
    follows.iter().cloned().collect()
}

fn listed(follows: &BTreeSet<Follows>) -> String {
    serde_json::to_string(follows).unwrap()
}

/// The job in its right order is done in full and costs nothing; each slip has just what is written beside it.
#[test]
fn what_is_written_follows() {
    let all = procedure::all().unwrap();
    let mut wrong = cores::on_two(&all, |procedure| check(procedure, &all)).concat();
    wrong.sort();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

fn check(procedure: &Procedure, all: &[Procedure]) -> Vec<String> {
    let drill = drill::make(&procedure.drill).unwrap();
    let right = Fold::of(&drill, &procedure.job(all).unwrap().0);
    let mut wrong = right.flaws(&procedure.already);
    wrong.iter_mut().for_each(|flaw| *flaw = format!("{}, right order: {flaw}", procedure.procedure));
    if !wrong.is_empty() {
        return wrong;
    }
    for slip in slips(procedure, all) {
        let found = follows(&right, &Fold::of(&drill, &slip.steps));
        if found != slip.written {
            wrong.push(format!("{}: {}, written {}", slip.name, listed(&found), listed(&slip.written)));
        }
    }
    wrong
}

/// No step is without its reason, no name is used twice in one job.
#[test]
fn each_step_has_its_reason_and_name() {
    let all = procedure::all().unwrap();
    for procedure in all.iter() {
        let mut names = BTreeSet::new();
        for step in procedure.job(&all).unwrap().0 {
            assert!(names.insert(step.step.clone()), "{}: {} twice", procedure.procedure, step.step);
        }
        assert!(procedure.steps.iter().all(|step| !step.why.is_empty()), "{}", procedure.procedure);
    }
}
