//! Lifting, labelling, landing and re-making wires.

use plant::{End, Plant, Point, Screw};
use quantity::{Constant, Kelvins, Ohms, Seconds, Tag};

use super::turn::Turn;
use super::{Answered, arc, hands, reach, senses};
use crate::shown::{Fact, Refusal, Shown};

quantity::constants! {
    /// A screw turned down by feel. Model: tighter than what burns, looser than what was meant.
    pub(super) const BY_FEEL: Constant<Ohms> = Constant::of("a screw turned down by feel", Ohms(0.01), Tag::Model("tighter than what burns, looser than what was meant"));
}

fn joint_of(torqued: bool) -> Ohms {
    if torqued { plant::SOUND_JOINT } else { BY_FEEL.get() }
}

fn in_reach(turn: &Turn, end: End) -> Result<(), Refusal> {
    reach::point(&turn.s, Point::End(end))
}

/// Takes a wire off its screw.
pub(super) fn lift(turn: &mut Turn, end: End, time: Seconds) -> Answered {
    in_reach(turn, end)?;
    let Some(screw) = turn.s.home.plant.wiring.joint(end).on else {
        return Err(Refusal::WireLifted { end });
    };
    let current = arc::amps(&turn.s.home.plant, end.wire);
    hands::touch(turn, Point::Screw(screw), hands::Grip::Grasps);
    // Its end stays in the hand: power that comes meanwhile comes there.
    turn.hold(Point::End(end));
    turn.s.home.plant.wiring.joint_mut(end).on = None;
    let volts = gap(&turn.s.home.plant, end, screw);
    let spark = arc::spark(Point::Screw(screw), volts, current);
    lost_ground(turn, end);
    turn.pass(time);
    arc::tell(turn, spark);
    Ok(Shown::Done)
}

/// Voltage across the gap between a lifted end and a screw.
fn gap(plant: &Plant, end: End, screw: Screw) -> quantity::Volts {
    plant.standing().volts(Point::End(end), Point::Screw(screw)).abs()
}

/// With a ground wire off, the grounds beyond it are proved no more.
fn lost_ground(turn: &mut Turn, end: End) {
    if matches!(end.wire, plant::Wire::CableG | plant::Wire::Bond) {
        turn.s.me.grounds.retain(|s| !matches!(s, Screw::Jg | Screw::Shell));
    }
}

/// Marks a wire end.
pub(super) fn label(turn: &mut Turn, end: End, time: Seconds) -> Answered {
    in_reach(turn, end)?;
    let joint = turn.s.home.plant.wiring.joint(end);
    if joint.labelled {
        return Err(Refusal::AlreadySo);
    }
    // On a screw its label says that screw; among other loose ones there is nothing to write.
    if joint.on.is_none() && turn.s.loose(end).is_some() {
        return Err(Refusal::WhichWire { end });
    }
    turn.s.home.plant.wiring.joint_mut(end).labelled = true;
    turn.pass(time);
    Ok(Shown::Done)
}

/// Lands a lifted wire on a screw, its own or another.
pub(super) fn land(turn: &mut Turn, end: End, screw: Screw, torqued: bool, time: Seconds) -> Answered {
    in_reach(turn, end)?;
    if turn.s.home.plant.wiring.joint(end).on.is_some() {
        return Err(Refusal::WireLanded { end });
    }
    if !senses::there(&turn.s.home.plant, Point::Screw(screw)) {
        return Err(Refusal::NotHere);
    }
    if !reach::reaches(end.home().place(), screw) {
        return Err(Refusal::OutOfReach { screw });
    }
    let volts = gap(&turn.s.home.plant, end, screw);
    hands::touch(turn, Point::End(end), hands::Grip::Grasps);
    hands::touch(turn, Point::Screw(screw), hands::Grip::Touches);
    let joint = turn.s.home.plant.wiring.joint_mut(end);
    joint.on = Some(screw);
    joint.torqued = torqued;
    if !joint.charred {
        joint.resistance = joint_of(torqued); // a burnt end stays what it is until it is cut back
    }
    if screw != end.home() {
        turn.facts.push(Fact::Miswired { end, on: screw });
    }
    let spark = arc::spark(Point::Screw(screw), volts, arc::amps(&turn.s.home.plant, end.wire));
    turn.pass(time);
    arc::tell(turn, spark);
    Ok(Shown::Done)
}

/// Cuts a joint back to bright copper and makes it again.
pub(super) fn remake(turn: &mut Turn, end: End, torqued: bool, time: Seconds) -> Answered {
    in_reach(turn, end)?;
    let Some(screw) = turn.s.home.plant.wiring.joint(end).on else {
        return Err(Refusal::WireLifted { end });
    };
    let current = arc::amps(&turn.s.home.plant, end.wire);
    hands::touch(turn, Point::Screw(screw), hands::Grip::Grasps);
    turn.s.home.plant.wiring.joint_mut(end).on = None;
    let spark = arc::spark(Point::Screw(screw), gap(&turn.s.home.plant, end, screw), current);
    turn.pass(time);
    let joint = turn.s.home.plant.wiring.joint_mut(end);
    joint.on = Some(screw);
    joint.torqued = torqued;
    joint.charred = false;
    joint.rise = Kelvins(0.0);
    joint.resistance = joint_of(torqued);
    arc::tell(turn, spark);
    if turn.s.me.findings.is_empty() {
        turn.facts.push(Fact::RepairedWithoutFinding);
    }
    Ok(Shown::Done)
}
