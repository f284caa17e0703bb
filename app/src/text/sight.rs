//! What was perceived, and what was noticed meanwhile.

use bench::{Noticed, Sight};

use super::name;
use crate::units::Units;

/// Several sights as one sentence row.
pub fn sights(sights: &[Sight], units: Units) -> String {
    sights.iter().map(|one| sight(one, units)).collect::<Vec<_>>().join(" ")
}

/// One sight.
pub fn sight(sight: &Sight, units: Units) -> String {
    match sight {
        Sight::Ordinary => "Nothing out of the ordinary.".into(),
        Sight::BreakerHandle { slot, handle, locked } => {
            let locked = if *locked { ", locked" } else { "" };
            format!("{} is {}{locked}.", capital(&name::slot(*slot)), name::handle(*handle))
        }
        Sight::Charred { end } => format!("The joint of the {} is charred.", name::end(*end)),
        Sight::Lifted { end } => format!("The {} is off its screw.", name::end(*end)),
        Sight::Crossed { end, on } => format!("The {} sits on {}.", name::end(*end), on.name()),
        Sight::Button { proud: true } => "The reset button stands proud.".into(),
        Sight::Button { proud: false } => "The reset button lies in.".into(),
        Sight::Wet { fitting, dripping: true } => {
            format!("{}: wet, and drops form.", capital(name::fitting(*fitting)))
        }
        Sight::Wet { fitting, dripping: false } => format!("{}: wet.", capital(name::fitting(*fitting))),
        Sight::Dry { fitting } => format!("{}: dry.", capital(name::fitting(*fitting))),
        Sight::WaterOnFloor { volume } => format!("Water on the floor, about {}.", units.volume(*volume)),
        Sight::ReliefRunning => "The discharge pipe runs.".into(),
        Sight::ExpansionTank { there: true } => "There is an expansion tank.".into(),
        Sight::ExpansionTank { there: false } => "There is no expansion tank.".into(),
        Sight::CheckValve { there: true } => "A check valve or regulator sits in the cold line.".into(),
        Sight::CheckValve { there: false } => "No check valve or regulator in the cold line.".into(),
        Sight::Flakes => "White flakes in the water.".into(),
        Sight::TapRuns { tap, flow, spitting } => {
            let air = if *spitting { ", spitting air" } else { "" };
            format!("The {} runs {}{air}.", name::tap(*tap), units.flow(*flow))
        }
        Sight::DrainRuns { flow } if flow.get() > 0.0 => format!("The drain runs {}.", units.flow(*flow)),
        Sight::DrainRuns { .. } => "The drain stands still.".into(),
        Sight::LeverFlow { solid: true } => "Solid water from the relief valve, no air.".into(),
        Sight::LeverFlow { solid: false } => "Air and spurts from the relief valve.".into(),
        Sight::Starts { started: true } => "Something starts: a click, then a hum.".into(),
        Sight::Starts { started: false } => "Nothing starts.".into(),
        Sight::Clicked => "The button clicks in.".into(),
        Sight::NoClick => "The button does not catch.".into(),
        Sight::BurntSmell => "A smell of burnt insulation.".into(),
        Sight::Simmering => "An element simmers at work.".into(),
        Sight::Warmth { about } => format!("Feels like about {}.", units.temperature(*about)),
        Sight::ScorchedElement { level } => {
            format!("The {} element is scorched, its plating gone.", name::level(*level))
        }
        Sight::Water { temperature } => format!("Water of about {}.", units.temperature(*temperature)),
    }
}

/// Something noticed.
pub fn noticed(noticed: &Noticed, units: Units) -> String {
    match noticed {
        Noticed::BreakerTripped { slot } => format!("A clack: {} has tripped.", name::slot(*slot)),
        Noticed::SomebodyReset { slot } => {
            format!("Somebody of the house has switched {} on.", name::slot(*slot))
        }
        Noticed::Click { level } => format!("A click at the {} control.", name::level(*level)),
        Noticed::ReliefRuns => "The relief valve runs.".into(),
        Noticed::Flooding { volume } => {
            format!("Water spreads on the floor, {} so far.", units.volume(*volume))
        }
        Noticed::Bang => "A bang and a smell from inside.".into(),
        Noticed::DrainStopped => "The drain stands still though water is left: no air gets in.".into(),
        Noticed::TankEmpty => "The drain has run out.".into(),
        Noticed::RunsSolid { tap } => format!("The {} runs full and steady, no more air.", name::tap(*tap)),
        Noticed::Flash { at } => format!("A flash and a bang at {}.", name::mark(*at)),
    }
}

/// The same with a capital at its start.
pub(super) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}
