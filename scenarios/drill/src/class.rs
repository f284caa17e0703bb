//! The class table: one row an attempt, and what went wrong most.

use bench::{Ending, Session};
use quantity::pairs::Pairs;
use serde::{Deserialize, Serialize};

use crate::attempt::{Attempt, Practice, Seal};
use crate::rubric::{Account, RuleId};
use crate::score::Score;

/// One attempt in the table.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Row {
    /// The file it came from.
    pub file: String,
    /// What the learner typed.
    pub learner: String,
    /// The drill: its code, or what stands for it.
    pub drill: String,
    /// Digests.
    pub seal: Seal,
    /// What marks it as practice.
    pub practice: Practice,
    /// How it ended.
    pub ended: Option<Ending>,
    /// A clock limit of the page took part: unproven.
    pub clock_unproven: bool,
    /// Simulated minutes.
    pub minutes: f64,
    /// Acts.
    pub acts: usize,
    /// The score.
    pub score: Score,
}

impl Row {
    /// A row from a folded and judged attempt.
    pub fn new(file: &str, attempt: &Attempt, drill: &str, session: &Session, score: Score) -> Self {
        Self {
            file: file.to_owned(),
            learner: attempt.learner.clone(),
            drill: drill.to_owned(),
            seal: attempt.seal,
            practice: attempt.practice,
            ended: session.ended,
            clock_unproven: session.log.iter().any(|e| matches!(e.action, bench::Action::TimeUp { .. })),
            minutes: session.clock.to_minutes(),
            acts: session.log.len(),
            score,
        }
    }
}

/// How often each rule was met, most often first; ties in the order of the rubric.
pub fn commonest(rows: &[Row], account: Account) -> Vec<(RuleId, usize)> {
    let mut counts = Pairs::default();
    for row in rows {
        let mut met: Vec<RuleId> = Vec::new();
        for rule in row.score.account(account).map(|l| l.rule) {
            if !met.contains(&rule) {
                met.push(rule);
                counts.put(rule, counts.get(&rule).copied().unwrap_or(0) + 1);
            }
        }
    }
    let mut all: Vec<(RuleId, usize)> = counts.iter().copied().collect();
    quantity::sort::sort_by_key(&mut all, |(rule, n)| (std::cmp::Reverse(*n), *rule));
    all
}

const HEADER: [&str; 18] = [
    "file",
    "learner",
    "drill",
    "seal",
    "ended",
    "fault",
    "finding",
    "right",
    "cured",
    "failed",
    "safety",
    "finding_points",
    "repair",
    "finish",
    "total",
    "minutes",
    "carried",
    "taken_back",
];

/// The table as comma-separated values (RFC 4180). A cell that a spreadsheet might run as a formula gets an
/// apostrophe in front.
pub fn csv(rows: &[Row]) -> String {
    let mut out = HEADER.join(",") + "\r\n";
    for row in rows {
        let s = &row.score;
        let verdict = match s.verdict {
            None => String::new(),
            Some(None) => "none".to_owned(),
            Some(Some(fault)) => fault.to_string(),
        };
        let mut cells = vec![
            cell(&row.file),
            cell(&row.learner),
            cell(&row.drill),
            (if row.seal == Seal::Sealed { "sealed" } else { "unsealed" }).to_owned(),
            ended(row).to_owned(),
            s.truth.to_string() + &s.second.map_or_else(String::new, |id| format!("+{id}")),
            verdict,
            yes(s.right),
            yes(s.cured),
            yes(s.failed),
        ];
        cells.extend(s.reached.iter().map(|p| format!("{p:.1}")));
        cells.push(format!("{:.1}", s.total()));
        cells.push(format!("{:.0}", row.minutes));
        cells.extend([row.practice.carried, row.practice.taken_back].map(|n| n.to_string()));
        out += &(cells.join(",") + "\r\n");
    }
    out
}

/// How an attempt ended, in one word.
pub fn ended(row: &Row) -> &'static str {
    match row.ended {
        Some(Ending::HandedOver) => "handed-over",
        Some(Ending::Called { .. }) => "called",
        Some(Ending::Injured) => "injured",
        Some(Ending::TimeOut) => "time-out",
        Some(Ending::ClockOut) => "clock-out",
        None => "unfinished",
    }
}

fn yes(b: bool) -> String {
    (if b { "yes" } else { "no" }).to_owned()
}

fn cell(text: &str) -> String {
    let risky = text.starts_with(['=', '+', '-', '@', '\t', '\r']);
    let guarded = if risky { format!("'{text}") } else { text.to_owned() };
    if guarded.contains([',', '"', '\n', '\r']) {
        format!("\"{}\"", guarded.replace('"', "\"\""))
    } else {
        guarded
    }
}

#[cfg(test)]
mod tests {
    use super::cell;

    #[test]
    fn cells_cannot_break_out_or_run() {
        assert_eq!(cell("A, \"B\""), "\"A, \"\"B\"\"\"");
        assert_eq!(cell("=1+1"), "'=1+1");
        assert_eq!(cell("@x"), "'@x");
        assert_eq!(cell("plain"), "plain");
    }
}
