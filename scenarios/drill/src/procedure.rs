//! The trade's procedures as data: each step in its right order, with why, and what follows where it is left out
//! or done after the next one.
//!
//! Each lives in a whole worked job, so that what follows can be found by folding it. The files are in
//! `scenarios/drill/procedures`; `docs/procedures.md` is written from them.

use std::collections::BTreeMap;
use std::ops::RangeInclusive;

use bench::Action;
use plant::fault::FaultId;
use serde::{Deserialize, Serialize};

use crate::order::Order;
use crate::rubric::RuleId;

const FILES: &[&str] = &[
    include_str!("../procedures/prove-dead.json"),
    include_str!("../procedures/element-ohms.json"),
    include_str!("../procedures/element-to-ground.json"),
    include_str!("../procedures/drain.json"),
    include_str!("../procedures/replace-element.json"),
    include_str!("../procedures/refill.json"),
    include_str!("../procedures/purge.json"),
    include_str!("../procedures/commission.json"),
    include_str!("../procedures/thermostat-contacts.json"),
    include_str!("../procedures/replace-thermostat.json"),
    include_str!("../procedures/reset-limit.json"),
    include_str!("../procedures/test-relief.json"),
    include_str!("../procedures/replace-heater.json"),
    include_str!("../procedures/stop-and-call.json"),
    include_str!("../procedures/call-the-utility.json"),
    include_str!("../procedures/flush.json"),
    include_str!("../procedures/replace-anode.json"),
    include_str!("../procedures/change-regulator.json"),
    include_str!("../procedures/relabel-circuit.json"),
    include_str!("../procedures/ventilate.json"),
    include_str!("../procedures/somebody-hurt.json"),
];

/// One procedure.
#[derive(Clone, PartialEq, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Procedure {
    /// Its name, for other procedures to call it by.
    pub procedure: String,
    /// What it is for.
    pub title: String,
    /// Where its order comes from.
    pub source: String,
    /// The drill of the worked job.
    pub drill: Order,
    /// What the job does before it.
    #[serde(default)]
    pub before: Vec<Part>,
    /// What has come of it by then, where the procedure is for after that; nothing else may come of the right order.
    #[serde(default)]
    pub already: Vec<Follows>,
    /// Its steps.
    pub steps: Vec<Step>,
    /// What the job does after it.
    #[serde(default)]
    pub after: Vec<Part>,
}

/// A stretch of the job around a procedure.
#[derive(Clone, PartialEq, Debug, Deserialize)]
#[serde(untagged)]
pub enum Part {
    /// Another procedure's steps.
    Procedure {
        /// Its name.
        procedure: String,
        /// Steps of it that this job does not need.
        #[serde(default)]
        without: Vec<String>,
    },
    /// A step of this job alone.
    Own(Step),
}

/// One step.
#[derive(Clone, PartialEq, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Step {
    /// Its name.
    pub step: String,
    /// Why it is done, and here.
    #[serde(default)]
    pub why: String,
    /// The acts.
    #[serde(rename = "do")]
    pub acts: Vec<Doing>,
    /// What follows where it is left out.
    #[serde(default)]
    pub left_out: Vec<Follows>,
    /// What follows where it is done after the step that comes next.
    #[serde(default)]
    pub after_next: Vec<Follows>,
    /// Other acts in its place that come to mind.
    #[serde(default)]
    pub amiss: Vec<Amiss>,
}

/// A step done otherwise.
#[derive(Clone, PartialEq, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Amiss {
    /// How.
    pub how: String,
    /// The acts.
    #[serde(rename = "do")]
    pub acts: Vec<Doing>,
    /// What follows.
    pub follows: Vec<Follows>,
}

/// An act, or the finding with its evidence named by step.
#[derive(Clone, PartialEq, Debug, Deserialize)]
#[serde(untagged)]
pub enum Doing {
    /// Writes down what is wrong, on the last act of each step named.
    Finds {
        /// What.
        finds: FaultId,
        /// Steps that show it.
        by: Vec<String>,
    },
    /// Any other act.
    Act(Action),
}

/// Something that follows from a step left out or out of order.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Follows {
    /// A line of the score.
    Score(RuleId),
    /// Somebody or something comes to harm: the harm's name in records.
    Harm(String),
    /// A later step cannot be done: its name.
    Refused(String),
    /// A later step reads or shows something else: its name.
    Reading(String),
}

/// Why a procedure cannot be used.
#[derive(Debug, thiserror::Error)]
pub enum ProcedureError {
    /// Not a procedure.
    #[error("not a procedure: {0}")]
    Json(#[from] serde_json::Error),
    /// It calls one that is not there.
    #[error("there is no procedure {missing:?}")]
    Missing {
        /// What.
        missing: String,
    },
}

/// All procedures, in the order of a job.
///
/// # Errors
/// [`ProcedureError::Json`] where a file does not read as one.
pub fn all() -> Result<Vec<Procedure>, ProcedureError> {
    FILES.iter().map(|text| Ok(serde_json::from_str(text)?)).collect()
}

/// The steps of a stretch of a job, those of the procedures it calls in their places.
///
/// # Errors
/// [`ProcedureError::Missing`] where it calls a procedure that is not in `all`.
pub fn flat(parts: &[Part], all: &[Procedure]) -> Result<Vec<Step>, ProcedureError> {
    let mut steps = Vec::new();
    for part in parts {
        match part {
            Part::Own(step) => steps.push(step.clone()),
            Part::Procedure { procedure: name, without } => {
                let missing = || ProcedureError::Missing { missing: name.clone() };
                let called = all.iter().find(|p| p.procedure == *name).ok_or_else(missing)?;
                steps.extend(called.steps.iter().filter(|s| !without.contains(&s.step)).cloned());
            }
        }
    }
    Ok(steps)
}

/// The acts of each step, a finding's evidence by number: every act of the steps it names that came before.
pub fn acts(steps: &[Step]) -> Vec<Vec<Action>> {
    let mut done: BTreeMap<&str, RangeInclusive<u32>> = BTreeMap::new();
    let mut last = 0;
    let mut all = Vec::new();
    for step in steps {
        let act = |doing: &Doing| match doing {
            Doing::Act(action) => action.clone(),
            Doing::Finds { finds, by } => {
                let evidence = by.iter().filter_map(|s| done.get(s.as_str()).cloned()).flatten().collect();
                Action::Finding { fault: Some(*finds), evidence }
            }
        };
        let acts: Vec<Action> = step.acts.iter().map(act).collect();
        let first = last + 1;
        last += u32::try_from(acts.len()).unwrap_or(u32::MAX);
        done.insert(&step.step, first..=last);
        all.push(acts);
    }
    all
}

impl Procedure {
    /// The whole job: the steps before it, its own, those after; and the range its own lie in.
    ///
    /// # Errors
    /// [`ProcedureError::Missing`] where it calls a procedure that is not in `all`.
    pub fn job(&self, all: &[Self]) -> Result<(Vec<Step>, std::ops::Range<usize>), ProcedureError> {
        let mut steps = flat(&self.before, all)?;
        let first = steps.len();
        steps.extend(self.steps.iter().cloned());
        let own = first..steps.len();
        steps.extend(flat(&self.after, all)?);
        Ok((steps, own))
    }
}
