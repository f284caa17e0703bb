//! A folded attempt as text: each step with its clock, what was done, what it showed, every harm and line of
//! the score, and the digest of the whole simulated state after it. The same bytes on every machine.

use std::fmt::Write as _;

use bench::{Entry, Session};
use drill::{Account, Attempt, Drill, Rubric, Score, ScoreLine, Seal};
use quantity::Digest;

use crate::Voice;

impl Voice {
    /// Folds the text of an attempt file under the plain rubric and tells the whole trace.
    pub fn trace_of(&self, text: &str) -> Result<String, String> {
        let attempt = Attempt::read(text).map_err(|error| error.to_string())?;
        let drill = drill::make(&attempt.order).map_err(|error| error.to_string())?;
        let states = drill::replay::states(&drill, &attempt.actions);
        let Some(last) = states.last() else { return Ok(String::new()) };
        let score = drill::judge(&drill, last, &Rubric::plain());
        Ok(self.trace(&attempt, &drill, &states, &score))
    }

    /// The whole trace. `states` is the arrival and the state after each act.
    pub fn trace(&self, attempt: &Attempt, drill: &Drill, states: &[Session], score: &Score) -> String {
        let mut out = String::new();
        self.about(crate::heater_of(&drill.job.home.plant));
        let seal = if attempt.seal == Seal::Sealed { "trace-sealed" } else { "trace-unsealed" };
        let code = drill::code::encode(&attempt.order).unwrap_or_else(|_| self.text("trace-no-code"));
        let _ = writeln!(
            out,
            "{}: {}; {}; {}",
            self.text("trace-learner"),
            attempt.learner,
            code,
            self.text(seal)
        );
        let _ = writeln!(out, "{}", self.complaint(&drill.job.account));
        let _ =
            writeln!(out, "      {}  {}", self.clock(drill, states.first()), state_digest(states.first()));
        let Some(last) = states.last() else { return out };
        for (i, entry) in last.log.iter().enumerate() {
            let step = i as u32 + 1;
            self.step(&mut out, drill, step, entry, states.get(i + 1), score);
        }
        for line in score.lines.iter().filter(|l| l.step.is_none()) {
            let _ = writeln!(out, "  end {}", self.charged(line));
        }
        for (i, account) in Account::ALL.into_iter().enumerate() {
            let (reached, of) = (score.reached.get(i).unwrap_or(&0.0), score.of.get(i).unwrap_or(&0.0));
            let _ = writeln!(out, "{} {reached:.1} / {of:.0}", self.account(account));
        }
        let _ = writeln!(out, "{}: {}", self.text("trace-truth"), self.fault(score.truth));
        out
    }

    fn step(
        &self,
        out: &mut String,
        drill: &Drill,
        step: u32,
        entry: &Entry,
        after: Option<&Session>,
        score: &Score,
    ) {
        let clock = self.units().clock(drill.job.starts_at + entry.at);
        let _ = writeln!(out, "{step:>5} {clock}  {}", self.action(&entry.action));
        let shown = self.shown(&entry.outcome.shown);
        let mut said: Vec<String> = vec![shown];
        said.extend(entry.outcome.noticed.iter().map(|n| self.noticed(n)));
        said.iter().filter(|s| !s.is_empty()).for_each(|s| {
            let _ = writeln!(out, "            {s}");
        });
        for harm in &entry.outcome.harms {
            let _ = writeln!(out, "          ! {}", self.harm(harm));
        }
        for line in score.lines.iter().filter(|l| l.step == Some(step)) {
            let _ = writeln!(out, "          {}", self.charged(line));
        }
        let _ = writeln!(out, "            {}", state_digest(after));
    }

    fn charged(&self, line: &ScoreLine) -> String {
        let gate = if line.gate { "!!" } else { "" };
        // A line beyond its rule's cap is told and costs nothing more.
        let cost = if line.points > 0.0 { format!("-{:.1}", line.points) } else { " 0.0".to_owned() };
        format!("{cost}{gate} {}: {}", self.account(line.account), self.score_line(line))
    }

    fn clock(&self, drill: &Drill, session: Option<&Session>) -> String {
        self.units().clock(drill.job.starts_at + session.map_or(quantity::Seconds(0.0), |s| s.clock))
    }
}

/// Digest of the simulated house, the technician and the covers: everything but the log, which the digests
/// of the steps before already stand for.
fn state_digest(session: Option<&Session>) -> String {
    let Some(s) = session else { return String::new() };
    let bytes = serde_json::to_vec(&(&s.home, &s.me, &s.access, s.clock, &s.ended)).unwrap_or_default();
    format!("#{} {}", bytes.len(), Digest::of(&bytes))
}
