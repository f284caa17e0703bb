//! What comes and goes by a state of its own: a contact that misses, a coil that parts when it is warm.

use quantity::{Constant, Draw, Kelvins, Tag, Temperature};
use serde::{Deserialize, Serialize};

quantity::constants! {
    /// A blade that has moved this far rubs its contact anew.
    const RUBS: Constant<Kelvins> = Constant::of(
        "how much further a blade is bent before it rubs its contact anew",
        Kelvins(5.0),
        Tag::Model("a blade that creeps as its body cools or its dial is turned; no source"),
    );
    /// What a body stops past the point where its blade rubs, so that rounding cannot hide it.
    const PAST: Constant<Kelvins> =
        Constant::of("what a body stops past a rub of its blade", Kelvins(1e-6), Tag::Model("rounding"));
    /// How far below its parting a coil's ends touch again.
    const REJOINS: Constant<Kelvins> = Constant::of(
        "how far below its parting a broken coil joins again",
        Kelvins::fahrenheit(12.0),
        Tag::Model("ends that slide in magnesia; no source"),
    );
}

/// A contact with a film on it: at some of its closings it does not make, and may do so after the blade has moved on.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Fickle {
    /// Share of closings that miss.
    pub share: f64,
    /// Closings so far.
    pub tries: u32,
    /// It stands closed and does not make.
    pub misses: bool,
    /// The blade stood in this position when last looked at.
    pub closed: bool,
    /// How far the blade was bent at the last closing: its dial over its body.
    pub tried_at: Kelvins,
}

impl Fickle {
    /// One that misses this share of its closings, and has not closed yet.
    pub const fn of(share: f64) -> Self {
        Self { share, tries: 0, misses: false, closed: false, tried_at: Kelvins(0.0) }
    }

    /// Bodies, the lower and the higher, at which a closed contact that misses is rubbed anew.
    pub fn rubs_at(&self, cut_out: Temperature) -> [Temperature; 2] {
        let (middle, way) = (cut_out.get() - self.tried_at.get(), RUBS.get().get() + PAST.get().get());
        [Temperature(middle - way), Temperature(middle + way)]
    }

    /// Follows the blade, bent by its body's temperature and by its dial. Returns whether the contact came or went.
    pub fn follow(&mut self, closed: bool, bent: Kelvins) -> bool {
        let was = self.misses;
        let moved = (bent.get() - self.tried_at.get()).abs() >= RUBS.get().get();
        if closed && (!self.closed || (self.misses && moved)) {
            self.tries = self.tries.saturating_add(1);
            self.tried_at = bent;
            let seed = u64::from(self.tries) ^ self.share.to_bits();
            self.misses = Draw::new(seed, "a contact closes").chance(self.share);
        }
        self.closed = closed;
        self.misses &= closed;
        self.misses != was
    }
}

/// A coil broken where its ends still touch: apart while it is warm, whole while it is cool.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Parting {
    /// Water beside it that parts it.
    pub at: Temperature,
    /// It is apart.
    pub apart: bool,
}

impl Parting {
    /// One that parts in water this warm.
    pub const fn of(at: Temperature) -> Self {
        Self { at, apart: false }
    }

    /// Follows the water beside it. Returns whether it parted or joined.
    pub fn follow(&mut self, water: Temperature) -> bool {
        let was = self.apart;
        if water >= self.at {
            self.apart = true;
        } else if water.get() <= self.at.get() - REJOINS.get().get() {
            self.apart = false;
        }
        self.apart != was
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_fickle_contact_misses_its_share_and_tries_again_as_the_blade_moves() {
        let mut contact = Fickle::of(0.5);
        let mut missed = 0;
        for n in 0..1000 {
            contact.follow(false, Kelvins(0.0));
            contact.follow(true, Kelvins(7.0));
            missed += u32::from(contact.misses);
            assert_eq!(contact.tries, n + 1);
        }
        assert!((450..550).contains(&missed), "{missed}");
        // While it misses, another 5 K of the blade are another closing.
        let mut contact = Fickle::of(1.0);
        contact.follow(true, Kelvins(7.0));
        assert!(!contact.follow(true, Kelvins(10.0)));
        assert_eq!(contact.tries, 1);
        contact.follow(true, Kelvins(13.0));
        assert_eq!((contact.tries, contact.misses), (2, true));
    }

    #[test]
    fn a_coil_parts_warm_and_joins_cool() {
        let mut coil = Parting::of(Temperature::fahrenheit(100.0));
        assert!(!coil.follow(Temperature::fahrenheit(99.0)));
        assert!(coil.follow(Temperature::fahrenheit(101.0)) && coil.apart);
        assert!(!coil.follow(Temperature::fahrenheit(90.0)) && coil.apart);
        assert!(coil.follow(Temperature::fahrenheit(87.0)) && !coil.apart);
    }
}
