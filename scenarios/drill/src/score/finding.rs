//! Finding: evidence before the verdict, and the right verdict.

use std::collections::BTreeSet;

use bench::Fact;
use plant::fault::FaultId;

use super::{Case, Detail, Ledger, steps};
use crate::rubric::RuleId;

/// What the written finding amounts to.
pub(super) struct Found {
    pub verdict: Option<Option<FaultId>>,
    pub right: bool,
    pub alive: BTreeSet<FaultId>,
}

pub(super) fn judge(case: &Case<'_>, ledger: &mut Ledger<'_>) -> Found {
    let early = steps::first(case.session, |e| steps::has(e, |f| matches!(f, Fact::RepairedWithoutFinding)));
    let Some(finding) = case.session.me.findings.last() else {
        ledger.charge(RuleId::NoFinding, None, Detail::Plain);
        return Found { verdict: None, right: false, alive: BTreeSet::new() };
    };
    if early.is_some() {
        ledger.charge(RuleId::FindingAfterRepair, early, Detail::Plain);
    }
    let step = Some(finding.step);
    let right = finding.fault.is_some_and(|f| f.same_repair(case.fault));
    let mut alive = BTreeSet::new();
    if !right {
        ledger.charge(RuleId::WrongFinding, step, Detail::Wrote { fault: finding.fault });
    } else if finding.fault != Some(case.fault) {
        ledger.charge(RuleId::WrongCause, step, Detail::Wrote { fault: finding.fault });
    }
    if finding.evidence.is_empty() {
        ledger.charge(RuleId::NoEvidence, step, Detail::Plain);
    } else if right {
        // Only what was seen before the finding can have led to it.
        let held: Vec<u32> = finding.evidence.iter().copied().filter(|s| *s < finding.step).collect();
        alive = case.circle.alive(case.fault, &case.session.log, &held);
        // What nobody would have called for is no rival explanation of the call.
        let rival = |f: &FaultId| !f.same_repair(case.fault) && !f.is_silent();
        let others: Vec<FaultId> = alive.iter().copied().filter(rival).collect();
        for fault in &others {
            ledger.charge(RuleId::EvidenceLeavesOthers, step, Detail::Alive { faults: vec![*fault] });
        }
    }
    Found { verdict: Some(finding.fault), right, alive }
}
