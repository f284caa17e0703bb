//! Changing the whole heater: pipes off, carried out, the new one set, pipes on. Its leads come off their splices and
//! go back like any other wire; the new relief valve is a part from the van.

use plant::fault::PartKind;
use plant::heater::Rating;
use plant::{End, Place, Plant, Stand};
use quantity::{Constant, Kilograms, Seconds, Tag, Volume};

use super::replace::{OPEN, changed, is_made, splashed};
use super::turn::Turn;
use super::{Answered, fit, judge, senses};
use crate::action::{Action, Cover, NewPart, Writing};
use crate::person::Harm;
use crate::shown::{Fact, Refusal, Shown};

quantity::constants! {
    /// A tank carries no more than this when it can be carried. Model: a few litres.
    const CARRIED: Constant = Constant::new("share a tank holds when it can be carried", 0.05, "1", Tag::Model("a few litres"));
    /// What an empty heater weighs for each gallon of its plate.
    const EMPTY: Constant = Constant::new("mass of an empty heater, for each gallon of its plate", 1.2, "kg", Tag::Memory("makers' data of storage heaters: about 110 lb at 40 gal and 130 lb at 50 gal"));
    /// The most that one person is to lift.
    const ALONE: Constant = Constant::new("most that one person is to lift", 23.0, "kg", Tag::Memory("NIOSH publication 94-110: load constant of the lifting equation, 51 lb"));
    /// Heaters that are sold at all.
    const SOLD_TANKS: Constant<(f64, f64)> = Constant::new("heaters that are sold", (10.0, 120.0), "gal", Tag::CommonPractice);
}

/// The act is on something that was carried out with the heater.
pub(super) fn went_with_it(plant: &Plant, action: &Action) -> bool {
    if plant.plumbing.stand.is_there() {
        return false;
    }
    match action {
        Action::Drain { .. } | Action::Hose { .. } | Action::Gauge { .. } | Action::ReliefLever { .. } => {
            true
        }
        Action::LookAtAnode | Action::TryStart | Action::Wipe { .. } => true,
        Action::Read { what } => *what != Writing::Directory,
        Action::Cover { which, .. } => !matches!(which, Cover::PanelFront | Cover::BoxDoor),
        Action::Replace { part } => !matches!(
            part,
            NewPart::Breaker { .. }
                | NewPart::Fuse { .. }
                | NewPart::TimeSwitch
                | NewPart::Regulator { .. }
                | NewPart::MixingValve { .. }
                | NewPart::Cartridge { .. }
                | NewPart::ExpansionTank { .. }
                | NewPart::HotLine
                | NewPart::PipeClips
                | NewPart::ReturnCheck
                | NewPart::PumpTimer
        ),
        _ => false,
    }
}

/// The unions on top undone: with the cold valve open its pipe runs out on the floor until somebody shuts it.
pub(super) fn part_pipes(turn: &mut Turn, time: Seconds) -> Answered {
    let plant = &mut turn.s.home.plant;
    match plant.plumbing.stand {
        Stand::Gone => return Err(Refusal::NotHere),
        Stand::Loose => return Err(Refusal::AlreadySo),
        Stand::Piped => plant.plumbing.stand = Stand::Loose,
    }
    let runs = plant.plumbing.runs_open();
    let water = if runs { plant.plumbing.inlet } else { plant.outlet() };
    let spilled = turn.s.me.spilled;
    turn.open = true;
    turn.pass(OPEN.get());
    turn.open = false;
    splashed(turn, spilled, water);
    if !runs {
        turn.pass(time - OPEN.get());
    }
    Ok(Shown::Done)
}

/// The old one out of the house, its hose and gauge off it.
pub(super) fn carry_out(turn: &mut Turn, helped: bool, time: Seconds) -> Answered {
    let plant = &turn.s.home.plant;
    match plant.plumbing.stand {
        Stand::Gone => return Err(Refusal::NotHere),
        Stand::Piped => return Err(Refusal::PipesOn),
        Stand::Loose => {}
    }
    if let Some(end) = on_a_splice(plant) {
        return Err(Refusal::WireLanded { end });
    }
    if plant.fill() > CARRIED.get() {
        return Err(Refusal::TankNotDrained { below: CARRIED.get() });
    }
    let mass = EMPTY.get() * plant.plate.nominal.to_gallons() + plant.tank.mass();
    turn.pass(time);
    let plant = &mut turn.s.home.plant;
    plant.empty_vessel();
    plant.plumbing.stand = Stand::Gone;
    plant.plumbing.hose = false;
    plant.plumbing.drain_valve = 0.0;
    plant.plumbing.relief.lever = false;
    turn.s.me.gauge = false;
    if !helped && mass > ALONE.get() {
        turn.harms.push(Harm::Strain { mass: Kilograms(mass) });
    }
    Ok(Shown::Done)
}

/// A lead of the heater that still sits with a conductor of the house on one screw of the junction box.
fn on_a_splice(plant: &Plant) -> Option<End> {
    End::all().find(|lead| {
        let on = plant.wiring.joint(*lead).on.filter(|screw| screw.place() == Place::JunctionBox);
        let is_lead = senses::inside(lead.wire) && senses::exists(plant, lead.wire);
        is_lead && on.is_some_and(|screw| fit::feeds(plant, screw))
    })
}

/// The new one stands in its place, empty, no pipe and no lead on it, its relief port open.
pub(super) fn set_heater(turn: &mut Turn, nominal: Volume, rating: Rating, time: Seconds) -> Answered {
    if !judge::within(nominal.to_gallons(), SOLD_TANKS.get()) || !is_made(rating) {
        return Err(Refusal::OutOfRange);
    }
    let plant = &turn.s.home.plant;
    if plant.plumbing.stand.is_there() {
        return Err(Refusal::HeaterStands);
    }
    let part = PartKind::Heater;
    let (needed, matches) = (judge::needed(plant, part), judge::heater_suits(plant, nominal, rating));
    turn.pass(time);
    fit::new_heater(turn, nominal, rating);
    turn.s.home.renewed(part);
    changed(turn, part, matches, needed, crate::prices::heater());
    Ok(Shown::Done)
}

/// Both pipes on again, through dielectric nipples or copper on bare steel.
pub(super) fn join_pipes(turn: &mut Turn, dielectric: bool, time: Seconds) -> Answered {
    match turn.s.home.plant.plumbing.stand {
        Stand::Gone => return Err(Refusal::NotHere),
        Stand::Piped => return Err(Refusal::AlreadySo),
        Stand::Loose => {}
    }
    turn.pass(time);
    turn.s.home.plant.plumbing.stand = Stand::Piped;
    turn.s.home.installation.dielectric = dielectric;
    if !dielectric {
        turn.facts.push(Fact::PutInAmiss { part: PartKind::Nipples });
    }
    Ok(Shown::Done)
}

/// The old relief valve with its old pipe, as they were, into the new tank's port.
pub(super) fn reuse_relief(turn: &mut Turn, time: Seconds) -> Answered {
    if !turn.s.home.plant.plumbing.relief.missing {
        return Err(Refusal::AlreadySo);
    }
    turn.pass(time);
    turn.s.home.plant.plumbing.relief.missing = false;
    turn.facts.push(Fact::PutInAmiss { part: PartKind::ReliefValve });
    Ok(Shown::Done)
}
