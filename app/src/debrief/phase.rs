//! How the time was spent: acts that belong together, for the bar under the drawing.

use drill::debrief::{Moment, Phase};
use quantity::Seconds;

/// The name of a phase in the book and in the style sheet.
pub const fn phase_name(phase: Phase) -> &'static str {
    match phase {
        Phase::Talk => "people",
        Phase::Look => "look",
        Phase::MakeSafe => "safe",
        Phase::Measure => "measure",
        Phase::Repair => "repair",
        Phase::Water => "water",
        Phase::Wait => "wait",
    }
}

/// A stretch of one phase.
#[derive(Clone, PartialEq, Debug)]
pub struct Stretch {
    /// What for.
    pub phase: Phase,
    /// From.
    pub from: Seconds,
    /// To.
    pub to: Seconds,
    /// First and last step in it.
    pub steps: (u32, u32),
}

/// The stretches of a job. Acts that took no time join what surrounds them.
pub fn stretches(moments: &[Moment]) -> Vec<Stretch> {
    let mut all: Vec<Stretch> = Vec::new();
    for moment in moments {
        let to = moment.at + moment.took;
        match all.last_mut() {
            Some(last) if last.phase == moment.phase || moment.took.get() <= 0.0 => {
                last.to = to;
                last.steps.1 = moment.step;
            }
            _ => all.push(Stretch {
                phase: moment.phase,
                from: moment.at,
                to,
                steps: (moment.step, moment.step),
            }),
        }
    }
    all
}
