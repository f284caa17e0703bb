//! Contacts of thermostats and limit: each heats by its own loss, chars, welds, at last burns open.

use quantity::{Amps, Constant, Kelvins, Ohms, Seconds, Tag, Watts, det};

use super::joint::{CHARS_AT, COLD, OPENS_AT, time_to};
use crate::electrical::Live;
use crate::{Contact, ContactAt, Happening, Layout, Plant, Spot};

quantity::constants! {
    /// Temperature rise of a contact for each watt in it.
    pub const RISE_PER_WATT: Constant = Constant::new(
        "temperature rise of a contact",
        10.0,
        "K/W",
        Tag::Model("as a joint: two blades and their wires; 163 W are far past burning"),
    );
    /// Time constant of a contact.
    pub const CONTACT_LAG: Constant = Constant::new(
        "time constant of a contact",
        120.0,
        "s",
        Tag::Model("some 12 J/K of blade, rivet and screw: lighter than a splice"),
    );
    /// Rise at which a closed contact welds.
    pub const WELDS_AT: Constant = Constant::new(
        "rise that welds a closed contact",
        450.0,
        "K",
        Tag::Model("45 W, 0.13 ohm at 18.75 A: silver well past its 180 °C of softening, blade sprung on it"),
    );
    /// Current that welds a contact at once.
    pub const WELDS_WITH: Constant<Amps> = Constant::of(
        "current that welds a contact",
        Amps(1000.0),
        Tag::Model("some thirty times the 30 A rating of a control; a breaker's magnet spares it below that"),
    );
    /// Loss below which a cool contact is left alone.
    const COOL: Constant<Watts> = Constant::of(
        "loss that leaves a contact cool",
        Watts(4.5),
        Tag::Computed("5 milliohms at the 30 A of a control's rating"),
    );
    /// The same of a limit's sound pole.
    const LIMIT_COOL: Constant<Watts> = Constant::of(
        "loss that leaves a limit's sound pole cool",
        Watts(8.0),
        Tag::Computed("5 milliohms at the 40 A of a limit's rating (control installation sheet)"),
    );
    /// Growth of a worn contact's resistance each time it opens hot.
    pub const WEAR: Constant = Constant::new(
        "growth of a hot contact's resistance each time it opens",
        0.01,
        "",
        Tag::Model("doubles in some seventy cycles: weeks from the first browning to a burnt contact"),
    );
}

impl Plant {
    /// How a contact is, and what heat has made of it.
    pub fn contact(&self, at: ContactAt) -> (Contact, Spot) {
        let [upper, lower] = &self.thermostats;
        match at {
            ContactAt::UpperCold => (upper.cold_contact, upper.cold_spot),
            ContactAt::UpperHot => (upper.hot_contact, upper.hot_spot),
            ContactAt::LowerCold => (lower.cold_contact, lower.cold_spot),
            ContactAt::LimitOne => (self.limit.poles[0], self.limit.spots[0]),
            ContactAt::LimitTwo => (self.limit.poles[1], self.limit.spots[1]),
        }
    }

    fn contact_mut(&mut self, at: ContactAt) -> (&mut Contact, &mut Spot) {
        let [upper, lower] = &mut self.thermostats;
        match at {
            ContactAt::UpperCold => (&mut upper.cold_contact, &mut upper.cold_spot),
            ContactAt::UpperHot => (&mut upper.hot_contact, &mut upper.hot_spot),
            ContactAt::LowerCold => (&mut lower.cold_contact, &mut lower.cold_spot),
            ContactAt::LimitOne => (&mut self.limit.poles[0], &mut self.limit.spots[0]),
            ContactAt::LimitTwo => (&mut self.limit.poles[1], &mut self.limit.spots[1]),
        }
    }

    /// Whether a contact stands closed.
    pub fn makes(&self, at: ContactAt) -> bool {
        match at {
            ContactAt::UpperCold => self.thermostats[0].blade_calls() && !self.thermostats[0].misses(),
            ContactAt::UpperHot => !self.thermostats[0].blade_calls(),
            // A board closes one relay at a time, the upper element's first.
            ContactAt::LowerCold => {
                let waits = self.wiring.layout == Layout::Electronic && self.thermostats[0].blade_calls();
                let lower = &self.thermostats[1];
                lower.stuck.unwrap_or(lower.calling && !waits) && !lower.misses()
            }
            ContactAt::LimitOne => self.limit.closed(0),
            ContactAt::LimitTwo => self.limit.closed(1),
        }
    }

    /// Welds a contact where it stands closed.
    fn weld(&mut self, at: ContactAt) {
        match at {
            ContactAt::UpperCold => self.thermostats[0].stuck = Some(true),
            ContactAt::UpperHot => self.thermostats[0].stuck = Some(false),
            ContactAt::LowerCold => self.thermostats[1].stuck = Some(true),
            ContactAt::LimitOne => self.limit.welded[0] = true,
            ContactAt::LimitTwo => self.limit.welded[1] = true,
        }
    }

    fn is_welded(&self, at: ContactAt) -> bool {
        match at {
            ContactAt::UpperCold => self.thermostats[0].stuck == Some(true),
            ContactAt::UpperHot => self.thermostats[0].stuck == Some(false),
            ContactAt::LowerCold => self.thermostats[1].stuck == Some(true),
            ContactAt::LimitOne => self.limit.welded[0],
            ContactAt::LimitTwo => self.limit.welded[1],
        }
    }
}

/// Rise that a contact goes towards; nothing where a cool one is left alone. A limit is made for more than a thermostat:
/// else its own sound poles would bring it near its trip where an element draws too much.
pub(super) fn settles(plant: &Plant, at: ContactAt, watts: Watts, sturdiness: f64) -> Option<Kelvins> {
    let (contact, spot) = plant.contact(at);
    let is_pole = matches!(at, ContactAt::LimitOne | ContactAt::LimitTwo);
    let most = if is_pole && contact == Contact::Sound { LIMIT_COOL } else { COOL };
    let cool = watts.get() < sturdiness * most.get().get() && spot.rise.get() == 0.0;
    (!cool).then(|| Kelvins(watts.get() * RISE_PER_WATT.get()))
}

/// Lets time pass in every contact. Returns those that welded or burnt open, with the moment.
pub(super) fn advance(plant: &mut Plant, time: Seconds, live: &Live) -> Vec<(Seconds, Happening)> {
    let mut happened = Vec::new();
    let mut keeps = None;
    let sturdy = super::sturdiness(plant);
    for &at in ContactAt::ALL {
        let watts = live.contact_watts(at).get();
        let Some(end) = settles(plant, at, Watts(watts), sturdy) else { continue };
        let keeps = *keeps.get_or_insert_with(|| det::exp(-time.get() / CONTACT_LAG.get()));
        let start = plant.contact(at).1.rise.get();
        let settles = end.get();
        let rise = settles + (start - settles) * keeps;
        let when = |level: f64| time_to(start, settles, level, CONTACT_LAG.get());
        let inrush = live.contact_amps(at) >= WELDS_WITH.get();
        if plant.makes(at) && !plant.is_welded(at) && (inrush || rise >= WELDS_AT.get()) {
            plant.weld(at);
            let when = if inrush { Seconds(0.0) } else { when(WELDS_AT.get()) };
            happened.push((when, Happening::ContactWelded { at }));
        }
        let (contact, spot) = plant.contact_mut(at);
        spot.rise = Kelvins(if rise < COLD.get().get() { 0.0 } else { rise });
        spot.charred |= rise >= CHARS_AT.get();
        if rise >= OPENS_AT.get() && settles > OPENS_AT.get() {
            *contact = Contact::Open;
            happened.push((when(OPENS_AT.get()), Happening::ContactBurnt { at }));
        }
    }
    happened
}

/// How long until the first contact burns open, currents staying as they are. One that welds on the way is found
/// at the end of the step it welds in, with its moment.
pub(super) fn earliest(plant: &Plant, live: &Live) -> Seconds {
    let mut soonest = f64::INFINITY;
    for &at in ContactAt::ALL {
        let settles = live.contact_watts(at).get() * RISE_PER_WATT.get();
        if settles > OPENS_AT.get() {
            let start = plant.contact(at).1.rise.get();
            soonest = soonest.min(time_to(start, settles, OPENS_AT.get(), CONTACT_LAG.get()).get());
        }
    }
    Seconds(soonest)
}

/// A worn contact that opens while hot burns a little more each time.
pub(super) fn wear(contact: &mut Contact, spot: &Spot) {
    if let (Contact::Worn(r), true) = (*contact, spot.rise.get() >= CHARS_AT.get()) {
        let grown = 1.0 + WEAR.get() * spot.rise.get() / CHARS_AT.get();
        *contact = Contact::Worn(Ohms(r.get() * grown));
    }
}
