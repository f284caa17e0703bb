//! How a job ended and what the customer is left with, in words.

use bench::{Ending, Session};
use drill::cure::RightEnd;
use drill::{Cure, Debrief};
use plant::fault::FaultId;
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

/// What the right end was, for this licence.
pub fn right_end_words(voice: &Voice, right: RightEnd, fault: FaultId) -> String {
    match right {
        RightEnd::Own(_) => voice.fault_remedy(fault),
        RightEnd::Call(whom) => voice.filled(
            "debrief-right-call",
            &[("whom", voice.helper(whom).into()), ("remedy", voice.fault_remedy(fault).into())],
        ),
    }
}

/// What the customer is left with, a sentence each.
pub fn customer_words(voice: &Voice, world: &Session, computed: &Debrief) -> Vec<String> {
    let units: Units = voice.units();
    let mut all = vec![cure_words(voice, &computed.cure)];
    if let Some(symptom) = computed.afterwards {
        all.push(voice.filled("debrief-afterwards", &[("symptom", voice.symptom(symptom).into())]));
    }
    if let Some(top) = world.inside().layers.last().copied().flatten() {
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

fn cure_words(voice: &Voice, cure: &Cure) -> String {
    match cure {
        Cure::Cured => voice.text("debrief-cured"),
        Cure::HandedOn { whom, .. } => {
            voice.filled("debrief-handed-on", &[("whom", voice.helper(*whom).into())])
        }
        Cure::CalledAmiss { .. } | Cure::NotCured { .. } => voice.text("debrief-not-cured"),
    }
}
