//! Harm, told with its number and what would have kept it away.

use bench::person::{Degree, Harm, Severity, ShockZone, Who, gfci_opens};
use quantity::Seconds;

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
                        ("path", self.text(&format!("path-{}", kebab(&shock.path))).into()),
                        ("impedance", u.ohms(shock.impedance).into()),
                        ("time", u.duration(shock.duration).into()),
                        ("zone", self.shock_zone(shock.zone).into()),
                    ],
                );
                let time =
                    |id: &str, t: Option<Seconds>| t.map(|t| say(id, &[("time", u.duration(t).into())]));
                let chance = shock.crossed().map(|curve| self.text(&format!("curve-{}", kebab(&curve))));
                // Every touch of the bench goes to grounded metal, so an interrupter would have seen it.
                let gfci = time("harm-shock-gfci", gfci_opens(shock.current));
                let rest = [time("harm-shock-time", shock.crosses_c1), chance, gfci];
                std::iter::once(said).chain(rest.into_iter().flatten()).collect::<Vec<_>>().join(" ")
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
            Harm::FlammableGas { volume } => say("harm-gas", &[("volume", u.volume(*volume).into())]),
            Harm::BoardDamaged { volts } => say("harm-board", &[("volts", u.volts(*volts).into())]),
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
            Harm::Strain { mass } => say("harm-strain", &[("mass", u.mass(*mass).into())]),
            Harm::TankLukewarm { temperature } => {
                say("harm-lukewarm", &[("temperature", u.temperature(*temperature).into())])
            }
        }
    }

    /// What to do about a harm, or to keep it away next time.
    pub fn caution(&self, harm: &Harm) -> String {
        let kind = match harm {
            Harm::Shock(shock) if shock.severity() == Severity::NearMiss => "shock-felt",
            Harm::Shock(_) => "shock",
            Harm::Burn(burn) if burn.who == Who::Child => "burn-child",
            Harm::Burn(_) => "burn",
            Harm::Flood { .. } => "flood",
            Harm::ElementBurntOut { .. } => "element",
            Harm::ArcFlash { .. } => "arc",
            Harm::MeterOverloaded { .. } => "meter",
            Harm::FlammableGas { .. } => "gas",
            Harm::BoardDamaged { .. } => "board",
            Harm::Steam { .. } => "steam",
            Harm::Overpressure { .. } => "overpressure",
            Harm::JointOverheated { .. } => "joint",
            Harm::Strain { .. } => "strain",
            Harm::TankLukewarm { .. } => "lukewarm",
        };
        self.text(&format!("caution-{kind}"))
    }

    /// A harm with its caution.
    pub fn harm_and_caution(&self, harm: &Harm) -> String {
        format!("{} {}", self.harm(harm), self.caution(harm))
    }

    fn shock_zone(&self, zone: ShockZone) -> String {
        self.text(&format!("zone-{}", kebab(&zone)))
    }

    fn burn_degree(&self, degree: Degree) -> String {
        self.text(&format!("degree-{}", kebab(&degree)))
    }
}

#[cfg(test)]
mod tests {
    use bench::person::{Area, Footing, Glove};
    use bench::person::{Exposure, Path, Percentile, Shock, Touch, Wetness, settle};
    use plant::Level;
    use quantity::{Joules, Pressure, Temperature, Volts, Volume, Watts};

    use super::*;
    use crate::Units;

    fn shock(path: Path, volts: f64, seconds: f64) -> Harm {
        let touch = Touch {
            path,
            percentile: Percentile::P50,
            wetness: Wetness::Water,
            area: Area::Large,
            glove: Glove::Bare,
            footing: Footing::Wet,
        };
        Harm::Shock(Shock::of(Who::Technician, path, settle(&touch, |_| Volts(volts)), Seconds(seconds)))
    }

    /// Every harm is told with a figure, and carries a caution; no sentence is missing from the book.
    #[test]
    fn every_harm_has_its_number_and_its_caution() {
        let mut all = Vec::new();
        for path in Path::ALL {
            all.extend([2.0, 60.0, 120.0, 480.0].map(|volts| shock(*path, volts, 3.0)));
        }
        for (celsius, who) in [(55.0, Who::Adult), (60.0, Who::Child), (90.0, Who::Technician)] {
            let water = Exposure::water(Temperature::celsius(celsius), Seconds(8.0));
            all.push(Harm::Burn(water.suffer(who)));
        }
        all.extend([
            Harm::Flood { volume: Volume::litres(12.0) },
            Harm::ElementBurntOut {
                element: Level::Upper,
                power: Watts(4500.0),
                after: Seconds(31.0),
                sheath: Temperature::celsius(900.0),
            },
            Harm::ArcFlash {
                volts: Volts(240.0),
                current: quantity::Amps(700.0),
                cleared_after: Seconds(0.01),
                energy: Joules(840.0),
                protected: false,
            },
            Harm::MeterOverloaded { volts: Volts(240.0) },
            Harm::BoardDamaged { volts: Volts(500.0) },
            Harm::FlammableGas { volume: Volume::litres(4.0) },
            Harm::Steam {
                water: Temperature::celsius(110.0),
                pressure: Pressure::psi(60.0),
                volume: Volume::litres(1.0),
            },
            Harm::Overpressure { pressure: Pressure::psi(180.0), working: Pressure::psi(150.0) },
            Harm::JointOverheated { power: Watts(302.0), seconds: Seconds(600.0) },
            Harm::TankLukewarm { temperature: Temperature::celsius(38.0) },
            Harm::Strain { mass: quantity::Kilograms(55.0) },
        ]);
        let voice = Voice::english(Units::Customary);
        for harm in &all {
            let (told, caution) = (voice.harm(harm), voice.caution(harm));
            assert!(told.chars().any(|c| c.is_ascii_digit()), "{told}");
            assert!(caution.ends_with('.') && caution.contains(' '), "{harm:?}: {caution}");
        }
        assert_eq!(voice.missing(), Vec::<String>::new());
    }
}
