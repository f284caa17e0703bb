//! What is there to be heard and seen in a house at the ring, from its state: noises, grit, a weak flow, an odd part.

use quantity::{Amps, Constant, Ohms, Seconds, Tag};

use super::week::{Week, Worked};
use crate::electrical::Bridge;
use crate::home::Home;
use crate::installation::Discharge;
use crate::parts::Element;
use crate::points::{End, Screw};
use crate::supply::{Circuit, Loads};
use crate::waterworks::{SETTLED, Tap};

quantity::constants! {
    /// Least part of its rated power by which a fitted element tells from the plate's.
    const ODD: Constant =
        Constant::new("rated power off the plate's that makes an odd part", 0.02, "", Tag::Model("stamps are round numbers"));
    /// A charred joint below this still carries current.
    const BURNT_OFF: Constant<Ohms> =
        Constant::of("resistance of a joint that carries nothing", Ohms(1e3), Tag::Model("far above any that heats"));
    /// Voltage over the usual at which lamps are seen to be dim, and too bright.
    const LIGHTS: Constant<(f64, f64)> =
        Constant::new("share of the usual voltage at which lamps are dim, too bright", (0.90, 1.08), "", Tag::Model("a lamp's light goes with the third power and more"));
    /// A body from hand to hand.
    const BODY: Constant<Ohms> =
        Constant::of("body from hand to hand", Ohms(2000.0), Tag::Memory("IEC 60479-1 table 1, 75 V, 50 %"));
    /// Current that is felt.
    const FELT: Constant<Amps> =
        Constant::of("current that is felt", Amps(0.0005), Tag::Published("elektrika.cz on IEC 60479-1: line a, 0.5 mA"));
}

/// Writes it down at the end of the week.
pub(super) fn note(week: &mut Week, home: &Home, calling: Seconds) {
    let plant = &home.plant;
    let sediment = plant.vessel.sediment > SETTLED.get();
    week.rumbles = plant.elements.iter().any(Element::is_crusted) && calling > Seconds(0.0);
    week.ticks = plant.would_tick();
    week.grit = sediment || plant.vessel.dip_tube != crate::waterworks::DipTube::Whole;
    let plate = plant.plate.element;
    week.odd_part = plant.elements.iter().any(|one| {
        let (watts, volts) =
            (one.stamp.watts.get() / plate.watts.get(), one.stamp.volts.get() / plate.volts.get());
        (watts - 1.0).abs() > ODD.get() || (volts - 1.0).abs() > ODD.get()
    });
    let mut open = home.clone();
    for tap in &mut open.plant.plumbing.taps {
        *tap = 0.0;
    }
    if let Some(tap) = open.plant.plumbing.taps.get_mut(Tap::Bath.index()) {
        *tap = 1.0;
    }
    week.spits = plant.would_spit(Tap::Bath);
    let now = open.plant.tap_flow(Tap::Bath).0;
    open.make_sound();
    let sound = open.plant.tap_flow(Tap::Bath).0;
    week.strong = if sound > 0.0 { now / sound } else { 1.0 };
}

/// What somebody's hands left, as the house stands: wires by the diagram, pipes, breaker, limit, discharge.
pub(super) fn worked(home: &Home) -> Worked {
    let plant = &home.plant;
    let wiring = &plant.wiring;
    let astray: Vec<(Screw, Option<Screw>)> = End::all()
        .filter(|end| wiring.exists(end.wire))
        .map(|end| (end.home(), wiring.joint(end).on))
        .filter(|(home, on)| *on != Some(*home))
        .collect();
    // Each on the other's screw: both were off at once.
    let swapped =
        |(home, on): &(Screw, Option<Screw>)| on.is_some_and(|on| astray.contains(&(on, Some(*home))));
    let one_leg = plant.panel.feeding(Circuit::Heater).is_some_and(|b| {
        let [first, second] = b.stabs;
        first.is_some() && first == second
    });
    let capped = home.installation.discharge == Discharge::Capped;
    Worked {
        touched: !astray.is_empty()
            || plant.plumbing.reversed
            || one_leg
            || home.installation.bridged
            || capped,
        changed: astray.iter().any(swapped),
    }
}

/// A joint that is charred and not burnt off, or a browned contact that is worn, gives itself away by smell whenever it
/// carries current. A contact once browned by another's current and sound runs cool.
pub(super) fn charred_and_carrying(home: &Home) -> bool {
    let contact = |at: &crate::ContactAt| {
        let (contact, spot) = home.plant.contact(*at);
        spot.charred && matches!(contact, crate::Contact::Worn(_))
    };
    let joint = |end| {
        let joint = home.plant.wiring.joint(end);
        joint.charred && joint.resistance < BURNT_OFF.get()
    };
    End::all().any(joint) || crate::ContactAt::ALL.iter().any(contact)
}

/// Whether lamps on either leg are dim or out, and whether some are too bright.
pub(super) fn lights(home: &Home) -> [bool; 2] {
    let service = &home.plant.service;
    if service.kind.hot_neutral() && service.loads == Loads::NONE {
        return [false; 2];
    }
    let live = home.plant.energise(&[]);
    let legs = [(Screw::M1, service.loads.one), (Screw::M2, service.loads.two)];
    let lit = legs.iter().filter(|(_, load)| load.get().is_finite());
    let share = lit.map(|(leg, _)| live.volts((*leg).into(), Screw::N.into()).get() / service.leg.get());
    let (dim, bright) = LIGHTS.get();
    share.fold([false; 2], |seen, share| [seen[0] || share < dim, seen[1] || share > bright])
}

/// Whether a hand on the tank's metal and one on the pipe feel a current: breakers as they stand, and an element at work
/// or not.
pub(super) fn tingles(home: &Home) -> bool {
    let bridge = Bridge::ohms(Screw::Shell.into(), Screw::Pipe.into(), BODY.get());
    home.plant.energise(&[bridge]).bridge_amps(0) > FELT.get()
}
