//! How a job ended and what the customer is left with, in words.

use bench::{Ending, Session};
use words::{Units, Voice};

/// How it ended.
pub fn ending_words(voice: &Voice, ending: Option<Ending>) -> String {
    match ending {
        Some(Ending::Called { whom }) => {
            voice.filled("debrief-end-called", &[("whom", voice.helper(whom).into())])
        }
        Some(Ending::HandedOver) => voice.text("debrief-end-handed-over"),
        Some(Ending::Injured) => voice.text("debrief-end-injured"),
        Some(Ending::TimeOut) => voice.text("debrief-end-time-out"),
        Some(Ending::ClockOut) => voice.text("debrief-end-clock-out"),
        None => voice.text("debrief-end-none"),
    }
}

/// What the customer is left with, a sentence each.
pub fn customer_words(voice: &Voice, world: &Session, right: bool) -> Vec<String> {
    let units: Units = voice.units();
    let mut all = vec![voice.text(if right { "debrief-cured" } else { "debrief-not-cured" })];
    let top = world.inside().layers.last().copied().flatten();
    if let Some(top) = top {
        all.push(voice.filled("debrief-tank", &[("temperature", units.temperature(top).into())]));
    }
    all.push(voice.filled("debrief-time", &[("time", units.duration(world.clock).into())]));
    all.push(if world.me.cost > 0.0 {
        voice.filled("debrief-bill", &[("cost", format!("{:.0}", world.me.cost).into())])
    } else {
        voice.text("debrief-no-bill")
    });
    all
}
