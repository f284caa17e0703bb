//! What an insulation test does to a control board.

use plant::{Contact, Layout, Point, Screw};
use quantity::{Constant, Ohms, Tag, Volts};

use super::turn::Turn;
use crate::action::Jack;
use crate::instrument::insulation;
use crate::person::Harm;

/// The test voltage of the insulation function on a control board that still hangs on the circuit: its relays
/// never close again (trade sheet 10.3: never with electronics connected).
pub(super) fn stress(turn: &mut Turn, red: Point, black: Point) {
    let me = &turn.s.me;
    let off = me.jack == Jack::Amps || me.fuse_blown || !me.lead_passes(&turn.s.job.kit, turn.step);
    let plant = &turn.s.home.plant;
    if off || plant.wiring.layout != Layout::Electronic {
        return;
    }
    let joined = |at: Point| {
        BOARD.iter().any(|screw| {
            let screw = Point::Screw(*screw);
            at == screw || plant.resistance(at, screw).is_some_and(|r| r <= HANGS_ON.get())
        })
    };
    let spoilt = turn.s.home.plant.thermostats.iter().all(|t| t.cold_contact == Contact::Open);
    if spoilt || !(joined(red) || joined(black)) {
        return;
    }
    for relay in &mut turn.s.home.plant.thermostats {
        relay.cold_contact = Contact::Open;
    }
    turn.harms.push(Harm::BoardDamaged { volts: Volts(insulation::TEST_VOLTS.get()) });
}

quantity::constants! {
    /// A path up to this carries the test voltage to a board: an element and its leads.
    const HANGS_ON: Constant<Ohms> = Constant::of("path that carries the test voltage to a board", Ohms(1000.0), Tag::Model("more than any element and its leads"));
}

/// Screws of a control board.
const BOARD: [Screw; 4] = [Screw::K1, Screw::K2, Screw::K3, Screw::K4];
