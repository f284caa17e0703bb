//! The box in the line: handle or lever, lock, fuses, clock.

use plant::in_line::Hours;
use plant::{BoxKind, Contact, InLineBox, Place, Point, Screw, Stab};
use quantity::{Constant, Ohms, Seconds, Tag};

use super::turn::Turn;
use super::{Answered, arc, hands, meter, prove, reach, senses};
use crate::session::Session;
use crate::shown::{Refusal, Shown, Sight};

quantity::constants! {
    /// A fuse's link out of its clips. Model: as a sound contact.
    const LINK: Constant<Ohms> = Constant::of("link of a fuse out of its clips", Ohms(0.005), Tag::Model("as a sound contact"));
}

/// The box of this house.
fn fitted<'a>(turn: &'a mut Turn<'_>) -> Result<&'a mut InLineBox, Refusal> {
    turn.s.home.plant.in_line.as_mut().ok_or(Refusal::NotHere)
}

/// Throws the switch's handle, or pushes the lever of a timer behind its door. A utility's relay is sealed.
pub(super) fn throw(turn: &mut Turn, closed: bool, time: Seconds) -> Answered {
    let one = *fitted(turn)?;
    match one.kind {
        BoxKind::FusedSwitch => {}
        BoxKind::Timer => reach::place(&turn.s, Place::InLineBox)?,
        BoxKind::UtilityRelay => return Err(Refusal::Sealed),
    }
    if one.closed == closed {
        return Err(Refusal::AlreadySo);
    }
    if closed && one.locked {
        return Err(Refusal::Locked);
    }
    turn.throw_box(closed);
    turn.pass(time);
    Ok(Shown::DoneWith { sights: face(&turn.s) })
}

/// Own lock and tag on the handle. Only a switch has a hasp.
pub(super) fn lock(turn: &mut Turn, on: bool, time: Seconds) -> Answered {
    let one = fitted(turn)?;
    if one.kind != BoxKind::FusedSwitch {
        return Err(Refusal::NoHasp);
    }
    if on && one.closed {
        return Err(Refusal::NotOff);
    }
    if one.locked == on {
        return Err(Refusal::AlreadySo);
    }
    one.locked = on;
    one.tagged = on;
    if !on {
        prove::forget(&mut turn.s.me);
    }
    turn.pass(time);
    Ok(Shown::DoneWith { sights: face(&turn.s) })
}

/// The screws that a fuse lies between.
const fn beside(leg: Stab) -> [Screw; 2] {
    match leg {
        Stab::One => [Screw::X1, Screw::X3],
        Stab::Two => [Screw::X2, Screw::X4],
    }
}

/// The box with its fuses in reach.
fn fuses(turn: &mut Turn, leg: Stab) -> Result<(), Refusal> {
    let one = *fitted(turn)?;
    let there = one.is_fused() && senses::there(&turn.s.home.plant, Point::Screw(beside(leg)[1]));
    if !there {
        return Err(Refusal::NotHere);
    }
    reach::place(&turn.s, Place::InLineBox)
}

/// Pulls a fuse out of its clips or puts it back. Under load it breaks the current in the hand.
pub(super) fn pull(turn: &mut Turn, leg: Stab, out: bool, time: Seconds) -> Answered {
    fuses(turn, leg)?;
    let at = leg as usize;
    if fitted(turn)?.pulled.get(at) == Some(&out) {
        return Err(Refusal::AlreadySo);
    }
    let [line, load] = beside(leg).map(Point::Screw);
    let wire = [plant::Wire::WhipA, plant::Wire::WhipB][at & 1];
    let gap = |turn: &Turn| turn.s.home.plant.standing().volts(line, load).abs();
    let (current, before) = (arc::amps(&turn.s.home.plant, wire), gap(turn));
    hands::touch(turn, load, hands::Grip::Grasps);
    hands::touch(turn, line, hands::Grip::Touches);
    if let Some(pulled) = fitted(turn)?.pulled.get_mut(at) {
        *pulled = out;
    }
    let spark = if out {
        arc::spark(load, gap(turn), current)
    } else {
        arc::spark(load, before, arc::amps(&turn.s.home.plant, wire))
    };
    turn.pass(time);
    arc::tell(turn, spark);
    Ok(Shown::DoneWith { sights: face(&turn.s) })
}

/// Ohms through a fuse out of its clips, leads on its caps.
pub(super) fn test(turn: &mut Turn, leg: Stab, time: Seconds) -> Answered {
    fuses(turn, leg)?;
    let one = *fitted(turn)?;
    if one.pulled.get(leg as usize) != Some(&true) {
        return Err(Refusal::FuseIn);
    }
    let path = match one.fuses.get(leg as usize).copied() {
        Some(Contact::Sound) => Some(LINK.get()),
        Some(Contact::Worn(r)) => Some(r),
        Some(Contact::Open) | None => None,
    };
    turn.pass(time);
    Ok(Shown::Meter { display: meter::loose(turn, path, time) })
}

/// Sets a timer's clock to the time of day.
pub(super) fn set_clock(turn: &mut Turn, time: Seconds) -> Answered {
    match fitted(turn)?.kind {
        BoxKind::Timer => reach::place(&turn.s, Place::InLineBox)?,
        BoxKind::UtilityRelay => return Err(Refusal::Sealed),
        BoxKind::FusedSwitch => return Err(Refusal::NotHere),
    }
    let now = turn.s.home.plant.clock;
    turn.set_clock(now);
    turn.pass(time);
    Ok(Shown::DoneWith { sights: face(&turn.s) })
}

/// The utility's relay of an off-peak cable: its flag and the tag on it are read from outside, whatever its contacts do.
pub(super) fn off_peak(session: &Session) -> impl Iterator<Item = Sight> {
    let relay = session.home.plant.off_peak;
    let flag = relay.map(|one| Sight::OffPeakRelay { closed: one.closed });
    flag.into_iter().chain(relay.and_then(|one| one.hours).map(|kept| hours(session, kept)))
}

/// What a clock shows, and the hours it keeps.
fn hours(session: &Session, kept: Hours) -> Sight {
    let shows = kept.shows(session.home.plant.clock);
    Sight::BoxHours { shows, off_from: kept.off_from, off_for: kept.off_for }
}

/// What is seen of the box: its kind and handle from outside, lever, clock and clips behind the door.
pub(super) fn face(session: &Session) -> Vec<Sight> {
    let plant = &session.home.plant;
    let Some(one) = plant.in_line else { return Vec::new() };
    let open = reach::place(session, Place::InLineBox).is_ok();
    let outside = one.kind == BoxKind::FusedSwitch;
    let closed = (outside || open).then_some(one.closed);
    let mut sights = vec![Sight::Box { kind: one.kind, closed, locked: one.locked }];
    if !open {
        return sights;
    }
    sights.extend(one.hours.map(|kept| hours(session, kept)));
    for (leg, out) in [(Stab::One, one.pulled[0]), (Stab::Two, one.pulled[1])] {
        if out {
            sights.push(Sight::FuseOut { leg });
        }
    }
    sights
}
