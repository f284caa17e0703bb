//! What an act showed, noticed or was refused for.

use bench::{Action, Bucket, Display, Noticed, Outcome, Refusal, Shown};

use bench::instrument::{Figures, clamp};
use plant::{Level, Plate};

use crate::Voice;
use crate::book::Fill;

/// Figures with their unit, as a display has them.
fn figures(shown: Option<Figures>) -> Option<String> {
    shown.map(|f| format!("{} {}", f.number, f.unit))
}

/// How many elements may heat at once; of one that is alone, none.
fn at_once(plate: &Plate) -> u32 {
    if plate.has(Level::Lower) { plate.layout.at_once().into() } else { 0 }
}

impl Voice {
    /// What an act showed; of a wait in which nothing happened, that nothing did.
    pub fn showed(&self, action: &Action, outcome: &Outcome) -> String {
        let said = self.shown(&outcome.shown);
        let quiet = said.is_empty() && outcome.noticed.is_empty();
        match action {
            Action::LetThemUse { .. } if said.is_empty() => self.text("shown-nobody-drew"),
            Action::Wait { .. } if quiet => self.text("shown-quiet"),
            Action::WaitForCutOut if quiet => {
                let hours = outcome.took.to_hours().ceil();
                self.filled("shown-no-cut-out", &[("hours", hours.into())])
            }
            _ => said,
        }
    }

    /// What it showed. Empty when the drawing alone shows it.
    pub fn shown(&self, shown: &Shown) -> String {
        let u = self.units();
        let say = |id: &str, fills: &[(&str, Fill)]| self.filled(id, fills);
        match shown {
            Shown::Meter { display } => self.display(display),
            Shown::Clamp { amps } => {
                figures(clamp::AMPS.figures(amps.get())).unwrap_or_else(|| u.amps(*amps))
            }
            Shown::NonContact { sounds: true } => self.text("shown-non-contact-sounds"),
            Shown::NonContact { sounds: false } => self.text("shown-non-contact-silent"),
            Shown::Temperature { reading } => u.temperature(*reading),
            Shown::Bucket(bucket) => self.bucket(bucket),
            Shown::Pressure { now, highest } => say(
                "shown-pressure",
                &[("now", u.pressure(*now).into()), ("highest", u.pressure(*highest).into())],
            ),
            Shown::Charge { air: Some(air) } => say("shown-charge", &[("air", u.pressure(*air).into())]),
            Shown::Charge { air: None } => self.text("shown-charge-water"),
            Shown::Sights { sights, .. } | Shown::DoneWith { sights } => self.sights(sights).join(" "),
            Shown::Said { answer } => self.answer(answer),
            Shown::Plate { plate } => say(
                "shown-plate",
                &[
                    ("nominal", u.volume(plate.nominal).into()),
                    ("rating", self.element(plate.element, plate.length, plate.mount).into()),
                    ("working", u.pressure(plate.working_pressure).into()),
                    ("at-once", at_once(plate).into()),
                ],
            ),
            Shown::Diagram => self.text("shown-diagram"),
            Shown::Stamp { level, rating, length, mount } => say(
                "shown-stamp",
                &[
                    ("level", self.level(*level).into()),
                    ("rating", self.element(*rating, *length, *mount).into()),
                ],
            ),
            Shown::Directory { labels } => {
                let label = |(slot, (circuit, amps)): (u32, &(plant::Circuit, quantity::Amps))| {
                    let amps = amps.get().round().into();
                    let circuit = self.circuit(*circuit).into();
                    self.filled("shown-label", &[("slot", slot.into()), ("circuit", circuit), ("amps", amps)])
                };
                let more = |before: String, next: String| {
                    self.filled("shown-label-more", &[("before", before.into()), ("next", next.into())])
                };
                (1..).zip(labels).map(label).reduce(more).unwrap_or_default()
            }
            Shown::Dials { upper, lower } => say(
                "shown-dials",
                &[("upper", u.temperature(*upper).into()), ("lower", u.temperature(*lower).into())],
            ),
            Shown::Done => String::new(),
            Shown::Refused { why } => say("shown-refused", &[("why", self.refusal(why).into())]),
            Shown::Stopped { harm } => say("shown-stopped", &[("harm", self.harm_and_caution(harm).into())]),
        }
    }

    /// A meter's display in words and figures.
    pub fn display(&self, display: &Display) -> String {
        let shown = figures(display.figures());
        match (display, shown) {
            (Display::Tone { on: true }, _) => self.text("display-tone"),
            (Display::Tone { on: false }, _) => self.text("display-silent"),
            (Display::Blank, _) => self.text("display-blank"),
            (Display::Live { .. }, Some(shown)) => self.filled("display-live", &[("volts", shown.into())]),
            (_, Some(shown)) => shown,
            (_, None) => self.text("display-over"),
        }
    }

    fn bucket(&self, b: &Bucket) -> String {
        let u = self.units();
        let mut fills: Vec<(&str, Fill)> = vec![
            ("volume", u.volume(b.volume).into()),
            ("flow", u.flow(b.flow).into()),
            ("first", u.temperature(b.first).into()),
            ("last", u.temperature(b.last).into()),
        ];
        let id = match b.fell_after {
            Some(after) => {
                fills.push(("after", u.volume(after).into()));
                "shown-bucket-fell"
            }
            None => "shown-bucket",
        };
        let said = self.filled(id, &fills);
        if b.spat { format!("{said} {}", self.text("shown-bucket-spat")) } else { said }
    }

    /// Why it was not done.
    pub fn refusal(&self, why: &Refusal) -> String {
        let say = |id: &str, name: &str, fill: Fill| self.filled(id, &[(name, fill)]);
        match why {
            Refusal::CoverOn { cover } => say("refused-cover-on", "cover", self.cover(*cover).into()),
            Refusal::OrderOfCovers { cover } => {
                say("refused-order-of-covers", "cover", self.cover(*cover).into())
            }
            Refusal::AlreadySo => self.text("refused-already-so"),
            Refusal::NotHere => self.text("refused-not-here"),
            Refusal::WireLanded { end } => say("refused-wire-landed", "end", self.end(*end).into()),
            Refusal::WireLifted { end } => say("refused-wire-lifted", "end", self.end(*end).into()),
            Refusal::WhichWire { end } => say("refused-which-wire", "end", self.end(*end).into()),
            Refusal::OutOfReach { screw } => say("refused-out-of-reach", "screw", self.screw(*screw).into()),
            Refusal::Sealed => self.text("refused-sealed"),
            Refusal::NoHasp => self.text("refused-no-hasp"),
            Refusal::FuseIn => self.text("refused-fuse-in"),
            Refusal::Locked => self.text("refused-locked"),
            Refusal::NotOff => self.text("refused-not-off"),
            Refusal::TankNotDrained { below } => {
                say("refused-tank-not-drained", "percent", Fill::Count((below * 100.0).round()))
            }
            Refusal::OtherMount => self.text("refused-other-mount"),
            Refusal::TooLong => self.text("refused-too-long"),
            Refusal::UnderPressure => self.text("refused-under-pressure"),
            Refusal::MainOpen => self.text("refused-main-open"),
            Refusal::PipesOn => self.text("refused-pipes-on"),
            Refusal::HeaterStands => self.text("refused-heater-stands"),
            Refusal::NoGauge => self.text("refused-no-gauge"),
            Refusal::NoFlow => self.text("refused-no-flow"),
            Refusal::NothingToReach => self.text("refused-nothing-to-reach"),
            Refusal::OutOfRange => self.text("refused-out-of-range"),
            Refusal::NoSuchStep { step } => say("refused-no-such-step", "step", (*step).into()),
            Refusal::Over => self.text("refused-over"),
            Refusal::SamePoint => self.text("refused-same-point"),
        }
    }

    /// Something noticed meanwhile.
    pub fn noticed(&self, what: &Noticed) -> String {
        let u = self.units();
        let say = |id: &str, name: &str, fill: Fill| self.filled(id, &[(name, fill)]);
        match what {
            Noticed::BreakerTripped { slot } => say("noticed-breaker-tripped", "slot", (slot + 1).into()),
            Noticed::SomebodyReset { slot } => say("noticed-somebody-reset", "slot", (slot + 1).into()),
            Noticed::BoxClacks { closed: true } => self.text("noticed-box-closes"),
            Noticed::BoxClacks { closed: false } => self.text("noticed-box-opens"),
            Noticed::Click { level } => say("noticed-click", "level", self.level(*level).into()),
            Noticed::ReliefRuns => self.text("noticed-relief-runs"),
            Noticed::Flooding { volume } => say("noticed-flooding", "volume", u.volume(*volume).into()),
            Noticed::Bang => self.text("noticed-bang"),
            Noticed::DrainStopped => self.text("noticed-drain-stopped"),
            Noticed::TankEmpty => self.text("noticed-tank-empty"),
            Noticed::RunsSolid { tap } => say("noticed-runs-solid", "tap", self.tap(*tap).into()),
            Noticed::LowBattery => self.text("noticed-low-battery"),
            Noticed::Flash { at } => say("noticed-flash", "at", self.point(*at).into()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Units;
    use plant::HeaterModel;

    #[test]
    fn a_plate_says_how_many_elements_there_are_and_heat_at_once() {
        let voice = Voice::english(Units::Customary);
        let said = |model: HeaterModel| voice.shown(&Shown::Plate { plate: model.plate() });
        let one = said(HeaterModel::Small20);
        assert!(one.contains(" one element 1500 W") && !one.contains("at once"), "{one}");
        assert!(said(HeaterModel::Plain40).contains("both elements 4500 W"));
        assert!(said(HeaterModel::Plain40).contains(", not both at once, "));
        let both = said(HeaterModel::Both50);
        assert!(both.contains(", both at once, ") && !both.contains("not both"), "{both}");
    }
}
