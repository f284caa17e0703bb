//! What the people of the house say. Composed from the facts of their week, never from a fault.

use plant::household::{Account, Answer, HowMuch, Meddler};

use crate::Voice;
use crate::book::Fill;

impl Voice {
    /// What they say when the door opens.
    pub fn complaint(&self, account: &Account) -> String {
        let mut said = vec![self.text(&match account.manner {
            0 => format!("complaint-{}", account.symptom),
            other => format!("complaint-{}-{other}", account.symptom),
        })];
        said.extend(account.opening.iter().map(|a| self.answer(a)));
        said.join(" ")
    }

    /// One answer.
    pub fn answer(&self, answer: &Answer) -> String {
        let u = self.units();
        let say = |id: &str, fills: &[(&str, Fill)]| self.filled(id, fills);
        match answer {
            Answer::LastGood { days: None } => self.text("says-last-good-unknown"),
            Answer::LastGood { days: Some(days) } => say("says-last-good", &[("days", (*days).into())]),
            Answer::HowMuch(HowMuch::Never) => self.text("says-never"),
            Answer::HowMuch(HowMuch::RunsOut { after }) => {
                say("says-runs-out", &[("after", u.duration(*after).into())])
            }
            Answer::HowMuch(HowMuch::Lukewarm { .. }) => self.text("says-lukewarm"),
            Answer::HowMuch(HowMuch::Enough) => self.text("says-enough"),
            Answer::TooHot { hottest: None } => self.text("says-not-too-hot"),
            Answer::TooHot { hottest: Some(_) } => self.text("says-too-hot"),
            Answer::Tripped { breaker, button, by } => self.tripped(*breaker, *button, *by),
            Answer::WhoTouched { who: Meddler::Nobody, .. } => self.text("says-nobody"),
            Answer::WhoTouched { who, dial } => say(
                if *dial { "says-touched-dial" } else { "says-touched" },
                &[("who", self.meddler(*who).into())],
            ),
            Answer::Water { a_day, at_relief } => {
                let id = match (a_day.get() > 1e-6, at_relief) {
                    (false, _) => "says-dry",
                    (true, true) => "says-wet-relief",
                    (true, false) => "says-wet-floor",
                };
                say(id, &[("a-day", u.volume(*a_day).into())])
            }
            Answer::NoiseSmell { burnt, eggs, rusty } => {
                let said = [(*burnt, "says-burnt"), (*eggs, "says-eggs"), (*rusty, "says-rusty")];
                let said: Vec<_> = said.iter().filter(|(so, _)| *so).map(|(_, id)| self.text(id)).collect();
                if said.is_empty() { self.text("says-no-smell") } else { said.join(" ") }
            }
            Answer::People { adults, children, demand } => {
                let said =
                    say("says-people", &[("adults", (*adults).into()), ("children", (*children).into())]);
                if *demand > 1.2 { format!("{said} {}", self.text("says-demand")) } else { said }
            }
            Answer::EveryTap { same: true } => self.text("says-every-tap"),
            Answer::EveryTap { same: false } => self.text("says-not-every-tap"),
            Answer::WhichTap { tap: None } => self.text("says-which-tap-unknown"),
            Answer::WhichTap { tap: Some(tap) } => say("says-which-tap", &[("tap", self.tap(*tap).into())]),
            Answer::TimeOfDay { part: None } => self.text("says-all-day"),
            Answer::TimeOfDay { part: Some(part) } => self.text(&format!("says-worst-{part}")),
            Answer::HowOften { of_ten } => say("says-how-often", &[("times", (*of_ten).into())]),
            Answer::Sudden { sudden } => self.text(if *sudden { "says-sudden" } else { "says-creeping" }),
            Answer::BackAgain { after: None } => self.text("says-not-back"),
            Answer::BackAgain { after: Some(after) } => {
                say("says-back-again", &[("after", u.duration(*after).into())])
            }
            Answer::WaterBill { factor } => {
                self.text(if *factor > 1.15 { "says-water-bill-up" } else { "says-bill-same" })
            }
            Answer::Noise { rumbles, hisses, spits, ticks } => {
                let heard = [
                    (rumbles, "says-rumbles"),
                    (hisses, "says-hisses"),
                    (spits, "says-spits"),
                    (ticks, "says-ticks"),
                ];
                let said: Vec<String> =
                    heard.iter().filter(|(on, _)| **on).map(|(_, id)| self.text(id)).collect();
                if said.is_empty() { self.text("says-no-noise") } else { said.join(" ") }
            }
            Answer::Parts { who: Meddler::Nobody } => self.text("says-no-parts"),
            Answer::Parts { who } => say("says-parts", &[("who", self.meddler(*who).into())]),
            Answer::Cost { ask_above: None } => self.text("says-cost-open"),
            Answer::Cost { ask_above: Some(dollars) } => say("says-cost", &[("dollars", (*dollars).into())]),
            Answer::Stands { location } => say("says-stands", &[("place", self.location(*location).into())]),
            Answer::Strong { share } => {
                self.text(if *share < 0.75 { "says-weak-flow" } else { "says-strong-flow" })
            }
            Answer::Clear { grit } => self.text(if *grit { "says-grit" } else { "says-clear" }),
            Answer::Bill { factor } => self.text(match *factor {
                f if f > 1.25 => "says-bill-up",
                f if f < 0.75 => "says-bill-down",
                _ => "says-bill-same",
            }),
            Answer::Age { years } => say("says-age", &[("years", (*years).into())]),
            Answer::House { dim, bright, tingle } => {
                let mut said = Vec::new();
                match (dim, bright) {
                    (true, true) => said.push(self.text("says-house-lights")),
                    (true, false) => said.push(self.text("says-house-half")),
                    (false, true) => said.push(self.text("says-house-bright")),
                    (false, false) => {}
                }
                if *tingle {
                    said.push(self.text("says-house-tingle"));
                }
                if said.is_empty() { self.text("says-house-fine") } else { said.join(" ") }
            }
            Answer::OtherSupply { known: true } => self.text("says-other-supply"),
            Answer::OtherSupply { known: false } => self.text("says-no-other-supply"),
        }
    }

    fn tripped(&self, breaker: u16, button: u16, by: Meddler) -> String {
        let mut said = Vec::new();
        if breaker > 0 {
            said.push(self.filled("says-breaker-tripped", &[("times", breaker.into())]));
        }
        if button > 0 {
            let fills = [("times", Fill::from(button)), ("who", self.meddler(by).into())];
            said.push(self.filled("says-button-pushed", &fills));
        }
        if said.is_empty() { self.text("says-not-tripped") } else { said.join(" ") }
    }

    fn meddler(&self, who: Meddler) -> String {
        self.text(&format!("meddler-{who}"))
    }
}
