//! A job folded step by step, and what differs between two folds.

use std::collections::{BTreeMap, BTreeSet};

use bench::{Display, Session, Shown};
use drill::procedure::{self, Follows, Step};
use drill::{Drill, Rubric, RuleId};
use serde_json::Value;

/// A folded job.
pub struct Fold {
    /// What each step showed, act by act.
    shown: BTreeMap<String, Vec<Shown>>,
    rules: BTreeSet<RuleId>,
    /// The same with what made their sentences.
    lines: Vec<String>,
    harms: BTreeSet<String>,
    lost: f64,
}

impl Fold {
    pub fn of(drill: &Drill, steps: &[Step]) -> Self {
        let mut session = Session::begin(drill.job.clone());
        let (mut shown, mut harms) = (BTreeMap::new(), BTreeSet::new());
        for (step, acts) in steps.iter().zip(procedure::acts(steps)) {
            let showed = acts.iter().map(|act| {
                let outcome = session.step(act);
                harms.extend(outcome.harms.iter().map(|harm| name(harm, "harm")));
                outcome.shown
            });
            shown.insert(step.step.clone(), showed.collect());
        }
        let score = drill::judge(drill, &session, &Rubric::plain());
        let rules = score.lines.iter().map(|line| line.rule).collect();
        let lines = score.lines.iter().map(|line| format!("{:?} {:?}", line.rule, line.detail)).collect();
        Self {
            shown,
            rules,
            lines,
            harms,
            lost: score.of.iter().sum::<f64>() - score.reached.iter().sum::<f64>(),
        }
    }

    /// What keeps the right order from being right, but for what had come of the job before it.
    pub fn flaws(&self, already: &[Follows]) -> Vec<String> {
        let refused = self.shown.iter().flat_map(|(step, acts)| {
            acts.iter().filter(|shown| is_refused(shown)).map(move |shown| format!("{step}: {shown:?}"))
        });
        let came = self.harms.iter().map(|harm| Follows::Harm(harm.clone()));
        let came: BTreeSet<_> = came.chain(self.rules.iter().map(|rule| Follows::Score(*rule))).collect();
        let before: BTreeSet<_> = already.iter().cloned().collect();
        let other = (came != before).then(|| format!("came {came:?}, already {before:?}: {:?}", self.lines));
        let lost = (self.lost > 0.0 && before.is_empty()).then(|| "costs".to_owned());
        refused.chain(other).chain(lost).collect()
    }
}

/// What one fold has that the right one has not: lines, harms, refusals, and readings of the same steps that
/// come out otherwise.
pub fn follows(right: &Fold, slip: &Fold) -> BTreeSet<Follows> {
    let mut all: BTreeSet<Follows> =
        slip.rules.difference(&right.rules).map(|rule| Follows::Score(*rule)).collect();
    all.extend(slip.harms.difference(&right.harms).map(|harm| Follows::Harm(harm.clone())));
    for (step, acts) in &slip.shown {
        if acts.iter().any(is_refused) {
            all.insert(Follows::Refused(step.clone()));
        } else if right.shown[step].iter().zip(acts).any(|(a, b)| otherwise(a, b)) {
            all.insert(Follows::Reading(step.clone()));
        }
    }
    all
}

fn is_refused(shown: &Shown) -> bool {
    matches!(shown, Shown::Refused { .. } | Shown::Stopped { .. })
}

/// Two showings differ by more than a meter's or gauge's class or a few degrees of waiting.
fn otherwise(a: &Shown, b: &Shown) -> bool {
    match (a, b) {
        (Shown::Meter { display: a }, Shown::Meter { display: b }) => display(a, b),
        (Shown::Clamp { amps: a }, Shown::Clamp { amps: b }) => apart(a.get(), b.get(), 0.5),
        (Shown::Temperature { reading: a }, Shown::Temperature { reading: b }) => {
            (a.to_celsius() - b.to_celsius()).abs() > 5.0
        }
        (Shown::Pressure { now: a, highest: high }, Shown::Pressure { now: b, highest: higher }) => {
            apart(a.to_psi(), b.to_psi(), 5.0) || apart(high.to_psi(), higher.to_psi(), 5.0)
        }
        (Shown::Bucket(a), Shown::Bucket(b)) => {
            a.spat != b.spat || (a.first.to_celsius() - b.first.to_celsius()).abs() > 5.0
        }
        _ => sights(a) != sights(b),
    }
}

fn display(a: &Display, b: &Display) -> bool {
    match (a, b) {
        (Display::Volts { volts: a }, Display::Volts { volts: b }) => apart(a.get(), b.get(), 2.0),
        (Display::Ohms { ohms: a }, Display::Ohms { ohms: b }) => apart(a.get(), b.get(), 0.5),
        (Display::Insulation { .. } | Display::Over, Display::Insulation { .. } | Display::Over) => false,
        _ => std::mem::discriminant(a) != std::mem::discriminant(b),
    }
}

fn apart(a: f64, b: f64, least: f64) -> bool {
    (a - b).abs() > least + 0.05 * a.abs().max(b.abs())
}

/// The names of what was seen, without its numbers.
fn sights(shown: &Shown) -> BTreeSet<String> {
    let value = serde_json::to_value(shown).unwrap();
    let listed = value.get("sights").and_then(Value::as_array).cloned().unwrap_or_default();
    listed.iter().map(|sight| name(sight, "see")).collect()
}

/// The tag of something written as JSON.
fn name(of: &impl serde::Serialize, tag: &str) -> String {
    match serde_json::to_value(of).unwrap() {
        Value::Object(map) => match map.get(tag) {
            Some(Value::String(text)) => text.clone(),
            _ => map.keys().next().cloned().unwrap_or_default(),
        },
        Value::String(text) => text,
        other => other.to_string(),
    }
}
