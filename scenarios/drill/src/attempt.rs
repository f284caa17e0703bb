//! Attempt files: a drill and what was done, with optional digests that tell an edited file from a cut one.

use bench::Action;
use quantity::{Chain, Digest};
use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;

use crate::json;
use crate::order::{Order, OrderError, RULES, plain};

/// Largest file read, in bytes; a drill of a thousand acts has about a tenth of it.
pub const LARGEST_FILE: usize = 2_000_000;
/// Most acts in one attempt.
pub const MOST_ACTS: usize = 5_000;
/// Longest name of a learner, in characters.
pub const LONGEST_NAME: usize = 80;

/// An attempt: who, which drill, what was done.
#[derive(Clone, PartialEq, Debug)]
pub struct Attempt {
    /// What the learner typed: a name or a number. Shown as text, never trusted.
    pub learner: String,
    /// The drill.
    pub order: Order,
    /// What was done, in order.
    pub actions: Vec<Action>,
    /// Help that a first trial does not have.
    pub practice: Practice,
    /// Whether the file's digests were there and fit.
    pub seal: Seal,
}

/// What marks an attempt as practice.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Practice {
    /// Acts at its beginning that come from an earlier attempt, debriefed and worked again from there.
    #[serde(default)]
    pub carried: u32,
    /// Acts taken back in a coached drill; they are not in the list.
    #[serde(default)]
    pub taken_back: u32,
}

impl Practice {
    /// Worked straight through, once.
    pub fn is_none(&self) -> bool {
        *self == Self::default()
    }
}

/// What the digests of a file say.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
pub enum Seal {
    /// No digests: written by hand, or stripped.
    Unsealed,
    /// Every digest fits.
    Sealed,
}

#[derive(Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
struct Raw<'a> {
    tankwright: Marker,
    rules: u32,
    #[serde(default)]
    learner: String,
    #[serde(borrow)]
    drill: &'a RawValue,
    #[serde(borrow)]
    actions: Vec<&'a RawValue>,
    #[serde(default)]
    practice: Practice,
    #[serde(default)]
    links: Option<Vec<String>>,
}

#[derive(Serialize)]
#[serde(rename_all = "kebab-case")]
struct Written<'a> {
    tankwright: Marker,
    rules: u32,
    learner: &'a str,
    drill: &'a Order,
    actions: &'a [Action],
    #[serde(skip_serializing_if = "Practice::is_none")]
    practice: Practice,
    links: Vec<String>,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Marker {
    Attempt,
}

/// Why an attempt cannot be used.
#[derive(Clone, PartialEq, Debug, thiserror::Error)]
pub enum AttemptError {
    /// Far too large.
    #[error("the file has {found} bytes; an attempt has at most {LARGEST_FILE}. Is it the right file?")]
    TooLarge {
        /// Bytes found.
        found: usize,
    },
    /// Not readable.
    #[error(
        "line {line}, column {column}: {problem}. If the file ends early, fetch it again from the learner"
    )]
    Unreadable {
        /// Line.
        line: usize,
        /// Column.
        column: usize,
        /// What is wrong.
        problem: String,
    },
    /// The drill in it.
    #[error("line {line}, the drill: {error}")]
    Drill {
        /// Line where the drill begins.
        line: usize,
        /// What is wrong.
        error: OrderError,
    },
    /// A code that cannot be read.
    #[error("line {line}, the drill's code: {error}")]
    Code {
        /// Line.
        line: usize,
        /// What is wrong.
        error: crate::code::CodeError,
    },
    /// An act that cannot be read.
    #[error("line {line}, act {act}: {problem}. Compare with docs/attempt-file.md")]
    Act {
        /// Which, 1 the first.
        act: usize,
        /// Line where it begins.
        line: usize,
        /// What is wrong.
        problem: String,
    },
    /// Other rules.
    #[error(
        "this attempt was made under rules {found}; this release has rules {RULES}. Open it with the release that made it"
    )]
    OtherRules {
        /// Rules found.
        found: u32,
    },
    /// Too many acts.
    #[error("{found} acts; an attempt has at most {MOST_ACTS}")]
    TooMany {
        /// Acts found.
        found: usize,
    },
    /// Edited: a digest does not fit.
    #[error("{} was changed after the file was made: its digest does not fit", edited(*act, *line))]
    Edited {
        /// First act whose digest does not fit.
        act: usize,
        /// Its line.
        line: usize,
    },
    /// Cut: more digests than acts, or fewer.
    #[error("{acts} acts but {links} digests: the file was cut or added to after act {place}")]
    Cut {
        /// Acts found.
        acts: usize,
        /// Digests found.
        links: usize,
        /// Where it breaks off.
        place: usize,
    },
}

impl Attempt {
    /// Nothing done yet.
    pub fn new(learner: &str, order: Order) -> Self {
        let practice = Practice::default();
        Self { learner: clean_name(learner), order, actions: Vec::new(), practice, seal: Seal::Sealed }
    }

    /// The digests: one for the drill with the learner's name and what marks it as practice, then one after each act.
    fn links(&self) -> Vec<Digest> {
        let head = if self.practice.is_none() {
            json::line(&(&self.learner, &self.order))
        } else {
            json::line(&(&self.learner, &self.order, self.practice))
        };
        let mut chain = Chain::start(head.as_bytes());
        let mut all = vec![chain.link()];
        for action in &self.actions {
            chain = chain.then(json::line(action).as_bytes());
            all.push(chain.link());
        }
        all
    }

    /// Writes the file, sealed.
    pub fn write(&self) -> String {
        let links = self.links().iter().map(Digest::to_string).collect();
        let written = Written {
            tankwright: Marker::Attempt,
            rules: RULES,
            learner: &self.learner,
            drill: &self.order,
            actions: &self.actions,
            practice: self.practice,
            links,
        };
        json::lines(&written)
    }

    /// Reads a file. Nothing in it is trusted: it is bounded, checked, and only ever folded.
    pub fn read(text: &str) -> Result<Self, AttemptError> {
        if text.len() > LARGEST_FILE {
            return Err(AttemptError::TooLarge { found: text.len() });
        }
        let raw: Raw<'_> = serde_json::from_str(text).map_err(|e| AttemptError::Unreadable {
            line: e.line(),
            column: e.column(),
            problem: plain(&e),
        })?;
        let Marker::Attempt = raw.tankwright;
        if raw.rules != RULES {
            return Err(AttemptError::OtherRules { found: raw.rules });
        }
        if raw.actions.len() > MOST_ACTS {
            return Err(AttemptError::TooMany { found: raw.actions.len() });
        }
        let order = read_drill(raw.drill.get(), line_of(text, raw.drill.get()))?;
        let mut actions = Vec::with_capacity(raw.actions.len());
        for (i, act) in raw.actions.iter().enumerate() {
            actions.push(serde_json::from_str(act.get()).map_err(|e| AttemptError::Act {
                act: i + 1,
                line: line_of(text, act.get()) + e.line().saturating_sub(1),
                problem: plain(&e),
            })?);
        }
        let (learner, practice) = (clean_name(&raw.learner), raw.practice);
        let mut attempt = Self { learner, order, actions, practice, seal: Seal::Unsealed };
        if let Some(links) = raw.links {
            attempt.check_links(&links, |act| raw.actions.get(act).map_or(1, |a| line_of(text, a.get())))?;
            attempt.seal = Seal::Sealed;
        }
        Ok(attempt)
    }

    fn check_links(&self, given: &[String], line: impl Fn(usize) -> usize) -> Result<(), AttemptError> {
        let right = self.links();
        for (i, (found, expected)) in given.iter().zip(&right).enumerate() {
            if Digest::parse(found) != Some(*expected) {
                return Err(AttemptError::Edited { act: i, line: line(i.saturating_sub(1)) });
            }
        }
        if given.len() != right.len() {
            let place = given.len().min(right.len()).saturating_sub(1);
            return Err(AttemptError::Cut { acts: self.actions.len(), links: given.len(), place });
        }
        Ok(())
    }
}

/// What was edited: the head of the file stands before the first act.
fn edited(act: usize, line: usize) -> String {
    if act == 0 {
        "the learner, the drill or the mark of practice".to_owned()
    } else {
        format!("act {act} (line {line})")
    }
}

/// A drill inside an attempt is a whole order or just its code.
fn read_drill(text: &str, line: usize) -> Result<Order, AttemptError> {
    if let Ok(code) = serde_json::from_str::<String>(text) {
        return crate::code::decode(&code).map_err(|error| AttemptError::Code { line, error });
    }
    Order::read(text).map_err(|error| {
        let error = match error {
            OrderError::Unreadable { line: inner, column, problem } => {
                OrderError::Unreadable { line: line + inner - 1, column, problem }
            }
            other => other,
        };
        AttemptError::Drill { line, error }
    })
}

/// Line of a slice within the text it was cut from, 1 the first.
fn line_of(text: &str, part: &str) -> usize {
    let offset = (part.as_ptr() as usize).saturating_sub(text.as_ptr() as usize).min(text.len());
    1 + text.as_bytes().iter().take(offset).filter(|b| **b == b'\n').count()
}

/// A name as it may be shown: no control characters, not endless.
pub fn clean_name(name: &str) -> String {
    name.chars().filter(|c| !c.is_control()).take(LONGEST_NAME).collect::<String>().trim().to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use bench::{Cover, Mode};

    fn sample() -> Attempt {
        let mut a = Attempt::new("A. Learner", Order::chance(5, Mode::Solo));
        a.actions = vec![
            Action::TellHousehold,
            Action::Cover { which: Cover::Upper, off: true },
            Action::Wait { minutes: 0.1 + 0.2 },
        ];
        a
    }

    #[test]
    fn a_file_round_trips_and_a_bare_one_is_unsealed() {
        let a = sample();
        assert_eq!(Attempt::read(&a.write()), Ok(a.clone()));
        let bare = r#"{"tankwright":"attempt","rules": 17,"drill":{"seed":5},
            "actions":[{"do":"tell-household"}]}"#;
        assert_eq!(Attempt::read(bare).unwrap().seal, Seal::Unsealed);
    }

    #[test]
    fn an_edited_or_cut_file_says_where() {
        let text = sample().write();
        let edited = text.replace("\"upper\"", "\"lower\"");
        assert!(matches!(Attempt::read(&edited), Err(AttemptError::Edited { act: 2, .. })));
        let renamed = text.replace("A. Learner", "B. Learner");
        assert!(matches!(Attempt::read(&renamed), Err(AttemptError::Edited { act: 0, .. })));
        for cut in (1..text.len()).step_by(7) {
            let e = Attempt::read(&text[..cut]).unwrap_err();
            assert!(matches!(e, AttemptError::Unreadable { .. }), "{e}");
        }
        let mut short = sample();
        short.actions.pop();
        let mut value: serde_json::Value = serde_json::from_str(&text).unwrap();
        value["actions"].as_array_mut().unwrap().pop();
        assert!(matches!(Attempt::read(&value.to_string()), Err(AttemptError::Cut { place: 2, .. })));
    }

    #[test]
    fn practice_is_marked_and_the_mark_cannot_be_taken_off() {
        let mut a = sample();
        a.practice = Practice { carried: 2, taken_back: 1 };
        let text = a.write();
        assert_eq!(Attempt::read(&text), Ok(a));
        let bare = text.replace("\"carried\": 2", "\"carried\": 0").replace("\"carried\":2", "\"carried\":0");
        assert_ne!(bare, text);
        assert!(matches!(Attempt::read(&bare), Err(AttemptError::Edited { act: 0, .. })));
        let much = text.replace("\"taken-back\"", "\"forgotten\"");
        assert!(matches!(Attempt::read(&much), Err(AttemptError::Unreadable { .. })));
    }

    #[test]
    fn a_wrong_act_is_named_with_its_line() {
        let text = "{\"tankwright\":\"attempt\",\"rules\":17,\"drill\":{\"seed\":5},\n\"actions\":[\n{\"do\":\"tell-household\"},\n{\"do\":\"fly\"}]}";
        assert!(matches!(Attempt::read(text), Err(AttemptError::Act { act: 2, line: 4, .. })));
    }
}
