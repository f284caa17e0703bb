//! A number that changes whenever the network would.

use quantity::{Constant, Tag};

use crate::{Contact, ContactAt, End, Plant, Wire};

/// Where the mixing comes from.
const SPLITMIX: Tag =
    Tag::Published("Steele, Lea and Flood 2014, Fast splittable pseudorandom number generators");

quantity::constants! {
    /// Increment and factors of the splitmix64 finaliser.
    const FINALISER: Constant<(u64, u64, u64)> = Constant::new(
        "increment and factors of the mixing of numbers",
        (0x9e37_79b9_7f4a_7c15, 0xbf58_476d_1ce4_e5b9, 0x94d0_49bb_1331_11eb),
        "",
        SPLITMIX,
    );
    /// Its shifts.
    const SHIFTS: Constant<[u32; 3]> = Constant::new("shifts of the mixing of numbers", [30, 27, 31], "", SPLITMIX);
}

/// Runs of the multiply-and-add kind: order matters, so equal values in other places differ.
struct Mix(u64);

impl Mix {
    fn add(&mut self, word: u64) {
        let (step, first, second) = FINALISER.get();
        let [a, b, c] = SHIFTS.get();
        let mut z = (self.0 ^ word).wrapping_add(step);
        z = (z ^ (z >> a)).wrapping_mul(first);
        z = (z ^ (z >> b)).wrapping_mul(second);
        self.0 = z ^ (z >> c);
    }

    fn number(&mut self, value: f64) {
        self.add(value.to_bits());
    }

    fn contact(&mut self, contact: Contact, closed: bool) {
        match (contact, closed) {
            (Contact::Sound, true) => self.add(1),
            (Contact::Worn(r), true) => self.number(r.get()),
            (Contact::Open, _) | (_, false) => self.add(2),
        }
    }
}

impl Plant {
    /// A fingerprint of everything the network is made of: while it stays the same, so does every solution
    /// with the same bridges. Far cheaper than a solution.
    pub fn electrical_state(&self) -> u64 {
        let service = &self.service;
        let mut mix = Mix(service.kind as u64);
        mix.number(service.leg.get());
        let on = service.loads;
        let ohms = [service.neutral, service.electrode, on.one, on.two, on.both];
        let ohms = service.impedance.iter().chain(&ohms);
        ohms.for_each(|ohms| mix.number(ohms.get()));
        service.portable.iter().for_each(|plugged| mix.add(u64::from(*plugged)));
        mix.number(self.beside_live.get());
        for breaker in &self.panel.breakers {
            if breaker.feeds_heater() {
                breaker.stabs.iter().for_each(|stab| mix.add(stab.map_or(2, |stab| stab as u64)));
                mix.add(breaker.feeds as u64);
                let poles = breaker.poles.iter().enumerate();
                poles.for_each(|(at, pole)| mix.contact(*pole, breaker.is_on(at)));
            }
        }
        if let Some(fitted) = &self.in_line {
            fitted.poles.iter().for_each(|pole| mix.contact(*pole, fitted.closed));
            [0, 1].iter().for_each(|leg| mix.contact(fitted.link(*leg), true));
        }
        if let Some(relay) = &self.off_peak {
            relay.poles.iter().for_each(|pole| mix.contact(*pole, relay.closed));
        }
        let wiring = &self.wiring;
        mix.add(wiring.layout as u64);
        [wiring.second_source, wiring.hot_neutral, wiring.boxed]
            .iter()
            .for_each(|on| mix.add(u64::from(*on)));
        for end in End::all() {
            let joint = self.wiring.joint(end);
            mix.add(joint.on.map_or(u64::MAX, |screw| screw.index() as u64));
            mix.number(joint.resistance.get());
        }
        for wire in Wire::ALL {
            mix.number(self.conductor_ohms(*wire).get());
            // Strays go by the metre.
            mix.number(wiring.length(*wire).get());
        }
        if let Some(limit) = &self.lower_limit {
            limit.poles.iter().enumerate().for_each(|(i, pole)| mix.contact(*pole, limit.closed(i)));
        }
        ContactAt::ALL.iter().for_each(|&at| mix.contact(self.contact(at).0, self.makes(at)));
        if self.board.is_some() {
            self.sensor_ohms().iter().for_each(|ohms| mix.number(ohms.get()));
        }
        for (&level, element) in crate::Level::ALL.iter().zip(&self.elements) {
            mix.number(element.insulation().get());
            if let Some(track) = self.track(level) {
                mix.number(track.get());
            }
            let leak = self.conducting_leak(level);
            mix.number(element.coil().get());
            mix.add(u64::from(element.is_broken()));
            // A fault in the coil is a node of its own, whether it conducts or not.
            mix.add(u64::from(element.leak.is_some()));
            let leak = leak.map_or([-1.0; 2], |leak| [leak.fraction, leak.resistance.get()]);
            leak.iter().for_each(|number| mix.number(*number));
        }
        mix.0
    }
}
