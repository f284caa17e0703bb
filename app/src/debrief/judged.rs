//! The accounts in words: what each line says, why it matters, what would have been right.

use drill::Account as Id;
use drill::{Score, ScoreLine};
use words::Voice;

use super::sheet::{Account, Line};

/// The four accounts.
pub fn accounts(voice: &Voice, score: &Score) -> Vec<Account> {
    let four = Id::ALL.into_iter().zip(score.reached).zip(score.of);
    four.map(|((id, got), of)| Account {
        id: name(id),
        name: voice.account(id),
        got,
        of,
        lines: score.account(id).map(|one| line(voice, one)).collect(),
    })
    .collect()
}

const fn name(id: Id) -> &'static str {
    match id {
        Id::Safety => "safety",
        Id::Finding => "finding",
        Id::Repair => "repair",
        Id::Finish => "finish",
    }
}

fn line(voice: &Voice, one: &ScoreLine) -> Line {
    Line {
        points: -one.points,
        step: one.step.unwrap_or(0),
        gate: one.gate,
        text: voice.score_line(one),
        why: voice.rule_why(one.rule),
        right: voice.rule_right(one.rule),
    }
}
