//! Lines of the score.

use bench::Unproved;
use drill::{Account, Detail, RuleId, ScoreLine};

use crate::Voice;
use crate::names::kebab;

impl Voice {
    /// An account's name.
    pub fn account(&self, account: Account) -> String {
        self.text(&format!("account-{}", kebab(&account)))
    }

    /// What happened.
    pub fn score_line(&self, line: &ScoreLine) -> String {
        let detail = self.detail(&line.detail, line.rule);
        self.filled(&format!("rule-{}", kebab(&line.rule)), &[("detail", detail.into())])
    }

    /// Why it matters.
    pub fn rule_why(&self, rule: RuleId) -> String {
        self.text(&format!("rule-{}-why", kebab(&rule)))
    }

    /// What would have been right.
    pub fn rule_right(&self, rule: RuleId) -> String {
        self.text(&format!("rule-{}-right", kebab(&rule)))
    }

    /// A sloppy statement of the trade, as one hears it.
    pub fn belief(&self, name: &str) -> String {
        self.text(&format!("belief-{name}"))
    }

    /// What is true instead.
    pub fn belief_truth(&self, name: &str) -> String {
        self.text(&format!("belief-{name}-truth"))
    }

    fn detail(&self, detail: &Detail, rule: RuleId) -> String {
        match detail {
            Detail::Plain => String::new(),
            Detail::Part { part, cost } if *cost <= 0.0 => self.part_kind(*part),
            Detail::Part { part, cost } => format!("{}, ${cost:.0}", self.part_kind(*part)),
            Detail::Alive { faults } => {
                let names: Vec<String> = faults.iter().map(|f| self.fault(*f)).collect();
                names.join(", ")
            }
            Detail::Wrote { fault } => fault.map_or_else(|| self.text("fault-none"), |f| self.fault(f)),
            Detail::Missed { fault } => self.fault(*fault),
            Detail::Hot { temperature } => self.units().temperature(*temperature),
            Detail::At { end } => self.end(*end),
            Detail::Point { point } => self.point(*point),
            Detail::Unproved { point, missing } => {
                let missing = self.text(lacked(*missing));
                match point {
                    Some(point) => {
                        let fills = [("point", self.point(*point).into()), ("missing", missing.into())];
                        self.filled("rule-lacked-at", &fills)
                    }
                    None => missing,
                }
            }
            Detail::Element { level } => self.level(*level),
            Detail::Observed { what } => self.observation(*what),
            Detail::Heard { what } => self.hearsay(*what),
            Detail::Call { whom } if rule == RuleId::NotCured => {
                format!(" {}", self.filled("detail-call-first", &[("whom", self.helper(*whom).into())]))
            }
            Detail::Call { whom } => self.helper(*whom),
        }
    }
}

/// What proving dead lacked.
const fn lacked(missing: Unproved) -> &'static str {
    match missing {
        Unproved::Lock => "rule-lacked-lock",
        Unproved::Household => "rule-lacked-household",
        Unproved::Meter => "rule-lacked-meter",
        Unproved::Legs => "rule-lacked-legs",
        Unproved::Ground => "rule-lacked-ground",
        Unproved::Screw => "rule-lacked-screw",
        Unproved::MeterAgain => "rule-lacked-meter-again",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Units;

    #[test]
    fn every_rule_has_its_words() {
        let v = Voice::english(Units::Customary);
        for &rule in RuleId::ALL {
            let line = ScoreLine {
                rule,
                account: Account::Safety,
                step: None,
                points: 1.0,
                gate: false,
                detail: Detail::Plain,
            };
            assert!(!v.score_line(&line).is_empty());
            assert!(v.rule_why(rule).len() > 10 && v.rule_right(rule).len() > 10);
        }
        Account::ALL.iter().for_each(|a| drop(v.account(*a)));
        assert_eq!(v.missing(), Vec::<String>::new());
    }
}
