//! What was seen, heard, smelled or felt.

use bench::{Sight, Went};

use plant::controls::board::Lockout;

use crate::Voice;
use crate::book::Fill;
use crate::names::kebab;

impl Voice {
    /// Why a board does not heat.
    pub fn lockout(&self, why: Lockout) -> String {
        self.text(match why {
            Lockout::UpperOpen => "lockout-upper-open",
            Lockout::LowerOpen => "lockout-lower-open",
            Lockout::UpperShorted => "lockout-upper-shorted",
            Lockout::LowerShorted => "lockout-lower-shorted",
            Lockout::TooHot => "lockout-too-hot",
            Lockout::NoWater => "lockout-no-water",
            Lockout::Leak => "lockout-leak",
        })
    }

    /// All that was perceived. Ends that lost their names come last, by their letters, and no eye tells that one of
    /// them is on another's screw.
    pub fn sights(&self, all: &[Sight]) -> Vec<String> {
        let letter = |sight: &Sight| match sight {
            Sight::Charred { end } | Sight::Lifted { end } | Sight::Crossed { end, .. } => self.letter(*end),
            _ => None,
        };
        let unseen = |sight: &Sight| matches!(sight, Sight::Crossed { .. }) && letter(sight).is_some();
        let mut told: Vec<&Sight> = all.iter().filter(|sight| !unseen(sight)).collect();
        quantity::sort::sort_by_key(&mut told, |sight| letter(sight));
        told.into_iter().map(|sight| self.sight(sight)).collect()
    }

    /// One thing perceived, as a sentence.
    pub fn sight(&self, sight: &Sight) -> String {
        let u = self.units();
        let say = |id: &str, fills: &[(&str, Fill)]| self.filled(id, fills);
        match sight {
            Sight::Ordinary => self.text("sight-ordinary"),
            Sight::BreakerHandle { slot, handle, locked } => say(
                if *locked { "sight-breaker-locked" } else { "sight-breaker" },
                &[("slot", (slot + 1).into()), ("handle", self.handle(*handle).into())],
            ),
            Sight::Box { kind, closed, locked } => {
                let state = match (closed, locked) {
                    (None, _) => "shut",
                    (Some(true), _) => "on",
                    (Some(false), false) => "off",
                    (Some(false), true) => "locked",
                };
                say(&format!("sight-box-{state}"), &[("kind", self.text(&format!("box-{kind}")).into())])
            }
            Sight::BoxHours { shows, off_from, off_for } => {
                let until = quantity::Seconds((off_from.get() + off_for.get()) % 86_400.0);
                let time = |at: quantity::Seconds| u.clock(at);
                say(
                    "sight-box-hours",
                    &[
                        ("shows", time(*shows).into()),
                        ("from", time(*off_from).into()),
                        ("until", time(until).into()),
                    ],
                )
            }
            Sight::OffPeakRelay { closed } => {
                self.text(if *closed { "sight-off-peak-on" } else { "sight-off-peak-off" })
            }
            Sight::FuseOut { leg } => {
                say("sight-fuse-out", &[("leg", self.text(&format!("stab-{leg}")).into())])
            }
            Sight::Portable { leg, glow } => {
                let leg = self.text(&format!("stab-{leg}"));
                say(&format!("sight-portable-{}", kebab(glow)), &[("leg", leg.into())])
            }
            Sight::Tandem { slot } => say("sight-tandem", &[("slot", (slot + 1).into())]),
            Sight::OneLeg { slot } => say("sight-one-leg", &[("slot", (slot + 1).into())]),
            Sight::Cable { awg, metal, rated } => say(
                if *rated { "sight-cable" } else { "sight-cable-unrated" },
                &[("awg", u32::from(*awg).into()), ("metal", self.text(&format!("metal-{metal}")).into())],
            ),
            Sight::Charred { end } => say("sight-charred", &[("end", self.end(*end).into())]),
            Sight::Browned { at } => say("sight-browned", &[("contact", at.name().into())]),
            Sight::LimitBridged => self.text("sight-limit-bridged"),
            Sight::LimitOffTheShell { level } => {
                say("sight-limit-off-the-shell", &[("level", self.level(*level).into())])
            }
            Sight::Lifted { end } => say("sight-lifted", &[("end", self.end(*end).into())]),
            Sight::Crossed { end, on } => {
                say("sight-crossed", &[("end", self.end(*end).into()), ("on", self.screw(*on).into())])
            }
            Sight::Button { proud: true } => self.text("sight-button-proud"),
            Sight::Button { proud: false } => self.text("sight-button-in"),
            Sight::LowerButton { proud: true } => self.text("sight-lower-button-proud"),
            Sight::LowerButton { proud: false } => self.text("sight-lower-button-in"),
            Sight::Wet { fitting, dripping } => say(
                if *dripping { "sight-dripping" } else { "sight-wet" },
                &[("fitting", self.fitting(*fitting).into())],
            ),
            Sight::Dry { fitting } => say("sight-dry", &[("fitting", self.fitting(*fitting).into())]),
            Sight::WaterOnFloor { volume } => say("sight-floor", &[("volume", u.volume(*volume).into())]),
            Sight::ReliefRunning => self.text("sight-relief-running"),
            Sight::ExpansionTank { there: true } => self.text("sight-expansion-tank"),
            Sight::ExpansionTank { there: false } => self.text("sight-no-expansion-tank"),
            Sight::CheckValve { there: true } => self.text("sight-check-valve"),
            Sight::CheckValve { there: false } => self.text("sight-no-check-valve"),
            Sight::Sample { hot, rusty, eggs } => {
                let side = if *hot { "hot" } else { "cold" };
                let found = match (rusty, eggs) {
                    (false, false) => "clear",
                    (true, false) => "rusty",
                    (false, true) => "eggs",
                    (true, true) => "both",
                };
                say(&format!("sight-sample-{found}"), &[("side", self.text(&format!("side-{side}")).into())])
            }
            Sight::Used { at, tap, ran, went } => {
                let after = if let Went::RanCold { after } = went { *after } else { *ran };
                let values = [
                    ("at", u.clock(*at).into()),
                    ("tap", self.tap(*tap).into()),
                    ("ran", u.duration(*ran).into()),
                    ("after", u.duration(after).into()),
                ];
                say(
                    match went {
                        Went::Well => "sight-used-well",
                        Went::RanCold { .. } => "sight-used-ran-cold",
                        Went::Lukewarm => "sight-used-lukewarm",
                        Went::NeverWarm => "sight-used-never-warm",
                        Went::TooHot => "sight-used-too-hot",
                        Went::Unfelt => "sight-used-unfelt",
                        Went::Spat => "sight-used-spat",
                        Went::Dry => "sight-used-dry",
                    },
                    &values,
                )
            }
            Sight::Rod { metal, bare, length } => say(
                if bare.get() > 0.0 { "sight-rod-worn" } else { "sight-rod-whole" },
                &[
                    ("metal", self.text(&format!("anode-{metal}")).into()),
                    ("bare", u.length(*bare).into()),
                    ("length", u.length(*length).into()),
                ],
            ),
            Sight::Flakes => self.text("sight-flakes"),
            Sight::Discharge { pipe } => self.text(&format!("sight-discharge-{pipe}")),
            Sight::Dielectric { there: true } => self.text("sight-dielectric"),
            Sight::Dielectric { there: false } => self.text("sight-no-dielectric"),
            Sight::PipesOff => self.text("sight-pipes-off"),
            Sight::OpenPort => self.text("sight-open-port"),
            Sight::NoHeater => self.text("sight-no-heater"),
            Sight::Pan { there: true } => self.text("sight-pan"),
            Sight::Pan { there: false } => self.text("sight-no-pan"),
            Sight::RustStreak => self.text("sight-rust-streak"),
            Sight::OldSoot => self.text("sight-old-soot"),
            Sight::LimeCrust => self.text("sight-lime-crust"),
            Sight::Condensate => self.text("sight-condensate"),
            Sight::Loop { runs: true } => self.text("sight-loop-runs"),
            Sight::Loop { runs: false } => self.text("sight-loop-rests"),
            Sight::Grit => self.text("sight-grit"),
            Sight::Popping => self.text("sight-popping"),
            Sight::Ticking => self.text("sight-ticking"),
            Sight::TapRuns { tap, flow, spitting } => say(
                match (flow.get() > 1e-9, spitting) {
                    (false, _) => "sight-tap-dry",
                    (true, true) => "sight-tap-spits",
                    (true, false) => "sight-tap-runs",
                },
                &[("tap", self.tap(*tap).into()), ("flow", u.flow(*flow).into())],
            ),
            Sight::DrainRuns { flow } if flow.get() > 1e-9 => {
                say("sight-drain-runs", &[("flow", u.flow(*flow).into())])
            }
            Sight::DrainRuns { .. } => self.text("sight-drain-stands"),
            Sight::LeverNothing => self.text("sight-lever-nothing"),
            Sight::LeverFlow { solid: true } => self.text("sight-lever-solid"),
            Sight::LeverFlow { solid: false } => self.text("sight-lever-airy"),
            Sight::Starts { started: true } => self.text("sight-starts"),
            Sight::Starts { started: false } => self.text("sight-starts-not"),
            Sight::Clicked => self.text("sight-clicked"),
            Sight::NoClick => self.text("sight-no-click"),
            Sight::BurntSmell => self.text("sight-burnt-smell"),
            Sight::Simmering => self.text("sight-simmering"),
            Sight::Warmth { about } => say("sight-warmth", &[("about", u.temperature(*about).into())]),
            Sight::BoardSays { lit: false, .. } => self.text("sight-board-dark"),
            Sight::BoardSays { lockout: None, .. } => self.text("sight-board-heats"),
            Sight::BoardSays { lockout: Some(why), .. } => {
                say("sight-board-says", &[("lockout", self.lockout(*why).into())])
            }
            Sight::WaterMeter { turning, reading } => say(
                if *turning { "sight-meter-turns" } else { "sight-meter-stands" },
                &[("reading", u.volume(*reading).into())],
            ),
            Sight::OffTheShell { level } => {
                say("sight-off-the-shell", &[("level", self.level(*level).into())])
            }
            Sight::ScorchedElement { level } => {
                say("sight-scorched", &[("level", self.level(*level).into())])
            }
            Sight::Water { temperature } => {
                say("sight-water", &[("temperature", u.temperature(*temperature).into())])
            }
        }
    }
}
