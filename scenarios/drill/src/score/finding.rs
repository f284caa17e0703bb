//! Finding: evidence before the verdict, and the right verdict.

use std::collections::BTreeSet;

use bench::{Fact, Finding};
use plant::fault::FaultId;

use super::{Case, Detail, Ledger, Truth, hurt, steps};
use crate::rubric::RuleId;

/// What the written finding amounts to.
pub(super) struct Found {
    pub verdict: Option<Option<FaultId>>,
    pub right: bool,
    pub alive: BTreeSet<FaultId>,
}

pub(super) fn judge(case: &Case<'_>, ledger: &mut Ledger<'_>) -> Found {
    let early = steps::first(case.session, |e| steps::has(e, |f| matches!(f, Fact::RepairedWithoutFinding)));
    let findings = &case.session.me.findings;
    // Somebody hurt comes first: what was not found by then costs nothing.
    let stopped = hurt::ambulance_called(case.session);
    let Some(last) = findings.last() else {
        if !stopped {
            ledger.charge(RuleId::NoFinding, None, Detail::Plain);
        }
        return Found { verdict: None, right: false, alive: BTreeSet::new() };
    };
    if early.is_some() {
        ledger.charge(RuleId::FindingAfterRepair, early, Detail::Plain);
    }
    let names = |finding: &Finding, truth: FaultId| finding.fault.is_some_and(|f| f.same_repair(truth));
    // One thing wrong: what was written last is the finding. Two: each has the last that names it.
    let of = |truth: FaultId| match case.truths {
        [_] => Some(last).filter(|finding| names(finding, truth)),
        _ => findings.iter().rev().find(|finding| names(finding, truth)),
    };
    if !case.faults().any(|truth| names(last, truth)) {
        ledger.charge(RuleId::WrongFinding, Some(last.step), Detail::Wrote { fault: last.fault });
        if last.evidence.is_empty() {
            ledger.charge(RuleId::NoEvidence, Some(last.step), Detail::Plain);
        }
    }
    let mut alive = BTreeSet::new();
    for truth in case.truths {
        match of(truth.case.id) {
            Some(finding) => alive.extend(weigh(case, truth, finding, ledger)),
            None if case.truths.len() > 1 && !stopped => {
                ledger.charge(RuleId::SecondNotFound, None, Detail::Missed { fault: truth.case.id });
            }
            None => {}
        }
    }
    Found { verdict: Some(last.fault), right: case.faults().all(|truth| of(truth).is_some()), alive }
}

/// What the evidence of a right finding is worth.
fn weigh(
    case: &Case<'_>,
    truth: &Truth<'_>,
    finding: &Finding,
    ledger: &mut Ledger<'_>,
) -> BTreeSet<FaultId> {
    let (step, fault) = (Some(finding.step), truth.case.id);
    if finding.fault != Some(fault) {
        ledger.charge(RuleId::WrongCause, step, Detail::Wrote { fault: finding.fault });
    }
    if finding.evidence.is_empty() {
        ledger.charge(RuleId::NoEvidence, step, Detail::Plain);
        return BTreeSet::new();
    }
    // Only what was seen before the finding can have led to it.
    let held: Vec<u32> = finding.evidence.iter().copied().filter(|s| *s < finding.step).collect();
    let alive = truth.circle.alive(truth.case, &case.session.log, &held);
    // What nobody would have called for is no rival explanation of the call.
    let rival = |f: &FaultId| !f.same_repair(fault) && !f.is_silent();
    for other in alive.iter().copied().filter(rival) {
        ledger.charge(RuleId::EvidenceLeavesOthers, step, Detail::Alive { faults: vec![other] });
    }
    alive
}
