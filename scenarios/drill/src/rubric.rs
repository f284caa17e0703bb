//! The rubric: how much each rule costs. Data that an instructor can edit; its digest goes into the record.

use quantity::Digest;
use serde::{Deserialize, Serialize};

const PLAIN: &str = include_str!("../rubric.json");

/// One of the four accounts.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Account {
    /// Nobody hurt, nobody endangered.
    Safety,
    /// Evidence before the verdict, right verdict.
    Finding,
    /// Right part and rating, nothing in vain.
    Repair,
    /// Left as it should be.
    Finish,
}

impl Account {
    /// All four, in order.
    pub const ALL: [Self; 4] = [Self::Safety, Self::Finding, Self::Repair, Self::Finish];
}

/// Something that costs points.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum RuleId {
    /// A bare hand or tool went to a live part.
    TouchedLive,
    /// A current through somebody that can injure.
    Shock,
    /// Somebody was scalded.
    Burn,
    /// Steam or a burst tank.
    Blast,
    /// Power came on with a wire on a screw not its own.
    EnergisedMiswired,
    /// Worked on a live part, gloves and eye protection on.
    WorkedLive,
    /// Worked on something dead that had not been proved dead.
    WorkedUnproved,
    /// Ohms or insulation test on a live circuit.
    OhmsLive,
    /// Ohms or insulation test before the circuit was proved dead.
    OhmsUnproved,
    /// The coach had to stop an act that would have hurt.
    StoppedByCoach,
    /// A short circuit was made.
    Arc,
    /// Water was spilt where it does damage.
    Flood,
    /// Measured live without gloves and eye protection.
    NoProtection,
    /// Power or water was turned off before the household was told.
    HouseholdNotTold,
    /// Somebody could switch the breaker on: no lock held it.
    SomebodyReset,
    /// Power came on with covers off or wires lifted.
    EnergisedOpen,
    /// A wire was landed on a screw not its own.
    Miswired,
    /// A heater was carried by one alone.
    LiftedAlone,
    /// Scalding water ran with nothing to keep people clear.
    HotDischarge,
    /// Left with water that scalds.
    LeftHot,
    /// No finding was written.
    NoFinding,
    /// The finding names another repair.
    WrongFinding,
    /// Of two things wrong one was not found.
    SecondNotFound,
    /// The finding names the right repair for another cause.
    WrongCause,
    /// The finding names no evidence.
    NoEvidence,
    /// The evidence fits another repair as well.
    EvidenceLeavesOthers,
    /// Repaired first, written down afterwards.
    FindingAfterRepair,
    /// The complaint comes back.
    NotCured,
    /// Called somebody for work the licence allows.
    CalledWithoutNeed,
    /// Did work the licence does not allow.
    BeyondLicence,
    /// The words that are the remedy were not said.
    WrongWords,
    /// Cured, but not by what was found.
    CuredByLuck,
    /// A sound part was changed.
    ChangedInVain,
    /// A part that does not match the plate was fitted.
    WrongRating,
    /// Something was put in as it must not be.
    PutInAmiss,
    /// An element was burnt out in air.
    BurntElement,
    /// A joint was left without its torque.
    Untorqued,
    /// A wire was left off its screw.
    WiresOff,
    /// The job was not brought to an end.
    NotFinished,
    /// Power came on before the tank was full.
    EnergisedNotFull,
    /// Power came on before a hot tap had run solid.
    NotPurged,
    /// After refilling, the relief valve was not lifted to show solid water at the top.
    ReliefNotLifted,
    /// No current was measured after power came back.
    NotMeasured,
    /// The heater was not watched to its cut-out.
    NotRunToCutOut,
    /// After refilling, nobody looked for a leak.
    LeakNotLookedFor,
    /// The dials were left unequal or above 120 °F.
    DialsLeft,
    /// Covers were left off.
    CoversOff,
    /// Power was left off.
    PowerLeftOff,
    /// A lock was left on.
    LockLeftOn,
    /// A valve, tap, hose or lever was not put back.
    LeftOpen,
    /// Wires were lifted without labels.
    WiresUnlabelled,
    /// The customer was not told the result.
    CustomerNotTold,
    /// Stopped and called, but left live, open or leaking.
    LeftUnsafe,
    /// Somebody was hurt, and the work went on or ended with no ambulance called.
    NoAmbulance,
    /// More was spent than the customer wanted to be asked about, unasked.
    CostNotAgreed,
    /// A hazard beside the fault was before the eyes and not told.
    HazardUnreported,
    /// Something was reported that is not so.
    ReportedAmiss,
    /// The customer was answered wrongly.
    ToldAmiss,
}

impl RuleId {
    /// All of them.
    pub const ALL: &[Self] = &[
        Self::TouchedLive,
        Self::Shock,
        Self::Burn,
        Self::Blast,
        Self::EnergisedMiswired,
        Self::WorkedLive,
        Self::WorkedUnproved,
        Self::OhmsLive,
        Self::OhmsUnproved,
        Self::StoppedByCoach,
        Self::Arc,
        Self::Flood,
        Self::NoProtection,
        Self::HouseholdNotTold,
        Self::SomebodyReset,
        Self::EnergisedOpen,
        Self::Miswired,
        Self::LiftedAlone,
        Self::HotDischarge,
        Self::LeftHot,
        Self::NoFinding,
        Self::WrongFinding,
        Self::SecondNotFound,
        Self::WrongCause,
        Self::NoEvidence,
        Self::EvidenceLeavesOthers,
        Self::FindingAfterRepair,
        Self::NotCured,
        Self::CalledWithoutNeed,
        Self::BeyondLicence,
        Self::WrongWords,
        Self::CuredByLuck,
        Self::ChangedInVain,
        Self::WrongRating,
        Self::PutInAmiss,
        Self::BurntElement,
        Self::Untorqued,
        Self::WiresOff,
        Self::NotFinished,
        Self::EnergisedNotFull,
        Self::NotPurged,
        Self::ReliefNotLifted,
        Self::NotMeasured,
        Self::NotRunToCutOut,
        Self::LeakNotLookedFor,
        Self::DialsLeft,
        Self::CoversOff,
        Self::PowerLeftOff,
        Self::LockLeftOn,
        Self::LeftOpen,
        Self::WiresUnlabelled,
        Self::CustomerNotTold,
        Self::LeftUnsafe,
        Self::NoAmbulance,
        Self::CostNotAgreed,
        Self::HazardUnreported,
        Self::ReportedAmiss,
        Self::ToldAmiss,
    ];
}

/// What a rule costs.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Rule {
    /// Which.
    pub rule: RuleId,
    /// From which account.
    pub account: Account,
    /// Points each time.
    pub points: f64,
    /// Most it can cost in one job.
    pub most: f64,
    /// It ends the job as failed: the safety account is lost.
    #[serde(default)]
    pub gate: bool,
}

/// Points of each account at the start.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Accounts {
    /// Safety.
    pub safety: f64,
    /// Finding.
    pub finding: f64,
    /// Repair.
    pub repair: f64,
    /// Finish.
    pub finish: f64,
}

#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Marker {
    Rubric,
}

/// A whole rubric. A rule it leaves out costs nothing.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Rubric {
    tankwright: Marker,
    /// Its name, chosen by whoever edits it.
    pub name: String,
    /// Points at the start.
    pub accounts: Accounts,
    /// Rules.
    pub rules: Vec<Rule>,
}

/// Why a rubric cannot be used.
#[derive(Clone, PartialEq, Debug, thiserror::Error)]
pub enum RubricError {
    /// Not readable.
    #[error("the rubric, line {line}: {problem}")]
    Unreadable {
        /// Line.
        line: usize,
        /// What is wrong.
        problem: String,
    },
    /// A number that makes no sense.
    #[error("the rubric: {what} has to be a number from 0 to 1000")]
    OutOfRange {
        /// Which.
        what: String,
    },
    /// A rule twice.
    #[error("the rubric names {rule:?} twice")]
    Twice {
        /// Which.
        rule: RuleId,
    },
}

impl Rubric {
    /// The one that comes with the program.
    pub fn plain() -> Self {
        Self::read(PLAIN).unwrap_or_else(|_| Self {
            tankwright: Marker::Rubric,
            name: String::new(),
            accounts: Accounts { safety: 40.0, finding: 25.0, repair: 20.0, finish: 15.0 },
            rules: Vec::new(),
        })
    }

    /// Reads a rubric and refuses nonsense.
    pub fn read(text: &str) -> Result<Self, RubricError> {
        let rubric: Self = serde_json::from_str(text)
            .map_err(|e| RubricError::Unreadable { line: e.line(), problem: crate::order::plain(&e) })?;
        let ok = |x: f64| (0.0..=1000.0).contains(&x);
        for account in Account::ALL {
            if !ok(rubric.start(account)) {
                return Err(RubricError::OutOfRange { what: format!("{account:?}") });
            }
        }
        for (i, rule) in rubric.rules.iter().enumerate() {
            if !ok(rule.points) || !ok(rule.most) {
                return Err(RubricError::OutOfRange { what: format!("{:?}", rule.rule) });
            }
            if rubric.rules.iter().take(i).any(|r| r.rule == rule.rule) {
                return Err(RubricError::Twice { rule: rule.rule });
            }
        }
        Ok(rubric)
    }

    /// Points an account starts with.
    pub const fn start(&self, account: Account) -> f64 {
        match account {
            Account::Safety => self.accounts.safety,
            Account::Finding => self.accounts.finding,
            Account::Repair => self.accounts.repair,
            Account::Finish => self.accounts.finish,
        }
    }

    /// What a rule costs; `None` when this rubric leaves it out.
    pub fn rule(&self, id: RuleId) -> Option<&Rule> {
        self.rules.iter().find(|r| r.rule == id)
    }

    /// Digest of the rubric as compact JSON, for the record.
    pub fn digest(&self) -> Digest {
        Digest::of(&serde_json::to_vec(self).unwrap_or_default())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_plain_rubric_prices_every_rule_once() {
        let rubric = Rubric::read(PLAIN).unwrap();
        assert!(RuleId::ALL.iter().all(|id| rubric.rule(*id).is_some()));
        assert_eq!(rubric.rules.len(), RuleId::ALL.len());
        assert!(rubric.rules.iter().all(|r| r.points <= r.most && r.points > 0.0));
    }

    #[test]
    fn nonsense_is_refused() {
        assert!(Rubric::read(&PLAIN.replace("\"points\": 40", "\"points\": -1")).is_err());
        assert!(Rubric::read(&PLAIN.replace("\"shock\"", "\"touched-live\"")).is_err());
        assert!(Rubric::read("[]").is_err());
    }
}
