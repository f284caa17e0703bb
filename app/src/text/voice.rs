//! The way to the sentences of the crate `words`.

use ::drill::{AttemptError, CodeError, OrderError};
use bench::{Cover, Entry, Fitting, Helper, Licence, Observation, Question, Shown};
use plant::fault::{Advice, FaultId, PartKind};
use plant::household::{Account, Answer};
use plant::{Circuit, End, Handle, Layout, Level, Tap, Wire};
use words::{Fill, Voice};

use crate::units::Units;

/// Lets the voice of some units speak.
pub fn say<T>(units: Units, speak: impl FnOnce(&Voice) -> T) -> T {
    speak(&super::voice(units))
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
    cover(Cover) = cover: "A cover.";
    fitting(Fitting) = fitting: "A fitting.";
    tap(Tap) = tap: "A tap.";
    circuit(Circuit) = circuit: "What a breaker feeds.";
    handle(Handle) = handle: "A handle's position.";
    licence(Licence) = licence: "A licence.";
    fault(FaultId) = fault: "A fault as a finding names it.";
    part_kind(PartKind) = part_kind: "A part.";
    advice(Advice) = advice: "Advice to the customer.";
    observation(Observation) = observation: "Something to report.";
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
    capital(&say(units, |voice| voice.action(&entry.action)))
}

/// What it showed; empty when the drawing shows it.
pub fn shown(entry: &Entry, units: Units, layout: Layout) -> String {
    let single = !layout.has(Level::Lower);
    say(units, |voice| match &entry.outcome.shown {
        Shown::Dials { upper, .. } if single => {
            voice.filled("shown-dial", &[("dial", voice.units().temperature(*upper).into())])
        }
        shown => super::fit(voice.shown(shown), layout),
    })
}

/// What was noticed meanwhile, and what it hurt.
pub fn aftermath(entry: &Entry, units: Units) -> String {
    say(units, |voice| {
        let noticed = entry.outcome.noticed.iter().map(|one| voice.noticed(one));
        let harms = entry.outcome.harms.iter().map(|one| voice.harm_and_caution(one));
        noticed.chain(harms).collect::<Vec<_>>().join(" ")
    })
}

/// Something perceived.
pub fn sight(sight: &bench::Sight, units: Units) -> String {
    say(units, |voice| voice.sight(sight))
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
