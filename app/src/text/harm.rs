//! What happened to people and things, with the numbers it is told with.

use bench::person::{Burn, Degree, Harm, Path, Shock, Source, Who};

use crate::units::{self, Units};

/// One harm.
pub fn harm(harm: &Harm, units: Units) -> String {
    match harm {
        Harm::Shock(one) => shock(one),
        Harm::Burn(one) => burn(one, units),
        Harm::Flood { volume } => format!("{} of water where it does damage.", units.volume(*volume)),
        Harm::ElementBurntOut { after, .. } => {
            format!("The element stood in air and burnt out after {}.", units::duration(*after))
        }
        Harm::ArcFlash { volts, energy, protected, .. } => {
            let worn =
                if *protected { "Gloves and eye protection were on." } else { "Eyes and hands were bare." };
            format!("An arc at {} set {:.0} J free. {worn}", units::nominal(*volts), energy.get())
        }
        Harm::MeterOverloaded { volts } => {
            format!("The meter met {} on a range that cannot stand it.", units::nominal(*volts))
        }
        Harm::Steam { water, .. } => format!("Water of {} flashed to steam.", units.temperature(*water)),
        Harm::Overpressure { pressure, working } => format!(
            "The tank stood at {}; its plate allows {}.",
            units.pressure(*pressure),
            units.pressure(*working)
        ),
        Harm::JointOverheated { power, .. } => {
            format!("A joint turned {:.0} W into heat and charred.", power.get())
        }
        Harm::TankLukewarm { temperature } => {
            format!("The tank was left at {}, where bacteria grow.", units.temperature(*temperature))
        }
    }
}

const fn who(who: Who) -> &'static str {
    match who {
        Who::Technician => "You",
        Who::Adult => "A grown-up of the house",
        Who::Child => "A child of the house",
    }
}

const fn path(path: Path) -> &'static str {
    match path {
        Path::HandHand => "from hand to hand",
        Path::LeftHandFeet => "from the left hand to the feet",
        Path::RightHandFeet => "from the right hand to the feet",
        Path::HandsFeet => "from both hands to the feet",
        Path::LeftHandTrunk => "from the left hand to the trunk",
        Path::RightHandTrunk => "from the right hand to the trunk",
    }
}

fn shock(one: &Shock) -> String {
    let fatal = if one.crosses_c1.is_some_and(|t| t.get() <= one.duration.get()) {
        " Long enough to stop a heart."
    } else {
        ""
    };
    format!(
        "{} took {:.0} mA {} at {} for {}.{fatal}",
        who(one.who),
        one.current.get() * 1e3,
        path(one.path),
        units::nominal(one.volts),
        units::duration(one.duration)
    )
}

fn burn(one: &Burn, units: Units) -> String {
    let source = match one.source {
        Source::Water => "water",
        Source::Splash => "a splash",
        Source::Steam => "steam",
        Source::Metal => "metal",
    };
    let left = match one.degree {
        Degree::None => "no burn",
        Degree::First => "a first-degree burn",
        Degree::Second => "a second-degree burn",
        Degree::Third => "a third-degree burn",
    };
    format!(
        "{} had {source} of {} on the skin for {}: {left}.",
        who(one.who),
        units.temperature(one.temperature),
        units::duration(one.seconds)
    )
}
