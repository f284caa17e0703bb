//! The score: computed from the replayed log, line by line, each naming the act that caused it.
//!
//! A step that belongs to a textbook procedure is never charged: nothing here counts readings, looks or waits.

mod finding;
mod finish;
pub(crate) mod hurt;
mod repair;
mod reports;
mod safety;
mod steps;
mod verdict;

use std::collections::BTreeSet;

use bench::{Hearsay, Helper, Job, Observation, Session};
use plant::fault::{FaultCase, FaultId, PartKind};
use plant::{End, Level};
use quantity::{Digest, Temperature};
use serde::{Deserialize, Serialize};

use crate::rubric::{Account, Rubric, RuleId};

/// What is judged.
#[derive(Clone, Copy)]
pub struct Case<'a> {
    /// The job as handed to the bench.
    pub job: &'a Job,
    /// What is truly wrong, and whom the evidence has to tell from each: one fault, or two.
    pub truths: &'a [Truth<'a>],
    /// The job folded to its end.
    pub session: &'a Session,
    /// The house afterwards has no complaint: found by simulating it on.
    pub cured: bool,
}

/// One thing that is truly wrong.
#[derive(Clone, Copy)]
pub struct Truth<'a> {
    /// What, with its numbers.
    pub case: &'a FaultCase,
    /// Everything else it could have been, in houses that have the other fault.
    pub circle: &'a diagnosis::Circle,
}

impl Case<'_> {
    /// The faults that are there.
    fn faults(&self) -> impl Iterator<Item = FaultId> + '_ {
        self.truths.iter().map(|truth| truth.case.id)
    }
}

/// Something that makes a line's sentence.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Detail {
    /// Nothing more to say.
    Plain,
    /// A part, and what it cost.
    Part {
        /// Which.
        part: PartKind,
        /// Dollars.
        cost: f64,
    },
    /// Faults that the evidence leaves alive.
    Alive {
        /// Which.
        faults: Vec<FaultId>,
    },
    /// What was written instead.
    Wrote {
        /// Which; `None` for nothing wrong.
        fault: Option<FaultId>,
    },
    /// What was not found.
    Missed {
        /// Which.
        fault: FaultId,
    },
    /// A temperature.
    Hot {
        /// How hot.
        temperature: Temperature,
    },
    /// A wire end.
    At {
        /// Which.
        end: End,
    },
    /// A place touched.
    Point {
        /// Which.
        point: plant::Point,
    },
    /// What proving dead lacked.
    Unproved {
        /// Where the hand went; nowhere for a reading.
        point: Option<plant::Point>,
        /// What was missing.
        missing: bench::Unproved,
    },
    /// An element.
    Element {
        /// Which.
        level: Level,
    },
    /// Something to report.
    Observed {
        /// What.
        what: Observation,
    },
    /// What the people had heard.
    Heard {
        /// What.
        what: Hearsay,
    },
    /// Somebody to call.
    Call {
        /// Whom.
        whom: Helper,
    },
}

/// One line of an account.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct ScoreLine {
    /// The rule.
    pub rule: RuleId,
    /// The account.
    pub account: Account,
    /// The step that caused it, 1 the first; `None` for something left undone.
    pub step: Option<u32>,
    /// Points taken, 0 or more.
    pub points: f64,
    /// It fails the job.
    pub gate: bool,
    /// More for its sentence.
    pub detail: Detail,
}

/// A judged attempt.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Score {
    /// Points reached in each account, in the order of `Account::ALL`.
    pub reached: [f64; 4],
    /// Points each account starts with.
    pub of: [f64; 4],
    /// The lines, by step; those without a step last.
    pub lines: Vec<ScoreLine>,
    /// A gate was met: the job is failed whatever the points.
    pub failed: bool,
    /// What was truly wrong.
    pub truth: FaultId,
    /// The second thing wrong, where there were two.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub second: Option<FaultId>,
    /// What was written, when something was.
    #[serde(with = "verdict")]
    pub verdict: Option<Option<FaultId>>,
    /// The verdict names the right repair; of two, both findings do.
    pub right: bool,
    /// Faults that the named evidence leaves alive, the true one among them.
    pub alive: BTreeSet<FaultId>,
    /// The house afterwards has no complaint.
    pub cured: bool,
    /// Digest of the rubric.
    pub rubric: Digest,
}

impl Score {
    /// All points.
    pub fn total(&self) -> f64 {
        self.reached.iter().sum()
    }

    /// Lines of one account.
    pub fn account(&self, account: Account) -> impl Iterator<Item = &ScoreLine> {
        self.lines.iter().filter(move |l| l.account == account)
    }
}

/// Collects lines under a rubric's prices and caps.
pub(crate) struct Ledger<'a> {
    rubric: &'a Rubric,
    lines: Vec<ScoreLine>,
}

impl Ledger<'_> {
    /// Takes what a rule costs, up to its cap. A line that costs nothing more is still told.
    fn charge(&mut self, rule: RuleId, step: Option<u32>, detail: Detail) {
        let Some(price) = self.rubric.rule(rule) else { return };
        let so_far: f64 = self.lines.iter().filter(|l| l.rule == rule).map(|l| l.points).sum();
        let points = price.points.min((price.most - so_far).max(0.0));
        self.lines.push(ScoreLine { rule, account: price.account, step, points, gate: price.gate, detail });
    }

    /// The same, once a job at most.
    fn charge_once(&mut self, rule: RuleId, step: Option<u32>, detail: Detail) {
        if !self.lines.iter().any(|l| l.rule == rule) {
            self.charge(rule, step, detail);
        }
    }
}

/// Judges a folded attempt.
pub fn score(case: &Case<'_>, rubric: &Rubric) -> Score {
    let mut ledger = Ledger { rubric, lines: Vec::new() };
    safety::judge(case, &mut ledger);
    let found = finding::judge(case, &mut ledger);
    repair::judge(case, &found, &mut ledger);
    finish::judge(case, &mut ledger);
    reports::judge(case, &mut ledger);
    hurt::judge(case, &mut ledger);
    let mut faults = case.faults();
    let truth = faults.next().unwrap_or(FaultId::F01);
    let mut lines = ledger.lines;
    quantity::sort::sort_by_key(&mut lines, |l| (l.step.unwrap_or(u32::MAX), l.account, l.rule));
    let failed = lines.iter().any(|l| l.gate);
    let reached = Account::ALL.map(|account| {
        let lost: f64 = lines.iter().filter(|l| l.account == account).map(|l| l.points).sum();
        let left = (rubric.start(account) - lost).max(0.0);
        if failed && account == Account::Safety { 0.0 } else { left }
    });
    Score {
        reached,
        of: Account::ALL.map(|a| rubric.start(a)),
        lines,
        failed,
        truth,
        second: faults.next(),
        verdict: found.verdict,
        right: found.right,
        alive: found.alive,
        cured: case.cured,
        rubric: rubric.digest(),
    }
}
