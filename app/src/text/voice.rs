//! The way to the sentences of the crate `words`.

use ::drill::{AttemptError, CodeError, OrderError};
use bench::{Cover, Entry, Fitting, Helper, Licence, Noticed, Question};
use plant::fault::{FaultId, PartKind};
use plant::household::{Account, Answer};
use plant::{Circuit, End, Handle, Layout, Tap, Wire};
use quantity::Seconds;
use words::{Fill, Voice};

use crate::units::Units;

/// Lets the voice of some units speak.
pub fn say<T>(units: Units, speak: impl FnOnce(&Voice) -> T) -> T {
    speak(&super::voice(units))
}

/// The same, telling of a time into the job.
fn say_at<T>(at: Seconds, units: Units, speak: impl FnOnce(&Voice) -> T) -> T {
    say(units, |voice| voice.at(at, speak))
}

/// A fixed text by its name in the book.
pub fn text(id: &str) -> String {
    say(Units::Us, |voice| voice.text(id))
}

/// A text with places to fill, none of which depends on units.
pub fn filled(id: &str, fills: &[(&str, Fill)]) -> String {
    filled_in(Units::Us, id, fills)
}

/// A text with places to fill, in some units.
pub fn filled_in(units: Units, id: &str, fills: &[(&str, Fill)]) -> String {
    say(units, |voice| voice.filled(id, fills))
}

macro_rules! names {
    ($($name:ident($type:ty) = $method:ident: $doc:literal;)*) => {
        $(#[doc = $doc] pub fn $name(of: $type) -> String { say(Units::Us, |voice| voice.$method(of)) })*
    };
}

names! {
    wire(Wire) = wire: "A wire.";
    end(End) = end: "A wire end.";
    wire_of(End) = wire_of: "The wire of an end, as far as it is known.";
    cover(Cover) = cover: "A cover.";
    fitting(Fitting) = fitting: "A fitting.";
    tap(Tap) = tap: "A tap.";
    circuit(Circuit) = circuit: "What a breaker feeds.";
    handle(Handle) = handle: "A handle's position.";
    licence(Licence) = licence: "A licence.";
    fault(FaultId) = fault: "A fault as a finding names it.";
    part_kind(PartKind) = part_kind: "A part.";
    helper(Helper) = helper: "Somebody to call.";
    question(Question) = question: "A question.";
}

/// Why a drill cannot be used.
pub fn order_error(error: &OrderError) -> String {
    say(Units::Us, |voice| voice.order_error(error))
}

/// Why a code cannot be used.
pub fn code_error(error: &CodeError) -> String {
    say(Units::Us, |voice| voice.code_error(error))
}

/// Why an attempt cannot be used.
pub fn attempt_error(error: &AttemptError) -> String {
    say(Units::Us, |voice| voice.attempt_error(error))
}

/// A leg of the supply.
pub fn leg(of: plant::Stab) -> String {
    say(Units::Us, |voice| voice.text(&format!("stab-{of}")))
}

/// What the customer says when the door opens.
pub fn complaint(account: &Account, units: Units) -> String {
    say(units, |voice| voice.complaint(account))
}

/// An answer in the customer's words.
pub fn answer(answer: Answer, units: Units) -> String {
    say(units, |voice| voice.answer(&answer))
}

/// What was done.
pub fn act(entry: &Entry, units: Units) -> String {
    capital(&say_at(entry.at, units, |voice| voice.action(&entry.action)))
}

/// What it showed; empty when the drawing shows it.
pub fn shown(entry: &Entry, units: Units, layout: Layout) -> String {
    super::fit(say_at(entry.at, units, |voice| voice.showed(&entry.action, &entry.outcome)), layout)
}

/// What was noticed meanwhile, and what it hurt.
pub fn aftermath(entry: &Entry, units: Units) -> String {
    say_at(entry.at, units, |voice| {
        let mut said = noticed(voice, &entry.outcome.noticed);
        said.extend(entry.outcome.harms.iter().map(|one| voice.harm_and_caution(one)));
        said.join(" ")
    })
}

/// What was noticed, each thing once with how often it was.
pub fn noticed(voice: &Voice, all: &[Noticed]) -> Vec<String> {
    let mut said: Vec<(String, u32)> = Vec::new();
    for one in all.iter().map(|one| voice.noticed(one)) {
        match said.iter_mut().find(|(before, _)| *before == one) {
            Some((_, count)) => *count += 1,
            None => said.push((one, 1)),
        }
    }
    said.into_iter()
        .map(|(one, count)| match count {
            1 => one,
            _ => voice.filled("noticed-again", &[("noticed", one.into()), ("count", count.into())]),
        })
        .collect()
}

/// What was perceived at a time into the job.
pub fn sights(all: &[bench::Sight], at: Seconds, units: Units) -> Vec<String> {
    say_at(at, units, |voice| voice.sights(all))
}

/// The same with a capital at its start.
pub fn capital(text: &str) -> String {
    words::letters::capital(text)
}

/// A sentence after another one, which is closed first.
pub fn follow(mut before: String, next: String) -> String {
    if before.ends_with(|last: char| last.is_alphanumeric() || matches!(last, ')' | 'Ω')) {
        before.push('.');
    }
    if !before.is_empty() {
        before.push(' ');
    }
    before.push_str(&next);
    before
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_noticed_again_is_said_once_with_its_count() {
        let all = [Noticed::ReliefRuns, Noticed::Bang, Noticed::ReliefRuns];
        let said = say(Units::Us, |voice| noticed(voice, &all));
        let one = say(Units::Us, |voice| all.each_ref().map(|one| voice.noticed(one)));
        assert_eq!(said.len(), 2);
        assert!(said[0].contains(&one[0]) && said[0].contains('2'), "{said:?}");
        assert_eq!(said[1], one[1]);
    }
}
