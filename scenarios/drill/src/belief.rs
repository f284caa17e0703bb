//! Sloppy statements of the trade, and how a job shows that somebody acted on one: what was seen, and the line
//! that it cost. The debrief then says why the statement is wrong.

use bench::Session;
use plant::fault::FaultId;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::make::Drill;
use crate::score::Score;

const ALL: &str = include_str!("../beliefs.json");

/// One statement.
#[derive(Clone, PartialEq, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Belief {
    /// Its name; `belief-NAME` and `belief-NAME-truth` are its sentences.
    pub belief: String,
    /// Its number in section 11 of the trade sheet.
    pub statement: u8,
    /// Faults whose drills can show it; all of them where empty.
    #[serde(default)]
    pub faults: Vec<FaultId>,
    /// Steps that must have been: each a part of an entry of the log, as its JSON has it.
    #[serde(default)]
    pub saw: Vec<Value>,
    /// Steps that must have been in this order, others between them or not.
    #[serde(default)]
    pub run: Vec<Value>,
    /// What clears of it: runs of steps, each in its order. Where any of them was, it was another slip.
    #[serde(default)]
    pub unless: Vec<Value>,
    /// The line it costs: a part of a line of the score.
    pub costs: Value,
}

/// A statement somebody acted on, and the step that cost for it.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
pub struct Held {
    /// The statement's name.
    pub belief: String,
    /// The step of its line, where the line has one.
    pub step: Option<u32>,
}

/// All of them, in the order of the trade sheet. A list that does not read is no list; a test reads it.
pub fn all() -> Vec<Belief> {
    serde_json::from_str(ALL).unwrap_or_default()
}

/// The statements this job acted on.
pub fn held(drill: &Drill, session: &Session, score: &Score) -> Vec<Held> {
    let log: Vec<Value> = session.log.iter().map(|entry| written(entry.as_ref())).collect();
    let lines: Vec<(Value, Option<u32>)> =
        score.lines.iter().map(|line| (written(line), line.step)).collect();
    all()
        .into_iter()
        .filter(|belief| belief.faults.is_empty() || drill.has(&belief.faults))
        .filter_map(|belief| {
            let (_, step) = lines.iter().find(|(line, step)| {
                // What came after its line cannot have led to it.
                let until = step.map_or(log.len(), |step| log.len().min(step as usize));
                has(&belief.costs, line) && belief.fits(log.get(..until).unwrap_or_default())
            })?;
            Some(Held { belief: belief.belief, step: *step })
        })
        .collect()
}

impl Belief {
    /// Every step it needs was, and no run that clears of it.
    fn fits(&self, log: &[Value]) -> bool {
        let was = |part: &Value| log.iter().any(|entry| has(part, entry));
        self.saw.iter().all(was) && follow(&self.run, log) && !self.cleared(log)
    }

    fn cleared(&self, log: &[Value]) -> bool {
        self.unless.iter().filter_map(Value::as_array).any(|run| follow(run, log))
    }
}

/// Whether steps were in this order, others between them or not.
fn follow(run: &[Value], log: &[Value]) -> bool {
    let mut log = log.iter();
    run.iter().all(|part| log.any(|entry| has(part, entry)))
}

/// As its JSON has it.
fn written(of: &impl Serialize) -> Value {
    crate::json::value(of)
}

/// Whether a pattern is a part of a value. `{"from": a, "to": b}` stands for a number between them.
fn has(part: &Value, whole: &Value) -> bool {
    match (part, whole) {
        (Value::Object(range), Value::Number(n)) => {
            let bound = |name: &str| range.get(name).and_then(Value::as_f64);
            match (bound("from"), bound("to"), n.as_f64()) {
                (Some(from), Some(to), Some(n)) => from <= n && n <= to,
                _ => false,
            }
        }
        (Value::Object(part), Value::Object(whole)) => {
            part.iter().all(|(key, part)| whole.get(key).is_some_and(|whole| has(part, whole)))
        }
        (Value::Array(part), Value::Array(whole)) => part.iter().all(|p| whole.iter().any(|w| has(p, w))),
        (part, whole) => part == whole,
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    #[test]
    fn a_part_is_found_in_a_whole() {
        let whole = json!({"a": 3.0, "b": {"c": [1, 2, 3], "d": "x"}});
        assert!(has(&json!({"b": {"c": [2]}}), &whole));
        assert!(has(&json!({"a": {"from": 2.5, "to": 3.5}}), &whole));
        assert!(!has(&json!({"a": {"from": 3.5, "to": 4.5}}), &whole));
        assert!(!has(&json!({"b": {"d": "y"}}), &whole) && !has(&json!({"e": 1}), &whole));
    }

    #[test]
    fn a_run_has_its_order() {
        let log = [json!({"a": 1}), json!({"b": 2}), json!({"a": 1})];
        assert!(follow(&[json!({"b": 2}), json!({"a": 1})], &log));
        assert!(follow(&[json!({"a": 1}), json!({"a": 1})], &log));
        assert!(!follow(&[json!({"b": 2}), json!({"b": 2})], &log));
    }

    #[test]
    fn the_list_reads() {
        let list: Vec<Belief> = serde_json::from_str(ALL).unwrap();
        assert!(!list.is_empty() && list.windows(2).all(|two| two[0].statement <= two[1].statement));
    }
}
