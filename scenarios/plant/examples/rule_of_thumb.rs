//! Prints the table of docs/tank.md: after a cold 40-gallon tank is energised again, how long until the first
//! warm water, and until both thermostats are satisfied, by inlet temperature and element.

use plant::climate::Climate;
use plant::home::Setting;
use plant::household::HouseholdKind;
use plant::{Happening, HeaterModel, Level, Plant};
use quantity::{Seconds, Temperature, Watts};

/// Water at the top that people call warm, °F: that of a bath.
const WARM: f64 = 105.0;

/// Minutes until the top is warm and until the tank is satisfied, from all cold.
pub fn minutes(inlet: f64, watts: f64) -> (f64, f64) {
    let household = HouseholdKind::Couple;
    let setting = Setting {
        heater: HeaterModel::Plain40,
        household,
        climate: Climate::MillValley,
        day: 100,
        in_line: None,
        location: Default::default(),
    };
    let mut plant = Plant::sound(setting);
    for element in &mut plant.elements {
        element.stamp.watts = Watts(watts);
    }
    let cold = Temperature::fahrenheit(inlet);
    plant.plumbing.inlet = cold;
    let cylinder = solver::tank::Tank::of_volume(plant.plate.content().get(), plant.plate.height.get());
    plant.tank = cylinder.unwrap_or_default().full_at(cold.to_celsius());
    for thermostat in &mut plant.thermostats {
        thermostat.body = cold;
        thermostat.calling = true;
    }
    let (mut at, mut warm) = (0.0, None);
    loop {
        let step = Seconds(15.0);
        let happened = plant.advance(step);
        for (moment, what) in happened {
            if what == (Happening::Switched { level: Level::Lower, calling: false }) {
                return (warm.unwrap_or(f64::NAN), (at + moment.get()) / 60.0);
            }
        }
        at += step.get();
        if warm.is_none() && plant.outlet().to_fahrenheit() >= WARM {
            warm = Some(at / 60.0);
        }
        if at > 40_000.0 {
            return (warm.unwrap_or(f64::NAN), f64::NAN);
        }
    }
}

fn main() {
    print!("{}", table());
}

/// A cell: minutes to warm and to satisfied, bold where the rule of thumb holds.
pub fn cell(inlet: f64, watts: f64) -> String {
    let (warm, done) = minutes(inlet, watts);
    let mark = |holds: bool| if holds { "**" } else { "" };
    let (a, b) = (mark((14.5..20.5).contains(&warm)), mark((44.5..60.5).contains(&done)));
    format!("{a}{warm:.0}{a} / {b}{done:.0}{b}")
}

fn table() -> String {
    let watts = [3500.0, 3800.0, 4500.0, 5500.0];
    let mut out = format!("| inlet | {} |\n", watts.map(|w| format!("{w:.0} W")).join(" | "));
    out += &format!("|---|{}\n", "---|".repeat(watts.len()));
    for inlet in [40.0, 45.0, 50.0, 55.0, 60.0, 65.0, 70.0, 75.0, 80.0] {
        out += &format!("| {inlet:.0} °F | {} |\n", watts.map(|w| cell(inlet, w)).join(" | "));
    }
    out
}
