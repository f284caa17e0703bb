//! What is there to be heard and seen in a house at the ring, from its state: noises, grit, a weak flow, an odd part.

use quantity::{Constant, Seconds, Tag};

use super::week::Week;
use crate::home::Home;
use crate::parts::Element;
use crate::waterworks::SETTLED;
use crate::waterworks::Tap;

quantity::constants! {
    /// Least part of its rated power by which a fitted element tells from the plate's.
    const ODD: Constant =
        Constant::new("rated power off the plate's that makes an odd part", 0.02, "", Tag::Model("stamps are round numbers"));
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
    week.spits = Tap::ALL.iter().any(|tap| open.plant.tap_spits(*tap));
    let now = open.plant.tap_flow(Tap::Bath).0;
    open.make_sound();
    let sound = open.plant.tap_flow(Tap::Bath).0;
    week.strong = if sound > 0.0 { now / sound } else { 1.0 };
}
