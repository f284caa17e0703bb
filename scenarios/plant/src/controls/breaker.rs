//! A thermal-magnetic breaker: heat stored in each pole against what trips it.

use quantity::{Amps, Constant, Kelvins, Seconds, Tag, det};

use crate::Contact;
use crate::supply::{Breaker, Circuit, Handle, Stab};

quantity::constants! {
    /// Multiple of its rating that a pole carries for ever, just.
    pub const HOLDS: Constant = Constant::new(
        "current held for ever, of the rating",
        1.25,
        "",
        Tag::Memory("UL 489: above 1.00 and below 1.35, which must trip within an hour"),
    );
    /// Power of the current that a pole's heat goes with.
    pub const POWER: Constant =
        Constant::new("power of the current that a pole's heat goes with", 3.0, "", Tag::Model("a bimetal that bends and heats more steeply than I²"));
    /// Rise of a lug that a pole does not feel.
    const LUG_COOL: Constant<Kelvins> =
        Constant::of("rise of a lug that a pole does not feel", Kelvins(20.0), Tag::Model("a sound lug under load"));
    /// Rise of a lug beyond that which trips its pole without any current.
    const LUG_TRIPS: Constant<Kelvins> =
        Constant::of("rise of a lug that trips its pole", Kelvins(190.0), Tag::Model("its copper bar leads heat straight into the bimetal"));
    /// Time constant of a pole's bimetal.
    pub const POLE_LAG: Constant = Constant::new(
        "time constant of a breaker pole",
        357.0,
        "s",
        Tag::Memory("UL 489: at twice the rating a 30 A breaker has 2 minutes; here 100 s"),
    );
    /// Multiple of its rating at which the magnet acts.
    pub const MAGNETIC: Constant = Constant::new(
        "current of the magnetic trip, of the rating",
        7.0,
        "",
        Tag::Memory("UL 489 trip curves: only above about 5-10 times the rating"),
    );
    /// Time the magnet takes.
    const INSTANT: Constant<Seconds> =
        Constant::of("time the magnet takes", Seconds(0.02), Tag::Memory("about a cycle of 60 Hz, UL 489 curves"));
    /// Heat above which a tripped pole does not latch yet.
    const LATCHES_BELOW: Constant = Constant::new(
        "heat below which a tripped pole latches",
        0.85,
        "of a trip",
        Tag::Model("about a minute after a trip"),
    );
    /// Heat below which a pole counts as cold: no tail of tiny numbers.
    const COLD: Constant =
        Constant::new("heat below which a pole is cold", 1e-6, "of a trip", Tag::Model("a millionth of a trip"));
}

impl Breaker {
    /// A sound, cold one, closed and rightly labelled.
    pub fn sound(feeds: Circuit, rating: Amps) -> Self {
        Self {
            feeds,
            label: feeds,
            rating,
            handle: Handle::On,
            poles: [Contact::Sound; 2],
            stabs: [Some(Stab::One), Some(Stab::Two)],
            tandem: None,
            holds: 1.0,
            beside: [0.0; 2],
            heat: [0.0; 2],
            locked: false,
            tagged: false,
        }
    }

    /// A sound one of a single pole, on leg 1.
    pub fn single(feeds: Circuit, rating: Amps) -> Self {
        Self { stabs: [Some(Stab::One), None], ..Self::sound(feeds, rating) }
    }

    /// Heat a pole settles at under a current, 1 being what trips it. The third power stands for a bimetal
    /// that both bends and heats more steeply than I²: with one time constant it meets the hour at 135 %,
    /// the two minutes at 200 % and the 5 to 30 seconds at 300 % together (model).
    fn settles(&self, pole: usize, amps: Amps) -> f64 {
        let ratio = amps.get().abs() / (HOLDS.get() * self.holds * self.rating.get());
        ratio * ratio * ratio + self.beside.get(pole).copied().unwrap_or_default()
    }

    /// Takes over the warmth of the lugs on its load screws.
    pub fn warm(&mut self, lugs: [Kelvins; 2]) {
        self.beside = lugs.map(|rise| (rise.get() - LUG_COOL.get().get()).max(0.0) / LUG_TRIPS.get().get());
    }

    /// How long a pole holds a current from its present heat; infinite where it does for ever.
    pub fn time_to_trip(&self, pole: usize, amps: Amps) -> Seconds {
        if !self.is_on(pole) {
            return Seconds(f64::INFINITY);
        }
        if amps.get().abs() >= MAGNETIC.get() * self.rating.get() {
            return INSTANT.get();
        }
        let heat = self.heat.get(pole).copied().unwrap_or_default();
        let end = self.settles(pole, amps);
        if heat >= 1.0 {
            return Seconds(0.0);
        }
        if end <= 1.0 {
            return Seconds(f64::INFINITY);
        }
        Seconds(POLE_LAG.get() * det::ln((end - heat) / (end - 1.0)))
    }

    /// Lets time pass with a current in each pole. Returns when it tripped, if it did: both poles open
    /// together (common trip), of a tandem the one alone.
    pub fn advance(&mut self, time: Seconds, amps: [Amps; 2]) -> Option<Seconds> {
        let own = [0, 1].map(|pole| self.time_to_trip(pole, amps[pole]).get());
        let sooner = own[0].min(own[1]);
        if self.heat == [0.0; 2] && amps == [Amps(0.0); 2] && self.beside == [0.0; 2] {
            return None;
        }
        let opens = if self.tandem.is_some() { own } else { [sooner; 2] };
        let ends = [0, 1].map(|pole| self.settles(pole, amps[pole]));
        for (pole, (heat, end)) in self.heat.iter_mut().zip(ends).enumerate() {
            let trips = opens[pole] <= time.get();
            let loaded = if trips { opens[pole] } else { time.get() };
            let closer = end + (*heat - end) * det::exp(-loaded / POLE_LAG.get());
            *heat = closer.min(1.0);
            if trips {
                *heat *= det::exp(-(time.get() - loaded) / POLE_LAG.get());
            }
            if *heat < COLD.get() && end < COLD.get() {
                *heat = 0.0;
            }
        }
        let trips = sooner <= time.get();
        match &mut self.tandem {
            Some(tripped) => {
                for (half, opens) in tripped.iter_mut().zip(opens) {
                    *half |= opens <= time.get();
                }
                if *tripped == [true; 2] {
                    self.throw(Handle::Tripped);
                }
            }
            None if trips => self.handle = Handle::Tripped,
            None => {}
        }
        trips.then_some(Seconds(sooner))
    }

    /// Whether the handle would stay if it were thrown to on now.
    pub fn latches(&self) -> bool {
        self.heat.iter().all(|heat| *heat < LATCHES_BELOW.get())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn time(rating: f64, amps: f64) -> f64 {
        Breaker::sound(Circuit::Heater, Amps(rating)).time_to_trip(0, Amps(amps)).get()
    }

    /// Trade sheet 6.14 (UL 489, from memory): holds 100 %; 135 % within 1 h; 200 %: 30 A at most 2 min;
    /// 300 % typically 5-30 s; the magnet acts only above 5-10 times the rating.
    #[test]
    fn keeps_the_time_current_points() {
        assert_eq!(time(30.0, 30.0), f64::INFINITY);
        assert!(time(30.0, 40.5) < 3600.0 && time(30.0, 40.5) > 240.0);
        assert!(time(30.0, 60.0) <= 120.0 && time(30.0, 60.0) > 60.0);
        assert!((5.0..=30.0).contains(&time(30.0, 90.0)));
        assert!(time(30.0, 149.0) > 1.0);
        assert!(time(30.0, 301.0) < 0.1);
    }

    /// Check case 12 (6.14, computed): 93.75 A trips a 30 A breaker in 5-30 s, not at once.
    #[test]
    fn grounded_permanent_end_trips_in_seconds() {
        assert!((5.0..=30.0).contains(&time(30.0, 93.75)));
    }

    /// Trade sheet 11, statement 9 (from memory): 37.5 A takes a 30 A breaker minutes to hours, or never.
    #[test]
    fn both_elements_do_not_trip_at_once() {
        assert!(time(30.0, 37.5) > 600.0);
    }

    /// A common trip takes both poles; of a tandem each half trips by itself, and is reset through off.
    #[test]
    fn a_tandem_trips_half_by_half() {
        let trips = |breaker: &mut Breaker, amps| breaker.advance(Seconds(600.0), [Amps(amps), Amps(0.0)]);
        let mut two_pole = Breaker::sound(Circuit::Heater, Amps(30.0));
        let mut tandem = Breaker { tandem: Some([false; 2]), ..two_pole.clone() };
        assert_eq!(trips(&mut two_pole, 90.0), trips(&mut tandem, 90.0));
        assert!([0, 1].iter().all(|pole| !two_pole.is_on(*pole)));
        assert_eq!([0, 1].map(|pole| tandem.is_on(pole)), [false, true]);
        assert_eq!((tandem.handle, tandem.stands()), (Handle::On, Handle::Tripped));
        assert_eq!(tandem.time_to_trip(0, Amps(90.0)), Seconds(f64::INFINITY));
        assert!(tandem.advance(Seconds(600.0), [Amps(0.0), Amps(90.0)]).is_some());
        assert_eq!(tandem.handle, Handle::Tripped);
        tandem.throw(Handle::Off);
        tandem.throw(Handle::On);
        assert!([0, 1].iter().all(|pole| tandem.is_on(*pole)));
    }

    #[test]
    fn steps_of_any_size_store_the_same_heat_and_trip_at_the_same_moment() {
        let mut often = Breaker::sound(Circuit::Heater, Amps(30.0));
        let mut tripped = None;
        for i in 0..1000 {
            if let Some(at) = often.advance(Seconds(0.5), [Amps(60.0), Amps(0.0)]) {
                tripped = Some(0.5 * f64::from(i) + at.get());
                break;
            }
        }
        assert!((tripped.unwrap() - time(30.0, 60.0)).abs() < 1e-6);
        assert_eq!(often.handle, Handle::Tripped);
        assert!(!often.latches());
        often.advance(Seconds(120.0), [Amps(0.0); 2]);
        assert!(often.latches());
    }
}
