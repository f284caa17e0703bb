//! A loose joint: heats by its own loss, browns its insulation, at last opens.

use quantity::{Constant, Kelvins, Ohms, Seconds, Tag, Watts, det};

use crate::electrical::Live;
use crate::parts::BURNT_OFF;
use crate::{End, Wiring};

quantity::constants! {
    /// Temperature rise of a joint for each watt in it.
    pub const RISE_PER_WATT: Constant = Constant::new(
        "temperature rise of a joint",
        10.0,
        "K/W",
        Tag::Model("a splice with two 10 AWG wires as cooling fins"),
    );
    /// Time constant of a joint.
    pub const JOINT_LAG: Constant = Constant::new(
        "time constant of a joint",
        400.0,
        "s",
        Tag::Model("some 40 J/K of copper, spring and shell"),
    );
    /// Rise that browns insulation.
    pub const CHARS_AT: Constant = Constant::new(
        "rise that chars insulation",
        80.0,
        "K",
        Tag::Model("wire rated 105 °C in a 25 °C room; so 0.5 V at 18.75 A, fault F24, just chars"),
    );
    /// Rise at which a joint burns open.
    pub const OPENS_AT: Constant = Constant::new(
        "rise that opens a joint",
        600.0,
        "K",
        Tag::Model("above 60 W, 3 V at 18.75 A; between 1 V and that F23 stays hot"),
    );
    /// Loss below which a cool joint is left alone.
    const COOL: Constant<Watts> =
        Constant::of("loss that leaves a joint cool", Watts(0.75), Tag::Model("a sound one has 0.4 W at 18.75 A"));
    /// Rise of a hot cycle.
    const HOT_CYCLE: Constant<Kelvins> =
        Constant::of("rise that counts as a hot cycle", Kelvins(20.0), Tag::Model("aluminium flows under a copper screw"));
    /// Growth of the joint's resistance by one hot cycle of aluminium in a connector for copper.
    const CREEP: Constant = Constant::new(
        "growth of a joint of aluminium by a hot cycle",
        1.03,
        "",
        Tag::Model("twice as bad after 23 cycles, some weeks of a household"),
    );
    /// Rise below which a joint counts as cold.
    pub(super) const COLD: Constant<Kelvins> =
        Constant::of("rise below which a joint is cold", Kelvins(0.01), Tag::Model("nothing a hand or glass would see"));
}

/// Rise that a joint goes towards; nothing where a cool one is left alone.
pub(super) fn settles(rise: Kelvins, watts: Watts, sturdiness: f64) -> Option<Kelvins> {
    let cool = watts.get() < sturdiness * COOL.get().get() && rise.get() == 0.0;
    (!cool).then(|| Kelvins(watts.get() * RISE_PER_WATT.get()))
}

/// Lets time pass in every joint, built for so many times an ordinary one's heat. Returns those that opened, with the moment.
pub fn advance(wiring: &mut Wiring, time: Seconds, live: &Live, sturdiness: f64) -> Vec<(End, Seconds)> {
    let mut opened = Vec::new();
    let mut keeps = None;
    for end in End::all() {
        let watts = live.joint_watts(end).get();
        let joint = wiring.joint(end);
        let Some(goes_to) = settles(joint.rise, Watts(watts), sturdiness) else { continue };
        let keeps = *keeps.get_or_insert_with(|| det::exp(-time.get() / JOINT_LAG.get()));
        let start = joint.rise.get();
        let settles = goes_to.get();
        let rise = settles + (start - settles) * keeps;
        let creeps = wiring.conductor(end.wire).creeps() && start < HOT_CYCLE.get().get();
        let joint = wiring.joint_mut(end);
        if creeps && rise >= HOT_CYCLE.get().get() {
            joint.resistance = Ohms(joint.resistance.get() * CREEP.get());
        }
        joint.rise = Kelvins(if rise < COLD.get().get() { 0.0 } else { rise });
        joint.charred |= rise >= CHARS_AT.get();
        if rise >= OPENS_AT.get() && settles > OPENS_AT.get() {
            joint.resistance = BURNT_OFF;
            opened.push((end, time_to(start, settles, OPENS_AT.get(), JOINT_LAG.get())));
        }
    }
    opened
}

/// How long until the first joint opens, currents staying as they are.
pub fn earliest(wiring: &Wiring, live: &Live) -> Seconds {
    let mut soonest = f64::INFINITY;
    for end in End::all() {
        let settles = live.joint_watts(end).get() * RISE_PER_WATT.get();
        if settles > OPENS_AT.get() {
            let start = wiring.joint(end).rise.get();
            soonest = soonest.min(time_to(start, settles, OPENS_AT.get(), JOINT_LAG.get()).get());
        }
    }
    Seconds(soonest)
}

/// How long a rise takes from its start to a level below where it settles.
pub(super) fn time_to(start: f64, settles: f64, level: f64, lag: f64) -> Seconds {
    if start >= level { Seconds(0.0) } else { Seconds(lag * det::ln((settles - start) / (settles - level))) }
}
