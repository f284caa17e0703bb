//! A time-delay fuse: heat stored in its link against what melts it.

use quantity::{Amps, Constant, Seconds, Tag, det};

use crate::electrical::Live;
use crate::{Contact, Happening, InLineBox, Wire};

quantity::constants! {
    /// Multiple of its rating that a link carries for ever, just.
    pub const HOLDS: Constant = Constant::new(
        "current a fuse holds for ever, of its rating",
        1.15,
        "",
        Tag::Memory("UL 248-12: above the 1.10 it must carry and below the 1.35 that must open it within an hour"),
    );
    /// Time constant of a link.
    pub const LINK_LAG: Constant = Constant::new(
        "time constant of a fuse's link",
        200.0,
        "s",
        Tag::Memory("UL 248-12, class RK5 with time delay: at least 10 s at five times the rating; here 80 s at twice it"),
    );
    /// Multiple of its rating from which the short-circuit part of the link goes.
    pub const SHORT: Constant = Constant::new(
        "current of a fuse's short-circuit part, of its rating",
        12.0,
        "",
        Tag::Memory("time-current curves of dual-element class RK5 fuses"),
    );
    /// Time that part takes.
    const INSTANT: Constant<Seconds> =
        Constant::of("time a fuse takes in a short circuit", Seconds(0.008), Tag::Memory("within half a cycle, UL 248-12"));
    /// Heat below which a link counts as cold.
    const COLD: Constant =
        Constant::new("heat below which a link is cold", 1e-6, "of melting", Tag::Model("a millionth of it"));
}

/// Heat a link settles at under a current, 1 being what melts it.
fn settles(rating: Amps, amps: Amps) -> f64 {
    let ratio = amps.get().abs() / (HOLDS.get() * rating.get());
    ratio * ratio
}

/// The wires that carry the currents of the two links.
const LEGS: [Wire; 2] = [Wire::WhipA, Wire::WhipB];

impl InLineBox {
    /// How long a link holds a current from its present heat; infinite where it does for ever.
    pub fn time_to_melt(&self, leg: usize, amps: Amps) -> Seconds {
        if !self.is_fused() || self.link(leg) == Contact::Open {
            return Seconds(f64::INFINITY);
        }
        if amps.get().abs() >= SHORT.get() * self.rating.get() {
            return INSTANT.get();
        }
        let heat = self.heat.get(leg).copied().unwrap_or_default();
        let end = settles(self.rating, amps);
        if end <= 1.0 {
            return Seconds(f64::INFINITY);
        }
        if heat >= 1.0 {
            return Seconds(0.0);
        }
        Seconds(LINK_LAG.get() * det::ln((end - heat) / (end - 1.0)))
    }
}

/// Lets time pass in both links. Returns those that melted, each with its moment.
pub(super) fn advance(fitted: &mut InLineBox, time: Seconds, live: &Live) -> Vec<(Seconds, Happening)> {
    let mut happened = Vec::new();
    let mut keeps = None;
    for (leg, wire) in LEGS.into_iter().enumerate() {
        let amps = live.amps(wire);
        let melts = fitted.time_to_melt(leg, amps);
        let end = settles(fitted.rating, amps);
        let Some(heat) = fitted.heat.get_mut(leg) else { continue };
        if *heat == 0.0 && end < COLD.get() {
            continue;
        }
        let keeps = *keeps.get_or_insert_with(|| det::exp(-time.get() / LINK_LAG.get()));
        *heat = (end + (*heat - end) * keeps).min(1.0);
        if *heat < COLD.get() && end < COLD.get() {
            *heat = 0.0;
        }
        if melts <= time
            && let Some(link) = fitted.fuses.get_mut(leg)
        {
            *link = Contact::Open;
            happened.push((melts, Happening::FuseMelted { leg: leg as u32 }));
        }
    }
    happened
}

/// How long until the first link melts, currents staying as they are.
pub(super) fn earliest(fitted: &InLineBox, live: &Live) -> Seconds {
    let times = LEGS.into_iter().enumerate().map(|(leg, wire)| fitted.time_to_melt(leg, live.amps(wire)));
    Seconds(times.fold(f64::INFINITY, |soonest, time| soonest.min(time.get())))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::BoxKind;
    use crate::electrical::fixtures::{blades, plant};

    fn time(rating: f64, amps: f64) -> f64 {
        InLineBox::sound(BoxKind::FusedSwitch, Amps(rating)).time_to_melt(0, Amps(amps)).get()
    }

    /// UL 248-12, class RK5 with time delay, up to 30 A (from memory): carries 110 %; opens within an hour at 135 % and
    /// within two minutes at 200 %; holds 500 % for ten seconds.
    #[test]
    fn keeps_the_time_current_points() {
        assert_eq!(time(30.0, 33.0), f64::INFINITY);
        assert!((60.0..=3600.0).contains(&time(30.0, 40.5)));
        assert!((10.0..=120.0).contains(&time(30.0, 60.0)));
        assert!(time(30.0, 150.0) >= 10.0);
        assert!(time(30.0, 400.0) < 0.02);
        let timer = InLineBox::sound(BoxKind::Timer, Amps(30.0));
        assert_eq!(timer.time_to_melt(0, Amps(400.0)).get(), f64::INFINITY);
    }

    /// 25 A through fuses of 20 A, some minutes at a time: melted at the moment one long step gives.
    #[test]
    fn a_link_too_small_for_its_heater_melts() {
        let run = |steps: u32| {
            let mut plant = plant();
            blades(&mut plant, true, false);
            plant.put_in_line(InLineBox::sound(BoxKind::FusedSwitch, Amps(15.0)));
            let live = plant.energise(&[]);
            let mut fitted = plant.in_line.unwrap();
            let step = Seconds(1800.0 / f64::from(steps));
            let mut at = None;
            for i in 0..steps {
                let happened = advance(&mut fitted, step, &live);
                if let Some((when, what)) = happened.first() {
                    assert_eq!(*what, Happening::FuseMelted { leg: 0 });
                    at = at.or(Some(step.get() * f64::from(i) + when.get()));
                }
            }
            (at.unwrap(), fitted.fuses)
        };
        let (once, often) = (run(1), run(100));
        assert!((once.0 - often.0).abs() < 1e-6 && once.0 > 120.0, "{once:?} {often:?}");
        assert_eq!(once.1[0], Contact::Open);
    }
}
