//! Harm, told with its number and what would have kept it away.

use bench::person::{Degree, Harm, ShockZone};

use crate::Voice;
use crate::book::Fill;
use crate::names::kebab;

impl Voice {
    /// A harm, as a sentence with its numbers.
    pub fn harm(&self, harm: &Harm) -> String {
        let u = self.units();
        let say = |id: &str, fills: &[(&str, Fill)]| self.filled(id, fills);
        match harm {
            Harm::Shock(shock) => {
                let said = say(
                    "harm-shock",
                    &[
                        ("volts", u.volts(shock.volts).into()),
                        ("current", u.milliamps(shock.current).into()),
                        ("zone", self.shock_zone(shock.zone).into()),
                    ],
                );
                match shock.crosses_c1 {
                    Some(t) => {
                        format!("{said} {}", say("harm-shock-time", &[("time", u.duration(t).into())]))
                    }
                    None => said,
                }
            }
            Harm::Burn(burn) => say(
                "harm-burn",
                &[
                    ("source", self.text(&format!("burn-source-{}", kebab(&burn.source))).into()),
                    ("temperature", u.temperature(burn.temperature).into()),
                    ("time", u.duration(burn.seconds).into()),
                    ("degree", self.burn_degree(burn.degree).into()),
                    ("who", self.text(&format!("who-{}", kebab(&burn.who))).into()),
                ],
            ),
            Harm::Flood { volume } => say("harm-flood", &[("volume", u.volume(*volume).into())]),
            Harm::ElementBurntOut { element, power, after, .. } => say(
                "harm-element",
                &[
                    ("level", self.level(*element).into()),
                    ("power", u.watts(*power).into()),
                    ("time", u.duration(*after).into()),
                ],
            ),
            Harm::ArcFlash { volts, current, .. } => {
                say("harm-arc", &[("volts", u.volts(*volts).into()), ("current", u.amps(*current).into())])
            }
            Harm::MeterOverloaded { volts } => say("harm-meter", &[("volts", u.volts(*volts).into())]),
            Harm::Steam { water, pressure, .. } => say(
                "harm-steam",
                &[("water", u.temperature(*water).into()), ("pressure", u.pressure(*pressure).into())],
            ),
            Harm::Overpressure { pressure, working } => say(
                "harm-overpressure",
                &[("pressure", u.pressure(*pressure).into()), ("working", u.pressure(*working).into())],
            ),
            Harm::JointOverheated { power, seconds } => {
                say("harm-joint", &[("power", u.watts(*power).into()), ("time", u.duration(*seconds).into())])
            }
            Harm::TankLukewarm { temperature } => {
                say("harm-lukewarm", &[("temperature", u.temperature(*temperature).into())])
            }
        }
    }

    fn shock_zone(&self, zone: ShockZone) -> String {
        self.text(&format!("zone-{}", kebab(&zone)))
    }

    fn burn_degree(&self, degree: Degree) -> String {
        self.text(&format!("degree-{}", kebab(&degree)))
    }
}
