//! A portable heater at a receptacle of one leg: a big load on that side alone, under which a loose neutral shows.

use plant::{Plant, Screw, Stab};
use quantity::{Constant, Seconds, Tag};

use super::Answered;
use super::turn::Turn;
use crate::shown::{Glow, Refusal, Shown, Sight};

quantity::constants! {
    /// From this share of its power on it glows as ever. Model: judged by eye and hand.
    const FULL: Constant = Constant::new("share of its power from which a portable heater glows as ever", 0.6, "1", Tag::Model("judged by eye and hand"));
    /// Below this share it is not felt to warm. Model: judged by eye and hand.
    const FELT: Constant = Constant::new("share of its power below which it is not felt to warm", 0.02, "1", Tag::Model("judged by eye and hand"));
}

/// Plugs it in or pulls it out.
pub(super) fn plug(turn: &mut Turn, leg: Stab, on: bool, time: Seconds) -> Answered {
    let service = &mut turn.s.home.plant.service;
    if !service.has_receptacle(leg) {
        return Err(Refusal::NotHere);
    }
    let plugged = service.portable.get_mut(leg as usize).ok_or(Refusal::NotHere)?;
    if *plugged == on {
        return Err(Refusal::AlreadySo);
    }
    *plugged = on;
    turn.pass(time);
    if !on {
        return Ok(Shown::Done);
    }
    Ok(Shown::DoneWith { sights: seen(&turn.s.home.plant).filter(|sight| is_at(sight, leg)).collect() })
}

fn is_at(sight: &Sight, at: Stab) -> bool {
    matches!(sight, Sight::Portable { leg, .. } if *leg == at)
}

/// Each that is plugged in, and how it glows on the volts it has.
pub(super) fn seen(plant: &Plant) -> impl Iterator<Item = Sight> {
    let plugged = Stab::ALL.iter().copied().zip(plant.service.portable).filter(|(_, plugged)| *plugged);
    plugged.map(|(leg, _)| Sight::Portable { leg, glow: glow(plant, leg) })
}

fn glow(plant: &Plant, leg: Stab) -> Glow {
    let bus = match leg {
        Stab::One => Screw::M1,
        Stab::Two => Screw::M2,
    };
    let share = plant.standing().volts(bus.into(), Screw::N.into()) / plant::supply::LEG_120.get();
    match share * share {
        power if power >= FULL.get() => Glow::Full,
        power if power >= FELT.get() => Glow::Faint,
        _ => Glow::Dark,
    }
}
