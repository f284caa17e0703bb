//! Reading the log: what was really done (not refused, not stopped), and when.

use bench::{Action, Entry, Fact, Session, Shown};

/// A step with its number, 1 the first.
pub(super) type Step<'a> = (u32, &'a Entry);

/// Every step.
pub(super) fn all(session: &Session) -> impl DoubleEndedIterator<Item = Step<'_>> {
    session.log.iter().enumerate().map(|(i, e)| (i as u32 + 1, e.as_ref()))
}

/// Every step that took effect.
pub(super) fn done(session: &Session) -> impl DoubleEndedIterator<Item = Step<'_>> {
    all(session).filter(|(_, e)| !matches!(e.outcome.shown, Shown::Refused { .. } | Shown::Stopped { .. }))
}

/// The last step that took effect and satisfies something.
pub(super) fn last(session: &Session, what: impl Fn(&Entry) -> bool) -> Option<u32> {
    done(session).rev().find(|(_, e)| what(e)).map(|(n, _)| n)
}

/// The first step that took effect and satisfies something.
pub(super) fn first(session: &Session, what: impl Fn(&Entry) -> bool) -> Option<u32> {
    done(session).find(|(_, e)| what(e)).map(|(n, _)| n)
}

/// Whether a step that took effect after another satisfies something.
pub(super) fn after(session: &Session, step: u32, what: impl Fn(&Action) -> bool) -> bool {
    done(session).any(|(n, e)| n > step && what(&e.action))
}

/// A step with a fact.
pub(super) fn has(entry: &Entry, what: impl Fn(&Fact) -> bool) -> bool {
    entry.outcome.facts.iter().any(what)
}

/// The last turn of a dial: what it set still stands.
pub(super) fn dial_turned(session: &Session) -> Option<u32> {
    last(session, |entry| matches!(entry.action, Action::Dial { .. }))
}
